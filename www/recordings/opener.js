// @ts-check
/** Reads ride files that are picked, one after the other, with progress, a button that ends it, and what is wrong with a file. */

import { html, say, set } from "../parts/html.js";
import { book, open as openBook } from "../words/index.js";
import { readRecording } from "./read.js";
import { noteWords } from "./said.js";

/** @import { Units } from "../units.js" */
/** @import { ReadingError, Recording } from "./read.js" */

const words = book("recordings");
const TYPES = ".fit,.gpx,.tcx,.csv,.gz,.txt";

/** @typedef {{ file: Blob & { name?: string }, mark?: string }} Wanted a file, and the mark under which it was kept */

/**
 * @param {{ name: string, multiple: boolean, units: () => Units }} options `name` stands on the button
 * @param {(recording: Recording, wanted: Wanted) => void} onRead
 */
export function fileOpener({ name, multiple, units }, onRead) {
  const picked = html("input", { type: "file", accept: TYPES, multiple, hidden: true, tabindex: -1 });
  const pick = html("button", { type: "button", class: "open-file" }, name);
  const bar = html("progress", { max: 1 });
  const status = html("span", { role: "status" });
  const cancel = html("button", { type: "button" });
  const busy = html("p", { class: "reading-file", hidden: true }, status, " ", bar, " ", cancel);
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
    await openBook("recordings");
    say(status, words("reading"));
    set(bar, { "aria-label": words("reading"), value: null });
    say(cancel, words("cancel"));
    wrong.hidden = true;
    busy.hidden = false;
    /** @type {string[]} */
    const problems = [];
    for (const wanted of files) {
      if (signal.aborted) break;
      try {
        onRead(await readRecording(wanted.file, { signal, progress }), wanted);
      } catch (error) {
        const name = wanted.file.name || words("sharedFile");
        if (!signal.aborted) problems.push(words("notRead", { name, why: whyWords(error) }));
      }
    }
    busy.hidden = true;
    complain(problems.join(" "));
  }

  /** @param {string} problem */
  function complain(problem) {
    wrong.hidden = !problem;
    say(wrong, problem ? [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, problem)] : "");
  }

  function stop() {
    stopped.abort();
    stopped = new AbortController();
  }

  /** @param {number | null} share */
  function progress(share) {
    set(bar, { value: share });
  }

  /** @param {unknown} error */
  function whyWords(error) {
    const { text } = /** @type {Partial<ReadingError>} */ (error ?? {});
    return text ? noteWords(/** @type {ReadingError} */ (error), units()) : words("notReadWhy");
  }

  pick.addEventListener("click", () => picked.click());
  picked.addEventListener("change", () => {
    const files = [...(picked.files ?? [])];
    picked.value = "";
    if (files.length) read(files.map((file) => ({ file })));
  });
  cancel.addEventListener("click", () => {
    stop();
    pick.focus();
  });

  return { element, read, complain, focus: () => pick.focus(), destroy: stop };
}
