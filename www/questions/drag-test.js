// @ts-check
/** What is my drag area, and is the new position really faster? */

import { isObject } from "../parts/json.js";
import { askedLaps } from "../recordings/asked-laps.js";
import { today } from "./drag-test/today.js";

/** @import { Json } from "../types/page.d.ts" */
/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "drag-test";
/** What holds a position. */
const ROWS = ["laps", "runs", "coast_downs", "film"];

/** Laps of recordings that are not open here are left out: the page says so. @param {State} state */
function request({ scenario, with: { [ID]: own } }) {
  const { rides, laps, ...rest } = own;
  return { scenario, with: { date: today(), ...rest, ...askedLaps(rides, laps) } };
}

/** What was ridden in a position that is removed goes with it. @param {Json} rows @param {(position: number) => number | null} moved */
function moveRows(rows, moved) {
  if (!Array.isArray(rows)) return rows;
  return rows.flatMap((row) => {
    const position = isObject(row) ? moved(Number(row.position ?? 0)) : null;
    return isObject(row) && position !== null ? [{ ...row, position }] : [];
  });
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "measure",
  defaults: {
    rides: [],
    laps: [],
    runs: [],
    film: [],
    rolling: "hold",
    wind: "given",
    plan: { difference_share: 0.02, run_cv_share: 0.015, power: 0.8 },
  },
  comparesAll: true,
  movePositions: (own, moved) => ({
    ...own,
    ...Object.fromEntries(ROWS.filter((name) => name in own).map((name) => [name, moveRows(own[name], moved)])),
  }),
  request,
  load: () => import("./drag-test/view.js"),
};
