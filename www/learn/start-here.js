// @ts-check
/** The guided story for newcomers. Its own numbers are held like a question's; its steps are fetched when it is first opened. */

import { BEGAN, ID } from "./beginning.js";

/** @import { Question } from "../questions/index.js" */

/** @type {Question} */
export const story = {
  id: ID,
  group: "start",
  story: true,
  defaults: BEGAN,
  load: () => import("./story.js"),
};
