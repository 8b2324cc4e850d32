// @ts-check
/** Is a faster position worth it if I can't hold it? */

import { LOW, lowerByOf } from "./hold-or-fade/lower-by.js";
import { effortOf } from "./shared/effort.js";

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "hold-or-fade";

/** @type {Question} */
export const question = {
  id: ID,
  group: "understand",
  defaults: {
    low: 1,
    steady: 0,
    lower_by_m2: { value: 0.014, sd: 0.003, source: "typical" },
    effort: { kind: "power", power_w: 235 },
  },
  positionFields: ["low", "steady"],
  positions: [LOW],
  request,
  load: () => import("./hold-or-fade/view.js"),
};

/** @param {State} state */
function request({ scenario, with: details }) {
  const asked = { ...details[ID], effort: effortOf(details[ID].effort) };
  const kept = scenario.positions[asked.steady];
  const low = scenario.positions[asked.low];
  const { lower_by_m2 } = asked;
  if (
    !kept ||
    !low ||
    (lower_by_m2 !== undefined && (!lower_by_m2 || typeof lower_by_m2 !== "object" || Array.isArray(lower_by_m2)))
  )
    return { scenario, with: asked };
  return { scenario, with: { ...asked, lower_by_m2: { ...lower_by_m2, value: lowerByOf(kept, low) } } };
}
