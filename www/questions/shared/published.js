// @ts-check
/** Published figures that the page quotes in several places, written as the reader writes numbers. */

import { number, percent, quantity } from "../../units.js";

/** @import { Units } from "../../units.js" */

/** @typedef {readonly [mean: number, sd: number]} MeanAndSd */

/** What lower bars did to five riders, as shares: drag area less, power less (Polanco et al. 2020). */
export const LOWER_BARS = {
  cda: /** @type {MeanAndSd} */ ([0.107, 0.031]),
  power: /** @type {MeanAndSd} */ ([0.095, 0.054]),
};
/** How much better highly trained riders' 40-km trials were after four weeks of intervals, as shares (Laursen et al. 2002). */
export const FOUR_WEEKS = /** @type {const} */ ([0.044, 0.058]);
/** The length of those trials. */
export const TRIAL_M = 40_000;

/** What a low torso cost eleven riders at the anaerobic threshold, in watts (Faulkner et al. 2021). */
export const LOW_TORSO = /** @type {MeanAndSd} */ ([16, 20]);
/** How low it was: the angle of the torso. */
export const LOW_TORSO_DEG = 12;

/** "10.7 ± 3.1 %" @param {MeanAndSd} shares */
export function meanAndSd([mean, sd]) {
  return `${number(100 * mean, { digits: 1 })}\u00a0±\u00a0${percent(sd, 1)}`;
}

/** "16 ± 20 W" @param {MeanAndSd} watts @param {Units} units */
export function meanAndSdWatts([mean_w, sd_w], units) {
  return `${number(mean_w)}\u00a0±\u00a0${quantity("power", sd_w, units, { digits: 0 })}`;
}

/** Tenths only where there are any: "10 %", "7.5 %". @param {number} share */
export function shortPercent(share) {
  return percent(share, Math.round(share * 1000) % 10 === 0 ? 0 : 1);
}
