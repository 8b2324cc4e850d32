// @ts-check
/** Why one change beats the other, and how it is worked out. */

import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

/** How much of the work goes into the air; down a hill that is more than the rider does. @param {Tools} tools @param {number} aero_share */
export function airShare({ units }, aero_share) {
  return aero_share <= 1 ? `${units.percent(aero_share)} of your work` : "more than your own work, the hill paying the rest";
}

/** @param {Tools} tools @param {Answer} answer */
export function whyGist(tools, { aero_share, tie_aero_share }) {
  const tie = tie_aero_share ? `On a flat one the two changes tie when it takes ${tools.units.percent(tie_aero_share)}.` : "No share would make these two changes tie.";
  return `Air takes ${airShare(tools, aero_share)} on this road. ${tie}`;
}

/** @param {Tools} tools @param {Answer} answer @param {number} power_change @param {number} cda_change */
export function why(tools, { aero_share, tie_aero_share }, power_change, cda_change) {
  const { units } = tools;
  const cheaper = 1 / (1 + cda_change) - 1;
  return [
    paragraph(`More power pays for everything that holds you back: ${units.percent(power_change)} more for the air, the tyres, the bearings and the hill alike. Less drag cheapens the air only, here ${airShare(tools, aero_share)}. But where it helps it helps by more than it seems: ${units.percent(-cda_change)} less drag lets the same watts push ${units.percent(cheaper)} more air aside, because dividing by ${units.number(1 + cda_change, { digits: 2 })} is what counts.`),
    paragraph(tie_aero_share
      ? `On a flat road in still air those two facts balance when air takes ${units.percent(tie_aero_share, 1)} of the work. Where it takes less, more power is ahead; where it takes more, less drag is. ${aero_share < tie_aero_share ? "You are below it." : "You are above it."}`
      : "With changes as unequal as these, the same one wins on every flat road."),
    paragraph("Climbing, soft tyres and slow riding push the share down and favour power. Speed, smooth tyres and head winds push it up and favour less drag. Try a hill, or a record speed, in the sentence above."),
  ];
}

export function workedOut() {
  return html("div", {},
    paragraph("The ride is worked out three times, as you are, with more power and with less drag, on the same road on the same day. What is uncertain in all three alike, the model’s own error included, cancels in the difference. That is why a difference of seconds can be surer than the finish time it stands beside."),
    formula("pedal power times drivetrain efficiency equals speed times the sum of air, rolling, climbing, bearing and inertial force",
      ["P", "η", "=", "v", "(", fraction("1", "2"), "ρ", subscript("C", "d"), "A", subscript("V", "a"), "(", "v", "+", "h", ")", "+", "m", "g", subscript("C", "rr"), "cos", "θ", "+", "m", "g", "sin", "θ", "+", subscript("F", "b"), "+", subscript("m", "e"), fraction(["d", "v"], ["d", "t"]), ")"], { block: true }),
    symbols([
      ["P, η", "pedal power, W, and the share of it that reaches the wheel"],
      ["v, h", "speed over the ground and head wind, m/s"],
      ["ρ", "air density, kg/m³, from temperature, pressure and humidity"],
      ["CdA", "drag area, m²"],
      ["Va", "speed of the air past the rider, m/s"],
      ["m, me", "mass, and mass with the wheels’ share of turning, kg"],
      ["Crr", "rolling-resistance coefficient"],
      ["θ", "slope of the road"],
      ["Fb", "drag of the bearings, N"],
    ]),
    paragraph("Without a yaw table, drag lies along the apparent wind. On a flat calm road the share of air f at which the two changes give one speed follows from two lines, r being the ratio of the new speed to the old, x the share of extra power and y the share of drag saved:"),
    formula("f r cubed plus one minus f times r equals one plus x", ["f", power("r", "3"), "+", "(", "1", "−", "f", ")", "r", "=", "1", "+", "x"], { block: true }),
    formula("one minus y times f r cubed plus one minus f times r equals one", ["(", "1", "−", "y", ")", "f", power("r", "3"), "+", "(", "1", "−", "f", ")", "r", "=", "1"], { block: true }),
    paragraph("At a best even effort the whole power curve is raised, and the even power that it allows for just the resulting time is solved anew for each ride. The ± is one standard deviation: first from how the difference moves with each of your numbers, then, when your hands rest, counted in 10,000 draws of them all."),
    citations(["martin-1998", "picard-2008", "smit-2023", "puchowicz-2020", "padilla-2000", "wieringa-1992"]));
}
