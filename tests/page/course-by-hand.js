// @ts-check
/** A second reader of pasted courses, which knows the stated rules and nothing of the page's own reader: tests compare the two. */

import { isDigit, numberByHand } from "./number-by-hand.js";

/** The columns, each with the metres (or degrees) of what may be written behind its numbers. */
const COLUMNS = /** @type {const} */ ([
  { field: "distance_m", name: "distance", digits: 4, units: { km: 1000, m: 1, mi: 1609.344 } },
  { field: "elevation_m", name: "elevation", digits: 2, units: { m: 1, ft: 0.3048 } },
  { field: "bearing_deg", name: "bearing", digits: 1, units: { "°": 1 } },
  { field: "radius_m", name: "radius", digits: 1, units: { m: 1 } },
  { field: "wind_share", name: "windShare", digits: 0, units: { "%": 0.01 } },
]);
/** As the page writes it now, and as it wrote it once. */
export const HEADINGS = [
  "distance_m,elevation_m,bearing_deg,radius_m,wind_share",
  "distance_m,elevation_m,bearing_deg,radius_m",
];
/** What is read is kept to so many figures. */
const FIGURES = 12;
const NOTHING = ["", "-", "\u2013", "\u2212"];

/** @typedef {{ key: string, values: Record<string, string | number> }} Said what the page says, by its place in the catalogue */

/** Whether a decimal point stands in the text: a point before a digit, in a line that is no remark. @param {string[]} lines */
const anyPoint = (lines) =>
  lines.some((line) => !line.startsWith("#") && [...line].some((sign, n) => sign === "." && isDigit(line[n + 1])));

/**
 * The cells of a line, by the first of these that stands in it: a tab, a semicolon, a comma before a space, a space, a comma.
 * @param {string} whole @returns {{ cells: string[], sign: string }}
 */
function cellsByHand(whole) {
  for (const sign of ["\t", ";"]) {
    if (!whole.includes(sign)) continue;
    const cells = whole.split(sign).map((cell) => cell.trim());
    while (cells.at(-1) === "") cells.pop();
    return { cells, sign };
  }
  const line = whole.trim();
  const sign = [", ", " "].find((one) => line.includes(one)) ?? ",";
  if (sign === ",") return { cells: line.split(",").map((cell) => cell.trim()), sign };
  const cells = [""];
  for (let at = 0; at < line.length; at += 1) {
    if (!line.startsWith(sign, at)) cells[cells.length - 1] += line[at];
    else {
      cells.push("");
      // Several spaces are as one.
      at += sign.length - 1;
      while (line[at + 1] === " ") at += 1;
    }
  }
  return { cells: cells.map((cell) => cell.trim()), sign };
}

/** A number as a table in SI has it: digits with a point at most. @param {string} cell @returns {number | null} */
function plainNumber(cell) {
  const digits = cell.startsWith("-") || cell.startsWith("+") ? cell.slice(1) : cell;
  const parts = digits.split(".");
  const isPlain = parts.length <= 2 && parts.join("") !== "" && [...parts.join("")].every(isDigit);
  return isPlain && Number.isFinite(Number(cell)) ? Number(cell) : null;
}

/**
 * @param {string} cell @param {number} column @param {Record<string, string>} own the units of the reader, by column
 * @param {string} mark @returns {number | null} in SI
 */
function valueByHand(cell, column, own, mark) {
  const { name, digits, units } = COLUMNS[column];
  const read = numberByHand(cell, digits, mark);
  /** @type {Record<string, number>} */
  const known = units;
  const size = read && known[read.unit || own[name]];
  return read && size ? Number((read.value * size).toPrecision(FIGURES)) : null;
}

/**
 * @param {string} text @param {Record<string, string>} own @param {string} mark
 * @returns {{ points: Record<string, number>[] } | { wrong: Said }}
 */
export function courseByHand(text, own, mark) {
  const raw = text.split("\n").map((line) => (line.endsWith("\r") ? line.slice(0, -1) : line));
  const hasPoint = anyPoint(raw.map((line) => line.trim()));
  /** @type {Record<string, number>[]} */
  const points = [];
  let isSi = false;
  for (const [index, whole] of raw.entries()) {
    const line = whole.trim();
    if (line === "" || line.startsWith("#")) continue;
    if (HEADINGS.includes(line) && points.length === 0) {
      isSi = true;
      continue;
    }
    const at = index + 1;
    const wrong = (/** @type {string} */ key, /** @type {Record<string, string | number>} */ more = {}) => ({
      wrong: { key, values: { line: at, ...more } },
    });
    const { cells, sign } = cellsByHand(whole);
    if (sign === "," && cells.length > 2 && !hasPoint && !isSi) return wrong("line.commas");
    if (cells.length < 2 || cells.length > 5) return wrong("line.count", { count: cells.length });
    /** @type {Record<string, number>} */
    const point = {};
    for (const [column, cell] of cells.entries()) {
      const { field, name } = COLUMNS[column];
      if (column >= 2 && NOTHING.includes(cell)) continue;
      const value = isSi ? plainNumber(cell) : valueByHand(cell, column, own, mark);
      if (value === null) return wrong(`line.${name}`, { text: cell.slice(0, 20) });
      point[field] = value;
    }
    const last = points.at(-1);
    if (last && !(point.distance_m > last.distance_m)) return wrong("line.notBeyond");
    points.push(point);
  }
  return points.length < 2 ? { wrong: { key: "line.tooFew", values: {} } } : { points };
}
