// @ts-check
/** Tables and columns as separated values (RFC 4180), in UTF-8. */

/** Lets spreadsheets see that a text is UTF-8; a text of plain letters needs none. */
const MARK = "\ufeff";
const LINE_END = "\r\n";
/** Signs that make a spreadsheet work a text out instead of showing it. */
const FORMULA = /^[=@\t\r]|^[+-](?![\d.])/;

/** @typedef {string | number} Cell */

/** @param {readonly (readonly Cell[])[]} rows the first one names the columns @param {"," | ";"} [separator] the semicolon where a comma is the decimal mark, as spreadsheets have it there */
export function csvText(rows, separator = ",") {
  const text = rows.map((row) => row.map((cell) => field(cell, separator)).join(separator) + LINE_END).join("");
  return /[^\x00-\x7f]/.test(text) ? MARK + text : text;
}

/** @param {Cell} cell @param {string} separator */
function field(cell, separator) {
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return /["\r\n]/.test(safe) || safe.includes(separator) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * What a table of the page shows, as rows. A unit that every figure of a column carries moves to its heading.
 * @param {HTMLTableElement} table
 */
export function tableRows(table) {
  const shown = Array.from(table.rows, (row) => Array.from(row.cells).filter((cell) => cell.getAttribute("aria-hidden") !== "true").flatMap(texts));
  const width = Math.max(...shown.map((row) => row.length));
  const [head = [], ...body] = shown.map((row) => [...row, ...Array(width - row.length).fill("")]);
  const named = table.tHead ? head : Array(width).fill("");
  const rows = table.tHead ? body : [head, ...body];
  for (let column = 1; column < width; column += 1) {
    const unit = unitOfAll(rows.map((row) => row[column]));
    if (!unit) continue;
    named[column] = named[column] ? `${named[column]}, ${unit}` : unit;
    for (const row of rows) row[column] = row[column].replace(UNIT, "");
  }
  return [named, ...rows].map((row) => row.map((text) => text.trim()));
}

/** The unit at the end of a figure. */
const UNIT = /(?<=\d)\s*(%|°C?F?|[a-zA-Z][\w/²³°]*)$/;

/** @param {string[]} texts */
function unitOfAll(texts) {
  const filled = texts.filter(Boolean);
  const units = new Set(filled.map((text) => (/\d:\d\d/.test(text) ? undefined : UNIT.exec(text)?.[1])));
  return units.size === 1 ? [...units][0] : undefined;
}

/** A cell's text in signs that other programs read as numbers; a softer second figure is a cell of its own. @param {HTMLTableCellElement} cell */
function texts(cell) {
  const second = cell.matches(".amount") ? cell.querySelector(".soft")?.textContent : null;
  const whole = cell.textContent ?? "";
  return (second ? [whole.slice(0, whole.length - second.length), second] : [whole]).map((text) => text.replace(/[\u00a0\u202f]/g, " ").replaceAll("\u2212", "-").trim());
}

/** @typedef {{ by: string, rows: Cell[][] }} Columns */

/**
 * The columns of an answer as tables, each figure in full: columns of one length stand side by side, and a grid over two of them
 * becomes a row for each point.
 * @param {Record<string, ArrayLike<number>>} columns named by what they hold with the SI unit last
 * @returns {Columns[]}
 */
export function columnTables(columns) {
  const entries = Object.entries(columns).filter(([, values]) => values.length > 0);
  const [first, second, third] = entries;
  if (entries.length === 3 && third[1].length === first[1].length * second[1].length && third[1].length > first[1].length) return [gridTable(first, second, third)];
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
  const rows = Array.from(values[1], (value, index) => [across[1][index % width], up[1][Math.floor(index / width)], value]);
  return { by: `${across[0]} and ${up[0]}`, rows: [[across[0], up[0], values[0]], ...rows] };
}
