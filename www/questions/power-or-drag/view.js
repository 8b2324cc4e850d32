// @ts-check
/** The page of "More power, or less drag?". */

import { answer as answerPart } from "../../parts/answer.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { ruler } from "../../parts/ruler.js";
import { sentence } from "../../parts/sentence.js";
import { exchangeTable } from "./exchange.js";
import { tradeMap } from "./map.js";
import { timesTable } from "./times.js";
import { takesGist, takesInBrief, takesInFull } from "./takes.js";
import { airShare, whyGist, why, workedOut } from "./worked-out.js";
import { titleOf } from "../shared/names.js";
import { request } from "../power-or-drag.js";
import { savingsThatAddUp } from "../shared/adding-up.js";
import { differs } from "../shared/difference.js";
import { courseChoice } from "../shared/course-choice.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { draws } from "../shared/draws.js";
import { effortChoice } from "../shared/effort-choice.js";
import { layOut } from "../shared/layout.js";
import { odds } from "../shared/odds.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";

/** @import { Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const ID = "power-or-drag";
const AT = `with.${ID}`;

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
  const { units } = tools;
  const distance = distanceChoice(tools);
  const course = courseChoice(tools);
  const effort = effortChoice(tools, { at: `${AT}.effort`, suggest: () => ({ power_w: shown ? Math.round(shown.answer.base_power_w) : 235 }) });
  const cda = tools.number({ path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`, meaning: "drag" });
  const day = weather(tools);
  const power = tools.number({ path: `${AT}.power_change`, meaning: "power", label: "More power by", min: 0 });
  const drag = tools.number({ path: `${AT}.cda_change`, meaning: "drag", label: "Less drag by", negative: true, max: 0 });
  const ask = sentence({
    title: titleOf(ID),
    words: [distance, " of ", course, ", ", effort, " at a CdA of ", cda, " ", day, ", which is worth more: ", power, " more power or ", drag, " less drag?"],
    onOpen: () => tools.openSheet(),
  });

  const verdict = answerPart();
  const balance = ruler({ left: { words: "less drag", mark: "drag", meaning: "drag" }, right: { words: "more power", mark: "power", meaning: "power" } });
  const results = lines({ caption: "The three finish times" });
  const doubts = warningList(tools);
  const map = tradeMap(tools, AT, () => shown);
  const worth = html("p", { class: "also" });
  const takes = takesInBrief(tools);
  const surer = surerNote(tools);
  const caution = html("p", { class: "caution" }, strong("Before you go lower: "),
    "see where you are going, and keep hard efforts and new positions for quiet roads. Event rules, traffic law and a fitter’s or doctor’s advice come before seconds.");

  const reasons = html("div");
  const price = takesInFull(tools);
  const exchange = exchangeTable(tools);
  const times = timesTable(tools, ID);
  const foldList = folds([
    { id: "why", name: "Why?", body: reasons },
    { id: "takes", name: "What each takes", body: price.element },
    { id: "exchange", name: "What one is worth in the other", body: exchange.element },
    { id: "how", name: "How it is worked out", gist: "The same ride twice, one number changed, so what is common to both cancels.", body: workedOut },
    { id: "table", name: "As a table", gist: "Finish times for round powers and drag areas around yours.", body: times.element, onToggle: () => redraw() },
    ...tools.lastFolds(ID),
  ]);
  const drawn = draws(tools, ID, redraw);
  layOut(host, { ask: ask.element, answer: [verdict.element, balance.element, results.element, doubts.element], picture: [map.element, takes.element], notes: [worth, surer.element, caution], folds: foldList.element });

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    const told = [distance, course, effort, cda, day, power, drag].map((field) => field.update(state, error)).includes(true);
    ask.update({ known: tools.known(state), wrong: tools.trouble(error, told) });
    if (!answer) return;
    // What the core refuses is not what the answer is about.
    shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    if (!error) drawn.update(request(state));
    redraw();
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const { power_change, cda_change } = state.with[ID];
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const saved = savingsThatAddUp(answer.difference_s.value, answer.more_power_saves_s.value, answer.less_drag_saves_s.value);
    const [morePower, lessDrag] = [`${units.percent(power_change, 1).replace(".0", "")} more power`, `${units.percent(-cda_change, 1).replace(".0", "")} less drag`];

    drawVerdict(answer, saved.difference_s, settled);
    const base_s = Math.round(answer.base_time_s.value);
    results.update([
      { mark: "you", name: "As you are", value: units.time(base_s), difference: units.plusMinusTime(answer.base_time_s.sd), soft: true },
      { mark: "power", name: units.quantity("power", answer.more_power_w, state.units, { digits: 0 }), value: units.time(base_s - saved.first_s), difference: differs(saved.first_s) },
      { mark: "drag", name: units.quantity("area", answer.less_drag_cda_m2, state.units), value: units.time(base_s - saved.second_s), difference: differs(saved.second_s) },
    ]);
    doubts.update(answer.warnings);
    map.update(state, answer, { saved, settled, morePower, lessDrag });
    drawWorth(state, answer);
    takes.update(state, answer, base_s - saved.first_s);
    price.update(state, answer);
    exchange.update(state, answer);
    surer.update(answer.surer, { sd: answer.difference_s.sd, plusMinus: units.plusMinusTime, of: "the difference" });
    say(reasons, why(tools, answer, power_change, cda_change));
    times.update(foldList.isOpen("table") ? state : null, answer);
    foldList.update({ why: { gist: whyGist(tools, answer) }, takes: { gist: takesGist(answer) }, exchange: { gist: exchange.gist(state, answer) } });
  }

  /** @param {Answer} answer @param {number} whole_s @param {boolean} settled */
  function drawVerdict({ difference_s }, whole_s, settled) {
    const taken = drawn.drawn();
    const powerAhead = difference_s.value >= 0;
    const [winner, loser] = powerAhead ? ["More power", "less drag"] : ["Less drag", "more power"];
    const meaning = powerAhead ? "power" : "drag";
    const { weight, words } = odds({ value: Math.abs(difference_s.value), sd: difference_s.sd }, taken && !powerAhead ? { ...taken, share_positive: 1 - taken.share_positive } : taken);
    const { way, short, figure } = units.difference(whole_s || difference_s.value);
    const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
    const level = way === "level";
    const spoken = level ? "More power and less drag are level." : `${winner} is faster than ${loser} by ${figure}, plus or minus ${spread}${words ? `: ${words}` : ""}.`;
    verdict.update({ mark: level ? null : meaning, claim: level ? "The two are level" : [strong(winner, meaning), " is faster by"], figure: short, spread: difference_s.sd > 0 ? spread : null, odds: words, weight, settled, spoken });
    balance.update({
      value: difference_s.value, sd: difference_s.sd, range: taken ? [taken.low_95, taken.high_95] : undefined, format: units.time, ease: settled,
      spoken: `From less drag on the left to more power on the right: ${winner.toLowerCase()} is ahead by ${figure}, two times in three within ${spread} of that.`,
    });
  }

  /** @param {State} state @param {Answer} answer */
  function drawWorth(state, { exchange: rates, equal_power_change, base_power_w, aero_share, tie_aero_share }) {
    const { cda_change } = state.with[ID];
    const watts = (/** @type {number} */ value) => strong(units.quantity("power", value, state.units, { digits: value < 10 ? 1 : 0 }));
    say(worth, [
      "One percent of CdA is worth ", watts(rates.w_per_cda_percent), " to you",
      ...(equal_power_change && cda_change < 0 ? [`; ${units.percent(-cda_change)} is worth `, watts(equal_power_change.value * base_power_w)] : []),
      ". Air takes ", strong(airShare(tools, aero_share)), "; ",
      ...(tie_aero_share ? ["on a flat road the two changes tie when it takes ", strong(units.percent(tie_aero_share)), "."] : ["no share would make these two changes tie."]),
    ]);
  }

  return {
    update,
    destroy() {
      drawn.destroy();
      verdict.destroy();
      balance.destroy();
      map.destroy();
      times.destroy();
    },
  };
}
