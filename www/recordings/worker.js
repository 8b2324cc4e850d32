// @ts-check
/**
 * Reads one recording off the main thread. In: `{ file, module }`, the last the module that reads it. Out: `{ share }` as it goes
 * on, null while it is unpacked; then `{ recording }`, whose columns are handed over, or `{ error }`, or `{ broken }` where the
 * module cannot be started, or `{ crashed }` where it fails while it reads.
 */

import init, { mostBytes, readRecording } from "fasterby-recordings";
import { refusal } from "./refusal.js";
import { isPacked, unpacked } from "./unpack.js";

/** @import { Recording } from "./read.js" */

const post = /** @type {(message: unknown, transfer?: Transferable[]) => void} */ (
  /** @type {unknown} */ (globalThis.postMessage.bind(globalThis))
);
const tell = (/** @type {number | null} */ share) => post({ share });

/** @param {{ file: Blob, module: WebAssembly.Module }} given */
async function read({ file, module }) {
  try {
    await init({ module_or_path: module });
  } catch (error) {
    post({ broken: String(error) });
    return;
  }
  try {
    /** @type {Recording} */
    const recording = readRecording(await plain(file), tell);
    post(
      { recording },
      Object.values(recording.columns).map((column) => column.buffer),
    );
  } catch (error) {
    if (isRefusal(error)) post({ error });
    else post({ crashed: String(error) });
  }
}

/** The file itself, or what is packed in it. @param {Blob} file */
async function plain(file) {
  try {
    if (!(await isPacked(file))) return file;
    tell(null);
    return await unpacked(file, mostBytes());
  } catch (error) {
    // What the file's own reading throws is of the document's kind, unlike what unpacking does.
    throw refusal(error instanceof DOMException ? "file_gone" : "packing_broken");
  }
}

/** @param {unknown} error */
const isRefusal = (error) => typeof error === "object" && error !== null && "text" in error;

addEventListener("message", ({ data }) => read(data));
