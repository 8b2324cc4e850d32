// @ts-check
/** The story in short: when position wins, when power wins, when they are level, and what both are worth with the numbers that the reader left. */

import { html, say, strong } from "../parts/html.js";
import { table } from "../parts/table.js";
import { savingsThatAddUp } from "../questions/shared/adding-up.js";
import { distanceName } from "../questions/shared/distance-names.js";
import { shortPercent } from "../questions/shared/published.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { bothChanges } from "./rider.js";

/** @import { Step } from "./step.js" */

const words = book("learn");

/** @returns {Step} */
export function inShort() {
  const grid = table({ caption: words("sumTitle") });
  grid.update({
    columns: [words("sumWho"), words("sumWhen")],
    rows: [
      [words("sumPosition"), words("sumPositionWhen")],
      [words("sumPower"), words("sumPowerWhen")],
      [words("sumLevel"), words("sumLevelWhen")],
    ],
  });
  const worth = html("p", { class: "also" });
  return {
    element: html(
      "section",
      { class: "step", "aria-label": words("sumTitle") },
      html("div", { class: "summary" }, grid.element, worth),
    ),
    destroy: grid.destroy,
    update({ units }, numbers) {
      const { distance_m, difference_s, more_power_saves_s, less_drag_saves_s, exchange } = bothChanges(numbers);
      const saved = savingsThatAddUp(difference_s.value, more_power_saves_s.value, less_drag_saves_s.value);
      const less = -numbers.cda_change;
      say(
        worth,
        words.parts("sumWorth", {
          distance: distanceName(distance_m, units),
          drag: strong(show.differenceWords(saved.second_s), "drag"),
          lessDrag: words("lessDrag", { percent: shortPercent(less) }),
          power: strong(show.differenceWords(saved.first_s), "power"),
          morePower: words("morePower", { percent: shortPercent(numbers.power_change) }),
          watts: strong(show.quantity("power", exchange.w_per_cda_percent * less * 100, units, { digits: 0 }), "power"),
        }),
      );
    },
  };
}
