// @ts-check
/** Why one change beats the other, and how it is worked out. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { DRAWS } from "../shared/draws.js";
import { shortPercent } from "../shared/published.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
/** Within this share of the tie the shape of the ride decides, and the air's share does not say which change leads. */
const NEAR = 0.02;

/** @param {Tools} tools @param {Answer} answer */
export function whyGist({ units }, { aero_share, tie_aero_share }) {
  const values = { share: units.percent(aero_share), tie: tie_aero_share ? units.percent(tie_aero_share) : "" };
  // Down a hill the air takes more than the rider gives.
  if (aero_share <= 1) return words(tie_aero_share ? "whyGistTie" : "whyGistNoTie", values);
  return words(tie_aero_share ? "whyGistDownTie" : "whyGistDownNoTie", values);
}

/** @param {Tools} tools @param {Answer} answer @param {number} power_change @param {number} cda_change */
export function why(
  { units },
  { aero_share, tie_aero_share, more_power_saves_s, less_drag_saves_s },
  power_change,
  cda_change,
) {
  const below = aero_share < (tie_aero_share ?? 0);
  const powerLeads = more_power_saves_s.value > less_drag_saves_s.value;
  const near = Math.abs(aero_share - (tie_aero_share ?? 0)) < NEAR;
  const where = near ? "whyNear" : below !== powerLeads ? "whyOther" : below ? "whyBelow" : "whyAbove";
  return [
    paragraph(
      words(aero_share <= 1 ? "whyPower" : "whyPowerDown", {
        more: shortPercent(power_change),
        share: units.percent(aero_share),
        less: shortPercent(-cda_change),
        cheaper: units.percent(1 / (1 + cda_change) - 1),
        divisor: units.number(1 + cda_change, { digits: 2 }),
      }),
    ),
    paragraph(
      tie_aero_share
        ? words(where, { tie: units.percent(tie_aero_share, 1), share: units.percent(aero_share) })
        : words("whyNever"),
    ),
    paragraph(words("whyShare")),
  ];
}

/** @param {Tools} tools */
export function workedOut({ units }) {
  return html(
    "div",
    {},
    paragraph(words("howThreeRides")),
    formula(
      words("formulaForces"),
      [
        "P",
        "η",
        "=",
        "v",
        "(",
        fraction("1", "2"),
        "ρ",
        subscript("C", "d"),
        "A",
        subscript("V", "a"),
        "(",
        "v",
        "+",
        "h",
        ")",
        "+",
        "m",
        "g",
        subscript("C", "rr"),
        "cos",
        "θ",
        "+",
        "m",
        "g",
        "sin",
        "θ",
        "+",
        subscript("F", "b"),
        "+",
        subscript("m", "e"),
        fraction(["d", "v"], ["d", "t"]),
        ")",
      ],
      { block: true },
    ),
    symbols([
      ["P, η", words("symbolPower")],
      ["v, h", words("symbolSpeed")],
      ["ρ", words("symbolDensity")],
      ["CdA", words("symbolCda")],
      ["Va", words("symbolAir")],
      ["m, me", words("symbolMass")],
      ["Crr", words("symbolCrr")],
      ["θ", words("symbolSlope")],
      ["Fb", words("symbolBearings")],
    ]),
    paragraph(words("howTie")),
    formula(words("formulaPower"), ["f", power("r", "3"), "+", "(", "1", "−", "f", ")", "r", "=", "1", "+", "x"], {
      block: true,
    }),
    formula(
      words("formulaDrag"),
      ["(", "1", "−", "y", ")", "f", power("r", "3"), "+", "(", "1", "−", "f", ")", "r", "=", "1"],
      { block: true },
    ),
    paragraph(words("howEven", { draws: units.number(DRAWS, { group: true }) })),
    citations(["martin-1998", "picard-2008", "smit-2023", "puchowicz-2020", "padilla-2000", "wieringa-1992"]),
  );
}
