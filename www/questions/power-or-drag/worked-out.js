// @ts-check
/** How more power and less drag are worked out and compared. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { DRAWS } from "../shared/draws.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

const words = book("power-or-drag");
export function workedOut() {
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
    paragraph(words.parts("howTie")),
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
