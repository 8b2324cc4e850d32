// @ts-check
/** How a finish time is worked out. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

const words = book("finish-time");

export function workedOut() {
  return html(
    "div",
    { class: "passage" },
    paragraph(words("howStepped")),
    formula(words("formulaMotion"), ["m", "v", fraction(["d", "v"], ["d", "t"]), "=", "η", "P", "−", "F", "v"], {
      block: true,
    }),
    paragraph(words("howEven")),
    formula(
      words("formulaCurve"),
      ["P", ["(", "t", ")"], "=", "CP", "+", fraction("W′", "t"), "−", "A", "·", "ln", fraction("t", "T")],
      { block: true },
    ),
    paragraph(words("howBalance")),
    formula(
      words("formulaBalance"),
      [
        fraction(["d", subscript("W′", words("balanceMark"))], ["d", "t"]),
        "=",
        ["(", "CP", "−", "P", ")"],
        "·",
        ["(", "1", "−", fraction(subscript("W′", words("balanceMark")), "W′"), ")"],
      ],
      { block: true },
    ),
    formula(
      words("formulaDoubt"),
      [
        power(["sd"], "2"),
        "=",
        "∑",
        power(subscript("sd", words("inputMark")), "2"),
        "+",
        power(subscript("sd", words("modelMark")), "2"),
      ],
      { block: true },
    ),
    symbols([
      ["P, CP, W′", words("symbolPower")],
      ["A, T", words("symbolLong")],
      ["m, v, t, F, η", words("symbolMotion")],
      [`W′${words("balanceMark")}`, words("symbolBalance")],
      ["sd", words("symbolDoubt")],
    ]),
    paragraph(words("howModel")),
    paragraph(words("howNot")),
    citations(["martin-1998", "puchowicz-2020", "skiba-2015", "romcke-2019", "picard-2008", "wieringa-1992"]),
  );
}
