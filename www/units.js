// @ts-check
/**
 * Everything that turns an SI number into what a rider reads, and back: units, times, differences, percentages.
 * No other file converts. Stored values stay SI whatever the rider chooses to read.
 */

import {
  numberText,
  plusOrMinus,
  readNumber,
  readTime,
  readTimeOfDay,
  round,
  sdText,
  timeOfDayText,
  timeText,
} from "./parts/number-text.js";
import { book, language } from "./words/index.js";

/** @typedef {{ distance: "mi"|"km", wind: "mph"|"km/h"|"m/s", temperature: "C"|"F", pressure: "hPa"|"inHg", mass: "kg"|"lb", height: "m"|"ft" }} Units */
/**
 * What a number measures, which decides the units it can be read in.
 * @typedef {"distance"|"speed"|"wind"|"temperature"|"pressure"|"mass"|"height"|"length"|"fit_length"|"body_length"|"area"|"power"|"work"|"force"|
 *   "force_per_speed"|"acceleration"|"density"|"duration"|"clock"|"time_of_day"|"hours"|"cadence"|"angle"|"joint_angle"|"turning"|"share"|"ratio"|"coefficient"|"grade"} Kind
 */
/**
 * A unit: `shown = si * per_si + offset`. Signs that differ between languages stand in the book, as all names do.
 * @typedef {{ symbol: string, per_si: number, offset?: number, digits: number, step: number, tight?: boolean, also?: string[] }} UnitRow
 * @typedef {UnitRow & { name: string, one: string }} Unit
 */

/** International mile: 1760 yards of exactly 0.9144 m (international yard and pound agreement, 1959). */
const METRES_PER_MILE = 1609.344;
/** International foot: a third of that yard. */
const METRES_PER_FOOT = 0.3048;
/** International avoirdupois pound (same agreement). */
const KILOGRAMS_PER_POUND = 0.45359237;
/** Seconds in an hour. */
const SECONDS_PER_HOUR = 3600;
/**
 * Conventional inch of mercury at 0 °C: 13595.1 kg/m³ × 9.80665 m/s² × 0.0254 m, in hectopascals (ISO 31-3:1992).
 */
const HECTOPASCALS_PER_INCH_OF_MERCURY = (13595.1 * 9.80665 * 0.0254) / 100;
/** Fahrenheit: exactly 9/5 of a Celsius degree, with water freezing at 32. */
const FAHRENHEIT_PER_CELSIUS = 9 / 5;
const FAHRENHEIT_AT_0_C = 32;

const say = book("units");

/** @type {Record<string, UnitRow>} */
const UNITS = {
  mi: { symbol: "mi", per_si: 1 / METRES_PER_MILE, digits: 2, step: 1, also: ["mi", "mile"] },
  km: { symbol: "km", per_si: 1 / 1000, digits: 2, step: 1 },
  mph: { symbol: "mph", per_si: SECONDS_PER_HOUR / METRES_PER_MILE, digits: 1, step: 0.1 },
  "km/h": { symbol: "km/h", per_si: SECONDS_PER_HOUR / 1000, digits: 1, step: 0.1, also: ["kph", "kmh"] },
  "m/s": { symbol: "m/s", per_si: 1, digits: 1, step: 0.1 },
  C: { symbol: "°C", per_si: 1, digits: 1, step: 1, also: ["c"] },
  F: { symbol: "°F", per_si: FAHRENHEIT_PER_CELSIUS, offset: FAHRENHEIT_AT_0_C, digits: 1, step: 1, also: ["f"] },
  hPa: { symbol: "hPa", per_si: 1, digits: 1, step: 1, also: ["mbar", "mb"] },
  inHg: { symbol: "inHg", per_si: 1 / HECTOPASCALS_PER_INCH_OF_MERCURY, digits: 2, step: 0.01 },
  kg: { symbol: "kg", per_si: 1, digits: 1, step: 0.5 },
  lb: { symbol: "lb", per_si: 1 / KILOGRAMS_PER_POUND, digits: 1, step: 1, also: ["lbs"] },
  m: { symbol: "m", per_si: 1, digits: 0, step: 5 },
  ft: { symbol: "ft", per_si: 1 / METRES_PER_FOOT, digits: 0, step: 10 },
};

