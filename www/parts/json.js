// @ts-check
/** JSON that is somebody else's text, and JSON on a page whose scripts have changed how it is written. */

/** No scenario, link or file of this page nests deeper than a quarter of this. */
const DEEPEST = 64;

/**
 * Reads JSON, but none that nests without end: what is read is walked by functions that call themselves.
 * @param {string} text @returns {any}
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
  return JSON.parse(text);
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

/** @param {any} value @returns {any} */
function outOfReach(value) {
  if (!value || typeof value !== "object" || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) return Object.defineProperty(value.map(outOfReach), "toJSON", { value: undefined });
  const copy = Object.create(null);
  for (const [name, inner] of Object.entries(value)) copy[name] = outOfReach(inner);
  return copy;
}
