// @ts-check
/** What the rows of a test and their positions are called. */

import { book } from "../../words/index.js";
import { listOf } from "../shared/list.js";

/** @import { State } from "../../state/history.js" */
/** @import { TestRow as Row } from "../../types/core.d.ts" */

const words = book("drag-test");

/** @param {State} state @param {number} position */
export function positionName({ scenario }, position) {
  return scenario.positions[position]?.name || words("positionNumber", { number: position + 1 });
}

/** "lap 3", "run 1": laps are counted as the list of laps has them. @param {Pick<Row, "kind" | "index">} row @param {readonly number[]} laps where each lap of the answer stands in that list */
export function rowName({ kind, index }, laps) {
  const number = (kind === "lap" ? (laps[index] ?? index) : index) + 1;
  return words(kind === "lap" ? "lapNumber" : kind === "run" ? "runNumber" : "coastDownNumber", { number });
}

/** "8 laps and 2 runs". @param {Record<"laps" | "runs" | "coastDowns", number>} counts */
export function rowCounts(counts) {
  const kinds = /** @type {const} */ (["laps", "runs", "coastDowns"]);
  return listOf(kinds.filter((kind) => counts[kind]).map((kind) => words(kind, { count: counts[kind] })));
}
