// @ts-check
/** What speed do these watts buy, where do they go, and what would the next ten buy? Or the watts that a speed takes. */

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "speed-for-watts";
const STANDARD_SLOPE = 0;

/** Slope and direction here: the question's own, or those of a simple course. @param {State} state */
export function spot(state) {
  const own = state.with[ID];
  const { course } = state.scenario;
  const of = (/** @type {any} */ held) => held?.value ?? held ?? STANDARD_SLOPE;
  return { grade: own.grade ?? of(course.grade), bearing_deg: own.bearing_deg ?? of(course.bearing_deg) };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "understand",
  defaults: { by: "power", power_w: 235, speed_m_s: 11 },
  request(state) {
    const { by, power_w, speed_m_s, ...rest } = state.with[ID];
    // A word that the page does not know is the core's to refuse.
    const asked = by === "speed" ? { speed_m_s } : by === "power" ? { power_w } : { by };
    return { scenario: state.scenario, with: { ...rest, ...asked, ...spot(state) } };
  },
  load: () => import("./speed-for-watts/view.js"),
};
