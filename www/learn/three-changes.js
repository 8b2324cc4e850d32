// @ts-check
/** Eighth: three changes and one budget, and which of them comes first. */

import { html, strong } from "../parts/html.js";
import { meaningOf } from "../questions/next-gain/candidates.js";
import { dotPlot } from "../questions/next-gain/dots.js";
import { distanceName } from "../questions/shared/distance-names.js";
import { listOf } from "../questions/shared/list.js";
import { nameOf } from "../questions/shared/names.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { THREE, whichFirst } from "./rider.js";
import { numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { NextGainAnswer } from "../types/core.d.ts" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** A budget to try: enough for the two that cost most. */
const ENOUGH = 240;

/** @param {Tools} tools @returns {Step} */
export function threeChanges(tools) {
  const budget = numberOf(tools, "budget", { label: words("threeBudget"), kind: "ratio", digits: 0, step: 10 });
  const dots = dotPlot({ title: words("threeChart"), legend: html("span", {}, words("threeLegend")) });
  const frame = stepFrame({
    title: words("threeTitle"),
    words: words.parts("threeAsk", { budget }),
    toTry: words("threeTry", { budget: show.number(ENOUGH) }),
    chart: dots.element,
    notes: [
      html("p", { class: "takes" }, words("threeAssumed", { question: nameOf("next-gain") })),
      html("p", { class: "caution" }, words("threeCaution")),
    ],
  });

  return {
    element: frame.element,
    destroy: dots.destroy,
    update(state, numbers) {
      const answer = whichFirst(numbers);
      const { candidates, ranked, best, events } = answer;
      const distance = distanceName(events[0].distance_m, state.units);
      const first = ranked[0];
      frame.update(state, [
        ...words.parts(best?.candidates.length ? "threeSays" : "threeNothing", {
          distance,
          names: strong(namesOf(answer)),
          figure: show.differenceWords(Math.round(best?.expected_s.value ?? 0)),
        }),
        " ",
        words("threeMost", { first: nameAt(first), average: show.time(candidates[first].expected_s.value) }),
        " ",
        ...words.parts("threeMoral"),
      ]);
      frame.since(numbers, ["budget", "cda_m2"], () =>
        words("threeSince", { names: namesOf(whichFirst(BEGAN)) || words("threeNone") }),
      );
      const chosen = new Set(best?.candidates);
      dots.update({
        dots: ranked.map((c) => {
          const { candidate, expected_s, saves_s } = candidates[c];
          return {
            name: words("threeCosts", { name: nameAt(c), money: show.number(candidate.money) }),
            average: expected_s.value,
            works: saves_s.value,
            sd: saves_s.sd,
            figure: show.time(expected_s.value),
            meaning: meaningOf(candidate),
            chosen: chosen.has(c),
          };
        }),
        axisName: words("threeAxis", { distance }),
        format: show.time,
        desc: words("threeDescription", {
          first: nameAt(first),
          average: show.time(candidates[first].expected_s.value),
        }),
      });
    },
  };
}

/** @param {number} place */
const nameAt = (place) => words(THREE[place].name);

/** @param {NextGainAnswer} answer */
const namesOf = ({ ranked, best }) => listOf(ranked.filter((c) => best?.candidates.includes(c)).map(nameAt));
