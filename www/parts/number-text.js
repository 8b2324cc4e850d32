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
  const known = marks.get(tag);
  if (known) return known;
  const decimal = new Intl.NumberFormat(tag, FORM).formatToParts(0.5).find(({ type }) => type === "decimal");
  const mark = decimal?.value === "," ? "," : ".";
  marks.set(tag, mark);
  return mark;
}

/** A fixed text with the decimal mark of its numbers as the reader wants it. @param {string} text */
export const inReadersMark = (text) => text.replace(/(\d)[.,](?=\d)/g, `$1${decimalMark()}`);

/** Half goes away from zero, for gains and losses alike. @param {number} value @param {number} [digits] */
export function round(value, digits = 0) {
  const scale = 10 ** digits;
  const size = Math.abs(value) * scale;
  return (Math.sign(value) * Math.round(size + size * Number.EPSILON)) / scale || 0;
}

/** @param {number} value @param {{ digits?: number, atLeast?: number, group?: boolean, signed?: boolean, mark?: DecimalMark | null }} [options] `signed` gives a gain its plus sign */
export function numberText(
  value,
  { digits = 0, atLeast = digits, group = false, signed = false, mark = wantedMark } = {},
) {
  const rounded = round(value, digits);
  const sign = rounded < 0 ? MINUS : signed && rounded > 0 ? "+" : "";
  const size = Math.abs(rounded);
  const decimal = mark ?? markOf(regionTag());
  // A language writes groups, powers of ten and infinity in its own way; for all else its mark is enough, which is far quicker.
  return (
    sign +
    (!group && size < PLAIN_BELOW
      ? withDecimals(size, atLeast, digits).replace(".", decimal)
      : asItsLanguage(size, atLeast, digits, group, decimal))
  );
}

/** @param {number} size @param {number} atLeast @param {number} digits */
function withDecimals(size, atLeast, digits) {
  let text = size.toFixed(digits);
  for (let left = digits; left > atLeast && text.endsWith("0"); left -= 1) text = text.slice(0, -1);
  return text.endsWith(".") ? text.slice(0, -1) : text;
}

/** Those made before: a browser takes its time over each. @type {Map<string, Intl.NumberFormat>} */
const formats = new Map();

/** @param {string} tag @param {number} atLeast @param {number} digits @param {boolean} group */
function formatOf(tag, atLeast, digits, group) {
  const key = [tag, atLeast, digits, group].join();
  const known = formats.get(key);
  if (known) return known;
  const format = new Intl.NumberFormat(tag, {
    ...FORM,
    minimumFractionDigits: atLeast,
    maximumFractionDigits: digits,
    useGrouping: group,
  });
  formats.set(key, format);
  return format;
}

/** @param {number} size @param {number} atLeast @param {number} digits @param {boolean} group @param {DecimalMark} decimal */
function asItsLanguage(size, atLeast, digits, group, decimal) {
  return formatOf(regionTag(), atLeast, digits, group)
    .formatToParts(size)
    .map(({ type, value }) =>
      type === "decimal" ? decimal : type === "group" && value === decimal ? NARROW_SPACE : value,
    )
    .join("");
}

/**
 * @typedef {object} Reading
 * @property {number} [value]
 * @property {number} [decimals] How many decimals were typed.
 * @property {"not-a-number" | "other-unit"} [wrong]
 */

/**
 * Reads `1 250`, `0,242`, `0.242 m²`, `+10 %`, `−3`:
 *
 *     number  = [sign] (whole [mark digits] | mark digits) [unit]
 *     whole   = digits | groups of three digits behind one to three that do not begin with 0, parted by spaces, commas or points
 *     mark    = "." | ","          the decimal mark, once; not the sign that parts the groups
 *
 * A single comma or point before three digits is the decimal mark, except in a field that has no decimals, where the one that is not
 * written there as the decimal mark parts groups. Anything else is no number, and neither is one too large to be held.
 * @param {string} typed
 * @param {{ unit: string, digits: number, otherUnits?: Record<string, (value: number) => number> }} field
 *   `otherUnits` turns a value typed in another unit into this field's own.
 * @returns {Reading}
 */
