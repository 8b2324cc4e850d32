// @ts-check
/** The guided story for newcomers. Its own numbers are held like a question's; its steps are fetched when it is first opened. */

/** @import { Question } from "../questions/index.js" */

/** @type {Question} */
export const story = {
  id: "start-here",
  group: "start",
  story: true,
  defaults: {
    speed_m_s: 8,
    power_w: 235,
    cda_m2: 0.24,
    power_change: 0.1,
    cda_change: -0.1,
    begins_s: 900,
    grade: 0,
    headwind_m_s: 0,
    budget: 150,
  },
  load: () => import("./story.js"),
};
