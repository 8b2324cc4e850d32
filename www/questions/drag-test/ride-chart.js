// @ts-check
/** A ride against time: its speed, power or elevation, with its laps; the ends of the chosen lap can be dragged. */

import { choice } from "../../parts/choice.js";
import { html } from "../../parts/html.js";
import { lineChart, valueAt } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Recording } from "../../recordings/read.js" */
/** @import { LapForm } from "../../types/page.d.ts" */
/** @typedef {keyof typeof SHOWN} ShownColumn */

const words = book("drag-test");
/** What is shown, and as which kind. */
const SHOWN = /** @type {const} */ ({ speed_m_s: "speed", power_w: "power", elevation_m: "height" });
/** As many points as a chart has pixels. */
const MOST_POINTS = 700;
/** A lap is at least this long, s. */
const SHORTEST_S = 1;

/** @param {Tools} tools @param {number} ride */
export function rideChart({ store }, ride) {
  /** @type {ShownColumn} */
  let column = "speed_m_s";
  /** @type {() => void} */
  let redraw = () => {};
  const pick = choice({
    label: words("showColumn"),
    options: Object.keys(SHOWN).map((name) => ({
      value: name,
      name: words(`column.${/** @type {ShownColumn} */ (name)}`),
    })),
    onChange: (value) => {
      column = /** @type {ShownColumn} */ (value);
      redraw();
    },
  });
  /** The lap that is chosen, in the list of all laps. */
  let chosen = -1;
  const end = (/** @type {"from_s" | "to_s"} */ name) => ({
    label: words(name === "from_s" ? "lapBegins" : "lapEnds"),
    moves: ["with.drag-test.laps"],
    directions: /** @type {const} */ ("x"),
    ring: /** @type {const} */ ("open"),
    onMove: (/** @type {{ x: number }} */ { x }, /** @type {string} */ phase) => {
      const path = `with.drag-test.laps[${chosen}].${name}`;
      if (phase === "commit") store.settle();
      else store.set(path, x, { merge: path });
    },
  });
  const chart = lineChart({
    title: words("rideChart", { number: ride + 1 }),
    x: { name: words("timeAxis"), format: (x) => show.time(x) },
    y: { name: "", format: (y) => show.number(y) },
    handles: { from: end("from_s"), to: end("to_s") },
    reader: words("rideReader"),
    height: (width_px) => Math.round(Math.min(260, Math.max(180, width_px * 0.35))),
  });
  const element = html(
    "div",
    { class: "ride-chart" },
    html("p", {}, ...words.parts("shows", { column: pick.element })),
    chart.element,
  );

  return {
    element,
    destroy: chart.destroy,
    /** @param {State} state @param {Recording} recording @param {{ lap: LapForm, at: number }[]} laps those of this ride @param {number} lap the chosen one, in the list of all laps */
    update(state, recording, laps, lap) {
      chosen = lap;
      redraw = () => draw(state, recording, laps);
      redraw();
    },
  };

  /** @param {State} state @param {Recording} recording @param {{ lap: LapForm, at: number }[]} laps */
  function draw({ units }, { columns }, laps) {
    const kind = SHOWN[column];
    const shown = (/** @type {number} */ si) => show.toDisplay(kind, si, units);
    const { xs, ys } = thinned(columns.time_s, columns[column]);
    chart.element.hidden = xs.length < 2;
    if (chart.element.hidden) return;
    const series = { name: words(`column.${column}`), xs, ys: ys.map(shown) };
    const [low, high] = [Math.min(...series.ys), Math.max(...series.ys)];
    const room = (high - low || 1) * 0.08;
    const unit = show.unitOf(kind, units).symbol;
    const last = xs[xs.length - 1];
    const own = laps.find(({ at }) => at === chosen)?.lap;
    const others = laps.filter(({ at }) => at !== chosen).map(({ lap }) => lap);
    const says = (/** @type {number} */ x) =>
      words("rideSays", {
        time: show.time(x),
        value: show.quantity(kind, show.fromDisplay(kind, valueAt(series, x), units), units, { digits: 1 }),
      });
    const handle = (/** @type {number} */ x, /** @type {readonly [number, number]} */ rangeX) => ({
      x,
      y: valueAt(series, x),
      spoken: says(x),
      step: { x: 1 },
      rangeX,
    });
    chart.update({
      desc: words("rideDescription", { time: show.time(last), count: laps.length }),
      x: { domain: [xs[0], last] },
      y: { name: words(`axis.${column}`, { unit }), domain: [low - room, high + room] },
      series: [series],
      shades: laps.map(({ lap, at }) => ({
        xs: [lap.from_s, lap.to_s],
        low: [low - room, low - room],
        high: [high + room, high + room],
        meaning: at === chosen ? /** @type {const} */ ("drag") : /** @type {const} */ ("ground"),
        label: String(at + 1),
      })),
      handles: own
        ? {
            from: handle(own.from_s, [endBefore(others, own, xs[0]), own.to_s - SHORTEST_S]),
            to: handle(own.to_s, [own.from_s + SHORTEST_S, beginAfter(others, own, last)]),
          }
        : {},
      read: (x) => ({ spoken: says(x), words: says(x), points: [{ y: valueAt(series, x), meaning: null }] }),
      reading: words(own ? "rideReadingLap" : "rideReading"),
    });
  }
}

/** Where the lap before ends. @param {LapForm[]} others @param {LapForm} own @param {number} first_s */
const endBefore = (others, own, first_s) =>
  Math.max(first_s, ...others.filter(({ to_s }) => to_s <= own.from_s + SHORTEST_S).map(({ to_s }) => to_s));

/** Where the lap after begins. @param {LapForm[]} others @param {LapForm} own @param {number} last_s */
const beginAfter = (others, own, last_s) =>
  Math.min(last_s, ...others.filter(({ from_s }) => from_s >= own.to_s - SHORTEST_S).map(({ from_s }) => from_s));

/** Every so many records and the last, those without a value left out. @param {Float64Array} times @param {Float64Array} values */
function thinned(times, values) {
  const every = Math.ceil(times.length / MOST_POINTS);
  /** @type {number[]} */
  const xs = [];
  /** @type {number[]} */
  const ys = [];
  const last = times.length - 1;
  for (let i = 0; i <= last; i = i === last ? last + 1 : Math.min(last, i + every)) {
    if (Number.isNaN(values[i])) continue;
    xs.push(times[i]);
    ys.push(values[i]);
  }
  return { xs, ys };
}
