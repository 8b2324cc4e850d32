// @ts-check
/** What a watt, a square metre, a kilogram and a softer tyre are worth in each other, at the rider's own point. */

import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
/** The small changes that the core's rates are for. */
const SMALL = { area_m2: 0.001, crr: 0.0001, share: 0.01 };

export function exchangeTable() {
  const grid = table({ caption: words("sameTime") });
  const element = html("div", {}, grid.element, html("p", { class: "soft" }, words("ratesHold")));
  const seconds = (/** @type {number} */ value) => units.number(value, { digits: 1 });
  const watts = (/** @type {number} */ value) => units.number(value, { digits: 2 });
  const area = (/** @type {number} */ value) => units.number(value, { digits: 4 });
  const smallCrr = () => units.number(SMALL.crr, { digits: 4 });

  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update(state, { exchange: rates, base_cda_m2 }) {
      const kilogram = units.toDisplay("mass", 1, state.units);
      const mass = units.quantity("mass", units.fromDisplay("mass", 1, state.units), state.units, { digits: 0 });
      grid.update({
        columns: [
          words("change"),
          "s",
          units.unitOf("power", state.units).symbol,
          words("areaOfCda", { unit: units.unitOf("area", state.units).symbol }),
        ],
        rows: [
          [units.quantity("power", 1, state.units), seconds(rates.s_per_w), "", area(rates.m2_per_w)],
          [
            units.quantity("area", SMALL.area_m2, state.units),
            seconds(rates.s_per_0_001_m2),
            watts(rates.w_per_0_001_m2),
            "",
          ],
          [
            words("percentOfCda", { percent: units.percent(SMALL.share) }),
            seconds(rates.s_per_cda_percent),
            watts(rates.w_per_cda_percent),
            area(base_cda_m2 * SMALL.share),
          ],
          [
            mass,
            seconds(rates.s_per_kg / kilogram),
            watts(rates.w_per_kg / kilogram),
            area(rates.m2_per_kg / kilogram),
          ],
          [
            words.parts("ofCrr", { amount: smallCrr() }),
            seconds(rates.s_per_0_0001_crr),
            watts(rates.w_per_0_0001_crr),
            area(rates.m2_per_0_0001_crr),
          ],
        ],
      });
    },
    /** @param {State} state @param {Answer} answer */
    gist(state, { exchange: rates }) {
      const worth = (/** @type {number} */ value) => units.quantity("power", value, state.units, { digits: 1 });
      return words("exchangeGist", {
        area: units.quantity("area", rates.m2_per_w, state.units, { digits: 4 }),
        smallArea: units.quantity("area", SMALL.area_m2, state.units),
        forArea: worth(rates.w_per_0_001_m2),
        forKilogram: worth(rates.w_per_kg),
        smallCrr: smallCrr(),
        forCrr: worth(rates.w_per_0_0001_crr),
      });
    },
  };
}
