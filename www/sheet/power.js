// @ts-check
/** Group of the sheet: what the rider can hold, for how long. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");

/** @param {Page} page @returns {Group} */
export function power(page) {
  const { store, filler } = page;
  const always = [
    numberRow(page, "scenario.power.cp_w", { meaning: "power", hint: say("cp_hint") }),
    numberRow(page, "scenario.power.w_prime_j", { meaning: "power" }),
  ];
  /** @type {{ name: string, label: string, rows: import("./number-row.js").Row[], box: HTMLInputElement, body: HTMLElement, keys: string[] }[]} */
  const parts = [
    optional(say("peak_part"), ["peak_w"]),
    optional(say("long_part"), ["long_ride_loss_w", "long_ride_from_s"]),
  ];

  /** @param {string} label @param {string[]} keys */
  function optional(label, keys) {
    const rows = keys.map((key) => numberRow(page, `scenario.power.${key}`, { meaning: "power" }));
    const box = h("input", {
      type: "checkbox",
      onchange: () => store.setAll(keys.map((key) => [`scenario.power.${key}`, box.checked ? filler.fresh(`power.${key}`) : undefined])),
    });
    const body = h("div", {}, ...rows.map((row) => row.element));
    return { name: keys[0], label, rows, box, body, keys };
  }

  return {
    title: say("group.power"),
    covers: "power",
    element: h("div", {},
      ...always.map((row) => row.element),
      ...parts.flatMap(({ label, box, body }) => [h("label", { class: "check" }, box, label), body]),
      h("p", { class: "caution" }, say("tests_caution")),
    ),
    update(state, error) {
      for (const { box, body, name } of parts) {
        box.checked = state.scenario.power[name] !== undefined;
        body.hidden = !box.checked;
      }
      return updateRows([...always, ...parts.filter(({ box }) => box.checked).flatMap(({ rows }) => rows)], state, error);
    },
    row: (path) => findRow([...always, ...parts.filter(({ box }) => box.checked).flatMap(({ rows }) => rows)], path),
  };
}
