// @ts-check
/** How a steady speed and the watts for it are worked out. */

import { html } from "../../parts/html.js";
import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

export function workedOut() {
  return html("div", { class: "passage" },
    paragraph("At a steady speed the power that reaches the road equals the forces on it times the speed:"),
    formula("eta times P equals v times the sum of air, rolling, hill and bearing forces",
      ["η", "P", "=", "v", "·", ["(", subscript("F", "air"), "+", subscript("F", "tyres"), "+", subscript("F", "hill"), "+", subscript("F", "bearings"), ")"]], { block: true }),
    formula("the air force is one half rho times drag area times apparent wind times the sum of v and head wind",
      [subscript("F", "air"), "=", fraction("1", "2"), "ρ", "·", "CdA", "·", subscript("V", "a"), "·", ["(", "v", "+", "h", ")"]], { block: true }),
    formula("the apparent wind is the root of the square of v plus h, plus the square of c",
      [power(subscript("V", "a"), "2"), "=", power(["(", "v", "+", "h", ")"], "2"), "+", power("c", "2")], { block: true }),
    formula("the tyre force is Crr m g cos theta, and the hill force m g sin theta",
      [subscript("F", "tyres"), "=", "Crr", "·", "m", "g", "·", "cos θ", ",", subscript("F", "hill"), "=", "m", "g", "·", "sin θ"], { block: true }),
    symbols([
      ["P, η", "power at the pedals, and the share of it that reaches the road"],
      ["v, h, c", "speed over the ground; head and cross wind at rider height"],
      ["ρ", "density of the air, from temperature, pressure and humidity (CIPM-2007)"],
      ["CdA", "drag area; without a table by yaw, drag lies along the apparent wind"],
      ["Crr, m, g, θ", "rolling-resistance coefficient, mass of rider and bicycle, gravity, slope"],
      ["bearings", "a constant force and one that grows with speed"],
    ]),
    paragraph("The speed for given watts is the one at which the two sides are equal; it is found by a root search. What ten watts more buy is the difference of two such speeds. A forecast’s wind is brought down to your height by the log law over the land you name. Each ± is first order: every uncertain number is moved by its own ± and the effects are added in squares."),
    paragraph("Not in it: gusts, the speed of traffic, and a road that is rougher here than there."),
    citations(["martin-1998", "picard-2008", "iso-2533", "wieringa-1992", "smit-2023", "crosswinds-2021"]));
}
