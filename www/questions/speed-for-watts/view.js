// @ts-check
/** The speed for watts or the watts for a speed: the sentence, the answer, and where the watts go at every speed. */

import { answer as answerPart } from "../../parts/answer.js";
import { areaChart } from "../../parts/area-chart.js";
import { bars } from "../../parts/bars.js";
import { choice } from "../../parts/choice.js";
import { html, strong } from "../../parts/html.js";
import { lineChart, valueAt } from "../../parts/line-chart.js";
import { lines } from "../../parts/lines.js";
import { weightOf } from "../../parts/sureness.js";
import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { caution } from "../shared/caution.js";
import { titleOf } from "../shared/names.js";
import { onScreen } from "../shared/on-screen.js";
import { partsThatAddUp, rung } from "../shared/rounding.js";
import { paragraphPiece, passagePiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { spot } from "./spot.js";
import { workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Kind } from "../../units.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { SpeedForWattsAnswer as Answer } from "../../types/core.d.ts" */
/** @import { LineData } from "../../parts/line-chart.js" */
/** @import { MovePhase } from "../../parts/handle.js" */

const words = book("speed-for-watts");
const shared = book("shared");
const ID = "speed-for-watts";
const AT = `with.${ID}`;
/** What the points of both charts move: the number that the answer is asked by. */
const MOVED = [`${AT}.speed_m_s`, `${AT}.power_w`];
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

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const move = moves(tools, page);
  return page.show({
    ...asked(tools, page),
    answer: [verdict(), where(), otherAir()],
    picture: [stack(tools, move.speed), gain(tools, move.power)],
    notes: [
      paragraphPiece("also", nextTen),
      paragraphPiece("takes", air),
      paragraphPiece("takes", percentForPercent),
      piece(surerNote(tools), (surer, { state, answer }) => {
        const { kind, figure } = askedOf(state, answer);
        surer.update(answer.surer, {
          sd: figure.sd,
          of: kind,
          plusMinus: (sd) => show.plusMinus(kind, sd, state.units),
        });
      }),
      doubts(tools),
      caution(words.parts("caution")),
      { element: onward(tools) },
    ],
    folds: foldsOf(),
  });
}

/** The figure that is asked for. @param {State} state @param {Answer} answer */
const askedOf = ({ with: { [ID]: own } }, answer) =>
  own.by === "power"
    ? { kind: /** @type {const} */ ("speed"), figure: answer.speed_m_s, digits: 1 }
    : { kind: /** @type {const} */ ("power"), figure: answer.power_w, digits: 0 };

/** The sentence. @param {Tools} tools @param {Shell<Answer>} page */
function asked(tools, page) {
  const slopeRange = tools.field("scenario.course.grade");
  const by = choice({
    label: words("wayRound"),
    path: `${AT}.by`,
    options: [
      { value: "power", name: words("byPower") },
      { value: "speed", name: words("bySpeed") },
    ],
    onChange: (way) => turnRound(tools, page.answer(), way),
  });
  const power = tools.number({ path: `${AT}.power_w`, meaning: "power" });
  const speed = tools.number({ path: `${AT}.speed_m_s` });
  const cda = tools.number({
    path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
    meaning: "drag",
  });
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
  const byPower = (/** @type {State} */ { with: { [ID]: own } }) => own.by === "power";
  const amount = {
    update: (/** @type {State} */ state, /** @type {CoreError | null} */ error) =>
      (byPower(state) ? power : speed).update(state, error),
  };
  return {
    words: (/** @type {State} */ state) =>
      byPower(state)
        ? words.parts("askSpeed", { by, amount: power, cda, grade, day })
        : words.parts("askPower", { by, amount: speed, cda, grade, day }),
    wording: byPower,
    fields: [amount, cda, grade, day],
    follow: (/** @type {State} */ { with: { [ID]: own } }) => by.update({ value: own.by }),
  };
}

