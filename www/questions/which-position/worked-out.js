// @ts-check
/** How the positions are compared, and where the published figures come from. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { citations, paragraph } from "../shared/worked-out.js";

const words = book("which-position");

export function workedOut() {
  return html(
    "div",
    {},
    ...["howRides", "howTogether", "howCrossing", "howCost", "howDraws", "howWorth"].map((key) =>
      paragraph(words.parts(/** @type {"howRides"} */ (key))),
    ),
    citations(["polanco-2020", "faulkner-2021", "kordi-2019", "peveler-2005", "beaumont-2018"]),
  );
}
