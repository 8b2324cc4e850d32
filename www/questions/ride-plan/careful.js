// @ts-check
/** The plan that is best on average over riders who are not quite as believed. */

import { html, say, set } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { cueTable } from "./cues.js";

/** @import { State } from "../../state/history.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");

/** @param {Answer} answer */
const isSame = ({ simple, robust }) =>
  simple.cues.length === robust.cues.length &&
  simple.cues.every(
    ({ from_m, power_w }, at) => from_m === robust.cues[at].from_m && power_w === robust.cues[at].power_w,
  );

/** @param {number} share */
const inHundred = (share) => show.number(100 * share, { digits: 0 });

export function carefulPlan() {
  const lead = html("p");
  const cues = cueTable(words("careful"));
  return {
    element: html("div", {}, lead, cues.element),
    destroy: cues.destroy,
    /** @param {Answer} answer */
    gist(answer) {
      if (isSame(answer)) return words("carefulSame");
      const { simple, robust } = answer;
      return words("carefulGist", {
        better: show.differenceWords(simple.mean_time_s - robust.mean_time_s),
        differs: show.differenceWords(simple.time_s - robust.time_s),
      });
    },
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      const { simple, robust } = answer;
      say(
        lead,
        words("carefulLead", {
          mean: show.time(robust.mean_time_s),
          before: show.time(simple.mean_time_s),
          share: inHundred(robust.run_out_share),
          shareBefore: inHundred(simple.run_out_share),
        }),
      );
      set(cues.element, { hidden: isSame(answer) });
      cues.update(state, robust.cues, answer);
    },
  };
}
