// @ts-check
/** How far the low position lies below the one that is kept. */

/** How much lower the low position is, as the sentence says it. @param {any} kept @param {any} low */
export function lowerByOf(kept, low) {
  return Number((kept.cda_m2.value - low.cda_m2.value).toFixed(6));
}