export function readNumber(typed, { unit, digits, otherUnits = {} }) {
  const parts = /^([+-]?)\s*([\d.,](?:[\d.,\s]*[\d.,])?)(.*)$/s.exec(typed.trim().replaceAll(MINUS, "-"));
  const plain = parts && onePoint(parts[2], digits);
  if (!parts || plain === null) return { wrong: "not-a-number" };
  const value = Number(parts[1] + plain);
  if (!Number.isFinite(value)) return { wrong: "not-a-number" };
  const decimals = (plain.split(".")[1] ?? "").length;
  const suffix = unitWord(parts[3]);
  if (suffix === "" || sameUnit(suffix, unitWord(unit))) return { value, decimals };
  const other = Object.keys(otherUnits).find((name) => sameUnit(suffix, unitWord(name)));
  return other === undefined ? { wrong: "other-unit" } : { value: otherUnits[other](value), decimals: digits };
}

/**
 * Reads `70 + 9`, each part a number as {@link readNumber} reads it; undefined where it is no sum of such.
 * @param {string} typed @param {Parameters<typeof readNumber>[1]} field
 */
export function readSum(typed, field) {
  const parts = typed.split("+").map((part) => readNumber(part, field).value);
  if (parts.length < 2 || parts.includes(undefined)) return undefined;
  return parts.reduce((sum, part) => Number(sum) + Number(part), 0);
}

/** Whole numbers in groups, by the sign that parts them. */
const GROUPS = [/^[1-9]\d{0,2}(?:\s\d{3})+$/, /^[1-9]\d{0,2}(?:,\d{3})+$/, /^[1-9]\d{0,2}(?:\.\d{3})+$/];

/** The number with a point as its decimal mark and without signs between groups; null where it is written in no such way. @param {string} number @param {number} digits */
function onePoint(number, digits) {
  const last = Math.max(number.lastIndexOf(","), number.lastIndexOf("."));
  const mark = number[last];
  const [whole, decimals] =
    last < 0 || groupsAlone(number, mark, digits) ? [number, ""] : [number.slice(0, last), number.slice(last + 1)];
  const isGrouped = GROUPS.some((groups) => groups.test(whole)) && !(whole !== number && whole.includes(mark));
  if (!/^\d*$/.test(decimals) || !(isGrouped || /^\d*$/.test(whole)) || !/\d/.test(whole + decimals)) return null;
  return `${whole.replace(/\D/g, "")}.${decimals}`.replace(/\.$/, "");
}

/** Whether the last comma or point of a number parts groups and is no decimal mark. @param {string} number @param {string} mark @param {number} digits */
function groupsAlone(number, mark, digits) {
  if (!GROUPS[mark === "," ? 1 : 2].test(number)) return false;
  return number.split(mark).length > 2 || (digits === 0 && mark !== decimalMark());
}

/** @param {string} text */
function unitWord(text) {
  return text
    .toLowerCase()
    .replace(/\s/g, "")
    .replace("²", "2")
    .replace("³", "3")
    .replace(/^(?:percent|prozent|pour-?cent)$/, "%")
    .replace(/°(?=.)/, "")
    .replace(/\.$/, "");
}

/**
 * @param {string} typed
 * @param {string} own
 */
function sameUnit(typed, own) {
  return typed === own || `${typed}s` === own || typed === `${own}s`;
}

const HOUR = "(?:h|hours?|hrs?|std|stunden?|heures?)\\.?";
const MINUTE = "(?:m(?:in(?:ute)?[sn]?)?|['′’])\\.?";
const SECOND = '(?:s(?:ec(?:onde?)?s?|ek(?:unden?)?)?|["″”])\\.?';
const AMOUNT = "(\\d+(?:\\.\\d+)?)";
/** Hours, minutes and seconds with their names in any of the page's languages. */
const SPELT = new RegExp(`^(?:${AMOUNT}\\s*${HOUR})?\\s*(?:${AMOUNT}\\s*${MINUTE})?\\s*(?:${AMOUNT}\\s*${SECOND})?$`);
/** The last name left out, as in `1h30` and `5min30`. */
const CUT_SHORT = new RegExp(`^(\\d+)\\s*(?:(${HOUR})|${MINUTE})\\s*([0-5]\\d)$`);
const CLOCK = new RegExp(`^(?:(\\d+):)?(\\d+):(\\d{1,2}(?:\\.\\d+)?)(?:\\s*(${HOUR}))?$`);

