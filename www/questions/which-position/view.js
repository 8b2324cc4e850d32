// @ts-check
/** Which position for which distance: the sentence, the answer, the curves, what a position may cost and what would settle it. */

import { answer as answerPart } from "../../parts/answer.js";
import { choice } from "../../parts/choice.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { sentence } from "../../parts/sentence.js";
import { book } from "../../words/index.js";
import { courseChoice } from "../shared/course-choice.js";
import { distanceName } from "../shared/distance-choice.js";
import { inSentence } from "../shared/in-sentence.js";
import { layOut } from "../shared/layout.js";
import { titleOf } from "../shared/names.js";
import { odds, spokenAnswer } from "../shared/odds.js";
import { requestOf } from "../shared/request.js";
import { stopButton } from "../shared/stop-button.js";
import { howToMeasure } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { differenceChart } from "./chart.js";
import { ALL, counting } from "./counting.js";
import { choiceName, positionName } from "./names.js";
import { referenceOf } from "./reference.js";
import { costTable, curveTable, eventTable } from "./tables.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { WhichPositionAnswer as Answer, Worth } from "../../types/core.d.ts" */

const words = book("which-position");
const shared = book("shared");
const ID = "which-position";
const AT = `with.${ID}`;
/** Seconds over all events below which nothing is worth measuring for this choice alone. */
const WORTH_S = 0.5;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  const { store, units: show } = tools;
  const bounds = tools.field("scenario.events[0].distance_m");
  const distance = tools.number({
    path: `${AT}.distance_m`,
    label: words("distance"),
    kind: "distance",
    min: bounds?.min,
    max: bounds?.max,
    step: 1,
  });
  const course = courseChoice(tools);
  const day = weather(tools);
  const reference = choice({
    label: words("reference"),
    options: [],
    meaning: "hold",
    onChange: (value) => store.set(`${AT}.reference`, Number(value)),
  });
  const referenceField = {
    ...reference,
    update: (/** @type {State} */ state) => {
      reference.update({
        options: state.scenario.positions.map((/** @type {unknown} */ _, /** @type {number} */ index) => ({
          value: String(index),
          name: positionName(state, index),
        })),
        value: String(referenceOf(state)),
      });
      return false;
    },
  };
  const cda = tools.number({
    path: (state) => `scenario.positions[${referenceOf(state)}].cda_m2`,
    meaning: "drag",
  });
  const known = choice({
    label: words("knownHow"),
    options: [
      { value: "together", name: words("knownTogether") },
      { value: "apart", name: words("knownApart") },
    ],
    meaning: "drag",
    onChange: (value) =>
      store.set(`${AT}.cda_correlation`, value === "together" ? question.defaults.cda_correlation : 0),
  });
  const knownField = {
    ...known,
    update: (/** @type {State} */ { with: details }) => {
      known.update({ value: details[ID].cda_correlation > 0 ? "together" : "apart" });
      return false;
    },
  };
  const ask = sentence({
    title: titleOf(ID),
    words: words.parts("ask", { course, day, known: knownField, distance, reference: referenceField, cda }),
    onOpen: () => tools.openSheet(),
  });

  const verdict = answerPart();
  const crossing = html("p", { class: "also" });
  const doubts = warningList(tools);
  const single = html(
    "p",
    { class: "takes", hidden: true },
    words("needTwo"),
    " ",
    button(words("addPosition"), () => tools.openSheet("scenario.positions")),
  );
  const chart = differenceChart(tools, AT);
  const grid = eventTable(tools);
  const soFar = html("span");
  const counts = counting(tools, ID, redraw);
  const stop = stopButton(counts, { stop: words("stop"), resume: words("goOn") });
  const progress = html("p", { class: "takes no-print" }, soFar, " ", stop.element);
  const price = html("p", { class: "takes" });
  const settle = html("p", { class: "surer" });
  const caution = html("p", { class: "caution" }, ...words.parts("caution"));
  const edit = html(
    "p",
    { class: "takes no-print" },
    button(words("editPositions"), () => tools.openSheet("scenario.positions")),
    " · ",
    button(words("editEvents"), () => tools.openSheet("scenario.events")),
  );

  const costs = costTable(tools);
  const curves = curveTable(tools);
  const priceInFull = html("div");
  const foldList = folds([
    { id: "cost", name: words("costs"), body: html("div", {}, priceInFull, costs.element) },
    { id: "worth", name: words("worth"), body: html("div", {}) },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    { id: "table", name: shared("asTable"), gist: words("tableGist"), body: curves.element },
    ...tools.lastFolds(ID),
  ]);
  const worthList = html("ol", { class: "worth" });
  foldList.element
    .querySelector('[data-fold="worth"] .fold-body')
    ?.append(html("p", {}, words("worthMeans")), worthList);
  layOut(host, {
    ask: ask.element,
    answer: [single, verdict.element, crossing, doubts.element],
    picture: [chart.element, grid.element, progress, edit],
    notes: [price, settle, caution],
    folds: foldList.element,
  });

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    const told = [distance, course, day, knownField, referenceField, cda]
      .map((field) => field.update(state, error))
      .includes(true);
    const all = state.scenario.positions.map((/** @type {unknown} */ _, /** @type {number} */ index) => index);
    ask.update({ known: tools.known(state, all), wrong: tools.trouble(error, told) });
    if (!answer) return;
    // What the core refuses is not what the answer is about.
    shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    // The distance that is read off changes no draw.
    if (!error) counts.update(withoutReading(requestOf(question, state)));
    redraw();
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const compared = answer.choices.length > 1;
    single.hidden = compared;
    for (const element of [verdict.element, crossing, grid.element, price, settle, progress])
      element.hidden = !compared;
    chart.update(state, answer, settled);
    doubts.update(answer.warnings);
    if (!compared) return;
    drawVerdict(state, answer, settled);
    say(crossing, crossings(state, answer));
    grid.update(state, answer, counts.value());
    drawProgress();
    drawPrice(state, answer);
    costs.update(state, answer);
    curves.update(state, answer);
    drawWorth(state);
  }

  /** @param {State} state @param {Answer} answer @param {boolean} settled */
  function drawVerdict(state, answer, settled) {
    const at = answer.reading ?? answer.events[0];
    const { best, ahead_s } = at;
    if (!ahead_s) return;
    const next = at.times.reduce(
      (found, { time_s }, place) =>
        place !== best && (found < 0 || time_s.value < at.times[found].time_s.value) ? place : found,
      -1,
    );
    const event = answer.events.findIndex(({ distance_m }) => Math.abs(distance_m - at.distance_m) < 0.5);
    const share = counts.value()?.events[event]?.win_share[best];
    const { short, figure, way } = show.difference(ahead_s.value);
    const sure = odds(ahead_s, null);
    const counted = share === undefined ? sure.words : words("fastestIn", { count: Math.round(100 * share), all: 100 });
    const spread = show.time(ahead_s.sd);
    const values = {
      distance: distanceName(at.distance_m, state.units),
      best: choiceName(state, answer.choices[best]),
      next: choiceName(state, answer.choices[next]),
    };
    const key = way === "level" ? "claimLevel" : "claim";
    verdict.update({
      mark: "hold",
      claim: words.parts(key, { ...values, best: strong(values.best, "hold") }),
      figure: short,
      spread: ahead_s.sd > 0 ? spread : null,
      odds: counted,
      weight: sure.weight,
      settled,
      spoken: spokenAnswer(words("spoken", { ...values, figure, spread }), counted),
    });
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

  function drawProgress() {
    const draws = show.number(counts.value()?.draws ?? 0);
    const all = show.number(ALL);
    stop.update();
    if (counts.state() === "stopped") soFar.textContent = words("stopped", { draws, all });
    else if (counts.isBusy()) soFar.textContent = words("counting", { draws, all });
    else soFar.textContent = counts.value() ? words("countedAll", { draws }) : "";
  }

  /** @param {State} state @param {Answer} answer */
  function drawPrice(state, answer) {
    const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
    const at = nearestEvent(answer);
    const over = distanceName(answer.events[at].distance_m, state.units);
    const cost = answer.costs
      .filter(({ event, allowed_w }) => event === at && allowed_w)
      .sort((a, b) => Number(b.against === answer.reference) - Number(a.against === answer.reference))[0];
    const [low, mid, high] = answer.lower_bars.filter(({ event }) => event === at);
    const percent = (/** @type {number} */ share) => show.percent(share, 1);
    const [polanco, faulkner] = answer.published;
    const published = words("published", {
      riders: polanco.riders,
      cut: percent(polanco.cda_cut ?? 0),
      cost: percent(polanco.mean),
      spread: percent(polanco.sd),
      others: faulkner.riders,
      watts: watts(faulkner.mean),
      wattsSpread: watts(faulkner.sd),
    });
    const bars =
      mid?.allowed_w != null && low.allowed_w != null && high.allowed_w != null
        ? words.parts("lowerBars", {
            over,
            watts: strong(watts(mid.allowed_w), "power"),
            low: watts(low.allowed_w),
            high: watts(high.allowed_w),
          })
        : [];
    const own = cost?.allowed_w
      ? words.parts("mayCost", {
          one: choiceName(state, answer.choices[cost.choice]),
          other: choiceName(state, answer.choices[cost.against]),
          over,
          watts: strong(watts(cost.allowed_w.value), "power"),
          share: show.percent(cost.allowed_share ?? 0, 1),
          now: watts(cost.now_w),
        })
      : [];
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
    say(price, [...own, ...(own.length ? [" "] : []), published]);
    say(priceInFull, [
      html("p", {}, ...bars),
      html("p", {}, [published, scaled, torso].filter(Boolean).join(" ")),
      html("p", {}, words("costsMean")),
    ]);
    foldList.update({
      cost: { gist: bars.length ? words("lowerBarsGist", { over, watts: watts(mid.allowed_w ?? 0) }) : "" },
    });
  }

  /** @param {State} state */
  function drawWorth(state) {
    const counted = counts.value();
    settle.hidden = !counted;
    foldList.update({ worth: { hidden: !counted } });
    if (!counted) return;
    const [most] = counted.worth;
    const seconds = (/** @type {number} */ s) => show.time(Math.max(1, Math.round(s)));
    if (!most || most.worth_s < WORTH_S) {
      say(settle, words.parts("settled"));
    } else {
      const link = button(words("look"), () => tools.openSheet(most.fields[0]));
      const time = seconds(most.worth_s);
      const both = most.what === "difference";
      const how = both ? words("howBoth") : howToMeasure(most.fields[0]);
      const worth = both
        ? words.parts("wouldSettleBoth", { ...bothNames(state, most), time })
        : words.parts("wouldSettle", { input: inputName(state, most.fields[0]), time });
      say(settle, [...worth, " ", ...words.parts(how ? "lookHow" : "lookOnly", { link, how })]);
    }
    const line = (/** @type {Worth} */ worth) => {
      const time = seconds(worth.worth_s);
      return worth.what === "difference"
        ? words("worthBoth", { ...bothNames(state, worth), time })
        : words("worthLine", { input: inputName(state, worth.fields[0]), time });
    };
    worthList.replaceChildren(
      ...counted.worth
        .filter(({ worth_s }) => worth_s >= WORTH_S)
        .slice(0, 6)
        .map((worth) => html("li", {}, line(worth))),
    );
    const everything = counted.events.reduce((sum, { worth_of_all_s }) => sum + worth_of_all_s, 0);
    foldList.update({ worth: { gist: words("worthGist", { time: show.time(Math.round(everything)) }) } });
  }

  /** The names of two positions that would be measured in one test. @param {State} state @param {Worth} worth */
  function bothNames(state, { fields }) {
    const [one, other] = fields.map((field) => positionName(state, Number(/positions\[(\d+)\]/.exec(field)?.[1] ?? 0)));
    return { one, other };
  }

  /** An input by what it is called, and whose it is. @param {State} state @param {string} field */
  function inputName(state, field) {
    const label = inSentence(tools.label(field) || field);
    const own = /positions\[(\d+)\](?:\.equipment\[(\d+)\])?/.exec(field);
    if (!own) return label;
    const worn = own[2] === undefined ? null : Number(own[2]);
    return words("inputOf", {
      input: label,
      name: choiceName(state, { position: Number(own[1]), worn, cda_m2: 0, cp_w: 0 }),
    });
  }

  return {
    update,
    destroy() {
      counts.destroy();
      verdict.destroy();
      chart.destroy();
      grid.destroy();
      costs.destroy();
      curves.destroy();
    },
  };
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

/** @param {{ scenario: any, with: any }} asked */
function withoutReading({ scenario, with: { distance_m: _, ...own } }) {
  return { scenario, with: own };
}
