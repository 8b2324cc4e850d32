// @ts-check
/** The page of the power curve: the rider's efforts, what they say can be held, and what they leave open. */

import { answer as answerPart } from "../../parts/answer.js";
import { choice } from "../../parts/choice.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { valueAt } from "../../parts/line-chart.js";
import { lines } from "../../parts/lines.js";
import { sentence } from "../../parts/sentence.js";
import { table } from "../../parts/table.js";
import { book } from "../../words/index.js";
import { distanceName } from "../shared/distance-choice.js";
import { layOut } from "../shared/layout.js";
import { titleOf } from "../shared/names.js";
import { warningList } from "../shared/warnings.js";
import { curveChart } from "./curve-chart.js";
import { effortsEditor } from "./efforts.js";
import { byEvidence, inHundred, modelName, modelNumbers, positionName } from "./figures.js";
import { modelTable } from "./models.js";
import { positionTable } from "./positions.js";
import { training } from "./training.js";
import { useChanges } from "./use.js";
import { workedOut } from "./worked-out.js";

/** @import { Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-curve");
const ID = "power-curve";
const AT = `with.${ID}`;
const ROUND_TIMES_S = [60, 120, 180, 300, 600, 1200, 1800, 3600, 7200, 14400];

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
  const { store, units: show } = tools;
  const time = tools.number({ path: `${AT}.hold_s`, kind: "clock", label: words("holdFor") });
  const more = tools.number({ path: `${AT}.power_change`, meaning: "power", label: words("more") });
  const position = choice({
    label: words("inPosition"),
    path: `${AT}.position`,
    options: [],
    onChange: (value) => store.set(`${AT}.position`, Number(value)),
  });
  const ask = sentence({ title: titleOf(ID), words: askWords(store.get()), onOpen: () => tools.openSheet() });
  let asked = askShape(store.get());

  const efforts = effortsEditor(tools);
  const verdict = answerPart();
  const figures = lines({ caption: words("figures"), headings: [words("figure"), words("value"), words("spread")] });
  const rests = html("p", { class: "also" });
  const useSays = html("p", { class: "takes" });
  const use = html("button", { type: "button", class: "use" });
  use.addEventListener("click", () => {
    if (!shown) return;
    store.setAll(useChanges(store.get(), shown.answer));
    tools.notify(words("used"), { label: words("undo"), run: () => store.undo() });
  });
  const chart = curveChart(tools);
  const doubts = warningList(tools);
  const caution = html("p", { class: "caution" });
  say(caution, words.parts("caution"));
  const cautionForTested = html("div");

  const models = modelTable(tools);
  const positions = positionTable(tools);
  const gains = training(tools);
  const events = table({ caption: words("eventsCaption") });
  const round = table({ caption: words("tableCaption") });
  const foldList = folds([
    { id: "models", name: words("models"), body: models.element },
    { id: "positions", name: words("positions"), body: positions.element },
    { id: "events", name: words("events"), body: events.element },
    { id: "training", name: words("training"), body: gains.element },
    { id: "how", name: words("how"), gist: words("howGist"), body: workedOut },
    { id: "table", name: words("table"), gist: words("tableGist"), body: round.element },
    ...tools.lastFolds(ID),
  ]);
  layOut(host, {
    ask: html("div", {}, ask.element, efforts.element),
    answer: [verdict.element, figures.element, rests, useSays, use],
    picture: [chart.element],
    notes: [doubts.element, cautionForTested],
    folds: foldList.element,
  });

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  /** Positions that have efforts. @param {State} state @returns {number[]} */
  function tested({ scenario }) {
    return [
      ...new Set(
        (scenario.efforts ?? []).map((/** @type {any} */ effort) => effort.position ?? scenario.riding_position),
      ),
    ].toSorted();
  }

  /** What decides how the sentence reads. @param {State} state */
  function askShape(state) {
    return `${state.scenario.efforts?.length ?? 0} ${tested(state).length > 1}`;
  }

  /** @param {State} state */
  function askWords(state) {
    const count = state.scenario.efforts?.length ?? 0;
    const fields = { time, change: more, position, efforts: words("efforts", { count }) };
    return words.parts(count === 0 ? "askNone" : tested(state).length > 1 ? "askIn" : "ask", fields);
  }

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    if (askShape(state) !== asked) {
      asked = askShape(state);
      ask.update({ words: askWords(state) });
    }
    position.update({
      options: tested(state).map((index) => ({ value: String(index), name: positionName(state, index) })),
      value: answer ? String(answer.position) : undefined,
    });
    const told = [time.update(state, error), more.update(state, error), efforts.update(state, error)].includes(true);
    ask.update({ known: tools.known(state), wrong: tools.trouble(error, told) });
    if (!answer) return;
    shown = { state, answer };
    // Where a test is asked for; after that, with the notes.
    (answer.efforts.length ? cautionForTested : efforts.element).append(caution);
    const settled = !host.querySelector("[data-dragging], [data-held]");
    drawVerdict(state, answer, settled);
    drawFigures(state, answer);
    say(rests, restsOn(state, answer));
    drawUse(state, answer);
    chart.update(state, answer, { settled });
    doubts.update(answer.warnings);
    models.update(state, answer);
    positions.update(state, answer);
    gains.update(state, answer);
    drawTables(state, answer);
    foldList.update({
      models: { gist: words(answer.models.length ? "modelsGist" : "modelsNone") },
      positions: { gist: positions.gist(state, answer) },
      training: { gist: gains.gist(state, answer) },
      events: { gist: eventsGist(state, answer) },
    });
  }

  /** @param {number} w */
  const watts = (w) => show.quantity("power", w, store.get().units, { digits: 0 });

  /** @param {State} state @param {Answer} answer @param {boolean} settled */
  function drawVerdict(state, { power_w, test_w, basis }, settled) {
    const length = strong(show.time(state.with[ID].hold_s));
    const [low, high] = test_w;
    const spread = show.spreadText("power", power_w.sd, state.units);
    verdict.update({
      mark: "power",
      claim: words.parts(basis === "fitted" ? "youHold" : "youMayHold", { time: length }),
      figure: show.number(power_w.value),
      unit: show.unitOf("power", state.units).symbol,
      spread: power_w.sd > 0 ? spread : null,
      odds: words("testWould", { low: show.number(low), high: watts(high) }),
      weight: basis === "fitted" ? "sure" : basis === "guessed" ? "likely" : "open",
      settled,
      spoken: words("spoken", {
        time: show.time(state.with[ID].hold_s),
        power: watts(power_w.value),
        spread: `${spread}\u00a0${show.unitOf("power", state.units).symbol}`,
        low: show.number(low),
        high: watts(high),
      }),
    });
  }

  /** @param {State} state @param {Answer} answer */
  function drawFigures(state, { more: changed, model, models: fits, usable, basis }) {
    const { power_change } = state.with[ID];
    const held = changed.held_s;
    const fit = fits.find((one) => one.model === model);
    const guess =
      basis === "guessed" && usable
        ? [
            ["criticalPower", "power", usable.cp_w],
            ["wPrime", "work", usable.w_prime_j],
          ]
        : [];
    const numbers = fit
      ? modelNumbers(tools, state, fit)
      : guess.map(([key, kind, figure]) =>
          guessLine(/** @type {any} */ (key), /** @type {any} */ (kind), /** @type {any} */ (figure), state),
        );
    figures.update([
      {
        name: words(power_change < 0 ? "lessFor" : "moreFor", {
          change: show.percent(Math.abs(power_change), 1).replace(/[.,]0(?=\D)/, ""),
          power: watts(changed.power_w),
        }),
        value: held ? show.time(held.value) : words(power_change < 0 ? "forEver" : "notAtAll"),
        difference: held && held.sd > 0 ? show.plusMinusTime(held.sd) : "",
        soft: true,
      },
      ...numbers.map(({ name, value, spread }) => ({ name, value, difference: spread, soft: true })),
    ]);
  }

  /** @param {"criticalPower" | "wPrime"} key @param {"power" | "work"} kind @param {import("../../types/core.d.ts").Figure} figure @param {State} state */
  function guessLine(key, kind, { value, sd }, { units }) {
    return {
      name: words(key),
      value: show.quantity(kind, value, units, { digits: kind === "power" ? 0 : 1 }),
      spread: show.plusMinus(kind, sd, units),
    };
  }

  /** What the curve rests on, and whether the efforts choose it. @param {State} state @param {Answer} answer */
  function restsOn(state, answer) {
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
      weight: inHundred(tools, own?.weight ?? 0),
      other: other ? modelName(other.model) : "",
      otherWeight: inHundred(tools, other?.weight ?? 0),
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

  /** @param {State} state @param {Answer} answer */
  function drawUse(state, answer) {
    const changes = useChanges(state, answer);
    const inUse =
      changes.length > 0 && changes.every(([path, value]) => JSON.stringify(store.at(path)) === JSON.stringify(value));
    use.hidden = changes.length === 0;
    use.disabled = inUse;
    say(use, words(inUse ? "inUse" : "use"));
    const { usable, model } = answer;
    useSays.hidden = !usable || model === usable.model || answer.basis !== "fitted";
    if (usable)
      say(
        useSays,
        words("useSays", {
          model: modelName(usable.model),
          cp: watts(usable.cp_w.value),
          wPrime: show.quantity("work", usable.w_prime_j.value, state.units, { digits: 1 }),
        }),
      );
  }

  /** @param {State} state @param {Answer} answer */
  function drawTables(state, answer) {
    const { columns } = answer;
    events.update({
      columns: [words("event"), words("eventPower"), words("eventTime")],
      rows: answer.events.map((event) => [
        eventName(state, event),
        `${watts(event.power_w.value)} ${show.plusMinus("power", event.power_w.sd, state.units)}`,
        event.beyond ? `${show.time(event.time_s)}, ${words("beyond")}` : show.time(event.time_s),
      ]),
    });
    const times = columns.time_s;
    const at = (/** @type {Float64Array} */ ys, /** @type {number} */ time_s) =>
      valueAt({ name: "", xs: times, ys }, time_s);
    round.update({
      columns: [words("tableTime"), words("tablePower"), words("tableTest")],
      rows: ROUND_TIMES_S.filter((time_s) => time_s >= times[0] && time_s <= times[times.length - 1]).map((time_s) => [
        show.time(time_s),
        watts(at(columns.power_w, time_s)),
        `${show.number(at(columns.test_low_w, time_s))}–${watts(at(columns.test_high_w, time_s))}`,
      ]),
    });
  }

  /** @param {State} state @param {Answer["events"][number]} event */
  function eventName({ scenario, units }, { event, distance_m }) {
    return scenario.events[event]?.name || distanceName(distance_m, units);
  }

  /** @param {State} state @param {Answer} answer */
  function eventsGist(state, { events: [first] }) {
    return first
      ? words("eventsGist", {
          event: eventName(state, first),
          power: watts(first.power_w.value),
          time: show.time(first.time_s),
        })
      : "";
  }

  return {
    update,
    destroy() {
      verdict.destroy();
      chart.destroy();
      models.destroy();
      positions.destroy();
      events.destroy();
      round.destroy();
    },
  };
}
