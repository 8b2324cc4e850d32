// @ts-check
/** What is saved, under which name, and how it reaches the reader. Nothing leaves the device. */

/**
 * A question as it is answered on the page.
 * @typedef {object} Shown
 * @property {string} question the core's name for it
 * @property {{ scenario: any, with: any }} request what the core was asked
 * @property {any} answer
 */

/** Names longer than this are cut at a word. */
const MOST_CHARACTERS = 48;

/** A file name that every system takes: `fasterby-power-or-drag-map.svg`. @param {string} question @param {string} what @param {string} ending */
export function fileName(question, what, ending) {
  const words = what.replace(/[’′]/g, " ").replaceAll("ß", "ss").replaceAll("œ", "oe").normalize("NFKD").replace(/[^\w\s-]/g, "").trim().toLowerCase().split(/[\s_-]+/).filter(Boolean);
  while (words.length > 1 && words.join("-").length > MOST_CHARACTERS) words.pop();
  return `${["fasterby", question, ...words].join("-")}.${ending}`;
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
 * The question as JSON: what was asked and what was answered. `request` is what the core takes, so asking again gives `answer`.
 * @param {Shown} shown
 */
export function questionText({ question, request, answer }) {
  const plain = (/** @type {string} */ _, /** @type {any} */ value) => (ArrayBuffer.isView(value) ? Array.from(/** @type {Float64Array} */ (value)) : value);
  return `${JSON.stringify({ question, request, answer }, plain, 2)}\n`;
}
