// @ts-check
/** Sixth: on a slope, and into the wind. */

import { html, strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import { atPower, BEGAN, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

/** Slopes along the curve, closer together where it bends. */
const GRADES = [-0.02, -0.015, -0.01, -0.005, 0, 0.005, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1];

/** @param {Tools} tools @returns {Step} */
export function uphillAndWind(tools) {
  const { store, units: show } = tools;
  const slope = (/** @type {number} */ grade) => show.quantity("grade", grade, store.get().units);
  const worth = (/** @type {number} */ e) => `${show.number(Math.abs(e), { digits: 2 })}\u202f%`;
  const grade = numberOf(tools, "grade", { label: "Slope of the road", meaning: "ground", kind: "grade", step: 0.5, signed: true });
  const wind = numberOf(tools, "headwind_m_s", { label: "Wind against the rider", kind: "wind", step: 1 });
  const chart = lineChart({
    title: "What one percent of power or of drag area is worth on every slope",
    x: { name: "slope, %", meaning: "ground", format: (g) => show.number(g * 100), read: slope, domain: /** @type {[number, number]} */ ([...RANGES.grade]) },
    y: { name: "what one percent is worth, % of speed", format: (e) => show.number(e, { digits: 1 }), read: worth },
    handles: { you: { label: "The slope: left and right change it", directions: "x", onMove: ({ x }, phase) => moveTo(tools, [["grade", Number(x.toFixed(3))]], phase) } },
    reader: "Read what one percent is worth on a slope",
  });
  const frame = stepFrame({
    title: "6. Uphill and into the wind",
    words: ["On a slope of ", grade, " into ", wind, " of wind, what is one percent of either worth?"],
    toTry: "Go up a climb of 5\u202f%, then down a gentle slope. Then come back to the flat and let the wind blow.",
    chart: chart.element,
    notes: [
      html("p", { class: "caution" }, "Downhill the sums favour a low shape; the road may not. Descents, bends, traffic and gusts set the position and the speed there, not a chart."),
    ],
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      const { headwind_m_s } = numbers;
      const here = atPower(numbers, numbers.grade, headwind_m_s);
      const { power, cda } = here.elasticity;
      const began = atPower(BEGAN, BEGAN.grade, BEGAN.headwind_m_s).elasticity;
      const still = atPower(numbers, numbers.grade).elasticity;
      const speed = show.quantity("speed", here.speed_m_s.value, state.units, { digits: 1 });
      const winner = -cda > power
        ? "Less drag is worth more: the slope gives back what the tyres take, and air is all that is left to pay for."
        : -cda > 0.75 * power ? "Most of the load is air, so the two are near each other."
          : "A good part of the load here is height or tyres, and a lower shape spares none of that: power is worth more.";
      frame.update(state, [`At ${speed}, one percent more power is `, strong(`${worth(power)} more speed`, "power"), ", one percent less drag area ", strong(worth(cda), "drag"), `: ${show.number(-cda / power, { digits: 2 })} as much. `, winner,
        ...(headwind_m_s > 0 ? [` In still air it would be ${worth(still.power)} and ${worth(still.cda)}.`] : []),
        " Drag area counts most where the road is flat or falls, power most where it rises."]);
      frame.since(numbers, ["grade", "headwind_m_s", "power_w", "cda_m2"], () => [`On the flat in still air it was ${worth(began.power)} for power and ${worth(began.cda)} for drag; here it is ${worth(power)} and ${worth(cda)}.`]);

      const curve = GRADES.map((slope) => atPower(numbers, slope, headwind_m_s).elasticity);
      chart.update({
        desc: `One percent more power is worth more the steeper the road; one percent less drag is worth less. At ${slope(numbers.grade)} they are ${worth(power)} and ${worth(cda)}.`,
        y: { domain: [0, 1] },
        series: [
          { name: "more power", xs: GRADES, ys: curve.map((one) => one.power), meaning: "power", label: "1\u202f% more power" },
          { name: "less drag", xs: GRADES, ys: curve.map((one) => -one.cda), meaning: "drag", label: "1\u202f% less drag" },
        ],
        points: [{ x: numbers.grade, y: -cda, meaning: "drag" }],
        handles: { you: { x: numbers.grade, y: power, label: slope(numbers.grade), spoken: `${slope(numbers.grade)}: power ${worth(power)}, drag ${worth(cda)}`, step: { x: 0.005 }, rangeX: RANGES.grade } },
        reading: ["At ", strong(slope(numbers.grade), "ground"), ": ", strong(worth(power), "power"), " for power, ", strong(worth(cda), "drag"), " for drag."],
      });
    },
  };
}
