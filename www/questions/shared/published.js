// @ts-check
/** Published figures that the page quotes in several places, written as the reader writes numbers. */

import { published } from "../../core.js";
import { number, percent, quantity } from "../../units.js";

/** @import { MeanAndSd } from "../../types/core.d.ts" */
/** @import { Units } from "../../units.js" */

/** What lower bars did to five riders, as shares: drag area less, power less (Polanco et al. 2020). */
export const LOWER_BARS = {
  cda: published().lower_bars_cda_cut,
  power: published().lower_bars_power_cost,
};
/** How much better highly trained riders' 40-km trials were after four weeks of intervals, as shares (Laursen et al. 2002). */
export const FOUR_WEEKS = published().four_weeks_trial_gain;
/** The length of those trials. */
export const TRIAL_M = published().four_weeks_trial_m;

/** What a low torso cost eleven riders at the anaerobic threshold, in watts (Faulkner et al. 2021). */
export const LOW_TORSO = published().low_torso_cost_w;
/** How low it was: the angle of the torso. */
export const LOW_TORSO_DEG = published().low_torso_deg;

/** "10.7 ± 3.1 %" @param {MeanAndSd} shares */
export function meanAndSd({ mean, sd }) {
  return `${number(100 * mean, { digits: 1 })}\u00a0±\u00a0${percent(sd, 1)}`;
}

/** "16 ± 20 W" @param {MeanAndSd} watts @param {Units} units */
export function meanAndSdWatts({ mean, sd }, units) {
  return `${number(mean)}\u00a0±\u00a0${quantity("power", sd, units, { digits: 0 })}`;
}

/** Tenths only where there are any: "10 %", "7.5 %". @param {number} share */
export function shortPercent(share) {
  return percent(share, Math.round(share * 1000) % 10 === 0 ? 0 : 1);
}
