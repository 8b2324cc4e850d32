// @ts-check
/** A finish time: the sentence three ways round, the answer, how well it is known, and the ride in figures. */

import { answer as answerPart } from "../../parts/answer.js";
import { html, say, strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { weightOf } from "../../parts/sureness.js";
import { table } from "../../parts/table.js";
import { amountOf } from "../../state/scenario.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { caution } from "../shared/caution.js";
import { clause } from "../shared/clause.js";
import { courseChoice } from "../shared/course-choice.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { distanceName, timeName } from "../shared/distance-names.js";
import { effortChoice } from "../shared/effort-choice.js";
import { listOf } from "../shared/list.js";
import { partsThatAddUp } from "../shared/rounding.js";
import { paragraphPiece, passagePiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { finishTimeCharts } from "./charts.js";
import { windEnds } from "./day-wind.js";
import { fixedTimeOf } from "./fixed-time.js";
import { otherStart } from "./other-start.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Kind } from "../../units.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { FinishTimeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("finish-time");
const shared = book("shared");
const ID = "finish-time";
const AT = `with.${ID}`;
/** Where the work goes, in the order it is told. */
const WORK = /** @type {const} */ (["air", "rolling", "climbing", "drivetrain", "bearings", "braking", "kinetic"]);
/** Chances between these are told in tenths, others in hundredths. */
const IN_TENTHS = [0.1, 0.9];

/** "about 3 in 10" @param {number} chance */
function chanceWords(chance) {
  if (chance < 0.01) return words("chanceUnder");
  if (chance > 0.99) return words("chanceOver");
  const all = chance >= IN_TENTHS[0] && chance <= IN_TENTHS[1] ? 10 : 100;
  return words("chanceAbout", { count: Math.round(chance * all), all });
}

/** Less W′ than this is not worth a word. */
const MUCH_J = 50;
/** The rider's question, by what is asked for. */
const ASK = /** @type {const} */ ({ time: "askTime", far: "askFar", power: "askPower" });
/** The warning that the watts are beyond the curve, which is told beside the figure. */
const ASKED_TOO_MUCH = "beyond_curve";

/** What is asked for. @param {State} state @returns {keyof typeof ASK} */
function endingOf(state) {
  return fixedTimeOf(state) !== undefined ? "far" : state.with[ID].effort.kind === "time" ? "power" : "time";
}

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const { store } = tools;
  const goal = target(tools, page);
  const starting = otherStart(tools, page.answer);
  const day = dayFold(tools);
  const { fields, words: sentence } = asked(tools, page);
  const charts = finishTimeCharts(tools, {
    rideFor(time_s) {
      const ofCourse = store.get().scenario.course.duration_s !== undefined;
      store.set(ofCourse ? "scenario.course.duration_s" : `${AT}.for_time_s`, time_s, { merge: "far" });
    },
    rideOver(distance_m) {
      const wentByTime = store.get().scenario.course.duration_s !== undefined;
      store.setAll(
        [
          ["scenario.course.distance_m", distance_m],
          ...(wentByTime ? [/** @type {[string, unknown]} */ (["scenario.course.duration_s", undefined])] : []),
        ],
        { merge: "far" },
      );
    },
    settle: store.settle,
  });
  return page.show({
    words: sentence,
    wording: endingOf,
    fields: [...fields, goal.time, ...starting.fields],
    follow(state) {
      goal.follow(state);
      starting.follow(state);
    },
    answer: [verdict(), rideInFigures(), sustainable(), starting.piece, goal.piece],
    picture: [piece(charts, (_, { state, answer }) => charts.update(state, answer))],
    notes: [
      whereFrom(),
      paragraphPiece("takes", ({ state }) => absolute(state)),
      paragraphPiece("takes", theDay),
      paragraphPiece("takes", stopsCost),
      paragraphPiece("takes", reserve),
      piece(surerNote(tools), (surer, { state, answer }) => {
        const { inputs, of, plusMinus } = doubtful(state, answer);
        surer.update(answer.surer, { sd: inputs, of, plusMinus });
      }),
      doubts(tools, ({ kind }) => kind !== ASKED_TOO_MUCH),
      caution(words.parts("caution")),
      day.piece,
    ],
    folds: [day.fold, ...foldsOf()],
  });
}

/** The sentence. @param {Tools} tools @param {Shell<Answer>} page */
function asked(tools, page) {
  const fields = {
    distance: distanceChoice(tools, {
      timePath: `${AT}.for_time_s`,
      withTime: ({ with: { [ID]: own } }) => (own.effort.kind === "time" ? [[`${AT}.effort`, { kind: "even" }]] : []),
    }),
    course: courseChoice(tools),
    effort: effortChoice(tools, {
      at: `${AT}.effort`,
      kinds: (state) => (endingOf(state) === "far" ? ["even", "power"] : ["even", "power", "time"]),
      suggest() {
        const latest = page.answer();
        return latest ? { power_w: Math.round(latest.power_w.value), time_s: Math.round(latest.time_s.value) } : {};
      },
    }),
    cda: tools.number({
      path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
      meaning: "drag",
    }),
    day: weather(tools),
  };
  return {
    words: (/** @type {State} */ state) => words.parts(ASK[endingOf(state)], fields),
    fields: Object.values(fields),
  };
}

/** A time to beat, and the chance of that. @param {Tools} tools @param {Shell<Answer>} page */
function target(tools, page) {
  const MINUTE_S = 60;
  const at = `${AT}.target_time_s`;
  const time = tools.number({ path: at, kind: "clock", step: 10 });
  const wanted = html("input", { type: "checkbox" });
  /** A round time just ahead of the one worked out. */
  const toBeat = () => Math.max(MINUTE_S, Math.floor((page.answer()?.time_s.value ?? 3600) / MINUTE_S) * MINUTE_S);
  wanted.addEventListener("change", () => tools.store.set(at, wanted.checked ? toBeat() : undefined));
  const chance = html("span", { class: "chance" });
  const beating = clause(
    ...words.parts("chanceOfBeating", { target: time, chance: { element: chance, note: html("div") } }),
  );
  const element = html(
    "div",
    { class: "also target" },
    html("label", { class: "check" }, wanted, words("haveTarget")),
    html("p", {}, beating.element),
    beating.note,
  );
  return {
    time,
    follow(/** @type {State} */ state) {
      element.hidden = endingOf(state) !== "time";
      wanted.checked = state.with[ID].target_time_s !== undefined;
      beating.show(wanted.checked);
    },
    piece: piece({ element }, (_, /** @type {Shown<Answer>} */ { answer }) => {
      if (answer.chance_of_target !== null) say(chance, chanceWords(answer.chance_of_target));
    }),
  };
}

/** @returns {Piece<Answer>} */
function verdict() {
  return piece(answerPart(), (part, { state, answer }) => {
    const { figure, write, ...told } = TELL[endingOf(state)](state, answer);
    const { value, sd, low_95, high_95 } = figure;
    const odds = sd > 0 ? shared("nineteenInTwenty", { low: write(Math.max(0, low_95)), high: write(high_95) }) : "";
    part.update({ figure: write(value), odds, weight: weightOf(figure), ...told });
  });
}

/** Texts that a verdict is made of. @param {State} state @param {Answer} answer */
function textsOf({ units, with: { [ID]: own } }, answer) {
  return {
    even: own.effort.kind === "even",
    distance: distanceName(answer.distance_m.value, units),
    power: show.quantity("power", answer.power_w.value, units, { digits: 0 }),
    effort: strong(words("bestEvenEffort"), "power"),
  };
}

/** How each ending is told. @satisfies {Record<keyof typeof ASK, (state: State, answer: Answer) => object>} */
const TELL = {
  far(/** @type {State} */ state, /** @type {Answer} */ answer) {
    const { even, effort, power } = textsOf(state, answer);
    const unit = show.unitOf("distance", state.units);
    const write = (/** @type {number} */ m) => show.number(show.toDisplay("distance", m, state.units), { digits: 1 });
    const [time, spread] = [
      timeName(answer.time_s.value),
      show.spreadText("distance", answer.distance_m.sd, state.units),
    ];
    const figure = write(answer.distance_m.value);
    return {
      figure: answer.distance_m,
      write,
      claim: even
        ? words.parts("evenCovers", { time, effort })
        : words.parts("wattsCover", { time, power: strong(power, "power") }),
      unit: unit.symbol,
      spread,
      spoken: words(even ? "spokenEvenCovers" : "spokenWattsCover", { time, power, figure, unit: unit.name, spread }),
    };
  },
  power(/** @type {State} */ state, /** @type {Answer} */ answer) {
    const { distance, power } = textsOf(state, answer);
    const [time, spread] = [show.time(answer.time_s.value), show.spreadText("power", answer.power_w.sd, state.units)];
    return {
      figure: answer.power_w,
      write: (/** @type {number} */ w) => show.number(w),
      claim: words.parts("timeTakes", { distance, time: strong(time) }),
      unit: show.unitOf("power", state.units).symbol,
      spread,
      spoken: words("spokenTimeTakes", { distance, time, figure: power, spread }),
    };
  },
  time(/** @type {State} */ state, /** @type {Answer} */ answer) {
    const { even, distance, effort, power } = textsOf(state, answer);
    const [figure, spread] = [show.time(answer.time_s.value), show.time(answer.time_s.sd)];
    return {
      figure: answer.time_s,
      write: show.time,
      claim: even
        ? words.parts("evenTakes", { distance, effort })
        : words.parts("wattsTake", { distance, power: strong(power, "power") }),
      unit: undefined,
      spread,
      spoken: words(even ? "spokenEvenTakes" : "spokenWattsTake", { distance, power, figure, spread }),
    };
  },
};

/** @returns {Piece<Answer>} */
function rideInFigures() {
  const part = lines({ caption: words("rideInFigures"), headings: [words("figure"), words("value"), words("spread")] });
  return piece(part, (_, { state: { units }, answer }) => {
    const left_j = answer.w_prime_left_j;
    const work = (/** @type {number} */ joules, digits = 1) => show.quantity("work", joules, units, { digits });
    part.update([
      {
        mark: "power",
        name: words("power"),
        value: show.quantity("power", answer.power_w.value, units, { digits: 0 }),
        difference: answer.power_w.sd > 0 ? show.plusMinus("power", answer.power_w.sd, units) : "",
        soft: true,
      },
      {
        name: words("averageSpeed"),
        value: show.quantity("speed", answer.average_speed_m_s.value, units, { digits: 1 }),
        difference: show.plusMinus("speed", answer.average_speed_m_s.sd, units),
        soft: true,
      },
      { name: words("workAtPedals"), value: work(answer.energy_j.pedal, 0) },
      left_j < -MUCH_J
        ? { name: words.parts("wPrimeAtLine"), value: work(-left_j), difference: words("short"), soft: true }
        : { name: words.parts("wPrimeLeftAtLine"), value: work(left_j) },
    ]);
  });
}

/** How the watts lie against those that can be held. @returns {Piece<Answer>} */
function sustainable() {
  return piece({ element: html("p", { class: "also" }) }, ({ element }, { state, answer }) => {
    const gap_w = Math.round(answer.power_w.value) - Math.round(answer.sustainable_w);
    const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
    element.hidden = state.with[ID].effort.kind === "even";
    say(
      element,
      words.parts(gap_w > 0 ? "tooMuch" : gap_w === 0 ? "justThis" : "inHand", {
        power: strong(watts(answer.sustainable_w), "power"),
        gap: watts(Math.abs(gap_w)),
      }),
    );
  });
}

/** @returns {Piece<Answer>} */
function whereFrom() {
  const part = lines({ caption: words("whereFrom"), headings: [words("from"), words("plusOrMinus"), ""] });
  return piece(part, (_, { state, answer }) => {
    const { inputs, model, both, plusMinus } = doubtful(state, answer);
    part.update([
      { name: words("fromNumbers"), value: "", difference: plusMinus(inputs) },
      { name: words("fromModel"), value: "", difference: plusMinus(model) },
      { name: words("together"), value: "", difference: plusMinus(both) },
    ]);
  });
}

/** @param {State} state */
function absolute(state) {
  const error = state.scenario.model_error_share;
  return endingOf(state) === "time"
    ? words.parts("differenceSurer")
    : words.parts("absolute", { error: show.percent(amountOf(error), 1) });
}

/** Air and wind. @param {Shown<Answer>} shown */
function theDay({ state, answer }) {
  const { units, scenario } = state;
  const { still_time_s, standard_time_s, time_s } = answer;
  const far = endingOf(state) === "far";
  const differs = (/** @type {number} */ other_s) => show.differenceWords(time_s.value - other_s);
  const gone = answer.mean_cda_m2 - amountOf(scenario.positions[scenario.riding_position].cda_m2);
  return [
    ...words.parts("theDay", { density: show.quantity("density", answer.density_kg_m3, units) }),
    ...(standard_time_s === null
      ? []
      : [" ", words(far ? "standardAirFar" : "standardAir", { differs: differs(standard_time_s) })]),
    " ",
    still_time_s === null
      ? words(answer.rider_wind_m_s > 0 ? "windLeftOut" : "noWind")
      : words(far ? "windReachesFar" : "windReaches", {
          wind: show.quantity("wind", answer.rider_wind_m_s, units, { digits: 1 }),
          differs: differs(still_time_s),
        }),
    ...(Math.abs(gone) >= 0.0005
      ? [" ", words("meanArea", { area: show.quantity("area", answer.mean_cda_m2, units) })]
      : []),
  ];
}

/** What stops and feeding cost. @param {Shown<Answer>} shown */
function stopsCost({ answer: { stops } }) {
  if (!stops) return "";
  const { number, costs_s, standing_s, starting_again_s, later_weather_s, sitting_up_s } = stops;
  const cost = ({ value, sd } = costs_s) =>
    sd > 0 ? `${show.time(value)} ${show.plusMinusTime(sd)}` : show.time(value);
  const parts = [
    number > 0 && words("stopsStanding", { count: number, cost: cost(standing_s) }),
    number > 0 && words("stopsAgain", { cost: cost(starting_again_s) }),
    sitting_up_s.value > 0 && words("stopsSitting", { cost: cost(sitting_up_s) }),
  ].filter((part) => part !== false);
  if (!parts.length) return words.parts("stopsNone");
  const gained_s = -later_weather_s.value;
  const meanwhile = gained_s ? [" ", words("stopsWeather", { differs: show.differenceWords(gained_s) })] : [];
  return [...words.parts("stopsCost", { whole: cost(), list: listOf(parts) }), ...meanwhile];
}

/** What is left of W′, by its three forms. @param {Shown<Answer>} shown */
function reserve({ state: { units, scenario }, answer }) {
  const { differential_j: usual_j, no_recovery_j: none_j, linear_j } = answer.w_prime_forms;
  const work = (/** @type {number} */ joules) => show.quantity("work", joules, units, { digits: 1 });
  const spread_j = Math.max(usual_j, none_j, linear_j) - Math.min(usual_j, none_j, linear_j);
  const agreed = spread_j < MUCH_J;
  const out = usual_j < -MUCH_J && agreed;
  // Past the onset of the long-ride loss what drains W′ is not CP but the power that the ride's own length allows.
  const onset = scenario.power.long_ride_from_s;
  const long =
    [scenario.power.long_ride_loss_w, scenario.power.long_ride_loss_share].some((loss) => loss !== undefined) &&
    onset !== undefined &&
    answer.time_s.value > amountOf(onset);
  return [
    ...words.parts(out ? "wPrimeOut" : !agreed ? "wPrimeForms" : long ? "wPrimeLong" : "wPrimeLeft", {
      work: work(-usual_j),
      usual: work(usual_j),
      none: work(none_j),
      linear: work(linear_j),
    }),
    ...(!out && answer.w_prime_least_j < -MUCH_J
      ? [" ", words("wPrimeLeast", { least: work(answer.w_prime_least_j) })]
      : []),
  ];
}

/** The figure that is asked for, and what makes up its ±. @param {State} state @param {Answer} answer */
function doubtful(state, answer) {
  const plusMinus = (/** @type {"distance" | "power"} */ kind) => (/** @type {number} */ sd) =>
    show.plusMinus(kind, sd, state.units);
  switch (endingOf(state)) {
    case "far":
      return {
        inputs: answer.input_sd_m,
        model: answer.model_sd_m,
        both: answer.distance_m.sd,
        of: /** @type {const} */ ("distance"),
        plusMinus: plusMinus("distance"),
      };
    case "power":
      return {
        inputs: answer.input_sd_w,
        model: answer.model_sd_w,
        both: answer.power_w.sd,
        of: /** @type {const} */ ("power"),
        plusMinus: plusMinus("power"),
      };
    default:
      return {
        inputs: answer.input_sd_s,
        model: answer.model_sd_s,
        both: answer.time_s.sd,
        of: /** @type {const} */ ("time"),
        plusMinus: show.plusMinusTime,
      };
  }
}

/** The day along the road: fetched and drawn once it is opened. @param {Tools} tools @returns {{ fold: FoldPiece<Answer>, piece: Piece<Answer> }} */
function dayFold(tools) {
  /** @type {Shown<Answer> | null} */
  let latest = null;
  /** @type {ReturnType<typeof import("./day.js").dayAlongTheRoad> | null} */
  let part = null;
  return {
    fold: {
      id: "day",
      name: words("dayFold"),
      hidden: ({ answer }) => !answer.day,
      gist({ state: { units }, answer: { day } }) {
        const ends = day && windEnds(day);
        const wind = (/** @type {number} */ m_s) => show.quantity("wind", m_s, units, { digits: 1 });
        return ends ? words("windGist", { low: wind(ends.low), high: wind(ends.high) }) : "";
      },
      async body() {
        const { dayAlongTheRoad } = await import("./day.js");
        part = dayAlongTheRoad(tools);
        if (latest) part.update(latest);
        return part.element;
      },
    },
    piece: {
      draw(shown) {
        latest = shown;
        part?.update(shown);
      },
      destroy: () => part?.destroy(),
    },
  };
}

/** @returns {FoldPiece<Answer>[]} */
function foldsOf() {
  return [
    {
      id: "splits",
      name: words("splits"),
      gist: ({ answer: { splits } }) =>
        words("splitsGist", { count: splits.length, last: show.time(splits.at(-1)?.time_s ?? 0) }),
      body: piece(table({ caption: "" }), (splits, shown) => splits.update(splitsTable(shown))),
    },
    {
      id: "why",
      name: shared("why"),
      // Where the hill or the wind gives work, a share of the sum means little.
      gist: ({ answer: { aero_share } }) =>
        aero_share >= 0 && aero_share <= 1 ? words("whyShare", { share: show.percent(aero_share) }) : words("whyGiven"),
      body: passagePiece(why, "passage"),
    },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("curveGist"),
      body: piece(table({ caption: words("curveCaption") }), (curve, shown) => curve.update(curveTable(shown))),
    },
  ];
}

/** @param {Shown<Answer>} shown */
function why({ state, answer: { energy_j: energy } }) {
  const into = WORK.filter((key) => Math.abs(energy[key]) > 0.0005 * energy.pedal);
  const shares = partsThatAddUp(into.map((key) => (100 * energy[key]) / Math.max(1e-9, energy.pedal)));
  return [
    html(
      "p",
      {},
      words("whereWork", {
        work: show.quantity("work", energy.pedal, state.units, { digits: 0 }),
        list: listOf(into.map((key, index) => words(key, { share: show.percent(shares[index] / 100) }))),
      }),
    ),
    html("p", {}, words("whyLonger")),
  ];
}

/** How the tables write their figures, in the reader's units but without them. @param {State} state */
function bare({ units }) {
  const write =
    (/** @type {Kind} */ kind, /** @type {number} */ usual) =>
    (/** @type {number} */ si, digits = usual) =>
      show.number(show.toDisplay(kind, si, units), { digits });
  return {
    unit: (/** @type {Kind} */ kind) => ({ unit: show.unitOf(kind, units).symbol }),
    distance: write("distance", 2),
    speed: write("speed", 1),
    work: write("work", 1),
  };
}

/** @param {Shown<Answer>} shown */
function splitsTable({ state, answer }) {
  const { unit, distance, speed, work } = bare(state);
  const whole = answer.splits.every(({ distance_m }) => show.fewestDigitsFor("distance", distance_m, state.units) <= 0);
  return {
    caption: words("splitsCaption"),
    columns: [
      words("at", unit("distance")),
      words("time"),
      words("speedIn", unit("speed")),
      words("wPrimeIn", unit("work")),
    ],
    rows: answer.splits.map((split) => [
      distance(split.distance_m, whole ? 0 : 2),
      show.time(split.time_s),
      speed(split.speed_m_s),
      work(split.w_prime_balance_j),
    ]),
  };
}

/** @param {Shown<Answer>} shown */
function curveTable({ state, answer: { columns } }) {
  const { unit, distance, speed } = bare(state);
  return {
    columns: [
      words("distanceIn", unit("distance")),
      words("time"),
      words("powerIn", unit("power")),
      words("speedIn", unit("speed")),
    ],
    rows: Array.from(columns.distance_m.keys())
      .filter((i) => columns.distance_m.length < 20 || i % 3 === 0)
      .map((i) => [
        distance(columns.distance_m[i], 1),
        show.time(columns.time_s[i]),
        show.number(columns.power_w[i]),
        speed(columns.distance_m[i] / columns.time_s[i]),
      ]),
  };
}
