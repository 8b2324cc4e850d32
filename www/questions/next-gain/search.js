// @ts-check
/** The best set for the budget, searched for piece by piece. The set before stands until there is another. */

import { same } from "../../state/scenario.js";
import { backgroundWork } from "../shared/background-work.js";

/** @import { Tools } from "../index.js" */
/** @import { Request } from "../shared/request.js" */
/** @import { BestSet, Candidate, LeftOut, Measuring, Searched, Warning } from "../../types/core.d.ts" */

/** @typedef {{ best: BestSet, leftOut: LeftOut[], measuring: Measuring[], warnings: Warning[] }} Found */

const ID = "next-gain";
/** Rides of one piece: a twentieth of a second or so, after which a newer request may take over. */
const RIDES_AT_ONCE = 600;
const QUIET_MS = 120;

/** What the rides depend on. @param {Request} request */
function ridesOf({ scenario: { title: _, ...scenario }, with: details }) {
  const { candidates, standing } = /** @type {{ candidates?: Candidate[], standing?: string }} */ (details);
  return { scenario, changes: candidates?.map(({ changes }) => changes) ?? standing };
}

/** @param {Tools} tools @param {() => void} onChange */
export function bestSet({ worker }, onChange) {
  /** Rides worked out, and what they are rides of: other budgets and chances need no others. @type {{ of: unknown, times: number[] }} */
  let ridden = { of: null, times: [] };

  return backgroundWork({
    worker,
    question: ID,
    slot: `${ID} best`,
    restMs: (/** @type {Found | null} */ found) => (found ? QUIET_MS : 0),
    keepsLast: true,
    chunk(request) {
      const of = ridesOf(request);
      if (!same(of, ridden.of)) ridden = { of, times: [] };
      return { part: "best", rides_at_once: RIDES_AT_ONCE, so_far: ridden.times };
    },
    take({ searched, best, left_out: leftOut, measuring, warnings }) {
      if (!searched) return { done: true };
      ridden = { ...ridden, times: searched.so_far };
      if (best) return { value: { best, leftOut, measuring, warnings }, done: true };
      return { share: searched.done / searched.of, done: false };
    },
    onChange,
  });
}
