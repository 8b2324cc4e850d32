// @ts-check
/** Which position for which distance? */

import { referenceOf } from "./which-position/reference.js";

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "which-position";
/** How the errors of drag areas go together that come from one test or one guess: assumed. */
const TOGETHER = 0.95;

/** @param {State} state */
function request(state) {
  return { scenario: state.scenario, with: { ...state.with[ID], reference: referenceOf(state) } };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "decide",
  defaults: { reference: 0, distance_m: 40233.6, cda_correlation: TOGETHER },
  metric: { distance_m: 40_000 },
  comparesAll: true,
  positionFields: ["reference"],
  request,
  load: () => import("./which-position/view.js"),
};
