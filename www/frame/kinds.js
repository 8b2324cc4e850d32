// @ts-check
/** What the field at a path measures, as the core's table says. */

import { fields } from "../core.js";
import { fieldKey } from "../state/scenario.js";

/** @import { Kind } from "../units.js" */

/** @type {Map<string, Kind>} */
const kinds = new Map(fields().map(({ key, kind }) => [key, kind]));

/** `"scenario.positions[0].cda_m2"` is an area. @param {string} path @returns {Kind} */
export const kindOf = (path) => kinds.get(fieldKey(path)) ?? "ratio";
