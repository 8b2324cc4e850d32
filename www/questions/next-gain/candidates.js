// @ts-check
/** What the candidates are called and what they change, in the reader's words. */

import { inReadersMark } from "../../parts/number-text.js";
import { percent, number as write } from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Candidate, Change, LeftOut } from "../../types/core.d.ts" */
/** @import { Meaning } from "../../parts/html.js" */

const words = book("next-gain");

/** Names and notes of the usual ones are told in the language that is spoken, until the rider gives their own. @param {Candidate} candidate @param {number} index */
export function nameOf({ key, name }, index) {
  const usual = words.found(`usual.${key}.name`);
  if (usual) return usual;
  return name || words("numbered", { number: index + 1 });
}

/** @param {Candidate} candidate */
export function noteOf({ key, note }) {
  return inReadersMark(words.found(`usual.${key}.note`, note));
}

/** Its chance, and the money and hours that it takes. @param {Candidate} candidate @param {string} currency */
export function takesOf({ chance, money, hours_once, hours_per_week }, currency) {
  const hours = (/** @type {"hoursText" | "hoursAWeekText"} */ text, /** @type {number} */ count) =>
    count ? words(text, { number: write(count, { digits: 1, atLeast: 0 }), count }) : "";
  return [
    percent(chance),
    money ? `${write(money)}${currency ? `\u00a0${currency}` : ""}` : "",
    hours("hoursText", hours_once),
    hours("hoursAWeekText", hours_per_week),
  ]
    .filter(Boolean)
    .join(" · ");
}

/** What another candidate's `requires` calls this one. @param {Candidate} candidate */
export const calledBy = ({ key, name }) => key || name;

/** Why one is not in the best set, in words. @param {LeftOut} leftOut @param {readonly Candidate[]} candidates */
export function whyLeftOut({ why, other }, candidates) {
  return words(`why.${why}`, { other: other === null ? "" : nameOf(candidates[other], other) });
}

/**
 * What a change may be: a number of the scenario, whether by a share of itself or by an amount, and how it is read.
 * @type {{ id: string, field: string, share: boolean, kind?: import("../../units.js").Kind, digits?: number, step?: number, start: number, sd: number }[]}
 */
export const KINDS = [
  { id: "dragShare", field: "positions.cda_m2", share: true, start: -0.02, sd: 0.01 },
  {
    id: "dragArea",
    field: "positions.cda_m2",
    share: false,
    kind: "area",
    digits: 4,
    step: 0.001,
    start: -0.005,
    sd: 0.002,
  },
  { id: "powerShare", field: "power.cp_w", share: true, start: 0.02, sd: 0.01 },
  { id: "power", field: "power.cp_w", share: false, kind: "power", step: 1, start: 5, sd: 3 },
  {
    id: "rolling",
    field: "bike.rolling_coefficient",
    share: false,
    kind: "coefficient",
    step: 0.0001,
    start: -0.0003,
    sd: 0.0002,
  },
  { id: "mass", field: "rider.total_mass_kg", share: false, kind: "mass", start: -1, sd: 0.2 },
  {
    id: "drivetrain",
    field: "bike.drivetrain_efficiency",
    share: false,
    kind: "share",
    step: 0.1,
    start: 0.005,
    sd: 0.003,
  },
  { id: "bends", field: "bike.lateral_m_s2", share: false, kind: "acceleration", step: 0.1, start: 0.5, sd: 0.3 },
];

/** Which of these a change is; undefined for one that the list does not offer. @param {Change} change */
export function kindOf(change) {
  return KINDS.find(({ field, share }) => field === change.field && share === (change.share !== undefined));
}

/** The colour of what it changes. @param {Candidate} candidate @returns {Meaning} */
export function meaningOf({ changes }) {
  const touches = (/** @type {string} */ part) =>
    changes.some(({ field, use_position }) => field?.includes(part) || (part === "cda" && use_position !== undefined));
  return touches("lapses") || touches("fade")
    ? "hold"
    : touches("cda")
      ? "drag"
      : touches("cp_") || touches("w_prime")
        ? "power"
        : "ground";
}
