// @ts-check
/** Draws of all positions, a lot at a time, so that what they say grows while the rider watches. Each lot goes on from the tally of the one before. */

import { backgroundWork } from "../shared/background-work.js";

/** @import { Tools } from "../index.js" */
/** @import { Request } from "../shared/request.js" */
/** @import { CountedDraws } from "../../types/core.d.ts" */

const QUIET_MS = 300;
const LOT = 2500;
export const ALL = 10_000;
/** Over a course of very many stretches a lot holds fewer draws; after so many lots it is enough. */
const MOST_LOTS = 25;

/** @param {Tools} tools @param {"which-position"} question @param {() => void} onChange */
export function counting({ worker }, question, onChange) {
  let lots = 0;
  const work = backgroundWork({
    worker,
    question,
    slot: `${question} draws`,
    restMs: () => QUIET_MS,
    chunk(_, /** @type {CountedDraws | null} */ counted) {
      lots = counted ? lots + 1 : 1;
      return { part: "draws", draws: LOT, ...(counted && { so_far: counted.tally }) };
    },
    take({ drawn }) {
      return { value: drawn ?? undefined, done: !drawn || drawn.draws >= ALL || lots >= MOST_LOTS };
    },
    onChange,
  });
  return { ...work, update: (/** @type {Request} */ request) => work.update(withoutReading(request)) };
}

/** The distance or time that is read off changes no draw. @param {Request} request @returns {Request} */
function withoutReading({ scenario, with: { distance_m: _, for_time_s: __, ...own } }) {
  return { scenario, with: own };
}