/** The other way round begins where this one is. @param {Tools} tools @param {Answer | null} latest @param {string} way */
function turnRound({ store }, latest, way) {
  const { units } = store.get();
  const round = (/** @type {"speed"|"power"} */ kind, /** @type {number} */ si) =>
    show.fromDisplay(kind, show.round(show.toDisplay(kind, si, units), kind === "speed" ? 1 : 0), units);
  /** @type {[string, unknown][]} */
  const changes = [[`${AT}.by`, way]];
  if (latest && way === "speed") changes.push([`${AT}.speed_m_s`, round("speed", latest.speed_m_s.value)]);
  else if (latest) changes.push([`${AT}.power_w`, Math.max(1, round("power", latest.power_w.value))]);
  store.setAll(changes);
  store.settle();
}

/** What the handles of the charts change. @param {Tools} tools @param {Shell<Answer>} page */
function moves({ store }, page) {
  /** The answer when a drag began: its curves hold all that the drag can reach, which the newest may not. @type {Answer | null} */
  let dragAlong = null;

  /** The answer whose curves a move is read off. @param {MovePhase} phase */
  function curveOf(phase) {
    if (phase === "drag") dragAlong ??= page.answer();
    return dragAlong ?? page.answer();
  }

  function letGo() {
    dragAlong = null;
    store.settle();
  }

  /** @param {number} power_w */
  function setPower(power_w) {
    if (Number.isFinite(power_w)) store.set(`${AT}.power_w`, Math.max(LEAST_W, Math.round(power_w)), { merge: "you" });
  }

  /** @param {number} speed_m_s */
  const setSpeed = (speed_m_s) => store.set(`${AT}.speed_m_s`, speed_m_s, { merge: "you" });
  const byPower = () => store.get().with[ID].by === "power";

  return {
    /** @param {number} shown @param {MovePhase} phase */
    speed(shown, phase) {
      const speed_m_s = show.fromDisplay("speed", shown, store.get().units);
      if (phase === "commit") return letGo();
      const along = curveOf(phase);
      if (!byPower()) setSpeed(speed_m_s);
      else if (along) setPower(valueAt({ name: "", xs: along.columns.speed_m_s, ys: total(along) }, speed_m_s));
    },
    /** @param {number} power_w @param {MovePhase} phase */
    power(power_w, phase) {
      if (phase === "commit") return letGo();
      const along = curveOf(phase);
      if (byPower()) setPower(power_w);
      else if (along)
        setSpeed(valueAt({ name: "", xs: along.columns.power_w, ys: along.columns.speed_at_power_m_s }, power_w));
    },
  };
}

/** Watts and speeds as they are told everywhere. @param {State} state */
function writeOf({ units }) {
  return {
    watts: (/** @type {number} */ w) => show.quantity("power", w, units, { digits: 0 }),
    speed: (/** @type {number} */ v, digits = 1) => show.quantity("speed", v, units, { digits }),
    unit: (/** @type {Kind} */ kind) => ({ unit: show.unitOf(kind, units).symbol }),
  };
}

/** @returns {Piece<Answer>} */
function verdict() {
  return piece(answerPart(), (part, { state, answer }) => {
    const { units } = state;
    const { kind, figure, digits } = askedOf(state, answer);
    const { watts, speed: speedText } = writeOf(state);
    const [speed, power] = [speedText(answer.speed_m_s.value), watts(answer.power_w.value)];
    const write = (/** @type {number} */ si) => show.number(show.toDisplay(kind, Math.max(0, si), units), { digits });
    const spread = show.spreadText(kind, figure.sd, units);
    const doubted = figure.sd > 0;
    part.update({
      claim:
        kind === "speed"
          ? words.parts("buys", { power: strong(power, "power") })
          : words.parts("takes", { speed: strong(speed) }),
      figure: show.number(show.toDisplay(kind, figure.value, units), { digits }),
      unit: show.unitOf(kind, units).symbol,
      spread: doubted ? spread : null,
      odds: doubted ? shared("nineteenInTwenty", { low: write(figure.low_95), high: write(figure.high_95) }) : "",
      weight: weightOf(figure),
      spoken: words(kind === "speed" ? "spokenBuys" : "spokenTakes", { power, speed, spread }),
    });
  });
}

