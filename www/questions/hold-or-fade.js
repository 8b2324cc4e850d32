// @ts-check
/** Is a faster position worth it if I can't hold it? */

import { answer as answerPart } from "../parts/answer.js";
import { folds } from "../parts/folds.js";
import { html, say, strong } from "../parts/html.js";
import { lines } from "../parts/lines.js";
import { ruler } from "../parts/ruler.js";
import { sentence } from "../parts/sentence.js";
import { lostNear, lowerByOf, positionsSentence } from "./hold-or-fade/positions.js";
import { dragOverRide, differenceByShare } from "./hold-or-fade/charts.js";
import { shareTable, why, whyGist, workedOut } from "./hold-or-fade/worked-out.js";
import { breakEven } from "./hold-or-fade/break-even.js";
import { titleOf } from "./shared/names.js";
import { savingsThatAddUp } from "./shared/adding-up.js";
import { differs } from "./shared/difference.js";
import { courseChoice } from "./shared/course-choice.js";
import { distanceChoice } from "./shared/distance-choice.js";
import { draws } from "./shared/draws.js";
import { effortOf } from "./shared/effort.js";
import { effortChoice } from "./shared/effort-choice.js";
import { layOut } from "./shared/layout.js";
import { odds } from "./shared/odds.js";
import { surerNote } from "./shared/surer.js";
import { warningList } from "./shared/warnings.js";

/** @import { Question, Tools, View } from "./index.js" */
/** @import { State } from "../state/history.js" */
/** @import { CoreError } from "../core.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../types/core.d.ts" */

const ID = "hold-or-fade";
const AT = `with.${ID}`;
/** A low position to begin with: a little below the usual drag area, and lost as the fields' own defaults say. */
const LOW = { name: "position.low", cda_m2: { value: 0.226, sd: 0.04, source: "typical" }, fade: {} };

/** @type {Question} */
export const question = {
  id: ID,
  group: "understand",
  defaults: { low: 1, steady: 0, lower_by_m2: { value: 0.014, sd: 0.003, source: "typical" }, effort: { kind: "power", power_w: 235 } },
  positionFields: ["low", "steady"],
  positions: [LOW],
  request,
  load: async () => ({ create }),
};

