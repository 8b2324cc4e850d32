// @ts-check
/** The paths of curves and bands that are given in columns. */

import { polyline } from "./svg.js";

/** @typedef {(index: number) => number} Place Pixels, of the point at an index; not finite where there is none. */

/**
 * Runs of points that are all there.
 * @param {number} count
 * @param {readonly Place[]} places
 */
function runs(count, places) {
  /** @type {number[][]} */
  const found = [];
  let before = false;
  for (let i = 0; i < count; i += 1) {
    const there = places.every((place) => Number.isFinite(place(i)));
    if (there && !before) found.push([]);
    if (there) found[found.length - 1].push(i);
    before = there;
  }
  return found;
}

/** @param {number} count @param {Place} x @param {Place} y */
export function curvePath(count, x, y) {
  return runs(count, [x, y]).map((run) => polyline(run.map((i) => [x(i), y(i)]))).join("");
}

/** @param {number} count @param {Place} x @param {Place} low @param {Place} high */
export function bandPath(count, x, low, high) {
  return runs(count, [x, low, high]).map((run) => `${polyline([...run.map((i) => /** @type {const} */ ([x(i), high(i)])), ...run.reverse().map((i) => /** @type {const} */ ([x(i), low(i)]))])}Z`).join("");
}
