// @ts-check
/**
 * Stands in the bundles for the library of interpolation that the scales import: theirs also has colours, texts and shapes, five
 * kilobytes that every first visit would fetch. The scales of charts are of numbers alone.
 */

/** @param {number} a @param {number} b */
export const interpolateNumber = (a, b) => (/** @type {number} */ t) => a * (1 - t) + b * t;
export const interpolate = interpolateNumber;

/** @param {number} a @param {number} b */
export const interpolateRound = (a, b) => (/** @type {number} */ t) => Math.round(a * (1 - t) + b * t);

/** Only scales that diverge, which no chart has, are made of several pieces. */
export const piecewise = undefined;
