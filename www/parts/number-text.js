// @ts-check
/** Reading and writing a number as a person does in the language that is spoken. Knows no quantities: the unit is only a word that may follow. */

import { regionTag } from "../words/index.js";

const NARROW_SPACE = "\u202f";
const MINUS = "\u2212";
/** Whatever its language writes them with, the digits are those that can be typed. */
const FORM = /** @type {const} */ ({ numberingSystem: "latn" });
/** From here on a number is written with a power of ten, unless its language writes it. */
const PLAIN_BELOW = 1e21;

/** @typedef {"." | ","} DecimalMark */

/** The decimal mark that the reader wants, where it is not the one of the language. @type {DecimalMark | null} */
let wantedMark = null;

/** Writes numbers with this decimal mark from now on, whatever the language; null is the mark of the language. @param {DecimalMark | null} mark */
export function writeWithMark(mark) {
  wantedMark = mark;
}

/** The decimal mark of numbers as they are written now. @returns {DecimalMark} */
export const decimalMark = () => wantedMark ?? markOf(regionTag());

/** The decimal mark of each language as written in a country, once asked for: a browser takes its time over the first. @type {Map<string, DecimalMark>} */
const marks = new Map();

/** @param {string} tag */
function markOf(tag) {
  let found = marks.get(tag);
  if (!found) marks.set(tag, (found = new Intl.NumberFormat(tag, FORM).formatToParts(0.5).some(({ type, value }) => type === "decimal" && value === ",") ? "," : "."));
  return found;
}

/** Half goes away from zero, for gains and losses alike. @param {number} value @param {number} [digits] */
export function round(value, digits = 0) {
  const scale = 10 ** digits;
  const size = Math.abs(value) * scale;
  return (Math.sign(value) * Math.round(size + size * Number.EPSILON)) / scale || 0;
}

/** @param {number} value @param {{ digits?: number, atLeast?: number, group?: boolean, signed?: boolean, mark?: DecimalMark | null }} [options] `signed` gives a gain its plus sign */
export function numberText(value, { digits = 0, atLeast = digits, group = false, signed = false, mark = wantedMark } = {}) {
  const rounded = round(value, digits);
  const sign = rounded < 0 ? MINUS : signed && rounded > 0 ? "+" : "";
  const size = Math.abs(rounded);
  const decimal = mark ?? markOf(regionTag());
  // A language writes groups, powers of ten and infinity in its own way; for all else its mark is enough, which is far quicker.
  return sign + (!group && size < PLAIN_BELOW ? withDecimals(size, atLeast, digits).replace(".", decimal) : asItsLanguage(size, atLeast, digits, group, decimal));
}

/** @param {number} size @param {number} atLeast @param {number} digits */
function withDecimals(size, atLeast, digits) {
  let text = size.toFixed(digits);
  for (let left = digits; left > atLeast && text.endsWith("0"); left -= 1) text = text.slice(0, -1);
  return text.endsWith(".") ? text.slice(0, -1) : text;
}

/** @param {number} size @param {number} atLeast @param {number} digits @param {boolean} group @param {DecimalMark} decimal */
function asItsLanguage(size, atLeast, digits, group, decimal) {
  const parts = new Intl.NumberFormat(regionTag(), { ...FORM, minimumFractionDigits: atLeast, maximumFractionDigits: digits, useGrouping: group }).formatToParts(size);
  return parts.map(({ type, value }) => (type === "decimal" ? decimal : type === "group" && value === decimal ? NARROW_SPACE : value)).join("");
}

/**
 * @typedef {object} Reading
 * @property {number} [value]
 * @property {number} [decimals] How many decimals were typed.
 * @property {"not-a-number" | "other-unit"} [wrong]
 */

/**
 * Reads `1 250`, `0,242`, `0.242 m²`, `+10 %`, `−3`. Either mark may be the decimal one, except between whole groups of
 * three digits in a field that has no decimals, where the mark that is not written there as the decimal one parts the groups.
 * @param {string} typed
 * @param {{ unit: string, digits: number, otherUnits?: Record<string, (value: number) => number> }} field
 *   `otherUnits` turns a value typed in another unit into this field's own.
 * @returns {Reading}
 */
