// @ts-check
/** Part of the sheet's conditions: the forecast for a later time of the day, and when the ride begins. */

import { h } from "../frame/dom.js";
import { amountOf } from "../state/scenario.js";
import { book } from "../words/index.js";
import { updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { State } from "../state/history.js" */
/** @import { CoreError } from "../core.js" */

const say = book("sheet");

const AT = "scenario.conditions.later";

/** @param {Page} page */
export function laterWeather(page) {
  const { store, filler } = page;
  /** @param {string} name @param {string} [label] */
  const row = (name, label) => numberRow(page, `${AT}.${name}`, { exact: true, ...(label && { label }) });
  const rows = {
    firstAt: row("first_at_s"),
    startAt: row("start_at_s"),
    at: row("at_s"),
    wind: row("wind_speed_m_s", say("later.wind")),
    from: row("wind_from_deg", say("later.from")),
    temperature: row("temperature_c", say("later.temperature")),
    pressure: row("pressure_hpa", say("later.pressure")),
  };
  const changes = h("input", {
    type: "checkbox",
    onchange: () => store.set(AT, changes.checked ? fresh() : undefined),
  });
  const numbers = h(
    "div",
    {},
    ...Object.values(rows).map(({ element }) => element),
    h("p", { class: "row-hint" }, say("later.hint")),
  );

  /** As it is now, for the rider to change. */
  function fresh() {
    const now = store.get().scenario.conditions;
    const at = (/** @type {string} */ name) => amountOf(filler.fresh(`conditions.later.${name}`));
    return {
      first_at_s: at("first_at_s"),
      at_s: at("at_s"),
      start_at_s: at("start_at_s"),
      wind_speed_m_s: amountOf(now.wind_speed_m_s),
      wind_from_deg: amountOf(now.wind_from_deg),
      temperature_c: amountOf(now.temperature_c),
      ...(now.pressure_hpa !== undefined && { pressure_hpa: amountOf(now.pressure_hpa) }),
    };
  }

  return {
    rows: Object.values(rows),
    element: h("div", {}, h("label", { class: "row check" }, changes, say("later.changes")), numbers),
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      const { later } = state.scenario.conditions;
      changes.checked = later !== undefined;
      numbers.hidden = later === undefined;
      rows.pressure.element.hidden = later?.pressure_hpa === undefined;
      return later !== undefined && updateRows(Object.values(rows), state, error);
    },
  };
}
