// @ts-check
/** How far, at the head of a sentence: one of the usual distances, another one, or a fixed time. */

import { choice } from "../../parts/choice.js";
import { courseLengthM } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { clause } from "./clause.js";
import { distanceName, timeName, USUAL_DISTANCES, USUAL_TIMES } from "./distance-names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Option } from "../../parts/choice.js" */

const words = book("shared");

const DISTANCE = "scenario.course.distance_m";
/** The time of a course that goes by time. */
const LASTING = "scenario.course.duration_s";
const OWN_DISTANCE = "distance";
const OWN_TIME = "time";
const SURVEYED = "surveyed";

/**
 * "Over 25 miles", "Over a distance of [32 miles]", "In one hour"
 * @param {Tools} tools
 * @param {{ timePath?: string, withTime?: (state: State) => [path: string, value: unknown][] }} [options]
 *   `timePath` is where the question keeps a fixed time of its own; without it, and where the course goes by time already, the course keeps it. `withTime` is what else must change when a time is fixed
 */
export function distanceChoice(tools, { timePath, withTime = () => [] } = {}) {
  const { store } = tools;
  const distance = tools.number({ path: DISTANCE });
  /** Where the fixed time stands. @param {State} state */
  const timeAt = ({ scenario: { course } }) => (course.duration_s === undefined && timePath ? timePath : LASTING);
  const clock = tools.number({ path: timeAt, kind: "clock", step: 60 });
  const ownDistance = clause(" ", distance);
  const ownTime = clause(" ", clock);
  const pick = choice({ label: words("howFar"), options: [], onChange: change });
  /** Whether the rider asked to type their own, even while it is a usual one. */
  let own = false;

  /** @param {string} wanted */
  function change(wanted) {
    const [kind, amount] = wanted.split(" ");
    own = amount === undefined;
    const now = store.get();
    const given = Number(amount);
    const at = timeAt(now);
    const { course } = now.scenario;
    /** @type {[string, unknown][]} */
    const changes =
      kind === OWN_TIME
        ? [
            [at, own ? (fixedTime(now) ?? USUAL_TIMES[0]) : given],
            ...(at === LASTING && course.distance_m !== undefined ? [without(DISTANCE)] : []),
            ...withTime(now),
          ]
        : [
            ...(timePath ? [without(timePath)] : []),
            ...(course.duration_s === undefined ? [] : [without(LASTING)]),
            ...(own ? ownStart(course) : [/** @type {[string, unknown]} */ ([DISTANCE, given])]),
          ];
    store.setAll(changes);
    update(store.get());
    if (own && kind === OWN_TIME) clock.focus();
    else if (own && course.kind !== "profile") distance.focus();
  }

  /** A course that went by time has a distance to begin with. @param {State["scenario"]["course"]} course @returns {[string, unknown][]} */
  const ownStart = ({ kind, distance_m }) =>
    kind === "profile" || distance_m !== undefined ? [] : [[DISTANCE, tools.field(DISTANCE)?.default]];

  /** @param {State} state @returns {number | undefined} */
  const fixedTime = (state) => store.at(timeAt(state));

  /** @param {State} state @returns {Option[]} */
  function options({ scenario, units }) {
    const over = (/** @type {number} */ metres) => words("over", { distance: distanceName(metres, units) });
    const usual = [...USUAL_DISTANCES].sort(
      ([, a], [, b]) => Number(b === units.distance) - Number(a === units.distance),
    );
    const distances =
      scenario.course.kind === "profile"
        ? [{ value: SURVEYED, name: over(courseLengthM(scenario.course)) }]
        : [
            ...usual.map(([metres]) => ({ value: `${OWN_DISTANCE} ${metres}`, name: over(metres) })),
            { value: OWN_DISTANCE, name: words("overOwn") },
          ];
    return [
      ...distances,
      ...USUAL_TIMES.map((seconds) => ({
        value: `${OWN_TIME} ${seconds}`,
        name: words("within", { time: timeName(seconds) }),
      })),
      { value: OWN_TIME, name: words("withinOwn") },
    ];
  }

  /** @param {State} state @param {import("../../core.js").CoreError | null} [error] @returns {boolean} */
  function update(state, error = null) {
    const fixed = fixedTime(state);
    const { course } = state.scenario;
    const kind = fixed !== undefined ? OWN_TIME : course.kind === "profile" ? SURVEYED : OWN_DISTANCE;
    const amount = kind === OWN_TIME ? fixed : kind === OWN_DISTANCE ? courseLengthM(course) : undefined;
    const list = options(state);
    const usual = list.some(({ value }) => value === `${kind} ${amount}`);
    const typing = [distance, clock].some((field) => field.input.matches(":focus"));
    const showOwn = kind !== SURVEYED && (own || typing || !usual);
    pick.update({ options: list, value: showOwn || kind === SURVEYED ? kind : `${kind} ${amount}` });
    ownDistance.show(showOwn && kind === OWN_DISTANCE);
    ownTime.show(showOwn && kind === OWN_TIME);
    const shown = kind === OWN_DISTANCE && distance.update(state, error);
    return (kind === OWN_TIME && clock.update(state, error)) || shown;
  }

  return { ...clause(pick, ownDistance, ownTime), update };
}

/** @param {string} path @returns {[path: string, value: unknown]} */
const without = (path) => [path, undefined];
