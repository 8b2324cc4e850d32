// @ts-check
/** Puts the rise of drag within a test into a position, as a fade that every question rides. */

import { html, set } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { positionName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { LateRise } from "../../types/core.d.ts" */

const words = book("drag-test");
/** A hundredth of a thousandth of a square metre is finer than any test. @param {number} m2 */
const rounded = (m2) => Math.round(m2 * 1e5) / 1e5;

/** @param {Tools} tools */
export function keepRise({ store, notify, newPosition }) {
  const buttons = html("p", { class: "row-actions" });
  const when = html("p", { class: "soft" }, words("fadeWhen"));
  const element = html("div", {}, buttons, when);

  /** @param {LateRise} rise */
  function keep({ position, known, cda_m2: { value, sd } }) {
    const { scenario } = store.get();
    const at = `scenario.positions[${position}]`;
    // When it begins and ends is a guess until a ride of the event's length shows it; what is given already stays.
    const { fade } = newPosition({ fade: { ...scenario.positions[position].fade } });
    const tired_m2 = amountOf(scenario.positions[position].cda_m2) + value;
    const tired = {
      value: rounded(tired_m2),
      sd: rounded(sd ?? 0),
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
      const usable = rises.filter(
        ({ position, cda_m2 }) => position < positions.length && cda_m2.sd && cda_m2.value > 0,
      );
      set(element, { hidden: usable.length === 0 });
      buttons.replaceChildren(
        ...usable.map((rise) => {
          const button = html(
            "button",
            { type: "button" },
            words("keepFade", { name: positionName(state, rise.position) }),
          );
          button.addEventListener("click", () => keep(rise));
          return button;
        }),
      );
    },
  };
}
