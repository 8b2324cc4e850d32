// @ts-check
/** The low position, and how far it lies below the one that is kept. */

import { amountOf } from "../../state/scenario.js";

/** @import { Position } from "../../types/page.d.ts" */

/** A low position to begin with: a little below the usual drag area, and lost as the fields' own defaults say. */
export const LOW = { name: "position.low", cda_m2: { value: 0.226, sd: 0.04, source: "typical" }, fade: {} };

/** How much lower the low position is, as the sentence says it. @param {Position} kept @param {Position} low */
export function lowerByOf(kept, low) {
  return Number((amountOf(kept.cda_m2) - amountOf(low.cda_m2)).toFixed(6));
}
