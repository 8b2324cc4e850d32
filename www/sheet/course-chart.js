// @ts-check
/** The height of a course along it, with the ends of a part, which can be dragged, or the points themselves, up and down. */

import { labelOf } from "../frame/field-words.js";
import { lineChart, valueAt } from "../parts/line-chart.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { fallsM, risesM } from "./rises.js";

/** @import { MovePhase } from "../parts/handle.js" */
/** @import { Course } from "../types/page.d.ts" */
/** @import { Units } from "../units.js" */
/** @typedef {"from_m" | "to_m"} End */
/** @typedef {Record<End, number>} Part from the start of the course */

const say = book("sheet");
/** One press of an arrow key, in the unit that is shown: a tenth of a kilometre or of a mile. */
const STEP = 0.1;
/** A course of more points is moved as a text. */
export const MOST_MOVED = 24;
/** The least room above and below the course that its points move in, m. */
const ROOM_M = 50;

/**
 * @param {object} options
 * @param {number} options.least_m between both ends
 * @param {number | undefined} options.step_m of a height
 * @param {(end: End, distance_m: number, phase: MovePhase) => void} options.onMove
 * @param {(at: number, elevation_m: number, phase: MovePhase) => void} options.onPoint
 */
export function courseChart({ least_m, step_m, onMove, onPoint }) {
  /** @type {Units | null} */
  let units = null;
  const end = (/** @type {End} */ name) => ({
    label: labelOf(`with.${name}`),
    moves: [`with.${name}`],
    directions: /** @type {const} */ ("x"),
    ring: /** @type {const} */ ("open"),
    onMove: (/** @type {{ x: number }} */ { x }, /** @type {MovePhase} */ phase) => {
      if (units) onMove(name, show.fromDisplay("distance", x, units), phase);
    },
  });
  const point = (/** @type {number} */ at) => ({
    label: labelOf("scenario.course.points.elevation_m"),
    moves: ["scenario.course.points"],
    directions: /** @type {const} */ ("y"),
    ring: /** @type {const} */ ("open"),
    meaning: /** @type {const} */ ("ground"),
    onMove: (/** @type {{ y: number }} */ { y }, /** @type {MovePhase} */ phase) => {
      if (units) onPoint(at, show.fromDisplay("height", y, units), phase);
    },
  });
  const moved = Array.from({ length: MOST_MOVED }, (_, at) => [`point_${at}`, point(at)]);
  const chart = lineChart({
    title: say("course.chart"),
    x: { name: "", format: (x) => show.number(x) },
    y: { name: "", meaning: "ground", format: (y) => show.number(y) },
    handles: { from_m: end("from_m"), to_m: end("to_m"), ...Object.fromEntries(moved) },
    reader: say("course.chartReader"),
    height: (width_px) => Math.round(Math.min(260, Math.max(180, width_px * 0.4))),
  });

  /** @param {Course} course @param {Part} part @param {Units} inUnits @param {boolean} moving its points, instead of the ends */
  function update({ points = [] }, part, inUnits, moving) {
    units = inUnits;
    chart.element.hidden = points.length < 2;
    if (chart.element.hidden) return;
    const start_m = points[0].distance_m;
    const distance = (/** @type {number} */ m) => show.toDisplay("distance", m, inUnits);
    const height = (/** @type {number} */ m) => show.toDisplay("height", m, inUnits);
    const whole = {
      name: say("course.height"),
      xs: points.map(({ distance_m }) => distance(distance_m - start_m)),
      ys: points.map(({ elevation_m }) => height(elevation_m)),
      meaning: /** @type {const} */ ("ground"),
    };
    const last = whole.xs[whole.xs.length - 1];
    // Numbers that are typed may lie beyond each other or the end; the core says so where the part is kept.
    const to = Math.min(last, distance(part.to_m));
    const from = Math.min(to, distance(part.from_m));
    const kept = within(whole, from, to);
    const [low, high] = [Math.min(...whole.ys), Math.max(...whole.ys)];
    const room = moving
      ? Math.max((high - low) / 2, show.spreadToDisplay("height", ROOM_M, inUnits))
      : (high - low || 1) * 0.1;
    const far = (/** @type {number} */ x) =>
      show.quantity("distance", show.fromDisplay("distance", x, inUnits), inUnits, { digits: 2 });
    const says = (/** @type {number} */ x) =>
      say("course.heightAt", {
        distance: far(x),
        height: show.quantity("height", show.fromDisplay("height", valueAt(whole, x), inUnits), inUnits, { digits: 0 }),
      });
    const handle = (/** @type {number} */ x, /** @type {readonly [number, number]} */ rangeX) => ({
      x,
      y: valueAt(whole, x),
      spoken: says(x),
      step: { x: STEP },
      rangeX,
    });
    const least = distance(least_m);
    const ends = () => ({
      from_m: handle(from, [0, Math.max(0, to - least)]),
      to_m: handle(to, [Math.min(last, from + least), last]),
    });
    const step = { y: show.stepOf("height", step_m, inUnits) };
    const pointsOf = () =>
      Object.fromEntries(
        whole.xs.map((x, at) => [
          `point_${at}`,
          {
            x,
            y: whole.ys[at],
            step,
            name: say("course.pointName", { distance: far(x) }),
            spoken: show.quantity("height", points[at].elevation_m, inUnits, { digits: 0 }),
          },
        ]),
      );
    const heights = { points: kept.ys.map((y) => ({ elevation_m: show.fromDisplay("height", y, inUnits) })) };
    const climbs = (/** @type {number} */ m) => show.quantity("height", m, inUnits, { digits: 0 });
    const about = say("course.chartReading", {
      from: far(from),
      to: far(to),
      climb: climbs(risesM(heights)),
      descent: climbs(fallsM(heights)),
    });
    chart.update({
      desc: about,
      x: { name: say("course.alongAxis", { unit: show.unitOf("distance", inUnits).symbol }), domain: [0, last] },
      y: {
        name: say("course.heightAxis", { unit: show.unitOf("height", inUnits).symbol }),
        domain: [low - room, high + room],
      },
      series: [whole],
      shades: [
        { xs: kept.xs, low: kept.xs.map(() => low - room), high: kept.ys, meaning: /** @type {const} */ ("ground") },
      ],
      handles: moving ? pointsOf() : ends(),
      read: (x) => ({ spoken: says(x), words: says(x), points: [{ y: valueAt(whole, x), meaning: "ground" }] }),
      reading: about,
    });
  }

  return { element: chart.element, update };
}

/** A curve between two of its x. @param {{ name: string, xs: number[], ys: number[] }} curve @param {number} from @param {number} to */
function within(curve, from, to) {
  const inside = curve.xs.flatMap((x, at) => (x > from && x < to ? [at] : []));
  return {
    xs: [from, ...inside.map((at) => curve.xs[at]), to],
    ys: [valueAt(curve, from), ...inside.map((at) => curve.ys[at]), valueAt(curve, to)],
  };
}
