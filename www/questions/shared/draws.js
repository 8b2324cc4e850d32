// @ts-check
/** Draws of a comparison, taken in the worker. Until they are there, and if they fail, the first-order answer stands. */

import { backgroundWork } from "./background-work.js";

/** @import { Tools } from "../index.js" */

const QUIET_MS = 250;
/** How many. */
export const DRAWS = 10_000;

/** @param {Tools} tools @param {"power-or-drag" | "hold-or-fade"} question @param {() => void} onChange called when the draws are there, or will not come */
export function draws({ worker }, question, onChange) {
  return backgroundWork({
    worker,
    question,
    slot: `${question} draws`,
    restMs: () => QUIET_MS,
    chunk: () => ({ draws: DRAWS }),
    take: ({ drawn }) => ({ value: drawn ?? undefined, done: true }),
    onChange,
  });
}
