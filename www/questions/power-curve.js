// @ts-check
/** What can I hold, and for how long? */

/** @import { Question } from "./index.js" */

const ID = "power-curve";

/** @type {Question} */
export const question = {
  id: ID,
  group: "measure",
  defaults: { hold_s: 1200, power_change: 0.1 },
  positionFields: ["position"],
  load: () => import("./power-curve/view.js"),
};