/** @type {Record<string, UnitRow>} */
const FIXED = {
  length: { symbol: "m", per_si: 1, digits: 4, step: 0.05 },
  fit_length: { symbol: "mm", per_si: 1000, digits: 1, step: 1 },
  body_length: { symbol: "cm", per_si: 100, digits: 1, step: 1 },
  area: { symbol: "m²", per_si: 1, digits: 3, step: 0.001, also: ["m2"] },
  power: { symbol: "W", per_si: 1, digits: 0, step: 1 },
  work: { symbol: "kJ", per_si: 1 / 1000, digits: 1, step: 0.5 },
  force: { symbol: "N", per_si: 1, digits: 3, step: 0.01 },
  force_per_speed: { symbol: "N per m/s", per_si: 1, digits: 4, step: 0.001 },
  acceleration: { symbol: "m/s²", per_si: 1, digits: 1, step: 0.1, also: ["m/s2"] },
  density: { symbol: "kg/m³", per_si: 1, digits: 3, step: 0.001, also: ["kg/m3"] },
  duration: { symbol: "min", per_si: 1 / 60, digits: 1, step: 1 },
  clock: { symbol: "", per_si: 1, digits: 0, step: 10 },
  time_of_day: { symbol: "", per_si: 1, digits: 0, step: 900 },
  angle: { symbol: "°", per_si: 1, digits: 0, step: 5, tight: true, also: ["deg"] },
  hours: { symbol: "h", per_si: 1, digits: 1, step: 0.5 },
  cadence: { symbol: "rpm", per_si: 1, digits: 0, step: 1 },
  joint_angle: { symbol: "°", per_si: 1, digits: 1, step: 0.5, tight: true, also: ["deg"] },
  turning: { symbol: "°/s", per_si: 1, digits: 0, step: 1 },
  share: { symbol: "%", per_si: 100, digits: 1, step: 1 },
  grade: { symbol: "%", per_si: 100, digits: 2, step: 0.1 },
  ratio: { symbol: "", per_si: 1, digits: 3, step: 0.01 },
  coefficient: { symbol: "", per_si: 1, digits: 4, step: 0.0001 },
};

/** Both tables in the language that is spoken. @type {{ language: string, units: Record<string, Unit>, fixed: Record<string, Unit> }} */
let told = { language: "", units: {}, fixed: {} };

function tables() {
  if (told.language !== language()) told = { language: language(), units: inWords(UNITS), fixed: inWords(FIXED) };
  return told;
}

/** @param {Record<string, UnitRow>} table @returns {Record<string, Unit>} */
function inWords(table) {
  return Object.fromEntries(
    Object.entries(table).map(([id, unit]) => [
      id,
      {
        ...unit,
        symbol: say.found(`${id}.symbol`, unit.symbol),
        one: say.found(`${id}.one`, ""),
        name: say.found(`${id}.name`),
        also: [...(unit.also ?? []), ...say.found(`${id}.typed`).split(" ").filter(Boolean)],
      },
    ]),
  );
}

/**
 * The unit a kind is read in.
 * @param {Kind} kind @param {Units} units @returns {Unit}
 */
export function unitOf(kind, units) {
  const { units: changeable, fixed } = tables();
  switch (kind) {
    case "distance":
      return changeable[units.distance];
    case "speed":
      return changeable[units.distance === "mi" ? "mph" : "km/h"];
    case "wind":
      return changeable[units.wind];
    case "temperature":
      return changeable[units.temperature];
    case "pressure":
      return changeable[units.pressure];
    case "mass":
      return changeable[units.mass];
    case "height":
      return changeable[units.height];
    default:
      return fixed[kind];
  }
}

/** A stored value as the rider reads it. @param {Kind} kind @param {number} si @param {Units} units */
export function toDisplay(kind, si, units) {
  const { per_si, offset = 0 } = unitOf(kind, units);
  return tidy(si * per_si + offset);
}

/** What the rider typed as it is stored. @param {Kind} kind @param {number} shown @param {Units} units */
export function fromDisplay(kind, shown, units) {
  const { per_si, offset = 0 } = unitOf(kind, units);
  return tidy((shown - offset) / per_si);
}

const COMPASS_STEP_DEG = 22.5;

/** The degrees of a point of the compass, by its letters in the reader's language: "SW" is 225; undefined for anything else. @param {string} text */
export function compassDegrees(text) {
  const at = say("compass").split(" ").indexOf(text.trim().toUpperCase());
  return at < 0 ? undefined : COMPASS_STEP_DEG * at;
}

/** Whether a kind is read in the core's own unit, or in a decimal multiple of it. @param {Kind} kind @param {Units} units */
export function isSi(kind, units) {
  const { per_si, offset = 0 } = unitOf(kind, units);
  return offset === 0 && Number.isInteger(Math.log10(per_si));
}