/** @param {State} state */
function request({ scenario, with: details }) {
  const asked = { ...details[ID], effort: effortOf(details[ID].effort) };
  const kept = scenario.positions[asked.steady];
  const low = scenario.positions[asked.low];
  if (!kept || !low) return { scenario, with: asked };
  return { scenario, with: { ...asked, lower_by_m2: { ...asked.lower_by_m2, value: lowerByOf(kept, low) } } };
}

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
function create(host, tools) {
  const { store, units } = tools;
  const distance = distanceChoice(tools);
  const course = courseChoice(tools);
  const effort = effortChoice(tools, { at: `${AT}.effort`, suggest: () => ({ power_w: shown ? Math.round(shown.answer.low_power_w) : 235 }) });
  const positions = positionsSentence(tools, AT);
  const ask = sentence({ title: titleOf(ID), words: [distance, " of ", course, ", ", effort, ", ", ...positions.words], onOpen: () => tools.openSheet() });

  const verdict = answerPart();
  const balance = ruler({ left: { words: "the one you keep", mark: "drag", meaning: "drag" }, right: { words: "the low one", mark: "hold", meaning: "hold" } });
  const results = lines({ caption: "The three finish times" });
  const doubts = warningList(tools);
  const add = html("button", { type: "button" }, "Add a lower position");
  add.addEventListener("click", addLow);
  const single = html("p", { class: "also", hidden: true }, "Two different positions are needed for this: one that you can keep, and a lower one. ", add);

  const overRide = dragOverRide(tools, AT);
  const byShare = differenceByShare(tools, AT, () => shown);
  const level = html("p", { class: "also" });
  const takes = html("p", { class: "takes" });
  const surer = surerNote(tools, { open: (field) => field === "with.lower_by_m2" && positions.focusLowerBy() });
  const caution = html("p", { class: "caution" }, strong("Head down, you cannot see. "),
    "Try a new position away from traffic, in small steps, with a fitter if anything hurts. Event rules and traffic law come before seconds.");

  const reasons = html("div");
  const grid = shareTable(tools);
  const foldList = folds([
    { id: "why", name: "Why?", body: reasons },
    { id: "how", name: "How it is worked out", gist: "The same ride in both positions, so what is common to both cancels.", body: workedOut },
    { id: "table", name: "As a table", gist: "The difference at every share of the ride held, from none to all.", body: grid.element },
    ...tools.lastFolds(ID),
  ]);
  const compared = [verdict, balance, results, doubts, overRide, byShare, surer, foldList].map(({ element }) => element).concat(level, takes);
  const drawn = draws(tools, ID, redraw);
  layOut(host, {
    ask: ask.element, answer: [single, verdict.element, balance.element, results.element, doubts.element], picture: [overRide.element, byShare.element, takes],
    notes: [level, surer.element, caution], folds: foldList.element,
  });

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    const { low, steady } = state.with[ID];
    const pair = low !== steady && state.scenario.positions[low] && state.scenario.positions[steady];
    single.hidden = Boolean(pair);
    for (const element of compared) element.hidden = !pair;
    const told = [distance, course, effort, positions].map((part) => part.update(state, error)).includes(true) || !pair;
    ask.update({ known: tools.known(state, pair ? [steady, low] : [steady]), wrong: tools.trouble(error, told) });
    if (!answer || !pair) return;
    // What the core refuses is not what the answer is about.
    shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    if (!error) drawn.update(request(state));
    redraw();
  }

  function addLow() {
    const { scenario } = store.get();
    const { steady } = store.at(AT);
    const at = scenario.positions[steady] ? steady : 0;
    const kept = scenario.positions[at];
    const low = tools.newPosition({ ...LOW, cda_m2: { ...kept.cda_m2, value: kept.cda_m2.value - question.defaults.lower_by_m2.value }, fade: lostNear(tools, "fade", kept) });
    store.setAll([["scenario.positions", [...scenario.positions, low]], [`${AT}.steady`, at], [`${AT}.low`, scenario.positions.length]]);
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const traded = savingsThatAddUp(answer.difference_s.value, answer.gained_s ?? answer.difference_s.value, answer.given_back_s ?? 0);
    const held_s = Math.round(answer.held_difference_s.value);
    const steady_s = Math.round(answer.steady_time_s.value);

    drawVerdict(answer, traded.difference_s, settled);
    results.update([
      { mark: "drag", name: "The one you keep", value: units.time(steady_s), difference: units.plusMinusTime(answer.steady_time_s.sd), soft: true },
      { mark: "you", name: "Low, as you hold it", value: units.time(steady_s - traded.difference_s), difference: differs(traded.difference_s) },
      { mark: "hold", name: "Low, to the end", value: units.time(steady_s - held_s), difference: differs(held_s) },
    ]);
    doubts.update(answer.warnings);
    overRide.update(state, answer, { gained_s: traded.first_s, given_back_s: traded.second_s, settled });
    byShare.update(answer, { whole_s: traded.difference_s, settled });
    say(level, breakEven(tools, state, answer));
    drawTakes(state);
    surer.update(answer.surer, { sd: answer.difference_s.sd, plusMinus: units.plusMinusTime, of: "difference" });
    say(reasons, why(tools, state, answer, traded));
    grid.update(answer);
    foldList.update({ why: { gist: whyGist(tools, answer, traded) }, table: { hidden: answer.columns.share.length === 0 } });
  }

  /** @param {Answer} answer @param {number} whole_s @param {boolean} settled */
  function drawVerdict({ difference_s }, whole_s, settled) {
    const taken = drawn.drawn();
    const { weight, words } = odds(difference_s, taken);
    const { way, short, figure } = units.difference(whole_s || difference_s.value);
    const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
    const spoken = `The low position is ${way} by ${figure}, plus or minus ${spread}${words ? `: ${words}` : ""}.`;
    verdict.update({
      mark: "hold", claim: way === "level" ? ["The ", strong("low position", "hold"), " is level"] : ["The ", strong("low position", "hold"), ` is ${way} by`],
      figure: short, spread: difference_s.sd > 0 ? spread : null, odds: words, weight, settled, spoken,
    });
    balance.update({
      value: difference_s.value, sd: difference_s.sd, range: taken ? [taken.low_95, taken.high_95] : undefined, format: units.time, ease: settled,
      spoken: `From the position you keep on the left to the low position on the right: the low position is ${way} by ${figure}, two times in three within ${spread} of that.`,
    });
  }

  /** @param {State} state */
  function drawTakes(state) {
    const same = state.with[ID].effort.kind === "power";
    const set = html("button", { type: "button" }, same ? "Compare at best even effort" : "Set what it costs");
    set.addEventListener("click", () => (same ? store.set(`${AT}.effort`, { kind: "even" }) : tools.openSheet(`scenario.positions[${state.with[ID].low}].cp_factor`)));
    say(takes, [strong("What it takes. ", "hold"), "Staying low is practised, mile by mile. No published figure for how a position fades was found, so film yourself late in a hard ride. ",
      same ? "Here both are ridden at the same watts; " : "Here each is ridden at the best even effort your power curve allows in it; ",
      "published, lower bars also cost five riders 9.5\u00a0±\u00a05.4\u202f% of their power. ", set, "."]);
  }

  return {
    update,
    destroy() {
      drawn.destroy();
      verdict.destroy();
      balance.destroy();
      overRide.destroy();
      byShare.destroy();
      grid.destroy();
    },
  };
}
