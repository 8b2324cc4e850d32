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
    numberRow(page, "scenario.power.cp_w", { meaning: "power", hint: say("cpHint") }),
    numberRow(page, "scenario.power.w_prime_j", { meaning: "power" }),
  ];
  /** @type {ReturnType<typeof optional>[]} */
  const parts = [
    optional(say("peakPart"), ["peak_w"]),
    optional(say("longPart"), ["long_ride_loss_share", "long_ride_from_s"], "long_ride_loss_w"),
  ];

  const response = numberRow(page, RESPONSE, { meaning: "power" });
  const loss = h("input", {
    type: "checkbox",
    onchange: () =>
      store.setAll([
        ["scenario.power.altitude_loss", loss.checked ? "published" : undefined],
        [RESPONSE, loss.checked ? filler.fresh("power.altitude_response") : undefined],
      ]),
  });
  const shownRows = () => [...always, ...parts.flatMap(({ shown }) => shown()), ...(loss.checked ? [response] : [])];

  /** @param {string} label @param {string[]} keys @param {string} [older] what older files give in place of the first key */
  function optional(label, keys, older) {
    const all = older ? [...keys, older] : keys;
    const rows = all.map((key) => numberRow(page, `scenario.power.${key}`, { meaning: "power" }));
    const box = h("input", {
      type: "checkbox",
      onchange: () =>
        store.setAll(
          all.map((key) => [
            `scenario.power.${key}`,
            box.checked && key !== older ? filler.fresh(`power.${key}`) : undefined,
          ]),
        ),
    });
    const body = h("div", {}, ...rows.map((row) => row.element));
    /** The rows whose numbers the scenario has. */
    const shown = () => {
      /** @type {Record<string, unknown>} */
      const power = store.get().scenario.power;
      return power[keys[0]] === undefined && power[older ?? keys[0]] === undefined
        ? []
        : rows.filter((_, i) => power[all[i]] !== undefined);
    };
    return { label, rows, box, body, shown };
  }

  return {
    title: say("group.power"),
    covers: "power",
    element: h(
      "div",
      {},
      h("p", {}, h("button", { type: "button", onclick: () => page.go("power-curve") }, say("fromEfforts"))),
      ...always.map((row) => row.element),
      ...parts.flatMap(({ label, box, body }) => [h("label", { class: "check" }, box, label), body]),
      h("label", { class: "check" }, loss, say("altitudePart")),
      h("p", { class: "row-hint" }, say("altitudeHint")),
      response.element,
      h("p", { class: "caution" }, say("testsCaution")),
    ),
    update(state, error) {
      for (const { box, body, rows, shown } of parts) {
        const there = shown();
        box.checked = there.length > 0;
        body.hidden = !box.checked;
        for (const row of rows) row.element.hidden = !there.includes(row);
      }
      loss.checked = state.scenario.power.altitude_loss === "published";
      response.element.hidden = !loss.checked;
      return updateRows(shownRows(), state, error);
    },
    row: (path) => findRow(shownRows(), path),
  };
}