/** Where the watts go. @returns {Piece<Answer>} */
function where() {
  const part = bars({ caption: words("whereWattsGo"), headings: [words("into"), words("power")] });
  return piece(part, (_, { state, answer }) => {
    const values = PARTS.map(({ key }) => answer.breakdown_w[key]);
    const whole = partsThatAddUp(values);
    const gives = values.some((value) => value < -0.5);
    const shares = partsThatAddUp(values.map((value) => (100 * value) / Math.max(1e-9, answer.power_w.value)));
    part.update(
      PARTS.map(({ key, meaning }, index) => ({
        name: words(key),
        value: values[index],
        text: writeOf(state).watts(whole[index]),
        note: gives ? "" : show.percent(shares[index] / 100),
        meaning,
      })).filter(({ value }) => Math.abs(value) > 1e-9),
    );
  });
}

/** @returns {Piece<Answer>} */
function otherAir() {
  const part = lines({ caption: words("otherAir"), headings: [words("ride"), words("speed"), words("difference")] });
  return piece(part, (_, { state, answer }) => {
    const {
      units,
      with: {
        [ID]: { by },
      },
    } = state;
    const { watts, speed } = writeOf(state);
    const { other_air: other, speed_m_s: own } = answer;
    const rounded = (/** @type {number} */ v) => show.round(show.toDisplay("speed", v, units), 1);
    const difference = (/** @type {number} */ v) => {
      const more = rounded(v) - rounded(own.value);
      if (Math.abs(more) < 0.05) return shared("level");
      const figure = strong(show.number(Math.abs(more), { digits: 1 }));
      return shared.parts(more > 0 ? "fasterBy" : "slowerBy", { figure });
    };
    const row = (/** @type {string} */ name, /** @type {number} */ v) => ({
      name,
      value: speed(v),
      difference: difference(v),
    });
    part.update([
      {
        mark: "you",
        name: words(by === "power" ? "today" : "atThisSpeed"),
        value: speed(own.value),
        difference: by === "power" ? show.plusMinus("speed", own.sd, units) : "",
        soft: true,
      },
      { ...row(words("tenMore", { ten: watts(NEXT_W) }), own.value + answer.next_10_w_m_s.value), mark: "power" },
      ...(answer.rider_wind_m_s > 0 ? [row(words("inStillAir"), other.still_speed_m_s)] : []),
      row(words("inStandardAir"), other.standard_speed_m_s),
    ]);
  });
}

/** The curves up to a round speed beyond the rider's own. @param {State} state @param {Answer} answer */
function stackedUpTo({ units }, { columns, speed_m_s }) {
  const topSpeed = rung(TOP_SPEEDS_M_S, speed_m_s.value * BEYOND_SPEED);
  const inside = columns.speed_m_s.findIndex((v) => v >= topSpeed);
  const upTo = inside < 0 ? columns.speed_m_s.length : inside + 1;
  const xs = Float64Array.from(columns.speed_m_s.slice(0, upTo), (v) => show.toDisplay("speed", v, units));
  const parts = PARTS.map(({ key, ...part }) => ({
    ...part,
    name: words(key),
    ys: Float64Array.from(columns[`${key}_w`].slice(0, upTo)),
  })).filter(({ ys }) => ys.some((y) => y > 0));
  const heights = xs.map((_, i) => parts.reduce((sum, { ys }) => sum + Math.max(0, ys[i]), 0));
  return { topSpeed, xs, parts, highest: Math.max(...heights, 20) };
}

