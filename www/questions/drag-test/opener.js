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

/** @typedef {{ file: Blob & { name?: string }, mark?: string }} Wanted a file, and the mark under which it was kept */

/** @param {Tools} tools @param {(mark: string, recording: Recording) => void} onOpened */
export function opener(tools, onOpened) {
  const picked = html("input", { type: "file", accept: TYPES, multiple: true, hidden: true, tabindex: -1 });
  const pick = html("button", { type: "button", class: "open-file" }, words("openFile"));
  const bar = html("progress", { max: 1, "aria-label": words("reading") });
  const cancel = html("button", { type: "button" }, words("cancel"));
  const busy = html(
    "p",
    { class: "reading-file", hidden: true },
    html("span", { role: "status" }, words("reading")),
    " ",
    bar,
    " ",
    cancel,
  );
  const wrong = html("p", { class: "wrong", role: "alert", hidden: true });
  const element = html("div", { class: "opener" }, picked, pick, busy, wrong);
  /** Ends the file that is read and those behind it. */
  let stopped = new AbortController();
  /** What is read already, and what waits behind it. @type {Promise<void>} */
  let turn = Promise.resolve();

  /** Reads files one after the other, behind those that were given before. @param {readonly Wanted[]} files */
  function read(files) {
    const { signal } = stopped;
    turn = turn.then(() => readAll(files, signal));
    return turn;
  }

  /** What is wrong with one is said, and the others are read all the same. @param {readonly Wanted[]} files @param {AbortSignal} signal */
  async function readAll(files, signal) {
    if (signal.aborted) return;
    wrong.hidden = true;
    busy.hidden = false;
    /** @type {string[]} */
    const problems = [];
    await openBook("recordings");
    for (const { file, mark } of files) {
      if (signal.aborted) break;
      try {
        const recording = await readRecording(file, { signal, progress });
        onOpened(hold(recording, { file, mark }), recording);
      } catch (error) {
        const name = file.name || words("sharedFile");
        if (!signal.aborted) problems.push(words("notRead", { name, why: whyWords(error) }));
      }
    }
    busy.hidden = true;
    wrong.hidden = problems.length === 0;
    say(
      wrong,
      problems.length ? [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, problems.join(" "))] : "",
    );
  }

  function stop() {
    stopped.abort();
    stopped = new AbortController();
  }

  const readFiles = (/** @type {readonly Blob[]} */ files) => read(files.map((file) => ({ file })));

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
    if (files.length) readFiles(files);
  });
  cancel.addEventListener("click", () => {
    stop();
    pick.focus();
  });
  const stopListening = takeDropped(readFiles);
  takeHandedOver(readFiles);

  return {
    element,
    read,
    focus: () => pick.focus(),
    destroy() {
      stop();
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
