// @ts-check
/** What would make an answer surer: the input that carries most of its ±, and where to measure it. */

import { html, say, set } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { inSentence } from "./in-sentence.js";

/** @import { Tools } from "../index.js" */
/** @import { Contribution } from "../../types/core.d.ts" */

const words = book("shared");

/** How an input is measured, by its path without the index. */
const HOW = /** @type {const} */ ({
  "scenario.positions.cda_m2": "howCda",
  "scenario.positions.fade.tired_cda_m2": "howTiredCda",
  "scenario.positions.fade.begins_s": "howFade",
  "scenario.positions.fade.complete_s": "howFade",
  "scenario.positions.lapses.share": "howLapses",
  "with.lower_by_m2": "howLowerBy",
  "with.stature_m": "howTape",
  "with.thigh_m": "howTape",
  "with.shank_m": "howTape",
  "with.foot_m": "howTape",
  "with.trunk_m": "howTape",
  "with.upper_arm_m": "howTape",
  "scenario.power.cp_w": "howCurve",
  "scenario.power.w_prime_j": "howCurve",
  "scenario.power.long_ride_loss_share": "howLongRide",
  "scenario.power.long_ride_loss_w": "howLongRide",
  "scenario.bike.power_meter_bias_share": "howMeter",
  "scenario.bike.rolling_coefficient": "howRolling",
  "scenario.bike.drivetrain_efficiency": "howDrivetrain",
  "scenario.rider.total_mass_kg": "howMass",
  "scenario.conditions.temperature_c": "howTemperature",
  "scenario.conditions.pressure_hpa": "howPressure",
  "scenario.conditions.wind_speed_m_s": "howWind",
  "scenario.conditions.wind_from_deg": "howWindFrom",
  "scenario.conditions.roughness_length_m": "howRoughness",
});

/** The question that measures an input. @type {Record<string, string>} */
const MEASURED_BY = { "scenario.positions.cda_m2": "drag-test" };

/** The figures that a ± may belong to. */
const OF = /** @type {const} */ ({
  time: "surerTime",
  difference: "surerDifference",
  distance: "surerDistance",
  speed: "surerSpeed",
  power: "surerPower",
  hip: "surerHip",
});

/** Below this share an input is not worth a sentence. */
const LEAST_SHARE = 0.1;

/** @param {string} field */
const withoutIndex = (field) => field.replace(/\[\d+\]/g, "");

/** How an input is measured, in a few words; empty where nothing is known. @param {string} field */
export function howToMeasure(field) {
  const path = withoutIndex(field);
  return Object.hasOwn(HOW, path) ? words(HOW[/** @type {keyof typeof HOW} */ (path)]) : "";
}

/** @param {Tools} tools @param {{ open?: (field: string) => boolean }} [options] `open` goes to a number that stands in the sentence alone, and says whether it did */
export function surerNote(tools, { open = () => false } = {}) {
  const element = html("p", { class: "surer" });
  const link = html("button", { type: "button" });
  /** The input that the link leads to. */
  let field = "";
  link.addEventListener("click", () => {
    if (open(field)) return;
    const question = MEASURED_BY[withoutIndex(field)];
    if (question) tools.go(question);
    else tools.openSheet(field);
  });
  return {
    element,
    /**
     * @param {readonly Contribution[]} surer the answer's own list, largest share first
     * @param {{ sd: number, plusMinus: (sd: number) => string, of: keyof typeof OF }} doubt the inputs' own ±, and the figure it belongs to
     */
    update(surer, { sd, plusMinus, of }) {
      const [first, second] = surer;
      set(element, { hidden: !first || !(sd > 0) || first.share < LEAST_SHARE });
      if (element.hidden) return;
      field = first.field;
      const how = howToMeasure(field);
      const measured = withoutIndex(field) in MEASURED_BY ? "measureIt" : "giveOwn";
      say(link, words(first.source === "measured" ? "lookAtIt" : measured));
      const [all, left] = [plusMinus(sd), plusMinus(first.left)];
      say(element, [
        ...words.parts(OF[of], {
          all,
          portion: words(portion(first.share)),
          input: nameOf(field),
          known: words(first.source),
        }),
        " ",
        ...words.parts(how ? "surerHow" : "surerNoHow", { link, how, all, left }),
        ...(second && second.share >= LEAST_SHARE ? [" ", words("surerNext", { input: nameOf(second.field) })] : []),
      ]);
    },
  };

  /** @param {string} field */
  function nameOf(field) {
    const label = tools.label(field);
    return label ? inSentence(label) : field;
  }
}

/** @param {number} share */
function portion(share) {
  return share > 0.9
    ? "nearlyAll"
    : share > 0.6
      ? "most"
      : share > 0.4
        ? "aboutHalf"
        : share > 0.28
          ? "aboutThird"
          : "largestPart";
}
