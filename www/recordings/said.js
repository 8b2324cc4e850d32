// @ts-check
/** What is said of a recording, in the reader's language and units; call after `open("recordings")`. */

import { number, quantity, time } from "../units.js";
import { book } from "../words/index.js";

/** @import { Units } from "../units.js" */
/** @import { Measured, Note } from "./read.js" */

/** Which sentence it is, only the readers know. */
const say = /** @type {(key: string, values: Record<string, string>) => string} */ (
  /** @type {unknown} */ (book("recordings"))
);

/** A note, or why a file is not read, as a sentence. @param {Note} note @param {Units} units */
export function noteWords({ text, values }, units) {
  const written = Object.entries(values).map(([name, value]) => [name, valueWords(value, units)]);
  return say(text, Object.fromEntries(written));
}

/** @param {number | string | Measured} value @param {Units} units */
function valueWords(value, units) {
  if (typeof value === "number") return number(value);
  if (typeof value === "string") return value;
  return value.kind === "clock" ? time(value.value) : quantity(value.kind, value.value, units);
}
