// @ts-check
/** Tables and columns as separated values (RFC 4180), in UTF-8. */

import { book } from "../words/index.js";

const words = book("save");

/** Lets spreadsheets see that a text is UTF-8; a text of plain letters needs none. */
const MARK = "\ufeff";
const LINE_END = "\r\n";
/** Signs that make a spreadsheet work a text out instead of showing it, also as the full-width signs that some read as the same, and behind spaces. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: some spreadsheets skip control characters in front of a formula.
const FORMULA = /^[\s\u0000-\u001f\u200b-\u200f\ufeff]*[=+\-@|%\uff1d\uff0b\uff0d\uff20\u2212]|^[\t\r\n]/;
/** A number, a time or a share, which is what it says. */
const PLAIN = /^[+-]?\d[\d.,: ]*%?$/;

/** @typedef {string | number} Cell */

/** @param {readonly (readonly Cell[])[]} rows the first one names the columns @param {"," | ";"} [separator] the semicolon where a comma is the decimal mark, as spreadsheets have it there */
export function csvText(rows, separator = ",") {
  const text = rows.map((row) => row.map((cell) => field(cell, separator)).join(separator) + LINE_END).join("");
  return /\P{ASCII}/u.test(text) ? MARK + text : text;
}

/** @param {Cell} cell @param {string} separator */
function field(cell, separator) {
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  const safe = FORMULA.test(cell) && !PLAIN.test(cell) ? `'${cell}` : cell;
  return /["\r\n]/.test(safe) || safe.includes(separator) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** What is in the cells of one column: each figure of a cell by what it is. @typedef {Map<string, string>} Figures */

/**
 * What a table of the page shows, as rows with one figure a cell: where the cells of a column hold several, each has a column of its own, whose
 * heading says what it is. A unit that every figure of a column carries moves to its heading.
 * @param {HTMLTableElement} table
 */
export function tableRows(table) {
  const shown = Array.from(table.rows, (row) =>
    Array.from(row.cells)
      .filter((cell) => cell.getAttribute("aria-hidden") !== "true")
      .map(figuresOf),
  );
  return rowsOfFigures(shown, table.tHead !== null, (part) =>
    words.has(`part.${part}`) ? words(/** @type {never} */ (`part.${part}`)) : "",
  );
}

/**
 * @param {Figures[][]} shown @param {boolean} hasHead @param {(part: string) => string} nameOf what a part of a cell is called
 */
export function rowsOfFigures(shown, hasHead, nameOf) {
  const width = Math.max(0, ...shown.map((row) => row.length));
  const body = hasHead ? shown.slice(1) : shown;
  /** @type {string[][]} */
  const columns = [];
  for (let column = 0; column < width; column += 1) {
    const heading = hasHead ? [...(shown[0]?.[column]?.values() ?? [])].join(" ") : "";
    const parts = new Set(body.flatMap((row) => [...(row[column]?.keys() ?? [])]));
    for (const [place, part] of [...(parts.size ? parts : [FIRST])].entries()) {
      const cells = body.map((row) => row[column]?.get(part) ?? "");
      const unit = column > 0 || place > 0 ? unitOfAll(cells) : undefined;
      const named = [heading, place > 0 ? nameOf(part) : "", unit].filter(Boolean).join(", ");
      columns.push([named, ...cells.map((text) => (unit ? text.replace(UNIT, "") : text).replace(/^± */, "").trim())]);
    }
  }
  return Array.from({ length: body.length + 1 }, (_, row) => columns.map((column) => column[row]));
}

/** The figure of a cell that holds one, and the first of several. */
const FIRST = "value";

/** The unit at the end of a figure. */
const UNIT = /(?<=\d)\s*(%|°C?F?|[a-zA-Z][\w/²³°]*)$/;

/** @param {string[]} texts */
function unitOfAll(texts) {
  const filled = texts.filter(Boolean);
  const units = new Set(filled.map((text) => (/\d:\d\d/.test(text) ? undefined : UNIT.exec(text)?.[1])));
  return units.size === 1 ? [...units][0] : undefined;
}

/** The figures of a cell, in signs that other programs read as numbers. @param {HTMLTableCellElement} cell @returns {Figures} */
function figuresOf(cell) {
  const second = cell.matches(".amount") ? cell.querySelector(".soft") : null;
  const whole = cell.textContent ?? "";
  const parts = Array.from(
    cell.querySelectorAll("[data-part]"),
    (part) => /** @type {[string, string]} */ ([part.getAttribute("data-part") ?? "", part.textContent ?? ""]),
  );
  if (second)
    parts.push(
      [FIRST, whole.slice(0, whole.length - (second.textContent ?? "").length)],
      ["spread", second.textContent ?? ""],
    );
  return new Map(
    (parts.length ? parts : [/** @type {[string, string]} */ ([FIRST, whole])]).map(([part, text]) => [
      part,
      plainSigns(text),
    ]),
  );
}

/** @param {string} text */
const plainSigns = (text) =>
  text
    .replace(/[\u00a0\u202f]/g, " ")
    .replaceAll("\u2212", "-")
    .replace(/[\u2068\u2069]/g, "")
    .trim();

/** @typedef {{ by: string, rows: Cell[][] }} Columns */

/**
 * The columns of an answer as tables, each figure in full: columns of one length stand side by side, and a grid over two of them
 * becomes a row for each point. Where a column holds the figures of one choice after the other, each over the first column, its rows are
 * labelled by both.
 * @param {Record<string, ArrayLike<number>>} columns named by what they hold with the SI unit last
 * @param {readonly string[]} [choices] what the choices are called
 * @returns {Columns[]}
 */
export function columnTables(columns, choices = []) {
  const entries = Object.entries(columns).filter(([, values]) => values.length > 0);
  const [first, second, third] = entries;
  if (
    entries.length === 3 &&
    third[1].length === first[1].length * second[1].length &&
    third[1].length > first[1].length
  )
    return [gridTable(first, second, third)];
  const points = first?.[1].length ?? 0;
  if (
    choices.length > 1 &&
    entries.length > 1 &&
    entries.slice(1).every(([, values]) => values.length === points * choices.length)
  ) {
    const rows = choices.flatMap((name, choice) =>
      Array.from(first[1], (at, point) => [
        name,
        at,
        ...entries.slice(1).map(([, values]) => values[choice * points + point]),
      ]),
    );
    return [{ by: first[0], rows: [["choice", ...entries.map(([name]) => name)], ...rows] }];
  }
  const lengths = [...new Set(entries.map(([, values]) => values.length))];
  return lengths.map((length) => {
    const alike = entries.filter(([, values]) => values.length === length);
    const rows = Array.from({ length }, (_, index) => alike.map(([, values]) => values[index]));
    return { by: alike[0][0], rows: [alike.map(([name]) => name), ...rows] };
  });
}

/** @typedef {[name: string, values: ArrayLike<number>]} Column */

/** @param {Column} across @param {Column} up @param {Column} values a row of `across` after another @returns {Columns} */
function gridTable(across, up, values) {
  const width = across[1].length;
  const rows = Array.from(values[1], (value, index) => [
    across[1][index % width],
    up[1][Math.floor(index / width)],
    value,
  ]);
  return { by: `${across[0]} and ${up[0]}`, rows: [[across[0], up[0], values[0]], ...rows] };
}
