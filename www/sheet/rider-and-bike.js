// @ts-check
/** Group of the sheet: what is moved along the road, and what holds it back apart from air. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");

const RARELY = [
  "bike.rotating_mass_kg",
  "bike.bearing_drag_n",
  "bike.bearing_drag_n_s_per_m",
  "bike.launch_force_n",
  "bike.lateral_m_s2",
  "bike.braking_m_s2",
];

const METER = "scenario.bike.power_meter_bias_share";

/** @param {Page} page @returns {Group} */
export function riderAndBike(page) {
  const often = ["rider.total_mass_kg", "bike.rolling_coefficient", "bike.drivetrain_efficiency"].map((key) =>
    numberRow(page, `scenario.${key}`),
  );
  const rarely = RARELY.map((key) => numberRow(page, `scenario.${key}`));
  const more = h("details", { class: "more" }, h("summary", {}, say("seldom")), ...rarely.map((row) => row.element));
  const meter = numberRow(page, METER, { hint: say("meterHint") });
  const there = () => page.store.at(METER) !== undefined;
  const rows = () => [...often, ...rarely, ...(there() ? [meter] : [])];
  return {
    title: say("group.rider"),
    covers: "rider bike",
    element: h("div", {}, ...often.map((row) => row.element), meter.element, more),
    update(state, error) {
      meter.element.hidden = !there();
      return updateRows(rows(), state, error);
    },
    row(path) {
      const row = findRow(rows(), path);
      if (row && rarely.includes(row)) more.open = true;
      return row;
    },
  };
}
