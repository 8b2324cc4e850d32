// @ts-check
/** The page of the power curve: the rider's efforts, what they say can be held, and what they leave open. */

import { answer as answerPart } from "../../parts/answer.js";
import { choice } from "../../parts/choice.js";
import { html, say, strong } from "../../parts/html.js";
import { valueAt } from "../../parts/line-chart.js";
import { lines } from "../../parts/lines.js";
import { table } from "../../parts/table.js";
import { same } from "../../state/scenario.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { eventWords } from "../shared/distance-names.js";
import { paragraphPiece, piece, questionShell } from "../shared/shell.js";
import { doubts } from "../shared/warnings.js";
import { curveChart } from "./curve-chart.js";
import { effortsEditor } from "./efforts.js";
import { byEvidence, inHundred, modelName, modelNumbers, positionName } from "./figures.js";
import { modelTable } from "./models.js";
import { positionTable } from "./positions.js";
import { training } from "./training.js";
import { useChanges } from "./use.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-curve");
const ID = "power-curve";
const AT = `with.${ID}`;
const ROUND_TIMES_S = [60, 120, 180, 300, 600, 1200, 1800, 3600, 7200, 14400];

/** Positions that have efforts. @param {State} state @returns {number[]} */
const tested = ({ scenario }) =>
  [...new Set((scenario.efforts ?? []).map((effort) => effort.position ?? scenario.riding_position))].toSorted();

/** @param {State} state */
const effortsIn = ({ scenario }) => scenario.efforts?.length ?? 0;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const { efforts, ...ask } = asked(tools);
  const caution = html("p", { class: "caution" }, ...words.parts("caution"));
  const cautionForTested = html("div");
  return page.show({
    ...ask,
    answer: [verdict(), figures(), paragraphPiece("also", restsOn), ...use(tools, page), { element: efforts.element }],
    picture: [
      piece(curveChart(tools), (chart, { state, answer, settled }) => chart.update(state, answer, { settled })),
    ],
    notes: [
      doubts(tools),
      // Where a test is asked for; after that, with the notes.
      piece({ element: cautionForTested }, (_, { answer }) =>
        (answer.efforts.length ? cautionForTested : efforts.element).append(caution),
      ),
    ],
    folds: foldsOf(tools),
  });
}

/** The sentence, and the list of efforts. @param {Tools} tools */
function asked(tools) {
  const time = tools.number({ path: `${AT}.hold_s`, kind: "clock", label: words("holdFor") });
  const change = tools.number({ path: `${AT}.power_change`, meaning: "power", label: words("more") });
  const efforts = effortsEditor(tools);
  const position = choice({
    label: words("inPosition"),
    path: `${AT}.position`,
    options: [],
    onChange: (value) => tools.store.set(`${AT}.position`, Number(value)),
  });
  return {
    efforts,
    words(/** @type {State} */ state) {
      const count = effortsIn(state);
      const fields = { time, change, position, efforts: words("efforts", { count }) };
      return words.parts(count === 0 ? "askNone" : tested(state).length > 1 ? "askIn" : "ask", fields);
    },
    wording: (/** @type {State} */ state) => `${effortsIn(state)} ${tested(state).length > 1}`,
    fields: [time, change, efforts],
    follow: (/** @type {State} */ state, /** @type {Answer | null} */ answer) =>
      position.update({
        options: tested(state).map((index) => ({ value: String(index), name: positionName(state, index) })),
        value: answer ? String(answer.position) : undefined,
      }),
  };
}

/** @param {State} state */
const wattsOf =
  ({ units }) =>
  (/** @type {number} */ w) =>
    show.quantity("power", w, units, { digits: 0 });

