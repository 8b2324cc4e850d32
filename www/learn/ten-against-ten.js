// @ts-check
/** Fourth: ten percent more power against ten percent less drag, and the share of air at which they tie. */

import { contourMap } from "../parts/contour-map.js";
import { html, say, strong } from "../parts/html.js";
import { savingsThatAddUp } from "../questions/shared/adding-up.js";
import { atPower, BEGAN, bothChanges, withLowerBars } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { PowerOrDragAnswer } from "../types/core.d.ts" */
/** @import { Step } from "./step.js" */

/** @param {Tools} tools @returns {Step} */
export function tenAgainstTen(tools) {
  const { store, units: show } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const area = (/** @type {number} */ m2) => show.quantity("area", m2, store.get().units);
  const percent = (/** @type {number} */ share) => show.percent(Math.abs(share), 1).replace(".0", "");
  const more = numberOf(tools, "power_change", { label: "More power by", meaning: "power" });
  const less = numberOf(tools, "cda_change", { label: "Less drag by", meaning: "drag", negative: true });
  const map = contourMap({
    title: "The rider’s finish time for every power and drag area",
    x: { name: "power, W", meaning: "power", format: (w) => show.number(w), read: watts },
    y: { name: "drag area CdA, m²", meaning: "drag", format: (m2) => show.number(m2, { digits: 2 }), read: area },
    you: { label: "The rider on the map: left and right change power, up and down change drag area", onMove: ({ x, y }, phase) => moveTo(tools, [["power_w", Math.round(x)], ["cda_m2", Number(y.toFixed(3))]], phase) },
  });
  const lower = html("span");
  const frame = stepFrame({
    title: "4. Ten against ten",
    words: ["Which is worth more, ", more, " more power or ", less, " less drag?"],
    toTry: "Drag the ring to a stronger, then to a weaker rider, and see which arrow crosses more lines. Or ask 5\u202f% less drag against 5\u202f% more power.",
    chart: map.element,
    notes: [
      html("p", { class: "takes" }, strong("So does position beat power? "), "By the clock, ten percent of either come close on a flat road. They differ in what they take. A tenth more power is training; a tenth less drag may be a lower pair of bars, and what that costs you in power. ",
        lower, " In eleven others a low torso cost 16\u00a0±\u00a020\u00a0W at the anaerobic threshold, and the low position won all the same. Riders differ as much as the means do, so only a test of your own tells."),
      html("p", { class: "caution" }, "A head held low does not see the road. Try positions away from traffic and in small steps; ask a fitter or clinician about anything that hurts. Event rules and the law of the road come first."),
    ],
  });

  return {
    element: frame.element,
    destroy: map.destroy,
    update(state, numbers) {
      const answer = bothChanges(numbers);
      const saved = saving(answer);
      const { power_change, cda_change } = numbers;
      const mirror = 1 / (1 + power_change) - 1;
      const mirrored = bothChanges(numbers, mirror).difference_s.value;
      const base_s = Math.round(answer.base_time_s.value);
      const tie = answer.tie_aero_share;
      const spread = answer.difference_s.sd > 0 ? ` ${show.plusMinusTime(answer.difference_s.sd)}` : "";
      frame.update(state, [`Over ${show.quantity("distance", answer.distance_m, state.units)} the rider takes ${show.time(base_s)}. More power is `, strong(show.difference(saved.first_s).words, "power"), ", less drag ", strong(show.difference(saved.second_s).words, "drag"), ": ",
        ahead(answer, saved.difference_s), `${spread}. `,
        ...(tie === null ? ["No share of air would make these two changes tie. "] : ["On a flat, calm road these two changes tie when air takes ", strong(share(tie)), ` of the work; here it takes ${share(answer.aero_share)}. `]),
        `Taking away is a bigger step than adding: the mirror of ${percent(power_change)} more is ${percent(mirror)} less, and against that more power is ${show.difference(Math.round(mirrored)).words}.`]);
      frame.since(numbers, ["power_w", "cda_m2", "power_change", "cda_change"], () => {
        const began = bothChanges(BEGAN);
        return [`At the start: ${ahead(began, saving(began).difference_s)}, and ${share(began.aero_share)} of the work for the air. Now: ${ahead(answer, saved.difference_s)}, and ${share(answer.aero_share)} for the air.`];
      });
      const speed = (/** @type {import("./rider.js").Numbers} */ of) => show.quantity("speed", atPower(of).speed_m_s.value, state.units, { digits: 1 });
      say(lower, ["Published: lower bars cut five riders’ CdA by 10.7\u00a0±\u00a03.1\u202f%, and their power by 9.5\u00a0±\u00a05.4\u202f%. ",
        "Both means at once would take the rider of this story from ", strong(speed(numbers)), " to ", strong(speed(withLowerBars(numbers))), "."]);
      const { columns, base_power_w: x, base_cda_m2: y } = answer;
      const time = show.time(base_s);
      map.update({
        grid: { xs: columns.power_w, ys: columns.cda_m2, values: columns.time_s },
        format: show.time,
        own: { value: answer.base_time_s.value, label: time, shortLabel: time },
        you: { x, y, label: "the rider", spoken: `${watts(x)} at ${area(y)}: ${time}`, step: { x: 1, y: 0.001 } },
        changes: [
          { to: { x: answer.more_power_w, y }, words: `${percent(power_change)} more power`, amount: show.difference(saved.first_s).words, meaning: "power" },
          { to: { x: answer.less_drag_power_w, y: answer.less_drag_cda_m2 }, words: `${percent(cda_change)} less drag`, amount: show.difference(saved.second_s).words, meaning: "drag" },
        ],
        note: "each line is one finish time",
        desc: `Finish time falls to the right, with more power, and downwards, with less drag area. The rider stands at ${watts(x)} and ${area(y)}, ${time}.`,
        reading: [strong(watts(x), "power"), " and ", strong(area(y), "drag"), ": ", strong(time), "."],
      });
    },
  };

  /** In thousandths, as the tie is known. @param {number} value */
  function share(value) {
    return show.percent(value, 1);
  }

  /** @param {PowerOrDragAnswer} answer */
  function saving({ difference_s, more_power_saves_s, less_drag_saves_s }) {
    return savingsThatAddUp(difference_s.value, more_power_saves_s.value, less_drag_saves_s.value);
  }

  /** @param {PowerOrDragAnswer} answer @param {number} whole_s */
  function ahead({ difference_s }, whole_s) {
    const { way, figure } = show.difference(whole_s || difference_s.value);
    if (way === "level") return "the two level";
    return `${difference_s.value > 0 ? "more power" : "less drag"} ahead by ${figure}`;
  }
}
