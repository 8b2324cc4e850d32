// @ts-check
/** Group of the sheet: the events that count. */

import { h } from "../frame/dom.js";
import { keyedList } from "../parts/keyed-list.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { nameInput, removeButton } from "./list-parts.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

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
  const pieces = keyedList(list, (index) => {
    const number = index + 1;
    const name = nameInput(page, `${ALL}[${index}].name`, say("eventName", { number }));
    const row = numberRow(page, `${ALL}[${index}].distance_m`, { label: say("eventDistance", { number }) });
    const remove = h(
      "p",
      { class: "row-actions" },
      removeButton(page, ALL, index, say("remove"), say("removeEvent", { number })),
    );
    const label = h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), name.input);
    return { element: h("div", { class: "piece" }, label, row.element, remove), name, row, remove };
  });
  const rows = () => pieces.rows().map(({ row }) => row);

  return {
    title: say("group.events"),
    covers: "events",
    element: h("div", {}, h("p", { class: "row-hint" }, say("eventsHint")), list, add),
    update(state, error) {
      const shown = pieces.update(state.scenario.events.map((_, index) => String(index)));
      add.hidden = shown.length >= MOST;
      for (const { name, remove } of shown) {
        name.update();
        remove.hidden = shown.length === 1;
      }
      return updateRows(rows(), state, error);
    },
    row: (path) => findRow(rows(), path) ?? rows()[0] ?? null,
  };
}
