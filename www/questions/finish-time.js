// @ts-check
/** How long will it take, how far in a fixed time, or what watts does a time take? */

import { answer as answerPart } from "../parts/answer.js";
import { folds } from "../parts/folds.js";
import { html, say, strong } from "../parts/html.js";
import { lines } from "../parts/lines.js";
import { sentence } from "../parts/sentence.js";
import { table } from "../parts/table.js";
import { finishTimeCharts } from "./finish-time/charts.js";
import { workedOut } from "./finish-time/worked-out.js";
import { titleOf } from "./shared/names.js";
import { courseChoice } from "./shared/course-choice.js";
import { distanceChoice, USUAL_DISTANCES, USUAL_TIMES, usualName } from "./shared/distance-choice.js";
import { effortChoice } from "./shared/effort-choice.js";
import { layOut } from "./shared/layout.js";
import { partsThatAddUp } from "./shared/rounding.js";
import { surerNote } from "./shared/surer.js";
import { warningList } from "./shared/warnings.js";
import { weather } from "./shared/weather.js";
import { courseLengthM } from "../state/scenario.js";
import { fromDisplay } from "../units.js";

/** @import { Question, Tools, View } from "./index.js" */
/** @import { State } from "../state/history.js" */
/** @import { FinishTimeAnswer } from "../types/core.d.ts" */
/** @import { Line } from "../parts/lines.js" */

const ID = "finish-time";
const AT = `with.${ID}`;
/** Distances between splits, in the rider's own unit; the first that gives no more than this many is taken. */
const SPLIT_STEPS = [0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 25, 50, 100];
const MOST_SPLITS = 10;
/** Only to choose how far apart the splits of a fixed time are: 10 m/s. */
const ABOUT_M_S = 10;
/** Where the work goes, in the order it is told. @type {readonly { key: "air"|"rolling"|"climbing"|"drivetrain"|"bearings"|"braking"|"kinetic", name: string }[]} */
const WORK = [
  { key: "air", name: "the air" }, { key: "rolling", name: "the tyres" }, { key: "climbing", name: "height" }, { key: "drivetrain", name: "the drivetrain" },
  { key: "bearings", name: "the bearings" }, { key: "braking", name: "the brakes" }, { key: "kinetic", name: "the speed you cross the line with" },
];
/** Less W′ than this is not worth a word. */
const MUCH_J = 50;
/** The warning that the watts are beyond the curve, which is told beside the figure. */
const ASKED_TOO_MUCH = "beyond_curve";

