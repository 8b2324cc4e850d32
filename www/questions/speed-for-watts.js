// @ts-check
/** What speed do these watts buy, where do they go, and what would the next ten buy? Or the watts that a speed takes. */

import { spot } from "./speed-for-watts/spot.js";

/** @import { Question } from "./index.js" */
/** @import { State } from "../state/history.js" */

const ID = "speed-for-watts";

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
