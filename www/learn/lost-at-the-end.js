// @ts-check
/** Fifth: a lower position that is lost before the finish. */

import { html, strong } from "../parts/html.js";
import { lineChart } from "../parts/line-chart.js";
import { titleOf } from "../questions/shared/names.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { fadeOf, lowAgainstKept, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
const STEP_S = 60;

/** @param {Tools} tools @returns {Step} */
export function lostAtTheEnd(tools) {
  const { store } = tools;
  const area = (/** @type {number} */ m2) => show.quantity("area", m2, store.get().units);
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const begins = numberOf(tools, "begins_s", { label: words("lostBegins"), meaning: "hold" });
  const less = numberOf(tools, "cda_change", { label: words("lostLess"), meaning: "drag", negative: true });
  const chart = lineChart({
    title: words("lostChart"),
    x: {
      name: words("lostAxis", unit("duration")),
      kind: "clock",
      format: (s) => show.number(show.toDisplay("duration", s, store.get().units)),
      read: show.time,
    },
    y: {
      name: words("areaAxis", unit("area")),
      meaning: "drag",
      format: (m2) => show.number(m2, { digits: 2 }),
      read: area,
    },
    height: (width_px) => Math.round(Math.min(320, Math.max(250, width_px * 0.48))),
    handles: {
      begins: {
        label: words("lostHandle"),
        directions: "x",
        meaning: "hold",
        ring: "open",
        onMove: ({ x }, phase) => moveTo(tools, [["begins_s", Math.round(x / STEP_S) * STEP_S]], phase),
      },
    },
    reader: words("lostRead"),
  });
  const compare = html("button", { type: "button" }, titleOf("which-position"));
  compare.addEventListener("click", () => tools.go("which-position"));
  const frame = stepFrame({
    title: words("lostTitle"),
    words: words.parts("lostAsk", { less, begins }),
    toTry: words("lostTry"),
    chart: chart.element,
    notes: [
      html("p", { class: "takes" }, ...words.parts("lostAssumed")),
      html("p", { class: "takes no-print" }, compare),
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
      const differs = (/** @type {number} */ s) => show.differenceWords(Math.round(s) || s);
      const now = differs(difference_s.value);
      const time = show.time(fade.begins_s);
      frame.update(state, [
        ...words.parts("lostSays", {
          low: strong(area(answer.low_cda_m2), "hold"),
          tired: strong(area(fade.tired_cda_m2), "hold"),
          differs: strong(now),
          spread: show.plusMinusTime(difference_s.sd),
          kept: strong(area(numbers.cda_m2), "drag"),
          held: strong(differs(held_difference_s.value)),
        }),
        " ",
        tie_s === null ? words("lostNoTie") : words("lostTie", { time: show.time(tie_s) }),
        " ",
        words("lostMoral"),
      ]);
      frame.since(numbers, ["begins_s", "cda_change", "cda_m2", "power_w"], () =>
        words("lostSince", { began: differs(lowAgainstKept(BEGAN).difference_s.value), differs: now }),
      );

      const last_s = Math.max(finish_s, Math.min(fade.complete_s, finish_s * 1.1));
      const all = [...columns.low_cda_m2, ...columns.steady_cda_m2, answer.low_cda_m2, fade.tired_cda_m2];
      const air = (Math.max(...all) - Math.min(...all)) * 0.22;
      chart.update({
        desc: words("lostDescription", { kept: area(numbers.cda_m2), low: area(answer.low_cda_m2), time }),
        x: { domain: [0, last_s] },
        y: { domain: [Math.min(...all) - air, Math.max(...all) + air] },
        series: [
          {
            name: words("keptSeries"),
            xs: columns.time_s,
            ys: columns.steady_cda_m2,
            meaning: "drag",
            label: words("keptSeries"),
            labelAt: "start",
          },
          {
            name: words("lowSeries"),
            xs: columns.time_s,
            ys: columns.low_cda_m2,
            meaning: "hold",
            label: words("lowSeries"),
            labelAt: "start",
          },
        ],
        points:
          tie_s !== null && tie_s <= last_s
            ? [
                {
                  x: tie_s,
                  y: answer.low_cda_m2,
                  drop: true,
                  label: words("levelAt", { time: show.time(tie_s) }),
                  shape: "none",
                },
              ]
            : [],
        handles:
          fade.begins_s <= last_s
            ? {
                begins: {
                  x: fade.begins_s,
                  y: answer.low_cda_m2,
                  spoken: words("lostSpoken", { time, differs: now }),
                  step: { x: STEP_S },
                  rangeX: [0, Math.min(RANGES.begins_s[1], last_s)],
                },
              }
            : {},
        reading: words.parts("lostReading", { time: strong(time, "hold"), differs: now }),
      });
    },
  };
}
