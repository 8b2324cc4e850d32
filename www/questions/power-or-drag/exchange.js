// @ts-check
/** What a watt, a square metre, a kilogram and a softer tyre are worth in each other, at the rider's own point. */

import { table } from "../../parts/table.js";
import { html } from "../../parts/html.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

/** @param {Tools} tools */
export function exchangeTable({ units }) {
  const grid = table({ caption: "Each row is worth the same time" });
  const element = html("div", {}, grid.element,
    html("p", { class: "soft" }, "These are the rates at your own point, at the same power all the way: true for small changes, and a little off for large ones."));
  const seconds = (/** @type {number} */ value) => units.number(value, { digits: 1 });
  const watts = (/** @type {number} */ value) => units.number(value, { digits: 2 });
  const area = (/** @type {number} */ value) => units.number(value, { digits: 4 });

  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update(state, { exchange: rates, base_cda_m2 }) {
      const percent_m2 = base_cda_m2 / 100;
      const kilogram = units.toDisplay("mass", 1, state.units);
      const mass = units.quantity("mass", units.fromDisplay("mass", 1, state.units), state.units, { digits: 0 });
      grid.update({
        columns: ["Change", "s", "W", "m² of CdA"],
        rows: [
          [units.quantity("power", 1, state.units), seconds(rates.s_per_w), "", area(rates.m2_per_w)],
          ["0.001 m²", seconds(rates.s_per_0_001_m2), watts(rates.w_per_0_001_m2), ""],
          ["1 % of CdA", seconds(rates.s_per_cda_percent), watts(rates.w_per_cda_percent), area(percent_m2)],
          [mass, seconds(rates.s_per_kg / kilogram), watts(rates.w_per_kg / kilogram), area(rates.m2_per_kg / kilogram)],
          ["0.0001 Crr", seconds(rates.s_per_0_0001_crr), watts(rates.w_per_0_0001_crr), area(rates.m2_per_0_0001_crr)],
        ],
      });
    },
    /** @param {State} state @param {Answer} answer */
    gist(state, { exchange: rates }) {
      const worth = (/** @type {number} */ value) => units.quantity("power", value, state.units, { digits: 1 });
      return `A watt is worth ${area(rates.m2_per_w)}\u00a0m². In watts: 0.001\u00a0m² is worth ${worth(rates.w_per_0_001_m2)}, a kilogram ${worth(rates.w_per_kg)}, 0.0001 of rolling resistance ${worth(rates.w_per_0_0001_crr)}.`;
    },
  };
}
