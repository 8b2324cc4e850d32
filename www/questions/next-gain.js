// @ts-check
/** What should I work on next? */

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "next-gain";

/**
 * What each candidate saves; the best set takes longer and is asked for in the worker.
 * @param {State} state
 */
function request({ scenario, with: details }) {
  const { currency, times_ridden, ...own } = details[ID];
  // What the page cannot use is the core's to refuse.
  if (typeof currency !== "string" || !Array.isArray(times_ridden))
    return {
      scenario,
      with: { ...own, times_ridden, part: "each", ...(typeof currency !== "string" && { currency }) },
    };
  const times = scenario.events.map(
    (/** @type {unknown} */ _, /** @type {number} */ event) => times_ridden[event] ?? 1,
  );
  return { scenario, with: { ...own, times_ridden: times, part: "each" } };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "decide",
  defaults: { standing: "trained", money: 150, currency: "", hours_per_week: 2, weeks: 12, times_ridden: [] },
  request,
  load: () => import("./next-gain/view.js"),
};
