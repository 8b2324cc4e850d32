// @ts-check
/** Why the low position wins or loses, how it is worked out, and the differences as a table. */

import { formula, fraction, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

/** @typedef {{ first_s: number, second_s: number }} Traded what is gained and what is given back, rounded */

/** @param {Tools} tools @param {Answer} answer @param {Traded} traded */
export function whyGist({ units }, { passes_s, gained_s, held_difference_s }, { first_s, second_s }) {
  if (gained_s === null) return `Held to the end it would be ${units.difference(Math.round(held_difference_s.value)).words}.`;
  if (passes_s === null) return `It stays the lower one: ${units.time(first_s)} gained, nothing given back.`;
  return `It leads by ${units.time(first_s)} at ${units.time(passes_s)}, then gives back ${units.time(second_s)}.`;
}

/** @param {Tools} tools @param {State} state @param {Answer} answer @param {Traded} traded */
export function why(tools, state, answer, traded) {
  const { units } = tools;
  const area = (/** @type {number} */ cda_m2) => units.quantity("area", cda_m2, state.units);
  return [
    paragraph(whyGist(tools, answer, traded)),
    paragraph(`What counts is the mean over the ride. The low position starts at ${area(answer.low_cda_m2)}, but the air sees ${area(answer.low_mean_cda_m2)} on average, against ${area(answer.steady_mean_cda_m2)} in the one you keep.`),
    paragraph("A shape that goes late costs little; one that ends far above where you would have sat costs more in the last miles than it gave in the first. On a longer ride the same loss begins at a smaller share of it, so a shape for ten miles is not yet a shape for a hundred."),
    paragraph("The seconds gained and given back are split by the area between the two curves, which is right to first order; the difference itself is not split but ridden."),
  ];
}

export function workedOut() {
  return html("div", {},
    paragraph("The ride is worked out in both positions, with the same course, day and effort, drag area changing with time as drawn. What both rides share, the model’s own error included, cancels in the difference."),
    formula("drag area is the fresh one until it starts to go, then rises evenly to the tired one",
      ["A", "(", "t", ")", "=", subscript("A", "fresh"), "+", "(", subscript("A", "tired"), "−", subscript("A", "fresh"), ")", fraction(["t", "−", subscript("t", "begins")], [subscript("t", "lost"), "−", subscript("t", "begins")])], { block: true }),
    symbols([
      ["A", "drag area CdA, m²"],
      ["t begins", "when the position starts to go; before it the fresh value holds"],
      ["t lost", "when it is wholly lost; after it the tired value holds"],
    ]),
    paragraph("The share held is counted in its effect on the mean drag area: 60 % is as good as holding the low position for 60 % of the ride and sitting at the lost one for the rest. The ends of the break-even are found by solving for the share, the start of the loss and the tired drag area at which both finish together, the rest staying as it is."),
    paragraph("What is wrong with all drag areas alike moves both rides nearly alike, so the ± of the position you keep is shared by all three and nearly cancels; the ± of “lower by” and of the lost drag area do not."),
    paragraph("No published figure for how a position fades was found: the values you start from are assumed. Your own film and test laps are worth more."),
    citations(["martin-1998", "polanco-2020", "faulkner-2021", "kordi-2019", "peveler-2005"]));
}

/** @param {Tools} tools */
export function shareTable({ units }) {
  const grid = table({ caption: "By how much the low position is faster, for every share of the ride held" });
  return {
    element: grid.element,
    /** @param {Answer} answer */
    update({ columns: { share, difference_s, difference_sd_s } }) {
      grid.update({
        columns: ["Held", "difference", "±"],
        rows: Array.from(share, (one, i) => [units.percent(one), units.difference(Math.round(difference_s[i])).words, units.plusMinusTime(difference_sd_s[i])]),
      });
    },
    destroy: grid.destroy,
  };
}
