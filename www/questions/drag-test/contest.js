// @ts-check
/** The two positions with the least drag, and what lies between them. */

/** @import { DragTestAnswer as Answer, TestFigure } from "../../types/core.d.ts" */

/**
 * @param {Answer} answer
 * @returns {{ low: number, next: number, more: TestFigure } | null} `more` is what the second has beyond the first; null where one position was tested
 */
export function contest({ positions, differences }) {
  const [low, next] = positions.toSorted((one, other) => one.cda_m2.value - other.cda_m2.value);
  if (!next) return null;
  const [a, b] = [low.position, next.position];
  const found = differences.find((pair) => [pair.a, pair.b].includes(a) && [pair.a, pair.b].includes(b));
  if (!found) return null;
  return { low: a, next: b, more: found.b === b ? found.cda_m2 : opposite(found.cda_m2) };
}

/** @param {TestFigure} figure @returns {TestFigure} */
function opposite({ value, sd, low_95, high_95, chance_positive }) {
  const turned = (/** @type {number | null} */ end) => (end === null ? null : -end);
  return {
    value: -value,
    sd,
    low_95: turned(high_95),
    high_95: turned(low_95),
    chance_positive: chance_positive === null ? null : 1 - chance_positive,
  };
}
