// @ts-check
/** The head wind along a ride in brief. */

/** @import { Day } from "../../types/core.d.ts" */

/** The lowest and the highest of the head winds; null where the road does not say which way it leads. @param {Day} day */
export function windEnds({ columns: { along_head_wind_m_s: winds } }) {
  const known = winds.filter(Number.isFinite);
  return known.length ? { low: Math.min(...known), high: Math.max(...known) } : null;
}
