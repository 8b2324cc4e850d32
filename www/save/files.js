// @ts-check
/** What is saved, under which name, and how it reaches the reader. Nothing leaves the device. */

/** @import { Request } from "../questions/shared/request.js" */

/**
 * A question as it is answered on the page.
 * @typedef {object} Shown
 * @property {string} question the core's name for it
 * @property {string} [title] what the rider calls these numbers
 * @property {unknown} [own] the question's own numbers as the page holds them
 * @property {Request} request what the core was asked
 * @property {unknown} answer
 */

/** Names longer than this are cut at a word. */
const MOST_CHARACTERS = 48;

/** Names that a system keeps for itself. */
const KEPT_NAMES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * A file name that every system takes: `thursday-25-power-or-drag-map.svg`, or `fasterby-power-or-drag-map.svg` without a title.
 * @param {string} question @param {string} what @param {string} ending @param {string} [title] what the rider calls these numbers
 */
export function fileName(question, what, ending, title = "") {
  return `${[plainName(title) || "fasterby", question, plainName(what)].filter(Boolean).join("-")}.${ending}`;
}

/** Letters, figures and hyphens that say the same; nothing where there are none. @param {string} text */
export function plainName(text) {
  const words = text
    .replace(/[’′]/g, " ")
    .replaceAll("ß", "ss")
    .replaceAll("œ", "oe")
    .normalize("NFKD")
    .replace(/[^\w\s-]/g, "")
    .trim()
    .toLowerCase()
    .split(/[\s_-]+/)
    .filter(Boolean);
  while (words.length > 1 && words.join("-").length > MOST_CHARACTERS) words.pop();
  const name = words.join("-").slice(0, MOST_CHARACTERS);
  return KEPT_NAMES.test(name) ? `${name}-` : name;
}

/** @param {string} name @param {Blob} content */
export function hand(name, content) {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * The question as JSON: what was asked and what was answered. `request` is what the core takes, so asking again gives `answer`; `own` is what
 * the page takes, so that it can be opened again. Recordings, and the laps of them, stay out of `request`.
 * @param {Shown} shown
 */
export function questionText({ question, own, request, answer }) {
  const plain = (/** @type {string} */ _, /** @type {unknown} */ value) =>
    ArrayBuffer.isView(value) ? Array.from(/** @type {Float64Array} */ (value)) : value;
  return `${JSON.stringify({ question, own, request: withoutRecordings(request), answer }, plain, 2)}\n`;
}

/** @param {Shown["request"]} request */
function withoutRecordings(request) {
  const { recordings, laps, ...own } = request.with;
  return recordings ? { ...request, with: own } : request;
}
