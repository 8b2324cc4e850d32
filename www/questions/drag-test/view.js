// @ts-check
/** A drag test: the sentence, the answer, runs and recorded laps, what they look like, and how a test is ridden. */

import { choice } from "../../parts/choice.js";
import { html, set } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { paragraphPiece, piece, questionShell } from "../shared/shell.js";
import { weather } from "../shared/weather.js";
import { askedAt } from "./asked-at.js";
import { coastDownsEditor } from "./coast-downs.js";
import { contest } from "./contest.js";
import { doubts } from "./doubts.js";
import { filmPart } from "./film.js";
import { keepPart } from "./keep.js";
import { lapChart } from "./lap-chart.js";
import { positionName, rowCounts } from "./names.js";
import { planChart } from "./plan-chart.js";
import { protocol } from "./protocol.js";
import { ridesEditor } from "./rides.js";
import { rulesPart } from "./rules.js";
import { runsEditor } from "./runs.js";
import { commonTable, lapTable, mainError, planTable, positionTable } from "./tables.js";
import { verdict } from "./verdict.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { DragTestAnswer as Answer } from "../../types/core.d.ts" */

const words = book("drag-test");
const ID = "drag-test";
const AT = `with.${ID}`;

/** How many rows the core is asked about. @param {State} state */
function countsIn(state) {
  const { runs, coast_downs: coastDowns = [] } = state.with[ID];
  return { laps: askedAt(state).length, runs: runs.length, coastDowns: coastDowns.length };
}

/** @param {State} state */
function isMeasured(state) {
  return Object.values(countsIn(state)).some((count) => count > 0);
}

/** @param {Answer} answer */
const isAnswered = ({ positions }) => positions.length > 0;

/** Whether it only plans a test. @param {Answer} answer */
const isPlan = ({ laps }) => laps.length === 0;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const data = dataBox(tools, page);
  const film = filmPart(tools);
  const rules = rulesPart(tools);
  const ask = asked(tools);
  return page.show({
    ...ask,
    fields: [...ask.fields, data, film, rules],
    answer: [
      verdict(),
      ifAnswered(piece(positionTable(), (grid, { state, answer }) => grid.update(state, answer))),
      paragraphPiece("also", also),
      keepPart(tools, page),
      doubts(tools),
    ],
    picture: [
      piece(planChart(tools), (chart, shown) => chart.update(shown)),
      piece(lapChart(), (chart, shown) => chart.update(shown, askedAt(shown.state))),
    ],
    data: [data],
    notes: [
      paragraphPiece("takes", (shown) => shared(tools, shown)),
      paragraphPiece("takes", inPairs),
      { element: html("p", { class: "caution" }, ...words.parts("caution")) },
    ],
    folds: foldsOf(tools, { film, rules }),
  });
}

/** The sentence. @param {Tools} tools */
function asked(tools) {
  const { store } = tools;
  const fields = {
    difference: tools.number({ path: `${AT}.plan.difference_share`, meaning: "drag" }),
    repeat: tools.number({ path: `${AT}.plan.run_cv_share` }),
    power: tools.number({ path: `${AT}.plan.power`, kind: "share", step: 5, digits: 0 }),
    day: weather(tools, { bearing: null }),
    crr: tools.number({ path: "scenario.bike.rolling_coefficient" }),
  };
  const rolling = choice({
    label: words("rolling"),
    options: [
      { value: "hold", name: words("rollingHold") },
      { value: "fit", name: words("rollingFit") },
    ],
    onChange: (value) => store.set(`${AT}.rolling`, value),
  });
  const wind = choice({
    label: words("wind"),
    options: [
      { value: "given", name: words("windGiven") },
      { value: "fit", name: words("windFit") },
      { value: "ignore", name: words("windIgnore") },
    ],
    onChange: (value) => store.set(`${AT}.wind`, value),
  });
  return {
    words: (/** @type {State} */ state) =>
      isMeasured(state)
        ? words.parts(state.with[ID].rolling === "fit" ? "askFit" : "ask", {
            ...fields,
            rolling,
            wind,
            rows: rowCounts(countsIn(state)),
          })
        : words.parts("askPlan", fields),
    wording: (/** @type {State} */ state) => `${rowCounts(countsIn(state))} ${state.with[ID].rolling}`,
    fields: Object.values(fields),
    known: (/** @type {State} */ state) => tools.known(state, [...state.scenario.positions.keys()]),
    follow(/** @type {State} */ state) {
      rolling.update({ value: state.with[ID].rolling });
      wind.update({ value: state.with[ID].wind });
    },
  };
}

