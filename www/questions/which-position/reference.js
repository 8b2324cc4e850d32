// @ts-check
/** The position that the others are compared with. */

/** @import { State } from "../../state/history.js" */

/** The ridden position stands in where the chosen one has gone. @param {State} state @returns {number} */
export function referenceOf({ scenario, with: details }) {
  const { reference } = details["which-position"];
  return reference >= scenario.positions.length ? scenario.riding_position : reference;
}
