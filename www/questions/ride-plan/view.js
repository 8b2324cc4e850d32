// @ts-check
/** A plan of effort: the sentence, the powers and where each begins, what happens if it goes otherwise, and the ride in charts. */

import { answer as answerPart } from "../../parts/answer.js";
import { html, say, set } from "../../parts/html.js";
import { weightOf } from "../../parts/sureness.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { courseChoice } from "../shared/course-choice.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { rideName } from "../shared/distance-names.js";
import { paragraphPiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { carefulPlan } from "./careful.js";
import { planCharts } from "./charts.js";
import { cueTable } from "./cues.js";
import { limitsPart } from "./limits.js";
import { otherwiseTable } from "./otherwise.js";
import { sittingUp, whatSittingUpDoes } from "./sitting-up.js";
import { strip } from "./strip.js";
import { alongTable } from "./tables.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
const shared = book("shared");
const ID = "ride-plan";
/** A plan that gains less than this, s, is as fast as the even effort. */
const AS_FAST_S = 1;
/** The warning that the caution beside the plan tells in full. */
const IN_CAUTION = "effort_not_speed";
/** Fewer of a hundred riders than this are hardly any. */
const HARDLY = 0.02;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const ask = asked(tools);
  const limits = limitsPart(tools);
  const upright = sittingUp(tools);
  const charts = planCharts(tools);
  return page.show({
    words: ask.words,
    fields: [...ask.fields, limits, upright],
    follow(state) {
      limits.follow(state);
      upright.follow(state);
    },
    answer: [
      verdict(),
      piece(cueTable(words("planCaption")), (grid, { state, answer }) =>
        grid.update(state, answer.simple.cues, answer),
      ),
      { element: html("p", { class: "caution" }, ...words.parts("effortOnly")) },
      paragraphPiece("also", ({ answer }) => beside(answer)),
      paragraphPiece("also", ({ state, answer }) => tooCoarse(state, answer)),
      paragraphPiece("also", ({ answer }) => whatSittingUpDoes(answer)),
      paragraphPiece("also", ({ answer }) => stopping(answer)),
      runningOut(tools),
      piece(otherwiseTable(), (grid, { state, answer }) => grid.update(state, answer)),
    ],
    picture: [piece(charts, (_, { state, answer }) => charts.update(state, answer))],
    notes: [
      piece(surerNote(tools), (surer, { answer }) => {
        const { sd } = answer.finish_s;
        surer.update(answer.surer, { sd, of: "time", plusMinus: show.plusMinusTime });
      }),
      doubts(tools, ({ kind }) => kind !== IN_CAUTION),
    ],
    folds: foldsOf(tools, limits, upright),
  });
}

/** The sentence. @param {Tools} tools */
function asked(tools) {
  const fields = {
    distance: distanceChoice(tools),
    course: courseChoice(tools),
    cp: tools.number({ path: "scenario.power.cp_w", meaning: "power" }),
    wPrime: tools.number({ path: "scenario.power.w_prime_j", meaning: "power" }),
    cda: tools.number({
      path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
      meaning: "drag",
    }),
    day: weather(tools),
  };
  return { words: () => words.parts("ask", fields), fields: Object.values(fields) };
}

/** @returns {Piece<Answer>} */
function verdict() {
  return piece(answerPart(), (part, { state, answer, settled }) => {
    const { even, simple, finish_s } = answer;
    const distance = rideName(
      {
        distance_m: answer.columns.distance_m[answer.columns.distance_m.length - 1],
        duration_s: state.scenario.course.duration_s,
      },
      state.units,
    );
    const power = show.quantity("power", even.power_w, state.units, { digits: 0 });
    const gain_s = even.time_s - simple.time_s;
    const compared =
      Math.abs(gain_s) < AS_FAST_S
        ? words("asFast", { power })
        : words("ahead", { differs: show.differenceWords(gain_s), power });
    const [figure, spread] = [show.time(simple.time_s), show.time(finish_s.sd)];
    part.update({
      claim: words.parts("takes", { distance }),
      figure,
      spread,
      odds: compared,
      weight: weightOf(finish_s),
      spoken: words("spoken", { distance, figure, spread, compared }),
      settled,
    });
  });
}

/** The plan against the fastest one. @param {Answer} answer */
function beside({ simple, fastest }) {
  return words(simple.cues.length === 1 ? "bestOne" : "best", {
    time: show.time(fastest.time_s),
    count: simple.cues.length,
    differs: show.differenceWords(-simple.slower_by_s),
  });
}

/** Where rounding its powers makes the plan slower than the even effort, and nothing else can. @param {State} state @param {Answer} answer */
function tooCoarse({ units, with: { [ID]: own } }, { even, simple, sit_up }) {
  if (sit_up || simple.time_s - even.time_s < AS_FAST_S || own.round_w <= 1) return "";
  const round = show.quantity("power", own.round_w, units, { digits: 0 });
  return words("tooCoarse", { round, limits: words("limits") });
}

/** What stops on the way do to the plan. @param {Answer} answer */
function stopping({ stops }) {
  return stops ? words("stops", { count: stops.number, cost: show.time(stops.costs_s) }) : "";
}

/** How often riders run out who are not as believed, and where critical power is tested. @param {Tools} tools @returns {Piece<Answer>} */
function runningOut(tools) {
  const test = html("button", { type: "button" }, words("testCp"));
  test.addEventListener("click", () => tools.go("power-curve"));
  const text = html("span");
  const element = html("p", { class: "also" }, text, " ", test);
  return {
    element,
    draw({ state, answer: { simple } }) {
      const rarely = simple.run_out_share < HARDLY;
      say(
        text,
        rarely
          ? words("runOutRarely")
          : words("runOut", { share: show.number(100 * simple.run_out_share, { digits: 0 }) }),
      );
      const cp = state.scenario.power.cp_w;
      set(test, { hidden: rarely || (typeof cp === "object" && cp.source === "measured") });
    },
  };
}

/**
 * @param {Tools} tools @param {ReturnType<typeof limitsPart>} limits @param {ReturnType<typeof sittingUp>} upright
 * @returns {FoldPiece<Answer>[]}
 */
function foldsOf(tools, limits, upright) {
  const careful = carefulPlan();
  return [
    {
      id: "careful",
      name: words("careful"),
      gist: ({ answer }) => careful.gist(answer),
      body: piece(careful, (part, { state, answer }) => part.update(state, answer)),
    },
    {
      id: "strip",
      name: words("strip"),
      gist: words("stripGist"),
      body: piece(strip(), (part, { state, answer }) => part.update(state, answer)),
    },
    {
      id: "limits",
      name: words("limits"),
      gist: words("limitsGist"),
      body: piece(limits, (part, { state, answer }) => part.draw(state, answer)),
    },
    {
      id: "sit-up",
      name: words("sitUp"),
      gist: ({ answer }) => whatSittingUpDoes(answer) || words("sitUpNot"),
      body: piece(upright, (part, { state, answer }) => part.draw(state, answer)),
    },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: () => workedOut(tools) },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("tableGist"),
      body: piece(alongTable(), (grid, { state, answer }) => grid.update(state, answer)),
    },
  ];
}
