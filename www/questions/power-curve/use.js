// @ts-check
/** Putting what the efforts say into the scenario, for every question. */

import { round } from "../../units.js";

/** @import { State } from "../../state/history.js" */
/** @import { Figure, PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

/** Digits that carry no doubt of their own. */
const DIGITS = { watts: 1, joules: 0, factor: 3, correlation: 3 };

/**
 * What changes: CP and W′ with their covariance (and peak power and long-ride loss where efforts told them) of the position that was tested;
 * other positions with efforts get what they cost in CP.
 * @param {State} state @param {Answer} answer @returns {[path: string, value: unknown][]}
 */
export function useChanges({ scenario }, { usable, basis, position, positions }) {
  if (!usable) return [];
  const source = basis === "fitted" ? "measured" : "estimated";
  const held = (/** @type {Figure} */ { value, sd }, /** @type {number} */ digits) => ({ value: round(value, digits), sd: round(sd, digits), source });
  const own = scenario.positions[position]?.power !== undefined;
  const at = own ? `scenario.positions[${position}].power` : "scenario.power";
  /** @type {[string, unknown][]} */
  const changes = [
    [`${at}.cp_w`, held(usable.cp_w, DIGITS.watts)],
    [`${at}.w_prime_j`, held(usable.w_prime_j, DIGITS.joules)],
    [`${at}.cp_w_prime_correlation`, round(usable.cp_w_prime_correlation, DIGITS.correlation)],
  ];
  if (usable.peak_w) changes.push([`${at}.peak_w`, held(usable.peak_w, DIGITS.watts)]);
  if (usable.long_ride_loss_w) changes.push([`${at}.long_ride_loss_w`, held(usable.long_ride_loss_w, DIGITS.watts)]);
  if (own) return changes;
  const tested = `scenario.positions[${position}]`;
  if (scenario.positions[position]) changes.push([`${tested}.cp_factor`, 1], [`${tested}.w_prime_factor`, 1]);
  for (const other of positions) {
    if (other.cp_factor && scenario.positions[other.position] && !scenario.positions[other.position].power) {
      changes.push([`scenario.positions[${other.position}].cp_factor`, { ...held(other.cp_factor, DIGITS.factor), source: other.basis === "fitted" ? "measured" : "estimated" }]);
    }
  }
  return changes;
}
