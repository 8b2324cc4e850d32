// @ts-check
/** What the choices are called: a position, and what is worn in it. */

import { book } from "../../words/index.js";
import { eventWords } from "../shared/distance-names.js";

/** @import { State } from "../../state/history.js" */
/** @import { PositionChoice } from "../../types/core.d.ts" */

const words = book("which-position");

/** @param {State} state @param {number} index */
export function positionName({ scenario }, index) {
  return scenario.positions[index]?.name || words("positionNumber", { number: index + 1 });
}

/** @param {State} state @param {PositionChoice} choice */
export function choiceName(state, { position, worn }) {
  const name = positionName(state, position);
  if (worn === null) return name;
  const piece = state.scenario.positions[position]?.equipment?.[worn]?.name;
  return words("wearing", { position: name, equipment: piece || words("equipmentNumber", { number: worn + 1 }) });
}

/** An event by its own name, its time or its distance. @param {State} state @param {number} index */
export function eventName({ scenario, units }, index) {
  return eventWords(scenario.events[index], units);
}
