// @ts-check
/** A course's points as lines of text, in the reader's units, and back. */

import { book } from "../words/index.js";
import { parse, number, toDisplay, unitOf } from "../units.js";

/** @import { Units } from "../units.js" */
/** @typedef {{ distance_m: number, elevation_m: number, bearing_deg?: number, radius_m?: number }} Point */

const say = book("sheet");

const COLUMNS = /** @type {const} */ ([
  { field: "distance_m", kind: "distance", name: "distance", digits: 4 },
  { field: "elevation_m", kind: "height", name: "elevation", digits: 2 },
  { field: "bearing_deg", kind: "angle", name: "bearing", digits: 1 },
  { field: "radius_m", kind: "length", name: "radius", digits: 1 },
]);

/** What stands for a bearing that is not known, where a radius follows it. */
const LEFT_OUT = "-";
const DASHES = new Set([LEFT_OUT, "\u2013", "\u2212"]);

/** The columns in words: "distance in km, elevation in m, bearing in degrees, bend radius in m". @param {Units} units */
export function columnWords(units) {
  return COLUMNS.map(({ kind, name }) => say(`column.${name}`, { unit: unitOf(kind, units).symbol })).join(", ");
}

/** @param {Point[]} points @param {Units} units */
export function pointsText(points, units) {
  return points
    .map((point) => COLUMNS.flatMap(({ field, kind, digits }) => {
      const value = point[field];
      if (value === undefined && field === "bearing_deg" && point.radius_m !== undefined) return [LEFT_OUT];
      return value === undefined ? [] : [number(toDisplay(kind, value, units), { digits, atLeast: 0 }).replace("\u2212", "-")];
    }).join("  "))
    .join("\n");
}

/**
 * Points from lines of two to four numbers; empty lines and lines that begin with # are passed over. A dash stands for a bearing that is left out.
 * @param {string} text @param {Units} units
 * @returns {{ points: Point[] } | { message: string }} a sentence that names the line where it cannot be read
 */
export function readPoints(text, units) {
  /** @type {Point[]} */
  const points = [];
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    if (!line.trim() || line.trim().startsWith("#")) continue;
    const at = index + 1;
    const cells = line.trim().split(/[\s;]+|,\s+/).length > 1 ? line.trim().split(/[\s;]+|,\s+/) : line.trim().split(",");
    if (cells.length < 2 || cells.length > COLUMNS.length) return { message: say("line.count", { line: at, count: cells.length }) };
    /** @type {Record<string, number>} */
    const point = {};
    for (const [column, cell] of cells.entries()) {
      const { field, kind, name } = COLUMNS[column];
      if (field === "bearing_deg" && DASHES.has(cell.replace(/,$/, ""))) continue;
      const value = parse(kind, cell.replace(/,$/, ""), units);
      if (value === null) return { message: say(`line.${name}`, { line: at, text: cell.slice(0, 20) }) };
      point[field] = value;
    }
    const last = points.at(-1);
    if (last && point.distance_m <= last.distance_m) return { message: say("line.not_beyond", { line: at }) };
    points.push(/** @type {Point} */ (/** @type {unknown} */ (point)));
  }
  return points.length < 2 ? { message: say("line.too_few") } : { points };
}