export function readNumber(typed, { unit, digits, otherUnits = {} }) {
  const text = typed.replace(/\s/g, "").replaceAll(MINUS, "-");
  const parts = /^([+-]?(?:[\d.,]*\d[\d.,]*))(.*)$/.exec(text);
  if (!parts) return { wrong: "not-a-number" };
  const plain = onePoint(parts[1], digits);
  const value = Number(plain);
  if (!Number.isFinite(value)) return { wrong: "not-a-number" };
  const decimals = (plain.split(".")[1] ?? "").length;
  const suffix = unitWord(parts[2]);
  if (suffix === "" || sameUnit(suffix, unitWord(unit))) return { value, decimals };
  const other = Object.keys(otherUnits).find((name) => sameUnit(suffix, unitWord(name)));
  return other === undefined ? { wrong: "other-unit" } : { value: otherUnits[other](value), decimals: digits };
}

/** The number with a point as its decimal mark and without marks between groups. @param {string} number @param {number} digits */
function onePoint(number, digits) {
  const [comma, point] = [number.lastIndexOf(","), number.lastIndexOf(".")];
  if (comma >= 0 && point >= 0) return comma > point ? number.replaceAll(".", "").replace(",", ".") : number.replaceAll(",", "");
  const mark = comma >= 0 ? "," : ".";
  if (isGrouped(number, mark, digits)) return number.replaceAll(mark, "");
  return number.replace(",", ".");
}

/** @param {string} number @param {"." | ","} mark @param {number} digits */
function isGrouped(number, mark, digits) {
  const groups = number.replace(/^[+-]/, "").split(mark);
  if (!/^[1-9]\d{0,2}$/.test(groups[0]) || !groups.slice(1).every((group) => /^\d{3}$/.test(group))) return false;
  return groups.length > 2 || (groups.length === 2 && digits === 0 && mark !== decimalMark());
}

/** @param {string} text */
function unitWord(text) {
  return text.toLowerCase().replace(/\s/g, "").replace("²", "2").replace("³", "3").replace(/^(?:percent|prozent|pour-?cent)$/, "%").replace("°", "").replace(/\.$/, "");
}

/**
 * @param {string} typed
 * @param {string} own
 */
function sameUnit(typed, own) {
  return typed === own || `${typed}s` === own || typed === `${own}s`;
}

/** Hours, minutes and seconds with their names in any of the page's languages. */
const SPELT = /^(?:(\d+(?:\.\d+)?)\s*(?:h|hours?|hrs?|std|stunden?|heures?)\.?)?\s*(?:(\d+(?:\.\d+)?)\s*m(?:in(?:ute)?[sn]?)?\.?)?\s*(?:(\d+(?:\.\d+)?)\s*s(?:ec(?:onde?)?s?|ek(?:unden?)?)?\.?)?$/;

/**
 * Reads `59:04`, `1:02:03`, `1 h 5 min`, `25 min`, `45 s`; a bare number is minutes.
 * @param {string} typed
 * @returns {Reading} seconds
 */
export function readTime(typed) {
  const text = typed.trim().toLowerCase().replace(",", ".");
  const clock = /^(?:(\d+):)?(\d+):(\d{1,2}(?:\.\d+)?)$/.exec(text);
  if (clock) {
    const [hours, minutes, seconds] = [Number(clock[1] ?? 0), Number(clock[2]), Number(clock[3])];
    const overflows = seconds >= 60 || (clock[1] !== undefined && minutes >= 60);
    return overflows ? { wrong: "not-a-number" } : { value: hours * 3600 + minutes * 60 + seconds };
  }
  const spelt = SPELT.exec(text);
  if (text !== "" && spelt) {
    return { value: Number(spelt[1] ?? 0) * 3600 + Number(spelt[2] ?? 0) * 60 + Number(spelt[3] ?? 0) };
  }
  return /^\d+(?:\.\d+)?$/.test(text) ? { value: Number(text) * 60 } : { wrong: "not-a-number" };
}

/** @param {number} time_s */
export function timeText(time_s) {
  const whole = Math.round(Math.abs(time_s));
  const [hours, minutes, seconds] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (/** @type {number} */ n) => String(n).padStart(2, "0");
  const sign = time_s < 0 && whole > 0 ? MINUS : "";
  return sign + (hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`);
}

/**
 * A standard deviation to one significant figure, or two when the first is a 1: more would claim to know it better than anyone does.
 * @param {number} sd
 */
export function sdText(sd) {
  if (!(sd > 0) || !Number.isFinite(sd)) return "0";
  const power = Math.floor(Math.log10(sd));
  const lead = sd / 10 ** power;
  return numberText(sd, { digits: Math.max(0, (lead < 1.95 ? 1 : 0) - power), atLeast: 0 });
}

/** @param {string} amount */
export function plusOrMinus(amount) {
  return `±${NARROW_SPACE}${amount}`;
}
