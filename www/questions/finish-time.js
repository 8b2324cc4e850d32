// @ts-check
/** How long will it take, how far in a fixed time, or what watts does a time take? */

import { courseLengthM } from "../state/scenario.js";
import { fromDisplay } from "../units.js";
import { fixedTimeOf } from "./finish-time/fixed-time.js";

/** @import { Question } from "./index.js" */

const ID = "finish-time";
/** Distances between splits, in the rider's own unit; the first that gives no more than this many is taken. */
const SPLIT_STEPS = [0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 25, 50, 100];
const MOST_SPLITS = 10;
/** Only to choose how far apart the splits of a fixed time are: 10 m/s. */
const ABOUT_M_S = 10;

/** @type {Question} */
export const question = {
  id: ID,
  group: "ride",
  defaults: { effort: { kind: "even" } },
  request(state) {
    const own = state.with[ID];
    const { course } = state.scenario;
    const lasts_s = own.for_time_s ?? course.duration_s;
    const length_m = lasts_s === undefined ? courseLengthM(course) : lasts_s * ABOUT_M_S;
    // A target is a time to beat: where the time is given it asks nothing.
    const { target_time_s, ...rest } = own;
    const target =
      target_time_s === undefined || fixedTimeOf(state) !== undefined || rest.effort.kind === "time"
        ? {}
        : { target_time_s };
    return {
      scenario: state.scenario,
      with: { split_every_m: splitEveryM(length_m, fromDisplay("distance", 1, state.units)), ...rest, ...target },
    };
  },
  load: () => import("./finish-time/view.js"),
};

/** @param {number} length_m @param {number} unit_m */
function splitEveryM(length_m, unit_m) {
  const step = SPLIT_STEPS.find((one) => length_m / (one * unit_m) <= MOST_SPLITS) ?? 200;
  return Math.max(100, step * unit_m);
}
