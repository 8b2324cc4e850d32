// @ts-check
/** Whether a ride of the finish time goes by time, and not over a distance. */

/** @import { State } from "../../state/history.js" */

const ID = "finish-time";

/** The time that is fixed in place of a distance, s: the question's own, or that of a course that goes by time. @param {State} state */
export function fixedTimeOf({ scenario: { course }, with: { [ID]: own } }) {
  return own.for_time_s ?? (own.effort.kind === "time" ? undefined : course.duration_s);
}
