// @ts-check
/** How should I spend my effort on this course? */

/** @import { Question } from "./index.js" */

/** @type {Question} */
export const question = {
  id: "ride-plan",
  group: "ride",
  defaults: { targets: 5, round_w: 5, least_w: 0, greatest_w: 600, recovery: "differential" },
  slow: true,
  load: () => import("./ride-plan/view.js"),
};
