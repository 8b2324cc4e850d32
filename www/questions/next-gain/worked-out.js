// @ts-check
/** Why savings are not added up, how the best set is found, and every figure as a table. */

import { formula, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { furtherFigure, rideName } from "../shared/distance-names.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";
import { nameOf, whyLeftOut } from "./candidates.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Found } from "./search.js" */
/** @import { Candidate, NextGainAnswer as Answer, BestSet, LeftOut } from "../../types/core.d.ts" */

const words = book("next-gain");

/** @param {BestSet | undefined} best */
export const whyGist = (best) =>
  best ? words("whyGist", { together: units.time(best.expected_s.value), added: units.time(best.added_up_s) }) : "";

/** @param {BestSet | undefined} best */
export function why(best) {
  if (!best) return [];
  return [
    paragraph(words("whyText", { added: units.time(best.added_up_s), together: units.time(best.expected_s.value) })),
    paragraph(words("whyChance", { outcomes: units.number(best.outcomes, { group: true }) })),
    paragraph(
      words("whySure", {
        low: units.differenceWords(best.range_95_s[0]),
        high: units.differenceWords(best.range_95_s[1]),
      }),
    ),
  ];
}

/** What is not in the best set, and why. @param {readonly LeftOut[]} leftOut @param {readonly Candidate[]} candidates */
export function leftOutList(leftOut, candidates) {
  return html(
    "ul",
    {},
    ...leftOut.map((one) =>
      html(
        "li",
        {},
        ...words.parts("leftOutLine", {
          name: nameOf(candidates[one.candidate], one.candidate),
          why: whyLeftOut(one, candidates),
        }),
      ),
    ),
  );
}

/** @param {number} count */
export function workedOut(count) {
  const sets = 1 << count;
  return html(
    "div",
    {},
    paragraph(words("howSets", { count, sets: units.number(sets, { group: true }) })),
    paragraph(words("howMean")),
    formula(
      words("howFormula"),
      [
        "E",
        "(",
        "S",
        ")",
        "=",
        subscript("∑", ["ω", "⊆", "S"]),
        "p",
        "(",
        "ω",
        ")",
        "[",
        "T",
        "(",
        "0",
        ")",
        "−",
        "T",
        "(",
        "ω",
        ")",
        "]",
      ],
      { block: true },
    ),
    symbols([
      ["S, ω", words("symbolSet")],
      ["p", words("symbolChance")],
      ["T", words("symbolTime")],
    ]),
    paragraph(words("howBest")),
    paragraph(words("howWeeks")),
    paragraph(words("howSure")),
    paragraph(words("howTable")),
    citations([
      "jeukendrup-2001",
      "polanco-2020",
      "fintelman-2015",
      "underwood-2013",
      "beaumont-2018",
      "brownlie-2009",
      "smit-2023",
      "laursen-2002",
    ]),
  );
}

export function gainsTable() {
  const grid = table({ caption: words("tableCaption"), thin: true });
  return {
    element: grid.element,
    /** @param {State} state @param {Answer} answer @param {Found | null} found */
    update(state, { candidates, events, ranked }, found) {
      const listed = candidates.map(({ candidate }) => candidate);
      const reason = (/** @type {number} */ c) => {
        const leftOut = found?.leftOut.find(({ candidate }) => candidate === c);
        return leftOut ? whyLeftOut(leftOut, listed) : found ? words("isTaken") : "";
      };
      const saved = (/** @type {number | null} */ seconds) =>
        seconds === null ? words("free") : units.number(seconds, { digits: 1 });
      grid.update({
        columns: [
          words("change"),
          words("onAverage"),
          words("ifItWorks"),
          words("perMoney"),
          words("perHour"),
          words("taken"),
          ...events.map((event) => rideName(event, state.units)),
        ],
        rows: ranked.map((c) => {
          const gain = candidates[c];
          return [
            nameOf(gain.candidate, c),
            units.time(gain.expected_s.value),
            `${units.time(gain.saves_s.value)} ${units.plusMinusTime(gain.saves_s.sd)}`,
            saved(gain.expected_s_per_money),
            saved(gain.expected_s_per_hour),
            reason(c),
            ...gain.by_event_s.map(({ value }, event) => {
              const further_m = gain.further_by_event_m?.[event];
              if (!further_m) return units.time(value);
              return [
                html("span", { class: "cell-line", "data-part": "value" }, units.time(value)),
                html("span", { class: "cell-line", "data-part": "further" }, furtherFigure(further_m, state.units)),
              ];
            }),
          ];
        }),
      });
    },
    destroy: grid.destroy,
  };
}
