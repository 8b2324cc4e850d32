// @ts-check
/** The plan on a narrow strip, to be cut out and taped to the bars. */

import { html } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { steps } from "./cues.js";

/** @import { State } from "../../state/history.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");

export function strip() {
  const element = html("ol", { class: "bar-strip", "aria-label": words("strip") });
  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update({ units }, answer) {
      element.replaceChildren(
        ...steps(answer.simple.cues, answer, units).map(({ from_m, place, power }) =>
          html(
            "li",
            {},
            html("span", {}, show.quantity("distance", from_m, units, { digits: 1 })),
            html("b", {}, power),
            html("small", {}, place),
          ),
        ),
      );
    },
  };
}
