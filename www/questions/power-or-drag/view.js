// @ts-check
/** More power, or less drag: the sentence, the answer, the map, and what each takes. */

import { answer as answerPart } from "../../parts/answer.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { ruler } from "../../parts/ruler.js";
import { sentence } from "../../parts/sentence.js";
import { book } from "../../words/index.js";
import { savingsThatAddUp } from "../shared/adding-up.js";
import { courseChoice } from "../shared/course-choice.js";
import { differs } from "../shared/difference.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { draws } from "../shared/draws.js";
import { effortChoice } from "../shared/effort-choice.js";
import { layOut } from "../shared/layout.js";
import { titleOf } from "../shared/names.js";
import { odds, spokenAnswer } from "../shared/odds.js";
import { shortPercent } from "../shared/published.js";
import { requestOf } from "../shared/request.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { exchangeTable } from "./exchange.js";
import { tradeMap } from "./map.js";
import { takesGist, takesInBrief, takesInFull } from "./takes.js";
import { timesTable } from "./times.js";
import { why, whyGist, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
const shared = book("shared");
const ID = "power-or-drag";
const AT = `with.${ID}`;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  const { units } = tools;
  const distance = distanceChoice(tools);
  const course = courseChoice(tools);
  const effort = effortChoice(tools, {
    at: `${AT}.effort`,
    suggest: () => ({ power_w: shown ? Math.round(shown.answer.base_power_w) : 235 }),
  });
  const cda = tools.number({
    path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
    meaning: "drag",
  });
  const day = weather(tools);
  const power = tools.number({ path: `${AT}.power_change`, meaning: "power", label: words("morePowerBy"), min: 0 });
  const drag = tools.number({
    path: `${AT}.cda_change`,
    meaning: "drag",
    label: words("lessDragBy"),
    negative: true,
    max: 0,
  });
  const ask = sentence({
    title: titleOf(ID),
    words: words.parts("ask", { distance, course, effort, cda, day, power, drag }),
    onOpen: () => tools.openSheet(),
  });

  const verdict = answerPart();
  const balance = ruler({
    left: { words: words("lessDrag"), mark: "drag", meaning: "drag" },
    right: { words: words("morePower"), mark: "power", meaning: "power" },
  });
  const results = lines({ caption: words("threeTimes") });
  const doubts = warningList(tools);
  const map = tradeMap(tools, AT, () => shown);
  const worth = html("p", { class: "also" });
  const takes = takesInBrief(tools);
  const surer = surerNote(tools);
  const caution = html("p", { class: "caution" }, ...words.parts("caution"));

  const reasons = html("div");
  const price = takesInFull(tools);
  const exchange = exchangeTable(tools);
  const times = timesTable(tools, ID);
  const foldList = folds([
    { id: "why", name: shared("why"), body: reasons },
    { id: "takes", name: words("takes"), body: price.element },
    { id: "exchange", name: words("exchange"), body: exchange.element },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: () => workedOut(tools) },
    { id: "table", name: shared("asTable"), gist: words("timesGist"), body: times.element, onToggle: () => redraw() },
    ...tools.lastFolds(ID),
  ]);
  const drawn = draws(tools, ID, redraw);
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, balance.element, results.element, doubts.element],
    picture: [map.element, takes.element],
    notes: [worth, surer.element, caution],
    folds: foldList.element,
  });

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    const told = [distance, course, effort, cda, day, power, drag]
      .map((field) => field.update(state, error))
      .includes(true);
    ask.update({ known: tools.known(state), wrong: tools.trouble(error, told) });
    if (!answer) return;
    // What the core refuses is not what the answer is about.
    shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    if (!error) drawn.update(requestOf(question, state));
    redraw();
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const { power_change, cda_change } = state.with[ID];
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const saved = savingsThatAddUp(
      answer.difference_s.value,
      answer.more_power_saves_s.value,
      answer.less_drag_saves_s.value,
    );
    const morePower = words("powerChange", { percent: shortPercent(power_change) });
    const lessDrag = words("dragChange", { percent: shortPercent(-cda_change) });

    drawVerdict(answer, saved.difference_s, settled);
    const base_s = Math.round(answer.base_time_s.value);
    results.update([
      {
        mark: "you",
        name: words("asYouAre"),
        value: units.time(base_s),
        difference: units.plusMinusTime(answer.base_time_s.sd),
        soft: true,
      },
      {
        mark: "power",
        name: units.quantity("power", answer.more_power_w, state.units, { digits: 0 }),
        value: units.time(base_s - saved.first_s),
        difference: differs(saved.first_s),
      },
      {
        mark: "drag",
        name: units.quantity("area", answer.less_drag_cda_m2, state.units),
        value: units.time(base_s - saved.second_s),
        difference: differs(saved.second_s),
      },
    ]);
    doubts.update(answer.warnings);
    map.update(state, answer, { saved, settled, morePower, lessDrag });
    drawWorth(state, answer);
    takes.update(state, answer, base_s - saved.first_s);
    price.update(state, answer);
    exchange.update(state, answer);
    surer.update(answer.surer, { sd: answer.difference_s.sd, plusMinus: units.plusMinusTime, of: "difference" });
    say(reasons, why(tools, answer, power_change, cda_change));
    times.update(foldList.isOpen("table") ? state : null, answer);
    foldList.update({
      why: { gist: whyGist(tools, answer) },
      takes: { gist: takesGist(answer) },
      exchange: { gist: exchange.gist(state, answer) },
    });
  }

  /** @param {Answer} answer @param {number} whole_s @param {boolean} settled */
  function drawVerdict({ difference_s }, whole_s, settled) {
    const taken = drawn.value();
    const powerAhead = difference_s.value >= 0;
    const meaning = powerAhead ? "power" : "drag";
    const chances = odds(
      { value: Math.abs(difference_s.value), sd: difference_s.sd },
      taken && !powerAhead ? { ...taken, share_positive: 1 - taken.share_positive } : taken,
    );
    const { way, short, figure } = units.difference(whole_s || difference_s.value);
    const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
    const level = way === "level";
    const ahead = powerAhead
      ? words.parts("powerIsFaster", { power: strong(words("morePowerFirst"), meaning) })
      : words.parts("dragIsFaster", { drag: strong(words("lessDragFirst"), meaning) });
    verdict.update({
      mark: level ? null : meaning,
      claim: level ? words("twoAreLevel") : ahead,
      figure: short,
      spread: difference_s.sd > 0 ? spread : null,
      odds: chances.words,
      weight: chances.weight,
      settled,
      spoken: level
        ? words("spokenLevel")
        : spokenAnswer(words(powerAhead ? "spokenPower" : "spokenDrag", { figure, spread }), chances.words),
    });
    balance.update({
      value: difference_s.value,
      sd: difference_s.sd,
      range: taken ? [taken.low_95, taken.high_95] : undefined,
      format: units.time,
      ease: settled,
      spoken: words(powerAhead ? "rulerPower" : "rulerDrag", { figure, spread }),
    });
  }

  /** @param {State} state @param {Answer} answer */
  function drawWorth(state, { exchange: rates, equal_power_change, base_power_w, aero_share, tie_aero_share }) {
    const { cda_change } = state.with[ID];
    const watts = (/** @type {number} */ value) =>
      strong(units.quantity("power", value, state.units, { digits: value < 10 ? 1 : 0 }));
    const more = equal_power_change && cda_change < 0 ? equal_power_change.value * base_power_w : null;
    say(worth, [
      ...(more === null
        ? words.parts("onePercent", { watts: watts(rates.w_per_cda_percent) })
        : words.parts("onePercentAnd", {
            watts: watts(rates.w_per_cda_percent),
            percent: shortPercent(-cda_change),
            more: watts(more),
          })),
      " ",
      // Down a hill the air takes more than the rider gives.
      ...words.parts(aero_share <= 1 ? "airTakes" : "airTakesAll", { share: strong(units.percent(aero_share)) }),
      " ",
      ...(tie_aero_share ? words.parts("tiesAt", { tie: units.percent(tie_aero_share) }) : [words("neverTies")]),
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
