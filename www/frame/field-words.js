// @ts-check
/** What the fields of a scenario are called on the page, and what the page says when one of them is refused. */

import { capital } from "../parts/capital.js";
import { fieldKey } from "../state/scenario.js";
import { fewestDigitsFor, fromDisplay, isSi, number, plusMinus, quantity, toDisplay } from "../units.js";
import { book } from "../words/index.js";
import { kindOf } from "./kinds.js";

/** @import { Units } from "../units.js" */
/** @import { CoreError } from "../core.js" */
/** @import { Value } from "../types/core.d.ts" */

const say = book("page");
const core = book("core");

/** What the field at a path is called, or an empty text. @param {string} path */
export function labelOf(path) {
  return say.found(`field.${fieldKey(path)}`);
}

/** A path as the core names it: `with.power-or-drag.power_change` in the store is `with.power_change` in the request. @param {string} path */
export function requestPath(path) {
  return path.replace(/^with\.[a-z-]+\.(.+)$/, "with.$1").replace(/\.(value|sd|source)$/, "");
}

/** Whether an error or a warning is about the field at a path of the store. @param {{ field: string } | null} about @param {string} path */
export function isAbout(about, path) {
  if (!about) return false;
  const wanted = requestPath(path);
  return about.field === wanted || about.field.startsWith(`${wanted}.`);
}

/** A range in words: "0.1 to 0.8 m²". @param {string} path @param {number} min @param {number} max @param {Units} units */
export function rangeWords(path, min, max, units) {
  const kind = kindOf(path);
  const digits = Math.max(fewestDigitsFor(kind, min, units), fewestDigitsFor(kind, max, units));
  const low =
    kind === "clock" || kind === "time_of_day"
      ? quantity(kind, min, units)
      : number(toDisplay(kind, min, units), { digits });
  return say("range", { min: low, max: quantity(kind, max, units, { digits }) });
}

/** A usual range in words, in round numbers of the reader's unit: "0.6 to 560 miles". @param {string} path @param {number} min @param {number} max @param {Units} units */
export function usualRangeWords(path, min, max, units) {
  const kind = kindOf(path);
  const rounded = (/** @type {number} */ si) =>
    fromDisplay(kind, Number(toDisplay(kind, si, units).toPrecision(2)), units);
  return isSi(kind, units) ? rangeWords(path, min, max, units) : rangeWords(path, rounded(min), rounded(max), units);
}

/** The sentence for a value outside its range. @param {string} path @param {number} min @param {number} max @param {Units} units */
export function outsideWords(path, min, max, units) {
  return say("error.outside", {
    label: labelOf(path) || say("error.thisNumber"),
    range: rangeWords(path, min, max, units),
  });
}

/**
 * An error or a warning as the reader's sentence: ranges in their own units, fields by their name.
 * @param {CoreError} about @param {Units} units
 */
export function errorWords({ kind, field, text, values, min, max }, units) {
  const label = labelOf(field);
  const lastPart = field.split(".").at(-1) ?? "";
  if (kind === "broken") return say("error.broken");
  switch (text) {
    case "unknown_field":
      return say("error.unknownField", { name: lastPart });
    case "wrong_type":
      return say("error.wrongType", { name: label || lastPart });
    case "missing":
      if (label) return say("error.missing", { name: label });
      break;
    case "out_of_range":
      if (!label || min === undefined || max === undefined) break;
      return lastPart === "sd"
        ? say("error.spread", { label, sd: spreadWords(field, max, units) })
        : outsideWords(field, min, max, units);
  }
  return capital(messageWords({ text, values }, units));
}

/** @param {string} path @param {number} sd @param {Units} units */
function spreadWords(path, sd, units) {
  return plusMinus(kindOf(path), sd, units).replace(/^±\s*/, "");
}

/** A sentence of the core with its values. @param {Pick<CoreError, "text" | "values">} message @param {Units} units @returns {string} */
function messageWords({ text, values }, units) {
  const written = Object.entries(values).map(([name, value]) => [name, valueWords(value, units)]);
  return core(text, Object.fromEntries(written));
}

/** @param {Value} value @param {Units} units */
function valueWords(value, units) {
  if (typeof value === "number") return number(value);
  if (typeof value === "string") return value;
  if ("field" in value) return nameOf(value.field);
  return "kind" in value ? quantity(value.kind, value.value, units) : messageWords(value, units);
}

/** A field in a sentence: by its name in quotes, or by its path where it has none. @param {string} path */
function nameOf(path) {
  const label = labelOf(path);
  return label ? say("error.named", { label }) : path;
}