/** A standard deviation or any other difference: the scale without the zero point. @param {Kind} kind @param {number} si @param {Units} units */
export function spreadToDisplay(kind, si, units) {
  return si * unitOf(kind, units).per_si;
}

/** @param {Kind} kind @param {number} shown @param {Units} units */
export function spreadFromDisplay(kind, shown, units) {
  return tidy(shown / unitOf(kind, units).per_si);
}

/** Twelve significant digits: more than anyone measures, and 25 miles stays 40233.6. @param {number} value */
function tidy(value) {
  return Number(value.toPrecision(12));
}

/** One press of an arrow key, in display units: the core's step, unless the unit has a rounder one of its own. @param {Kind} kind @param {number | undefined} step_si @param {Units} units */
export function stepOf(kind, step_si, units) {
  const { per_si, step } = unitOf(kind, units);
  return step_si === undefined || (KIND_UNITS[kind] && per_si !== 1) ? step : tidy(step_si * per_si);
}

/** What a reader is used to, from the language of the browser. @param {string} language @returns {Units} */
export function usualUnits(language) {
  if (/^en-US|-US$/.test(language))
    return { distance: "mi", wind: "mph", temperature: "F", pressure: "inHg", mass: "lb", height: "ft" };
  if (/^en-GB|^en$|^cy|^gd/.test(language))
    return { distance: "mi", wind: "mph", temperature: "C", pressure: "hPa", mass: "kg", height: "m" };
  return { distance: "km", wind: "km/h", temperature: "C", pressure: "hPa", mass: "kg", height: "m" };
}

/** The choices there are, each unit by its sign in an address. @type {{ key: keyof Units, options: string[] }[]} */
export const UNIT_CHOICES = [
  { key: "distance", options: ["mi", "km"] },
  { key: "wind", options: ["mph", "km/h", "m/s"] },
  { key: "temperature", options: ["C", "F"] },
  { key: "pressure", options: ["hPa", "inHg"] },
  { key: "mass", options: ["kg", "lb"] },
  { key: "height", options: ["m", "ft"] },
];

/** A unit as a choice: "miles, mph", "°C". @param {keyof Units} key @param {string} option */
export function choiceWords(key, option) {
  const { symbol } = tables().units[option];
  return key === "distance"
    ? say("distanceChoice", { unit: tables().units[option].name, speed: option === "mi" ? "mph" : "km/h" })
    : symbol;
}

/** Units from anywhere, such as a saved choice: anything unknown becomes the usual. @param {unknown} saved @param {Units} usual @returns {Units} */
export function knownUnits(saved, usual) {
  const known = /** @type {Record<string, unknown>} */ ({ ...usual });
  const given = /** @type {Record<string, string> | null | undefined} */ (saved);
  for (const { key, options } of UNIT_CHOICES) if (options.includes(given?.[key] ?? "")) known[key] = given?.[key];
  return /** @type {Units} */ (known);
}

/** The units in two words for the top bar: "Miles, °C". @param {Units} units */
export function unitsInBrief(units) {
  return say(units.distance === "mi" ? "brief.mi" : "brief.km", { temperature: UNITS[units.temperature].symbol });
}

const NARROW = "\u202f";
const NO_BREAK = "\u00a0";

export { round };

/** A number as it is written in the language that is spoken. */
export const number = numberText;

/** A drag area as it would be written with a decimal mark; null is the mark of the language. @param {"." | "," | null} mark */
export const exampleNumber = (mark) => numberText(0.242, { digits: 3, mark });

/** As few decimals as show the value, at most the unit's own. @param {Kind} kind @param {number} si @param {Units} units */
export function fewestDigitsFor(kind, si, units) {
  return fewestDigits(toDisplay(kind, si, units), unitOf(kind, units).digits);
}

/** The decimals of a value: always the same for drag area and coefficients, which are read by their last one. @param {Kind} kind @param {number} si @param {Units} units */
export function digitsFor(kind, si, units) {
  return kind === "area" || kind === "coefficient" ? unitOf(kind, units).digits : fewestDigitsFor(kind, si, units);
}

/** @param {number} value @param {number} most */
function fewestDigits(value, most) {
  let digits = 0;
  while (digits < most && round(value, digits) !== round(value, most)) digits += 1;
  return digits;
}

/**
 * A quantity with its unit: "25 miles", "0.242 m²", "18 °C".
 * @param {Kind} kind @param {number} si @param {Units} units @param {{ digits?: number, signed?: boolean }} [options]
 */
