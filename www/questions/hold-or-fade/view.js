// @ts-check
/** The page of "Is a faster position worth it if I can't hold it?". */

import { answer as answerPart } from "../../parts/answer.js";
import { html, say, set, strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { amountOf } from "../../state/scenario.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { savingsThatAddUp } from "../shared/adding-up.js";
import { caution } from "../shared/caution.js";
import { courseChoice } from "../shared/course-choice.js";
import { differenceRuler, differs } from "../shared/difference.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { furtherFigure, rideName } from "../shared/distance-names.js";
import { draws } from "../shared/draws.js";
import { effortChoice } from "../shared/effort-choice.js";
import { odds, spokenAnswer } from "../shared/odds.js";
import { LOWER_BARS, meanAndSd } from "../shared/published.js";
import { paragraphPiece, passagePiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { breakEven } from "./break-even.js";
import { differenceByShare, dragOverRide } from "./charts.js";
import { LOW } from "./lower-by.js";
import { lostNear, positionsSentence } from "./positions.js";
import { shareTable, why, whyGist, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { Held } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @typedef {ReturnType<typeof draws>} Draws */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("hold-or-fade");
const shared = book("shared");
const ID = "hold-or-fade";
const AT = `with.${ID}`;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const drawn = draws(tools, ID, page.redraw);
  const { focusLowerBy, ...ask } = asked(tools, page);
  const single = html(
    "p",
    { class: "also", hidden: true },
    ...words.parts("needsTwo", { add: addButton(tools, question) }),
  );
  return page.show({
    ...ask,
    known: (state) => tools.known(state, pairOf(state) ? placesOf(state) : placesOf(state).slice(0, 1)),
    compares: (state) => pairOf(state) !== null,
    follow: (state) => set(single, { hidden: pairOf(state) !== null }),
    answer: [
      { element: single },
      verdict(drawn),
      paragraphPiece("also", inFixedTime),
      balance(drawn),
      threeTimes(),
      doubts(tools),
    ],
    picture: [...charts(tools, page), takes(tools)],
    notes: [
      paragraphPiece("also", ({ state, answer }) => breakEven(state, answer)),
      surer(tools, focusLowerBy),
      caution(words.parts("caution")),
    ],
    folds: foldsOf(),
    work: drawn,
  });
}

/** What the low position comes to where the course goes by time. @param {Shown<Answer>} shown */
function inFixedTime({ state, answer: { distance_m, duration_s, further_m } }) {
  if (!further_m) return "";
  return words("inFixedTime", {
    ride: rideName({ distance_m, duration_s }, state.units),
    further: furtherFigure(further_m, state.units),
  });
}

/** Where both positions stand: the one that is kept, and the low one. @param {State} state */
const placesOf = ({ with: { [ID]: own } }) => [own.steady, own.low];

/** Both positions, if there are two. @param {State} state */
function pairOf(state) {
  const [kept, low] = placesOf(state).map((place) => state.scenario.positions[place]);
  return kept && low && kept !== low ? { kept, low } : null;
}

/** The sentence. @param {Tools} tools @param {Shell<Answer>} page */
function asked(tools, page) {
  const suggest = () => ({ power_w: Math.round(page.answer()?.low_power_w ?? 235) });
  const distance = distanceChoice(tools);
  const course = courseChoice(tools);
  const effort = effortChoice(tools, { at: `${AT}.effort`, suggest });
  const positions = positionsSentence(tools, AT);
  return {
    words: () => words.parts("ask", { distance, course, effort, ...positions.fields }),
    fields: [distance, course, effort, positions],
    focusLowerBy: positions.focusLowerBy,
  };
}

/** Another number that is known as well. @param {Held} held @param {number} value @returns {Held} */
export const withValue = (held, value) => (typeof held === "object" ? { ...held, value } : value);

/** Adds a position below the one that is kept. @param {Tools} tools @param {Question} question */
function addButton(tools, { defaults }) {
  const { store } = tools;
  const button = html("button", { type: "button" }, words("addLow"));
  button.addEventListener("click", () => {
    const { scenario } = store.get();
    const { steady } = store.at(AT);
    const at = scenario.positions[steady] ? steady : 0;
    const kept = scenario.positions[at];
    const low = tools.newPosition({
      ...LOW,
      name: words("lowLine"),
      cda_m2: withValue(kept.cda_m2, amountOf(kept.cda_m2) - amountOf(/** @type {Held} */ (defaults.lower_by_m2))),
      fade: lostNear(tools, "fade", kept),
    });
    store.setAll([
      ["scenario.positions", [...scenario.positions, low]],
      [`${AT}.steady`, at],
      [`${AT}.low`, scenario.positions.length],
    ]);
  });
  return button;
}

/** @returns {FoldPiece<Answer>[]} */
function foldsOf() {
  return [
    {
      id: "why",
      name: shared("why"),
      gist: ({ answer }) => whyGist(answer, tradedOf(answer)),
      body: passagePiece(({ state, answer }) => why(state, answer, tradedOf(answer))),
    },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: () => workedOut() },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("tableGist"),
      hidden: ({ answer }) => answer.columns.share.length === 0,
      body: piece(shareTable(), (grid, { answer }) => grid.update(answer)),
    },
  ];
}

