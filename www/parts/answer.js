// @ts-check
/** The answer: a claim, its figure as heavy as it is sure, the ± and the odds in words. */

import { html, say, set } from "./html.js";
import { mark } from "./marks.js";
import { plusOrMinus } from "./number-text.js";

/** @import { Words } from "./html.js" */
/** @import { MarkName } from "./marks.js" */
/** @import { Weight } from "./sureness.js" */

/**
 * @typedef {object} Answer
 * @property {MarkName | null} [mark]
 * @property {Words} claim "**More power** is faster by"
 * @property {string} figure "0:09"
 * @property {string} [unit] "mph", for a figure that is not a time.
 * @property {string | null} [spread] One standard deviation as text, without its ±.
 * @property {string} [odds] "all but certain"
 * @property {Weight} [weight]
 * @property {string} spoken The whole answer as one sentence, for those who hear the page.
 * @property {boolean} [settled] False while the rider is dragging: the weight of the figure then waits.
 */

/** An answer is spoken once it has stood still for this long. */
const QUIET_MS = 700;

/**
 * What is seen changes at once; what is heard follows when the hand rests, so that a drag does not chatter.
 */
export function answer() {
  const claim = html("span", { class: "claim" });
  const figure = html("b");
  const unit = html("span", { class: "unit" });
  // Plain text: a term that explains itself made WebKit lay out this part without end; ± is explained under the sentence.
  const spread = html("span", { class: "pm" });
  const odds = html("span", { class: "odds" });
  const whole = html(
    "span",
    { class: "figure", "data-weight": "sure" },
    html("span", { class: "amount" }, figure, unit),
    html("span", { class: "how-sure" }, spread, odds),
  );
  const seen = html("p", { class: "verdict", "aria-hidden": "true" }, claim, whole);
  const heard = html("p", { class: "say", role: "status" });
  const element = html("div", { class: "answer-words" }, seen, heard);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;
  let lastSpoken = "";

  /** @param {string} spoken */
  function speakLater(spoken) {
    if (spoken === lastSpoken) return;
    clearTimeout(waiting);
    const first = lastSpoken === "";
    lastSpoken = spoken;
    if (first) say(heard, spoken);
    else waiting = setTimeout(() => say(heard, spoken), QUIET_MS);
  }

  return {
    element,
    /** @param {Answer} next */
    update(next) {
      const words = html("span");
      say(words, next.claim);
      say(claim, [...(next.mark ? [mark(next.mark)] : []), words]);
      say(figure, next.figure);
      say(unit, next.unit ?? "");
      set(unit, { hidden: !next.unit });
      say(spread, next.spread ? plusOrMinus(next.spread) : "");
      set(spread, { hidden: !next.spread });
      say(odds, next.odds ?? "");
      set(odds, { hidden: !next.odds });
      set(whole, { "data-length": next.figure.length > 6 ? "long" : next.figure.length > 4 ? "middling" : null });
      if (next.settled !== false) set(whole, { "data-weight": next.weight ?? "sure" });
      speakLater(next.spoken);
    },
    destroy() {
      clearTimeout(waiting);
    },
  };
}
