// @ts-check
/** What speed do these watts buy, where do they go, and what would the next ten buy? Or the watts that a speed takes. */

import { answer as answerPart } from "../parts/answer.js";
import { areaChart } from "../parts/area-chart.js";
import { bars } from "../parts/bars.js";
import { choice } from "../parts/choice.js";
import { folds } from "../parts/folds.js";
import { html, say, strong } from "../parts/html.js";
import { lineChart, valueAt } from "../parts/line-chart.js";
import { lines } from "../parts/lines.js";
import { sentence } from "../parts/sentence.js";
import { table } from "../parts/table.js";
import { titleOf } from "./shared/names.js";
import { layOut, onScreen } from "./shared/layout.js";
import { partsThatAddUp, rung } from "./shared/rounding.js";
import { surerNote } from "./shared/surer.js";
import { warningList } from "./shared/warnings.js";
import { weather } from "./shared/weather.js";
import { workedOut } from "./speed-for-watts/worked-out.js";

/** @import { Question, Tools, View } from "./index.js" */
/** @import { State } from "../state/history.js" */
/** @import { SpeedForWattsAnswer } from "../types/core.d.ts" */
/** @import { MovePhase } from "../parts/handle.js" */

const ID = "speed-for-watts";
const AT = `with.${ID}`;
const STANDARD_SLOPE = 0;
/** Axis ends, close enough together that the rider's own point stays well inside the core's curve. */
const TOP_SPEEDS_M_S = [4.9, 6, 7.2, 8.6, 10.2, 12.2, 14.6, 17.5, 21, 25, 30, 36, 43, 54];
const TOP_POWERS_W = [100, 140, 200, 280, 400, 560, 800, 1100, 1500, 2500];
/** Both charts begin at the same edge. */
const LEFT_PX = 48;
/** How far an axis reaches beyond the rider's own point, so that the ring has room. */
const BEYOND_SPEED = 1.1;
const BEYOND_POWER = 1.35;

/** What the pedals feed, in the order they are stacked. @type {readonly { key: "air"|"rolling"|"climbing"|"bearings"|"drivetrain", name: string, meaning: "drag"|"ground", shade: 0|1|2 }[]} */
const PARTS = [
  { key: "air", name: "air", meaning: "drag", shade: 1 },
  { key: "rolling", name: "tyres", meaning: "ground", shade: 1 },
  { key: "climbing", name: "hill", meaning: "ground", shade: 2 },
  { key: "bearings", name: "bearings", meaning: "ground", shade: 0 },
  { key: "drivetrain", name: "drivetrain", meaning: "ground", shade: 1 },
];

/** Slope and direction here: the question's own, or those of a simple course. @param {State} state */
function spot(state) {
  const own = state.with[ID];
  const { course } = state.scenario;
  const of = (/** @type {any} */ held) => held?.value ?? held ?? STANDARD_SLOPE;
  return { grade: own.grade ?? of(course.grade), bearing_deg: own.bearing_deg ?? of(course.bearing_deg) };
}

