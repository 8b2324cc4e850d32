// @ts-check
/** Which position for which distance: the sentence, the answer, the curves, what a position may cost and what would settle it. */

import { answer as answerPart } from "../../parts/answer.js";
import { choice } from "../../parts/choice.js";
import { html, say, set, strong } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { caution } from "../shared/caution.js";
import { courseChoice } from "../shared/course-choice.js";
import { aboutWords, rideName, timeAlone } from "../shared/distance-names.js";
import { inSentence } from "../shared/in-sentence.js";
import { odds, spokenAnswer } from "../shared/odds.js";
import { paragraphPiece, piece, questionShell } from "../shared/shell.js";
import { stopButton } from "../shared/stop-button.js";
import { howToMeasure } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { differenceChart } from "./chart.js";
import { ALL, counting } from "./counting.js";
import { farField } from "./far.js";
import { choiceName, positionName } from "./names.js";
import { referenceOf } from "./reference.js";
import { costTable, curveTable, eventTable } from "./tables.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @typedef {ReturnType<typeof counting>} Counts */
/** @import { AtDistance, Figure, WhichPositionAnswer as Answer, Worth } from "../../types/core.d.ts" */

const words = book("which-position");
const shared = book("shared");
const ID = "which-position";
const AT = `with.${ID}`;
/** Seconds over all events below which nothing is worth measuring for this choice alone. */
const WORTH_S = 0.5;
/** As many are listed. */
const MOST_WORTH = 6;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const counts = counting(tools, ID, page.redraw);
  return page.show({
    ...asked(tools, question),
    answer: [
      needTwo(tools),
      ifCompared(verdict(counts)),
      ifCompared(
        paragraphPiece("also", ({ state, answer }) => [...covered(state, answer), ...crossings(state, answer)]),
      ),
      doubts(tools),
    ],
    picture: [
      piece(differenceChart(tools, AT), (chart, { state, answer, settled }) => chart.update(state, answer, settled)),
      ifCompared(piece(eventTable(), (grid, { state, answer }) => grid.update(state, answer, counts.value()))),
      ifCompared(progress(counts)),
      { element: editLinks(tools) },
    ],
    notes: [
      ifCompared(paragraphPiece("takes", price)),
      ifCompared(settle(tools, counts)),
      caution(words.parts("caution")),
    ],
    folds: foldsOf(tools, counts),
    work: counts,
  });
}

/** The sentence. @param {Tools} tools @param {Question} question */
function asked(tools, { defaults }) {
  const fields = {
    course: courseChoice(tools),
    day: weather(tools),
    known: knownField(tools, Number(defaults.cda_correlation)),
    far: farField(tools),
    reference: referenceField(tools),
    cda: tools.number({
      path: (state) => `scenario.positions[${referenceOf(state)}].cda_m2`,
      meaning: "drag",
    }),
  };
  return {
    words: () => words.parts("ask", fields),
    fields: Object.values(fields),
    known: (/** @type {State} */ state) => tools.known(state, [...state.scenario.positions.keys()]),
  };
}

/** @param {Tools} tools */
function referenceField({ store }) {
  const pick = choice({
    label: words("reference"),
    options: [],
    meaning: "hold",
    onChange: (value) => store.set(`${AT}.reference`, Number(value)),
  });
  return {
    ...pick,
    update(/** @type {State} */ state) {
      pick.update({
        options: [...state.scenario.positions.keys()].map((index) => ({
          value: String(index),
          name: positionName(state, index),
        })),
        value: String(referenceOf(state)),
      });
      return false;
    },
  };
}

/** Whether the drag areas come from one test. @param {Tools} tools @param {number} together */
function knownField({ store }, together) {
  const pick = choice({
    label: words("knownHow"),
    options: [
      { value: "together", name: words("knownTogether") },
      { value: "apart", name: words("knownApart") },
    ],
    meaning: "drag",
    onChange: (value) => store.set(`${AT}.cda_correlation`, value === "together" ? together : 0),
  });
  return {
    ...pick,
    update(/** @type {State} */ { with: { [ID]: own } }) {
      pick.update({ value: own.cda_correlation > 0 ? "together" : "apart" });
      return false;
    },
  };
}

/** @param {Answer} answer */
const isCompared = ({ choices }) => choices.length > 1;

/** Is there only where positions are compared. @param {Piece<Answer>} part @returns {Piece<Answer>} */
function ifCompared({ element, draw, destroy }) {
  return {
    element,
    destroy,
    draw(shown) {
      if (element) element.hidden = !isCompared(shown.answer);
      if (isCompared(shown.answer)) draw?.(shown);
    },
  };
}

