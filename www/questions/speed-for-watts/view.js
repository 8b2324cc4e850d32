// @ts-check
/** The speed for watts or the watts for a speed: the sentence, the answer, and where the watts go at every speed. */

import { answer as answerPart } from "../../parts/answer.js";
import { areaChart } from "../../parts/area-chart.js";
import { bars } from "../../parts/bars.js";
import { choice } from "../../parts/choice.js";
import { folds } from "../../parts/folds.js";
import { html, say, strong } from "../../parts/html.js";
import { lineChart, valueAt } from "../../parts/line-chart.js";
import { lines } from "../../parts/lines.js";
import { sentence } from "../../parts/sentence.js";
import { table } from "../../parts/table.js";
import { book } from "../../words/index.js";
import { layOut, onScreen } from "../shared/layout.js";
import { titleOf } from "../shared/names.js";
import { partsThatAddUp, rung } from "../shared/rounding.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { spot } from "./spot.js";
import { workedOut } from "./worked-out.js";

/** @import { Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { SpeedForWattsAnswer } from "../../types/core.d.ts" */
/** @import { MovePhase } from "../../parts/handle.js" */

const words = book("speed-for-watts");
const shared = book("shared");
const ID = "speed-for-watts";
const AT = `with.${ID}`;
/** A drag goes no lower. */
const LEAST_W = 1;
/** The step that the next watts are told for. */
const NEXT_W = 10;
/** Axis ends, close enough together that the rider's own point stays well inside the core's curve. */
const TOP_SPEEDS_M_S = [4.9, 6, 7.2, 8.6, 10.2, 12.2, 14.6, 17.5, 21, 25, 30, 36, 43, 54];
const TOP_POWERS_W = [100, 140, 200, 280, 400, 560, 800, 1100, 1500, 2500];
/** Both charts begin at the same edge. */
const LEFT_PX = 48;
/** How far an axis reaches beyond the rider's own point, so that the ring has room. */
const BEYOND_SPEED = 1.1;
const BEYOND_POWER = 1.35;

