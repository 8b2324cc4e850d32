// @ts-check
/** What the field at a path measures, as the core's table says. */

import { fields } from "../core.js";
import { fieldKey } from "../state/scenario.js";

/** @import { Kind } from "../units.js" */

/** @type {Map<string, Kind>} */
const byKey = new Map(fields().map(({ key, kind }) => [key, kind]));
/** A question, or the story, may hold a number of its own under the name that a field has elsewhere. @type {Map<string, Kind>} */
const byName = new Map(fields().map(({ key, kind }) => [nameIn(key), kind]));

/** @param {string} key */
function nameIn(key) {
  return key.slice(key.lastIndexOf(".") + 1);
}

/** `"scenario.positions[0].cda_m2"` is an area. @param {string} path @returns {Kind} */
export function kindOf(path) {
  const key = fieldKey(path);
  return byKey.get(key) ?? byName.get(nameIn(key)) ?? "ratio";
}
