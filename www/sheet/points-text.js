// @ts-check
/** A course's points as lines of text, in the reader's units, and back. */

import { number, parse, toDisplay, unitOf } from "../units.js";
import { book } from "../words/index.js";

/** @import { Units } from "../units.js" */
/** @typedef {{ distance_m: number, elevation_m: number, bearing_deg?: number, radius_m?: number, wind_share?: number }} Point */

const say = book("sheet");

const COLUMNS = /** @type {const} */ ([
  { field: "distance_m", kind: "distance", name: "distance", digits: 4 },
  { field: "elevation_m", kind: "height", name: "elevation", digits: 2 },
  { field: "bearing_deg", kind: "angle", name: "bearing", digits: 1 },
  { field: "radius_m", kind: "length", name: "radius", digits: 1 },
  { field: "wind_share", kind: "share", name: "windShare", digits: 0 },
]);
/** What a line may leave out. */
const MAY_BE_LEFT_OUT = new Set(["bearing_deg", "radius_m", "wind_share"]);

/** What stands for a number that is not known, where another follows it. */
const LEFT_OUT = "-";
const DASHES = new Set([LEFT_OUT, "\u2013", "\u2212"]);

/** The first line of a table that holds the fields by their own names, in SI: such as the page writes. @param {string} line */
const isHeading = (line) =>
  [COLUMNS, COLUMNS.slice(0, -1)].some((columns) => line.trim() === columns.map(({ field }) => field).join(","));

/** The columns in words: "distance in km, elevation in m, bearing in degrees, bend radius in m". @param {Units} units */
export function columnWords(units) {
  return COLUMNS.map(({ kind, name }) => say(`column.${name}`, { unit: unitOf(kind, units).symbol })).join(", ");
}

/** @param {Point[]} points @param {Units} units */
export function pointsText(points, units) {
  return points
    .map((point) =>
      COLUMNS.slice(0, 1 + COLUMNS.findLastIndex(({ field }) => point[field] !== undefined))
        .map(({ field, kind, digits }) => {
          const value = point[field];
          return value === undefined
            ? LEFT_OUT
            : number(toDisplay(kind, value, units), { digits, atLeast: 0 }).replace("\u2212", "-");
        })
        .join("  "),
    )
    .join("\n");
}

/**
 * Points from lines of two to five numbers; empty lines and lines that begin with # are passed over. The numbers of a line are parted by
 * tabs; without one by semicolons; without one by spaces (not by those that only part groups of digits) or a comma and a space; without one by
 * commas, where some number of the text has a decimal point, since without any a comma may be the decimal mark. Between tabs or semicolons
 * a cell may be empty, and a dash stands for one: a bearing that is left out is held from the line before, a radius that is left out is none, and without a share all the wind blows.
 * Under a heading of the fields' own names, as in the tables that the page writes, all are in SI with points and commas.
 * @param {string} text @param {Units} units
 * @returns {{ points: Point[] } | { message: string }} a sentence that names the line where it cannot be read
 */
export function readPoints(text, units) {
  /** @type {Point[]} */
  const points = [];
  const hasPoints = /\d\.\d/.test(text);
  let isSi = false;
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    if (!line.trim() || line.trim().startsWith("#")) continue;
    if (!points.length && isHeading(line)) {
      isSi = true;
      continue;
    }
    const at = index + 1;
    const cells = cellsOf(line);
    if (cells.length > 2 && !/[\t; ]/.test(line.trim()) && !hasPoints && !isSi)
      return { message: say("line.commas", { line: at }) };
    if (cells.length < 2 || cells.length > COLUMNS.length)
      return { message: say("line.count", { line: at, count: cells.length }) };
    /** @type {Record<string, number>} */
    const point = {};
    for (const [column, cell] of cells.entries()) {
      const { field, kind, name, digits } = COLUMNS[column];
      if ((!cell || DASHES.has(cell)) && MAY_BE_LEFT_OUT.has(field)) continue;
      const value = isSi ? Number(cell || NaN) : parse(kind, cell, units, digits);
      if (value === null || Number.isNaN(value))
        return { message: say(`line.${name}`, { line: at, text: cell.slice(0, 20) }) };
      point[field] = value;
    }
    const last = points.at(-1);
    if (last && point.distance_m <= last.distance_m) return { message: say("line.notBeyond", { line: at }) };
    points.push(/** @type {Point} */ (/** @type {unknown} */ (point)));
  }
  return points.length < 2 ? { message: say("line.tooFew") } : { points };
}

/** The numbers of a line. Empty cells at its end are nothing. @param {string} line */
function cellsOf(line) {
  const sign = line.includes("\t") ? "\t" : line.includes(";") ? ";" : null;
  if (sign) {
    const cells = line.split(sign).map((cell) => cell.trim());
    while (cells.length && !cells[cells.length - 1]) cells.pop();
    return cells;
  }
  const spaced = line.trim().split(/,? +/);
  return spaced.length > 1 ? spaced : line.trim().split(",");
}