/** @type {Question} */
export const question = {
  id: ID,
  group: "understand",
  defaults: { by: "power", power_w: 250, speed_m_s: 11 },
  request(state) {
    const { by, power_w, speed_m_s } = state.with[ID];
    return { scenario: state.scenario, with: { ...(by === "speed" ? { speed_m_s } : { power_w }), ...spot(state) } };
  },
  load: async () => ({ create }),
};

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
function create(host, tools) {
  const { store, units: show } = tools;
  /** @type {SpeedForWattsAnswer | null} */
  let latest = null;

  const by = choice({ label: "Which way round", path: `${AT}.by`, options: [{ value: "power", name: "Holding a power of" }, { value: "speed", name: "Riding at a speed of" }], onChange: turnRound });
  const power = tools.number({ path: `${AT}.power_w`, meaning: "power" });
  const speed = tools.number({ path: `${AT}.speed_m_s` });
  const cda = tools.number({ path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`, meaning: "drag" });
  const slopeRange = tools.field("scenario.course.grade");
  const grade = tools.number({ path: `${AT}.grade`, label: "Slope of the road here", kind: "grade", meaning: "ground", signed: true, step: 0.1, min: slopeRange?.min, max: slopeRange?.max, value: (state) => spot(state).grade });
  const bearing = tools.number({ path: `${AT}.bearing_deg`, label: "Direction of the road here", kind: "angle", min: -360, max: 360, value: (state) => spot(state).bearing_deg });
  const day = weather(tools, { bearing });
  const known = [" with a drag area of ", cda, " on a slope of ", grade, ", ", day];
  const ask = sentence({ title: titleOf(ID), words: sentenceWords("power"), onOpen: () => tools.openSheet() });
  let asked = "power";

  /** @param {string} way */
  function sentenceWords(way) {
    return way === "power" ? [by, " ", power, ...known, ": what speed does it buy, and where do the watts go?"] : [by, " ", speed, ...known, ": what does it take, and where do the watts go?"];
  }

  /** The other way round begins where this one is. @param {string} way */
  function turnRound(way) {
    const round = (/** @type {"speed"|"power"} */ kind, /** @type {number} */ si) => show.fromDisplay(kind, show.round(show.toDisplay(kind, si, store.get().units), kind === "speed" ? 1 : 0), store.get().units);
    store.setAll([[`${AT}.by`, way], ...(latest ? [/** @type {[string, unknown]} */ (way === "speed" ? [`${AT}.speed_m_s`, round("speed", latest.speed_m_s.value)] : [`${AT}.power_w`, Math.max(1, round("power", latest.power_w.value))])] : [])]);
    store.settle();
  }

  const verdict = answerPart();
  const where = bars({ caption: "Where the watts go", headings: ["Into", "Power"] });
  const others = lines({ caption: "The same watts in other air, and ten more", headings: ["Ride", "Speed", "Difference"] });
  const nextTen = html("p", { class: "also" });
  const elastic = html("p", { class: "takes" });
  const air = html("p", { class: "takes" });
  const surer = surerNote(tools);
  const doubts = warningList(tools);
  const caution = html("p", { class: "caution" }, "Eyes on the road: a speed on this page is no reason to hold your head down in traffic, a crosswind or a descent. Event rules and the law of the road come first.");
  const onward = html("p", { class: "takes" });
  for (const [text, to, after] of /** @type {const} */ ([["How long can I hold it?", "finish-time", " "], ["More power, or less drag?", "power-or-drag", ""]])) {
    const link = html("button", { type: "button" }, text);
    link.addEventListener("click", () => tools.go(to));
    onward.append(link, after);
  }

  const number = (/** @type {number} */ value) => show.number(value);
  const stack = areaChart({
    title: "Where the watts go at every speed",
    x: { name: "speed", format: number },
    y: { name: "power at the pedals, W", meaning: "power", format: number, read: (w) => show.quantity("power", w, store.get().units, { digits: 0 }) },
    handles: { you: { label: "You: left and right change your speed, and the watts with it", directions: "x", onMove: ({ x }, phase) => moveSpeed(x, phase) } },
    reader: "Read the watts at a speed",
  });
  const gain = lineChart({
    title: "What the next ten watts buy at every power",
    height: (width) => Math.round(Math.min(260, Math.max(220, width * 0.4))),
    x: { name: "power at the pedals, W", meaning: "power", format: number, read: (w) => show.quantity("power", w, store.get().units, { digits: 0 }) },
    y: { name: "what 10 W more buy", format: (v) => show.number(v, { digits: 1 }) },
    handles: { you: { label: "You: left and right change your power", directions: "x", onMove: ({ x }, phase) => movePower(x, phase) } },
    reader: "Read what ten watts more buy at a power",
  });
  const figures = table({ caption: "", thin: true });
  const why = html("div", { class: "passage" });
  const more = folds([
    { id: "why", name: "Why?", body: why },
    { id: "how", name: "How it is worked out", gist: "The forces on the road, added up, times the speed.", body: workedOut },
    { id: "table", name: "As a table", gist: "Watts by speed, and what ten more would add.", body: figures.element },
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
    const { units, with: { [ID]: own } } = store.get();
    const speed_m_s = show.fromDisplay("speed", shown, units);
    if (phase === "commit") return store.settle();
    if (own.by === "speed") store.set(`${AT}.speed_m_s`, speed_m_s, { merge: "you" });
    else if (latest) setPower(valueAt({ name: "", xs: latest.columns.speed_m_s, ys: total(latest) }, speed_m_s));
  }

  /** @param {number} power_w @param {MovePhase} phase */
  function movePower(power_w, phase) {
    if (phase === "commit") return store.settle();
    if (store.get().with[ID].by === "power") setPower(power_w);
    else if (latest) store.set(`${AT}.speed_m_s`, valueAt({ name: "", xs: latest.columns.power_w, ys: latest.columns.speed_at_power_m_s }, power_w), { merge: "you" });
  }

  /** @param {number} power_w */
  function setPower(power_w) {
    if (Number.isFinite(power_w)) store.set(`${AT}.power_w`, Math.max(1, Math.round(power_w)), { merge: "you" });
  }

  return {
    update(state, answer, error) {
      const way = state.with[ID].by;
      if (way !== asked) ask.update({ words: sentenceWords(way) });
      asked = way;
      by.update({ value: way });
      const shown = [(way === "power" ? power : speed), cda, grade, day].map((field) => field.update(state, error)).includes(true);
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
  function showAnswer({ units, with: { [ID]: { by } } }, answer) {
    const speedText = show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 });
    const powerText = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const { kind, figure, text, claim } = by === "power"
      ? { kind: /** @type {const} */ ("speed"), figure: answer.speed_m_s, text: speedText, claim: [strong(powerText, "power"), " buys"] }
      : { kind: /** @type {const} */ ("power"), figure: answer.power_w, text: powerText, claim: [strong(speedText), " takes"] };
    const digits = kind === "speed" ? 1 : 0;
    const unit = show.unitOf(kind, units);
    const at = (/** @type {number} */ sds) => show.number(show.toDisplay(kind, Math.max(0, figure.value + sds * figure.sd), units), { digits });
    const spread = show.spreadText(kind, figure.sd, units);
    verdict.update({
      claim, figure: show.number(show.toDisplay(kind, figure.value, units), { digits }), unit: unit.symbol, spread: figure.sd > 0 ? spread : null,
      odds: figure.sd > 0 ? `19\u00a0in\u00a020: ${at(-1.96)}\u00a0to\u00a0${at(1.96)}` : "", weight: "sure",
      spoken: by === "power" ? `${powerText} buys ${text}, plus or minus ${spread}.` : `${speedText} takes ${text}, plus or minus ${spread}.`,
    });

    const values = PARTS.map(({ key }) => answer.breakdown_w[key]);
    const watts = partsThatAddUp(values);
    const gives = values.some((value) => value < -0.5);
    const shares = partsThatAddUp(values.map((value) => (100 * value) / Math.max(1e-9, answer.power_w.value)));
    where.update(PARTS.map((part, index) => ({
      name: part.name, value: values[index], text: show.quantity("power", watts[index], units, { digits: 0 }), note: gives ? "" : `${shares[index]}\u202f%`, meaning: part.meaning,
    })).filter(({ value }) => Math.abs(value) > 1e-9));

    const { other_air: other } = answer;
    const difference = (/** @type {number} */ speed_m_s) => {
      const more = show.round(show.toDisplay("speed", speed_m_s, units), 1) - show.round(show.toDisplay("speed", answer.speed_m_s.value, units), 1);
      return Math.abs(more) < 0.05 ? "level" : [`${more > 0 ? "faster" : "slower"} by `, strong(show.number(Math.abs(more), { digits: 1 }))];
    };
    const row = (/** @type {string} */ name, /** @type {number} */ speed_m_s) => ({ name, value: show.quantity("speed", speed_m_s, units, { digits: 1 }), difference: difference(speed_m_s) });
    others.update([
      { mark: "you", name: by === "power" ? "Today" : "At this speed", value: speedText, difference: by === "power" ? show.plusMinus("speed", answer.speed_m_s.sd, units) : "", soft: true },
      { ...row("10\u00a0W more", answer.speed_m_s.value + answer.next_10_w_m_s.value), mark: "power" },
      ...(answer.rider_wind_m_s > 0 ? [row("In still air", other.still_speed_m_s)] : []),
      row("In standard air", other.standard_speed_m_s),
    ]);
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showCharts({ units, with: { [ID]: { by } } }, answer) {
    const { columns } = answer;
    const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
    const unit = show.unitOf("speed", units).symbol;
    const xs = Float64Array.from(columns.speed_m_s, shown);
    const topSpeed = rung(TOP_SPEEDS_M_S, answer.speed_m_s.value * BEYOND_SPEED);
    const inside = columns.speed_m_s.findIndex((v) => v >= topSpeed);
    const upTo = inside < 0 ? columns.speed_m_s.length : inside + 1;
    const cut = (/** @type {ArrayLike<number>} */ ys) => Float64Array.from({ length: upTo }, (_, i) => ys[i]);
    const parts = PARTS.map(({ key, ...part }) => ({ ...part, ys: cut(columns[`${key}_w`]) })).filter(({ ys }) => ys.some((y) => y > 0));
    const heights = cut(xs).map((_, i) => parts.reduce((sum, { ys }) => sum + Math.max(0, ys[i]), 0));
    const you = PARTS.reduce((sum, { key }) => sum + Math.max(0, answer.breakdown_w[key]), 0);
    const speedText = show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 });
    const powerText = show.quantity("power", answer.power_w.value, units, { digits: 0 });
    const given = Math.round(you - answer.power_w.value);
    stack.update({
      leftMargin: LEFT_PX,
      desc: `Watts at every speed up to ${show.quantity("speed", topSpeed, units, { digits: 0 })}, stacked by where they go. At ${speedText} they are ${powerText}, ${show.percent(answer.aero_share)} of the load on the road being air.`,
      xs: cut(xs), parts, whole: "in all",
      x: { name: `speed, ${unit}`, domain: [0, shown(topSpeed)], read: (v) => `${show.number(v, { digits: 1 })}\u00a0${unit}` },
      y: { name: given > 0 ? "power, W" : "power at the pedals, W", meaning: given > 0 ? null : "power", domain: [0, 1.06 * Math.max(you, ...heights, 20)] },
      handles: { you: { x: shown(answer.speed_m_s.value), y: you, label: "you", strong: by === "power" ? speedText : powerText, spoken: `${speedText}, ${powerText}`, step: { x: 0.1 }, rangeX: [shown(0.1), xs[upTo - 1]] } },
      reading: [strong(powerText), " at ", strong(speedText), given > 0 ? `: the road and the wind give ${given}\u00a0W besides. ` : `: ${show.percent(answer.aero_share)} of the load on the road is air. `, onScreen("Drag the ring, or use the arrow keys.")],
    });

    const topPower = rung(TOP_POWERS_W, Math.max(answer.power_w.value, 40) * BEYOND_POWER);
    const gains = Float64Array.from(columns.next_10_w_m_s, (v) => show.spreadToDisplay("speed", v, units));
    const last = columns.power_w.findIndex((w) => w >= topPower);
    const most = last < 0 ? columns.power_w.length : last + 1;
    // Near standstill the first watts buy any amount of speed; the axis is for the watts a rider has.
    const ceiling = valueAt({ name: "", xs: columns.power_w, ys: gains }, Math.max(columns.power_w[0], Math.min(60, answer.power_w.value)));
    const ten = show.spreadToDisplay("speed", answer.next_10_w_m_s.value, units);
    const tenText = `+${show.number(ten, { digits: 2 })}\u00a0${unit}`;
    gain.update({
      leftMargin: LEFT_PX,
      desc: `What ten more watts add to speed at every power up to ${topPower} watts: it falls as power grows. At ${powerText} it is ${tenText}.`,
      x: { domain: [0, topPower] },
      y: { name: `what 10 W more buy, ${unit}`, domain: [0, Math.max(ten, ceiling) * 1.15 || 1], read: (v) => `${show.number(v, { digits: 2 })}\u00a0${unit}` },
      series: [{ name: "ten watts more buy", xs: columns.power_w.slice(0, most), ys: gains.slice(0, most), meaning: "power" }],
      points: answer.power_w.value <= topPower ? [{ x: answer.power_w.value, y: ten, sdY: show.spreadToDisplay("speed", answer.next_10_w_m_s.sd, units), meaning: "power", shape: "none" }] : [],
      handles: answer.power_w.value >= columns.power_w[0]
        ? { you: { x: answer.power_w.value, y: ten, label: "you", strong: tenText, spoken: `${powerText}: ten more buy ${tenText}`, step: { x: 1 }, rangeX: [10, Math.min(topPower, columns.power_w[most - 1])] } } : {},
      reading: ["At ", strong(powerText, "power"), " ten watts more buy ", strong(tenText), "."],
    });
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showNotes({ units, with: { [ID]: { by } } }, answer) {
    const unit = show.unitOf("speed", units).symbol;
    const ten = show.number(show.spreadToDisplay("speed", answer.next_10_w_m_s.value, units), { digits: 2 });
    const { power: p, cda: c, mass: m, rolling: r, density: d } = answer.elasticity;
    const size = (/** @type {number} */ e) => show.number(Math.abs(e), { digits: 2 });
    say(nextTen, ["The next ", strong("10\u00a0W", "power"), " buy ", strong(`${ten}\u00a0${unit}`), `. One percent more power is ${size(p)}\u202f% more speed.`]);
    const way = (/** @type {number} */ e) => `${size(e)}\u202f% ${e <= 0 ? "faster" : "slower"}`;
    say(elastic, [strong("Percent for percent. "), `One percent less drag area is ${way(c)}, one percent thinner air ${way(d)}, one percent less mass ${way(m)}, one percent less rolling resistance ${way(r)}.`]);

    const { other_air: other } = answer;
    const thin = (100 * (answer.density_kg_m3 - other.standard_density_kg_m3)) / other.standard_density_kg_m3;
    const head = answer.headwind_m_s;
    const wind = (/** @type {number} */ v) => show.quantity("wind", Math.abs(v), units, { digits: 1 });
    say(air, [strong("Today’s air. "), `${show.quantity("density", answer.density_kg_m3, units)}, ${Math.abs(thin) < 0.05 ? "as on a standard day at sea level" : `${show.number(Math.abs(thin), { digits: 1 })}\u202f% ${thin < 0 ? "thinner" : "thicker"} than a standard day at sea level`}. `,
      answer.rider_wind_m_s > 0
        ? `Of the forecast wind ${wind(answer.rider_wind_m_s)} reach you: ${wind(head)} ${head >= 0 ? "against you" : "from behind"}, ${wind(answer.crosswind_m_s)} across. You feel ${show.quantity("speed", answer.apparent_wind_m_s, units, { digits: 1 })} of air, ${show.number(Math.abs(answer.yaw_deg), { digits: 0 })}° off your nose.`
        : "There is no wind."]);

    const asked = by === "power" ? { kind: /** @type {const} */ ("speed"), sd: answer.speed_m_s.sd, of: "the speed" } : { kind: /** @type {const} */ ("power"), sd: answer.power_w.sd, of: "the power" };
    surer.update(answer.surer, { sd: asked.sd, of: asked.of, plusMinus: (sd) => show.plusMinus(asked.kind, sd, units) });
    doubts.update(answer.warnings);
    const airWatts = show.quantity("power", answer.breakdown_w.air, units, { digits: 0 });
    // Where the hill or the wind pushes, a share of the load means little.
    const takes = PARTS.every(({ key }) => answer.breakdown_w[key] > -0.5) ? `Air takes ${show.percent(answer.aero_share)} of the load on the road` : `Air takes ${airWatts}, and the hill or the wind gives some of it back`;
    more.update({ why: { gist: `${takes}; what goes into air grows with the cube of speed.` } });
    say(why, [html("p", {}, `The power that goes into the air grows with the cube of the speed through it; tyres and hill grow with speed alone. ${takes} at ${show.quantity("speed", answer.speed_m_s.value, units, { digits: 1 })}, so each further watt buys less speed than the one before: that is the falling curve.`),
      html("p", {}, "Were there nothing but air, one percent more power would buy a third of a percent of speed; on a steep climb, nearly a whole percent. Your own figure lies between.")]);
  }

  /** @param {State} state @param {SpeedForWattsAnswer} answer */
  function showTable({ units }, { columns }) {
    const unit = show.unitOf("speed", units).symbol;
    const pick = Array.from(columns.speed_m_s.keys()).filter((i) => i % 5 === 0 && i > 0);
    const parts = PARTS.filter(({ key }) => columns[`${key}_w`].some((w) => Math.abs(w) >= 0.5));
    const gainAt = (/** @type {number} */ w) => valueAt({ name: "", xs: columns.power_w, ys: columns.next_10_w_m_s }, w);
    figures.update({
      caption: `Power at the pedals by speed and where it goes, in watts; and what ten more would add, in ${unit}.`,
      columns: [`Speed, ${unit}`, "Power, W", ...parts.map(({ name }) => `${name.charAt(0).toUpperCase()}${name.slice(1)}, W`), `10\u00a0W more, ${unit}`],
      rows: pick.map((i) => {
        const all = parts.map(({ key }) => columns[`${key}_w`][i]);
        const watts = partsThatAddUp(all);
        const sum = watts.reduce((a, b) => a + b, 0);
        const more = gainAt(all.reduce((a, b) => a + b, 0));
        return [show.number(show.toDisplay("speed", columns.speed_m_s[i], units), { digits: 1 }), number(sum), ...watts.map(number), Number.isFinite(more) ? `+${show.number(show.spreadToDisplay("speed", more, units), { digits: 2 })}` : ""];
      }),
    });
  }
}

/** Watts at each speed of the curve. @param {SpeedForWattsAnswer} answer */
function total({ columns }) {
  return columns.speed_m_s.map((_, i) => PARTS.reduce((sum, { key }) => sum + columns[`${key}_w`][i], 0));
}
