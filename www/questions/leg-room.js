// @ts-check
/** What does this fit do to my hip? */

/** @import { Question } from "./index.js" */

/** @type {Question} */
export const question = {
  id: "leg-room",
  group: "measure",
  alone: true,
  defaults: {
    model: "ankling",
    stature_m: { value: 1.75, sd: 0.01, source: "typical" },
    a: { crank_m: 0.17, saddle_height_m: 0.72, seat_angle_deg: 76, bar_drop_m: 0.1, cadence_rpm: 90 },
    b: { crank_m: 0.165, saddle_height_m: 0.725, seat_angle_deg: 76, bar_drop_m: 0.12, cadence_rpm: 90 },
  },
  load: () => import("./leg-room/view.js"),
};