/**
 * Reads `59:04`, `1:02:03`, `1:05 h`, `1 h 5 min`, `1h30`, `25 min`, `45 s`; a bare number is minutes:
 *
 *     time = [hours ":"] minutes ":" seconds | hours ":" minutes hour | hours ":" minutes ":" seconds hour
 *          | [number hour] [number minute] [number second] | digits hour|minute two-digits | number
 *
 * `hour`, `minute` and `second` are their names. One too long to be held is no time.
 * @param {string} typed
 * @returns {Reading} seconds
 */
export function readTime(typed) {
  const value = secondsOf(typed.trim().toLowerCase().replace(",", "."));
  return Number.isFinite(value) ? { value } : { wrong: "not-a-number" };
}

/** @param {string} text @returns {number} not a number where it is no time */
function secondsOf(text) {
  const clock = CLOCK.exec(text);
  if (clock) {
    const [first, second, third] = [Number(clock[1] ?? 0), Number(clock[2]), Number(clock[3])];
    const isHours = clock[1] === undefined && clock[4] !== undefined;
    if (third >= 60 || (clock[1] !== undefined && second >= 60) || (isHours && !Number.isInteger(third))) return NaN;
    return isHours ? second * 3600 + third * 60 : first * 3600 + second * 60 + third;
  }
  const short = CUT_SHORT.exec(text);
  if (short) return Number(short[1]) * (short[2] ? 3600 : 60) + Number(short[3]) * (short[2] ? 60 : 1);
  const spelt = SPELT.exec(text);
  if (text !== "" && spelt) return Number(spelt[1] ?? 0) * 3600 + Number(spelt[2] ?? 0) * 60 + Number(spelt[3] ?? 0);
  return /^\d+(?:\.\d+)?$/.test(text) ? Number(text) * 60 : NaN;
}

/** @param {number} time_s */
export function timeText(time_s) {
  const whole = Math.round(Math.abs(time_s));
  const [hours, minutes, seconds] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (/** @type {number} */ n) => String(n).padStart(2, "0");
  const sign = time_s < 0 && whole > 0 ? MINUS : "";
  return sign + (hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`);
}

/** Hours, and minutes if any, with the letters of a twelve-hour clock if any. */
const TIME_OF_DAY = /^(\d{1,2})(?:(?:[:.]| ?h ?| ?uhr ?)(\d{2})?)? ?(am|pm)?$/;

/**
 * A time of day as seconds from midnight: "7", "7:30", "7.30", "7h30", "7:30 pm"; past 24:00 it is of the next day.
 * @param {string} typed
 */
export function readTimeOfDay(typed) {
  const [, hours = "", minutes = "0", half] = TIME_OF_DAY.exec(typed.trim().toLowerCase()) ?? [];
  const [hour, minute] = [Number(hours), Number(minutes)];
  const wrong = hours === "" || minute >= 60 || (half && (hour < 1 || hour > 12));
  if (wrong) return { wrong: /** @type {const} */ ("not-a-number") };
  const from = half ? (hour % 12) + (half === "pm" ? 12 : 0) : hour;
  return { value: from * 3600 + minute * 60 };
}

/** A time of day as "7:30". @param {number} time_s from midnight */
export function timeOfDayText(time_s) {
  const minutes = Math.round(time_s / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** What is left of a standard deviation where all agree, by the rounding of sums. */
const ROUNDING = 1e-9;

/**
 * A standard deviation to one significant figure, or two when the first is a 1: more would claim to know it better than anyone does.
 * @param {number} sd
 */
export function sdText(sd) {
  if (!(sd > ROUNDING) || !Number.isFinite(sd)) return "0";
  const power = Math.floor(Math.log10(sd));
  const lead = sd / 10 ** power;
  return numberText(sd, { digits: Math.max(0, (lead < 1.95 ? 1 : 0) - power), atLeast: 0 });
}

/** @param {string} amount */
export function plusOrMinus(amount) {
  return `±${NARROW_SPACE}${amount}`;
}
