// @ts-check
/** The ride in charts over the same road: power, W′ left, what the plan gains, speed and gradient. They are read together. */

import { lineChart } from "../../parts/line-chart.js";
import { shareCursor } from "../../parts/shared-cursor.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Kind } from "../../units.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
/** All charts begin at the same edge. */
const LEFT_PX = 60;
/** Where the road falls more steeply than this, no speed is shown. */
const FALLING = -0.02;
/** A road whose gradient varies less than this is drawn as no chart. */
const VARIES = 0.002;

/** @typedef {{ units: State["units"], columns: Answer["columns"], answer: Answer }} Drawn */

/** @param {Tools} tools */
export function planCharts({ store }) {
  const unit = (/** @type {Kind} */ kind) => ({ unit: show.unitOf(kind, store.get().units).symbol });
  const number = (/** @type {number} */ value) => show.number(value);
  const percent = (/** @type {number} */ share) => show.percent(share, 1);
  const low = (/** @type {number} */ width) => Math.round(Math.min(220, Math.max(180, width * 0.32)));
  const lowest = (/** @type {number} */ width) => Math.round(low(width) * 0.75);
  const power = lineChart({
    title: words("powerTitle"),
    x: { name: words("along", unit("distance")), format: number },
    y: { name: words("powerAxis", unit("power")), meaning: "power", format: number },
    height: (width) => Math.round(Math.min(300, Math.max(230, width * 0.45))),
    reader: words("readPower"),
  });
  const reserve = lineChart({
    title: words("reserveTitle"),
    x: { name: words("along", unit("distance")), format: number },
    y: { name: words("reserveAxis", unit("work")), meaning: "power", format: number },
    height: low,
    reader: words("readReserve"),
  });
  const ahead = lineChart({
    title: words("aheadTitle"),
    x: { name: words("along", unit("distance")), format: number },
    y: { name: words("aheadAxis"), format: number },
    height: lowest,
    reader: words("readAhead"),
  });
  const speed = lineChart({
    title: words("speedTitle"),
    x: { name: words("along", unit("distance")), format: number },
    y: { name: words("speedAxis", unit("speed")), format: number },
    height: low,
    reader: words("readSpeed"),
  });
  const grade = lineChart({
    title: words("gradeTitle"),
    x: { name: words("along", unit("distance")), format: number },
    y: { name: words("gradeAxis"), meaning: "ground", format: percent },
    height: lowest,
    reader: words("readGrade"),
  });
  const charts = [power, reserve, ahead, grade, speed];
  // A printed page holds what is taken along: how hard, and what is left.
  for (const { element } of [ahead, speed]) element.classList.add("no-print");
  shareCursor(charts);

  /** What every chart has along its foot. @param {State} state @param {Answer} answer */
  function road({ units }, { columns }) {
    const far = (/** @type {number} */ m) => show.toDisplay("distance", m, units);
    const xs = Float64Array.from(columns.distance_m, far);
    const read = (/** @type {number} */ shown) =>
      show.quantity("distance", show.fromDisplay("distance", shown, units), units, { digits: 1 });
    return { leftMargin: LEFT_PX, xs, x: { domain: /** @type {const} */ ([0, xs[xs.length - 1]]), read } };
  }

  /** @param {State} state @param {Answer} answer @param {ReturnType<typeof road>} along */
  function drawPower({ units }, { columns, even, simple }, { xs, ...along }) {
    const watts = (/** @type {number} */ w) => show.quantity("power", w, units, { digits: 0 });
    const shown = (/** @type {ArrayLike<number>} */ ys) =>
      Float64Array.from(ys, (w) => show.toDisplay("power", w, units));
    const [plan, fastest] = [steps(xs, shown(columns.simple_power_w)), steps(xs, shown(columns.power_w))];
    const powers = simple.cues.map(({ power_w }) => power_w);
    const evenText = watts(even.power_w);
    const ends = { low: watts(Math.min(...powers)), high: watts(Math.max(...powers)), even: evenText };
    power.update({
      ...along,
      desc: words("powerDescription", ends),
      y: {
        domain: [0, Math.max(...plan.ys, ...fastest.ys) * 1.12],
        read: (y) => watts(show.fromDisplay("power", y, units)),
      },
      series: [
        { name: words("fastestSeries"), ...fastest, stroke: "dotted", label: words("fastestSeries") },
        { name: words("planSeries"), ...plan, meaning: "power", label: words("planSeries"), labelAt: "start" },
      ],
      levels: [
        {
          y: show.toDisplay("power", even.power_w, units),
          below: words("evenLevel", { power: evenText }),
          quiet: true,
        },
      ],
      reading: words.parts("powerReading", ends),
    });
  }

  /** @param {State} state @param {Answer} answer @param {ReturnType<typeof road>} along */
  function drawReserve({ units }, { columns, simple }, { xs, ...along }) {
    const work = (/** @type {number} */ joules) => show.quantity("work", joules, units, { digits: 1 });
    const shown = (/** @type {ArrayLike<number>} */ ys) =>
      Float64Array.from(ys, (j) => show.toDisplay("work", j, units));
    const [plan, fastest] = [shown(columns.simple_w_prime_j), shown(columns.w_prime_j)];
    const least = work(Math.max(0, simple.w_prime_least_j));
    reserve.update({
      ...along,
      desc: words("reserveDescription", { plan: least }),
      y: {
        domain: [Math.min(0, ...plan), Math.max(...plan, ...fastest) * 1.1],
        read: (y) => work(show.fromDisplay("work", y, units)),
      },
      series: [
        { name: words("fastestSeries"), xs, ys: fastest, stroke: "dotted", label: words("fastestSeries") },
        { name: words("planSeries"), xs, ys: plan, meaning: "power", label: words("planSeries"), labelAt: "middle" },
      ],
      reading: words.parts("reserveReading", { plan: least }),
    });
  }

  /** @param {Answer} answer @param {ReturnType<typeof road>} along */
  function drawAhead({ columns, fastest }, { xs, ...along }) {
    const differs = show.differenceWords(fastest.faster_by_s);
    const [least, most] = [Math.min(0, ...columns.ahead_s), Math.max(1, ...columns.ahead_s)];
    ahead.update({
      ...along,
      desc: words("aheadDescription", { differs }),
      y: {
        domain: [least * 1.15, most * 1.15],
        read: (y) => words("seconds", { seconds: show.number(y, { digits: 1 }) }),
      },
      series: [{ name: words("aheadSeries"), xs, ys: columns.ahead_s }],
      levels: [{ y: 0, quiet: true }],
      reading: words.parts("aheadReading", { differs }),
    });
  }

  /** @param {State} state @param {Answer} answer @param {ReturnType<typeof road>} along */
  function drawSpeed({ units }, { columns }, { xs, ...along }) {
    const ys = Float64Array.from(columns.speed_m_s, (v, at) =>
      columns.grade[at] < FALLING ? NaN : show.toDisplay("speed", v, units),
    );
    const isGap = ys.some(Number.isNaN);
    const most = Math.max(1, ...ys.filter(Number.isFinite));
    speed.update({
      ...along,
      desc: words("speedDescription", {
        most: show.quantity("speed", show.fromDisplay("speed", most, units), units, { digits: 1 }),
      }),
      y: {
        domain: [0, most * 1.15],
        read: (y) => show.quantity("speed", show.fromDisplay("speed", y, units), units, { digits: 1 }),
      },
      series: [{ name: words("speedSeries"), xs, ys }],
      reading: isGap ? words.parts("speedReading", { grade: percent(-FALLING) }) : "",
    });
  }

  /** @param {Answer} answer @param {ReturnType<typeof road>} along */
  function drawGrade({ columns }, { xs, ...along }) {
    const [least, most] = [Math.min(...columns.grade), Math.max(...columns.grade)];
    grade.element.hidden = most - least < VARIES;
    if (grade.element.hidden) return;
    const ends = { low: percent(least), high: percent(most) };
    grade.update({
      ...along,
      desc: words("gradeDescription", ends),
      y: { domain: [Math.min(0, least * 1.15), Math.max(0, most * 1.15)], read: percent },
      series: [{ name: words("gradeSeries"), ...steps(xs, columns.grade), meaning: "ground" }],
      levels: [{ y: 0, quiet: true }],
      reading: words.parts("gradeReading", ends),
    });
  }

  return {
    elements: charts.map(({ element }) => element),
    destroy() {
      for (const chart of charts) chart.destroy();
    },
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      const along = road(state, answer);
      drawPower(state, answer, along);
      drawReserve(state, answer, along);
      drawAhead(answer, along);
      drawGrade(answer, along);
      drawSpeed(state, answer, along);
    },
  };
}

/** A curve that stays as it is from each x to the next. @param {ArrayLike<number>} xs @param {ArrayLike<number>} ys */
function steps(xs, ys) {
  const count = xs.length;
  /** @type {{ xs: number[], ys: number[] }} */
  const curve = { xs: [], ys: [] };
  const add = (/** @type {number} */ x, /** @type {number} */ y) => {
    curve.xs.push(x);
    curve.ys.push(y);
  };
  for (let at = 0; at < count; at += 1) {
    if (at > 0 && at < count - 1 && ys[at] === ys[at - 1]) continue;
    if (at > 0) add(xs[at], ys[at - 1]);
    if (at < count - 1) add(xs[at], ys[at]);
  }
  return curve;
}
