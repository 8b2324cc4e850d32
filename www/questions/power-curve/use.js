// @ts-check
/** Putting what the efforts say into the scenario, for every question. */

import { amountOf } from "../../state/scenario.js";
import { round } from "../../units.js";

/** @import { EffortForm } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */
/** @import { Figure, PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

/** Digits that carry no doubt of their own. */
const DIGITS = { watts: 1, joules: 0, factor: 3, correlation: 3, share: 4 };

/**
 * What changes: CP and W′ with their covariance and the long-ride loss (and peak power where efforts told it) of the position that was tested;
 * other positions with efforts get what they cost in CP, and questions ride the best even effort.
 * @param {State} state @param {Answer} answer @returns {[path: string, value: unknown][]}
 */
export function useChanges({ scenario, with: own }, { usable, basis, position, positions, longest_s }) {
  if (!usable) return [];
  const source = basis === "fitted" ? "measured" : "estimated";
  const held = (/** @type {Figure} */ { value, sd }, /** @type {number} */ digits) => ({
    value: round(value, digits),
    sd: round(sd, digits),
    source,
  });
  const toldOfLoss = basis === "fitted" && (longest_s ?? 0) > amountOf(scenario.power.long_ride_from_s ?? Infinity);
  const tests = scenario.positions[position]?.power !== undefined;
  const at = tests ? `scenario.positions[${position}].power` : "scenario.power";
  /** @type {[string, unknown][]} */
  const changes = [
    [`${at}.cp_w`, held(usable.cp_w, DIGITS.watts)],
    [`${at}.w_prime_j`, held(usable.w_prime_j, DIGITS.joules)],
    [`${at}.cp_w_prime_correlation`, round(usable.cp_w_prime_correlation, DIGITS.correlation)],
  ];
  if (usable.peak_w) changes.push([`${at}.peak_w`, held(usable.peak_w, DIGITS.watts)]);
  changes.push(
    [
      `${at}.long_ride_loss_share`,
      usable.long_ride_loss_share
        ? { ...held(usable.long_ride_loss_share, DIGITS.share), ...(!toldOfLoss && { source: "typical" }) }
        : undefined,
    ],
    [`${at}.long_ride_loss_w`, undefined],
  );
  for (const [id, { effort }] of /** @type {[string, { effort?: EffortForm }][]} */ (Object.entries(own)))
    if (effort && effort.kind !== "time") changes.push([`with.${id}.effort`, { kind: "even" }]);
  if (tests) return changes;
  const tested = `scenario.positions[${position}]`;
  if (scenario.positions[position]) changes.push([`${tested}.cp_factor`, 1], [`${tested}.w_prime_factor`, 1]);
  for (const other of positions) {
    if (other.cp_factor && scenario.positions[other.position] && !scenario.positions[other.position].power) {
      changes.push([
        `scenario.positions[${other.position}].cp_factor`,
        { ...held(other.cp_factor, DIGITS.factor), source: other.basis === "fitted" ? "measured" : "estimated" },
      ]);
    }
  }
  return changes;
}
