// @ts-check
/** How sure a difference is, in words and as a weight: counted in draws where there are any, otherwise to first order. */

import { book } from "../../words/index.js";

/** @import { Drawn, Figure } from "../../types/core.d.ts" */
/** @import { Weight } from "../../parts/sureness.js" */

const words = book("shared");

/** The chances of 2.5, 2 and 1 standard deviations, so that counted draws and first order speak the same words. */
const SURE = /** @type {const} */ ([
  [0.9938, "sure", "certain"],
  [0.9772, "sure", "veryLikely"],
  [0.8413, "likely", "likely"],
]);
/** A share of draws nearer to all of them than this is not a count of 100. */
const NEARLY_ALL = 0.995;
/** Draws are told by the hundred. */
const ALL = 100;
/** The longest odds that are told of the other outcome. */
const LONGEST = 100;

/**
 * "likely: 88 of 100 draws", "too close to call: slower in 56 of 100 draws"
 * @param {Figure} difference positive is faster
 * @param {Drawn | null} drawn
 * @returns {{ weight: Weight, words: string }}
 */
export function odds(difference, drawn) {
  const faster = difference.value >= 0;
  if (!drawn || !(drawn.sd > 0))
    return firstOrder(difference, (_, count) => words(faster ? "aboutFaster" : "aboutSlower", { count, all: ALL }));
  const chance = faster ? drawn.share_positive : 1 - drawn.share_positive;
  const count = chance >= NEARLY_ALL ? words("overCount", { count: ALL - 1 }) : String(Math.round(chance * ALL));
  const known = SURE.find(([least]) => chance >= least);
  if (known) return { weight: known[1], words: words("ofDraws", { sure: words(known[2]), count, all: ALL }) };
  return { weight: "open", words: words(faster ? "tooCloseFaster" : "tooCloseSlower", { count, all: ALL }) };
}

/**
 * "likely", or the odds of the other outcome where it is too close to call.
 * @param {Pick<Figure, "value" | "sd" | "chance_positive">} difference @param {(count: number, likelier: number) => string} other the other outcome happens one time in so many; the likelier one so often in a hundred
 * @returns {{ weight: Weight, words: string }}
 */
export function firstOrder({ value, sd, chance_positive }, other) {
  if (!(sd > 0)) return { weight: "sure", words: "" };
  const chance = value < 0 ? 1 - chance_positive : chance_positive;
  const known = SURE.find(([least]) => chance >= least);
  if (known) return { weight: known[1], words: words(known[2]) };
  return { weight: "open", words: other(Math.min(LONGEST, Math.round(1 / (1 - chance))), Math.round(chance * ALL)) };
}

/** An answer as one sentence for those who hear the page, with how sure it is where that is known. @param {string} claim @param {string} odds */
export function spokenAnswer(claim, odds) {
  return odds ? words("spokenSure", { claim, odds }) : words("spoken", { claim });
}
