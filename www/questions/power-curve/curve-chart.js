// @ts-check
/** Power against time on a log axis: the curve with its band, the other models, the efforts, and the events. */

import { strong } from "../../parts/html.js";
import { lineChart } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { eventWords } from "../shared/distance-names.js";
import { onScreen } from "../shared/on-screen.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerCurveAnswer as Answer } from "../../types/core.d.ts" */
/** @import { MovePhase } from "../../parts/handle.js" */
/** @import { MarkedPoint, Series } from "../../parts/line-chart.js" */

const words = book("power-curve");
const HOLD = "with.power-curve.hold_s";
const TICKS_S = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400, 28800, 86400];
/** The room that an event's name takes at the foot of the chart, and factors between times to choose from. */
const NAME_PX = 82;
/** Up to this width there is no room for names. */
const NARROW_PX = 480;
const FACTORS = [1.2, 1.5, 1.8, 2.1, 2.5, 3, 4, 5, 7, 10];
/** The models by their columns, in the order of the answer. */
const COLUMNS = /** @type {const} */ ({
  "two-parameter": "two_parameter_w",
  "three-parameter": "three_parameter_w",
  "omni-domain": "omni_domain_w",
  "log-decline": "log_decline_w",
  "power-law": "power_law_w",
});

/** @param {Tools} tools */
export function curveChart({ store }) {
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const chart = lineChart({
    title: words("chart"),
    x: { name: words("timeAxis"), kind: "log", format: clock, read: show.time, ticks: TICKS_S },
    y: { name: words("powerAxis"), meaning: "power", format: (w) => show.number(w), read: watts },
    handles: {
      you: { label: words("handle"), moves: [HOLD], directions: "x", onMove: ({ x }, phase) => move(x, phase) },
    },
    reader: words("read"),
  });

  /** @param {number} time_s @param {MovePhase} phase */
  function move(time_s, phase) {
    if (phase === "commit") store.settle();
    else store.set(HOLD, roundTime(time_s), { merge: HOLD });
  }

  /** "30 s", "20 min", "2 h" along the axis. @param {number} seconds */
  function clock(seconds) {
    const { units } = store.get();
    if (seconds < 60) return `${show.number(seconds)}\u00a0s`;
    if (seconds < 3600) return show.quantity("duration", seconds, units, { digits: 0 });
    return `${show.number(seconds / 3600)}\u00a0h`;
  }

  return {
    element: chart.element,
    destroy: chart.destroy,
    /** @param {State} state @param {Answer} answer @param {{ settled: boolean }} how */
    update(state, answer, { settled }) {
      const { columns } = answer;
      const { hold_s } = state.with["power-curve"];
      const times = columns.time_s;
      const last = times.length - 1;
      const efforts = answer.efforts.filter(({ position }) => position === answer.position);
      const highest = Math.max(
        columns.power_w[0],
        ...efforts.map(({ power_w }) => power_w.value + power_w.sd),
        Math.min(columns.test_high_w[0], 1.5 * columns.power_w[0]),
      );
      const lowest = Math.min(columns.test_low_w[last], ...efforts.map(({ power_w }) => power_w.value - power_w.sd));
      const domain = /** @type {const} */ ([times[0], times[last]]);
      const here = Math.min(Math.max(hold_s, times[0]), times[last]);

      chart.update({
        ease: settled,
        desc: words("chartSays", {
          high: watts(columns.power_w[0]),
          short: show.time(times[0]),
          low: watts(columns.power_w[last]),
          long: show.time(times[last]),
          time: show.time(hold_s),
          power: watts(answer.power_w.value),
        }),
        x: { domain },
        y: { domain: [Math.max(0, lowest - 15), highest * 1.06] },
        series: [
          {
            name: words("you"),
            xs: times,
            ys: columns.power_w,
            low: columns.test_low_w,
            high: columns.test_high_w,
            meaning: "power",
          },
          ...models(answer),
          ...positions(state, answer),
        ],
        points: [...efforts.map(effort), ...changed(state, answer), ...events(state, answer)],
        handles: {
          you: {
            x: here,
            y: answer.power_w.value,
            label: words("you"),
            strong: watts(answer.power_w.value),
            step: { x: stepOf(hold_s) },
            rangeX: domain,
            spoken: `${show.time(hold_s)}, ${watts(answer.power_w.value)}`,
          },
        },
        reading: [
          ...words.parts("reading", { time: show.time(hold_s), power: strong(watts(answer.power_w.value), "power") }),
          " ",
          ...(answer.events.length ? [words("rings"), " "] : []),
          onScreen(words("drag")),
        ],
      });
    },
  };

  /** @param {Answer} answer @returns {Series[]} */
  function models({ model, columns }) {
    return Object.entries(COLUMNS).map(([name, column]) => {
      const ys = name === model ? new Float64Array() : columns[column];
      return {
        name: words(`model.${/** @type {keyof typeof COLUMNS} */ (name)}`),
        xs: columns.time_s.subarray(columns.time_s.length - ys.length),
        ys,
        stroke: "dotted",
        unread: true,
      };
    });
  }

  /** The curves of other positions, one after the other in one column. @param {State} state @param {Answer} answer @returns {Series[]} */
  function positions({ scenario }, { position, positions, columns }) {
    const length = columns.time_s.length;
    let from = 0;
    return positions.flatMap((one) => {
      if (one.cp_w === null) return [];
      const ys = columns.positions_w.subarray(from, from + length);
      from += length;
      const name = scenario.positions[one.position]?.name || words("position", { number: one.position + 1 });
      return one.position === position
        ? []
        : [{ name, label: name, labelAt: "start", xs: columns.time_s, ys, meaning: "hold", stroke: "dashed" }];
    });
  }

  /** How long the changed power lasts. @param {State} state @param {Answer} answer @returns {MarkedPoint[]} */
  function changed(
    {
      with: {
        "power-curve": { power_change },
      },
    },
    { more: { power_w, held_s }, columns: { time_s: times } },
  ) {
    if (!held_s || power_change === 0 || held_s.value < times[0] || held_s.value > times[times.length - 1]) return [];
    return [
      {
        x: held_s.value,
        y: power_w,
        drop: true,
        meaning: "power",
        shape: "ring",
        label: words("changed", {
          change: `${power_change > 0 ? "+" : "\u2212"}${show.percent(Math.abs(power_change), 0)}`,
          time: show.time(held_s.value),
        }),
      },
    ];
  }

  /** @param {Answer["efforts"][number]} effort @returns {MarkedPoint} */
  function effort({ duration_s, power_w, used }) {
    return {
      x: duration_s,
      y: power_w.value,
      sdY: power_w.sd,
      meaning: "power",
      shape: used ? "dot" : "ring",
      label: used ? undefined : words("leftOut"),
    };
  }

  /** Events on the curve, named where a name has room. @param {State} state @param {Answer} answer @returns {MarkedPoint[]} */
  function events(
    {
      scenario,
      units,
      with: {
        "power-curve": { hold_s },
      },
    },
    { events, columns: { time_s: times } },
  ) {
    const apart = factorBetween(times[times.length - 1] / times[0], chart.element.clientWidth / NAME_PX);
    const wide = chart.element.clientWidth > NARROW_PX;
    let named_s = 0;
    return events.map(({ event, distance_m, time_s, power_w }) => {
      const named = wide && time_s > apart * named_s && (time_s > apart * hold_s || time_s * apart < hold_s);
      if (named) named_s = time_s;
      return {
        x: time_s,
        y: power_w.value,
        drop: named,
        shape: "ring",
        label: named ? eventWords(scenario.events[event] ?? { name: "", distance_m }, units) : undefined,
      };
    });
  }
}

/** The factor between two times that leaves room for a name, where so many names fit along an axis over `whole`. @param {number} whole @param {number} names */
function factorBetween(whole, names) {
  const reached = (/** @type {number} */ factor) =>
    Array.from({ length: Math.max(1, Math.floor(names)) }).reduce(
      (/** @type {number} */ product) => product * factor,
      1,
    ) >= whole;
  return FACTORS.find(reached) ?? FACTORS[FACTORS.length - 1];
}

/** A hundredth or so, in whole seconds. @param {number} time_s */
function stepOf(time_s) {
  return time_s < 120 ? 1 : time_s < 900 ? 10 : time_s < 3600 ? 30 : 60;
}

/** @param {number} time_s */
function roundTime(time_s) {
  const step = stepOf(time_s);
  return Math.max(1, Math.round(time_s / step) * step);
}
