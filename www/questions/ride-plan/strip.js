// @ts-check
/** The plan on a narrow strip, to be cut out and taped to the bars. */

import { html } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { placeName, powerName } from "./cues.js";

/** @import { State } from "../../state/history.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");

export function strip() {
  const element = html("ol", { class: "bar-strip", "aria-label": words("strip") });
  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update({ units }, { simple }) {
      element.replaceChildren(
        ...simple.cues.map((cue) =>
          html(
            "li",
            {},
            html("span", {}, show.quantity("distance", cue.from_m, units, { digits: 1 })),
            html("b", {}, powerName(cue, units)),
            html("small", {}, placeName(cue)),
          ),
        ),
      );
    },
  };
}
