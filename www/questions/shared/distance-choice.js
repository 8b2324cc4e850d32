// @ts-check
/** How far, at the head of a sentence: one of the usual distances, another one, or a fixed time. */

import { scenarioTables } from "../../core.js";
import { choice } from "../../parts/choice.js";
import { courseLengthM, eventLengthM } from "../../state/scenario.js";
import { quantity, time } from "../../units.js";
import { book } from "../../words/index.js";
import { clause } from "./clause.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Option } from "../../parts/choice.js" */

/** @typedef {import("../../units.js").Units} Units */

const words = book("shared");

const { usualEvents, usualMetricEvents } = scenarioTables();
/** The distances that time trials are usually ridden over, in metres, and the unit that names them. @type {readonly [metres: number, unit: Units["distance"]][]} */
const USUAL_DISTANCES = [
  ...usualEvents.map((event) => /** @type {[number, "mi"]} */ ([eventLengthM(event), "mi"])),
  ...usualMetricEvents.map((event) => /** @type {[number, "km"]} */ ([eventLengthM(event), "km"])),
];
/** Fixed times, in seconds. */
const USUAL_TIMES = [3600, 43200, 86400];

/** @param {number} one @param {number} other */
const alike = (one, other) => Math.abs(one - other) < 0.5;

/** A distance by its usual name where it has one: "25 miles", whatever unit the rider reads. @param {number} distance_m @param {Units} units */
export function distanceName(distance_m, units) {
  const named = USUAL_DISTANCES.find(([metres]) => alike(metres, distance_m))?.[1];
  return quantity("distance", distance_m, named ? { ...units, distance: named } : units);
}

/** A time by its usual name where it has one: "one hour". @param {number} time_s */
export function timeName(time_s) {
  const named = USUAL_TIMES.find((one) => alike(one, time_s));
  return named ? words("hours", { count: named / 3600 }) : time(time_s);
}

const DISTANCE = "scenario.course.distance_m";
const OWN_DISTANCE = "distance";
const OWN_TIME = "time";
const SURVEYED = "surveyed";

/**
 * "Over 25 miles", "Over a distance of [32 miles]", "In one hour"
 * @param {Tools} tools
 * @param {{ timePath?: string, withTime?: (state: State) => [path: string, value: unknown][] }} [options]
 *   `timePath` is where the question keeps a fixed time; without it only distances are offered. `withTime` is what else must change when a time is fixed
 */
export function distanceChoice(tools, { timePath, withTime = () => [] } = {}) {
  const { store } = tools;
  const distance = tools.number({ path: DISTANCE });
  const clock = timePath === undefined ? null : tools.number({ path: timePath, kind: "clock", step: 60 });
  const ownDistance = clause(" ", distance);
  const ownTime = clock && clause(" ", clock);
  const pick = choice({ label: words("howFar"), options: [], onChange: change });
  /** Whether the rider asked to type their own, even while it is a usual one. */
  let own = false;

  /** @param {string} wanted */
  function change(wanted) {
    const [kind, amount] = wanted.split(" ");
    own = amount === undefined;
    const now = store.get();
    const given = Number(amount);
    /** @type {[string, unknown][]} */
    const changes =
      kind === OWN_TIME
        ? [[timePath ?? "", own ? (fixedTime() ?? USUAL_TIMES[0]) : given], ...withTime(now)]
        : [
            ...(timePath ? [/** @type {[string, unknown]} */ ([timePath, undefined])] : []),
            ...(own ? [] : [/** @type {[string, unknown]} */ ([DISTANCE, given])]),
          ];
    store.setAll(changes);
    update(store.get());
    if (own && kind === OWN_TIME) clock?.focus();
    else if (own && now.scenario.course.kind !== "profile") distance.focus();
  }

  const fixedTime = () => (timePath === undefined ? undefined : store.at(timePath));

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
    return timePath === undefined
      ? distances
      : [
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
    const fixed = fixedTime();
    const { course } = state.scenario;
    const kind = fixed !== undefined ? OWN_TIME : course.kind === "profile" ? SURVEYED : OWN_DISTANCE;
    const amount = kind === OWN_TIME ? fixed : kind === OWN_DISTANCE ? courseLengthM(course) : undefined;
    const list = options(state);
    const usual = list.some(({ value }) => value === `${kind} ${amount}`);
    const typing = [distance, clock].some((field) => field?.input.matches(":focus"));
    const showOwn = kind !== SURVEYED && (own || typing || !usual);
    pick.update({ options: list, value: showOwn || kind === SURVEYED ? kind : `${kind} ${amount}` });
    ownDistance.show(showOwn && kind === OWN_DISTANCE);
    ownTime?.show(showOwn && kind === OWN_TIME);
    const shown = kind === OWN_DISTANCE && distance.update(state, error);
    return (kind === OWN_TIME && clock !== null && clock.update(state, error)) || shown;
  }

  return { ...clause(pick, ownDistance, ...(ownTime ? [ownTime] : [])), update };
}