/** @param {Tools} tools @returns {Piece<Answer>} */
function needTwo(tools) {
  const add = button(words("addPosition"), () => tools.openSheet("scenario.positions"));
  const element = html("p", { class: "takes", hidden: true }, words("needTwo"), " ", add);
  return { element, draw: ({ answer }) => set(element, { hidden: isCompared(answer) }) };
}

/** @param {Tools} tools */
function editLinks(tools) {
  return html(
    "p",
    { class: "takes no-print" },
    button(words("editPositions"), () => tools.openSheet("scenario.positions")),
    " · ",
    button(words("editEvents"), () => tools.openSheet("scenario.events")),
  );
}

/** @param {Counts} counts */
function verdict(counts) {
  return piece(answerPart(), (part, /** @type {Shown<Answer>} */ { state, answer, settled }) => {
    const at = answer.reading ?? answer.events[0];
    const { best, ahead_s } = at;
    if (!ahead_s) return;
    const isThere = (/** @type {number} */ distance_m, /** @type {number} */ place) =>
      at === answer.events[place] ||
      (Math.abs(distance_m - at.distance_m) < 0.5 && !state.scenario.events[place].course);
    const event = answer.events.findIndex(({ distance_m }, place) => isThere(distance_m, place));
    const share = counts.value()?.events[event]?.win_share[best];
    const { short, figure, way } = show.difference(ahead_s.value);
    const sure = odds(ahead_s, null);
    const counted = share === undefined ? sure.words : words("fastestIn", { count: Math.round(100 * share), all: 100 });
    const spread = show.time(ahead_s.sd);
    const values = {
      distance: rideName(at, state.units),
      time: timeAlone(at.duration_s ?? 0),
      best: choiceName(state, answer.choices[best]),
      next: choiceName(state, answer.choices[secondOf(at)]),
    };
    const inTime = way !== "level" && at.ahead_m ? furtherIn(at.ahead_m, state) : null;
    const told = inTime ?? { claim: way === "level" ? "claimLevel" : "claim", spoken: "spoken", short, figure, spread };
    part.update({
      mark: "hold",
      claim: words.parts(told.claim, { ...values, best: strong(values.best, "hold") }),
      figure: told.short,
      spread: ahead_s.sd > 0 ? told.spread : null,
      odds: counted,
      weight: sure.weight,
      settled,
      spoken: spokenAnswer(words(told.spoken, { ...values, figure: told.figure, spread: told.spread }), counted),
    });
  });
}

/** How much further the best gets in a fixed time. @param {Figure} ahead_m @param {State} state */
function furtherIn({ value, sd }, { units }) {
  const figure = show.quantity("distance", value, units, { digits: 1 });
  return /** @type {const} */ ({
    claim: "claimInTime",
    spoken: "spokenInTime",
    short: figure,
    figure,
    spread: show.spreadText("distance", sd, units),
  });
}

/** The place of the fastest but the best. @param {AtDistance} at */
function secondOf({ times, best }) {
  return times.reduce(
    (found, { time_s }, place) =>
      place !== best && (found < 0 || time_s.value < times[found].time_s.value) ? place : found,
    -1,
  );
}

/** How far a fixed time is, by which the crossings can be read. @param {State} state @param {Answer} answer */
function covered(state, { reading, events }) {
  const { duration_s, distance_m } = reading ?? events[0];
  if (duration_s === undefined) return [];
  return [words("covered", { time: timeAlone(duration_s), distance: aboutWords(distance_m, state.units) }), " "];
}

/** Where the choices and the reference cross, in sentences. @param {State} state @param {Answer} answer */
function crossings(state, { choices, reference, crossovers, columns }) {
  const other = choiceName(state, choices[reference]);
  const far = (/** @type {number} */ m) => show.quantity("distance", m, state.units, { digits: 0 });
  const span = {
    from: far(columns.distance_m[0] ?? 0),
    to: far(columns.distance_m[columns.distance_m.length - 1] ?? 0),
  };
  const count = columns.distance_m.length;
  return choices.flatMap((choice, place) => {
    if (place === reference || !count) return [];
    const name = strong(choiceName(state, choice));
    const own = crossovers.filter((crossover) => crossover.choice === place);
    if (!own.length) {
      const lead = columns.difference_s[place * count + count - 1];
      return [
        ...words.parts(lead > 0 ? "alwaysFaster" : lead < 0 ? "alwaysSlower" : "alwaysLevel", {
          name,
          other,
          ...span,
        }),
        " ",
      ];
    }
    return own.flatMap(({ distance_m, faster_beyond }) => {
      const wide = distance_m.sd > distance_m.value;
      return [
        ...words.parts(
          wide
            ? faster_beyond
              ? "fasterBeyondWide"
              : "fasterBelowWide"
            : faster_beyond
              ? "fasterBeyond"
              : "fasterBelow",
          {
            name,
            other,
            distance: far(distance_m.value),
            spread: show.plusMinus("distance", distance_m.sd, state.units),
          },
        ),
        " ",
      ];
    });
  });
}

