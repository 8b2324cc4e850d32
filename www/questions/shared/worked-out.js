// @ts-check
/** The inside of "How it is worked out": formulas with their symbols explained, and where they come from. */

import { html } from "../../parts/html.js";
import { sourceList } from "../../parts/sources.js";
import { book } from "../../words/index.js";

/** @import { Words } from "../../parts/html.js" */

const words = book("shared");

/** How much of a source was read, told honestly; nothing where it was read whole. */
const READ = /** @type {const} */ ({
  abstract: "readAbstract",
  "second-hand": "readSecondHand",
  "from-memory": "readFromMemory",
});

/** @param {string} read */
const readWords = (read) => (Object.hasOwn(READ, read) ? words(READ[/** @type {keyof typeof READ} */ (read)]) : "");

/** @param {Words} text */
export const paragraph = (text) =>
  html("p", {}, ...(Array.isArray(text) ? text : [/** @type {string | Node} */ (text)]));

/** What the symbols of a formula stand for. @param {readonly [symbol: string, meaning: string][]} list */
export const symbols = (list) =>
  html(
    "dl",
    { class: "symbols" },
    ...list.flatMap(([symbol, meaning]) => [html("dt", {}, symbol), html("dd", {}, meaning)]),
  );

/** @param {readonly string[]} keys */
export function citations(keys) {
  const list = sourceList([]);
  fill(list, keys);
  return html("div", {}, html("h3", {}, words("sources")), list.element);
}

/** What cannot be fetched is left out; the page says elsewhere that it is incomplete. @param {ReturnType<typeof sourceList>} list @param {readonly string[]} keys */
async function fill(list, keys) {
  try {
    const { sourcesOf } = await import("../../citations.js");
    list.update(sourcesOf(keys).map(({ key, citation, read }) => ({ key, text: citation, used: readWords(read) })));
  } catch {
    list.update([]);
  }
}
