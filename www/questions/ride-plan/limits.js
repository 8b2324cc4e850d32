// @ts-check
/** What a plan may ask: how many powers, the least and the greatest power, rounding, and how W′ comes back. */

import { choice } from "../../parts/choice.js";
import { html, say } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
const AT = "with.ride-plan";
const FORMS = /** @type {const} */ (["differential", "linear", "none"]);

/** @param {Tools} tools */
export function limitsPart(tools) {
  const targets = tools.number({ path: `${AT}.targets` });
  const least = tools.number({ path: `${AT}.least_w`, meaning: "power" });
  const greatest = tools.number({ path: `${AT}.greatest_w`, meaning: "power" });
  const round = tools.number({ path: `${AT}.round_w`, meaning: "power" });
  const numbers = [targets, least, greatest, round];
  const form = choice({
    label: words("recovery"),
    path: `${AT}.recovery`,
    options: FORMS.map((value) => ({ value, name: words(value) })),
    onChange: (value) => tools.store.set(`${AT}.recovery`, value),
  });
  const note = html("p", { class: "small" });
  const elements = { targets: targets.element, least: least.element, greatest: greatest.element, round: round.element };
  return {
    element: html(
      "div",
      {},
      html("p", {}, ...words.parts("between", elements)),
      ...numbers.map((number) => number.note),
      html("p", {}, ...words.parts("comesBack", { form: form.element })),
      note,
    ),
    /** @param {State} state */
    follow(state) {
      form.update({ value: state.with["ride-plan"].recovery });
    },
    /** @param {State} state @param {CoreError | null} error */
    update: (state, error) => numbers.map((number) => number.update(state, error)).includes(true),
    /** @param {State} state @param {Answer} answer */
    draw({ units }, { w_prime_least }) {
      const work = (/** @type {number} */ joules) => show.quantity("work", joules, units, { digits: 1 });
      say(
        note,
        words("recoveryNote", {
          differential: work(w_prime_least.differential_j),
          linear: work(w_prime_least.linear_j),
          none: work(w_prime_least.none_j),
        }),
      );
    },
  };
}
