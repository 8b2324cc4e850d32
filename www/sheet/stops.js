// @ts-check
/** Part of the sheet's course: stops on the way, and eating and drinking. Each is there once its box is ticked. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { State } from "../state/history.js" */
/** @import { CoreError } from "../core.js" */

const say = book("sheet");

/** The numbers of each part. */
const NUMBERS = /** @type {const} */ ({
  stops: ["every_m", "time_s"],
  feeding: ["every_s", "time_s", "cda_m2"],
});

/** @param {Page} page @param {keyof typeof NUMBERS} name */
function part(page, name) {
  const { store, filler } = page;
  const at = `scenario.${name}`;
  const box = h("input", {
    type: "checkbox",
    onchange: () => store.set(at, box.checked ? filler.part(name) : undefined),
  });
  const rows = NUMBERS[name].map((number) => numberRow(page, `${at}.${number}`));
  const numbers = h(
    "div",
    {},
    ...rows.map(({ element }) => element),
    h("p", { class: "row-hint" }, say(`${name}.hint`)),
  );
  return {
    rows,
    elements: [h("label", { class: "check" }, box, say(`${name}.part`)), numbers],
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      const there = state.scenario[name] !== undefined;
      box.checked = there;
      numbers.hidden = !there;
      return there && updateRows(rows, state, error);
    },
  };
}

/** @param {Page} page */
export function stopsAndFeeding(page) {
  const parts = [part(page, "stops"), part(page, "feeding")];
  const caution = h("p", { class: "caution" }, say("stops.caution"));
  return {
    rows: parts.flatMap(({ rows }) => rows),
    element: h(
      "fieldset",
      {},
      h("legend", {}, say("stops.title")),
      ...parts.flatMap(({ elements }) => elements),
      caution,
    ),
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      const { stops, feeding } = state.scenario;
      caution.hidden = stops === undefined && feeding === undefined;
      return parts.map((one) => one.update(state, error)).includes(true);
    },
  };
}
