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

/** A number of a table in SI. */
const PLAIN = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

/** Whether a line is empty or a remark. @param {string} line */
const isPassedOver = (line) => !line.trim() || line.trim().startsWith("#");

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
 * tabs; without one by semicolons; without one by commas before spaces; without one by spaces (not by those that are no more than the narrow
 * or unbreakable ones of groups of digits); without one by commas, of which there may be more than one only where some number of the text has
 * a decimal point, since without any a comma may be the decimal mark. What stands behind the elevation may be an empty cell or a dash: a bearing that
 * is left out is held from the line before, a radius that is left out is none, and without a share all the wind blows. Empty cells behind the last tab or semicolon are nothing.
 * Under a heading of the fields' own names, as in the tables that the page writes, all are plain decimals in SI.
 * @param {string} text @param {Units} units
 * @returns {{ points: Point[] } | { message: string }} a sentence that names the line where it cannot be read
 */
export function readPoints(text, units) {
  /** @type {Point[]} */
  const points = [];
  const lines = text.split(/\r?\n/);
  const hasPoints = lines.some((line) => !isPassedOver(line) && /\.\d/.test(line));
  let isSi = false;
  for (const [index, line] of lines.entries()) {
    if (isPassedOver(line)) continue;
    if (!points.length && isHeading(line)) {
      isSi = true;
      continue;
    }
    const at = index + 1;
    const sign = signOf(line);
    const cells = cellsOf(line, sign);
    if (sign === "," && cells.length > 2 && !hasPoints && !isSi) return { message: say("line.commas", { line: at }) };
    if (cells.length < 2 || cells.length > COLUMNS.length)
      return { message: say("line.count", { line: at, count: cells.length }) };
    /** @type {Record<string, number>} */
    const point = {};
    for (const [column, cell] of cells.entries()) {
      const { field, kind, name, digits } = COLUMNS[column];
      if ((!cell || DASHES.has(cell)) && MAY_BE_LEFT_OUT.has(field)) continue;
      const value = isSi ? Number(PLAIN.test(cell) ? cell : NaN) : parse(kind, cell, units, digits);
      if (value === null || !Number.isFinite(value))
        return { message: say(`line.${name}`, { line: at, text: cell.slice(0, 20) }) };
      point[field] = value;
    }
    const last = points.at(-1);
    if (last && point.distance_m <= last.distance_m) return { message: say("line.notBeyond", { line: at }) };
    points.push(/** @type {Point} */ (/** @type {unknown} */ (point)));
  }
  return points.length < 2 ? { message: say("line.tooFew") } : { points };
}

/** What parts the numbers of a line. @param {string} line */
const signOf = (line) =>
  ["\t", ";"].find((sign) => line.includes(sign)) ?? [", ", " "].find((sign) => line.trim().includes(sign)) ?? ",";

/** The numbers of a line. @param {string} line @param {string} sign */
function cellsOf(line, sign) {
  const isCounted = sign === "\t" || sign === ";";
  const parted = isCounted ? line.split(sign) : line.trim().split(sign === "," ? "," : new RegExp(`${sign}+`));
  const cells = parted.map((cell) => cell.trim());
  while (isCounted && cells.at(-1) === "") cells.pop();
  return cells;
}
