// @ts-check
/** What the fields of a scenario are called on the page, and what the page says when one of them is refused. */

import { fieldKey } from "../state/scenario.js";
import { fewestDigitsFor, number, plusMinus, quantity, toDisplay } from "../units.js";
import { coreWords } from "../words/core-words.js";
import { book } from "../words/index.js";
import { kindOf } from "./kinds.js";

/** @import { Units } from "../units.js" */
/** @import { CoreError } from "../core.js" */

const say = book("page");

/** What the field at a path is called, or an empty text. @param {string} path */
export function labelOf(path) {
  const key = `field.${fieldKey(path)}`;
  return say.has(key) ? say(key) : "";
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
  const low = kind === "clock" ? quantity(kind, min, units) : number(toDisplay(kind, min, units), { digits });
  return say("range", { min: low, max: quantity(kind, max, units, { digits }) });
}

/** The sentence for a value outside its range. @param {string} path @param {number} min @param {number} max @param {Units} units */
export function outsideWords(path, min, max, units) {
  return say("error.outside", {
    label: labelOf(path) || say("error.this_number"),
    range: rangeWords(path, min, max, units),
  });
}

/**
 * An error or a warning as the reader's sentence: ranges in their own units, fields by their name.
 * @param {CoreError} error @param {Units} units
 */
export function errorWords({ kind, field, message, min, max }, units) {
  const label = labelOf(field);
  const lastPart = field.split(".").at(-1) ?? "";
  switch (kind) {
    case "broken":
      return say("error.broken");
    case "unknown_field":
      return say("error.unknown_field", { name: lastPart });
    case "wrong_type":
      return say("error.wrong_type", { name: label || lastPart });
    case "missing":
      return label ? say("error.missing", { name: label }) : capital(coreWords(message));
    case "out_of_range":
      if (!label || min === undefined || max === undefined) break;
      return lastPart === "sd"
        ? say("error.spread", { label, sd: spreadWords(field, max, units) })
        : outsideWords(field, min, max, units);
  }
  return capital(named(coreWords(message), field));
}

/** @param {string} path @param {number} sd @param {Units} units */
function spreadWords(path, sd, units) {
  return plusMinus(kindOf(path), sd, units).replace(/^±\s*/, "");
}

/** A message with the fields in it called by their names: the one it is about by its path, its neighbours by their last part. @param {string} message @param {string} field */
function named(message, field) {
  const parent = field.slice(0, field.lastIndexOf(".") + 1);
  const called = (/** @type {string} */ path, /** @type {string} */ otherwise) =>
    labelOf(path) ? say("error.named", { label: labelOf(path) }) : otherwise;
  return (field ? message.replaceAll(field, called(field, field)) : message).replace(
    /\b[a-z]+(?:_[a-z0-9]+)+\b/g,
    (word) => called(parent + word, word),
  );
}

/** @param {string} text */
function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
