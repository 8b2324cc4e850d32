// @ts-check
/** How the drag area is worked out of laps. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { paragraph } from "../shared/worked-out.js";

const words = book("drag-test");

export function workedOut() {
  return html(
    "div",
    {},
    ...["howEnergy", "howJoint", "howOwn", "howCommon", "howOlder", "howPlan"].map((key) =>
      paragraph(words.parts(/** @type {"howEnergy"} */ (key))),
    ),
  );
}
