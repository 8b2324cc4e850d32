// @ts-check
/** JSON that is somebody else's text, and JSON on a page whose scripts have changed how it is written. */

/** @import { Json, JsonObject } from "../types/page.d.ts" */

/** No scenario, link or file of this page nests deeper than a quarter of this. */
const DEEPEST = 64;

/**
 * Reads JSON, but none that nests without end: what is read is walked by functions that call themselves.
 * @param {string} text @returns {Json}
 * @throws {SyntaxError}
 */
export function readJson(text) {
  let depth = 0;
  // Strings are passed over whole; one without an end is the parser's to refuse.
  for (const [sign] of text.matchAll(/"(?:[^"\\]|\\.)*"|[[\]{}]/gs)) {
    if (sign === "[" || sign === "{") depth += 1;
    else if (sign === "]" || sign === "}") depth -= 1;
    if (depth > DEEPEST) throw new SyntaxError(`It nests deeper than ${DEEPEST} brackets.`);
  }
  return JSON.parse(text, finite);
}

/** A number too large for the page would become infinite, and "nothing" on its way to the core. @param {string} _ @param {unknown} value */
function finite(_, value) {
  if (typeof value === "number" && !Number.isFinite(value)) throw new SyntaxError("A number is too large.");
  return value;
}

/** Whether data is an object, and no list. @param {unknown} value @returns {value is JsonObject} */
export function isObject(value) {
  return value !== null && typeof value === "object" && !Array.isArray(value);
}

/** Data as JSON, whatever `toJSON` old libraries have given to all lists or objects of a page. @param {unknown} value */
export const jsonText = (value) => JSON.stringify(unchanged(value));

/**
 * The same data, or where such a library is on the page a copy that its `toJSON` does not reach.
 * @template T @param {T} value @returns {T}
 */
export function unchanged(value) {
  return "toJSON" in Array.prototype || "toJSON" in Object.prototype ? outOfReach(value) : value;
}

/** @template T @param {T} value @returns {T} */
function outOfReach(value) {
  if (!value || typeof value !== "object" || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value))
    return /** @type {T} */ (Object.defineProperty(value.map(outOfReach), "toJSON", { value: undefined }));
  const copy = Object.create(null);
  for (const [name, inner] of Object.entries(value)) copy[name] = outOfReach(inner);
  return copy;
}
