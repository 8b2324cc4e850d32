// @ts-check
/** Where a value lies on an axis, which value lies at a place, and round values between two. */

/**
 * @typedef {object} Way
 * @property {(place_px: number) => number} invert The value at a place.
 * @property {() => [number, number]} domain The values at its two ends.
 */
/** The place of a value, in pixels. @typedef {((value: number) => number) & Way} Scale */

/** Where a step of 1 gives way to 2, 2 to 5, and 5 to 10: the geometric means between them. */
const TO_TWO = Math.sqrt(2);
const TO_FIVE = Math.sqrt(10);
const TO_TEN = Math.sqrt(50);

const same = (/** @type {number} */ value) => value;

/**
 * @param {boolean} log Whether equal ratios are equally far apart.
 * @param {readonly [number, number]} domain
 * @param {readonly [number, number]} range Pixels.
 * @returns {Scale}
 */
export function scaleOf(log, [from, to], [start, end]) {
  const [flat, back] = log ? [Math.log, Math.exp] : [same, same];
  const origin = flat(from);
  const span = flat(to) - origin;
  const length = end - start;
  // Where the domain is a single value, that lies in the middle.
  const place = (/** @type {number} */ value) => start + length * (span === 0 ? 0.5 : (flat(value) - origin) / span);
  return Object.assign(place, {
    invert: (/** @type {number} */ place_px) => back(origin + span * ((place_px - start) / length)),
    domain: () => /** @type {[number, number]} */ ([from, to]),
  });
}

/**
 * The multiples of 1, 2 or 5 times a power of ten from `low` to `high`, about as many as are wanted.
 * @param {number} low
 * @param {number} high
 * @param {number} count
 */
export function roundValues(low, high, count) {
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  const step = power * (share >= TO_TEN ? 10 : share >= TO_FIVE ? 5 : share >= TO_TWO ? 2 : 1);
  // A tenth is not exact, ten is.
  const parts = Math.round(1 / step);
  const times = (/** @type {number} */ n) => (step < 1 ? n / parts : n * step);
  const first = Math.ceil(low / step);
  const last = Math.floor(high / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => times(first + n));
}
