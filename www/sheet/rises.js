// @ts-check
/** How far a course climbs and falls, as its points say it. */

/** @typedef {{ points?: readonly { elevation_m: number }[] }} Heights */

/** How far the points of a course rise, from each to the next. @param {Heights} course @returns {number} metres */
export function risesM({ points = [] }) {
  return points.reduce(
    (sum, { elevation_m }, i) => sum + Math.max(0, elevation_m - points[Math.max(0, i - 1)].elevation_m),
    0,
  );
}

/** How far they fall. @param {Heights} course @returns {number} metres */
export const fallsM = ({ points = [] }) => risesM({ points: points.toReversed() });
