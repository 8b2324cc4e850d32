// @ts-check
/** Opens a ride file: picked, dropped on the page, or one that is kept on the device; with its progress and a button that ends it. */

import { html, say, set } from "../../parts/html.js";
import { takeHandedOver } from "../../recordings/handed-over.js";
import { hold } from "../../recordings/held.js";
import { readRecording } from "../../recordings/read.js";
import { noteWords } from "../../recordings/said.js";
import * as show from "../../units.js";
import { book, open as openBook } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { ReadingError, Recording } from "../../recordings/read.js" */

const words = book("drag-test");
const TYPES = ".fit,.gpx,.tcx,.csv,.gz,.txt";

/** @param {Tools} tools @param {(mark: string, recording: Recording, file: Blob) => void} onOpened */
export function opener(tools, onOpened) {
  const picked = html("input", { type: "file", accept: TYPES, multiple: true, hidden: true, tabindex: -1 });
  const pick = html("button", { type: "button", class: "open-file" }, words("openFile"));
  const bar = html("progress", { max: 1 });
  const cancel = html("button", { type: "button" }, words("cancel"));
  const busy = html(
    "p",
    { class: "reading-file", role: "status", hidden: true },
    words("reading"),
    " ",
    bar,
    " ",
    cancel,
  );
  const wrong = html("p", { class: "wrong", role: "alert", hidden: true });
  const element = html("div", { class: "opener" }, picked, pick, busy, wrong);
  /** @type {AbortController | null} */
  let reading = null;

  /** Reads files one after the other; what is wrong with one is said, and the others are read all the same. @param {Iterable<Blob & { name?: string }>} files */
  async function read(files) {
    reading?.abort();
    const own = new AbortController();
    reading = own;
    wrong.hidden = true;
    busy.hidden = false;
    /** @type {string[]} */
    const problems = [];
    await openBook("recordings");
    for (const file of files) {
      try {
        const recording = await readRecording(file, { signal: own.signal, progress });
        if (own.signal.aborted) break;
        onOpened(hold(recording), recording, file);
      } catch (error) {
        if (own.signal.aborted) break;
        problems.push(words("notRead", { name: file.name ?? "", why: whyWords(error) }));
      }
    }
    if (reading !== own) return;
    busy.hidden = true;
    reading = null;
    wrong.hidden = problems.length === 0;
    say(
      wrong,
      problems.length ? [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, problems.join(" "))] : "",
    );
  }

  /** @param {number | null} share */
  function progress(share) {
    set(bar, { value: share });
  }

  /** @param {unknown} error */
  function whyWords(error) {
    const { text } = /** @type {Partial<ReadingError>} */ (error ?? {});
    return text ? noteWords(/** @type {ReadingError} */ (error), tools.store.get().units) : words("notReadWhy");
  }

  pick.addEventListener("click", () => picked.click());
  picked.addEventListener("change", () => {
    const files = [...(picked.files ?? [])];
    picked.value = "";
    if (files.length) read(files);
  });
  cancel.addEventListener("click", () => {
    reading?.abort();
    reading = null;
    busy.hidden = true;
    pick.focus();
  });
  const stopListening = takeDropped((files) => read(files));
  takeHandedOver((files) => read(files));

  return {
    element,
    read,
    destroy() {
      reading?.abort();
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
