// @ts-check
/** What would make an answer surer: the input that carries most of its ±, and where to measure it. */

import { html, say, strong } from "../../parts/html.js";

/** @import { Tools } from "../index.js" */
/** @import { Contribution } from "../../types/core.d.ts" */

/** How an input is measured, in a few words, by its path without the index. @type {Record<string, string>} */
const HOW = {
  "scenario.positions.cda_m2": "ride test laps in the position on a calm day, or have it measured",
  "scenario.positions.fade.tired_cda_m2": "film the last miles of a hard ride, then ride test laps in that shape",
  "scenario.positions.fade.begins_s": "film a hard ride of this length from the side of the road",
  "scenario.positions.fade.complete_s": "film a hard ride of this length from the side of the road",
  "scenario.positions.lapses.share": "count the seconds out of position on a film of a hard ride",
  "with.lower_by_m2": "ride laps in both positions by turns, in one test on one calm day",
  "scenario.power.cp_w": "three hard efforts of different length, each well rested",
  "scenario.power.w_prime_j": "three hard efforts of different length, each well rested",
  "scenario.power.long_ride_loss_w": "your best power over an hour or more",
  "scenario.bike.rolling_coefficient": "a rolling test of your tyres at your pressure, on your road",
  "scenario.bike.drivetrain_efficiency": "a clean chain and its published loss",
  "scenario.rider.total_mass_kg": "weigh rider, bicycle and kit together",
  "scenario.conditions.temperature_c": "a thermometer in the shade at the course",
  "scenario.conditions.pressure_hpa": "a barometer on the spot",
  "scenario.conditions.wind_speed_m_s": "a wind meter held at your own height by the road",
  "scenario.conditions.wind_from_deg": "a wind vane, or a flag, by the road",
  "scenario.conditions.roughness_length_m": "a wind meter at your own height, beside the forecast",
};

/** Below this share an input is not worth a sentence. */
const LEAST_SHARE = 0.1;

/** @param {Tools} tools @param {{ open?: (field: string) => boolean }} [options] `open` goes to a number that stands in the sentence alone, and says whether it did */
export function surerNote(tools, { open = () => false } = {}) {
  const element = html("p", { class: "surer" });
  return {
    element,
    /**
     * @param {readonly Contribution[]} surer the answer's own list, largest share first
     * @param {{ sd: number, plusMinus: (sd: number) => string, of: string }} doubt the inputs' own ±; `of` names the figure: "the time"
     */
    update(surer, { sd, plusMinus, of }) {
      const [first, second] = surer;
      element.hidden = !first || !(sd > 0) || first.share < LEAST_SHARE;
      if (element.hidden) return;
      const how = HOW[first.field.replace(/\[\d+\]/g, "")];
      const left = plusMinus(first.left);
      const also = second && second.share >= LEAST_SHARE ? [` Next is ${nameOf(second.field)}.`] : [];
      const link = html("button", { type: "button" }, first.source === "measured" ? "Look at it" : "Give your own");
      link.addEventListener("click", () => { if (!open(first.field)) tools.openSheet(first.field); });
      say(element, [strong("To be surer. "), `Of the ${plusMinus(sd)} that your numbers bring to ${of}, ${portion(first.share)} is ${nameOf(first.field)} (${known(first.source)}). `,
        html("span", { class: "together" }, link, how ? ":" : ";"), `${how ? ` ${how};` : ""} without that doubt ${plusMinus(sd)} would be ${left}.`, ...also]);
    },
  };

  /** @param {string} field */
  function nameOf(field) {
    const label = tools.label(field);
    return label ? label.charAt(0).toLowerCase() + label.slice(1) : field;
  }
}

/** @param {number} share */
function portion(share) {
  return share > 0.9 ? "nearly all" : share > 0.6 ? "most" : share > 0.4 ? "about half" : share > 0.28 ? "about a third" : "the largest part";
}

/** @param {Contribution["source"]} source */
function known(source) {
  return { typical: "still a typical value", estimated: "your estimate", measured: "already measured" }[source];
}
