// @ts-check
/** Second: where the watts go, and how little the next ones buy. */

import { areaChart } from "../parts/area-chart.js";
import { strong } from "../parts/html.js";
import { partsThatAddUp } from "../questions/shared/rounding.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { atPower, atSpeed, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** From the bottom up. @type {readonly { key: "air"|"rolling"|"bearings"|"drivetrain", meaning: "drag"|"ground", shade: 0|1|2 }[]} */
const PARTS = [
  { key: "air", meaning: "drag", shade: 1 },
  { key: "rolling", meaning: "ground", shade: 1 },
  { key: "bearings", meaning: "ground", shade: 0 },
  { key: "drivetrain", meaning: "ground", shade: 1 },
];
/** The step that the next watts are told for. */
const NEXT_W = 10;
/** The drag area of someone sitting up. */
const SITTING_UP_M2 = 0.35;
/** How far the axis reaches beyond the rider's fastest. */
const BEYOND = 1.08;

/** @param {Tools} tools @returns {Step} */
export function whereWattsGo(tools) {
  const { store } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const speedText = (/** @type {number} */ v) => show.quantity("speed", v, store.get().units, { digits: 1 });
  const area = (/** @type {number} */ m2) => show.quantity("area", m2, store.get().units);
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const power = numberOf(tools, "power_w", { label: words("wattsPower"), meaning: "power" });
  const drag = numberOf(tools, "cda_m2", { label: words("wattsDrag"), meaning: "drag" });
  let cda_m2 = BEGAN.cda_m2;
  const chart = areaChart({
    title: words("wattsChart"),
    x: { name: words("speedAxis", unit("speed")), format: (v) => show.number(v) },
    y: { name: words("pedalsAxis", unit("power")), meaning: "power", format: (w) => show.number(w), read: watts },
    handles: {
      you: {
        label: words("wattsHandle"),
        directions: "x",
        onMove: ({ x }, phase) =>
          moveTo(
            tools,
            [["power_w", Math.round(atSpeed(cda_m2, show.fromDisplay("speed", x, store.get().units)).power_w.value)]],
            phase,
          ),
      },
    },
    reader: words("wattsRead"),
  });
  const frame = stepFrame({
    title: words("wattsTitle"),
    words: words.parts("wattsAsk", { power, drag }),
    toTry: words("wattsTry", { area: area(SITTING_UP_M2) }),
    chart: chart.element,
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      const { units } = state;
      ({ cda_m2 } = numbers);
      const answer = atPower(numbers);
      const [air, tyres, bearings, drivetrain] = partsThatAddUp(PARTS.map(({ key }) => answer.breakdown_w[key]));
      const began = atPower(BEGAN);
      const [speed, power] = [speedText(answer.speed_m_s.value), watts(numbers.power_w)];
      frame.update(
        state,
        words.parts("wattsSays", {
          power: strong(power, "power"),
          speed,
          air,
          tyres,
          bearings,
          drivetrain,
          share: strong(show.percent(answer.aero_share), "drag"),
          ten: watts(NEXT_W),
          gain: show.quantity("speed", answer.next_10_w_m_s.value, units, { digits: 2 }),
        }),
      );
      frame.since(numbers, ["power_w", "cda_m2"], () =>
        words("wattsSince", {
          began: speedText(began.speed_m_s.value),
          beganWatts: watts(BEGAN.power_w),
          beganArea: area(BEGAN.cda_m2),
          speed,
        }),
      );

      const fastest = atPower({ ...numbers, power_w: RANGES.power_w[1] }).speed_m_s.value;
      const { columns } = atSpeed(cda_m2, fastest);
      const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
      const within = Array.from(columns.speed_m_s.keys()).filter((i) => columns.speed_m_s[i] <= fastest * BEYOND);
      const total = Math.max(...within.map((i) => PARTS.reduce((sum, { key }) => sum + columns[`${key}_w`][i], 0)));
      const slowest = atPower({ ...numbers, power_w: RANGES.power_w[0] }).speed_m_s.value;
      chart.update({
        desc: words("wattsDescription", { speed, power }),
        x: {
          name: words("speedAxis", unit("speed")),
          domain: [0, shown(fastest * BEYOND)],
          read: (v) => speedText(show.fromDisplay("speed", v, units)),
        },
        y: { domain: [0, total] },
        xs: within.map((i) => shown(columns.speed_m_s[i])),
        parts: PARTS.map(({ key, meaning, shade }) => ({
          name: words(key),
          meaning,
          shade,
          ys: within.map((i) => columns[`${key}_w`][i]),
        })),
        whole: words("inAll"),
        handles: {
          you: {
            x: shown(answer.speed_m_s.value),
            y: numbers.power_w,
            label: speed,
            strong: power,
            spoken: words("wattsSpoken", { power, speed }),
            step: { x: 0.1 },
            rangeX: [shown(slowest), shown(fastest)],
          },
        },
        reading: words.parts("wattsReading", { speed, power: strong(power, "power"), air: strong(watts(air), "drag") }),
      });
    },
  };
}
