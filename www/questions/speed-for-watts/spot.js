// @ts-check
/** The place whose speed is asked for. */

import { amountOf } from "../../state/scenario.js";

/** @import { State } from "../../state/history.js" */

const ID = "speed-for-watts";
const STANDARD_SLOPE = 0;

/** Slope and direction here: the question's own, or those of a simple course. @param {State} state */
export function spot(state) {
  const own = state.with[ID];
  const { course } = state.scenario;
  return {
    grade: own.grade ?? amountOf(course.grade ?? STANDARD_SLOPE),
    bearing_deg: own.bearing_deg ?? amountOf(course.bearing_deg ?? STANDARD_SLOPE),
  };
}
