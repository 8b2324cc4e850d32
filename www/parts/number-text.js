// @ts-check
/** Reading and writing a number as a person types it. Knows no quantities: the unit is only a word that may follow. */

const NARROW_SPACE = "\u202f";
const MINUS = "\u2212";

/**
 * @typedef {object} Reading
 * @property {number} [value]
 * @property {number} [decimals] How many decimals were typed.
 * @property {"not-a-number" | "other-unit"} [wrong]
 */

/**
 * Reads `1 250`, `0,242`, `0.242 m²`, `+10 %`, `−3`. A comma is a decimal mark, except between whole groups of three digits in a
 * field that has no decimals.
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

/**
 * @param {string} number
 * @param {number} digits
 */
function onePoint(number, digits) {
  const comma = number.lastIndexOf(",");
  const point = number.lastIndexOf(".");
  if (comma < 0) return number;
  if (point > comma) return number.replaceAll(",", "");
  if (point >= 0) return number.replaceAll(".", "").replace(",", ".");
  const grouped = digits === 0 ? /^[+-]?[1-9]\d{0,2}(,\d{3})+$/ : /^[+-]?[1-9]\d{0,2}(,\d{3}){2,}$/;
  return grouped.test(number) ? number.replaceAll(",", "") : number.replace(",", ".");
}

/** @param {string} text */
function unitWord(text) {
  return text.toLowerCase().replace(/\s/g, "").replace("²", "2").replace("³", "3").replace(/^percent$/, "%").replace("°", "").replace(/\.$/, "");
}

/**
 * @param {string} typed
 * @param {string} own
 */
function sameUnit(typed, own) {
  return typed === own || `${typed}s` === own || typed === `${own}s`;
}

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
  const spelt = /^(?:(\d+(?:\.\d+)?)\s*h(?:ours?|rs?)?)?\s*(?:(\d+(?:\.\d+)?)\s*m(?:in(?:ute)?s?)?)?\s*(?:(\d+(?:\.\d+)?)\s*s(?:ec(?:ond)?s?)?)?$/.exec(text);
  if (text !== "" && spelt) {
    return { value: Number(spelt[1] ?? 0) * 3600 + Number(spelt[2] ?? 0) * 60 + Number(spelt[3] ?? 0) };
  }
  return /^\d+(?:\.\d+)?$/.test(text) ? { value: Number(text) * 60 } : { wrong: "not-a-number" };
}

/**
 * @param {number} value
 * @param {number} digits
 * @param {boolean} [signed] Whether a gain wears its plus sign.
 */
export function numberText(value, digits, signed = false) {
  const size = Math.abs(value).toFixed(digits);
  const isZero = Number(size) === 0;
  const sign = isZero ? "" : value < 0 ? MINUS : signed ? "+" : "";
  return sign + size;
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
  const decimals = Math.max(0, (lead < 1.95 ? 1 : 0) - power);
  const rounded = Number(sd.toFixed(decimals));
  return decimals > 0 ? rounded.toFixed(decimals).replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "") : String(rounded);
}

/** @param {string} amount */
export function plusOrMinus(amount) {
  return `±${NARROW_SPACE}${amount}`;
}