export function quantity(kind, si, units, { digits = digitsFor(kind, si, units), signed } = {}) {
  if (kind === "clock") return time(si);
  if (kind === "time_of_day") return timeOfDayText(si);
  const unit = unitOf(kind, units);
  return withUnit(number(toDisplay(kind, si, units), { digits, signed }), unit);
}

/** @param {string} text @param {Unit} unit */
function withUnit(text, unit) {
  if (!unit.symbol || unit.tight) return text + unit.symbol;
  const symbol = unit.one && /^[+−]?1$/.test(text) ? unit.one : unit.symbol;
  return text + (symbol === "%" ? NARROW : NO_BREAK) + symbol;
}

/** A standard deviation: "± 0.008 m²". @param {Kind} kind @param {number} sd @param {Units} units */
export function plusMinus(kind, sd, units) {
  if (kind === "clock") return plusMinusTime(sd);
  return plusOrMinus(withUnit(spreadText(kind, sd, units), unitOf(kind, units)));
}

/** A standard deviation as it stands in a field: "0.008". @param {Kind} kind @param {number} sd @param {Units} units */
export function spreadText(kind, sd, units) {
  return sdText(Math.abs(spreadToDisplay(kind, sd, units)));
}

/** A share as a percentage: 0.853 is "85 %". @param {number} share @param {number} [digits] */
export function percent(share, digits = 0) {
  return `${number(share * 100, { digits })}${NARROW}%`;
}

/** Seconds as 59:04 or 1:02:03. @param {number} seconds */
export function time(seconds) {
  return timeText(round(seconds));
}

/** The ± of a time: "± 1:28", and in tenths where whole seconds would hide it. @param {number} sd_s */
export function plusMinusTime(sd_s) {
  return plusOrMinus(sd_s < 0.95 ? `${number(sd_s, { digits: 1 })}${NO_BREAK}s` : time(sd_s));
}

/**
 * A difference in time in the parts that a sentence needs. Positive is faster.
 * @param {number} seconds
 * @returns {{ way: "faster"|"slower"|"level", figure: string, short: string, words: string }} `short` fits where a figure stands alone
 */
export function difference(seconds) {
  if (seconds === 0) return { way: "level", figure: "0:00", short: "0:00", words: say("level") };
  const way = seconds > 0 ? "faster" : "slower";
  const size = Math.abs(seconds);
  const figure = size < 1 ? say("underASecond") : time(size);
  return { way, figure, short: size < 1 ? `<${NARROW}0:01` : figure, words: say(`${way}By`, { figure }) };
}

/** "faster by 0:42". @param {number} seconds */
export function differenceWords(seconds) {
  return difference(seconds).words;
}

/**
 * What someone typed, as a stored value, or null where it cannot be read. Takes both decimal marks, spaces, the unit in use or another
 * unit of the same kind ("40 km" while reading miles), and for times 59:04 or 1:02:03.
 * @param {Kind} kind @param {string} text @param {Units} units @param {number} [digits] decimals that may be written there, where not the unit's own
 * @returns {number | null}
 */
export function parse(kind, text, units, digits = unitOf(kind, units).digits) {
  if (kind === "clock") return readTime(text).value ?? null;
  if (kind === "time_of_day") return readTimeOfDay(text).value ?? null;
  const { value } = readNumber(text, { unit: unitOf(kind, units).symbol, digits, otherUnits: otherUnits(kind, units) });
  return value === undefined ? null : fromDisplay(kind, value, units);
}

/**
 * The other units that may be typed after a number, each as a function into the unit in use.
 * @param {Kind} kind @param {Units} units @returns {Record<string, (value: number) => number>}
 */
export function otherUnits(kind, units) {
  const used = unitOf(kind, units);
  /** @type {Record<string, (value: number) => number>} */
  const others = {};
  for (const unit of KIND_UNITS[kind]?.map((key) => tables().units[key]) ?? [used]) {
    const into = (/** @type {number} */ value) => toDisplay(kind, (value - (unit.offset ?? 0)) / unit.per_si, units);
    for (const name of [unit.symbol, ...(unit.also ?? [])]) if (name && name !== used.symbol) others[name] = into;
  }
  return others;
}

/** @type {Partial<Record<Kind, string[]>>} */
const KIND_UNITS = {
  distance: ["mi", "km", "m"],
  speed: ["mph", "km/h", "m/s"],
  wind: ["mph", "km/h", "m/s"],
  temperature: ["C", "F"],
  pressure: ["hPa", "inHg"],
  mass: ["kg", "lb"],
  height: ["m", "ft"],
};
