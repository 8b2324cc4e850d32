// @ts-check
/** Several things in one sentence: "air, tyres and hill". */

import { languageTag } from "../../words/index.js";

const format = () => new Intl.ListFormat(languageTag(), { type: "conjunction" });

/** @param {readonly string[]} things */
export function listOf(things) {
  return format().format(things);
}

/** The same with elements. @param {readonly Node[]} things @returns {(string | Node)[]} */
export function listParts(things) {
  return format()
    .formatToParts(things.map((_, index) => String(index)))
    .map(({ type, value }) => (type === "element" ? things[Number(value)] : value));
}
