// @ts-check
/** How far, at the head of a sentence: one of the usual distances, another one, or a fixed time. */

import { choice } from "../../parts/choice.js";
import { clause } from "./clause.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Option } from "../../parts/choice.js" */

/** The distances that time trials are usually ridden over, in metres. @type {readonly [metres: number, name: string][]} */
export const USUAL_DISTANCES = [
  [16093.44, "10 miles"], [40233.6, "25 miles"], [80467.2, "50 miles"], [160934.4, "100 miles"],
  [20000, "20 km"], [40000, "40 km"], [90000, "90 km"], [180000, "180 km"],
];
/** Fixed times, in seconds. @type {readonly [seconds: number, name: string][]} */
export const USUAL_TIMES = [[3600, "one hour"], [43200, "12 hours"], [86400, "24 hours"]];

/** What a distance or a fixed time is called where it is a usual one. @param {readonly (readonly [si: number, name: string])[]} usual @param {number} si */
export const usualName = (usual, si) => usual.find(([one]) => Math.abs(one - si) < 0.5)?.[1];

const DISTANCE = "scenario.course.distance_m";
const OWN_DISTANCE = "distance";
const OWN_TIME = "time";
const SURVEYED = "surveyed";

/**
 * "Over 25 miles", "Over a distance of [32 miles]", "In one hour"
 * @param {Tools} tools
 * @param {{ timePath?: string, withTime?: (state: State) => [path: string, value: unknown][], words?: { over: string, within: string } }} [options]
 *   `timePath` is where the question keeps a fixed time; without it only distances are offered. `withTime` is what else must change when a time is fixed
 */
export function distanceChoice(tools, { timePath, withTime = () => [], words = { over: "Over", within: "In" } } = {}) {
  const { store } = tools;
  const distance = tools.number({ path: DISTANCE });
  const time = timePath === undefined ? null : tools.number({ path: timePath, kind: "clock", step: 60 });
  const ownDistance = clause(" ", distance);
  const ownTime = time && clause(" ", time);
  const pick = choice({ label: "How far", options: [], onChange: change });
  /** Whether the rider asked to type their own, even while it is a usual one. */
  let own = false;

  /** @param {string} wanted */
  function change(wanted) {
    const [kind, amount] = wanted.split(" ");
    own = amount === undefined;
    const now = store.get();
    const given = Number(amount);
    /** @type {[string, unknown][]} */
    const changes = kind === OWN_TIME
      ? [[timePath ?? "", own ? (fixedTime() ?? USUAL_TIMES[0][0]) : given], ...withTime(now)]
      : [...(timePath ? [/** @type {[string, unknown]} */ ([timePath, undefined])] : []), ...(own ? [] : [/** @type {[string, unknown]} */ ([DISTANCE, given])])];
    store.setAll(changes);
    update(store.get());
    if (own && kind === OWN_TIME) time?.focus();
    else if (own && now.scenario.course.kind !== "profile") distance.focus();
  }

  const fixedTime = () => (timePath === undefined ? undefined : store.at(timePath));

  /** @param {State} state @returns {Option[]} */
  function options({ scenario, units }) {
    const usual = [...USUAL_DISTANCES].sort(([, a], [, b]) => Number(b.endsWith(units.distance === "mi" ? "miles" : "km")) - Number(a.endsWith(units.distance === "mi" ? "miles" : "km")));
    const distances = scenario.course.kind === "profile"
      ? [{ value: SURVEYED, name: `${words.over} ${tools.units.quantity("distance", tools.courseLengthM(scenario.course), units)}` }]
      : [...usual.map(([metres, name]) => ({ value: `${OWN_DISTANCE} ${metres}`, name: `${words.over} ${name}` })), { value: OWN_DISTANCE, name: `${words.over} a distance of` }];
    return timePath === undefined ? distances
      : [...distances, ...USUAL_TIMES.map(([seconds, name]) => ({ value: `${OWN_TIME} ${seconds}`, name: `${words.within} ${name}` })), { value: OWN_TIME, name: `${words.within} a time of` }];
  }

  /** @param {State} state @param {import("../../core.js").CoreError | null} [error] @returns {boolean} */
  function update(state, error = null) {
    const fixed = fixedTime();
    const { course } = state.scenario;
    const kind = fixed !== undefined ? OWN_TIME : course.kind === "profile" ? SURVEYED : OWN_DISTANCE;
    const amount = kind === OWN_TIME ? fixed : kind === OWN_DISTANCE ? tools.courseLengthM(course) : undefined;
    const list = options(state);
    const usual = list.some(({ value }) => value === `${kind} ${amount}`);
    const typing = [distance, time].some((field) => field?.input.matches(":focus"));
    const showOwn = kind !== SURVEYED && (own || typing || !usual);
    pick.update({ options: list, value: showOwn || kind === SURVEYED ? kind : `${kind} ${amount}` });
    ownDistance.show(showOwn && kind === OWN_DISTANCE);
    ownTime?.show(showOwn && kind === OWN_TIME);
    const shown = kind === OWN_DISTANCE && distance.update(state, error);
    return (kind === OWN_TIME && time !== null && time.update(state, error)) || shown;
  }

  return { ...clause(pick, ownDistance, ...(ownTime ? [ownTime] : [])), update };
}
