// @ts-check
/** How sure a difference is, in words and as a weight: counted in draws where there are any, otherwise to first order. */

import { howSure } from "../../parts/sureness.js";

/** @import { Drawn, Figure } from "../../types/core.d.ts" */
/** @import { Weight } from "../../parts/sureness.js" */

/** The chances of 2.5, 2 and 1 standard deviations, so that counted draws and first order speak the same words. @type {readonly [number, Weight, string][]} */
const WORDS = [[0.9938, "sure", "all but certain"], [0.9772, "sure", "very likely"], [0.8413, "likely", "likely"]];
/** A share of draws nearer to all of them than this is not a count of 100. */
const NEARLY_ALL = 0.995;

/**
 * "likely: 88 of 100 draws", "too close to call: slower in 56 of 100 draws"
 * @param {Figure} difference positive is faster
 * @param {Drawn | null} drawn
 * @returns {{ weight: Weight, words: string }}
 */
export function odds({ value, sd }, drawn) {
  const faster = value >= 0;
  if (!drawn || !(drawn.sd > 0)) return howSure({ value, sd, otherwise: faster ? "it is slower" : "it is faster" });
  const chance = faster ? drawn.share_positive : 1 - drawn.share_positive;
  const count = chance >= NEARLY_ALL ? "over 99" : String(Math.round(chance * 100));
  const known = WORDS.find(([least]) => chance >= least);
  if (known) return { weight: known[1], words: `${known[2]}: ${count} of\u00a0100\u00a0draws` };
  return { weight: "open", words: `too close to call: ${faster ? "faster" : "slower"} in\u00a0${count} of\u00a0100\u00a0draws` };
}
