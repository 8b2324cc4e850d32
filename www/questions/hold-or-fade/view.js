// @ts-check
/** The page of "Is a faster position worth it if I can't hold it?". */

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
import { LOWER_BARS, meanAndSd } from "../shared/published.js";
import { requestOf } from "../shared/request.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { breakEven } from "./break-even.js";
import { differenceByShare, dragOverRide } from "./charts.js";
import { LOW } from "./lower-by.js";
import { lostNear, positionsSentence } from "./positions.js";
import { shareTable, why, whyGist, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("hold-or-fade");
const shared = book("shared");
const ID = "hold-or-fade";
const AT = `with.${ID}`;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  const { store, units } = tools;
  const distance = distanceChoice(tools);
  const course = courseChoice(tools);
  const effort = effortChoice(tools, {
    at: `${AT}.effort`,
    suggest: () => ({ power_w: shown ? Math.round(shown.answer.low_power_w) : 235 }),
  });
  const positions = positionsSentence(tools, AT);
  const ask = sentence({
    title: titleOf(ID),
    words: words.parts("ask", { distance, course, effort, ...positions.fields }),
    onOpen: () => tools.openSheet(),
  });

  const verdict = answerPart();
  const balance = ruler({
    left: { words: words("rulerKept"), mark: "drag", meaning: "drag" },
    right: { words: words("rulerLow"), mark: "hold", meaning: "hold" },
  });
  const results = lines({ caption: words("threeTimes") });
  const doubts = warningList(tools);
  const add = html("button", { type: "button" }, words("addLow"));
  add.addEventListener("click", addLow);
  const single = html("p", { class: "also", hidden: true }, ...words.parts("needsTwo", { add }));

  const overRide = dragOverRide(tools, AT);
  const byShare = differenceByShare(tools, AT, () => shown);
  const level = html("p", { class: "also" });
  const takes = html("p", { class: "takes" });
  /** Leads to what the lower position costs: at the same watts, to the even efforts that count it. */
  const onToCost = html("button", { type: "button" });
  onToCost.addEventListener("click", () => {
    const { effort, low } = store.get().with[ID];
    if (effort.kind === "power") store.set(`${AT}.effort`, { kind: "even" });
    else tools.openSheet(`scenario.positions[${low}].cp_factor`);
  });
  const surer = surerNote(tools, { open: (field) => field === "with.lower_by_m2" && positions.focusLowerBy() });
  const caution = html("p", { class: "caution" }, ...words.parts("caution"));

  const reasons = html("div");
  const grid = shareTable(tools);
  const foldList = folds([
    { id: "why", name: shared("why"), body: reasons },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: () => workedOut(tools) },
    { id: "table", name: shared("asTable"), gist: words("tableGist"), body: grid.element },
    ...tools.lastFolds(ID),
  ]);
  const compared = [verdict, balance, results, doubts, overRide, byShare, surer, foldList]
    .map(({ element }) => element)
    .concat(level, takes);
  const drawn = draws(tools, ID, redraw);
  layOut(host, {
    ask: ask.element,
    answer: [single, verdict.element, balance.element, results.element, doubts.element],
    picture: [overRide.element, byShare.element, takes],
    notes: [level, surer.element, caution],
    folds: foldList.element,
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
    if (!error) drawn.update(requestOf(question, state));
    redraw();
  }

  function addLow() {
    const { scenario } = store.get();
    const { steady } = store.at(AT);
    const at = scenario.positions[steady] ? steady : 0;
    const kept = scenario.positions[at];
    const low = tools.newPosition({
      ...LOW,
      name: words("lowLine"),
      cda_m2: { ...kept.cda_m2, value: kept.cda_m2.value - question.defaults.lower_by_m2.value },
      fade: lostNear(tools, "fade", kept),
    });
    store.setAll([
      ["scenario.positions", [...scenario.positions, low]],
      [`${AT}.steady`, at],
      [`${AT}.low`, scenario.positions.length],
    ]);
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const traded = savingsThatAddUp(
      answer.difference_s.value,
      answer.gained_s ?? answer.difference_s.value,
      answer.given_back_s ?? 0,
    );
    const held_s = Math.round(answer.held_difference_s.value);
    const steady_s = Math.round(answer.steady_time_s.value);

    drawVerdict(answer, traded.difference_s, settled);
    results.update([
      {
        mark: "drag",
        name: words("rowKept"),
        value: units.time(steady_s),
        difference: units.plusMinusTime(answer.steady_time_s.sd),
        soft: true,
      },
      {
        mark: "you",
        name: words("rowLow"),
        value: units.time(steady_s - traded.difference_s),
        difference: differs(traded.difference_s),
      },
      { mark: "hold", name: words("rowHeld"), value: units.time(steady_s - held_s), difference: differs(held_s) },
    ]);
    doubts.update(answer.warnings);
    overRide.update(state, answer, { gained_s: traded.first_s, given_back_s: traded.second_s, settled });
    byShare.update(state, answer, { whole_s: traded.difference_s, settled });
    say(level, breakEven(tools, state, answer));
    drawTakes(state);
    surer.update(answer.surer, { sd: answer.difference_s.sd, plusMinus: units.plusMinusTime, of: "difference" });
    say(reasons, why(tools, state, answer, traded));
    grid.update(answer);
    foldList.update({
      why: { gist: whyGist(tools, answer, traded) },
      table: { hidden: answer.columns.share.length === 0 },
    });
  }

  /** @param {Answer} answer @param {number} whole_s @param {boolean} settled */
  function drawVerdict({ difference_s }, whole_s, settled) {
    const taken = drawn.value();
    const chances = odds(difference_s, taken);
    const { way, short, figure } = units.difference(whole_s || difference_s.value);
    const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
    const as = way === "level" ? "Level" : way === "faster" ? "Faster" : "Slower";
    verdict.update({
      mark: "hold",
      claim: words.parts(`claim${as}`, { low: strong(words("lowPosition"), "hold") }),
      figure: short,
      spread: difference_s.sd > 0 ? spread : null,
      odds: chances.words,
      weight: chances.weight,
      settled,
      spoken: spokenAnswer(words(`spoken${as}`, { figure, spread }), chances.words),
    });
    balance.update({
      value: difference_s.value,
      sd: difference_s.sd,
      range: taken ? [taken.low_95, taken.high_95] : undefined,
      format: units.time,
      ease: settled,
      spoken: words(`ruler${as}`, { figure, spread }),
    });
  }

  /** @param {State} state */
  function drawTakes(state) {
    const same = state.with[ID].effort.kind === "power";
    say(onToCost, words(same ? "compareEven" : "setCost"));
    say(
      takes,
      words.parts(same ? "takesWatts" : "takesEven", {
        lead: strong(words("takesLead"), "hold"),
        cost: meanAndSd(LOWER_BARS.power),
        set: onToCost,
      }),
    );
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
