// @ts-check
/** What a budget buys: the best set's seconds against money, or hours, as a staircase with a handle at the rider's own. */

import { strong } from "../../parts/html.js";
import { lineChart } from "../../parts/line-chart.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { listOf } from "../shared/list.js";
import { onScreen } from "../shared/on-screen.js";
import { nameOf } from "./candidates.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { BestSet, BudgetCurve, Candidate } from "../../types/core.d.ts" */

const words = book("next-gain");
const AT = "with.next-gain";
/** The axis ends this much beyond the last step, or the rider's own budget. */
const BEYOND = 1.12;
/** One press of an arrow key. */
const STEP = { money: 10, hours_per_week: 0.5 };
/** An axis of a budget that nothing needs is still this long. */
const LEAST = { money: 100, hours_per_week: 2 };

/** @param {Tools} tools @param {"money" | "hours_per_week"} name */
export function budgetChart({ store }, name) {
  const money = name === "money";
  const chart = lineChart({
    title: words(money ? "curveMoney" : "curveHours"),
    x: { name: "", format: (value) => units.number(value, { digits: 1, atLeast: 0 }), read: (value) => inWords(value) },
    y: { name: words("savedAxis"), kind: "clock", format: units.time },
    height: (width_px) => Math.round(Math.min(260, Math.max(210, width_px * 0.4))),
    handles: {
      you: {
        label: words(money ? "youMoney" : "youHours"),
        moves: [`${AT}.${name}`],
        directions: "x",
        onMove: ({ x }, phase) => {
          store.set(`${AT}.${name}`, x, { merge: `${AT}.${name}` });
          if (phase === "commit") store.settle();
        },
      },
    },
    reader: words(money ? "readMoney" : "readHours"),
  });

  /** @param {number} value */
  function inWords(value) {
    const { currency } = store.at(AT);
    const text = units.number(value, { digits: money ? 0 : 1, atLeast: 0 });
    return money
      ? `${text}${currency ? `\u00a0${currency}` : ""}`
      : words("hoursAWeekText", { number: text, count: value });
  }

  return {
    element: chart.element,
    /** @param {State} state @param {BestSet} best @param {readonly Candidate[]} candidates */
    update(state, best, candidates) {
      const { currency, [name]: own } = state.with["next-gain"];
      const curve = money ? best.by_money : best.by_hours;
      const steps = curve.budget.map((budget, i) => ({ budget, saved: curve.expected_s[i] }));
      const end = Math.max(own, steps.at(-1)?.budget ?? 0, LEAST[name]) * BEYOND;
      const xs = [...steps.flatMap(({ budget }, i) => (i ? [budget, budget] : [budget])), end];
      const ys = steps.flatMap(({ saved }) => [saved, saved]);
      const now = stepAt(steps, own);
      const top = Math.max(1, ...ys) * BEYOND;
      chart.update({
        desc: words("curveDesc", {
          start: units.time(ys[0] ?? 0),
          end: units.time(ys.at(-1) ?? 0),
          most: inWords(steps.at(-1)?.budget ?? 0),
        }),
        x: {
          domain: [0, end],
          name: money ? (currency ? words("moneyAxisIn", { currency }) : words("moneyAxis")) : words("hoursAxis"),
        },
        y: { domain: [0, top] },
        series: [{ name: "", xs, ys, unread: true }],
        handles: {
          you: {
            x: Math.min(own, end),
            y: steps[now]?.saved ?? 0,
            strong: units.time(steps[now]?.saved ?? 0),
            spoken: words("at", { budget: inWords(own), figure: units.time(steps[now]?.saved ?? 0) }),
            step: { x: STEP[name] },
            rangeX: [0, end],
          },
        },
        read: (x) => reading(curve, steps, x, candidates),
        reading: onScreen(words("drag")),
      });
    },
    destroy: chart.destroy,
  };

  /** @param {BudgetCurve} curve @param {{ budget: number, saved: number }[]} steps @param {number} x @param {readonly Candidate[]} candidates */
  function reading(curve, steps, x, candidates) {
    const at = stepAt(steps, x);
    const names = listOf(curve.candidates[at].map((c) => nameOf(candidates[c], c)));
    const spoken = words("at", { budget: inWords(x), figure: units.time(steps[at].saved) });
    return {
      words: [strong(spoken), names ? `. ${names}.` : ""],
      spoken: `${spoken}. ${names}`,
      points: [{ y: steps[at].saved }],
    };
  }
}

/** @param {{ budget: number }[]} steps @param {number} x */
function stepAt(steps, x) {
  const beyond = steps.findIndex(({ budget }) => budget > x + 1e-9);
  return beyond < 0 ? steps.length - 1 : Math.max(0, beyond - 1);
}
