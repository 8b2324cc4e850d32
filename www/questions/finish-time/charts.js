// @ts-check
/** The pictures of a finish time: time and power against distance, and speed and W′ along the ride. */

import { strong } from "../../parts/html.js";
import { lineChart, valueAt } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";
import { fixedTimeOf } from "./fixed-time.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FinishTimeAnswer } from "../../types/core.d.ts" */
/** @import { MovePhase } from "../../parts/handle.js" */

const words = book("finish-time");
const shared = book("shared");
const ID = "finish-time";
/** Events nearer to the ride's own distance than a tenth are not told twice. @param {number} one @param {number} other */
const isNear = (one, other) => 10 * Math.abs(one - other) < other;
/** All charts begin at the same edge. */
const LEFT_PX = 60;

/**
 * @param {Tools} tools
 * @param {{ rideOver: (distance_m: number) => void, rideFor: (time_s: number) => void, settle: () => void }} change
 */
export function finishTimeCharts({ store }, { rideOver, rideFor, settle }) {
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const workShown = (/** @type {number} */ shown) =>
    show.quantity("work", show.fromDisplay("work", shown, store.get().units), store.get().units, { digits: 1 });
  const unit = (/** @type {import("../../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const number = (/** @type {number} */ value) => show.number(value);
  /** @type {FinishTimeAnswer | null} */
  let latest = null;

  /** @param {number} shown @param {MovePhase} phase */
  function move(shown, phase) {
    const state = store.get();
    if (phase === "commit") return settle();
    const distance_m = show.fromDisplay("distance", shown, state.units);
    if (fixedTimeOf(state) === undefined) return rideOver(distance_m);
    const time_s = latest
      ? valueAt({ name: "", xs: latest.columns.distance_m, ys: latest.columns.time_s }, distance_m)
      : NaN;
    if (Number.isFinite(time_s)) rideFor(Math.max(60, Math.round(time_s / 60) * 60));
  }

  const handles = (/** @type {string} */ label) => ({
    you: {
      label,
      moves: ["scenario.course.distance_m", "scenario.course.duration_s", `with.${ID}.for_time_s`],
      directions: /** @type {const} */ ("x"),
      onMove: (/** @type {{ x: number }} */ { x }, /** @type {MovePhase} */ phase) => move(x, phase),
    },
  });
  const low = (/** @type {number} */ width) => Math.round(Math.min(240, Math.max(200, width * 0.36)));
  const time = lineChart({
    title: words("timeTitle"),
    height: (width) => Math.round(Math.min(320, Math.max(240, width * 0.48))),
    x: { name: words("distanceAxis", unit("distance")), kind: "log", format: number },
    y: { name: words("paceAxis", unit("speed")), format: number },
    handles: handles(words("eventHandle")),
    reader: words("readTime"),
  });
  const power = lineChart({
    title: words("powerTitle"),
    height: low,
    x: { name: words("distanceAxis", unit("distance")), kind: "log", format: number },
    y: { name: words("powerAxis", unit("power")), meaning: "power", format: number, read: watts },
    handles: handles(words("eventHandle")),
    reader: words("readPower"),
  });
  const speed = lineChart({
    title: words("speedTitle"),
    height: low,
    x: { name: words("alongAxis", unit("distance")), format: number },
    y: { name: words("speedAxis", unit("speed")), format: number },
    reader: words("readSpeed"),
  });
  const reserve = lineChart({
    title: words("reserveTitle"),
    height: low,
    x: { name: words("alongAxis", unit("distance")), format: number },
    y: { name: words("reserveAxis", unit("work")), meaning: "power", format: number, read: workShown },
    reader: words("readReserve"),
  });
  const road = lineChart({
    title: words("roadTitle"),
    height: (width) => Math.round(low(width) * 0.8),
    x: { name: words("alongAxis", unit("distance")), format: number },
    y: { name: words("heightAxis", unit("height")), meaning: "ground", format: number },
    reader: words("readHeight"),
  });
  /** The road itself comes first where it is surveyed; else what a distance takes. */
  const surveyedFirst = [road, speed, reserve, time, power];
  const charts = [time, power, speed, reserve];
  let isSurveyed = false;
  /** What the road was drawn from: it stays as it is while other numbers change. @type {unknown[]} */
  let drawnRoad = [];

  /** @param {boolean} surveyed */
  function arrange(surveyed) {
    if (surveyed === isSurveyed) return;
    isSurveyed = surveyed;
    const host = time.element.parentElement;
    for (const { element } of surveyed ? surveyedFirst : charts) host?.append(element);
    if (!surveyed) road.element.remove();
  }

  /** @param {State} state */
  function updateRoad({ units, scenario: { course } }) {
    if (drawnRoad[0] === course && drawnRoad[1] === units) return;
    drawnRoad = [course, units];
    const points = course.points ?? [];
    const start_m = points[0]?.distance_m ?? 0;
    const far = (/** @type {number} */ m) => show.toDisplay("distance", m, units);
    const high = (/** @type {number} */ m) => show.quantity("height", m, units, { digits: 0 });
    const xs = points.map(({ distance_m }) => far(distance_m - start_m));
    const ys = points.map(({ elevation_m }) => show.toDisplay("height", elevation_m, units));
    const [lowest, highest] = [Math.min(...ys), Math.max(...ys)];
    const ends = points.map(({ elevation_m }) => elevation_m);
    const values = { low: high(Math.min(...ends)), high: high(Math.max(...ends)) };
    road.update({
      leftMargin: LEFT_PX,
      desc: words("roadReading", values),
      x: {
        domain: [0, xs[xs.length - 1]],
        read: (shown) => show.quantity("distance", show.fromDisplay("distance", shown, units), units, { digits: 1 }),
      },
      y: {
        domain: [lowest - 1, Math.max(highest, lowest + 10) + 1],
        read: (shown) => high(show.fromDisplay("height", shown, units)),
      },
      series: [{ name: words("roadSeries"), xs, ys, meaning: "ground" }],
      reading: [words("roadReading", values)],
    });
  }

  return {
    elements: charts.map(({ element }) => element),
    destroy() {
      for (const chart of surveyedFirst) chart.destroy();
    },
    /** @param {State} state @param {FinishTimeAnswer} answer */
    update(state, answer) {
      latest = answer;
      const { units } = state;
      const far = (/** @type {number} */ m) => show.toDisplay("distance", m, units);
      const farText = (/** @type {number} */ shown) =>
        `${show.number(shown, { digits: 1, atLeast: 0 })}\u00a0${show.unitOf("distance", units).symbol}`;
      const { columns } = answer;
      const own_m = answer.distance_m.value;
      const ends = [Math.max(columns.distance_m[0], 2000), columns.distance_m[columns.distance_m.length - 1]];
      const xs = Float64Array.from(columns.distance_m, far);
      const domain = /** @type {const} */ ([far(Math.min(ends[0], own_m / 1.5)), far(Math.max(ends[1], own_m * 1.2))]);
      const x = { name: words("distanceAxis", unit("distance")), domain, read: farText };
      const surveyed = state.scenario.course.kind === "profile";
      const off = state.with[ID].effort.kind !== "even";
      arrange(surveyed);
      if (surveyed) updateRoad(state);
      const timeText = show.time(answer.time_s.value);
      const powerText = watts(answer.power_w.value);
      const here = {
        x: far(own_m),
        label: off ? words("youAtTheseWatts") : shared("you"),
        step: { x: far(own_m) < 20 ? 0.5 : 1 },
        rangeX: domain,
      };
      const distance = farText(far(own_m));
      const spoken = words("pointSpoken", { distance, time: timeText, power: powerText });
      const fixed = surveyed && fixedTimeOf(state) === undefined;
      const point = (/** @type {number} */ y, /** @type {string} */ label) =>
        fixed ? [{ x: far(own_m), y, label, shape: /** @type {const} */ ("ring") }] : [];

      const paces = Float64Array.from(columns.average_speed_m_s, (v) => show.toDisplay("speed", v, units));
      const pace = show.toDisplay("speed", answer.average_speed_m_s.value, units);
      /** What the curve says at a distance. @param {ArrayLike<number>} ys @param {number} distance_m */
      const at = (ys, distance_m) => valueAt({ name: "", xs: columns.distance_m, ys }, distance_m);
      const eventPoints = state.scenario.events
        // On a course of its own an event lies on another curve.
        .flatMap(({ course, distance_m }) => (course || distance_m === undefined ? [] : [distance_m]))
        .filter((distance_m) => far(distance_m) > domain[0] && !isNear(distance_m, own_m))
        .map((distance_m) => ({
          x: far(distance_m),
          y: at(paces, distance_m),
          label: show.time(at(columns.time_s, distance_m)),
          shape: /** @type {const} */ ("dot"),
        }))
        .filter(({ y }) => Number.isFinite(y));

      time.update({
        leftMargin: LEFT_PX,
        desc: words("timeDescription", { distance, time: timeText }),
        x,
        y: {
          domain: padded([...paces, pace]),
          read: (shown) => show.quantity("speed", show.fromDisplay("speed", shown, units), units, { digits: 1 }),
        },
        series: [
          {
            name: words("effortSeries"),
            xs,
            ys: paces,
            label: off ? words("effortSeries") : undefined,
            labelAt: "start",
          },
        ],
        points: [...eventPoints, ...point(pace, words("youFigure", { figure: timeText }))],
        handles: fixed ? {} : { you: { ...here, y: pace, strong: timeText, spoken } },
        reading: [
          ...words.parts("timeReading", { distance, time: timeText }),
          ...(fixed ? [] : [" ", onScreen(shared("dragRing"))]),
        ],
      });
      power.update({
        leftMargin: LEFT_PX,
        desc: words("powerDescription", { distance, power: powerText }),
        x,
        y: {
          domain: padded(
            [...columns.power_w, answer.power_w.value + answer.power_w.sd, answer.power_w.value - answer.power_w.sd],
            5,
          ),
        },
        series: [{ name: words("powerSeries"), xs, ys: columns.power_w, meaning: "power" }],
        points: [
          ...point(answer.power_w.value, words("youFigure", { figure: powerText })),
          { x: far(own_m), y: answer.power_w.value, sdY: answer.power_w.sd, meaning: "power", shape: "none" },
        ],
        handles: fixed ? {} : { you: { ...here, y: answer.power_w.value, strong: powerText, spoken } },
        reading: words.parts("powerReading", { power: strong(watts(answer.sustainable_w), "power"), time: timeText }),
      });

      const along = Float64Array.from(columns.along_m, far);
      const alongX = {
        name: words("alongAxis", unit("distance")),
        domain: /** @type {const} */ ([0, far(own_m)]),
        read: farText,
      };
      const speeds = Float64Array.from(columns.along_speed_m_s, (v) => show.toDisplay("speed", v, units));
      const speedText = (/** @type {number} */ m_s) => show.quantity("speed", m_s, units, { digits: 1 });
      const mean = show.toDisplay("speed", answer.average_speed_m_s.value, units);
      const meanText = speedText(answer.average_speed_m_s.value);
      speed.update({
        leftMargin: LEFT_PX,
        desc: words("speedDescription", { speed: meanText }),
        x: alongX,
        y: {
          name: words("speedAxis", unit("speed")),
          domain: [0, Math.max(...speeds) * 1.15],
          read: (v) => speedText(show.fromDisplay("speed", v, units)),
        },
        series: [{ name: words("speedSeries"), xs: along, ys: speeds }],
        levels: [{ y: mean, quiet: true, below: words("onAverage", { speed: show.number(mean, { digits: 1 }) }) }],
        reading: words.parts("speedReading", { speed: meanText }),
      });
      const balance = Float64Array.from(columns.along_w_prime_j, (j) => show.toDisplay("work", j, units));
      const [all, last] = [balance[0] ?? 0, balance[balance.length - 1] ?? 0];
      const short = last < -0.05;
      reserve.update({
        leftMargin: LEFT_PX,
        desc: words("reserveDescription", { start: workShown(all), end: workShown(last) }),
        x: alongX,
        y: { domain: [Math.min(0, ...balance), Math.max(all, 1) * 1.1] },
        series: [{ name: words("reserveSeries"), xs: along, ys: balance, meaning: "power" }],
        levels: Math.min(...balance) < -0.05 ? [{ y: 0, below: words("moreThanYouHave") }] : [],
        reading: words.parts(short ? "reserveShort" : "reserveLeft", {
          work: strong(workShown(short ? -last : Math.max(0, last)), "power"),
        }),
      });
    },
  };
}

/** @param {readonly number[]} ys @param {number} [least] room above and below @returns {readonly [number, number]} */
function padded(ys, least = 1) {
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const room = Math.max(least, (high - low) * 0.15);
  return [Math.max(0, low - room), high + room];
}
