// @ts-check
/** Group of the sheet: the events that count. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { nameInput, removeButton } from "./list-parts.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */
/** @import { Row } from "./number-row.js" */

const say = book("sheet");
const ALL = "scenario.events";
const MOST = 12;

/** @param {Page} page @returns {Group} */
export function events(page) {
  const { store } = page;
  const list = h("div", {});
  const add = h(
    "button",
    {
      type: "button",
      onclick: () => store.set(ALL, [...store.at(ALL), { name: "", distance_m: store.at(ALL).at(-1).distance_m }]),
    },
    say("addEvent"),
  );
  /** @type {Row[]} */
  let rows = [];
  /** @type {ReturnType<typeof nameInput>[]} */
  let names = [];

  /** @param {number} count */
  function build(count) {
    names = Array.from({ length: count }, (_, index) =>
      nameInput(page, `${ALL}[${index}].name`, say("eventName", { number: index + 1 })),
    );
    rows = names.map((_, index) =>
      numberRow(page, `${ALL}[${index}].distance_m`, { label: say("eventDistance", { number: index + 1 }) }),
    );
    list.replaceChildren(
      ...rows.map((row, index) =>
        h(
          "div",
          { class: "piece" },
          h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), names[index].input),
          row.element,
          count > 1 &&
            h(
              "p",
              { class: "row-actions" },
              removeButton(page, ALL, index, say("remove"), say("removeEvent", { number: index + 1 })),
            ),
        ),
      ),
    );
  }

  return {
    title: say("group.events"),
    covers: "events",
    element: h("div", {}, h("p", { class: "row-hint" }, say("eventsHint")), list, add),
    update(state, error) {
      const { length } = state.scenario.events;
      if (length !== rows.length) build(length);
      add.hidden = length >= MOST;
      for (const name of names) name.update();
      return updateRows(rows, state, error);
    },
    row: (path) => findRow(rows, path) ?? rows[0] ?? null,
  };
}
