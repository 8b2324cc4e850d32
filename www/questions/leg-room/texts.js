// @ts-check
/** Angles, lengths and changes of a set-up as text. */

import * as units from "../../units.js";
import { book, languageTag } from "../../words/index.js";

/** @import { Units } from "../../units.js" */
/** @import { SetUpWays } from "../../types/core.d.ts" */

export const words = book("leg-room");

/** Below a tenth of a degree nobody sets up a bicycle. */
export const LEVEL_DEG = 0.05;

/** "40.9°" @param {number} deg @param {Units} shown @param {{ signed?: boolean, digits?: number }} [options] */
export const angle = (deg, shown, { signed = false, digits = 1 } = {}) =>
  units.quantity("joint_angle", deg, shown, { digits, signed });

/** A crank angle, to the whole degree. @param {number} deg @param {Units} shown */
export const crankAngle = (deg, shown) => angle(Math.round(deg) % 360, shown, { digits: 0 });

/** "245°/s" @param {number} deg_s @param {Units} shown @param {{ signed?: boolean }} [options] */
export const turning = (deg_s, shown, { signed = false } = {}) =>
  units.quantity("turning", deg_s, shown, { digits: 0, signed });

/** "5 mm" @param {number} length_m @param {Units} shown */
export const millimetres = (length_m, shown) =>
  units.quantity("fit_length", Math.abs(length_m), shown, {
    digits: Math.abs(length_m) < 0.00995 && !isWhole(length_m) ? 1 : 0,
  });

/** @param {number} length_m */
const isWhole = (length_m) => Math.abs(length_m * 1000 - Math.round(length_m * 1000)) < 0.05;

/**
 * Changes that each alone bring the hip to another angle, as parts of a sentence; the pads are left out where they are what was changed.
 * @param {SetUpWays} ways @param {Units} shown @param {{ pads: boolean }} options
 */
export function waysInWords(ways, shown, { pads }) {
  const found = [
    way(ways.crank_change_m, "way.crankLonger", "way.crankShorter", millimetres),
    way(ways.seat_angle_change_deg, "way.seatForward", "way.seatBack", (deg) => angle(Math.abs(deg), shown)),
    way(ways.saddle_change_m, "way.saddleHigher", "way.saddleLower", millimetres),
    pads ? way(ways.bar_drop_change_m, "way.padsLower", "way.padsHigher", millimetres) : null,
  ].filter((text) => text !== null);
  return found.length ? new Intl.ListFormat(languageTag(), { type: "disjunction" }).format(found) : null;

  /** @typedef {"way.crankLonger" | "way.crankShorter" | "way.seatForward" | "way.seatBack" | "way.saddleHigher" | "way.saddleLower" | "way.padsLower" | "way.padsHigher"} Way */

  /** @param {number | null} by @param {Way} more @param {Way} less @param {(by: number, shown: Units) => string} text */
  function way(by, more, less, text) {
    return by === null ? null : words(by > 0 ? more : less, { by: text(by, shown) });
  }
}
