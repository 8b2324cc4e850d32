// @ts-check
/** A finish time: the sentence three ways round, the answer, how well it is known, and the ride in figures. */

import { answer as answerPart } from "../../parts/answer.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { sentence } from "../../parts/sentence.js";
import { table } from "../../parts/table.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";
import { courseChoice } from "../shared/course-choice.js";
import { distanceChoice, distanceName, timeName } from "../shared/distance-choice.js";
import { effortChoice } from "../shared/effort-choice.js";
import { layOut } from "../shared/layout.js";
import { listOf } from "../shared/list.js";
import { titleOf } from "../shared/names.js";
import { partsThatAddUp } from "../shared/rounding.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { finishTimeCharts } from "./charts.js";
import { workedOut } from "./worked-out.js";

/** @import { Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FinishTimeAnswer } from "../../types/core.d.ts" */

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

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
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
    suggest: () =>
      latest ? { power_w: Math.round(latest.power_w.value), time_s: Math.round(latest.time_s.value) } : {},
  });
  const cda = tools.number({
    path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
    meaning: "drag",
  });
  const day = weather(tools);
  const askWords = () => words.parts(ASK[ending], { distance: far, course, effort, cda, day });
  /** @type {keyof typeof ASK} */
  let ending = "time";
  const ask = sentence({ title: titleOf(ID), words: askWords(), onOpen: () => tools.openSheet() });

  const verdict = answerPart();
  const ride = lines({ caption: words("rideInFigures"), headings: [words("figure"), words("value"), words("spread")] });
  const doubt = lines({ caption: words("whereFrom"), headings: [words("from"), words("plusOrMinus"), ""] });
  const asked = html("p", { class: "also" });
  const targetTime = tools.number({ path: `${AT}.target_time_s`, kind: "clock", step: 10 });
  const wanted = html("input", { type: "checkbox" });
  wanted.addEventListener("change", () => store.set(`${AT}.target_time_s`, wanted.checked ? toBeat() : undefined));
  const chance = html("span", { class: "chance" });
  const beating = clause(
    ...words.parts("chanceOfBeating", { target: targetTime, chance: { element: chance, note: html("div") } }),
  );
  const target = html(
    "div",
    { class: "also target" },
    html("label", { class: "check" }, wanted, words("haveTarget")),
    html("p", {}, beating.element),
    beating.note,
  );
  const why_difference = html("p", { class: "takes" });
  const reserve = html("p", { class: "takes" });
  const air = html("p", { class: "takes" });
  const surer = surerNote(tools);
  const doubts = warningList(tools);
  const caution = html("p", { class: "caution" }, words("caution"));
  const charts = finishTimeCharts(tools, { rideFor, rideOver, settle: store.settle });
  const why = html("div", { class: "passage" });
  const splits = table({ caption: "" });
  const curve = table({ caption: words("curveCaption") });
  const more = folds([
    { id: "splits", name: words("splits"), body: splits.element },
    { id: "why", name: shared("why"), body: why },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    { id: "table", name: shared("asTable"), gist: words("curveGist"), body: curve.element },
    ...tools.lastFolds(ID),
  ]);
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, ride.element, asked, target],
    picture: charts.elements,
    notes: [doubt.element, why_difference, air, reserve, surer.element, doubts.element, caution],
    folds: more.element,
  });

  /** A round time just ahead of the one worked out. */
  function toBeat() {
    const MINUTE_S = 60;
    return Math.max(MINUTE_S, Math.floor((latest?.time_s.value ?? 3600) / MINUTE_S) * MINUTE_S);
  }

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
      const turned = now !== ending;
      ending = now;
      if (turned) ask.update({ words: askWords() });
      const shown = [far, course, effort, cda, day, targetTime]
        .map((field) => field.update(state, error))
        .includes(true);
      showTarget(state);
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

  /** @param {State} state */
  function showTarget(state) {
    target.hidden = ending !== "time";
    wanted.checked = state.with[ID].target_time_s !== undefined;
    beating.show(wanted.checked);
  }

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showAnswer({ units, with: { [ID]: own } }, answer) {
    const { kind } = own.effort;
    const even = kind === "even";
    const distance = distanceName(answer.distance_m.value, units);
    const power = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const effort = strong(words("bestEvenEffort"), "power");
    const chances = (
      /** @type {import("../../types/core.d.ts").Figure} */ { value, sd },
      /** @type {(v: number) => string} */ write,
    ) =>
      sd > 0
        ? shared("nineteenInTwenty", { low: write(Math.max(0, value - 1.96 * sd)), high: write(value + 1.96 * sd) })
        : "";

    if (ending === "far") {
      const unit = show.unitOf("distance", units);
      const write = (/** @type {number} */ m) => show.number(show.toDisplay("distance", m, units), { digits: 1 });
      const [figure, spread, time] = [
        write(answer.distance_m.value),
        show.spreadText("distance", answer.distance_m.sd, units),
        timeName(answer.time_s.value),
      ];
      verdict.update({
        claim: even
          ? words.parts("evenCovers", { time, effort })
          : words.parts("wattsCover", { time, power: strong(power, "power") }),
        figure,
        unit: unit.symbol,
        spread,
        odds: chances(answer.distance_m, write),
        weight: "sure",
        spoken: words(even ? "spokenEvenCovers" : "spokenWattsCover", { time, power, figure, unit: unit.name, spread }),
      });
    } else if (ending === "power") {
      const write = (/** @type {number} */ w) => show.number(w);
      const [time, spread] = [show.time(answer.time_s.value), show.spreadText("power", answer.power_w.sd, units)];
      verdict.update({
        claim: words.parts("timeTakes", { distance, time: strong(time) }),
        figure: write(answer.power_w.value),
        unit: show.unitOf("power", units).symbol,
        spread,
        odds: chances(answer.power_w, write),
        weight: "sure",
        spoken: words("spokenTimeTakes", { distance, time, figure: power, spread }),
      });
    } else {
      const [figure, spread] = [show.time(answer.time_s.value), show.time(answer.time_s.sd)];
      verdict.update({
        claim: even
          ? words.parts("evenTakes", { distance, effort })
          : words.parts("wattsTake", { distance, power: strong(power, "power") }),
        figure,
        spread,
        odds: chances(answer.time_s, show.time),
        weight: "sure",
        spoken: words(even ? "spokenEvenTakes" : "spokenWattsTake", { distance, power, figure, spread }),
      });
    }

    if (answer.chance_of_target !== null) say(chance, chanceWords(answer.chance_of_target));
    ride.update([
      {
        mark: "power",
        name: words("power"),
        value: power,
        difference: answer.power_w.sd > 0 ? show.plusMinus("power", answer.power_w.sd, units) : "",
        soft: true,
      },
      {
        name: words("averageSpeed"),
        value: show.quantity("speed", answer.average_speed_m_s.value, units, { digits: 1 }),
        difference: show.plusMinus("speed", answer.average_speed_m_s.sd, units),
        soft: true,
      },
      { name: words("workAtPedals"), value: show.quantity("work", answer.energy_j.pedal, units, { digits: 0 }) },
      answer.w_prime_left_j < -MUCH_J
        ? {
            name: words("wPrimeAtLine"),
            value: show.quantity("work", -answer.w_prime_left_j, units, { digits: 1 }),
            difference: words("short"),
            soft: true,
          }
        : {
            name: words("wPrimeLeftAtLine"),
            value: show.quantity("work", answer.w_prime_left_j, units, { digits: 1 }),
          },
    ]);
    const gap_w = Math.round(answer.power_w.value) - Math.round(answer.sustainable_w);
    asked.hidden = even;
    say(
      asked,
      words.parts(gap_w > 0 ? "tooMuch" : gap_w === 0 ? "justThis" : "inHand", {
        power: strong(show.quantity("power", answer.sustainable_w, units, { digits: 0 }), "power"),
        gap: show.quantity("power", Math.abs(gap_w), units, { digits: 0 }),
      }),
    );
  }

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showNotes({ units, scenario }, answer) {
    const { inputs, model, both, of, plusMinus } = doubtful(units, answer);
    doubt.update([
      { name: words("fromNumbers"), value: "", difference: plusMinus(inputs) },
      { name: words("fromModel"), value: "", difference: plusMinus(model) },
      { name: words("together"), value: "", difference: plusMinus(both) },
    ]);
    say(
      why_difference,
      ending === "time"
        ? words.parts("differenceSurer")
        : words.parts("absolute", {
            error: show.percent(scenario.model_error_share.value ?? scenario.model_error_share, 1),
          }),
    );

    const { still_time_s, standard_time_s, time_s } = answer;
    const gone = answer.mean_cda_m2 - scenario.positions[scenario.riding_position].cda_m2.value;
    say(air, [
      ...words.parts("theDay", { density: show.quantity("density", answer.density_kg_m3, units) }),
      ...(standard_time_s === null
        ? []
        : [
            " ",
            words(ending === "far" ? "standardAirFar" : "standardAir", {
              differs: show.differenceWords(time_s.value - standard_time_s),
            }),
          ]),
      " ",
      still_time_s === null
        ? words(answer.rider_wind_m_s > 0 ? "windLeftOut" : "noWind")
        : words(ending === "far" ? "windReachesFar" : "windReaches", {
            wind: show.quantity("wind", answer.rider_wind_m_s, units, { digits: 1 }),
            differs: show.differenceWords(time_s.value - still_time_s),
          }),
      ...(Math.abs(gone) >= 0.0005
        ? [" ", words("meanArea", { area: show.quantity("area", answer.mean_cda_m2, units) })]
        : []),
    ]);

    const { differential_j: usual_j, no_recovery_j: none_j, linear_j } = answer.w_prime_forms;
    const work = (/** @type {number} */ joules) => show.quantity("work", joules, units, { digits: 1 });
    const spread_j = Math.max(usual_j, none_j, linear_j) - Math.min(usual_j, none_j, linear_j);
    const agreed = spread_j < MUCH_J;
    const out = usual_j < -MUCH_J && agreed;
    // Past the onset of the long-ride loss what drains W′ is not CP but the power that the ride's own length allows.
    const onset = scenario.power.long_ride_from_s;
    const long =
      [scenario.power.long_ride_loss_w, scenario.power.long_ride_loss_share].some((loss) => loss !== undefined) &&
      time_s.value > (onset?.value ?? onset);
    say(reserve, [
      ...words.parts(out ? "wPrimeOut" : !agreed ? "wPrimeForms" : long ? "wPrimeLong" : "wPrimeLeft", {
        work: work(-usual_j),
        usual: work(usual_j),
        none: work(none_j),
        linear: work(linear_j),
      }),
      ...(!out && answer.w_prime_least_j < -MUCH_J
        ? [" ", words("wPrimeLeast", { least: work(answer.w_prime_least_j) })]
        : []),
    ]);

    surer.update(answer.surer, { sd: inputs, of, plusMinus });
    doubts.update(answer.warnings.filter(({ kind }) => kind !== ASKED_TOO_MUCH));

    const { energy_j: energy } = answer;
    const into = WORK.filter((key) => Math.abs(energy[key]) > 0.0005 * energy.pedal);
    const shares = partsThatAddUp(into.map((key) => (100 * energy[key]) / Math.max(1e-9, energy.pedal)));
    // Where the hill or the wind gives work, a share of the sum means little.
    const share = answer.aero_share >= 0 && answer.aero_share <= 1;
    more.update({
      why: { gist: share ? words("whyShare", { share: show.percent(answer.aero_share) }) : words("whyGiven") },
    });
    say(why, [
      html(
        "p",
        {},
        words("whereWork", {
          work: show.quantity("work", energy.pedal, units, { digits: 0 }),
          list: listOf(into.map((key, index) => words(key, { share: show.percent(shares[index] / 100) }))),
        }),
      ),
      html("p", {}, words("whyLonger")),
    ]);
  }

  /** The figure that is asked for, and what makes up its ±. @param {import("../../units.js").Units} units @param {FinishTimeAnswer} answer */
  function doubtful(units, answer) {
    switch (ending) {
      case "far":
        return {
          inputs: answer.input_sd_m,
          model: answer.model_sd_m,
          both: answer.distance_m.sd,
          of: /** @type {const} */ ("distance"),
          plusMinus: (/** @type {number} */ sd) => show.plusMinus("distance", sd, units),
        };
      case "power":
        return {
          inputs: answer.input_sd_w,
          model: answer.model_sd_w,
          both: answer.power_w.sd,
          of: /** @type {const} */ ("power"),
          plusMinus: (/** @type {number} */ sd) => show.plusMinus("power", sd, units),
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

  /** @param {State} state @param {FinishTimeAnswer} answer */
  function showTables({ units }, answer) {
    const unit = (/** @type {import("../../units.js").Kind} */ kind) => ({ unit: show.unitOf(kind, units).symbol });
    const distance = (/** @type {number} */ m, digits = 2) =>
      show.number(show.toDisplay("distance", m, units), { digits });
    const speed = (/** @type {number} */ v) => show.number(show.toDisplay("speed", v, units), { digits: 1 });
    const work = (/** @type {number} */ joules) => show.number(show.toDisplay("work", joules, units), { digits: 1 });
    const tenths = answer.splits.some(({ distance_m }) => show.fewestDigitsFor("distance", distance_m, units) > 0)
      ? 2
      : 0;
    more.update({
      splits: {
        gist: words("splitsGist", {
          count: answer.splits.length,
          last: show.time(answer.splits[answer.splits.length - 1]?.time_s ?? 0),
        }),
      },
    });
    splits.update({
      caption: words("splitsCaption"),
      columns: [
        words("at", unit("distance")),
        words("time"),
        words("speedIn", unit("speed")),
        words("wPrimeIn", unit("work")),
      ],
      rows: answer.splits.map((split) => [
        distance(split.distance_m, tenths),
        show.time(split.time_s),
        speed(split.speed_m_s),
        work(split.w_prime_balance_j),
      ]),
    });
    const { columns } = answer;
    curve.update({
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
    });
  }
}
