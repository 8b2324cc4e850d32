// @ts-check
/** As many digits of a drag area as its ± supports, and as many as are kept. */

import * as show from "../../units.js";

/** @import { Units } from "../../units.js" */

/** Without a ± a drag area is written as anywhere on the page. */
const USUAL = 3;
/** The ± below which a digit more is shown, m². */
const FINER_M2 = /** @type {const} */ ([
  [0.00095, 4],
  [0.0095, 3],
]);
const COARSEST = 2;

/** @param {number | null} sd_m2 */
export function areaDigits(sd_m2) {
  if (sd_m2 === null) return USUAL;
  return FINER_M2.find(([below]) => sd_m2 < below)?.[1] ?? COARSEST;
}

/** "0.231 m²". @param {number} m2 @param {number | null} sd_m2 @param {Units} units */
export const area = (m2, sd_m2, units) => show.quantity("area", m2, units, { digits: areaDigits(sd_m2) });

/** As it is kept: a hundredth of a thousandth of a square metre is finer than any test. @param {number} m2 */
export const kept = (m2) => Math.round(m2 * 1e5) / 1e5;
