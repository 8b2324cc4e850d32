// @ts-check
/** The tests that a position's drag area comes from: when, by what, and what each gave. */

import { h } from "../frame/dom.js";
import { keyedList } from "../parts/keyed-list.js";
import { plusMinus, quantity } from "../units.js";
import { book } from "../words/index.js";

/** @import { Page } from "../frame/page.js" */
/** @import { State } from "../state/history.js" */
/** @import { DragTest } from "../types/core.d.ts" */

const say = book("sheet");

/** @param {Page} page @param {string} at the position's path */
export function dragTestsPart({ store }, at) {
  const list = h("ul", { class: "row-hint" });
  const element = h("div", { class: "drag-tests" }, h("p", { class: "row-hint" }, say("dragTests.lead")), list);
  const path = `${at}.drag_tests`;
  const tests = () => /** @type {DragTest[]} */ (store.at(path) ?? []);
  const rows = keyedList(list, (index) => {
    const words = h("span", {});
    const remove = h(
      "button",
      {
        type: "button",
        onclick: () => {
          const left = tests().filter((_, place) => place !== index);
          store.set(path, left.length ? left : undefined);
        },
      },
      say("remove"),
    );
    return { element: h("li", {}, words, " ", remove), words };
  });
  return {
    element,
    /** @param {State} state */
    update({ units }) {
      const all = tests();
      element.hidden = all.length === 0;
      const made = rows.update(all.map((test, index) => `${index} ${JSON.stringify(test)}`));
      for (const [index, { date, method, rows: count, cda_m2, sd_m2 }] of all.entries())
        made[index].words.textContent = say(`dragTests.${method}`, {
          count,
          date: date ?? say("dragTests.someDay"),
          area: quantity("area", cda_m2, units),
          spread: plusMinus("area", sd_m2, units),
        });
    },
  };
}