/** Where the watts go at every speed. @param {Tools} tools @param {(shown: number, phase: MovePhase) => void} move @returns {Piece<Answer>} */
function stack(tools, move) {
  const { store } = tools;
  const { unit } = writeOf(store.get());
  const number = (/** @type {number} */ value) => show.number(value);
  const chart = areaChart({
    title: words("stackTitle"),
    x: { name: words("speedAxis", unit("speed")), format: number },
    y: {
      name: words("powerAxis", unit("power")),
      meaning: "power",
      format: number,
      read: (w) => writeOf(store.get()).watts(w),
    },
    handles: {
      you: {
        label: words("speedHandle"),
        moves: MOVED,
        directions: "x",
        onMove: ({ x }, phase) => move(x, phase),
      },
    },
    reader: words("readWatts"),
  });
  return piece(chart, (_, { state, answer }) => chart.update(stackOf(state, answer)));
}

/** @param {State} state @param {Answer} answer */
function stackOf(state, answer) {
  const { watts, speed, unit } = writeOf(state);
  const { topSpeed, xs, parts, highest } = stackedUpTo(state, answer);
  const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, state.units);
  const byPower = state.with[ID].by === "power";
  const you = PARTS.reduce((sum, { key }) => sum + Math.max(0, answer.breakdown_w[key]), 0);
  const given = Math.round(you - answer.power_w.value);
  const values = {
    speed: speed(answer.speed_m_s.value),
    power: watts(answer.power_w.value),
    share: show.percent(answer.aero_share),
    given: watts(given),
  };
  return {
    leftMargin: LEFT_PX,
    desc: words("stackDescription", { ...values, most: speed(topSpeed, 0) }),
    xs,
    parts,
    whole: words("inAll"),
    x: {
      name: words("speedAxis", unit("speed")),
      domain: /** @type {const} */ ([0, shown(topSpeed)]),
      read: (/** @type {number} */ v) => speed(show.fromDisplay("speed", v, state.units)),
    },
    y: {
      name: words(given > 0 ? "powerAxisGiven" : "powerAxis", unit("power")),
      meaning: given > 0 ? null : /** @type {const} */ ("power"),
      domain: /** @type {const} */ ([0, 1.06 * Math.max(you, highest)]),
    },
    handles: {
      you: {
        x: shown(answer.speed_m_s.value),
        y: you,
        label: shared("you"),
        strong: byPower ? values.speed : values.power,
        spoken: words("stackSpoken", values),
        step: { x: 0.1 },
        rangeX: /** @type {const} */ ([byPower ? shown(speedFor(answer, LEAST_W)) : shown(0.1), xs[xs.length - 1]]),
      },
    },
    reading: [
      ...words.parts(given > 0 ? "stackReadingGiven" : "stackReading", values),
      " ",
      onScreen(shared("dragRing")),
    ],
  };
}

/** What the next watts would buy. @param {Tools} tools @param {(power_w: number, phase: MovePhase) => void} move @returns {Piece<Answer>} */
function gain(tools, move) {
  const { store } = tools;
  const { unit, watts } = writeOf(store.get());
  const chart = lineChart({
    title: words("gainTitle"),
    height: (width) => Math.round(Math.min(260, Math.max(220, width * 0.4))),
    x: {
      name: words("powerAxis", unit("power")),
      meaning: "power",
      format: (w) => show.number(w),
      read: (w) => writeOf(store.get()).watts(w),
    },
    y: {
      name: words("gainAxis", { ten: watts(NEXT_W), ...unit("speed") }),
      format: (v) => show.number(v, { digits: 1 }),
    },
    handles: {
      you: {
        label: words("powerHandle"),
        moves: MOVED,
        directions: "x",
        onMove: ({ x }, phase) => move(x, phase),
      },
    },
    reader: words("readGain"),
  });
  return piece(chart, (_, { state, answer }) => chart.update(gainOf(state, answer)));
}

