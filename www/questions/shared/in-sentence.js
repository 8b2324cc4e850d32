// @ts-check
/** A label in the middle of a sentence, where German nouns and symbols such as W′ keep their capital. */

import { language } from "../../words/index.js";

/** @param {string} label */
export function inSentence(label) {
  return language() === "de" || !/^\p{L}{2}/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}
