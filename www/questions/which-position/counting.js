// @ts-check
/**
 * Draws of all positions, a lot at a time in the worker, so that what they say grows while the rider watches. Each lot goes on from the
 * tally of the one before; a changed number ends the count at once and begins a new one when the hands rest.
 */

import { same } from "../../state/scenario.js";

/** @import { Tools } from "../index.js" */
/** @import { CountedDraws } from "../../types/core.d.ts" */

const QUIET_MS = 300;
const LOT = 2500;
const ALL = 10_000;
/** Over a course of very many stretches a lot holds fewer draws; after so many lots it is enough. */
const MOST_LOTS = 25;

/** @param {Tools} tools @param {string} question @param {() => void} onMore */
export function counting(tools, question, onMore) {
  const slot = `${question} draws`;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  /** @type {any} */
  let asked = null;
  /** @type {CountedDraws | null} */
  let counted = null;
  /** @type {"waiting" | "counting" | "done" | "stopped"} */
  let state = "done";

  /** @param {{ scenario: any, with: any }} request */
  async function count(request) {
    state = "counting";
    onMore();
    for (let lot = 0; lot < MOST_LOTS && (counted?.draws ?? 0) < ALL; lot += 1) {
      const so_far = counted?.tally;
      let answer = null;
      try {
        answer = await tools.worker.ask(
          question,
          { ...request, with: { ...request.with, part: "draws", draws: LOT, ...(so_far && { so_far }) } },
          { slot },
        );
      } catch {
        // What the core refuses is already said beside the answer.
      }
      if (request !== asked || state !== "counting") return;
      if (!answer?.drawn) break;
      counted = answer.drawn;
      onMore();
    }
    state = "done";
    onMore();
  }

  return {
    ALL,
    /** @param {{ scenario: any, with: any }} request */
    update(request) {
      if (same(request, asked)) return;
      clearTimeout(timer);
      tools.worker.cancel(slot);
      asked = request;
      counted = null;
      state = "waiting";
      timer = setTimeout(() => count(request), QUIET_MS);
    },
    stop() {
      clearTimeout(timer);
      tools.worker.cancel(slot);
      state = "stopped";
      onMore();
    },
    resume() {
      if (asked) count(asked);
    },
    counted: () => counted,
    state: () => state,
    destroy() {
      clearTimeout(timer);
      tools.worker.cancel(slot);
      asked = null;
    },
  };
}
