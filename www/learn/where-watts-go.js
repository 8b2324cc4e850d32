// @ts-check
/** Second: where the watts go, and how little the next ones buy. */

import { areaChart } from "../parts/area-chart.js";
import { strong } from "../parts/html.js";
import { partsThatAddUp } from "../questions/shared/rounding.js";
import { atPower, atSpeed, BEGAN, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

/** From the bottom up. @type {readonly { key: "air"|"rolling"|"bearings"|"drivetrain", name: string, meaning: "drag"|"ground", shade: 0|1|2 }[]} */
const PARTS = [
  { key: "air", name: "air", meaning: "drag", shade: 1 },
  { key: "rolling", name: "tyres", meaning: "ground", shade: 1 },
  { key: "bearings", name: "bearings", meaning: "ground", shade: 0 },
  { key: "drivetrain", name: "drivetrain", meaning: "ground", shade: 1 },
];
/** How far the axis reaches beyond the rider's fastest. */
const BEYOND = 1.08;

/** @param {Tools} tools @returns {Step} */
export function whereWattsGo(tools) {
  const { store, units: show } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const speedText = (/** @type {number} */ v) => show.quantity("speed", v, store.get().units, { digits: 1 });
  const power = numberOf(tools, "power_w", { label: "Power at the pedals", meaning: "power" });
  const drag = numberOf(tools, "cda_m2", { label: "Drag area, CdA", meaning: "drag" });
  let cda_m2 = BEGAN.cda_m2;
  const chart = areaChart({
    title: "Where the rider’s watts go at every speed",
    x: { name: "speed", format: (v) => show.number(v) },
    y: { name: "power at the pedals, W", meaning: "power", format: (w) => show.number(w), read: watts },
    handles: { you: { label: "The rider: left and right change the watts, and the speed with them", directions: "x", onMove: ({ x }, phase) => moveTo(tools, [["power_w", Math.round(atSpeed(cda_m2, show.fromDisplay("speed", x, store.get().units)).power_w.value)]], phase) } },
    reader: "Read where the watts go at a speed",
  });
  const frame = stepFrame({
    title: "2. Where the watts go",
    words: ["Holding ", power, ", with a drag area of ", drag, ": how fast is that, and where do the watts go?"],
    toTry: "Give the rider more watts and see which layer takes them. Then give the drag area of someone sitting up, 0.350\u00a0m².",
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
      const unit = show.unitOf("speed", units).symbol;
      const ten = show.number(show.spreadToDisplay("speed", answer.next_10_w_m_s.value, units), { digits: 2 });
      frame.update(state, [strong(watts(numbers.power_w), "power"), " buys ", strong(speedText(answer.speed_m_s.value)), `. Of those watts ${air} go into the air, ${tyres} into the tyres, ${bearings} into bearings and ${drivetrain} into the drivetrain. `,
        "Air is ", strong(show.percent(answer.aero_share), "drag"), ` of the load on the road, and more of it the faster the rider goes: the next 10\u00a0W buy only ${ten}\u00a0${unit}. `,
        "Less drag area makes the thick layer thinner. More power climbs up it."]);
      frame.since(numbers, ["power_w", "cda_m2"], () => [`The rider went ${speedText(began.speed_m_s.value)}, with ${watts(BEGAN.power_w)} and ${show.quantity("area", BEGAN.cda_m2, units)}; yours goes ${speedText(answer.speed_m_s.value)}.`]);

      const fastest = atPower({ ...numbers, power_w: RANGES.power_w[1] }).speed_m_s.value;
      const { columns } = atSpeed(cda_m2, fastest);
      const shown = (/** @type {number} */ v) => show.toDisplay("speed", v, units);
      const within = Array.from(columns.speed_m_s.keys()).filter((i) => columns.speed_m_s[i] <= fastest * BEYOND);
      const total = Math.max(...within.map((i) => PARTS.reduce((sum, { key }) => sum + columns[`${key}_w`][i], 0)));
      const slowest = atPower({ ...numbers, power_w: RANGES.power_w[0] }).speed_m_s.value;
      const speed = speedText(answer.speed_m_s.value);
      chart.update({
        desc: `Power at the pedals by speed, stacked: air on the bottom, then tyres, bearings and drivetrain. At ${speed} it is ${watts(numbers.power_w)}.`,
        x: { name: `speed, ${unit}`, domain: [0, shown(fastest * BEYOND)], read: (v) => `${show.number(v, { digits: 1 })}\u00a0${unit}` },
        y: { domain: [0, total] },
        xs: within.map((i) => shown(columns.speed_m_s[i])),
        parts: PARTS.map(({ key, name, meaning, shade }) => ({ name, meaning, shade, ys: within.map((i) => columns[`${key}_w`][i]) })),
        whole: "in all",
        handles: { you: { x: shown(answer.speed_m_s.value), y: numbers.power_w, label: speed, strong: watts(numbers.power_w), spoken: `${watts(numbers.power_w)} buys ${speed}`, step: { x: 0.1 }, rangeX: [shown(slowest), shown(fastest)] } },
        reading: ["At ", strong(speed), ": ", strong(watts(numbers.power_w), "power"), " in all, ", strong(`${air}\u00a0W`, "drag"), " into the air."],
      });
    },
  };
}
