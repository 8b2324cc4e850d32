// @ts-check
/** Draws of a comparison, taken in the worker once the rider's hands rest. Until they are there, and if they fail, the first-order answer stands. */

import { same } from "../../state/scenario.js";

/** @import { Tools } from "../index.js" */
/** @import { Drawn } from "../../types/core.d.ts" */

const QUIET_MS = 250;
/** How many. */
export const DRAWS = 10_000;

/** @param {Tools} tools @param {string} question @param {() => void} onRest called when the draws are there, or will not come */
export function draws(tools, question, onRest) {
  const slot = `${question} draws`;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  /** @type {any} */
  let asked = null;
  /** @type {Drawn | null} */
  let drawn = null;
  let destroyed = false;

  /** @param {{ scenario: any, with: any }} request */
  async function take(request) {
    /** @type {Drawn | null} */
    let taken = null;
    try {
      taken =
        (await tools.worker.ask(question, { ...request, with: { ...request.with, draws: DRAWS } }, { slot }))?.drawn ??
        null;
    } catch {
      // What the core refuses is already said beside the answer.
    }
    if (destroyed || request !== asked) return;
    drawn = taken;
    onRest();
  }

  return {
    /** Forgets the draws of another request and takes new ones when it is quiet. @param {{ scenario: any, with: any }} request */
    update(request) {
      if (same(request, asked)) return;
      clearTimeout(timer);
      tools.worker.cancel(slot);
      asked = request;
      drawn = null;
      timer = setTimeout(() => take(request), QUIET_MS);
    },
    drawn: () => drawn,
    destroy() {
      destroyed = true;
      clearTimeout(timer);
      tools.worker.cancel(slot);
    },
  };
}
