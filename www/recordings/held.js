// @ts-check
/** The recordings that are open: in memory, each under a mark made from what is in it, so that the same file is known again. */

import { shortMark } from "../parts/short-mark.js";

/** @import { Recording } from "./read.js" */

/** @type {Map<string, { recording: Recording, file: Blob | undefined }>} */
const open = new Map();

/**
 * @param {Recording} recording
 * @param {{ file?: Blob, mark?: string }} [of] the file, and the mark under which it was kept: a later reader may make another of it
 * @returns {string} its mark
 */
export function hold(recording, { file, mark = markOf(recording) } = {}) {
  open.set(mark, { recording, file });
  return mark;
}

/** @param {unknown} mark */
export const heldRecording = (mark) => (typeof mark === "string" ? open.get(mark)?.recording : undefined);

/** The files of what is open, by mark. @returns {[mark: string, file: Blob][]} */
export const heldFiles = () => [...open].flatMap(([mark, { file }]) => (file ? [[mark, file]] : []));

/** @param {Recording} recording */
function markOf({ kind, records, summary, columns }) {
  const middle = Object.values(columns).map((column) => column[Math.floor(column.length / 2)]);
  return shortMark(JSON.stringify([kind, records, summary, ...middle]));
}
