// @ts-check
/** The models side by side: their numbers, how far the efforts scatter about each, and the evidence for each. */

import { choice } from "../../parts/choice.js";
import { html, say } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import { amountOf } from "../../state/scenario.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { listOf } from "../shared/list.js";
import { inHundred, modelName, modelNumbers } from "./figures.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { ModelFit, PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-curve");
const MODEL = "with.power-curve.model";
/** A peak power takes an effort shorter than this. */
const SHORT_S = 120;
const ITSELF = "";

/** @param {Tools} tools */
export function modelTable(tools) {
  const { store } = tools;
  const pick = choice({
    label: words("readBy"),
    path: MODEL,
    options: [],
    onChange: (value) => store.set(MODEL, value || undefined),
  });
  const grid = table({ caption: words("modelsCaption") });
  grid.element.classList.add("wordy");
  const forms = html("p");
  const compared = html(
    "div",
    { class: "passage" },
    html("p", {}, `${words("readBy")} `, pick.element),
    pick.note,
    grid.element,
    html("p", {}, words("evidenceSays")),
    forms,
  );
  const none = html("p", {}, words("modelsNone"));
  const element = html("div", {}, none, compared);

  /** @param {ModelFit} fit @param {State} state */
  function outcome({ outcome, model }, { scenario, units }) {
    if (outcome === "compared") return "";
    if (outcome === "not-reached" && model === "log-decline") return words("outcome.notReachedLog");
    const minutes = (/** @type {number} */ time_s) => show.quantity("duration", time_s, units, { digits: 0 });
    const from_s = scenario.power.long_ride_from_s;
    return words(`outcome.${outcome}`, { short: minutes(SHORT_S), long: minutes(amountOf(from_s ?? 0)) });
  }

  return {
    element,
    destroy: grid.destroy,
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      none.hidden = answer.models.length > 0;
      compared.hidden = answer.models.length === 0;
      pick.update({
        options: [
          { value: ITSELF, name: words("byItself") },
          ...answer.models.map((fit) => ({ value: fit.model, name: modelName(fit.model), disabled: !hasCurve(fit) })),
        ],
        value: state.with["power-curve"].model ?? ITSELF,
      });
      grid.update({
        columns: [words("model"), words("evidence"), words("scatter"), words("parameters")],
        rows: answer.models.map((fit) => [
          modelName(fit.model),
          fit.weight === null ? "" : inHundred(fit.weight),
          fit.scatter_share === null ? "" : show.percent(fit.scatter_share, 1),
          [
            listOf(modelNumbers(state, fit).map(({ name, value, spread }) => `${name} ${value} ${spread}`)),
            outcome(fit, state),
          ]
            .filter(Boolean)
            .join("; "),
        ]),
      });
      const { forms: three } = answer;
      const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
      const kilojoules = (/** @type {number} */ j) => show.quantity("work", j, state.units, { digits: 1 });
      say(
        forms,
        three
          ? words("formsSay", {
              cpA: watts(three.cp_w[0]),
              cpB: watts(three.cp_w[1]),
              cpC: watts(three.cp_w[2]),
              wA: kilojoules(three.w_prime_j[0]),
              wB: kilojoules(three.w_prime_j[1]),
              wC: kilojoules(three.w_prime_j[2]),
            })
          : "",
      );
    },
  };
}

/** @param {ModelFit} fit */
function hasCurve(fit) {
  return fit.outcome === "compared" || fit.outcome === "partly";
}
