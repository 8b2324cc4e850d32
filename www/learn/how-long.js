// @ts-check
/** Third: the power–duration curve. Ten percent more, but for how long? */

import { html, strong } from "../parts/html.js";
import { lineChart, valueAt } from "../parts/line-chart.js";
import { bestEfforts, BEGAN, bothChanges, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { FinishTimeAnswer } from "../types/core.d.ts" */
/** @import { MovePhase } from "../parts/handle.js" */
/** @import { Step } from "./step.js" */

/** Four minutes to five hours: where the curve of the core's distances begins, and as long as anyone races alone. */
const AXIS_S = /** @type {const} */ ([240, 18000]);
const TICKS_S = [300, 600, 1200, 1800, 3600, 7200, 14400];

/** @param {Tools} tools @returns {Step} */
export function howLong(tools) {
  const { store, units: show } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const power = numberOf(tools, "power_w", { label: "Power to hold", meaning: "power" });
  const more = numberOf(tools, "power_change", { label: "More power by", meaning: "power" });
  /** @type {FinishTimeAnswer | null} */
  let curve = null;
  /** The point as it was last drawn. */
  let drawn = { time_s: 0, power_w: 0 };
  const chart = lineChart({
    title: "Power the rider can hold for every length of time",
    x: { name: "time held", kind: "log", format: clock, read: show.time, ticks: TICKS_S, domain: AXIS_S },
    y: { name: "power, W", meaning: "power", format: (w) => show.number(w), read: watts },
    handles: { you: { label: "Time held: left and right change it, and the power with it", directions: "x", meaning: "power", onMove: move } },
    reader: "Read the power for a length of time",
  });
  /** A drag follows the curve; an arrow key is a watt, wherever on the curve. @param {{ x: number }} point @param {MovePhase} phase */
  function move({ x }, phase) {
    if (!curve) return;
    const later = x - drawn.time_s;
    const power_w = phase === "step"
      ? drawn.power_w - Math.sign(later) * Math.max(1, Math.round(Math.abs(later)))
      : Math.round(valueAt({ name: "", xs: curve.columns.time_s, ys: curve.columns.power_w }, x));
    moveTo(tools, [["power_w", power_w]], phase);
  }

  const cp = tools.field("scenario.power.cp_w")?.default ?? 0;
  const wPrime = tools.field("scenario.power.w_prime_j")?.default ?? 0;
  const frame = stepFrame({
    title: "3. Ten percent more, for how long?",
    words: ["The rider can hold ", power, " for a while. And ", more, " more?"],
    toTry: "Move the ring along the curve. Where it is steep, a little more power costs little time; where it is flat, it costs most of it. Each length along the foot of the chart is so many times as long, not so many minutes longer.",
    chart: chart.element,
    notes: [
      html("p", { class: "takes" }, "The curve is a typical one, not yours: ", strong(`${watts(cp)} of critical power`), " is from memory, ", strong(`${show.quantity("work", wPrime, store.get().units)} of W′`),
        " stands near the mean of published tests. Beyond half an hour it also falls as one trained group’s did. Fresh, cool and fed riders only."),
      html("p", { class: "caution" }, "Finding your own curve takes maximal efforts. They are for healthy, regularly active riders; if in doubt ask a doctor first, and test away from traffic."),
    ],
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      curve = bestEfforts(numbers);
      const { takes, more_power_w } = bothChanges(numbers);
      const { power_held_s: held_s, more_power_held_s: more_s } = takes;
      drawn = { time_s: held_s ?? 0, power_w: numbers.power_w };
      const percent = show.percent(numbers.power_change, 1).replace(".0", "");
      const time = (/** @type {number | null} */ s, /** @type {number} */ w) => (s === null ? (w > takes.sustainable_w ? "not at all" : "for longer than anyone races") : ["for ", strong(show.time(s))]);
      const left = held_s !== null && more_s !== null ? ` That is ${show.percent(more_s / held_s)} of the time.` : "";
      frame.update(state, ["This rider’s curve gives ", strong(watts(numbers.power_w), "power"), " ", ...[time(held_s, numbers.power_w)].flat(), ` and ${percent} more, `, strong(watts(more_power_w), "power"), ", ", ...[time(more_s, more_power_w)].flat(), `.${left} `,
        "So “ten percent more power” is no switch: for the same distance it asks for another curve, and that asks for training. Published: four weeks of intervals made highly trained riders’ 40-km trials 4.4 to 5.8\u202f% better."]);
      const began = bothChanges(BEGAN).takes.more_power_held_s;
      frame.since(numbers, ["power_w", "power_change"], () => [`The rider began with ${watts(BEGAN.power_w * (1 + BEGAN.power_change))}${began === null ? "" : ` for ${show.time(began)}`}; yours has ${watts(more_power_w)}, `, ...[time(more_s, more_power_w)].flat(), "."]);

      const { time_s, power_w } = curve.columns;
      const on = (/** @type {number | null} */ s) => s !== null && s >= AXIS_S[0] && s <= AXIS_S[1];
      const within = Array.from(time_s.keys()).filter((i) => on(time_s[i]));
      const ys = within.map((i) => power_w[i]);
      chart.update({
        desc: `The power that can be held falls as the effort gets longer, steeply at first. ${watts(numbers.power_w)} can be held ${held_s === null ? "beyond this chart" : `for ${show.time(held_s)}`}.`,
        y: { domain: [Math.max(0, Math.min(...ys) - 15), Math.max(...ys) + 15] },
        series: [{ name: "the rider can hold", xs: within.map((i) => time_s[i]), ys, meaning: "power" }],
        points: on(more_s) ? [{ x: Number(more_s), y: more_power_w, label: `${percent} more, ${show.time(Number(more_s))}`, meaning: "power", shape: "ring" }] : [],
        handles: on(held_s) ? { you: { x: Number(held_s), y: numbers.power_w, label: watts(numbers.power_w), strong: show.time(Number(held_s)), spoken: `${watts(numbers.power_w)} for ${show.time(Number(held_s))}`, step: { x: 1 }, rangeX: ends(time_s, power_w) } } : {},
        reading: held_s === null ? [] : [strong(watts(numbers.power_w), "power"), " for ", strong(show.time(held_s)), "."],
      });
    },
  };
}

/** Times whose power the story's number can take. @param {Float64Array} time_s @param {Float64Array} power_w @returns {[number, number]} */
function ends(time_s, power_w) {
  const allowed = Array.from(time_s).filter((s, i) => s >= AXIS_S[0] && s <= AXIS_S[1] && power_w[i] >= RANGES.power_w[0] && power_w[i] <= RANGES.power_w[1]);
  return [allowed[0], allowed[allowed.length - 1]];
}

/** "20 min", "1 h" along the axis. @param {number} seconds */
function clock(seconds) {
  return seconds < 3600 ? `${Math.round(seconds / 60)} min` : `${seconds / 3600} h`;
}