/** What the pedals feed, in the order they are stacked. @type {readonly { key: "air"|"rolling"|"climbing"|"bearings"|"drivetrain", meaning: "drag"|"ground", shade: 0|1|2 }[]} */
const PARTS = [
  { key: "air", meaning: "drag", shade: 1 },
  { key: "rolling", meaning: "ground", shade: 1 },
  { key: "climbing", meaning: "ground", shade: 2 },
  { key: "bearings", meaning: "ground", shade: 0 },
  { key: "drivetrain", meaning: "ground", shade: 1 },
];

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
  const { store, units: show } = tools;
  /** @type {SpeedForWattsAnswer | null} */
  let latest = null;
  /** The answer when a drag began: its curves hold all that the drag can reach, which the newest may not. @type {SpeedForWattsAnswer | null} */
  let dragAlong = null;

  const by = choice({
    label: words("wayRound"),
    path: `${AT}.by`,
    options: [
      { value: "power", name: words("byPower") },
      { value: "speed", name: words("bySpeed") },
    ],
    onChange: turnRound,
  });
  const power = tools.number({ path: `${AT}.power_w`, meaning: "power" });
  const speed = tools.number({ path: `${AT}.speed_m_s` });
  const cda = tools.number({
    path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
    meaning: "drag",
  });
  const slopeRange = tools.field("scenario.course.grade");
  const grade = tools.number({
    path: `${AT}.grade`,
    label: words("slopeHere"),
    kind: "grade",
    meaning: "ground",
    signed: true,
    step: 0.1,
    min: slopeRange?.min,
    max: slopeRange?.max,
    value: (state) => spot(state).grade,
  });
  const bearing = tools.number({
    path: `${AT}.bearing_deg`,
    label: words("directionHere"),
    kind: "angle",
    min: -360,
    max: 360,
    value: (state) => spot(state).bearing_deg,
  });
  const day = weather(tools, { bearing });
  const askWords = (/** @type {string} */ way) =>
    way === "power"
      ? words.parts("askSpeed", { by, amount: power, cda, grade, day })
      : words.parts("askPower", { by, amount: speed, cda, grade, day });
  const ask = sentence({ title: titleOf(ID), words: askWords("power"), onOpen: () => tools.openSheet() });
  let asked = "power";

  /** The other way round begins where this one is. @param {string} way */
  function turnRound(way) {
    const round = (/** @type {"speed"|"power"} */ kind, /** @type {number} */ si) =>
      show.fromDisplay(
        kind,
        show.round(show.toDisplay(kind, si, store.get().units), kind === "speed" ? 1 : 0),
        store.get().units,
      );
    store.setAll([
      [`${AT}.by`, way],
      ...(latest
        ? [
            /** @type {[string, unknown]} */ (
              way === "speed"
                ? [`${AT}.speed_m_s`, round("speed", latest.speed_m_s.value)]
                : [`${AT}.power_w`, Math.max(1, round("power", latest.power_w.value))]
            ),
          ]
        : []),
    ]);
    store.settle();
  }

  const verdict = answerPart();
  const where = bars({ caption: words("whereWattsGo"), headings: [words("into"), words("power")] });
  const others = lines({ caption: words("otherAir"), headings: [words("ride"), words("speed"), words("difference")] });
  const nextTen = html("p", { class: "also" });
  const elastic = html("p", { class: "takes" });
  const air = html("p", { class: "takes" });
  const surer = surerNote(tools);
  const doubts = warningList(tools);
  const caution = html("p", { class: "caution" }, words("caution"));
  const onward = html("p", { class: "takes" });
  for (const [text, to, after] of /** @type {const} */ ([
    [words("howLongHold"), "finish-time", " "],
    [titleOf("power-or-drag"), "power-or-drag", ""],
  ])) {
    const link = html("button", { type: "button" }, text);
    link.addEventListener("click", () => tools.go(to));
    onward.append(link, after);
  }

  const number = (/** @type {number} */ value) => show.number(value);
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const unit = (/** @type {import("../../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const stack = areaChart({
    title: words("stackTitle"),
    x: { name: words("speedAxis", unit("speed")), format: number },
    y: { name: words("powerAxis", unit("power")), meaning: "power", format: number, read: watts },
    handles: { you: { label: words("speedHandle"), directions: "x", onMove: ({ x }, phase) => moveSpeed(x, phase) } },
    reader: words("readWatts"),
  });
  const gain = lineChart({
    title: words("gainTitle"),
    height: (width) => Math.round(Math.min(260, Math.max(220, width * 0.4))),
    x: { name: words("powerAxis", unit("power")), meaning: "power", format: number, read: watts },
    y: {
      name: words("gainAxis", { ten: watts(NEXT_W), ...unit("speed") }),
      format: (v) => show.number(v, { digits: 1 }),
    },
    handles: { you: { label: words("powerHandle"), directions: "x", onMove: ({ x }, phase) => movePower(x, phase) } },
    reader: words("readGain"),
  });
  const figures = table({ caption: "", thin: true });
  const why = html("div", { class: "passage" });
  const more = folds([
    { id: "why", name: shared("why"), body: why },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    { id: "table", name: shared("asTable"), gist: words("tableGist"), body: figures.element },
    ...tools.lastFolds(ID),
  ]);
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, where.element, others.element],
    picture: [stack.element, gain.element],
    notes: [nextTen, air, elastic, surer.element, doubts.element, caution, onward],
    folds: more.element,
  });

  /** @param {number} shown @param {MovePhase} phase */
  function moveSpeed(shown, phase) {
    const {
      units,
      with: { [ID]: own },
    } = store.get();
    const speed_m_s = show.fromDisplay("speed", shown, units);
    if (phase === "commit") return letGo();
    const along = curveOf(phase);
    if (own.by === "speed") store.set(`${AT}.speed_m_s`, speed_m_s, { merge: "you" });
    else if (along) setPower(valueAt({ name: "", xs: along.columns.speed_m_s, ys: total(along) }, speed_m_s));
  }

  /** @param {number} power_w @param {MovePhase} phase */
  function movePower(power_w, phase) {
    if (phase === "commit") return letGo();
    const along = curveOf(phase);
    if (store.get().with[ID].by === "power") setPower(power_w);
    else if (along)
      store.set(
        `${AT}.speed_m_s`,
        valueAt({ name: "", xs: along.columns.power_w, ys: along.columns.speed_at_power_m_s }, power_w),
        { merge: "you" },
      );
  }

  /** The answer whose curves a move is read off. @param {MovePhase} phase */
  function curveOf(phase) {
    if (phase === "drag") dragAlong ??= latest;
    return dragAlong ?? latest;
  }

  function letGo() {
    dragAlong = null;
    store.settle();
  }

  /** @param {number} power_w */
  function setPower(power_w) {
    if (Number.isFinite(power_w)) store.set(`${AT}.power_w`, Math.max(LEAST_W, Math.round(power_w)), { merge: "you" });
  }

  return {
    update(state, answer, error) {
      const way = state.with[ID].by;
      if (way !== asked) ask.update({ words: askWords(way) });
      asked = way;
      by.update({ value: way });
      const shown = [way === "power" ? power : speed, cda, grade, day]
        .map((field) => field.update(state, error))
        .includes(true);
      ask.update({ known: tools.known(state), wrong: tools.trouble(error, shown) });
      if (!answer) return;
      latest = answer;
      showAnswer(state, answer);
      showCharts(state, answer);
      showNotes(state, answer);
      showTable(state, answer);
    },
    destroy() {
      verdict.destroy();
      stack.destroy();
      gain.destroy();
      figures.destroy();
    },
  };

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showAnswer(
    {
      units,
      with: {
        [ID]: { by },
      },
    },
    answer,
  ) {
    const speedText = show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 });
    const powerText = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const { kind, figure, claim } =
      by === "power"
        ? {
            kind: /** @type {const} */ ("speed"),
            figure: answer.speed_m_s,
            claim: words.parts("buys", { power: strong(powerText, "power") }),
          }
        : {
            kind: /** @type {const} */ ("power"),
            figure: answer.power_w,
            claim: words.parts("takes", { speed: strong(speedText) }),
          };
    const digits = kind === "speed" ? 1 : 0;
    const at = (/** @type {number} */ sds) =>
      show.number(show.toDisplay(kind, Math.max(0, figure.value + sds * figure.sd), units), { digits });
    const spread = show.spreadText(kind, figure.sd, units);
    const doubted = figure.sd > 0;
    verdict.update({
      claim,
      figure: show.number(show.toDisplay(kind, figure.value, units), { digits }),
      unit: show.unitOf(kind, units).symbol,
      spread: doubted ? spread : null,
      odds: doubted ? shared("nineteenInTwenty", { low: at(-1.96), high: at(1.96) }) : "",
      weight: "sure",
      spoken: words(by === "power" ? "spokenBuys" : "spokenTakes", { power: powerText, speed: speedText, spread }),
    });

    const values = PARTS.map(({ key }) => answer.breakdown_w[key]);
    const whole = partsThatAddUp(values);
    const gives = values.some((value) => value < -0.5);
    const shares = partsThatAddUp(values.map((value) => (100 * value) / Math.max(1e-9, answer.power_w.value)));
    where.update(
      PARTS.map((part, index) => ({
        name: words(part.key),
        value: values[index],
        text: watts(whole[index]),
        note: gives ? "" : show.percent(shares[index] / 100),
        meaning: part.meaning,
      })).filter(({ value }) => Math.abs(value) > 1e-9),
    );

    const { other_air: other } = answer;
    const difference = (/** @type {number} */ speed_m_s) => {
      const more =
        show.round(show.toDisplay("speed", speed_m_s, units), 1) -
        show.round(show.toDisplay("speed", answer.speed_m_s.value, units), 1);
      return Math.abs(more) < 0.05
        ? shared("level")
        : shared.parts(more > 0 ? "fasterBy" : "slowerBy", {
            figure: strong(show.number(Math.abs(more), { digits: 1 })),
          });
    };
    const row = (/** @type {string} */ name, /** @type {number} */ speed_m_s) => ({
      name,
      value: show.quantity("speed", speed_m_s, units, { digits: 1 }),
      difference: difference(speed_m_s),
    });
    others.update([
      {
        mark: "you",
        name: words(by === "power" ? "today" : "atThisSpeed"),
        value: speedText,
        difference: by === "power" ? show.plusMinus("speed", answer.speed_m_s.sd, units) : "",
        soft: true,
      },
      {
        ...row(words("tenMore", { ten: watts(NEXT_W) }), answer.speed_m_s.value + answer.next_10_w_m_s.value),
        mark: "power",
      },
      ...(answer.rider_wind_m_s > 0 ? [row(words("inStillAir"), other.still_speed_m_s)] : []),
      row(words("inStandardAir"), other.standard_speed_m_s),
    ]);
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showCharts(
    {
      units,
      with: {
        [ID]: { by },
      },
    },
    answer,
  ) {
    const { columns } = answer;
    const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
    const xs = Float64Array.from(columns.speed_m_s, shown);
    const topSpeed = rung(TOP_SPEEDS_M_S, answer.speed_m_s.value * BEYOND_SPEED);
    const inside = columns.speed_m_s.findIndex((v) => v >= topSpeed);
    const upTo = inside < 0 ? columns.speed_m_s.length : inside + 1;
    const cut = (/** @type {ArrayLike<number>} */ ys) => Float64Array.from({ length: upTo }, (_, i) => ys[i]);
    const parts = PARTS.map(({ key, ...part }) => ({ ...part, name: words(key), ys: cut(columns[`${key}_w`]) })).filter(
      ({ ys }) => ys.some((y) => y > 0),
    );
    const heights = cut(xs).map((_, i) => parts.reduce((sum, { ys }) => sum + Math.max(0, ys[i]), 0));
    const you = PARTS.reduce((sum, { key }) => sum + Math.max(0, answer.breakdown_w[key]), 0);
    const speedText = show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 });
    const powerText = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const given = Math.round(you - answer.power_w.value);
    const values = { speed: speedText, power: powerText, share: show.percent(answer.aero_share), given: watts(given) };
    stack.update({
      leftMargin: LEFT_PX,
      desc: words("stackDescription", { ...values, most: show.quantity("speed", topSpeed, units, { digits: 0 }) }),
      xs: cut(xs),
      parts,
      whole: words("inAll"),
      x: {
        name: words("speedAxis", unit("speed")),
        domain: [0, shown(topSpeed)],
        read: (v) => show.quantity("speed", show.fromDisplay("speed", v, units), units, { digits: 1 }),
      },
      y: {
        name: words(given > 0 ? "powerAxisGiven" : "powerAxis", unit("power")),
        meaning: given > 0 ? null : "power",
        domain: [0, 1.06 * Math.max(you, ...heights, 20)],
      },
      handles: {
        you: {
          x: shown(answer.speed_m_s.value),
          y: you,
          label: shared("you"),
          strong: by === "power" ? speedText : powerText,
          spoken: words("stackSpoken", values),
          step: { x: 0.1 },
          rangeX: [by === "power" ? shown(speedFor(answer, LEAST_W)) : shown(0.1), xs[upTo - 1]],
        },
      },
      reading: [
        ...words.parts(given > 0 ? "stackReadingGiven" : "stackReading", values),
        " ",
        onScreen(shared("dragRing")),
      ],
    });

    const topPower = rung(TOP_POWERS_W, Math.max(answer.power_w.value, 40) * BEYOND_POWER);
    const gains = Float64Array.from(columns.next_10_w_m_s, (v) => show.spreadToDisplay("speed", v, units));
    const last = columns.power_w.findIndex((w) => w >= topPower);
    const most = last < 0 ? columns.power_w.length : last + 1;
    // Near standstill the first watts buy any amount of speed; the axis is for the watts a rider has.
    const ceiling = valueAt(
      { name: "", xs: columns.power_w, ys: gains },
      Math.max(columns.power_w[0], Math.min(60, answer.power_w.value)),
    );
    const ten = show.spreadToDisplay("speed", answer.next_10_w_m_s.value, units);
    const tenText = show.quantity("speed", answer.next_10_w_m_s.value, units, { digits: 2, signed: true });
    gain.update({
      leftMargin: LEFT_PX,
      desc: words("gainDescription", { most: watts(topPower), power: powerText, gain: tenText }),
      x: { domain: [0, topPower] },
      y: {
        name: words("gainAxis", { ten: watts(NEXT_W), ...unit("speed") }),
        domain: [0, Math.max(ten, ceiling) * 1.15 || 1],
        read: (v) => show.quantity("speed", show.fromDisplay("speed", v, units), units, { digits: 2 }),
      },
      series: [
        { name: words("gainSeries"), xs: columns.power_w.slice(0, most), ys: gains.slice(0, most), meaning: "power" },
      ],
      points:
        answer.power_w.value <= topPower
          ? [
              {
                x: answer.power_w.value,
                y: ten,
                sdY: show.spreadToDisplay("speed", answer.next_10_w_m_s.sd, units),
                meaning: "power",
                shape: "none",
              },
            ]
          : [],
      handles:
        answer.power_w.value >= columns.power_w[0]
          ? {
              you: {
                x: answer.power_w.value,
                y: ten,
                label: shared("you"),
                strong: tenText,
                spoken: words("gainSpoken", { power: powerText, gain: tenText }),
                step: { x: 1 },
                rangeX: [10, Math.min(topPower, columns.power_w[most - 1])],
              },
            }
          : {},
      reading: words.parts("gainReading", { power: strong(powerText, "power"), gain: tenText }),
    });
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showNotes(
    {
      units,
      with: {
        [ID]: { by },
      },
    },
    answer,
  ) {
    const gained = show.quantity("speed", answer.next_10_w_m_s.value, units, { digits: 2 });
    const { power, cda, mass, rolling, density } = answer.elasticity;
    const percent = (/** @type {number} */ e) => show.percent(Math.abs(e) / 100, 2);
    const way = (/** @type {number} */ e) => words(e <= 0 ? "percentFaster" : "percentSlower", { percent: percent(e) });
    say(
      nextTen,
      words.parts("nextTen", { ten: strong(watts(NEXT_W), "power"), gain: gained, percent: percent(power) }),
    );
    say(
      elastic,
      words.parts("percentForPercent", {
        cda: way(cda),
        density: way(density),
        mass: way(mass),
        rolling: way(rolling),
      }),
    );

    const { other_air: other } = answer;
    const thin = (answer.density_kg_m3 - other.standard_density_kg_m3) / other.standard_density_kg_m3;
    const wind = (/** @type {number} */ v) => show.quantity("wind", Math.abs(v), units, { digits: 1 });
    say(air, [
      ...words.parts(Math.abs(thin) < 0.0005 ? "airStandard" : thin < 0 ? "airThinner" : "airThicker", {
        density: show.quantity("density", answer.density_kg_m3, units),
        percent: show.percent(Math.abs(thin), 1),
      }),
      " ",
      answer.rider_wind_m_s > 0
        ? words(answer.headwind_m_s >= 0 ? "windAgainst" : "windBehind", {
            wind: wind(answer.rider_wind_m_s),
            head: wind(answer.headwind_m_s),
            cross: wind(answer.crosswind_m_s),
            felt: show.quantity("speed", answer.apparent_wind_m_s, units, { digits: 1 }),
            yaw: show.quantity("angle", Math.abs(answer.yaw_deg), units, { digits: 0 }),
          })
        : words("noWind"),
    ]);

    const asked =
      by === "power"
        ? { kind: /** @type {const} */ ("speed"), sd: answer.speed_m_s.sd }
        : { kind: /** @type {const} */ ("power"), sd: answer.power_w.sd };
    surer.update(answer.surer, {
      sd: asked.sd,
      of: asked.kind,
      plusMinus: (sd) => show.plusMinus(asked.kind, sd, units),
    });
    doubts.update(answer.warnings);
    // Where the hill or the wind pushes, a share of the load means little.
    const pushed = PARTS.some(({ key }) => answer.breakdown_w[key] <= -0.5);
    const values = {
      share: show.percent(answer.aero_share),
      watts: watts(answer.breakdown_w.air),
      speed: show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 }),
    };
    more.update({ why: { gist: words(pushed ? "whyGiven" : "whyShare", values) } });
    say(why, [
      html("p", {}, words(pushed ? "whyCubeGiven" : "whyCubeShare", values)),
      html("p", {}, words("whyThird")),
    ]);
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showTable({ units }, { columns }) {
    const pick = Array.from(columns.speed_m_s.keys()).filter((i) => i % 5 === 0 && i > 0);
    const parts = PARTS.filter(({ key }) => columns[`${key}_w`].some((w) => Math.abs(w) >= 0.5));
    const gainAt = (/** @type {number} */ w) =>
      valueAt({ name: "", xs: columns.power_w, ys: columns.next_10_w_m_s }, w);
    figures.update({
      caption: words("tableCaption", unit("speed")),
      columns: [
        words("speedIn", unit("speed")),
        words("powerIn", unit("power")),
        ...parts.map(({ key }) => words(`${key}In`, unit("power"))),
        words("tenMoreIn", { ten: watts(NEXT_W), ...unit("speed") }),
      ],
      rows: pick.map((i) => {
        const all = parts.map(({ key }) => columns[`${key}_w`][i]);
        const whole = partsThatAddUp(all);
        const sum = whole.reduce((a, b) => a + b, 0);
        const more = gainAt(all.reduce((a, b) => a + b, 0));
        return [
          show.number(show.toDisplay("speed", columns.speed_m_s[i], units), { digits: 1 }),
          number(sum),
          ...whole.map(number),
          Number.isFinite(more) ? `+${show.number(show.spreadToDisplay("speed", more, units), { digits: 2 })}` : "",
        ];
      }),
    });
  }
}

/** Watts at each speed of the curve. @param {SpeedForWattsAnswer} answer */
function total({ columns }) {
  return columns.speed_m_s.map((_, i) => PARTS.reduce((sum, { key }) => sum + columns[`${key}_w`][i], 0));
}

/** The least speed of the curve that takes these watts. @param {SpeedForWattsAnswer} answer @param {number} power_w */
function speedFor(answer, power_w) {
  const { speed_m_s } = answer.columns;
  const watts = total(answer);
  const at = watts.findIndex((one) => one >= power_w);
  if (at <= 0) return speed_m_s[0];
  return (
    speed_m_s[at - 1] + ((power_w - watts[at - 1]) / (watts[at] - watts[at - 1])) * (speed_m_s[at] - speed_m_s[at - 1])
  );
}
