// @ts-check
/** The best set for the budget, searched for in the worker piece by piece; a changed request overtakes the one before. */

import { same } from "../../state/scenario.js";

/** @import { Tools } from "../index.js" */
/** @import { BestSet, LeftOut, Searched, Warning } from "../../types/core.d.ts" */

/** @typedef {{ scenario: any, with: any }} Request */
/** @typedef {{ best: BestSet, leftOut: LeftOut[], warnings: Warning[], request: Request }} Found */

const ID = "next-gain";
const SLOT = `${ID} best`;
/** Rides of one piece: a twentieth of a second or so, after which a newer request may take over. */
const RIDES_AT_ONCE = 600;
const QUIET_MS = 120;

/** @param {Tools} tools @param {() => void} onChange */
export function bestSet({ worker }, onChange) {
  /** @type {Request | null} */
  let wanted = null;
  /** @type {Found | null} */
  let found = null;
  /** How much is searched, from 0 to 1; null while nothing is. @type {number | null} */
  let progress = null;
  let stopped = false;
  /** Rides worked out, and what they are rides of: other budgets and chances need no others. @type {{ of: unknown, times: number[] }} */
  let ridden = { of: null, times: [] };
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  /** What the rides depend on. @param {Request} request */
  const ridesOf = ({ scenario, with: { candidates, standing } }) => ({
    scenario,
    changes: candidates?.map((/** @type {any} */ one) => one.changes) ?? standing,
  });

  /** @param {Request} request */
  async function search(request) {
    const of = ridesOf(request);
    if (!same(of, ridden.of)) ridden = { of, times: [] };
    try {
      for (;;) {
        const asked = {
          ...request,
          with: { ...request.with, part: "best", rides_at_once: RIDES_AT_ONCE, so_far: ridden.times },
        };
        /** @type {{ searched: Searched, best: BestSet | null, left_out: LeftOut[], warnings: Warning[] } | null} */
        const answer = await worker.ask(ID, asked, { slot: SLOT });
        if (request !== wanted || !answer) return;
        ridden = { of, times: answer.searched.so_far };
        progress = answer.best ? null : answer.searched.done / answer.searched.of;
        if (answer.best) found = { best: answer.best, leftOut: answer.left_out, warnings: answer.warnings, request };
        onChange();
        if (answer.best) return;
      }
    } catch {
      // What the core refuses is said beside the answer already.
      if (request !== wanted) return;
      progress = null;
      found = null;
      onChange();
    }
  }

  return {
    /** @param {Request} request */
    update(request) {
      if (same(request, wanted)) return;
      clearTimeout(timer);
      worker.cancel(SLOT);
      wanted = request;
      stopped = false;
      progress = 0;
      timer = setTimeout(() => search(request), found ? QUIET_MS : 0);
    },
    stop() {
      clearTimeout(timer);
      worker.cancel(SLOT);
      wanted = null;
      progress = null;
      stopped = true;
      onChange();
    },
    found: () => found,
    progress: () => progress,
    stopped: () => stopped,
    destroy() {
      clearTimeout(timer);
      wanted = null;
      worker.cancel(SLOT);
    },
  };
}
