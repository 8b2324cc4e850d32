// @ts-check
/** The inside of "How it is worked out": formulas with their symbols explained, and where they come from. */

import { sources } from "../../core.js";
import { html } from "../../parts/html.js";
import { sourceList } from "../../parts/sources.js";

/** @import { Words } from "../../parts/html.js" */

/** How much of a source was read, told honestly. @type {Record<string, string>} */
const READ = {
  abstract: "Its abstract or opening pages were read.",
  "second-hand": "Read as other texts quote it.",
  "from-memory": "From memory: what is used of it was not looked up again.",
};

/** @param {Words} text */
export const paragraph = (text) => html("p", {}, ...(Array.isArray(text) ? text : [/** @type {string | Node} */ (text)]));

/** What the symbols of a formula stand for. @param {readonly [symbol: string, meaning: string][]} list */
export const symbols = (list) => html("dl", { class: "symbols" }, ...list.flatMap(([symbol, meaning]) => [html("dt", {}, symbol), html("dd", {}, meaning)]));

/** @param {readonly string[]} keys */
export function citations(keys) {
  const wanted = sources().filter(({ key }) => keys.includes(key));
  return html("div", {}, html("h3", {}, "Sources"),
    sourceList(wanted.map(({ key, citation, read }) => ({ key, text: citation, used: READ[read] ?? "" }))).element);
}
