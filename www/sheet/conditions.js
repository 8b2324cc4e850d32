// @ts-check
/** Group of the sheet: the air and the wind of the day. */

import { h } from "../frame/dom.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */

const AT = "scenario.conditions.";

/** Davenport's classes of land with the roughness lengths of Wieringa 1992, in metres. Past the last one the log law fails at a rider's height. */
const LAND = /** @type {const} */ ([
  ["0.0002", "open water"],
  ["0.005", "bare and smooth: mud flat, beach"],
  ["0.03", "open grass, few obstacles"],
  ["0.1", "low crops, a bush here and there"],
  ["0.25", "high crops, scattered hedges and trees"],
  ["0.5", "parkland, orchards"],
]);
const SHELTERED = "sheltered";
const OTHER = "other";
const NOT_KNOWN = "not-known";

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
    from: numberRow(page, `${AT}wind_from_deg`, { hint: "0 from north, 90 from east, 180 from south, 270 from west." }),
    roughness: numberRow(page, `${AT}roughness_length_m`),
    shelter: numberRow(page, `${AT}shelter_factor`, { hint: "Behind houses or woods no law tells how much wind is left: this share of the forecast is your guess." }),
    height: numberRow(page, `${AT}wind_height_m`),
    rider: numberRow(page, `${AT}rider_height_m`),
    error: numberRow(page, "scenario.model_error_share", { hint: "A finish time carries it; a difference between two choices hardly does. Your own past results can shrink it." }),
  };
  const everyRow = Object.values(rows);

  const pressureIs = h("select", { onchange: () => changePressure(pressureIs.value) },
    h("option", { value: "sea_level" }, "a forecast or an airport: reduced to sea level"),
    h("option", { value: "course" }, "a barometer on the spot: not reduced"),
    h("option", { value: NOT_KNOWN }, "not known: a standard day at this altitude"));
  const moisture = h("select", { onchange: () => swap("relative_humidity", "dew_point_c", moisture.value === "dew_point_c") },
    h("option", { value: "relative_humidity" }, "relative humidity"), h("option", { value: "dew_point_c" }, "dew point"));
  const land = h("select", { onchange: () => changeLand(land.value) },
    ...LAND.map(([length_m, name]) => h("option", { value: length_m }, name)),
    h("option", { value: OTHER, hidden: true }, "a roughness length of its own"),
    h("option", { value: SHELTERED }, "sheltered: houses, woods, high hedges"));
  const seldom = h("details", { class: "more" }, h("summary", {}, "Heights, and the roughness length itself"), rows.height.element, rows.rider.element, rows.roughness.element);

  /** One of two fields that stand in for each other. @param {string} first @param {string} second @param {boolean} wantSecond */
  function swap(first, second, wantSecond) {
    const [away, come] = wantSecond ? [first, second] : [second, first];
    store.setAll([[AT + away, undefined], [AT + come, filler.fresh(`conditions.${come}`)]]);
  }

  /** @param {string} from */
  function changePressure(from) {
    const { pressure_hpa = filler.fresh("conditions.pressure_hpa") } = store.get().scenario.conditions;
    if (from === NOT_KNOWN) store.set(`${AT}pressure_hpa`, undefined);
    else store.setAll([[`${AT}pressure_hpa`, pressure_hpa], [`${AT}pressure_is`, from]]);
  }

  /** @param {string} choice */
  function changeLand(choice) {
    if (choice === SHELTERED) return swap("roughness_length_m", "shelter_factor", true);
    store.setAll([[`${AT}shelter_factor`, undefined], [`${AT}roughness_length_m`, Number(choice)]]);
  }

  /** @param {any} now */
  function landOf(now) {
    if (now.shelter_factor !== undefined) return SHELTERED;
    const length_m = String(now.roughness_length_m?.value ?? now.roughness_length_m);
    return LAND.some(([value]) => value === length_m) ? length_m : OTHER;
  }

  /** @param {string} label @param {HTMLElement} control */
  const labelled = (label, control) => h("label", { class: "row" }, h("span", { class: "row-label" }, label), control);

  return {
    title: "Conditions",
    covers: "conditions model_error_share",
    element: h("div", {},
      rows.temperature.element, labelled("The air pressure comes from", pressureIs), rows.pressure.element, rows.altitude.element,
      labelled("Moisture is given as", moisture), rows.humidity.element, rows.dewPoint.element,
      rows.wind.element, rows.from.element, labelled("The land around", land), rows.shelter.element, seldom, rows.error.element,
      h("p", { class: "caution" }, "Gusts are not in this. Deep wheels and a crosswind can take the front of a bicycle away; ride what you can hold, and keep to the event’s rules."),
    ),
    update(state, error) {
      const now = state.scenario.conditions;
      pressureIs.value = now.pressure_hpa === undefined ? NOT_KNOWN : now.pressure_is;
      rows.pressure.element.hidden = now.pressure_hpa === undefined;
      moisture.value = now.dew_point_c === undefined ? "relative_humidity" : "dew_point_c";
      land.value = landOf(now);
      rows.humidity.element.hidden = now.dew_point_c !== undefined;
      rows.dewPoint.element.hidden = now.dew_point_c === undefined;
      rows.shelter.element.hidden = now.shelter_factor === undefined;
      rows.roughness.element.hidden = now.shelter_factor !== undefined;
      return updateRows(everyRow.filter((row) => !row.element.hidden), state, error);
    },
    row(path) {
      const row = findRow(everyRow, path);
      if (row && seldom.contains(row.element)) seldom.open = true;
      return row;
    },
  };
}