/** @type {Question} */
export const question = {
  id: ID,
  group: "ride",
  defaults: { effort: { kind: "even" } },
  request(state) {
    const own = state.with[ID];
    const length_m = own.for_time_s === undefined ? courseLengthM(state.scenario.course) : own.for_time_s * ABOUT_M_S;
    return { scenario: state.scenario, with: { ...own, split_every_m: splitEveryM(length_m, fromDisplay("distance", 1, state.units)) } };
  },
  load: async () => ({ create }),
};

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
function create(host, tools) {
  const { store, units: show } = tools;
  /** @type {FinishTimeAnswer | null} */
  let latest = null;
  const timed = (/** @type {State} */ state) => state.with[ID].for_time_s !== undefined;

  const far = distanceChoice(tools, {
    timePath: `${AT}.for_time_s`,
    withTime: ({ with: { [ID]: own } }) => (own.effort.kind === "time" ? [[`${AT}.effort`, { kind: "even" }]] : []),
  });
  const course = courseChoice(tools);
  const effort = effortChoice(tools, {
    at: `${AT}.effort`,
    kinds: (state) => (timed(state) ? ["even", "power"] : ["even", "power", "time"]),
    suggest: () => (latest ? { power_w: Math.round(latest.power_w.value), time_s: Math.round(latest.time_s.value) } : {}),
  });
  const cda = tools.number({ path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`, meaning: "drag" });
  const day = weather(tools);
  const words = [far, " of ", course, " ", effort, " with a drag area of ", cda, ", ", day];
  const endings = { time: ": how long will it take?", far: ": how far will I get?", power: ": what power does it take?" };
  let ending = "time";
  const ask = sentence({ title: titleOf(ID), words: [...words, endings.time], onOpen: () => tools.openSheet() });

  const verdict = answerPart();
  const ride = lines({ caption: "The ride in figures", headings: ["Figure", "Value", "Spread"] });
  const doubt = lines({ caption: "Where the plus or minus comes from", headings: ["From", "Plus or minus", ""] });
  const asked = html("p", { class: "also" });
  const why_difference = html("p", { class: "takes" });
  const reserve = html("p", { class: "takes" });
  const air = html("p", { class: "takes" });
  const surer = surerNote(tools);
  const doubts = warningList(tools);
  const caution = html("p", { class: "caution" }, "A best effort to the line is a maximal effort: if you are unwell or unused to it, ask a doctor first. Traffic, other riders, event rules and the law of the road come before any time on this page.");
  const charts = finishTimeCharts(tools, { rideFor, rideOver, settle: store.settle });
  const why = html("div", { class: "passage" });
  const splits = table({ caption: "" });
  const curve = table({ caption: "Your best even effort over other distances, on a course of this kind in this air." });
  const more = folds([
    { id: "splits", name: "Splits", body: splits.element },
    { id: "why", name: "Why?", body: why },
    { id: "how", name: "How it is worked out", gist: "Step by step along the road, from the start to the line.", body: workedOut },
    { id: "table", name: "As a table", gist: "Time and power against distance.", body: curve.element },
    ...tools.lastFolds(ID),
  ]);
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, ride.element, asked],
    picture: charts.elements,
    notes: [doubt.element, why_difference, air, reserve, surer.element, doubts.element, caution],
    folds: more.element,
  });

  /** @param {number} distance_m */
  function rideOver(distance_m) {
    store.set("scenario.course.distance_m", distance_m, { merge: "far" });
  }

  /** @param {number} time_s */
  function rideFor(time_s) {
    store.set(`${AT}.for_time_s`, time_s, { merge: "far" });
  }

  return {
    update(state, answer, error) {
      const now = timed(state) ? "far" : state.with[ID].effort.kind === "time" ? "power" : "time";
      if (now !== ending) ask.update({ words: [...words, endings[/** @type {"time"|"far"|"power"} */ (now)]] });
      ending = now;
      const shown = [far, course, effort, cda, day].map((field) => field.update(state, error)).includes(true);
      ask.update({ known: tools.known(state), wrong: tools.trouble(error, shown) });
      if (!answer) return;
      latest = answer;
      showAnswer(state, answer);
      showNotes(state, answer);
      charts.update(state, answer);
      showTables(state, answer);
    },
    destroy() {
      verdict.destroy();
      charts.destroy();
      splits.destroy();
      curve.destroy();
    },
  };

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showAnswer({ units, with: { [ID]: own } }, answer) {
    const { kind } = own.effort;
    const distanceText = usualName(USUAL_DISTANCES, answer.distance_m.value) ?? show.quantity("distance", answer.distance_m.value, units);
    const timeText = show.time(answer.time_s.value);
    const powerText = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const how = kind === "even" ? "at your best even effort" : `at ${powerText}`;
    const hold = kind === "even" ? ["at your ", strong("best even effort", "power")] : ["at ", strong(powerText, "power")];
    const nineteen = (/** @type {import("../types/core.d.ts").Figure} */ { value, sd }, /** @type {(v: number) => string} */ write) => (sd > 0 ? `19\u00a0in\u00a020: ${write(Math.max(0, value - 1.96 * sd))}\u00a0to\u00a0${write(value + 1.96 * sd)}` : "");

    if (ending === "far") {
      const unit = show.unitOf("distance", units);
      const write = (/** @type {number} */ m) => show.number(show.toDisplay("distance", m, units), { digits: 1 });
      const spread = show.spreadText("distance", answer.distance_m.sd, units);
      verdict.update({ claim: [`In ${usualName(USUAL_TIMES, answer.time_s.value) ?? timeText} `, ...hold, " you cover"], figure: write(answer.distance_m.value), unit: unit.symbol, spread, odds: nineteen(answer.distance_m, write), weight: "sure",
        spoken: `In ${timeText} ${how} you cover ${write(answer.distance_m.value)} ${unit.name}, plus or minus ${spread}.` });
    } else if (ending === "power") {
      const write = (/** @type {number} */ w) => show.number(w);
      verdict.update({ claim: [`${distanceText} in `, strong(timeText), " takes"], figure: write(answer.power_w.value), unit: "W", spread: show.spreadText("power", answer.power_w.sd, units), odds: nineteen(answer.power_w, write), weight: "sure",
        spoken: `${distanceText} in ${timeText} takes ${powerText}, plus or minus ${show.spreadText("power", answer.power_w.sd, units)}.` });
    } else {
      const spread = show.time(answer.time_s.sd);
      verdict.update({ claim: [`${distanceText} `, ...hold, " takes"], figure: timeText, spread, odds: nineteen(answer.time_s, show.time), weight: "sure",
        spoken: `${distanceText} ${how} takes ${timeText}, plus or minus ${spread}.` });
    }

    ride.update([
      { mark: "power", name: "Power", value: powerText, difference: show.plusMinus("power", answer.power_w.sd, units), soft: true },
      { name: "Average speed", value: show.quantity("speed", answer.average_speed_m_s.value, units, { digits: 1 }), difference: show.plusMinus("speed", answer.average_speed_m_s.sd, units), soft: true },
      { name: "Work at the pedals", value: show.quantity("work", answer.energy_j.pedal, units, { digits: 0 }) },
      answer.w_prime_left_j < -MUCH_J
        ? { name: "W′ at the line", value: show.quantity("work", -answer.w_prime_left_j, units, { digits: 1 }), difference: "short", soft: true }
        : { name: "W′ left at the line", value: show.quantity("work", answer.w_prime_left_j, units, { digits: 1 }) },
    ]);
    const gap = Math.round(answer.power_w.value) - Math.round(answer.sustainable_w);
    asked.hidden = kind === "even";
    say(asked, gap > 0
      ? ["Your power curve allows ", strong(show.quantity("power", answer.sustainable_w, units, { digits: 0 }), "power"), " for that long: this is ", strong(`${gap}\u00a0W too much`), "."]
      : ["Your power curve allows ", strong(show.quantity("power", answer.sustainable_w, units, { digits: 0 }), "power"), gap === 0 ? " for that long: just this." : ` for that long: you keep ${-gap}\u00a0W in hand.`]);
  }

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showNotes({ units, scenario }, answer) {
    const isFar = ending === "far";
    const isPower = ending === "power";
    const doubtful = isFar
      ? { inputs: answer.input_sd_m, model: answer.model_sd_m, both: answer.distance_m.sd, of: "the distance", plusMinus: (/** @type {number} */ sd) => show.plusMinus("distance", sd, units) }
      : isPower
        ? { inputs: answer.input_sd_w, model: answer.model_sd_w, both: answer.power_w.sd, of: "the watts", plusMinus: (/** @type {number} */ sd) => show.plusMinus("power", sd, units) }
        : { inputs: answer.input_sd_s, model: answer.model_sd_s, both: answer.time_s.sd, of: "the time", plusMinus: show.plusMinusTime };
    doubt.update([
      { name: "What your numbers leave open", value: "", difference: doubtful.plusMinus(doubtful.inputs) },
      { name: "The model’s own error", value: "", difference: doubtful.plusMinus(doubtful.model) },
      { name: "Together", value: "", difference: doubtful.plusMinus(doubtful.both) },
    ]);
    say(why_difference, isFar || isPower
      ? [strong("An absolute figure"), ` carries the model’s own error, ${show.percent(scenario.model_error_share.value ?? scenario.model_error_share, 1)} of a time; a difference between two rides hardly does, for most of it is in both.`]
      : [strong("A difference is surer than a time. "), "The two add in squares. Compare two rides on the same day and course, and most of both is in each of them, so it cancels: a saving of half a minute can be sure while the time itself is not."]);

    const still = answer.still_time_s;
    const gone = answer.mean_cda_m2 - scenario.positions[scenario.riding_position].cda_m2.value;
    say(air, [strong("The day. "), `The air weighs ${show.quantity("density", answer.density_kg_m3, units)}. `,
      answer.standard_time_s === null ? "" : `In standard air at sea level the same watts would be ${show.differenceWords(answer.time_s.value - answer.standard_time_s)}. `,
      still === null ? "There is no wind. " : [`Of the forecast wind ${show.quantity("wind", answer.rider_wind_m_s, units, { digits: 1 })} reach you. The same ride in still air, at these watts, would be `, show.differenceWords(answer.time_s.value - still), "."].join(""),
      Math.abs(gone) >= 0.0005 ? ` Your drag area averages ${show.quantity("area", answer.mean_cda_m2, units)} over the ride.` : ""]);

    const { differential_j: usual, no_recovery_j: none, linear_j: linear } = answer.w_prime_forms;
    const j = (/** @type {number} */ joules) => show.quantity("work", joules, units, { digits: 1 });
    const spread_j = Math.max(usual, none, linear) - Math.min(usual, none, linear);
    say(reserve, usual < -MUCH_J && spread_j < MUCH_J ? [strong("W′ runs out. "), `The ride asks ${j(-usual)} more than you have, whichever way W′ comes back.`] : [strong("What is left of W′. "), spread_j < MUCH_J
      ? `${j(usual)} at the line, whichever way W′ comes back: on this ride you hardly go below the power that drains it.`
      : `${j(usual)} at the line if W′ comes back ever more slowly as it fills, the form used here; ${j(none)} if nothing comes back; ${j(linear)} if all does, watt for watt. Nobody knows which you are: the spread is doubt too.`,
    answer.w_prime_least_j < -MUCH_J ? ` On the way it falls to ${j(answer.w_prime_least_j)}: more than you have.` : ""]);

    surer.update(answer.surer, { sd: doubtful.inputs, of: doubtful.of, plusMinus: doubtful.plusMinus });
    doubts.update(answer.warnings.filter(({ kind }) => kind !== ASKED_TOO_MUCH));

    const { energy_j: energy } = answer;
    const into = WORK.filter(({ key }) => Math.abs(energy[key]) > 0.0005 * energy.pedal);
    const shares = partsThatAddUp(into.map(({ key }) => (100 * energy[key]) / Math.max(1e-9, energy.pedal)));
    const told = into.map(({ name }, index) => `${shares[index]}\u202f% into ${name}`);
    // Where the hill or the wind gives work, a share of the sum means little.
    const share = answer.aero_share >= 0 && answer.aero_share <= 1;
    more.update({ why: { gist: share ? `Air takes ${show.percent(answer.aero_share)} of the work on the road.` : "The hill or the wind gives some of the work." } });
    say(why, [html("p", {}, `Where the ${show.quantity("work", energy.pedal, units, { digits: 0 })} at the pedals go: ${told.slice(0, -1).join(", ")} and ${told.at(-1)}.`),
      html("p", {}, "The longer the ride, the less power can be held, so time grows a little faster than distance. At the best even effort the two agree: it is the one power that your curve allows for exactly as long as it takes.")]);
  }

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showTables({ units }, answer) {
    const unit = (/** @type {"distance"|"speed"} */ kind) => show.unitOf(kind, units).symbol;
    const distance = (/** @type {number} */ m, digits = 2) => show.number(show.toDisplay("distance", m, units), { digits });
    const speed = (/** @type {number} */ v) => show.number(show.toDisplay("speed", v, units), { digits: 1 });
    const tenths = answer.splits.some(({ distance_m }) => show.fewestDigitsFor("distance", distance_m, units) > 0) ? 2 : 0;
    more.update({ splits: { gist: `${answer.splits.length} splits, the last at ${show.time(answer.splits[answer.splits.length - 1]?.time_s ?? 0)}.` } });
    splits.update({
      caption: "Since the start, and the mean speed since the split before.",
      columns: [`At, ${unit("distance")}`, "Time", `Speed, ${unit("speed")}`, "W′ left, kJ"],
      rows: answer.splits.map((split) => [distance(split.distance_m, tenths), show.time(split.time_s), speed(split.speed_m_s), show.number(split.w_prime_balance_j / 1000, { digits: 1 })]),
    });
    const { columns } = answer;
    curve.update({
      columns: [`Distance, ${unit("distance")}`, "Time", "Power, W", `Speed, ${unit("speed")}`],
      rows: Array.from(columns.distance_m.keys()).filter((i) => columns.distance_m.length < 20 || i % 3 === 0)
        .map((i) => [distance(columns.distance_m[i], 1), show.time(columns.time_s[i]), show.number(columns.power_w[i]), speed(columns.distance_m[i] / columns.time_s[i])]),
    });
  }
}

/** @param {number} length_m @param {number} unit_m */
function splitEveryM(length_m, unit_m) {
  const step = SPLIT_STEPS.find((one) => length_m / (one * unit_m) <= MOST_SPLITS) ?? 200;
  return Math.max(100, step * unit_m);
}
