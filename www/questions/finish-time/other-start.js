// @ts-check
/** Another start on the same day: whether it would be faster, where the weather changes. */

import { html, say, strong } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";
import { firstOrder } from "../shared/odds.js";
import { piece } from "../shared/shell.js";
import { fixedTimeOf } from "./fixed-time.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FinishTimeAnswer as Answer } from "../../types/core.d.ts" */
/** @import { Shown } from "../shared/shell.js" */

const words = book("finish-time");
const shared = book("shared");
const OTHER = "with.finish-time.other_start_at_s";

/** @param {Tools} tools @param {() => Answer | null} latest */
export function otherStart(tools, latest) {
  const start = tools.number({ path: "scenario.conditions.later.start_at_s" });
  const other = tools.number({
    path: OTHER,
    // Until the rider chooses one, it is the one that the answer is about.
    value: () => tools.store.at(OTHER) ?? latest()?.day?.other_start?.start_at_s ?? null,
  });
  const difference = html("span");
  const chance = html("span");
  const sentence = clause(
    ...words.parts("otherStart", {
      start,
      other,
      difference: { element: difference, note: html("div") },
      chance: { element: chance, note: html("div") },
    }),
  );
  const element = html("div", { class: "also start-at" }, html("p", {}, sentence.element), sentence.note);
  element.hidden = true;

  return {
    fields: [start, other],
    follow(/** @type {State} */ state) {
      const { scenario, with: questions } = state;
      const whole = fixedTimeOf(state) === undefined && questions["finish-time"].effort.kind !== "time";
      element.hidden = scenario.conditions.later === undefined || !whole;
    },
    piece: piece({ element }, (_, /** @type {Shown<Answer>} */ { answer }) => {
      const told = answer.day?.other_start;
      if (!told) return;
      // Positive is faster, as everywhere on the page.
      const { value, sd, chance_positive } = told.slower_s;
      const faster = { value: -value, sd, chance_positive: 1 - chance_positive };
      say(difference, [strong(show.differenceWords(faster.value)), " ", show.plusMinusTime(sd)]);
      const sure = firstOrder(faster, (_, count) =>
        shared(faster.value >= 0 ? "aboutFaster" : "aboutSlower", { count, all: 100 }),
      );
      say(chance, sure.words ? ` (${sure.words})` : "");
    }),
  };
}
