// @ts-check
/** Sentences of the core in the language that is spoken. */

import { book } from "./index.js";

const say = book("core");

/** @param {string} sentence */
export function coreWords(sentence) {
  return say.has(sentence) ? say(sentence) : sentence;
}
