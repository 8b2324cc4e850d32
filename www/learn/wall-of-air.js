// @ts-check
/** First: what the air takes grows with the cube of speed. */

import { strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import { atSpeed, BEGAN, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

/** The core's curve for this speed reaches a little beyond the axis. */
const CURVE_M_S = 13.5;
const AXIS_M_S = 18;
/** Small enough that the reader finds the handle's step in either unit. */
const STEP_SHOWN = 0.5;

/** @param {Tools} tools @returns {Step} */
export function wallOfAir(tools) {
  const { store, units: show } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const speedText = (/** @type {number} */ v) => show.quantity("speed", v, store.get().units, { digits: 1 });
  const speed = numberOf(tools, "speed_m_s", { label: "Speed in still air" });
  const chart = lineChart({
    title: "Power that goes into the air at every speed",
    x: { name: "speed", format: (v) => show.number(v) },
    y: { name: "power into the air, W", meaning: "drag", format: (w) => show.number(w), read: watts },
    handles: { you: { label: "The rider’s speed: left and right change it", directions: "x", onMove: ({ x }, phase) => moveTo(tools, [["speed_m_s", show.fromDisplay("speed", x, store.get().units)]], phase) } },
    reader: "Read the power into the air at a speed",
  });
  const frame = stepFrame({
    title: "1. The wall of air",
    words: ["A rider goes along a flat road at ", speed, ", in still air. What does it take to push that air aside?"],
    toTry: "Put the ring at a stroll, then at racing speed, or type a speed above: watch how late the curve turns, and how steeply.",
    chart: chart.element,
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      const { cda_m2, speed_m_s } = numbers;
      const { units } = state;
      const air_w = atSpeed(cda_m2, speed_m_s).breakdown_w.air;
      const twice_w = atSpeed(cda_m2, 2 * speed_m_s).breakdown_w.air;
      const tenth_w = atSpeed(cda_m2, 1.1 * speed_m_s).breakdown_w.air;
      frame.update(state, ["At ", strong(speedText(speed_m_s)), " the air takes ", strong(watts(air_w), "drag"), ". At twice that speed it would take ", strong(watts(twice_w), "drag"),
        `, ${show.number(twice_w / air_w, { digits: 1, atLeast: 0 })} times as much; and just a tenth more speed takes ${show.number(100 * (tenth_w / air_w - 1), { digits: 0 })}\u202f% more. `,
        "The push of the air grows with the square of speed, and you meet it that much faster as well: so power grows with the cube."]);
      frame.since(numbers, ["speed_m_s"], () => [`You went from ${speedText(BEGAN.speed_m_s)} to ${speedText(speed_m_s)}: what the air takes went from ${watts(atSpeed(cda_m2, BEGAN.speed_m_s).breakdown_w.air)} to ${watts(air_w)}.`]);
      const { columns } = atSpeed(cda_m2, CURVE_M_S);
      const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
      const unit = show.unitOf("speed", units).symbol;
      const within = Array.from(columns.speed_m_s.keys()).filter((i) => columns.speed_m_s[i] <= AXIS_M_S);
      const last = within[within.length - 1];
      chart.update({
        desc: `The power that goes into the air bends upwards ever more steeply. At ${speedText(speed_m_s)} it is ${watts(air_w)}.`,
        x: { name: `speed, ${unit}`, domain: [0, shown(AXIS_M_S)], read: (v) => `${show.number(v, { digits: 1 })}\u00a0${unit}` },
        y: { domain: [0, columns.air_w[last] * 1.08] },
        series: [{ name: "the air takes", xs: within.map((i) => shown(columns.speed_m_s[i])), ys: within.map((i) => columns.air_w[i]), meaning: "drag" }],
        handles: { you: { x: shown(speed_m_s), y: air_w, label: speedText(speed_m_s), strong: watts(air_w), spoken: `${speedText(speed_m_s)}: the air takes ${watts(air_w)}`, step: { x: STEP_SHOWN }, rangeX: /** @type {[number, number]} */ (RANGES.speed_m_s.map(shown)) } },
        reading: ["At ", strong(speedText(speed_m_s)), " the air takes ", strong(watts(air_w), "drag"), "."],
      });
    },
  };
}
