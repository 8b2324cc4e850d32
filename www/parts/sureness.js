// @ts-check
/** How well a figure is known, as a weight of type. */

/** @typedef {"sure" | "likely" | "open"} Weight */

/** A figure that stands by itself is heavy up to this share of doubt, and light beyond the second: an hour ± 1 minute is one to plan with, ± 4 minutes is not. */
const KNOWN_TO = 0.02;
const ROUGH_FROM = 0.05;

/** @param {{ value: number, sd: number }} figure @returns {Weight} */
export function weightOf({ value, sd }) {
  const doubt = sd / Math.abs(value);
  return doubt > ROUGH_FROM ? "open" : doubt > KNOWN_TO ? "likely" : "sure";
}
