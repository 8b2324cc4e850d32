// @ts-check
/** Names in other scripts, within a sentence. */

/** Letters that are written from right to left, and signs that turn the direction of what follows them. */
const TURNS = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufefc]/;

/** A name keeps its direction to itself: figures after it stay in their order (Unicode Bidirectional Algorithm, first strong isolate). @param {string} text */
export function isolated(text) {
  return TURNS.test(text) ? `\u2068${text.replace(/[\u2066-\u2069]/g, "")}\u2069` : text;
}
