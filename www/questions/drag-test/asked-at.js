// @ts-check
/** Where each lap of an answer stands in the list of laps: those of rides that are not open are not asked about. */

import { openLaps } from "../../recordings/asked-laps.js";

/** @import { State } from "../../state/history.js" */

/** @param {State} state */
export const askedAt = ({ with: { "drag-test": own } }) => openLaps(own.rides, own.laps).map(({ at }) => at);
