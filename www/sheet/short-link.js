// @ts-check
/** A link whose course has as many points as the link has room for. The core leaves out the others, and says what that changes. */

import { ask, ready } from "../core.js";
import { differenceWords, number } from "../units.js";
import { book } from "../words/index.js";

/** @import { State } from "../state/history.js" */
/** @import { CourseAnswer, Field } from "../types/core.d.ts" */
/** @typedef {(state: State) => Promise<string>} LinkTo the whole link to a state */

const say = book("page");
const QUESTION = "course";
/** How often the number of points is tried; each try halves what is open. */
const TRIES = 7;

/**
 * @param {LinkTo} linkTo @param {State} state @param {Field} mostPoints how many may be kept @param {number} characters at most
 * @returns {Promise<{ link: string, said: string[] } | null>} null where fewer points do not make the link short enough
 */
export async function shortLink(linkTo, state, mostPoints, characters) {
  const { scenario } = state;
  const { kind, points = [] } = scenario.course;
  if (kind !== "profile") return null;
  await ready(QUESTION);
  let [most, tooMany] = [mostPoints.min, Math.min(mostPoints.max, points.length) + 1];
  let best = await attempt(most);
  for (let left = TRIES; best && left > 0 && tooMany - most > 1; left -= 1) {
    const middle = Math.floor((most + tooMany) / 2);
    const made = await attempt(middle);
    if (made) [most, best] = [middle, made];
    else tooMany = middle;
  }
  if (!best) return null;
  const { course, simplified_slower_s: slower_s } = best.made;
  const counted = (/** @type {number} */ count) => number(count, { group: true });
  const counts = { kept: counted(course.points?.length ?? 0), count: counted(points.length) };
  return {
    link: best.link,
    said: [
      say("share.shortened", counts),
      ...(slower_s === null ? [] : [say("share.slower", { difference: differenceWords(-slower_s) })]),
    ],
  };

  /** The link with so many points, if it is short enough. @param {number} most_points */
  async function attempt(most_points) {
    const made = /** @type {CourseAnswer} */ (
      /** @type {unknown} */ (ask(QUESTION, { scenario, with: { most_points } }))
    );
    const link = await linkTo({ ...state, scenario: { ...scenario, course: made.course } });
    return link.length <= characters ? { link, made } : null;
  }
}
