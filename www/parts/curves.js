// @ts-check
/** Paths through columns of numbers, broken where one is missing. */

import { polyline } from "./svg.js";

/** @import { Canvas } from "./plot.js" */

/**
 * A point alone is closed, which makes it a dot.
 * @param {Pick<Canvas, "xScale" | "yScale">} canvas
 * @param {ArrayLike<number>} xs
 * @param {ArrayLike<number>} ys
 */
export function linePath({ xScale, yScale }, xs, ys) {
  return runs(xs, [ys])
    .map((run) => polyline(run.map((i) => [xScale(xs[i]), yScale(ys[i])])) + (run.length > 1 ? "" : "Z"))
    .join("");
}

/**
 * There along one edge and back along the other.
 * @param {Pick<Canvas, "xScale" | "yScale">} canvas
 * @param {ArrayLike<number>} xs
 * @param {ArrayLike<number>} low
 * @param {ArrayLike<number>} high
 */
export function bandPath({ xScale, yScale }, xs, low, high) {
  /** @param {number[]} run @param {ArrayLike<number>} ys @returns {[number, number][]} */
  const edge = (run, ys) => run.map((i) => [xScale(xs[i]), yScale(ys[i])]);
  return runs(xs, [low, high])
    .map((run) => `${polyline([...edge(run, high), ...edge(run, low).reverse()])}Z`)
    .join("");
}

/**
 * The places at which every column has a number, in runs without a gap.
 * @param {ArrayLike<number>} xs
 * @param {readonly ArrayLike<number>[]} columns
 */
function runs(xs, columns) {
  /** @type {number[][]} */
  const found = [];
  let open = false;
  for (let i = 0; i < xs.length; i += 1) {
    const there = columns.every((column) => Number.isFinite(column[i]));
    if (there && !open) found.push([]);
    if (there) found[found.length - 1].push(i);
    open = there;
  }
  return found;
}
