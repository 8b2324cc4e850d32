// @ts-check
/** Why the low position wins or loses, how it is worked out, and the differences as a table. */

import { formula, fraction, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("hold-or-fade");

/** @typedef {{ first_s: number, second_s: number }} Traded what is gained and what is given back, rounded */

/** @param {Answer} answer @param {Traded} traded */
export function whyGist({ passes_s, gained_s, held_difference_s }, { first_s, second_s }) {
  if (gained_s === null)
    return words("whyHeld", { difference: units.difference(Math.round(held_difference_s.value)).words });
  if (passes_s === null) return words("whyNothingBack", { gained: units.time(first_s) });
  return words("whyLeads", { gained: units.time(first_s), passes: units.time(passes_s), back: units.time(second_s) });
}

/** @param {State} state @param {Answer} answer @param {Traded} traded */
export function why(state, answer, traded) {
  const area = (/** @type {number} */ cda_m2) => units.quantity("area", cda_m2, state.units);
  return [
    paragraph(whyGist(answer, traded)),
    paragraph(
      words("whyMean", {
        low: area(answer.low_cda_m2),
        mean: area(answer.low_mean_cda_m2),
        kept: area(answer.steady_mean_cda_m2),
      }),
    ),
    paragraph(words("whyLate")),
    paragraph(words("whySplit")),
  ];
}

export function workedOut() {
  return html(
    "div",
    {},
    paragraph(words("howBoth")),
    formula(
      words("formulaSpoken"),
      [
        "A",
        "(",
        "t",
        ")",
        "=",
        subscript("A", words("fresh")),
        "+",
        "(",
        subscript("A", words("tired")),
        "−",
        subscript("A", words("fresh")),
        ")",
        fraction(
          ["t", "−", subscript("t", words("begins"))],
          [subscript("t", words("lost")), "−", subscript("t", words("begins"))],
        ),
      ],
      { block: true },
    ),
    symbols([
      ["A", words("symbolA")],
      [`t ${words("begins")}`, words("symbolBegins")],
      [`t ${words("lost")}`, words("symbolLost")],
    ]),
    paragraph(words("howShare", { share: units.percent(0.6) })),
    paragraph(words("howDoubt")),
    paragraph(words("howAssumed")),
    citations(["martin-1998", "polanco-2020", "faulkner-2021", "kordi-2019", "peveler-2005"]),
  );
}

export function shareTable() {
  const grid = table({ caption: words("tableCaption") });
  return {
    element: grid.element,
    /** @param {Answer} answer */
    update({ columns: { share, difference_s, difference_sd_s } }) {
      grid.update({
        columns: [words("columnHeld"), words("columnDifference"), "±"],
        rows: Array.from(share, (one, i) => [
          units.percent(one),
          units.difference(Math.round(difference_s[i])).words,
          units.plusMinusTime(difference_sd_s[i]),
        ]),
      });
    },
    destroy: grid.destroy,
  };
}
