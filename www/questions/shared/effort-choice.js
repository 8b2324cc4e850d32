// @ts-check
/** How hard, in a sentence: the best even effort, given watts, or the watts that a finish time takes. */

import { choice } from "../../parts/choice.js";
import { book } from "../../words/index.js";
import { clause } from "./clause.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { EffortKind } from "../../types/core.d.ts" */

const words = book("shared");

/** What each is called in the sentence. */
const NAMES = /** @type {const} */ ({ even: "even", power: "holding", time: "finishIn" });
const START_POWER_W = 250;

/**
 * "at my best even effort (CP [250 W], W′ [20 kJ])", "holding [260 W]", "to finish in [59:00]"
 * @param {Tools} tools
 * @param {{ at: string, kinds?: (state: State) => EffortKind[], suggest?: () => { power_w?: number, time_s?: number } }} options
 *   `at` is where the question keeps its effort; `suggest` gives round figures to begin with when the kind changes
 */
export function effortChoice(tools, { at, kinds = () => ["even", "power"], suggest = () => ({}) }) {
  const { store } = tools;
  const pick = choice({ label: words("howHard"), path: at, options: [], meaning: "power", onChange: change });
  const cp = tools.number({ path: "scenario.power.cp_w", meaning: "power" });
  const wPrime = tools.number({ path: "scenario.power.w_prime_j", meaning: "power" });
  const watts = tools.number({ path: `${at}.power_w`, meaning: "power" });
  const time = tools.number({ path: `${at}.time_s` });
  const curve = clause(" ", ...words.parts("fromCurve", { cp, wPrime }));
  const given = clause(" ", watts);
  const target = clause(" ", time);

  /** @param {string} kind */
  function change(kind) {
    const { power_w, time_s } = { power_w: START_POWER_W, time_s: 3600, ...suggest() };
    store.set(at, kind === "power" ? { kind, power_w } : kind === "time" ? { kind, time_s } : { kind });
  }

  return {
    ...clause(pick, curve, given, target),
    /** @param {State} state @param {import("../../core.js").CoreError | null} error @returns {boolean} */
    update(state, error) {
      const { kind } = store.at(at);
      pick.update({ options: kinds(state).map((value) => ({ value, name: words(NAMES[value]) })), value: kind });
      curve.show(kind === "even");
      given.show(kind === "power");
      target.show(kind === "time");
      const fields = kind === "even" ? [cp, wPrime] : kind === "power" ? [watts] : [time];
      return fields.map((field) => field.update(state, error)).includes(true);
    },
  };
}
