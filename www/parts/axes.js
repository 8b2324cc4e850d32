// @ts-check
/** Scales, ticks and the two axes of a chart: no frame, no grid, the name and unit at the axis's end. */

import { scaleLinear, scaleLog } from "d3-scale";
import { say, set } from "./html.js";
import { pool, px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Meaning } from "./html.js" */

/**
 * @typedef {object} Axis
 * @property {string} name With its unit: "drag area CdA, m²".
 * @property {Meaning | null} [meaning]
 * @property {"linear" | "log" | "clock"} [kind] A clock axis is linear, in seconds, with ticks at whole minutes and the like.
 * @property {(value: number) => string} format Of a tick.
 * @property {(value: number) => string} [read] Of any value, with its unit, in the reading line; `format` when left out.
 * @property {readonly [number, number]} [domain] May be given later, with the data. Largest first turns the axis round.
 * @property {readonly number[]} [ticks] Fixed ticks; those outside the domain or without room are left out.
 */

/** @typedef {import("d3-scale").ScaleLinear<number, number> | import("d3-scale").ScaleLogarithmic<number, number>} Scale */
/** @typedef {{ left: number, right: number, top: number, bottom: number, width: number, height: number, small: boolean }} Frame
 *  The plot's edges inside a picture of that width and height. */

const MOST_TICKS = 7;
const CLOCK_STEPS_S = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10800, 21600, 43200, 86400];
/** Below this width a chart uses its smaller type and tighter margins. */
const SMALL_PX = 420;

/**
 * @param {Axis} axis
 * @param {readonly [number, number]} domain
 * @param {readonly [number, number]} range
 * @returns {Scale}
 */
export function makeScale(axis, domain, range) {
  const scale = axis.kind === "log" ? scaleLog() : scaleLinear();
  return scale.domain([...domain]).range([...range]);
}

/**
 * At most `most` round values within the domain.
 * @param {Axis} axis
 * @param {readonly [number, number]} domain
 * @param {number} most
 * @returns {number[]}
 */
export function ticksOf(axis, domain, most) {
  const [low, high] = domain[0] < domain[1] ? domain : [domain[1], domain[0]];
  const inside = (/** @type {number} */ value) => value >= low && value <= high;
  if (!(high > low)) return [];
  if (axis.ticks) return axis.ticks.filter(inside);
  if (axis.kind === "clock") return clockTicks(low, high, most);
  if (axis.kind === "log") return logTicks(low, high, most);
  for (let count = most; count > 1; count -= 1) {
    const ticks = scaleLinear().domain([low, high]).ticks(count);
    if (ticks.length <= most) return ticks;
  }
  return [low, high];
}

/**
 * @param {number} low_s
 * @param {number} high_s
 * @param {number} most
 */
function clockTicks(low_s, high_s, most) {
  const step =
    CLOCK_STEPS_S.find((one) => Math.floor(high_s / one) - Math.ceil(low_s / one) + 1 <= most) ?? high_s - low_s;
  const ticks = [];
  for (let n = Math.ceil(low_s / step); n * step <= high_s; n += 1) ticks.push(n * step);
  return ticks;
}

/**
 * @param {number} low
 * @param {number} high
 * @param {number} most
 */
function logTicks(low, high, most) {
  for (const digits of [[1, 2, 5], [1, 3], [1]]) {
    const ticks = [];
    for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power += 1) {
      for (const digit of digits) {
        const value = Number(`${digit}e${power}`);
        if (value >= low && value <= high) ticks.push(value);
      }
    }
    if (ticks.length <= most && ticks.length > 1) return ticks;
  }
  return scaleLinear().domain([low, high]).ticks(Math.min(4, most));
}

/**
 * The two axes and their scales for a picture of the given size.
 * @param {SVGElement} parent
 */
