// @ts-check
/** Puts the rise of drag within a test into a position, as a fade that every question rides. */

import { html, say, set } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { amountOf } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { kept } from "./digits.js";
import { positionName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { LateRise } from "../../types/core.d.ts" */

const words = book("drag-test");

/** @param {Tools} tools */
export function keepRise({ store, notify, newPosition }) {
  const buttons = html("p", { class: "row-actions" });
  const when = html("p", { class: "soft" }, words("fadeWhen"));
  const element = html("div", {}, buttons, when);

  /** @type {readonly LateRise[]} */
  let usable = [];
  const rows = keyedList(buttons, (index) => {
    const { position } = usable[index];
    const button = html("button", { type: "button" });
    button.addEventListener("click", () => {
      const rise = usable.find((one) => one.position === position);
      if (rise) keep(rise);
    });
    return { element: button };
  });

  /** @param {LateRise} rise */
  function keep({ position, known, cda_m2: { value, sd } }) {
    const { scenario } = store.get();
    const at = `scenario.positions[${position}]`;
    // When it begins and ends is a guess until a ride of the event's length shows it; what is given already stays.
    const { fade } = newPosition({ fade: { ...scenario.positions[position].fade } });
    const tired_m2 = amountOf(scenario.positions[position].cda_m2) + value;
    const tired = {
      value: kept(tired_m2),
      sd: kept(sd ?? 0),
      source: known === "measured" ? "measured" : "estimated",
    };
    store.setAll([[`${at}.fade`, { ...fade, tired_cda_m2: tired }]]);
    notify(words("fadeKept"), { label: words("undo"), run: store.undo });
  }

  return {
    element,
    /** @param {State} state @param {readonly LateRise[]} rises */
    draw(state, rises) {
      const { positions } = state.scenario;
      usable = rises.filter(({ position, cda_m2 }) => position < positions.length && cda_m2.sd && cda_m2.value > 0);
      set(element, { hidden: usable.length === 0 });
      const shown = rows.update(usable.map(({ position }) => String(position)));
      for (const [index, { element: button }] of shown.entries())
        say(button, words("keepFade", { name: positionName(state, usable[index].position) }));
    },
  };
}
