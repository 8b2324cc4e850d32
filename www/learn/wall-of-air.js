// @ts-check
/** First: what the air takes grows with the cube of speed. */

import { strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { atSpeed, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** The core's curve for this speed reaches a little beyond the axis. */
const CURVE_M_S = 13.5;
const AXIS_M_S = 18;
/** Small enough that the reader finds the handle's step in either unit. */
const STEP_SHOWN = 0.5;

/** @param {Tools} tools @returns {Step} */
export function wallOfAir(tools) {
  const { store } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const speedText = (/** @type {number} */ v) => show.quantity("speed", v, store.get().units, { digits: 1 });
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const speed = numberOf(tools, "speed_m_s", { label: words("wallSpeed") });
  const chart = lineChart({
    title: words("wallChart"),
    x: { name: words("speedAxis", unit("speed")), format: (v) => show.number(v) },
    y: { name: words("wallAxis", unit("power")), meaning: "drag", format: (w) => show.number(w), read: watts },
    handles: {
      you: {
        label: words("wallHandle"),
        directions: "x",
        onMove: ({ x }, phase) =>
          moveTo(tools, [["speed_m_s", show.fromDisplay("speed", x, store.get().units)]], phase),
      },
    },
    reader: words("wallRead"),
  });
  const frame = stepFrame({
    title: words("wallTitle"),
    words: words.parts("wallAsk", { speed }),
    toTry: words("wallTry"),
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
      const [speed, air] = [speedText(speed_m_s), watts(air_w)];
      frame.update(
        state,
        words.parts("wallSays", {
          speed,
          watts: strong(air, "drag"),
          twice: strong(watts(twice_w), "drag"),
          times: show.number(twice_w / air_w, { digits: 1, atLeast: 0 }),
          tenth: show.percent(tenth_w / air_w - 1),
        }),
      );
      frame.since(numbers, ["speed_m_s"], () =>
        words("wallSince", {
          began: speedText(BEGAN.speed_m_s),
          speed,
          beganWatts: watts(atSpeed(cda_m2, BEGAN.speed_m_s).breakdown_w.air),
          watts: air,
        }),
      );
      const { columns } = atSpeed(cda_m2, CURVE_M_S);
      const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
      const within = Array.from(columns.speed_m_s.keys()).filter((i) => columns.speed_m_s[i] <= AXIS_M_S);
      const last = within[within.length - 1];
      chart.update({
        desc: words("wallDescription", { speed, watts: air }),
        x: {
          name: words("speedAxis", unit("speed")),
          domain: [0, shown(AXIS_M_S)],
          read: (v) => speedText(show.fromDisplay("speed", v, units)),
        },
        y: { domain: [0, columns.air_w[last] * 1.08] },
        series: [
          {
            name: words("wallSeries"),
            xs: within.map((i) => shown(columns.speed_m_s[i])),
            ys: within.map((i) => columns.air_w[i]),
            meaning: "drag",
          },
        ],
        handles: {
          you: {
            x: shown(speed_m_s),
            y: air_w,
            label: speed,
            strong: air,
            spoken: words("wallSpoken", { speed, watts: air }),
            step: { x: STEP_SHOWN },
            rangeX: /** @type {[number, number]} */ (RANGES.speed_m_s.map(shown)),
          },
        },
        reading: words.parts("wallReading", { speed, watts: strong(air, "drag") }),
      });
    },
  };
}
