// @ts-check
/** Opens ride files of a drag test: picked, dropped on the page, handed over by the device, or kept on it. */

import { takeHandedOver } from "../../recordings/handed-over.js";
import { hold } from "../../recordings/held.js";
import { fileOpener } from "../../recordings/opener.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { Recording } from "../../recordings/read.js" */

const words = book("drag-test");

/** @param {Tools} tools @param {(mark: string, recording: Recording) => void} onOpened */
export function opener(tools, onOpened) {
  const open = fileOpener(
    { name: words("openFile"), multiple: true, units: () => tools.store.get().units },
    (recording, wanted) => onOpened(hold(recording, wanted), recording),
  );
  const readFiles = (/** @type {readonly Blob[]} */ files) => open.read(files.map((file) => ({ file })));
  const stopListening = takeDropped(readFiles);
  let left = false;
  takeHandedOver(async (files) => {
    await readFiles(files);
    return !left;
  });
  return {
    ...open,
    destroy() {
      left = true;
      open.destroy();
      stopListening();
    },
  };
}

/** Files dropped anywhere on the page; text and the like are the browser's. @param {(files: File[]) => void} take */
function takeDropped(take) {
  const holdsFiles = (/** @type {DragEvent} */ event) => event.dataTransfer?.types.includes("Files");
  const over = (/** @type {DragEvent} */ event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    document.body.toggleAttribute("data-file-over", event.type === "dragover");
  };
  const drop = (/** @type {DragEvent} */ event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    document.body.removeAttribute("data-file-over");
    take([...(event.dataTransfer?.files ?? [])]);
  };
  const listeners = new AbortController();
  const { signal } = listeners;
  document.addEventListener("dragover", over, { signal });
  document.addEventListener("dragleave", over, { signal });
  document.addEventListener("drop", drop, { signal });
  return () => listeners.abort();
}

/** "3.2 MB". @param {number} bytes */
export const sizeWords = (bytes) => words("megabytes", { size: show.number(bytes / 1e6, { digits: 1 }) });
