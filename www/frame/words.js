// @ts-check
/** What the fields of a scenario are called on the page, and what the page says when one of them is refused. */

import { fewestDigitsFor, kindOf, number, plusMinus, quantity, toDisplay } from "../units.js";
import { fieldKey } from "../state/scenario.js";

/** @import { Units } from "../units.js" */
/** @import { CoreError } from "../core.js" */

/** @type {Record<string, string>} */
const LABELS = {
  title: "Title",
  "rider.total_mass_kg": "Rider, bicycle and kit together",
  "bike.rolling_coefficient": "Rolling resistance, Crr",
  "bike.drivetrain_efficiency": "Drivetrain efficiency",
  "bike.rotating_mass_kg": "Extra mass for turning wheels",
  "bike.bearing_drag_n": "Bearing drag, constant part",
  "bike.bearing_drag_n_s_per_m": "Bearing drag, part that grows with speed",
  "bike.launch_force_n": "Most push from standstill",
  "bike.lateral_m_s2": "Sideways acceleration in bends",
  "bike.braking_m_s2": "Braking for bends",
  "positions.name": "Name of the position",
  "positions.cda_m2": "Drag area, CdA",
  "positions.cp_factor": "Critical power in this position",
  "positions.w_prime_factor": "W′ in this position",
  "positions.speed_exponent": "How CdA changes with air speed",
  "positions.reference_airspeed_m_s": "Air speed CdA was measured at",
  "positions.fade.tired_cda_m2": "Drag area once it is lost",
  "positions.fade.begins_s": "Starts to go at",
  "positions.fade.complete_s": "Wholly lost by",
  "positions.fade_test.first_third_cda_m2": "Drag area in the first third",
  "positions.fade_test.last_third_cda_m2": "Drag area in the last third",
  "positions.fade_test.test_s": "Length of the test",
  "positions.equipment.name": "Name of the equipment",
  "positions.equipment.cda_change_m2": "What it adds to drag area",
  "positions.equipment.mass_change_kg": "What it adds to the mass",
  "positions.lapses.share": "Share of the ride out of position",
  "positions.lapses.cda_m2": "Drag area while out of it",
  "positions.yaw_table": "Drag at each yaw",
  "positions.yaw_table.yaw_deg": "Yaw",
  "positions.yaw_table.ratio": "Ratio to zero yaw",
  "power.cp_w": "Critical power, CP",
  "power.w_prime_j": "Work above it, W′",
  "power.peak_w": "Peak power",
  "power.long_ride_loss_w": "Long-ride loss",
  "power.long_ride_from_s": "Loss counts from",
  "power.cp_w_prime_correlation": "How CP and W′ go together",
  "efforts.duration_s": "How long the effort lasted",
  "efforts.power_w": "Power of the effort",
  "events.distance_m": "Distance of the event",
  "course.distance_m": "Distance",
  "course.grade": "Slope",
  "course.bearing_deg": "Direction at the start",
  "course.points": "Points of the course",
  "course.points.distance_m": "Distance of the point",
  "course.points.elevation_m": "Elevation of the point",
  "course.points.bearing_deg": "Direction from the point",
  "course.points.radius_m": "Radius of the bend",
  "conditions.temperature_c": "Air temperature",
  "conditions.pressure_hpa": "Air pressure",
  "conditions.altitude_m": "Altitude of the course",
  "conditions.relative_humidity": "Relative humidity",
  "conditions.dew_point_c": "Dew point",
  "conditions.wind_speed_m_s": "Wind speed, as forecast",
  "conditions.wind_from_deg": "Wind from",
  "conditions.wind_height_m": "Height of the forecast wind",
  "conditions.rider_height_m": "Height of the rider in the wind",
  "conditions.roughness_length_m": "Roughness length of the land",
  "conditions.shelter_factor": "Share of the wind that reaches you",
  "conditions.latitude_deg": "Latitude",
  "start.speed_m_s": "Speed at the line",
  model_error_share: "The model’s own error",
  "with.power_w": "Power",
  "with.speed_m_s": "Speed",
  "with.time_s": "Finish time",
  "with.power_change": "Change of power",
  "with.cda_change": "Change of drag area",
  "with.lower_by_m2": "How much lower the low position is",
  "with.for_time_s": "Time to ride for",
  "with.split_every_m": "Distance between splits",
  "with.draws": "Number of draws",
};

/** What the field at a path is called, or an empty text. @param {string} path */
export function labelOf(path) {
  const key = fieldKey(path);
  return Object.hasOwn(LABELS, key) ? LABELS[key] : "";
}

/** A path as the core names it: `with.power-or-drag.power_change` in the store is `with.power_change` in the request. @param {string} path */
export function requestPath(path) {
  return path.replace(/^with\.[a-z-]+\.(.+)$/, "with.$1").replace(/\.(value|sd|source)$/, "");
}

/** Whether an error or a warning is about the field at a path of the store. @param {{ field: string } | null} about @param {string} path */
export function isAbout(about, path) {
  if (!about) return false;
  const wanted = requestPath(path);
  return about.field === wanted || about.field.startsWith(`${wanted}.`);
}

/** A range in words: "0.1 to 0.8 m²". @param {string} path @param {number} min @param {number} max @param {Units} units */
export function rangeWords(path, min, max, units) {
  const kind = kindOf(path);
  const digits = Math.max(fewestDigitsFor(kind, min, units), fewestDigitsFor(kind, max, units));
  const low = kind === "clock" ? quantity(kind, min, units) : number(toDisplay(kind, min, units), { digits });
  return `${low} to ${quantity(kind, max, units, { digits })}`;
}

/** The sentence for a value outside its range. @param {string} path @param {number} min @param {number} max @param {Units} units */
export function outsideWords(path, min, max, units) {
  return `${labelOf(path) || "This number"} runs from ${rangeWords(path, min, max, units)}.`;
}

/**
 * An error or a warning as the reader's sentence: ranges in their own units, fields by their name.
 * @param {CoreError} error @param {Units} units
 */
export function errorWords({ kind, field, message, min, max }, units) {
  const label = labelOf(field);
  const lastPart = field.split(".").at(-1) ?? "";
  switch (kind) {
    case "unknown_field": return `There is no field “${lastPart}” there; it may be a typing slip.`;
    case "wrong_type": return `“${label || lastPart}” holds something other than it should.`;
    case "missing": return label ? `“${label}” is missing.` : capital(message);
    case "out_of_range":
      if (!label || min === undefined || max === undefined) break;
      return lastPart === "sd" ? `The ± of “${label}” is at most ${spreadWords(field, max, units)}.` : outsideWords(field, min, max, units);
  }
  return capital(named(message, field));
}

/** @param {string} path @param {number} sd @param {Units} units */
function spreadWords(path, sd, units) {
  return plusMinus(kindOf(path), sd, units).replace(/^±\s*/, "");
}

/** A message with the fields in it called by their names: the one it is about by its path, its neighbours by their last part. @param {string} message @param {string} field */
function named(message, field) {
  const parent = field.slice(0, field.lastIndexOf(".") + 1);
  const called = (/** @type {string} */ path, /** @type {string} */ otherwise) => (labelOf(path) ? `“${labelOf(path)}”` : otherwise);
  return (field ? message.replaceAll(field, called(field, field)) : message).replace(/\b[a-z]+(?:_[a-z0-9]+)+\b/g, (word) => called(parent + word, word));
}

/** @param {string} text */
function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
