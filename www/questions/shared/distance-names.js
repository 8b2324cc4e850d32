// @ts-check
/** What distances, fixed times and events are called, and what is gained in a fixed time. */

import { usual_events, usual_metric_events } from "fasterby-tables";
import { eventLengthM, eventSeconds } from "../../state/scenario.js";
import { plusMinus, quantity, time } from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Event } from "../../types/page.d.ts" */
/** @import { Figure } from "../../types/core.d.ts" */
/** @import { Units } from "../../units.js" */

const words = book("shared");

/** The distances that time trials are usually ridden over, in metres, and the unit that names them. @type {readonly [metres: number, unit: Units["distance"]][]} */
export const USUAL_DISTANCES = [
  ...usual_events.map((event) => /** @type {[number, "mi"]} */ ([eventLengthM(event), "mi"])),
  ...usual_metric_events.map((event) => /** @type {[number, "km"]} */ ([eventLengthM(event), "km"])),
];
/** Fixed times, in seconds. */
export const USUAL_TIMES = [3600, 43200, 86400];

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

/** The same where it stands alone: "1 hour". @param {number} time_s */
export function timeAlone(time_s) {
  const hours = time_s / 3600;
  return Number.isInteger(hours) ? words("hoursAlone", { count: hours }) : time(time_s);
}

/** An event by its own name, its time or its distance. @param {Event} event @param {Units} units */
export function eventWords(event, units) {
  const fixed_s = eventSeconds(event);
  return event.name || (fixed_s === undefined ? distanceName(eventLengthM(event), units) : timeAlone(fixed_s));
}

/** How far a ride is that an answer tells of: "25 miles", or "12 hours (about 417 km)" where it goes by time. @param {{ distance_m: number, duration_s?: number }} ride @param {Units} units */
export function rideName({ distance_m, duration_s }, units) {
  if (duration_s === undefined) return distanceName(distance_m, units);
  return words("reached", { time: timeAlone(duration_s), distance: aboutWords(distance_m, units) });
}

/** A distance that comes out of a fixed time, which nobody knows to the metre. @param {number} distance_m @param {Units} units */
export const aboutWords = (distance_m, units) => quantity("distance", distance_m, units, { digits: 0 });

/** "3.6 km further". @param {number} further_m @param {Units} units */
export function furtherWords(further_m, units) {
  const distance = quantity("distance", Math.abs(further_m), units, { digits: 1 });
  return words(further_m < 0 ? "lessFar" : "further", { distance });
}

/** The same with its ±. @param {Figure} further_m @param {Units} units */
export function furtherFigure({ value, sd }, units) {
  const further = furtherWords(value, units);
  return sd > 0 ? `${further} ${plusMinus("distance", sd, units)}` : further;
}
