// @ts-check
/** What a published month of training would buy, beside the test that would have to show it. */

import { html, say } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { citations } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-curve");
/** How well 20-minute and 4-minute trials repeated in eight trained riders, as shares of power (four-and-twenty). */
const [TWENTY_MINUTES, FOUR_MINUTES] = [0.013, 0.02];
const ERROR = "with.power-curve.test_error_share";

/** @param {Tools} tools */
export function training(tools) {
  const error = tools.number({ path: ERROR, value: (state) => errorShare(state), label: words("repeats") });
  const [rise, held, shown, repeats] = Array.from({ length: 4 }, () => html("p"));
  const element = html(
    "div",
    {},
    rise,
    held,
    shown,
    html("p", {}, `${words("repeats")}: `, error.element),
    error.note,
    repeats,
    citations(["four-and-twenty", "laursen-2002"]),
  );

  /** @param {State} state */
  function errorShare(state) {
    return state.with["power-curve"].test_error_share ?? tools.field(ERROR)?.default ?? 0;
  }

  return {
    element,
    /** @param {State} state @param {Answer} answer */
    gist(state, { training: { rise_w } }) {
      const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0, signed: true });
      return words("trainingGist", { low: watts(rise_w[0]), high: watts(rise_w[1]) });
    },
    /** @param {State} state @param {Answer} answer */
    update(state, { training: now }) {
      error.update(state);
      const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
      const tests = (/** @type {number} */ count) => words("tests", { count });
      const [low, high] = now.rise_share.map((share) => show.percent(share, 1).replace(/[.,]0(?=\D)/, ""));
      const time = show.time(state.with["power-curve"].hold_s);
      say(rise, words("trainingSays", { low, high, time, lowW: watts(now.rise_w[0]), highW: watts(now.rise_w[1]) }));
      const [lowHeld, highHeld] = now.held_s;
      held.hidden = lowHeld === null || highHeld === null;
      if (lowHeld !== null && highHeld !== null)
        say(held, words("trainingHeld", { time, lowTime: show.time(lowHeld), highTime: show.time(highHeld) }));
      const repeatability = show.percent(errorShare(state), 1);
      say(
        shown,
        words("trainingShown", {
          shown: show.percent(now.shown_share, 1),
          error: repeatability,
          low,
          lowTests: tests(now.tests[0]),
          high,
          highTests: tests(now.tests[1]),
        }),
      );
      say(
        repeats,
        words("repeatsSay", {
          error: repeatability,
          twenty: show.percent(TWENTY_MINUTES, 1),
          four: show.percent(FOUR_MINUTES, 1),
        }),
      );
    },
  };
}
