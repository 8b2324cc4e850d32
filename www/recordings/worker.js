// @ts-check
/**
 * Reads one recording off the main thread. In: `{ file }`. Out: `{ share }` as it goes on, then `{ recording }`, whose columns are
 * handed over, or `{ error }`, or `{ broken }` where the module cannot be started.
 */

import init, { readRecording } from "fasterby-recordings";
import { recordingsModule } from "#recordings";

/** @import { Recording } from "./read.js" */

const post = /** @type {(message: unknown, transfer?: Transferable[]) => void} */ (
  /** @type {unknown} */ (globalThis.postMessage.bind(globalThis))
);

/** @param {File} file */
async function read(file) {
  try {
    await init({ module_or_path: await recordingsModule() });
  } catch (error) {
    post({ broken: String(error) });
    return;
  }
  try {
    /** @type {Recording} */
    const recording = await readRecording(file, (/** @type {number | null} */ share) => post({ share }));
    post(
      { recording },
      Object.values(recording.columns).map((column) => column.buffer),
    );
  } catch (error) {
    if (isRefusal(error)) post({ error });
    else post({ broken: String(error) });
  }
}

/** @param {unknown} error */
const isRefusal = (error) => typeof error === "object" && error !== null && "text" in error;

addEventListener("message", ({ data }) => read(data.file));
