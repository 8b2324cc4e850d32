// @ts-check
/** Group of the sheet: the air and the wind of the day. */

import { h } from "../frame/dom.js";
import { amountOf } from "../state/scenario.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { laterWeather } from "./later-weather.js";
import { numberRow } from "./number-row.js";

/** @import { Conditions } from "../types/page.d.ts" */
/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");

const AT = "scenario.conditions.";

/** Davenport's classes of land with the roughness lengths of Wieringa 1992, in metres. Past the last one the log law fails at a rider's height. */
const LAND = /** @type {const} */ (["0.0002", "0.005", "0.03", "0.1", "0.25", "0.5"]);
const SHELTERED = "sheltered";
const OTHER = "other";
const NOT_KNOWN = "not-known";
const ROADSIDE = "roadside";
const OF_COURSE = "course";
const GIVEN = "given";

/** @param {Page} page @returns {Group} */
export function conditions(page) {
  const { store, filler } = page;
  const rows = {
    temperature: numberRow(page, `${AT}temperature_c`),
    pressure: numberRow(page, `${AT}pressure_hpa`),
    altitude: numberRow(page, `${AT}altitude_m`),
    humidity: numberRow(page, `${AT}relative_humidity`),
    dewPoint: numberRow(page, `${AT}dew_point_c`),
    wind: numberRow(page, `${AT}wind_speed_m_s`),
    from: numberRow(page, `${AT}wind_from_deg`, { hint: say("windFromHint") }),
    roughness: numberRow(page, `${AT}roughness_length_m`),
    shelter: numberRow(page, `${AT}shelter_factor`, { hint: say("shelterHint") }),
    height: numberRow(page, `${AT}wind_height_m`),
    rider: numberRow(page, `${AT}rider_height_m`),
    error: numberRow(page, "scenario.model_error_share", { hint: say("modelErrorHint") }),
  };
  const later = laterWeather(page);
  const everyRow = Object.values(rows);

  const pressureIs = h(
    "select",
    { onchange: () => changePressure(pressureIs.value) },
    h("option", { value: "sea_level" }, say("pressure.seaLevel")),
    h("option", { value: "course" }, say("pressure.course")),
    h("option", { value: NOT_KNOWN }, say("pressure.notKnown")),
  );
  const altitudeFrom = h(
    "select",
    {
      onchange: () =>
        store.set(`${AT}altitude_m`, altitudeFrom.value === GIVEN ? filler.fresh("conditions.altitude_m") : undefined),
    },
    h("option", { value: OF_COURSE }, say("altitude.course")),
    h("option", { value: GIVEN }, say("altitude.given")),
  );
  const moisture = h(
    "select",
    { onchange: () => swap("relative_humidity", "dew_point_c", moisture.value === "dew_point_c") },
    h("option", { value: "relative_humidity" }, say("moisture.relativeHumidity")),
    h("option", { value: "dew_point_c" }, say("moisture.dewPoint")),
  );
  const land = h(
    "select",
    { onchange: () => changeLand(land.value) },
    ...LAND.map((length_m) => h("option", { value: length_m }, say(`land.${length_m}`))),
    h("option", { value: OTHER, hidden: true }, say("land.other")),
    h("option", { value: SHELTERED }, say("land.sheltered")),
  );
  const windIs = h(
    "select",
    { onchange: () => store.set(`${AT}wind_is`, windIs.value === ROADSIDE ? ROADSIDE : undefined) },
    h("option", { value: "forecast" }, say("wind.forecast")),
    h("option", { value: ROADSIDE }, say("wind.roadside")),
  );
  const seldom = h(
    "details",
    { class: "more" },
    h("summary", {}, say("heights")),
    rows.height.element,
    rows.rider.element,
    rows.roughness.element,
  );

  /** One of two fields that stand in for each other. @param {string} first @param {string} second @param {boolean} wantSecond */
  function swap(first, second, wantSecond) {
    const [away, come] = wantSecond ? [first, second] : [second, first];
    store.setAll([
      [AT + away, undefined],
      [AT + come, filler.fresh(`conditions.${come}`)],
    ]);
  }

  /** @param {string} from */
  function changePressure(from) {
    const { pressure_hpa = filler.fresh("conditions.pressure_hpa") } = store.get().scenario.conditions;
    if (from === NOT_KNOWN) store.set(`${AT}pressure_hpa`, undefined);
    else
      store.setAll([
        [`${AT}pressure_hpa`, pressure_hpa],
        [`${AT}pressure_is`, from],
      ]);
  }

  /** @param {string} choice */
  function changeLand(choice) {
    if (choice === SHELTERED) return swap("roughness_length_m", "shelter_factor", true);
    store.setAll([
      [`${AT}shelter_factor`, undefined],
      [`${AT}roughness_length_m`, Number(choice)],
    ]);
  }

  /** @param {Conditions} now */
  function landOf(now) {
    if (now.shelter_factor !== undefined) return SHELTERED;
    const length_m = String(amountOf(now.roughness_length_m));
    return LAND.some((value) => value === length_m) ? length_m : OTHER;
  }

  /** @param {string} label @param {HTMLElement} control */
  const labelled = (label, control) => h("label", { class: "row" }, h("span", { class: "row-label" }, label), control);

  return {
    title: say("group.conditions"),
    covers: "conditions model_error_share",
    element: h(
      "div",
      {},
      rows.temperature.element,
      labelled(say("pressureFrom"), pressureIs),
      rows.pressure.element,
      labelled(say("altitudeFrom"), altitudeFrom),
      rows.altitude.element,
      labelled(say("moistureAs"), moisture),
      rows.humidity.element,
      rows.dewPoint.element,
      rows.wind.element,
      rows.from.element,
      labelled(say("windRead"), windIs),
      labelled(say("landAround"), land),
      rows.shelter.element,
      later.element,
      seldom,
      rows.error.element,
      h("p", { class: "caution" }, say("gustsCaution")),
    ),
    update(state, error) {
      const now = state.scenario.conditions;
      pressureIs.value = now.pressure_hpa === undefined ? NOT_KNOWN : (now.pressure_is ?? "");
      rows.pressure.element.hidden = now.pressure_hpa === undefined;
      altitudeFrom.value = now.altitude_m === undefined ? OF_COURSE : GIVEN;
      rows.altitude.element.hidden = now.altitude_m === undefined;
      moisture.value = now.dew_point_c === undefined ? "relative_humidity" : "dew_point_c";
      land.value = landOf(now);
      windIs.value = now.wind_is ?? "forecast";
      rows.humidity.element.hidden = now.dew_point_c !== undefined;
      rows.dewPoint.element.hidden = now.dew_point_c === undefined;
      rows.shelter.element.hidden = now.shelter_factor === undefined;
      rows.roughness.element.hidden = now.shelter_factor !== undefined;
      const shown = everyRow.filter((row) => !row.element.hidden);
      return [later.update(state, error), updateRows(shown, state, error)].includes(true);
    },
    row(path) {
      const row = findRow([...later.rows, ...everyRow], path);
      if (row && seldom.contains(row.element)) seldom.open = true;
      return row;
    },
  };
}
