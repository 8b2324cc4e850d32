// @ts-check
/** Sixth: on a slope, and into the wind. */

import { html, strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { atPower, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** A climb to try. */
const A_CLIMB = 0.05;
/** Slopes along the curve, closer together where it bends. */
const GRADES = [-0.02, -0.015, -0.01, -0.005, 0, 0.005, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1];

/** @param {Tools} tools @returns {Step} */
export function uphillAndWind(tools) {
  const { store } = tools;
  const slope = (/** @type {number} */ grade) => show.quantity("grade", grade, store.get().units);
  const worth = (/** @type {number} */ e) => show.percent(Math.abs(e) / 100, 2);
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const grade = numberOf(tools, "grade", {
    label: words("windSlope"),
    meaning: "ground",
    kind: "grade",
    step: 0.5,
    signed: true,
  });
  const wind = numberOf(tools, "headwind_m_s", { label: words("windAgainst"), kind: "wind", step: 1 });
  const chart = lineChart({
    title: words("windChart"),
    x: {
      name: words("slopeAxis", unit("grade")),
      meaning: "ground",
      format: (g) => show.number(g * 100),
      read: slope,
      domain: /** @type {[number, number]} */ ([...RANGES.grade]),
    },
    y: { name: words("worthAxis", unit("share")), format: (e) => show.number(e, { digits: 1 }), read: worth },
    handles: {
      you: {
        label: words("windHandle"),
        directions: "x",
        onMove: ({ x }, phase) => moveTo(tools, [["grade", Number(x.toFixed(3))]], phase),
      },
    },
    reader: words("windRead"),
  });
  const frame = stepFrame({
    title: words("windTitle"),
    words: words.parts("windAsk", { grade, wind }),
    toTry: words("windTry", { climb: slope(A_CLIMB) }),
    chart: chart.element,
    notes: [html("p", { class: "caution" }, words("windCaution"))],
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
      const worths = { power: worth(power), drag: worth(cda) };
      const winner = words(-cda > power ? "windDragWins" : -cda > 0.75 * power ? "windNear" : "windPowerWins");
      frame.update(state, [
        ...words.parts("windSays", {
          speed,
          power: strong(words("moreSpeed", { percent: worth(power) }), "power"),
          drag: strong(worth(cda), "drag"),
          ratio: show.number(-cda / power, { digits: 2 }),
        }),
        " ",
        winner,
        " ",
        ...(headwind_m_s > 0 ? [words("windStill", { power: worth(still.power), drag: worth(still.cda) }), " "] : []),
        words("windMoral"),
      ]);
      frame.since(numbers, ["grade", "headwind_m_s", "power_w", "cda_m2"], () =>
        words("windSince", { beganPower: worth(began.power), beganDrag: worth(began.cda), ...worths }),
      );

      const curve = GRADES.map((slope) => atPower(numbers, slope, headwind_m_s).elasticity);
      chart.update({
        desc: words("windDescription", { slope: slope(numbers.grade), ...worths }),
        y: { domain: [0, 1] },
        series: [
          {
            name: words("powerSeries"),
            xs: GRADES,
            ys: curve.map((one) => one.power),
            meaning: "power",
            label: words("morePower", { percent: show.percent(0.01) }),
          },
          {
            name: words("dragSeries"),
            xs: GRADES,
            ys: curve.map((one) => -one.cda),
            meaning: "drag",
            label: words("lessDrag", { percent: show.percent(0.01) }),
          },
        ],
        points: [{ x: numbers.grade, y: -cda, meaning: "drag" }],
        handles: {
          you: {
            x: numbers.grade,
            y: power,
            label: slope(numbers.grade),
            spoken: words("windSpoken", { slope: slope(numbers.grade), ...worths }),
            step: { x: 0.005 },
            rangeX: RANGES.grade,
          },
        },
        reading: words.parts("windReading", {
          slope: strong(slope(numbers.grade), "ground"),
          power: strong(worths.power, "power"),
          drag: strong(worths.drag, "drag"),
        }),
      });
    },
  };
}
