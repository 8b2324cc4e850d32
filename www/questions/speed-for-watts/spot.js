// @ts-check
/** The place whose speed is asked for. */

/** @import { State } from "../../state/history.js" */

const ID = "speed-for-watts";
const STANDARD_SLOPE = 0;

/** Slope and direction here: the question's own, or those of a simple course. @param {State} state */
export function spot(state) {
  const own = state.with[ID];
  const { course } = state.scenario;
  const of = (/** @type {any} */ held) => held?.value ?? held ?? STANDARD_SLOPE;
  return { grade: own.grade ?? of(course.grade), bearing_deg: own.bearing_deg ?? of(course.bearing_deg) };
}
