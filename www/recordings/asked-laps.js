// @ts-check
/** What the core is given of recordings: the laps of those that are open here, and of each recording no more than its laps need. */

import { isObject } from "../parts/json.js";
import { heldRecording } from "./held.js";

/** @import { LapForm } from "../types/page.d.ts" */
/** @import { ColumnName, Recording } from "./read.js" */

/** What the core reads. @type {ColumnName[]} */
const COLUMNS = ["time_s", "speed_m_s", "power_w", "elevation_m", "distance_m", "bearing_deg"];
/** The core looks a few samples beyond a lap. */
const BESIDE_S = 10;

/** The place of a lap's recording among the rides: the first where it is not said. @param {{ recording?: unknown }} lap */
export const rideOf = ({ recording = 0 }) => Number(recording);

/** The laps whose recording is open, with their place among all. @param {unknown} rides marks @param {unknown} laps @returns {{ lap: LapForm, at: number }[]} */
export function openLaps(rides, laps) {
  if (!Array.isArray(rides) || !Array.isArray(laps)) return [];
  const isOpen = (/** @type {unknown} */ lap) => isObject(lap) && heldRecording(rides[rideOf(lap)]);
  return laps.map((lap, at) => ({ lap, at })).filter(({ lap }) => isOpen(lap));
}

/** What no page wrote goes to the core as it is, which refuses it by name. @param {unknown} rides @param {unknown} laps */
export function askedLaps(rides, laps) {
  if (!areMarks(rides) || !Array.isArray(laps) || !laps.every(isObject)) return { rides, laps };
  const asked = openLaps(rides, laps).map(({ lap }) => lap);
  const used = [...new Set(asked.map(rideOf))];
  return {
    laps: asked.map((lap) => ({ ...lap, recording: used.indexOf(rideOf(lap)) })),
    recordings: used.flatMap((ride) => {
      const recording = heldRecording(rides[ride]);
      const own = asked.filter((lap) => rideOf(lap) === ride);
      return recording ? [{ columns: cut(recording, own) }] : [];
    }),
  };
}

/** @param {unknown} rides @returns {rides is string[]} */
const areMarks = (rides) => Array.isArray(rides) && rides.every((mark) => typeof mark === "string");

/** @param {Recording} recording @param {LapForm[]} laps */
function cut({ columns }, laps) {
  const times = columns.time_s;
  const from_s = Math.min(...laps.map((lap) => lap.from_s)) - BESIDE_S;
  const to_s = Math.max(...laps.map((lap) => lap.to_s)) + BESIDE_S;
  const from = Math.max(
    0,
    times.findIndex((time_s) => time_s >= from_s),
  );
  const after = times.findIndex((time_s) => time_s > to_s);
  const to = after < 0 ? times.length : after;
  return Object.fromEntries(COLUMNS.map((name) => [name, columns[name].slice(from, to)]));
}
