// @ts-check
/** Fifth: a lower position that is lost before the finish. */

import { html, strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import { BEGAN, fadeOf, lowAgainstKept, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

const STEP_S = 60;

/** @param {Tools} tools @returns {Step} */
export function lostAtTheEnd(tools) {
  const { store, units: show } = tools;
  const area = (/** @type {number} */ m2) => show.quantity("area", m2, store.get().units);
  const begins = numberOf(tools, "begins_s", { label: "When the low position starts to go", meaning: "hold" });
  const less = numberOf(tools, "cda_change", { label: "How much less drag the low position has", meaning: "drag", negative: true });
  const chart = lineChart({
    title: "The rider’s drag area over the ride",
    x: { name: "time ridden, min", kind: "clock", format: (s) => show.number(show.toDisplay("duration", s, store.get().units)), read: show.time },
    y: { name: "drag area CdA, m²", meaning: "drag", format: (m2) => show.number(m2, { digits: 2 }), read: area },
    height: (width_px) => Math.round(Math.min(320, Math.max(250, width_px * 0.48))),
    handles: { begins: { label: "When the low position starts to go: left and right change it", directions: "x", meaning: "hold", ring: "open", onMove: ({ x }, phase) => moveTo(tools, [["begins_s", Math.round(x / STEP_S) * STEP_S]], phase) } },
    reader: "Read both drag areas over the ride",
  });
  const frame = stepFrame({
    title: "5. A position that is lost at the end",
    words: ["The rider goes ", less, " lower. It holds for ", begins, ", then tires, and goes. Was it worth it?"],
    toTry: "Find the moment at which it is level: a minute earlier it loses, a minute later it wins.",
    chart: chart.element,
    notes: [
      html("p", { class: "takes" }, "How drag creeps up as riders tire is not published as far as we found. That it goes over twenty-five minutes, to a tenth more than the position they could have kept, is ", strong("assumed"), " here. When you ask about your own ride, you say how yours goes."),
    ],
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      const answer = lowAgainstKept(numbers);
      const fade = fadeOf(numbers);
      const { columns, break_even, held_difference_s, difference_s } = answer;
      const finish_s = columns.time_s[columns.time_s.length - 1];
      const tie_s = break_even.begins_s;
      const words = (/** @type {number} */ s) => show.difference(Math.round(s) || s).words;
      frame.update(state, ["Starting at ", strong(area(answer.low_cda_m2), "hold"), " and ending up to ", strong(area(fade.tired_cda_m2), "hold"), " the low position is ", strong(words(difference_s.value)), ` ${show.plusMinusTime(difference_s.sd)} than `,
        strong(area(numbers.cda_m2), "drag"), " kept all the way. Held to the end it would be ", strong(words(held_difference_s.value)), ". ",
        tie_s === null ? "There is no moment at which the two are level. " : `The two are level if it starts to go at ${show.time(tie_s)}. `,
        "The fastest shape is not the lowest one, but the lowest you can still hold near the line."]);
      frame.since(numbers, ["begins_s", "cda_change", "cda_m2", "power_w"], () => [`At the start the low position was ${words(lowAgainstKept(BEGAN).difference_s.value)}; now it is ${words(difference_s.value)}.`]);

      const last_s = Math.max(finish_s, Math.min(fade.complete_s, finish_s * 1.1));
      const all = [...columns.low_cda_m2, ...columns.steady_cda_m2, answer.low_cda_m2, fade.tired_cda_m2];
      const air = (Math.max(...all) - Math.min(...all)) * 0.22;
      chart.update({
        desc: `The position that is kept stays at ${area(numbers.cda_m2)}. The low one starts at ${area(answer.low_cda_m2)} and starts to go at ${show.time(fade.begins_s)}.`,
        x: { domain: [0, last_s] },
        y: { domain: [Math.min(...all) - air, Math.max(...all) + air] },
        series: [
          { name: "the position kept", xs: columns.time_s, ys: columns.steady_cda_m2, meaning: "drag", label: "the position kept", labelAt: "start" },
          { name: "the low one", xs: columns.time_s, ys: columns.low_cda_m2, meaning: "hold", label: "the low one", labelAt: "start" },
        ],
        points: tie_s !== null && tie_s <= last_s ? [{ x: tie_s, y: answer.low_cda_m2, drop: true, label: `level at ${show.time(tie_s)}`, shape: "none" }] : [],
        handles: fade.begins_s <= last_s ? { begins: { x: fade.begins_s, y: answer.low_cda_m2, spoken: `starts to go at ${show.time(fade.begins_s)}: ${words(difference_s.value)}`, step: { x: STEP_S }, rangeX: [0, Math.min(RANGES.begins_s[1], last_s)] } } : {},
        reading: ["It starts to go at ", strong(show.time(fade.begins_s), "hold"), ": ", strong(words(difference_s.value)), "."],
      });
    },
  };
}
