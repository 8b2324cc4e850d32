// @ts-check
/** Which position for which distance? */

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "which-position";
/** How the errors of drag areas go together that come from one test or one guess: assumed. */
export const TOGETHER = 0.95;

/** The ridden position stands in where the chosen one has gone. @param {State} state */
export function request({ scenario, with: details }) {
  const { reference, ...own } = details[ID];
  return {
    scenario,
    with: { ...own, reference: reference >= scenario.positions.length ? scenario.riding_position : reference },
  };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "decide",
  defaults: { reference: 0, distance_m: 40233.6, cda_correlation: TOGETHER },
  positionFields: ["reference"],
  request,
  load: () => import("./which-position/view.js"),
};
