// @ts-check
/** The ride in figures along the road. */

import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { State } from "../../state/history.js" */
/** @import { Kind } from "../../units.js" */
/** @import { RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
/** No more rows than a reader looks through. */
const MOST_ROWS = 60;

export function alongTable() {
  const grid = table({ caption: words("tableCaption") });
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer */
    update({ units }, { columns }) {
      const unit = (/** @type {Kind} */ kind) => ({ unit: show.unitOf(kind, units).symbol });
      const write = (/** @type {Kind} */ kind, /** @type {number} */ si, /** @type {number} */ digits) =>
        show.number(show.toDisplay(kind, si, units), { digits });
      const count = columns.distance_m.length;
      const every = Math.ceil(count / MOST_ROWS);
      const rows = Array.from(columns.distance_m.keys()).filter((at) => at % every === 0 || at === count - 1);
      grid.update({
        columns: [
          words("from", unit("distance")),
          words("gradient"),
          words("planPower", unit("power")),
          words("fastestPower", unit("power")),
          words("planReserve", unit("work")),
          words("aheadIn"),
        ],
        rows: rows.map((at) => [
          write("distance", columns.distance_m[at], 1),
          show.percent(columns.grade[at], 1),
          write("power", columns.simple_power_w[at], 0),
          write("power", columns.power_w[at], 0),
          write("work", columns.simple_w_prime_j[at], 1),
          show.number(columns.ahead_s[at], { digits: 1 }),
        ]),
      });
    },
  };
}
