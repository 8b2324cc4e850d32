// @ts-check
/** The powers of a plan and where each begins, as a table. */

import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { sitUpUntil } from "./sitting-up.js";

/** @import { State } from "../../state/history.js" */
/** @import { Units } from "../../units.js" */
/** @import { Cue, RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
/** Where the road falls, a power is the most, not the least: nothing on the page urges speed downhill. */
const FALLS = "descent";

/** Sitting up begins where a power does that is no farther away than this, m. */
const SAME_PLACE_M = 100;

/** What a place is known by. @param {Cue} cue */
function placeName({ landmark, grade }) {
  return words(`landmark.${landmark}`, { grade: show.percent(grade, 1) });
}

/**
 * What the rider does, and where: the powers of a plan, and sitting up on its climbs.
 * @param {readonly Cue[]} cues @param {Pick<Answer, "sit_up">} answer @param {Units} units
 * @returns {{ from_m: number, place: string, power: string }[]}
 */
export function steps(cues, { sit_up }, units) {
  const climbs = sit_up?.climbs ?? [];
  const begins = (/** @type {Cue} */ cue) => climbs.find(({ from_m }) => Math.abs(from_m - cue.from_m) < SAME_PLACE_M);
  const powers = cues.map((cue) => {
    const climb = begins(cue);
    const place = [placeName(cue), ...(climb ? [sitUpUntil(climb, units)] : [])].join("; ");
    return { from_m: cue.from_m, place, power: powerName(cue, units) };
  });
  const others = climbs
    .filter((climb) => !cues.some((cue) => begins(cue) === climb))
    .map((climb) => {
      const now = cues.findLast(({ from_m }) => from_m <= climb.from_m) ?? cues[0];
      return { from_m: climb.from_m, place: sitUpUntil(climb, units), power: powerName(now, units) };
    });
  return [...powers, ...others].sort((a, b) => a.from_m - b.from_m);
}

/** @param {Cue} cue @param {Units} units */
function powerName({ landmark, power_w }, units) {
  const power = show.number(show.toDisplay("power", power_w, units), { digits: 0 });
  return landmark === FALLS ? words("upTo", { power }) : power;
}

/** @param {string} caption */
export function cueTable(caption) {
  const grid = table({ caption });
  grid.element.classList.add("plan", "cues");
  return {
    ...grid,
    /** @param {State} state @param {readonly Cue[]} cues @param {Answer} answer */
    update({ units }, cues, answer) {
      const unit = (/** @type {"distance" | "power"} */ kind) => ({ unit: show.unitOf(kind, units).symbol });
      grid.update({
        columns: [words("from", unit("distance")), words("place"), words("power", unit("power"))],
        rows: steps(cues, answer, units).map(({ from_m, place, power }) => [
          show.number(show.toDisplay("distance", from_m, units), { digits: 1 }),
          place,
          power,
        ]),
      });
    },
  };
}
