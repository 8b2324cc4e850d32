// @ts-check
/** What small changes do, and what gives back the hip that a lower front takes. */

import { html, say } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import { angle, LEVEL_DEG, millimetres, turning, waysInWords, words } from "./texts.js";

/** @import { State } from "../../state/history.js" */
/** @import { LegRoomAnswer as Answer, SetUpChange } from "../../types/core.d.ts" */
/** @import { Units } from "../../units.js" */

export function changesTable() {
  const grid = table({ caption: "" });
  grid.element.classList.add("compact");
  return {
    element: grid.element,
    destroy: grid.destroy,
    /** @param {State} state @param {Answer} answer */
    update({ units: shown }, { changes }) {
      const figure = (/** @type {number | null} */ value, /** @type {(value: number) => string} */ text) =>
        value === null ? words("changes.outOfReach") : text(value);
      grid.update({
        caption: words("changes.title"),
        columns: [words("changes.change"), words("changes.hip"), words("changes.knee"), words("changes.thigh")],
        rows: changes.map((change) => [
          words(`changes.${change.part}`, { by: amount(change, shown) }),
          figure(change.tightest_hip_deg, (deg) => angle(deg, shown, { signed: true })),
          figure(change.straightest_knee_deg, (deg) => angle(deg, shown, { signed: true })),
          figure(change.fastest_thigh_deg_s, (deg_s) => turning(deg_s, shown, { signed: true })),
        ]),
      });
    },
  };
}

/** @param {SetUpChange} change @param {Units} shown */
function amount({ part, by }, shown) {
  return part === "seat_angle" ? angle(by, shown, { digits: 0 }) : millimetres(by, shown);
}

export function keepTheHip() {
  const level = html("p", { class: "also" });
  const giveBack = html("p", { class: "takes no-print" });
  return {
    elements: [level, giveBack],
    /** @param {State} state @param {Answer} answer */
    update({ units: shown }, { difference, level: ways, give_back, changes }) {
      const opens_deg = difference.tightest_hip_deg.value;
      const found = waysInWords(ways, shown, { pads: true });
      if (Math.abs(opens_deg) < LEVEL_DEG) say(level, words.parts("level.already"));
      else if (found === null) say(level, words.parts("level.none"));
      else say(level, words.parts(opens_deg < 0 ? "level.tighter" : "level.wider", { ways: found }));

      const pads = changes.find(({ part }) => part === "pads");
      giveBack.hidden = !pads || pads.tightest_hip_deg === null;
      if (!pads || pads.tightest_hip_deg === null) return;
      const back = waysInWords(give_back, shown, { pads: false });
      const taken = { drop: millimetres(pads.by, shown), hip: angle(Math.abs(pads.tightest_hip_deg), shown) };
      say(
        giveBack,
        back === null ? words.parts("giveBack.none", taken) : words.parts("giveBack", { ...taken, ways: back }),
      );
    },
  };
}