/** What is gained while the position is held, given back after, and left, so that the three add up. @param {Answer} answer */
const tradedOf = ({ difference_s, gained_s, given_back_s }) =>
  savingsThatAddUp(difference_s.value, gained_s ?? difference_s.value, given_back_s ?? 0);

/** The difference as it is told. @param {Answer} answer */
function toldOf(answer) {
  const { difference_s } = answer;
  const { way, short, figure } = units.difference(tradedOf(answer).difference_s || difference_s.value);
  const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
  const as = /** @type {const} */ ({ level: "Level", faster: "Faster", slower: "Slower" })[way];
  return { as, short, figure, spread };
}

/** @param {Draws} drawn @returns {Piece<Answer>} */
function verdict(drawn) {
  return piece(answerPart(), (part, { answer, settled }) => {
    const { as, short, figure, spread } = toldOf(answer);
    const chances = odds(answer.difference_s, drawn.value());
    part.update({
      mark: "hold",
      claim: words.parts(`claim${as}`, { low: strong(words("lowPosition"), "hold") }),
      figure: short,
      spread: answer.difference_s.sd > 0 ? spread : null,
      odds: chances.words,
      weight: chances.weight,
      settled,
      spoken: spokenAnswer(words(`spoken${as}`, { figure, spread }), chances.words),
    });
  });
}

/** @param {Draws} drawn @returns {Piece<Answer>} */
function balance(drawn) {
  const ends = /** @type {const} */ ({
    left: { words: words("rulerKept"), mark: "drag", meaning: "drag" },
    right: { words: words("rulerLow"), mark: "hold", meaning: "hold" },
  });
  return differenceRuler(ends, drawn, (/** @type {Answer} */ answer) => {
    const { as, figure, spread } = toldOf(answer);
    return words(`ruler${as}`, { figure, spread });
  });
}

/** @returns {Piece<Answer>} */
function threeTimes() {
  return piece(lines({ caption: words("threeTimes") }), (results, { answer }) => {
    const { difference_s } = tradedOf(answer);
    const held_s = Math.round(answer.held_difference_s.value);
    const steady_s = Math.round(answer.steady_time_s.value);
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
        value: units.time(steady_s - difference_s),
        difference: differs(difference_s),
      },
      { mark: "hold", name: words("rowHeld"), value: units.time(steady_s - held_s), difference: differs(held_s) },
    ]);
  });
}

/** @param {Tools} tools @param {Shell<Answer>} page @returns {Piece<Answer>[]} */
function charts(tools, page) {
  return [
    piece(dragOverRide(tools, AT), (chart, { state, answer, settled }) => {
      const { first_s: gained_s, second_s: given_back_s } = tradedOf(answer);
      chart.update(state, answer, { gained_s, given_back_s, settled });
    }),
    piece(differenceByShare(tools, AT, page.shown), (chart, { state, answer, settled }) =>
      chart.update(state, answer, { whole_s: tradedOf(answer).difference_s, settled }),
    ),
  ];
}

/** What the lower position takes, and the way to its cost: at the same watts, to the even efforts that count it. @param {Tools} tools @returns {Piece<Answer>} */
function takes({ store, openSheet }) {
  const onToCost = html("button", { type: "button" });
  onToCost.addEventListener("click", () => {
    const { effort, low } = store.get().with[ID];
    if (effort.kind === "power") store.set(`${AT}.effort`, { kind: "even" });
    else openSheet(`scenario.positions[${low}].cp_factor`);
  });
  return paragraphPiece("takes", ({ state }) => {
    const same = state.with[ID].effort.kind === "power";
    say(onToCost, words(same ? "compareEven" : "setCost"));
    return words.parts(same ? "takesWatts" : "takesEven", {
      lead: strong(words("takesLead"), "hold"),
      cost: meanAndSd(LOWER_BARS.power),
      set: onToCost,
    });
  });
}

/** @param {Tools} tools @param {() => boolean} focusLowerBy @returns {Piece<Answer>} */
function surer(tools, focusLowerBy) {
  const note = surerNote(tools, { open: (field) => field === "with.lower_by_m2" && focusLowerBy() });
  return piece(note, (_, { answer }) =>
    note.update(answer.surer, { sd: answer.difference_s.sd, plusMinus: units.plusMinusTime, of: "difference" }),
  );
}
