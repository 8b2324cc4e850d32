// @ts-check
/** Rounding that adds up on the page. */

/**
 * Rounds parts so that they sum to their rounded whole: each is rounded down, and what is missing goes to those that lost most.
 * @param {readonly number[]} parts @param {number} [digits] @returns {number[]}
 */
export function partsThatAddUp(parts, digits = 0) {
  const scale = 10 ** digits;
  const scaled = parts.map((part) => part * scale);
  const floors = scaled.map(Math.floor);
  const missing = Math.round(scaled.reduce((sum, part) => sum + part, 0)) - floors.reduce((sum, part) => sum + part, 0);
  const order = scaled.map((part, index) => ({ index, lost: part - floors[index] })).sort((a, b) => b.lost - a.lost);
  for (const { index } of order.slice(0, Math.max(0, missing))) floors[index] += 1;
  return floors.map((part) => part / scale);
}

/**
 * The smallest of a ladder that is at least `wanted`, or the last: an axis that ends on it stands still while the value wanders.
 * @param {readonly number[]} ladder @param {number} wanted
 */
export function rung(ladder, wanted) {
  return ladder.find((one) => one >= wanted) ?? ladder[ladder.length - 1];
}