/** How far the draws are counted, with the button that stops them. @param {Counts} counts */
function progress(counts) {
  const soFar = html("span");
  const stop = stopButton(counts, { stop: words("stop"), resume: words("goOn") });
  return {
    element: html("p", { class: "takes no-print" }, soFar, " ", stop.element),
    draw() {
      const draws = show.number(counts.value()?.draws ?? 0);
      const all = show.number(ALL);
      stop.update();
      if (counts.state() === "stopped") say(soFar, words("stopped", { draws, all }));
      else if (counts.isBusy()) say(soFar, words("counting", { draws, all }));
      else say(soFar, counts.value() ? words.parts("countedAll", { draws }) : "");
    },
  };
}

/** What is published about the cost of a lower position. @param {State} state @param {Answer} answer */
function published(state, { published: [polanco, faulkner] }) {
  const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
  const percent = (/** @type {number} */ share) => show.percent(share, 1);
  return words("published", {
    riders: polanco.riders,
    cut: percent(polanco.cda_cut ?? 0),
    cost: percent(polanco.mean),
    spread: percent(polanco.sd),
    others: faulkner.riders,
    watts: watts(faulkner.mean),
    wattsSpread: watts(faulkner.sd),
  });
}

/** What a position may cost at the event nearest to the distance that is read off, against the reference first. @param {Answer} answer */
function costOf(answer) {
  const at = nearestEvent(answer);
  return answer.costs
    .filter(({ event, allowed_w }) => event === at && allowed_w)
    .sort((a, b) => Number(b.against === answer.reference) - Number(a.against === answer.reference))[0];
}

/** @param {Shown<Answer>} shown */
function price({ state, answer }) {
  const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
  const cost = costOf(answer);
  const said = published(state, answer);
  if (!cost?.allowed_w) return [said];
  const own = words.parts("mayCost", {
    one: choiceName(state, answer.choices[cost.choice]),
    other: choiceName(state, answer.choices[cost.against]),
    over: rideName(answer.events[nearestEvent(answer)], state.units),
    watts: strong(watts(cost.allowed_w.value), "power"),
    share: show.percent(cost.allowed_share ?? 0, 1),
  });
  const now_w = Math.round(cost.now_w);
  const now = words(now_w > 0 ? "nowTakes" : now_w < 0 ? "nowGives" : "nowNothing", { now: watts(Math.abs(now_w)) });
  return [...own, " ", now, " ", said];
}

/** What lower bars may cost, where that is known for the whole published range. @param {State} state @param {Answer} answer */
function lowerBars(state, answer) {
  const at = nearestEvent(answer);
  const watts = (/** @type {number | null} */ w) => show.quantity("power", w ?? 0, state.units, { digits: 0 });
  const all = answer.lower_bars.filter(({ event }) => event === at).map(({ allowed_w }) => allowed_w);
  if (all.length < 3 || all.some((allowed_w) => allowed_w == null)) return null;
  const [low, mid, high] = all.map(watts);
  return { over: rideName(answer.events[at], state.units), low, mid, high };
}

/** @param {Shown<Answer>} shown */
function priceInFull({ state, answer }) {
  const percent = (/** @type {number} */ share) => show.percent(share, 1);
  const bars = lowerBars(state, answer);
  const cost = costOf(answer);
  const one = cost ? choiceName(state, answer.choices[cost.choice]) : "";
  const inHundred = (/** @type {number} */ share) => ({ one, count: Math.round(100 * share), all: 100 });
  const scaled =
    cost?.polanco_cost && cost.polanco_share != null
      ? words("costScaled", {
          ...inHundred(cost.polanco_share),
          cut: percent(cost.cda_cut),
          cost: percent(cost.polanco_cost.value),
          spread: percent(cost.polanco_cost.sd),
        })
      : "";
  const torso = cost?.faulkner_share != null ? words("costTorso", inHundred(cost.faulkner_share)) : "";
  return [
    html("p", {}, ...(bars ? words.parts("lowerBars", { ...bars, watts: strong(bars.mid, "power") }) : [])),
    html("p", {}, [published(state, answer), scaled, torso].filter(Boolean).join(" ")),
    html("p", {}, words("costsMean")),
  ];
}

