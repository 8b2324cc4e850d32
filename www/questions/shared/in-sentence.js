// @ts-check
/** A label in the middle of a sentence, where German nouns keep their capital. */

import { language } from "../../words/index.js";

/** @param {string} label */
export function inSentence(label) {
  return language() === "de" ? label : label.charAt(0).toLowerCase() + label.slice(1);
}
