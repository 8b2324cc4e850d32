// @ts-check
/** A difference of finish times as a table tells it. */

import { strong } from "../../parts/html.js";
import { difference } from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Words } from "../../parts/html.js" */

const words = book("shared");

/** "faster by" and the time, or "level". @param {number} seconds positive is faster @returns {Words} */
export function differs(seconds) {
  const { way, short } = difference(seconds);
  return way === "level"
    ? words("level")
    : words.parts(way === "faster" ? "fasterBy" : "slowerBy", { figure: strong(short) });
}
