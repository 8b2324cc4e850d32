// @ts-check
/** A difference of finish times as a table tells it. */

import { strong } from "../../parts/html.js";
import { difference } from "../../units.js";

/** @import { Words } from "../../parts/html.js" */

/** "faster by" and the time, or "level". @param {number} seconds positive is faster @returns {Words} */
export function differs(seconds) {
  const { way, short } = difference(seconds);
  return way === "level" ? "level" : [`${way} by `, strong(short)];
}
