// @ts-check
/** What happens on the plan if the rider begins too hard, or is weaker than believed. */

import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { State } from "../../state/history.js" */
/** @import { RidePlanAnswer as Answer, TooHard } from "../../types/core.d.ts" */

const words = book("ride-plan");

export function otherwiseTable() {
  const grid = table({ caption: words("otherwise") });
  grid.element.classList.add("plan");
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer */
    update({ units }, { overshoot, cp_lower }) {
      /** @param {Omit<TooHard, "time_s">} one */
      function then({ lost_s, runs_out_m }) {
        const differs = show.differenceWords(-lost_s);
        if (runs_out_m === null) return words("thenLasts", { differs });
        return words("thenRunsOut", { differs, distance: show.quantity("distance", runs_out_m, units, { digits: 1 }) });
      }
      const { even_time_s } = cp_lower;
      grid.update({
        columns: [words("whatIf"), words("thenHeading")],
        rows: [
          ...overshoot.map((one) => [words("tooHard", { share: show.percent(one.share) }), then(one)]),
          [
            words("cpLower", { share: show.percent(cp_lower.share) }),
            [
              then(cp_lower),
              ...(even_time_s === null ? [] : [words("thenEven", { time: show.time(even_time_s) })]),
            ].join(". "),
          ],
        ],
      });
    },
  };
}
