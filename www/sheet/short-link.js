// @ts-check
/** A link whose courses have as many points as the link has room for. The core leaves out the others, and says what that changes. */

import { ask, ready } from "../core.js";
import { differenceWords, number } from "../units.js";
import { book } from "../words/index.js";

/** @import { State } from "../state/history.js" */
/** @import { CourseAnswer, Field } from "../types/core.d.ts" */
/** @import { Course, Scenario } from "../types/page.d.ts" */
/** @typedef {(state: State) => Promise<string>} LinkTo the whole link to a state */
/** @typedef {{ event: number | null, name: string, course: Course }} Surveyed a course by points: the scenario's own, or an event's */

const say = book("page");
const QUESTION = "course";
/** How often the number of points is tried; each try halves what is open. */
const TRIES = 7;

/**
 * @param {LinkTo} linkTo @param {State} state @param {Field} mostPoints how many each course may keep @param {number} characters at most
 * @returns {Promise<{ link: string, said: string[] } | null>} null where fewer points do not make the link short enough
 */
export async function shortLink(linkTo, state, mostPoints, characters) {
  const { scenario } = state;
  const surveyed = surveyedIn(scenario);
  if (!surveyed.length) return null;
  await ready(QUESTION);
  const longest = Math.max(...surveyed.map(({ course }) => pointsOf(course)));
  let [most, tooMany] = [mostPoints.min, Math.min(mostPoints.max, longest) + 1];
  let best = await attempt(most);
  for (let left = TRIES; best && left > 0 && tooMany - most > 1; left -= 1) {
    const middle = Math.floor((most + tooMany) / 2);
    const made = await attempt(middle);
    if (made) [most, best] = [middle, made];
    else tooMany = middle;
  }
  return best && { link: best.link, said: surveyed.flatMap((one, place) => told(one, best.made[place])) };

  /** The link with so many points a course, if it is short enough. @param {number} most_points */
  async function attempt(most_points) {
    const made = surveyed.map(({ course }) => shortened(scenario, course, most_points));
    const shorter = surveyed.reduce(
      (so_far, { event }, place) => withCourse(so_far, event, made[place].course),
      scenario,
    );
    const link = await linkTo({ ...state, scenario: shorter });
    return link.length <= characters ? { link, made } : null;
  }
}

/** @param {Scenario} scenario @returns {Surveyed[]} */
function surveyedIn({ course, events }) {
  /** @type {Surveyed[]} */
  const all = [
    { event: null, name: "", course },
    ...events.flatMap(({ name, course }, event) => (course ? [{ event, name, course }] : [])),
  ];
  return all.filter(({ course }) => course.kind === "profile");
}

/** @param {Course} course */
const pointsOf = ({ points = [] }) => points.length;

/** @param {Scenario} scenario @param {Course} course @param {number} most_points @returns {CourseAnswer} */
function shortened(scenario, course, most_points) {
  const request = { scenario: { ...scenario, course, events: undefined }, with: { most_points } };
  return /** @type {CourseAnswer} */ (/** @type {unknown} */ (ask(QUESTION, request)));
}

/** @param {Scenario} scenario @param {number | null} event @param {Course} course @returns {Scenario} */
function withCourse(scenario, event, course) {
  if (event === null) return { ...scenario, course };
  return { ...scenario, events: scenario.events.map((one, place) => (place === event ? { ...one, course } : one)) };
}

/** What was left out, and what that changes. @param {Surveyed} surveyed @param {CourseAnswer} made */
function told({ name, course }, made) {
  const count = pointsOf(course);
  if (pointsOf(made.course) === count) return [];
  const counted = (/** @type {number} */ points) => number(points, { group: true });
  const counts = { name, kept: counted(pointsOf(made.course)), count: counted(count) };
  return [
    say(name ? "share.shortenedOf" : "share.shortened", counts),
    ...(made.simplified_slower_s === null
      ? []
      : [say("share.slower", { difference: differenceWords(-made.simplified_slower_s) })]),
  ];
}
