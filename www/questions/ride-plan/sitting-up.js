// @ts-check
/** Sitting up on steep climbs: whether, where and with what; and what that does to the plan. */

import { html, say, set } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Units } from "../../units.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Climb, RidePlanAnswer as Answer } from "../../types/core.d.ts" */

const words = book("ride-plan");
const AT = "with.ride-plan.sit_up";

/** @param {Tools} tools */
export function sittingUp(tools) {
  const grade = tools.number({ path: `${AT}.from_grade`, meaning: "ground" });
  const cda = tools.number({ path: `${AT}.cda_m2`, meaning: "drag" });
  const gain = tools.number({ path: `${AT}.cp_gain_share`, meaning: "power" });
  const numbers = [grade, cda, gain];
  const wanted = html("input", { type: "checkbox" });
  wanted.addEventListener("change", () =>
    tools.store.set(AT, wanted.checked ? tools.freshPart("with.sit_up") : undefined),
  );
  const where = clause(...words.parts("sitUpWhere", { grade, cda, gain }));
  const pays = html("p", { class: "small" });
  return {
    element: html(
      "div",
      {},
      html("label", { class: "check" }, wanted, words("sitUpWanted")),
      html("p", {}, where.element),
      where.note,
      pays,
    ),
    /** @param {State} state */
    follow(state) {
      wanted.checked = state.with["ride-plan"].sit_up !== undefined;
      where.show(wanted.checked);
    },
    /** @param {State} state @param {CoreError | null} error */
    update: (state, error) => numbers.map((number) => number.update(state, error)).includes(true),
    /** @param {State} state @param {Answer} answer */
    draw({ units }, { sit_up, even }) {
      const from = sit_up?.pays_from_grade ?? null;
      set(pays, { hidden: from === null });
      if (from === null) return;
      const power = show.quantity("power", even.power_w, units, { digits: 0 });
      say(pays, words("sitUpPays", { grade: show.percent(from, 1), power }));
    },
  };
}

/** What it does to the plan, or nothing where the rider stays low. @param {Answer} answer */
export function whatSittingUpDoes({ sit_up }) {
  if (!sit_up) return "";
  if (sit_up.climbs.length === 0) return words("sitUpNowhere");
  const { value, sd } = sit_up.faster_by_s;
  return words("sitUpDoes", {
    count: sit_up.climbs.length,
    differs: show.differenceWords(value),
    spread: show.time(sd),
  });
}

/** @param {Climb} climb @param {Units} units */
export function sitUpUntil({ to_m }, units) {
  return words("sitUpUntil", { distance: show.quantity("distance", to_m, units, { digits: 1 }) });
}
