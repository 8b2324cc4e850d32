// @ts-check
/** The recordings that are open: in memory, each under a mark made from what is in it, so that the same file is known again. */

import { shortMark } from "../parts/short-mark.js";

/** @import { Recording } from "./read.js" */

/** @type {Map<string, Recording>} */
const open = new Map();

/** @param {Recording} recording @returns {string} its mark */
export function hold(recording) {
  const mark = markOf(recording);
  open.set(mark, recording);
  return mark;
}

/** @param {unknown} mark */
export const heldRecording = (mark) => (typeof mark === "string" ? open.get(mark) : undefined);

/** @param {Recording} recording */
function markOf({ kind, records, summary, columns }) {
  const middle = Object.values(columns).map((column) => column[Math.floor(column.length / 2)]);
  return shortMark(JSON.stringify([kind, records, summary, ...middle]));
}