/** What was ridden: recordings where files may be opened, and typed runs and coast-downs. @param {Tools} tools @param {Shell<Answer>} page */
function dataBox(tools, page) {
  const [runs, coastDowns] = [runsEditor(tools), coastDownsEditor(tools)];
  const rides = tools.opensFiles ? ridesEditor(tools) : null;
  const lead = html("p", { class: "begin no-print" });
  const element = html(
    "section",
    { class: "efforts-box", "aria-label": words("yours") },
    html("h2", {}, words("yours")),
    lead,
    ...(rides ? [rides.element] : []),
    runs.element,
    coastDowns.element,
  );

  /** The rows of the last answer, by their place in the list of all laps. */
  function answered() {
    const shown = page.shown();
    if (!shown) return new Map();
    const places = askedAt(shown.state);
    return new Map(shown.answer.laps.filter(({ kind }) => kind === "lap").map((row) => [places[row.index], row]));
  }

  /** What was refused last, which stays beside its number while the answer is drawn. @type {CoreError | null} */
  let refused = null;

  return {
    element,
    destroy: () => rides?.destroy(),
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      refused = atItsLap(error, state);
      lead.replaceChildren(...words.parts(rides ? "begin" : "beginTyped"));
      const typed = [runs, coastDowns].map((rows) => rows.update(state, refused));
      return [...typed, rides?.update(state, refused, answered()) ?? false].includes(true);
    },
    draw() {
      rides?.update(tools.store.get(), refused, answered());
    },
  };
}

/** The core counts the laps of open rides alone. @param {CoreError | null} error @param {State} state @returns {CoreError | null} */
function atItsLap(error, state) {
  const [, index, rest] = /^with\.laps\[(\d+)\](.*)$/.exec(error?.field ?? "") ?? [];
  const at = askedAt(state)[Number(index)];
  return error && at !== undefined ? { ...error, field: `with.laps[${at}]${rest}` } : error;
}

/** Shown only where something was measured. @param {Piece<Answer>} part @returns {Piece<Answer>} */
function ifAnswered({ element, draw, destroy }) {
  return {
    element,
    destroy,
    draw(shown) {
      if (element) set(element, { hidden: !isAnswered(shown.answer) });
      if (isAnswered(shown.answer)) draw?.(shown);
    },
  };
}

/** What else the answer says. @param {Shown<Answer>} shown */
function also({ state, answer }) {
  const { scatter_share, rolling_coefficient: rolling } = answer;
  const sentences = [];
  const found = contest(answer);
  const low = answer.positions.find(({ position }) => position === found?.low);
  if (found && low)
    sentences.push(
      words("thatIs", {
        share: show.percent(found.more.value / (low.cda_m2.value + found.more.value), 1),
        name: positionName(state, found.next),
      }),
    );
  if (scatter_share !== null) sentences.push(words("scatters", { share: show.percent(scatter_share, 1) }));
  if (rolling && !rolling.held)
    sentences.push(
      words("rollingFound", {
        rolling: show.quantity("coefficient", rolling.value, state.units),
        spread: rolling.sd === null ? "" : show.plusMinus("coefficient", rolling.sd, state.units),
      }),
    );
  return sentences.join(" ");
}

/** The error that all laps share and that counts most. @param {Tools} tools @param {Shown<Answer>} shown */
function shared(tools, { answer }) {
  const main = mainError(tools, answer);
  if (!main) return "";
  if (isPlan(answer)) return words("mainErrorPlanned", main);
  return words(answer.differences.length ? "mainError" : "mainErrorOne", main);
}

/** @param {Shown<Answer>} shown */
function inPairs({ answer }) {
  return answer.plan?.pairs && isPlan(answer) ? words("inPairs", { count: answer.plan.pairs }) : "";
}

/** The runs of a plan, or every lap and run. @returns {Piece<Answer>} */
function asTable() {
  const [plan, laps] = [planTable(), lapTable()];
  return {
    element: html("div", {}, plan.element, laps.element),
    destroy() {
      plan.destroy();
      laps.destroy();
    },
    draw({ state, answer }) {
      set(laps.element, { hidden: isPlan(answer) });
      set(plan.element, { hidden: !isPlan(answer) });
      plan.update(answer);
      laps.update(state, answer, askedAt(state));
    },
  };
}

/** @param {Tools} tools @param {{ film: ReturnType<typeof filmPart>, rules: ReturnType<typeof rulesPart> }} parts @returns {FoldPiece<Answer>[]} */
function foldsOf(tools, { film, rules }) {
  return [
    { id: "protocol", name: words("protocol"), gist: words("protocolGist"), body: protocol },
    {
      id: "common",
      name: words("common"),
      gist: words("commonGist"),
      body: piece(commonTable(tools), (grid, { answer }) => grid.update(answer)),
    },
    {
      id: "film",
      name: words("film"),
      gist: words("filmGist"),
      body: piece(film, (part, { state, answer }) => part.draw(state, answer)),
    },
    { id: "rules", name: words("rules"), gist: words("rulesGist"), body: rules.element },
    { id: "how", name: words("how"), gist: words("howGist"), body: workedOut },
    { id: "table", name: words("table"), gist: words("tableGist"), body: asTable() },
  ];
}
