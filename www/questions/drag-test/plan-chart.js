// @ts-check
/** How small a difference so many runs in each position show. */

import { lineChart, valueAt } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";

/** @import { Tools } from "../index.js" */
/** @import { Shown } from "../shared/shell.js" */
/** @import { DragTestAnswer as Answer } from "../../types/core.d.ts" */

const words = book("drag-test");
const shared = book("shared");
const AT = "with.drag-test.plan.difference_share";
/** A difference that so many runs show is written with this many steps to the whole, rounded up so that they show it. */
const STEPS = 10_000;

/** @param {Tools} tools */
export function planChart({ store }) {
  const percent = (/** @type {number} */ share) => show.percent(share, 1);
  /** @type {{ name: string, xs: ArrayLike<number>, ys: ArrayLike<number> }} */
  let shownCurve = { name: "", xs: [], ys: [] };
  const chart = lineChart({
    title: words("planChart"),
    x: { name: words("planRuns"), format: (x) => show.number(x) },
    y: { name: words("planShare"), format: percent },
    handles: {
      you: {
        label: words("planHandle"),
        moves: [AT],
        directions: "x",
        onMove: ({ x }, phase) => {
          if (phase === "commit") store.settle();
          else store.set(AT, Math.ceil(valueAt(shownCurve, x) * STEPS) / STEPS, { merge: AT });
        },
      },
    },
    reader: words("planReader"),
  });
  return {
    element: chart.element,
    destroy: chart.destroy,
    /** @param {Shown<Answer>} shown */
    update({ state, answer: { columns, plan, laps }, settled }) {
      const { runs: xs, smallest_share: ys } = columns;
      chart.element.hidden = laps.length > 0 || xs.length < 2;
      if (chart.element.hidden) return;
      const { difference_share, run_cv_share } = state.with["drag-test"].plan;
      const curve = { name: words("planCurve"), xs, ys, meaning: /** @type {const} */ ("drag") };
      shownCurve = curve;
      const domain = /** @type {const} */ ([0, ys[1] ?? ys[0]]);
      const runs = Math.min(plan?.runs_per_position ?? xs[xs.length - 1], xs[xs.length - 1]);
      const says = (/** @type {number} */ x) =>
        words("planSays", { count: Math.round(x), share: percent(valueAt(curve, Math.round(x))) });
      chart.update({
        ease: settled,
        desc: words("planDescription", {
          repeat: percent(run_cv_share),
          low: says(xs[0]),
          high: says(xs[xs.length - 1]),
        }),
        x: { domain: [xs[0], xs[xs.length - 1]] },
        y: { domain },
        series: [curve],
        levels: [{ y: difference_share, above: words("planLevel", { share: percent(difference_share) }), quiet: true }],
        handles:
          plan?.runs_per_position && runs === plan.runs_per_position
            ? {
                you: {
                  x: runs,
                  y: valueAt(curve, runs),
                  label: words("planYou", { count: runs }),
                  spoken: words("planHandleSpoken", { share: percent(difference_share), count: runs }),
                  step: { x: 1 },
                  rangeX: /** @type {const} */ ([xs[0], xs[xs.length - 1]]),
                },
              }
            : {},
        read: (x) => ({
          spoken: says(x),
          words: says(x),
          points: [{ y: valueAt(curve, Math.round(x)), meaning: /** @type {const} */ ("drag") }],
        }),
        reading: [words("planReading"), " ", onScreen(shared("dragRing"))],
      });
    },
  };
}
