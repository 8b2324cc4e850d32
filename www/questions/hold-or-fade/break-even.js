// @ts-check
/** Where the two positions tie, in words. */

import { strong } from "../../parts/html.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

/** @param {Tools} tools @param {State} state @param {Answer} answer @returns {(string | Node)[]} */
export function breakEven({ units }, state, answer) {
  const { break_even: tie, held_share, difference_s, held_difference_s, columns } = answer;
  const low = state.scenario.positions[state.with["hold-or-fade"].low];
  const slower = difference_s.value < 0;
  if (columns.share.length === 0) return ["As it is held to the end here, there is nothing to break even: say how it is lost, in the sentence above."];
  if (low.fade && low.fade.tired_cda_m2.value < answer.low_cda_m2) {
    return ["Once lost it would be lower than when it is fresh, so holding it costs time: look at those two drag areas again."];
  }
  if (tie.held_share === null) {
    return [held_difference_s.value > 0
      ? "It is faster however little of the ride you hold it."
      : "Even held to the end it is not the faster one, so there is nothing to hold on for."];
  }
  /** @type {(string | Node)[]} */
  const words = ["It is level if you hold it for ", strong(units.percent(tie.held_share)), " of the ride",
    ...(held_share === null ? [". "] : ["; you hold it for the equal of ", strong(units.percent(held_share)), ". "])];
  const begins_s = low.fade?.begins_s?.value;
  if (tie.begins_s !== null && begins_s !== undefined) {
    const later_s = Math.round(tie.begins_s) - Math.round(begins_s);
    words.push(...(slower
      ? ["Keep it ", strong(units.time(later_s)), " longer, until ", strong(units.time(tie.begins_s)), ", and it is level. "]
      : ["It may start to go as early as ", strong(units.time(tie.begins_s)), " and still be level. "]));
  } else if (low.fade && slower) words.push("Starting to go later does not save it. ");
  if (tie.tired_cda_m2 !== null) {
    const area = strong(units.quantity("area", tie.tired_cda_m2, state.units));
    words.push(...(slower ? ["Let it go no further than ", area, ", and it is level too."] : ["It may go as far as ", area, " before it is level."]));
  }
  return words;
}
