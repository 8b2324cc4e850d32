// @ts-check
/** How sure a difference is, in words and as a weight: counted in draws where there are any, otherwise to first order. */

import { howSure } from "../../parts/sureness.js";

/** @import { Drawn, Figure } from "../../types/core.d.ts" */
/** @import { Weight } from "../../parts/sureness.js" */

/** A share of draws nearer to all of them than this is not a count of 100. */
const NEARLY_ALL = 0.995;

/**
 * "likely: 83 of 100 draws", "too close to call: slower in 56 of 100 draws"
 * @param {Figure} difference positive is faster
 * @param {Drawn | null} drawn
 * @returns {{ weight: Weight, words: string }}
 */
export function odds({ value, sd }, drawn) {
  const faster = value >= 0;
  const chance = drawn ? (faster ? drawn.share_positive : 1 - drawn.share_positive) : undefined;
  const { weight, words } = howSure({ value, sd, chance, otherwise: faster ? "it is slower" : "it is faster" });
  if (chance === undefined || !words) return { weight, words };
  const count = chance >= NEARLY_ALL ? "over 99" : String(Math.round(chance * 100));
  const way = weight === "open" ? `${faster ? "faster" : "slower"} in ` : "";
  return { weight, words: `${words.split(":")[0]}: ${way}${count} of\u00a0100\u00a0draws` };
}
