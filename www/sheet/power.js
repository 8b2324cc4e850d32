// @ts-check
/** Group of the sheet: what the rider can hold, for how long. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");
const RESPONSE = "scenario.power.altitude_response";

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

  const response = numberRow(page, RESPONSE, { meaning: "power" });
  const loss = h("input", {
    type: "checkbox",
    onchange: () => store.setAll([
      ["scenario.power.altitude_loss", loss.checked ? "published" : undefined],
      [RESPONSE, loss.checked ? filler.fresh("power.altitude_response") : undefined],
    ]),
  });
  const shown = () => [...always, ...parts.filter(({ box }) => box.checked).flatMap(({ rows }) => rows), ...(loss.checked ? [response] : [])];

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
      h("label", { class: "check" }, loss, say("altitude_part")), h("p", { class: "row-hint" }, say("altitude_hint")), response.element,
      h("p", { class: "caution" }, say("tests_caution")),
    ),
    update(state, error) {
      for (const { box, body, name } of parts) {
        box.checked = state.scenario.power[name] !== undefined;
        body.hidden = !box.checked;
      }
      loss.checked = state.scenario.power.altitude_loss === "published";
      response.element.hidden = !loss.checked;
      return updateRows(shown(), state, error);
    },
    row: (path) => findRow(shown(), path),
  };
}
