// @ts-check
/** Where the two positions tie, in words. */

import { strong } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("hold-or-fade");

/** @param {State} state @param {Answer} answer @returns {(string | Node)[]} */
export function breakEven(state, answer) {
  const { break_even: tie, held_share, difference_s, held_difference_s, columns } = answer;
  const low = state.scenario.positions[state.with["hold-or-fade"].low];
  const slower = difference_s.value < 0;
  if (columns.share.length === 0) return [words("nothingToTie")];
  if (low.fade && amountOf(low.fade.tired_cda_m2) < answer.low_cda_m2) return [words("lowerOnceLost")];
  if (tie.held_share === null) return [words(held_difference_s.value > 0 ? "alwaysFaster" : "neverFaster")];
  const share = strong(units.percent(tie.held_share));
  const said = [
    held_share === null
      ? words.parts("levelAt", { share })
      : words.parts("levelAtHeld", { share, held: strong(units.percent(held_share)) }),
  ];
  const begins_s = amountOf(low.fade?.begins_s);
  if (tie.begins_s !== null && begins_s !== undefined) {
    const until = strong(units.time(tie.begins_s));
    const longer = strong(units.time(Math.round(tie.begins_s) - Math.round(begins_s)));
    said.push(slower ? words.parts("keepLonger", { longer, until }) : words.parts("mayGoAt", { until }));
  } else if (low.fade && slower) said.push([words("laterNoHelp")]);
  if (tie.tired_cda_m2 !== null)
    said.push(
      words.parts(slower ? "noFurther" : "asFar", {
        area: strong(units.quantity("area", tie.tired_cda_m2, state.units)),
      }),
    );
  return said.flatMap((parts, index) => (index ? [" ", ...parts] : parts));
}