/** @returns {Piece<Answer>} */
function verdict() {
  return piece(answerPart(), (part, { state, answer: { power_w, test_w, basis }, settled }) => {
    const watts = wattsOf(state);
    const time = show.time(state.with[ID].hold_s);
    const [low, high] = [show.number(test_w[0]), watts(test_w[1])];
    const spread = show.spreadText("power", power_w.sd, state.units);
    const unit = show.unitOf("power", state.units).symbol;
    part.update({
      mark: "power",
      claim: words.parts(basis === "fitted" ? "youHold" : "youMayHold", { time: strong(time) }),
      figure: show.number(power_w.value),
      unit,
      spread: power_w.sd > 0 ? spread : null,
      odds: words("testWould", { low, high }),
      weight: basis === "fitted" ? "sure" : basis === "guessed" ? "likely" : "open",
      settled,
      spoken: words("spoken", { time, power: watts(power_w.value), spread: `${spread}\u00a0${unit}`, low, high }),
    });
  });
}

/** @returns {Piece<Answer>} */
function figures() {
  const part = lines({ caption: words("figures"), headings: [words("figure"), words("value"), words("spread")] });
  return piece(part, (_, { state, answer }) => {
    const { power_change } = state.with[ID];
    const { power_w, held_s } = answer.more;
    part.update([
      {
        name: words(power_change < 0 ? "lessFor" : "moreFor", {
          change: show.percent(Math.abs(power_change), 1).replace(/[.,]0(?=\D)/, ""),
          power: wattsOf(state)(power_w),
        }),
        value: held_s ? show.time(held_s.value) : words(power_change < 0 ? "forEver" : "notAtAll"),
        difference: held_s && held_s.sd > 0 ? show.plusMinusTime(held_s.sd) : "",
        soft: true,
      },
      ...numbersOf(state, answer).map(({ key, value, spread }) => ({
        name: words.parts(key),
        value,
        difference: spread,
        soft: true,
      })),
    ]);
  });
}

/** The numbers of the curve, fitted or guessed. @param {State} state @param {Answer} answer @returns {Omit<ReturnType<typeof modelNumbers>[number], "name">[]} */
function numbersOf(state, { model, models, usable, basis }) {
  const fit = models.find((one) => one.model === model);
  if (fit) return modelNumbers(state, fit);
  if (basis !== "guessed" || !usable) return [];
  const { cp_w, w_prime_j } = usable;
  return [
    {
      key: "criticalPower",
      value: wattsOf(state)(cp_w.value),
      spread: show.plusMinus("power", cp_w.sd, state.units),
    },
    {
      key: "wPrime",
      value: show.quantity("work", w_prime_j.value, state.units, { digits: 1 }),
      spread: show.plusMinus("work", w_prime_j.sd, state.units),
    },
  ];
}

/** What the curve rests on, and whether the efforts choose it. @param {Shown<Answer>} shown */
function restsOn({ state, answer }) {
  const { basis, model, told, usable } = answer;
  if (basis === "given" || model === null) return words("restsOnGiven");
  if (basis === "guessed")
    return words("restsOnGuess", {
      wPrime: usable
        ? `${show.quantity("work", usable.w_prime_j.value, state.units, { digits: 0 })} ${show.plusMinus("work", usable.w_prime_j.sd, state.units)}`
        : "",
    });
  const order = byEvidence(answer);
  const own = order.find((fit) => fit.model === model);
  const other = order.find((fit) => fit.model !== model);
  const values = {
    weight: inHundred(own?.weight ?? 0),
    other: other ? modelName(other.model) : "",
    otherWeight: inHundred(other?.weight ?? 0),
  };
  const whether = !other
    ? "alone"
    : told && own === order[0]
      ? "told"
      : state.with[ID].model === model && own !== order[0]
        ? "chosen"
        : "notTold";
  return [...words.parts("restsOn", { model: modelName(model) }), " ", words(whether, values)];
}

