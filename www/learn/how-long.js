// @ts-check
/** Third: the power–duration curve. Ten percent more, but for how long? */

import { html, strong } from "../parts/html.js";
import { lineChart, valueAt } from "../parts/line-chart.js";
import { FOUR_WEEKS, shortPercent, TRIAL_M } from "../questions/shared/published.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { bestEfforts, bothChanges, RANGES } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { FinishTimeAnswer } from "../types/core.d.ts" */
/** @import { MovePhase } from "../parts/handle.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** Four minutes to five hours: where the curve of the core's distances begins, and as long as anyone races alone. */
const AXIS_S = /** @type {const} */ ([240, 18000]);
const TICKS_S = [300, 600, 1200, 1800, 3600, 7200, 14400];

/** @param {Tools} tools @returns {Step} */
export function howLong(tools) {
  const { store } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const power = numberOf(tools, "power_w", { label: words("longPower"), meaning: "power" });
  const more = numberOf(tools, "power_change", { label: words("morePowerBy"), meaning: "power" });
  /** @type {FinishTimeAnswer | null} */
  let curve = null;
  /** The point as it was last drawn. */
  let drawn = { time_s: 0, power_w: 0 };
  const chart = lineChart({
    title: words("longChart"),
    x: { name: words("longAxis"), kind: "log", format: clock, read: show.time, ticks: TICKS_S, domain: AXIS_S },
    y: { name: words("powerAxis", unit("power")), meaning: "power", format: (w) => show.number(w), read: watts },
    handles: { you: { label: words("longHandle"), directions: "x", meaning: "power", onMove: move } },
    reader: words("longRead"),
  });
  /** A drag follows the curve; an arrow key is a watt, wherever on the curve. @param {{ x: number }} point @param {MovePhase} phase */
  function move({ x }, phase) {
    if (!curve) return;
    const later = x - drawn.time_s;
    const power_w =
      phase === "step"
        ? drawn.power_w - Math.sign(later) * Math.max(1, Math.round(Math.abs(later)))
        : Math.round(valueAt({ name: "", xs: curve.columns.time_s, ys: curve.columns.power_w }, x));
    moveTo(tools, [["power_w", power_w]], phase);
  }

  const cp = tools.field("scenario.power.cp_w")?.default ?? 0;
  const wPrime = tools.field("scenario.power.w_prime_j")?.default ?? 0;
  const frame = stepFrame({
    title: words("longTitle"),
    words: words.parts("longAsk", { power, more }),
    toTry: words("longTry"),
    chart: chart.element,
    notes: [
      html(
        "p",
        { class: "takes" },
        ...words.parts("longTypical", { cp: watts(cp), wPrime: show.quantity("work", wPrime, store.get().units) }),
      ),
      html("p", { class: "caution" }, words("longCaution")),
    ],
  });

  return {
    element: frame.element,
    destroy: chart.destroy,
    update(state, numbers) {
      curve = bestEfforts(numbers);
      const { takes, more_power_w } = bothChanges(numbers);
      const { power_held_s: held_s, more_power_held_s: more_s } = takes;
      drawn = { time_s: held_s ?? 0, power_w: numbers.power_w };
      const percent = shortPercent(numbers.power_change);
      const held = (/** @type {number | null} */ s, /** @type {number} */ w) =>
        s === null
          ? [words(w > takes.sustainable_w ? "notAtAll" : "longerThanRaces")]
          : words.parts("heldFor", { time: show.time(s) });
      const [least, most] = FOUR_WEEKS;
      frame.update(state, [
        ...words.parts("longSays", {
          power: strong(watts(numbers.power_w), "power"),
          held: held(held_s, numbers.power_w),
          percent,
          more: strong(watts(more_power_w), "power"),
          moreHeld: held(more_s, more_power_w),
        }),
        " ",
        ...(held_s !== null && more_s !== null
          ? [words("longShare", { share: show.percent(more_s / held_s) }), " "]
          : []),
        words("longNoSwitch", {
          trial: show.quantity("distance", TRIAL_M, { ...state.units, distance: "km" }),
          low: show.number(100 * least, { digits: 1 }),
          high: show.percent(most, 1),
        }),
      ]);
      const began = bothChanges(BEGAN);
      frame.since(numbers, ["power_w", "power_change"], () =>
        words.parts("longSince", {
          began: watts(began.more_power_w),
          beganHeld: held(began.takes.more_power_held_s, began.more_power_w),
          watts: watts(more_power_w),
          held: held(more_s, more_power_w),
        }),
      );

      const { time_s, power_w } = curve.columns;
      const on = (/** @type {number | null} */ s) => s !== null && s >= AXIS_S[0] && s <= AXIS_S[1];
      const within = Array.from(time_s.keys()).filter((i) => on(time_s[i]));
      const ys = within.map((i) => power_w[i]);
      const here = watts(numbers.power_w);
      chart.update({
        desc:
          held_s === null
            ? words("longDescriptionBeyond", { power: here })
            : words("longDescription", { power: here, time: show.time(held_s) }),
        y: { domain: [Math.max(0, Math.min(...ys) - 15), Math.max(...ys) + 15] },
        series: [{ name: words("longSeries"), xs: within.map((i) => time_s[i]), ys, meaning: "power" }],
        points: on(more_s)
          ? [
              {
                x: Number(more_s),
                y: more_power_w,
                label: words("longMorePoint", { percent, time: show.time(Number(more_s)) }),
                meaning: "power",
                shape: "ring",
              },
            ]
          : [],
        handles: on(held_s)
          ? {
              you: {
                x: Number(held_s),
                y: numbers.power_w,
                label: here,
                strong: show.time(Number(held_s)),
                spoken: words("longSpoken", { power: here, time: show.time(Number(held_s)) }),
                step: { x: 1 },
                rangeX: ends(time_s, power_w),
              },
            }
          : {},
        reading:
          held_s === null ? [] : words.parts("longReading", { power: strong(here, "power"), time: show.time(held_s) }),
      });
    },
  };
}

/** Times whose power the story's number can take. @param {Float64Array} time_s @param {Float64Array} power_w @returns {[number, number]} */
function ends(time_s, power_w) {
  const allowed = Array.from(time_s).filter(
    (s, i) => s >= AXIS_S[0] && s <= AXIS_S[1] && power_w[i] >= RANGES.power_w[0] && power_w[i] <= RANGES.power_w[1],
  );
  return [allowed[0], allowed[allowed.length - 1]];
}

/** "20 min", "1 h" along the axis. @param {number} seconds */
function clock(seconds) {
  return seconds < 3600
    ? words("minutes", { count: Math.round(seconds / 60) })
    : words("hours", { count: seconds / 3600 });
}
