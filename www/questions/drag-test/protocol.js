// @ts-check
/** How a test is ridden, step by step, to print and take along. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";

const words = book("drag-test");
const STEPS = /** @type {const} */ ([
  "stepRoad",
  "stepBefore",
  "stepWarm",
  "stepOrder",
  "stepRide",
  "stepFilm",
  "stepWrite",
  "stepAfter",
]);

export function protocol() {
  return html(
    "div",
    {},
    html("ol", { class: "protocol" }, ...STEPS.map((step) => html("li", {}, ...words.parts(step)))),
    html("p", { class: "caution" }, ...words.parts("caution")),
  );
}