/** @param {State} state @param {Answer} answer @returns {LineData} */
function gainOf(state, answer) {
  const { watts, speed, unit } = writeOf(state);
  const { columns, power_w: own, next_10_w_m_s: next } = answer;
  const topPower = rung(TOP_POWERS_W, Math.max(own.value, 40) * BEYOND_POWER);
  const more = (/** @type {number} */ v) => show.spreadToDisplay("speed", v, state.units);
  const gains = Float64Array.from(columns.next_10_w_m_s, more);
  const last = columns.power_w.findIndex((w) => w >= topPower);
  const most = last < 0 ? columns.power_w.length : last + 1;
  // Near standstill the first watts buy any amount of speed; the axis is for the watts a rider has.
  const ceiling = valueAt(
    { name: "", xs: columns.power_w, ys: gains },
    Math.max(columns.power_w[0], Math.min(60, own.value)),
  );
  const ten = more(next.value);
  const tenText = show.quantity("speed", next.value, state.units, { digits: 2, signed: true });
  const power = watts(own.value);
  const point = { x: own.value, y: ten, sdY: more(next.sd), meaning: /** @type {const} */ ("power") };
  const handle = {
    x: own.value,
    y: ten,
    label: shared("you"),
    strong: tenText,
    spoken: words("gainSpoken", { power, gain: tenText }),
    step: { x: 1 },
    rangeX: /** @type {const} */ ([10, Math.min(topPower, columns.power_w[most - 1])]),
  };
  return {
    leftMargin: LEFT_PX,
    desc: words("gainDescription", { most: watts(topPower), power, gain: tenText }),
    x: { domain: /** @type {const} */ ([0, topPower]) },
    y: {
      name: words("gainAxis", { ten: watts(NEXT_W), ...unit("speed") }),
      domain: /** @type {const} */ ([0, Math.max(ten, ceiling) * 1.15 || 1]),
      read: (/** @type {number} */ v) => speed(show.fromDisplay("speed", v, state.units), 2),
    },
    series: [
      {
        name: words("gainSeries"),
        xs: columns.power_w.slice(0, most),
        ys: gains.slice(0, most),
        meaning: /** @type {const} */ ("power"),
      },
    ],
    points: own.value <= topPower ? [{ ...point, shape: /** @type {const} */ ("none") }] : [],
    handles: own.value >= columns.power_w[0] ? { you: handle } : {},
    reading: words.parts("gainReading", { power: strong(power, "power"), gain: tenText }),
  };
}

/** @param {Shown<Answer>} shown */
function nextTen({ state, answer }) {
  const { watts, speed } = writeOf(state);
  return words.parts("nextTen", {
    ten: strong(watts(NEXT_W), "power"),
    gain: speed(answer.next_10_w_m_s.value, 2),
    percent: show.percent(Math.abs(answer.elasticity.power) / 100, 2),
  });
}

/** @param {Shown<Answer>} shown */
function percentForPercent({ answer: { elasticity } }) {
  const way = (/** @type {number} */ e) =>
    words(e <= 0 ? "percentFaster" : "percentSlower", { percent: show.percent(Math.abs(e) / 100, 2) });
  const { cda, density, mass, rolling } = elasticity;
  return words.parts("percentForPercent", {
    cda: way(cda),
    density: way(density),
    mass: way(mass),
    rolling: way(rolling),
  });
}

/** @param {Shown<Answer>} shown */
function air({ state, answer }) {
  const { standard_density_kg_m3: standard } = answer.other_air;
  const thin = (answer.density_kg_m3 - standard) / standard;
  const wind = (/** @type {number} */ v) => show.quantity("wind", Math.abs(v), state.units, { digits: 1 });
  return [
    ...words.parts(Math.abs(thin) < 0.0005 ? "airStandard" : thin < 0 ? "airThinner" : "airThicker", {
      density: show.quantity("density", answer.density_kg_m3, state.units),
      percent: show.percent(Math.abs(thin), 1),
    }),
    " ",
    answer.rider_wind_m_s > 0
      ? words(answer.headwind_m_s >= 0 ? "windAgainst" : "windBehind", {
          wind: wind(answer.rider_wind_m_s),
          head: wind(answer.headwind_m_s),
          cross: wind(answer.crosswind_m_s),
          felt: writeOf(state).speed(answer.apparent_wind_m_s),
          yaw: show.quantity("angle", Math.abs(answer.yaw_deg), state.units, { digits: 0 }),
        })
      : words("noWind"),
  ];
}

