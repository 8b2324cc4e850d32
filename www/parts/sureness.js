// @ts-check
/** How sure a difference is, as a weight of type and in words. */

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
  return 1 - (Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
}

/**
 * Type is as heavy as the figure is sure: above two standard deviations, between one and two, below one.
 * @param {object} difference
 * @param {number} difference.value Its sign does not matter.
 * @param {number | null} difference.sd Nothing or zero: sure, with nothing to say.
 * @param {string} [difference.otherwise] What the other outcome is called: "it is faster".
 * @param {number} [difference.chance] The chance of the claimed sign, where draws have counted it; otherwise a normal one is taken.
 * @returns {{ weight: Weight, words: string }}
 */
export function howSure({ value, sd, otherwise = "it is the other way", chance }) {
  if (!sd || !(sd > 0)) return { weight: "sure", words: "" };
  const deviations = Math.abs(value) / sd;
  const right = chance ?? normalBelow(deviations);
  if (deviations >= 2.5) return { weight: "sure", words: "all but certain" };
  if (deviations >= 2) return { weight: "sure", words: "very likely" };
  if (deviations >= 1) return { weight: "likely", words: "likely" };
  const others = Math.min(0.5, Math.max(0.01, 1 - right));
  return { weight: "open", words: `too close to call: 1\u00a0in\u00a0${Math.round(1 / others)} ${otherwise}` };
}
