// @ts-check
/** How sure a figure is, as a weight of type, and a difference as a chance too. */

/** @typedef {"sure" | "likely" | "open"} Weight */

/**
 * The chance that a normal variable lies below `z`.
 * Abramowitz and Stegun (1964), Handbook of Mathematical Functions, formula 26.2.17; error below 7.5e-8.
 * @param {number} z
 * @returns {number}
 */
function normalBelow(z) {
  if (z < 0) return 1 - normalBelow(-z);
  const t = 1 / (1 + 0.2316419 * z);
  const polynomial = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
}

/**
 * Type is as heavy as the figure is sure: above two standard deviations, between one and two, below one.
 * @param {object} difference
 * @param {number} difference.value Its sign does not matter.
 * @param {number | null} difference.sd Nothing or zero: sure.
 * @returns {{ weight: Weight, chance: number }} `chance` is that of the sign being right, 1 where nothing is in doubt.
 */
export function howSure({ value, sd }) {
  if (!sd || !(sd > 0)) return { weight: "sure", chance: 1 };
  const deviations = Math.abs(value) / sd;
  return {
    weight: deviations >= 2 ? "sure" : deviations >= 1 ? "likely" : "open",
    chance: Math.min(1 - 1e-9, normalBelow(deviations)),
  };
}

/** A figure that stands by itself is heavy up to this share of doubt, and light beyond the second: an hour ± 1 minute is one to plan with, ± 4 minutes is not. */
const KNOWN_TO = 0.02;
const ROUGH_FROM = 0.05;

/** @param {{ value: number, sd: number }} figure @returns {Weight} */
export function weightOf({ value, sd }) {
  const doubt = sd / Math.abs(value);
  return doubt > ROUGH_FROM ? "open" : doubt > KNOWN_TO ? "likely" : "sure";
}
