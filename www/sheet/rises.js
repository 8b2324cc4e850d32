// @ts-check
/** How far a course climbs, as its points say it. */

/** @import { Course } from "../types/page.d.ts" */

/** How far the points of a course rise, from each to the next. @param {Course} course @returns {number} metres */
export function risesM({ points = [] }) {
  return points.reduce(
    (sum, { elevation_m }, i) => sum + Math.max(0, elevation_m - points[Math.max(0, i - 1)].elevation_m),
    0,
  );
}
