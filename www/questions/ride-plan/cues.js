// @ts-check
/** The powers of a plan and where each begins, as a table. */

import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { State } from "../../state/history.js" */
/** @import { Units } from "../../units.js" */
/** @import { Cue } from "../../types/core.d.ts" */

const words = book("ride-plan");
/** Where the road falls, a power is the most, not the least: nothing on the page urges speed downhill. */
const FALLS = "descent";

/** What a place is known by. @param {Cue} cue */
export function placeName({ landmark, grade }) {
  return words(`landmark.${landmark}`, { grade: show.percent(grade, 1) });
}

/** @param {Cue} cue @param {Units} units */
export function powerName({ landmark, power_w }, units) {
  const power = show.number(show.toDisplay("power", power_w, units), { digits: 0 });
  return landmark === FALLS ? words("upTo", { power }) : power;
}

/** @param {string} caption */
export function cueTable(caption) {
  const grid = table({ caption });
  grid.element.classList.add("plan", "cues");
  return {
    ...grid,
    /** @param {State} state @param {readonly Cue[]} cues */
    update({ units }, cues) {
      const unit = (/** @type {"distance" | "power"} */ kind) => ({ unit: show.unitOf(kind, units).symbol });
      grid.update({
        columns: [words("from", unit("distance")), words("place"), words("power", unit("power"))],
        rows: cues.map((cue) => [
          show.number(show.toDisplay("distance", cue.from_m, units), { digits: 1 }),
          placeName(cue),
          powerName(cue, units),
        ]),
      });
    },
  };
}
