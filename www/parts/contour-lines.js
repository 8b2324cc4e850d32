// @ts-check
/** Lines of equal value through a grid. */

import { contours } from "d3-contour";

/**
 * @typedef {object} Grid
 * @property {ArrayLike<number>} xs Increasing, one for each column.
 * @property {ArrayLike<number>} ys Increasing, one for each row.
 * @property {Float64Array} values Row by row from the lowest y: `values[row * xs.length + column]`.
 */

/** @typedef {[number, number][]} Polyline In the grid's own units. */

/**
 * @param {Grid} grid
 * @param {readonly number[]} levels
 * @returns {{ level: number, lines: Polyline[] }[]}
 */
export function contourLines({ xs, ys, values }, levels) {
  if (xs.length < 2 || ys.length < 2 || values.length !== xs.length * ys.length) return [];
  const trace = contours().size([xs.length, ys.length]);
  const cells = /** @type {number[]} */ (/** @type {unknown} */ (values));
  return levels.map((level) => ({
    level,
    lines: trace
      .contour(cells, level)
      .coordinates.flatMap((rings) => rings.flatMap((ring) => openAtEdges(ring, xs, ys))),
  }));
}

/**
 * d3-contour closes its areas half a cell outside the grid; only what lies inside is a line of equal value.
 * @param {readonly number[][]} ring
 * @param {ArrayLike<number>} xs
 * @param {ArrayLike<number>} ys
 */
function openAtEdges(ring, xs, ys) {
  const isInside = (/** @type {number[]} */ [x, y]) => x > 0 && x < xs.length && y > 0 && y < ys.length;
  const outside = ring.findIndex((point) => !isInside(point));
  const points = outside < 0 ? ring : [...ring.slice(outside, -1), ...ring.slice(0, outside + 1)];
  /** @type {Polyline[]} */
  const lines = [];
  /** @type {Polyline} */
  let open = [];
  for (const point of points) {
    if (isInside(point)) {
      open.push([valueAtIndex(xs, point[0] - 0.5), valueAtIndex(ys, point[1] - 0.5)]);
    } else {
      if (open.length > 1) lines.push(open);
      open = [];
    }
  }
  if (open.length > 1) lines.push(open);
  return lines;
}

/**
 * @param {ArrayLike<number>} values
 * @param {number} index May fall between two.
 */
function valueAtIndex(values, index) {
  const before = Math.max(0, Math.min(values.length - 2, Math.floor(index)));
  return values[before] + (values[before + 1] - values[before]) * (index - before);
}