/** The ways to other questions. @param {Tools} tools */
function onward({ go }) {
  const link = (/** @type {string} */ text, /** @type {string} */ to) => {
    const button = html("button", { type: "button" }, text);
    button.addEventListener("click", () => go(to));
    return button;
  };
  return html(
    "p",
    { class: "takes" },
    link(words("howLongHold"), "power-curve"),
    " ",
    link(titleOf("power-or-drag"), "power-or-drag"),
  );
}

/** Why the watts go as they do; where the hill or the wind pushes, a share of the load means little. @param {Shown<Answer>} shown */
function reasons({ state, answer }) {
  const { watts, speed } = writeOf(state);
  return {
    pushed: PARTS.some(({ key }) => answer.breakdown_w[key] <= -0.5),
    values: {
      share: show.percent(answer.aero_share),
      watts: watts(answer.breakdown_w.air),
      speed: speed(answer.speed_m_s.value),
    },
  };
}

/** @returns {FoldPiece<Answer>[]} */
function foldsOf() {
  return [
    {
      id: "why",
      name: shared("why"),
      gist(shown) {
        const { pushed, values } = reasons(shown);
        return words(pushed ? "whyGiven" : "whyShare", values);
      },
      body: passagePiece((shown) => {
        const { pushed, values } = reasons(shown);
        return [
          html("p", {}, words(pushed ? "whyCubeGiven" : "whyCubeShare", values)),
          html("p", {}, words("whyThird")),
        ];
      }, "passage"),
    },
    { id: "how", name: shared("howWorkedOut"), gist: words("howGist"), body: workedOut },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("tableGist"),
      body: piece(table({ caption: "", thin: true }), (figures, shown) => figures.update(figuresOf(shown))),
    },
  ];
}

/** The curves in figures. @param {Shown<Answer>} shown */
function figuresOf({ state, answer: { columns } }) {
  const { watts, unit } = writeOf(state);
  const pick = Array.from(columns.speed_m_s.keys()).filter((i) => i % 5 === 0 && i > 0);
  const parts = PARTS.filter(({ key }) => columns[`${key}_w`].some((w) => Math.abs(w) >= 0.5));
  const gainAt = (/** @type {number} */ w) => valueAt({ name: "", xs: columns.power_w, ys: columns.next_10_w_m_s }, w);
  const sum = (/** @type {readonly number[]} */ all) => all.reduce((a, b) => a + b, 0);
  return {
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
      const more = gainAt(sum(all));
      return [
        show.number(show.toDisplay("speed", columns.speed_m_s[i], state.units), { digits: 1 }),
        show.number(sum(whole)),
        ...whole.map((w) => show.number(w)),
        Number.isFinite(more) ? `+${show.number(show.spreadToDisplay("speed", more, state.units), { digits: 2 })}` : "",
      ];
    }),
  };
}

/** Watts at each speed of the curve. @param {Answer} answer */
function total({ columns }) {
  return columns.speed_m_s.map((_, i) => PARTS.reduce((sum, { key }) => sum + columns[`${key}_w`][i], 0));
}

/** The least speed of the curve that takes these watts. @param {Answer} answer @param {number} power_w */
function speedFor(answer, power_w) {
  const { speed_m_s } = answer.columns;
  const watts = total(answer);
  const at = watts.findIndex((one) => one >= power_w);
  if (at <= 0) return speed_m_s[0];
  return (
    speed_m_s[at - 1] + ((power_w - watts[at - 1]) / (watts[at] - watts[at - 1])) * (speed_m_s[at] - speed_m_s[at - 1])
  );
}
