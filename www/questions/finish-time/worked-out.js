// @ts-check
/** How a finish time is worked out. */

import { html } from "../../parts/html.js";
import { formula, fraction, power, subscript } from "../../parts/formula.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";

export function workedOut() {
  return html("div", { class: "passage" },
    paragraph("The ride is stepped along the road: at each step what the pedals give, less air, tyres, hill and bearings, changes the speed."),
    formula("m v times the rate of v equals eta P minus F v",
      ["m", "v", fraction(["d", "v"], ["d", "t"]), "=", "η", "P", "−", "F", "v"], { block: true }),
    paragraph("The best even effort is the constant power that your curve allows for exactly as long as the ride then takes. Power and time fix each other; the pair is solved for."),
    formula("P of t equals CP plus W prime over t, less A times the natural logarithm of t over T beyond T",
      ["P", ["(", "t", ")"], "=", "CP", "+", fraction("W′", "t"), "−", "A", "·", "ln", fraction("t", "T")], { block: true }),
    paragraph("Above the threshold W′ is spent, joule for joule. Below it W′ comes back, more slowly the fuller it is:"),
    formula("the rate of W prime balance equals the threshold minus P, times one minus W prime balance over W prime",
      [fraction(["d", subscript("W′", "bal")], ["d", "t"]), "=", ["(", "CP", "−", "P", ")"], "·", ["(", "1", "−", fraction(subscript("W′", "bal"), "W′"), ")"]], { block: true }),
    formula("the variance of the time is the sum over inputs of the square of what each moves it, plus the square of the model's own error",
      [power(["sd"], "2"), "=", "∑", power(subscript("sd", "input"), "2"), "+", power(subscript("sd", "model"), "2")], { block: true }),
    symbols([
      ["P, CP, W′", "power at the pedals; critical power; the work that can be done above it"],
      ["A, T", "what long rides lose, and from when; left out before T, or where no long-ride loss is given. A peak power, where given, bends the curve for short rides"],
      ["m, v, t, F, η", "mass with what the turning wheels add, speed, time, the forces on the road, drivetrain efficiency"],
      ["W′bal", "W′ balance: what is left at that moment. Two other forms bound it: nothing comes back, or all does, watt for watt"],
      ["sd", "one standard deviation; each uncertain number is moved by its own to see what it does to the time"],
    ]),
    paragraph("The model’s own error stands apart: published models of time trials missed real times by three to four percent on the road. Two percent is taken here until your own past results say otherwise. It is much the same in two rides compared on one day, so it cancels in a difference."),
    paragraph("Not in it: gusts, traffic, junctions, nerves, food and sleep. For half a day or more the power curve is a guess."),
    citations(["martin-1998", "puchowicz-2020", "skiba-2015", "romcke-2019", "picard-2008", "wieringa-1992"]));
}