/** Puts the curve into the scenario, and says what that means. @param {Tools} tools @param {Shell<Answer>} page @returns {Piece<Answer>[]} */
function use(tools, page) {
  const { store } = tools;
  const button = html("button", { type: "button", class: "use" });
  button.addEventListener("click", () => {
    const answer = page.answer();
    if (!answer) return;
    store.setAll(useChanges(store.get(), answer));
    tools.notify(words("used"), { label: words("undo"), run: () => store.undo() });
  });
  return [
    piece({ element: html("p", { class: "takes" }) }, ({ element }, { state, answer: { usable, model, basis } }) => {
      element.hidden = !usable || model === usable.model || basis !== "fitted";
      if (!usable) return;
      const wPrime = show.quantity("work", usable.w_prime_j.value, state.units, { digits: 1 });
      const cp = wattsOf(state)(usable.cp_w.value);
      say(element, words("useSays", { model: modelName(usable.model), cp, wPrime }));
    }),
    piece({ element: button }, (_, { state, answer }) => {
      const changes = useChanges(state, answer);
      button.hidden = changes.length === 0;
      button.disabled = changes.length > 0 && changes.every(([path, value]) => same(store.at(path), value));
      say(button, words(button.disabled ? "inUse" : "use"));
    }),
  ];
}

/** @param {Tools} tools @returns {FoldPiece<Answer>[]} */
function foldsOf(tools) {
  const positions = positionTable();
  const gains = training(tools);
  return [
    {
      id: "models",
      name: words("models"),
      gist: ({ answer }) => words(answer.models.length ? "modelsGist" : "modelsNone"),
      body: piece(modelTable(tools), (models, { state, answer }) => models.update(state, answer)),
    },
    {
      id: "positions",
      name: words("positions"),
      gist: ({ state, answer }) => positions.gist(state, answer),
      body: piece(positions, (_, { state, answer }) => positions.update(state, answer)),
    },
    {
      id: "events",
      name: words("events"),
      gist: eventsGist,
      body: piece(table({ caption: words("eventsCaption") }), (events, shown) => events.update(eventsTable(shown))),
    },
    {
      id: "training",
      name: words("training"),
      gist: ({ state, answer }) => gains.gist(state, answer),
      body: piece(gains, (_, { state, answer }) => gains.update(state, answer)),
    },
    { id: "how", name: words("how"), gist: words("howGist"), body: workedOut },
    {
      id: "table",
      name: words("table"),
      gist: words("tableGist"),
      body: piece(table({ caption: words("tableCaption") }), (round, shown) => round.update(roundTimes(shown))),
    },
  ];
}

/** @param {Shown<Answer>} shown */
function eventsTable({ state, answer }) {
  const watts = wattsOf(state);
  return {
    columns: [words("event"), words("eventPower"), words("eventTime")],
    rows: answer.events.map((event) => [
      eventName(state, event),
      `${watts(event.power_w.value)} ${show.plusMinus("power", event.power_w.sd, state.units)}`,
      event.beyond ? `${show.time(event.time_s)}, ${words("beyond")}` : show.time(event.time_s),
    ]),
  };
}

/** The curve at round times. @param {Shown<Answer>} shown */
function roundTimes({ state, answer: { columns } }) {
  const watts = wattsOf(state);
  const times = columns.time_s;
  const at = (/** @type {Float64Array} */ ys, /** @type {number} */ time_s) =>
    valueAt({ name: "", xs: times, ys }, time_s);
  return {
    columns: [words("tableTime"), words("tablePower"), words("tableTest")],
    rows: ROUND_TIMES_S.filter((time_s) => time_s >= times[0] && time_s <= times[times.length - 1]).map((time_s) => [
      show.time(time_s),
      watts(at(columns.power_w, time_s)),
      `${show.number(at(columns.test_low_w, time_s))}–${watts(at(columns.test_high_w, time_s))}`,
    ]),
  };
}

/** @param {State} state @param {Answer["events"][number]} event */
function eventName({ scenario, units }, { event, distance_m }) {
  return eventWords(scenario.events[event] ?? { name: "", distance_m }, units);
}

/** @param {Shown<Answer>} shown */
function eventsGist({ state, answer: { events } }) {
  const [first] = events;
  if (!first) return "";
  const power = wattsOf(state)(first.power_w.value);
  return words("eventsGist", { event: eventName(state, first), power, time: show.time(first.time_s) });
}
