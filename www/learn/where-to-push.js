// @ts-check
/** Seventh: where on a road with a climb the effort goes. */

import { html, strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import { listOf } from "../questions/shared/list.js";
import { titleOf } from "../questions/shared/names.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { planOf, prepared, RANGES, ROAD } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { RidePlanAnswer } from "../types/core.d.ts" */
/** @import { Numbers } from "./beginning.js" */
/** @import { State } from "../state/history.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
const GRADE_STEP = 0.005;
const ROOM_ABOVE = 1.1;
/** The climbs of the curve. */
const GRADES = Array.from({ length: 13 }, (_, place) => Number((place * GRADE_STEP).toFixed(3)));

/** By how much the plan is faster than the even effort, s. @param {RidePlanAnswer} plan */
const gain_s = ({ even, simple }) => even.time_s - simple.time_s;

/** @param {Tools} tools @returns {Step} */
export function whereToPush(tools) {
  const { store } = tools;
  const slope = (/** @type {number} */ grade) => show.quantity("grade", grade, store.get().units);
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const grade = numberOf(tools, "climb_grade", { label: words("pushGrade"), meaning: "ground", kind: "grade" });
  const chart = lineChart({
    title: words("pushChart"),
    x: {
      name: words("pushAxis", unit("grade")),
      meaning: "ground",
      format: (g) => show.number(g * 100),
      read: slope,
      domain: /** @type {[number, number]} */ ([...RANGES.climb_grade]),
    },
    y: { name: words("pushGainAxis"), meaning: "power", format: (s) => show.number(s), read: show.time },
    handles: {
      climb: {
        label: words("pushHandle"),
        directions: "x",
        onMove: ({ x }, phase) =>
          moveTo(tools, [["climb_grade", Number((Math.round(x / GRADE_STEP) * GRADE_STEP).toFixed(3))]], phase),
      },
    },
    reader: words("pushRead"),
  });
  const whole = html("button", { type: "button" }, titleOf("ride-plan"));
  whole.addEventListener("click", () => tools.go("ride-plan"));
  const frame = stepFrame({
    title: words("pushTitle"),
    words: words.parts("pushAsk", { grade }),
    toTry: words("pushTry"),
    chart: chart.element,
    notes: [
      html("p", { class: "takes" }, ...words.parts("pushAssumed")),
      html("p", { class: "caution" }, words("pushCaution")),
      html("p", { class: "takes no-print" }, whole),
    ],
  });
  let newest = 0;
  // Without its first plans there is nothing to read off or to move.
  chart.element.style.visibility = "hidden";

  /** @param {State} state @param {Numbers} numbers */
  function draw(state, numbers) {
    const plan = planOf(numbers);
    const plans = GRADES.map((climb_grade) => planOf({ ...numbers, climb_grade }));
    const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
    const far = (/** @type {number} */ m) => show.quantity("distance", m, state.units, { digits: 1 });
    const differs = (/** @type {number} */ s) => show.differenceWords(Math.round(s));
    const cues = plan.simple.cues.map(({ from_m, power_w }, place) =>
      words(place ? "pushCue" : "pushCueStart", { power: watts(power_w), distance: far(from_m) }),
    );
    const faster = differs(gain_s(plan));
    const lost_s = plan.even.time_s - plan.fastest.time_s - gain_s(plan);
    const isWorthIt = Math.round(gain_s(plan)) > 0;
    frame.update(state, [
      ...words.parts("pushEven", {
        distance: far(ROAD.length_m),
        power: strong(watts(plan.even.power_w), "power"),
        time: show.time(plan.even.time_s),
      }),
      " ",
      ...(isWorthIt
        ? words.parts("pushPlan", { cues: strong(listOf(cues), "power"), faster, lost: show.time(Math.max(0, lost_s)) })
        : [words("pushFlat")]),
      " ",
      words("pushMoral"),
    ]);
    frame.since(numbers, ["climb_grade", "cda_m2"], () =>
      words("pushSince", { began: differs(gain_s(planOf(BEGAN))), now: faster }),
    );
    const name = words("pushSeries");
    const fastest_s = plans.map(({ even, fastest }) => even.time_s - fastest.time_s);
    const gains_s = plans.map(gain_s);
    chart.element.style.visibility = "";
    chart.update({
      y: { domain: [Math.min(0, ...gains_s), Math.max(...fastest_s, gain_s(plan)) * ROOM_ABOVE] },
      desc: words("pushDescription", { slope: slope(numbers.climb_grade), faster }),
      series: [
        {
          name: words("pushFastest"),
          xs: GRADES,
          ys: fastest_s,
          stroke: "dotted",
          label: words("pushFastest"),
        },
        { name, xs: GRADES, ys: gains_s, meaning: "power", label: name, labelAt: "start" },
      ],
      handles: {
        climb: {
          x: numbers.climb_grade,
          y: gain_s(plan),
          label: slope(numbers.climb_grade),
          spoken: words("pushSpoken", { slope: slope(numbers.climb_grade), faster }),
          step: { x: GRADE_STEP },
          rangeX: RANGES.climb_grade,
        },
      },
      reading: words.parts("pushReading", {
        slope: strong(slope(numbers.climb_grade), "ground"),
        faster: strong(faster, "power"),
      }),
    });
  }

  return {
    element: frame.element,
    destroy() {
      newest = -1;
      chart.destroy();
    },
    update(state, numbers) {
      if (newest < 0) return;
      newest += 1;
      const turn = newest;
      const wanted = [BEGAN, numbers, ...GRADES.map((climb_grade) => ({ ...numbers, climb_grade }))];
      frame.element.toggleAttribute("data-searching", true);
      prepared(
        wanted.map((one) => () => planOf(one)),
        tools.worker,
        "story-plans",
        () => {
          if (turn !== newest) return;
          frame.element.toggleAttribute("data-searching", false);
          draw(state, numbers);
        },
      );
    },
  };
}
