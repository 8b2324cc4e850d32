// @ts-check
/** How a steady speed and the watts for it are worked out. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

const words = book("speed-for-watts");

export function workedOut() {
  return html(
    "div",
    { class: "passage" },
    paragraph(words("howSteady")),
    formula(
      words("formulaPower"),
      [
        "η",
        "P",
        "=",
        "v",
        "·",
        [
          "(",
          subscript("F", words("air")),
          "+",
          subscript("F", words("rolling")),
          "+",
          subscript("F", words("climbing")),
          "+",
          subscript("F", words("bearings")),
          ")",
        ],
      ],
      { block: true },
    ),
    formula(
      words("formulaAir"),
      [
        subscript("F", words("air")),
        "=",
        fraction("1", "2"),
        "ρ",
        "·",
        "CdA",
        "·",
        subscript("V", "a"),
        "·",
        ["(", "v", "+", "h", ")"],
      ],
      { block: true },
    ),
    formula(
      words("formulaWind"),
      [power(subscript("V", "a"), "2"), "=", power(["(", "v", "+", "h", ")"], "2"), "+", power("c", "2")],
      { block: true },
    ),
    formula(
      words("formulaTyres"),
      [
        subscript("F", words("rolling")),
        "=",
        "Crr",
        "·",
        "m",
        "g",
        "·",
        "cos θ",
        ",",
        subscript("F", words("climbing")),
        "=",
        "m",
        "g",
        "·",
        "sin θ",
      ],
      { block: true },
    ),
    symbols([
      ["P, η", words("symbolPower")],
      ["v, h, c", words("symbolSpeed")],
      ["ρ", words("symbolDensity")],
      ["CdA", words("symbolCda")],
      ["Crr, m, g, θ", words("symbolRolling")],
      [words("bearings"), words("symbolBearings")],
    ]),
    paragraph(words("howFound")),
    paragraph(words("howNot")),
    citations(["martin-1998", "picard-2008", "iso-2533", "wieringa-1992", "smit-2023", "crosswinds-2021"]),
  );
}
