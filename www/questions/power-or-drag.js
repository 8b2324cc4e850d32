// @ts-check
/** More power, or less drag? */

import { effortOf } from "./shared/effort.js";

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "power-or-drag";

/** @param {State} state */
function request({ scenario, with: details }) {
  return { scenario, with: { ...details[ID], effort: effortOf(details[ID].effort) } };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "understand",
  defaults: { power_change: 0.1, cda_change: -0.1, effort: { kind: "power", power_w: 235 } },
  request,
  load: () => import("./power-or-drag/view.js"),
};