export function drawAxes(parent) {
  const strokes = svg("path", { class: "axis-line" });
  const tickLayer = svg("g", { "aria-hidden": "true" });
  const xName = svg("text");
  const yName = svg("text");
  const noteText = svg("text", { class: "note" });
  parent.append(strokes, tickLayer, yName, noteText, xName);
  const tickTexts = pool(tickLayer, "text");

  /**
   * @param {object} options
   * @param {number} options.width
   * @param {number} options.height
   * @param {Axis} options.x
   * @param {Axis} options.y
   * @param {readonly [number, number]} options.xDomain
   * @param {readonly [number, number]} options.yDomain
   * @param {string} [options.note] A few words at the top right, left out when there is no room.
   * @param {number} [options.least] The least left margin, to line up one chart under another.
   * @returns {{ frame: Frame, xScale: Scale, yScale: Scale }}
   */
  return function draw({ width, height, x, y, xDomain, yDomain, note = "", least = 0 }) {
    const small = width < SMALL_PX;
    const size = small ? 13 : 14;
    const top = small ? 32 : 36;
    const bottom = height - 48;
    const yScale = makeScale(y, yDomain, [bottom, top]);
    const yTicks = spaced(
      ticksOf(y, yDomain, Math.min(MOST_TICKS, Math.floor((bottom - top) / 36))),
      yScale,
      () => size + 6,
    );
    const widest = Math.max(0, ...yTicks.map((tick) => textWidth(y.format(tick), size)));
    const left = Math.ceil(Math.max(least, widest + 13, small ? 30 : 36));
    const xTicksWanted = ticksOf(x, xDomain, Math.min(MOST_TICKS, Math.max(2, Math.floor((width - left) / 48))));
    const lastTick = xTicksWanted.length ? textWidth(x.format(xTicksWanted[xTicksWanted.length - 1]), size) / 2 : 0;
    const right = Math.floor(width - Math.max(8, Math.min(28, lastTick)));
    const xScale = makeScale(x, xDomain, [left, right]);
    const xTicks = spaced(xTicksWanted, xScale, (tick) => textWidth(x.format(tick), size) + 12);

    set(strokes, {
      d:
        `M${left} ${top}V${bottom}H${right}` +
        xTicks.map((tick) => `M${px(xScale(tick))} ${bottom}v5`).join("") +
        yTicks.map((tick) => `M${left} ${px(yScale(tick))}h-5`).join(""),
    });
    tickTexts(
      [
        ...xTicks.map((tick) => ({ text: x.format(tick), x: px(xScale(tick)), y: px(bottom + 21), anchor: "middle" })),
        ...yTicks.map((tick) => ({
          text: y.format(tick),
          x: px(left - 9),
          y: px(yScale(tick) + size * 0.33),
          anchor: "end",
        })),
      ],
      (element, tick) => {
        set(element, { class: "tick", x: tick.x, y: tick.y, "text-anchor": tick.anchor });
        say(element, tick.text);
      },
    );
    name(xName, x, { x: right, y: height - 5, "text-anchor": "end" });
    name(yName, y, { x: 0, y: 15, "text-anchor": "start" });
    const hasRoom = textWidth(y.name, size) + textWidth(note, 13) + 20 < right;
    set(noteText, { x: right, y: 15, "text-anchor": "end" });
    say(noteText, hasRoom ? note : "");
    return { frame: { left, right, top, bottom, width, height, small }, xScale, yScale };
  };
}

/**
 * @param {SVGTextElement} element
 * @param {Axis} axis
 * @param {import("./html.js").Attributes} place
 */
function name(element, axis, place) {
  set(element, { class: axis.meaning ? `axis-name ${axis.meaning}` : "axis-name", ...place });
  say(element, axis.name);
}

/**
 * Leaves out ticks that would run into the one before.
 * @param {readonly number[]} ticks
 * @param {Scale} scale
 * @param {(tick: number) => number} room_px
 */
function spaced(ticks, scale, room_px) {
  /** @type {number[]} */
  const kept = [];
  for (const tick of ticks) {
    const last = kept[kept.length - 1];
    if (last === undefined || Math.abs(scale(tick) - scale(last)) >= (room_px(tick) + room_px(last)) / 2)
      kept.push(tick);
    if (kept.length === MOST_TICKS) break;
  }
  return kept;
}
