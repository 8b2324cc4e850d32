// @ts-check
/** How a power curve is worked out. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { percent } from "../../units.js";
import { book } from "../../words/index.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

const words = book("power-curve");
/** What two hours of heavy riding took from cyclists (clark-2018). */
const [LOST_CP, LOST_W_PRIME] = [0.08, 0.2];

export function workedOut() {
  const peak = subscript("P", "max");
  const above = () => ["(", subscript("P", "max"), "−", "CP", ")"];
  return html(
    "div",
    { class: "passage" },
    paragraph(words("howFit")),
    formula(words("howTwo"), ["P", "=", "CP", "+", fraction("W′", "t")], { block: true }),
    formula(words("howThree"), ["P", "=", "CP", "+", fraction("W′", ["t", "+", fraction("W′", [peak, "−", "CP"])])], {
      block: true,
    }),
    formula(
      words("howOmni"),
      [
        "P",
        "=",
        "CP",
        "+",
        fraction("W′", "t"),
        ["(", "1", "−", power("e", ["−", "t", above(), "/", "W′"]), ")"],
        "−",
        "A",
        "·",
        "ln",
        fraction("t", "T"),
      ],
      { block: true },
    ),
    formula(words("howLog"), ["P", "=", "MAP", "−", "E", "·", "ln", fraction("t", ["7", "min"])], { block: true }),
    formula(words("howLaw"), ["P", "=", "S", "·", power("t", ["−", "k"])], { block: true }),
    symbols([
      ["P, t", words("symbol.P")],
      ["CP, W′", words("symbol.CP")],
      ["Pmax", words("symbol.Pmax")],
      ["A, T", words("symbol.A")],
      ["MAP, E", words("symbol.MAP")],
      ["S, k", words("symbol.S")],
    ]),
    paragraph(words("howParts")),
    paragraph(words("howBand")),
    paragraph(words("howNot", { cp: percent(LOST_CP), wPrime: percent(LOST_W_PRIME) })),
    citations([
      "clark-2018",
      "drake-2024",
      "four-and-twenty",
      "gaesser-1995",
      "kordi-2019",
      "monod-1965",
      "morton-1996",
      "peronnet-1987",
      "puchowicz-2020",
    ]),
  );
}