/** @param {Tools} tools @param {Counts} counts @returns {FoldPiece<Answer>[]} */
function foldsOf(tools, counts) {
  const costs = costTable();
  const full = html("div");
  return [
    {
      id: "cost",
      name: words("costs"),
      gist({ state, answer }) {
        const bars = isCompared(answer) && lowerBars(state, answer);
        return bars ? words("lowerBarsGist", { over: bars.over, watts: bars.mid }) : "";
      },
      body: ifCompared({
        element: html("div", {}, full, costs.element),
        destroy: costs.destroy,
        draw(shown) {
          say(full, priceInFull(shown));
          costs.update(shown.state, shown.answer);
        },
      }),
    },
    {
      id: "worth",
      name: words("worth"),
      gist: () => (counts.value() ? words("worthGist", { time: show.time(Math.round(worthOfAll(counts))) }) : ""),
      hidden: ({ answer }) => isCompared(answer) && !counts.value(),
      body: ifCompared(worthList(tools, counts)),
    },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("tableGist"),
      body: ifCompared(piece(curveTable(), (curves, { state, answer }) => curves.update(state, answer))),
    },
  ];
}

const secondsOf = () => (/** @type {number} */ s) => show.time(Math.max(1, Math.round(s)));

/** What it would be worth to know everything, s over all events. @param {Counts} counts */
const worthOfAll = (counts) => counts.value()?.events.reduce((sum, { worth_of_all_s }) => sum + worth_of_all_s, 0) ?? 0;

/** What would settle the choice. @param {Tools} tools @param {Counts} counts @returns {Piece<Answer>} */
function settle(tools, counts) {
  const element = html("p", { class: "surer" });
  return {
    element,
    draw({ state }) {
      const counted = counts.value();
      element.hidden = !counted;
      if (counted) say(element, settlesIt(tools, state, counted.worth[0]));
    },
  };
}

/** @param {Tools} tools @param {State} state @param {Worth | undefined} most */
function settlesIt(tools, state, most) {
  if (!most || most.worth_s < WORTH_S) return words.parts("settled");
  const link = button(words("look"), () => tools.openSheet(most.fields[0]));
  const time = secondsOf()(most.worth_s);
  const both = most.what === "difference";
  const how = both ? words("howBoth") : howToMeasure(most.fields[0]);
  const worth = both
    ? words.parts("wouldSettleBoth", { ...bothNames(state, most), time })
    : words.parts("wouldSettle", { input: inputName(tools, state, most.fields[0]), time });
  return [...worth, " ", ...words.parts(how ? "lookHow" : "lookOnly", { link, how })];
}

/** @param {Tools} tools @param {Counts} counts @returns {Piece<Answer>} */
function worthList(tools, counts) {
  const list = html("ol", { class: "worth" });
  const line = (/** @type {State} */ state, /** @type {Worth} */ worth) => {
    const time = secondsOf()(worth.worth_s);
    return worth.what === "difference"
      ? words("worthBoth", { ...bothNames(state, worth), time })
      : words("worthLine", { input: inputName(tools, state, worth.fields[0]), time });
  };
  return {
    element: html("div", {}, html("p", {}, words("worthMeans")), list),
    draw({ state }) {
      const worth = counts.value()?.worth.filter(({ worth_s }) => worth_s >= WORTH_S) ?? [];
      say(
        list,
        worth.slice(0, MOST_WORTH).map((one) => html("li", {}, line(state, one))),
      );
    },
  };
}

/** The names of two positions that would be measured in one test. @param {State} state @param {Worth} worth */
function bothNames(state, { fields }) {
  const [one, other] = fields.map((field) => positionName(state, Number(/positions\[(\d+)\]/.exec(field)?.[1] ?? 0)));
  return { one, other };
}

/** An input by what it is called, and whose it is. @param {Tools} tools @param {State} state @param {string} field */
function inputName(tools, state, field) {
  const label = inSentence(tools.label(field) || field);
  const own = /positions\[(\d+)\](?:\.equipment\[(\d+)\])?/.exec(field);
  if (!own) return label;
  const worn = own[2] === undefined ? null : Number(own[2]);
  return words("inputOf", {
    input: label,
    name: choiceName(state, { position: Number(own[1]), worn, cda_m2: 0, cp_w: 0 }),
  });
}

/** @param {string} text @param {() => void} onclick */
function button(text, onclick) {
  const element = html("button", { type: "button" }, text);
  element.addEventListener("click", onclick);
  return element;
}

/** The event nearest to the distance that is read off. @param {Answer} answer */
function nearestEvent({ reading, events }) {
  const at = reading?.distance_m ?? events[0].distance_m;
  return events.reduce(
    (found, { distance_m }, event) =>
      Math.abs(distance_m - at) < Math.abs(events[found].distance_m - at) ? event : found,
    0,
  );
}
