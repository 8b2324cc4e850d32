// @ts-check
/** Fourth: ten percent more power against ten percent less drag, and the share of air at which they tie. */

import { contourMap } from "../parts/contour-map.js";
import { html, say, strong } from "../parts/html.js";
import { savingsThatAddUp } from "../questions/shared/adding-up.js";
import { distanceName } from "../questions/shared/distance-names.js";
import { LOW_TORSO, LOWER_BARS, meanAndSd, meanAndSdWatts, shortPercent } from "../questions/shared/published.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { atPower, bothChanges, mirrored, mirrorOf, RANGES, withLowerBars } from "./rider.js";
import { moveTo, numberOf, stepFrame } from "./step.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { PowerOrDragAnswer } from "../types/core.d.ts" */
/** @import { Step } from "./step.js" */

const words = book("learn");
/** Other changes to ask about, as shares. */
const ANOTHER = 0.05;

/** @param {Tools} tools @returns {Step} */
export function tenAgainstTen(tools) {
  const { store } = tools;
  const watts = (/** @type {number} */ w) => show.quantity("power", w, store.get().units, { digits: 0 });
  const area = (/** @type {number} */ m2) => show.quantity("area", m2, store.get().units);
  const percent = (/** @type {number} */ share) => shortPercent(Math.abs(share));
  const unit = (/** @type {import("../units.js").Kind} */ kind) => ({
    unit: show.unitOf(kind, store.get().units).symbol,
  });
  const more = numberOf(tools, "power_change", { label: words("morePowerBy"), meaning: "power" });
  const less = numberOf(tools, "cda_change", { label: words("lessDragBy"), meaning: "drag", negative: true });
  const map = contourMap({
    title: words("tenChart"),
    x: { name: words("powerAxis", unit("power")), meaning: "power", format: (w) => show.number(w), read: watts },
    y: {
      name: words("areaAxis", unit("area")),
      meaning: "drag",
      format: (m2) => show.number(m2, { digits: 2 }),
      read: area,
    },
    you: {
      label: words("tenHandle"),
      onMove: ({ x, y }, phase) =>
        moveTo(
          tools,
          [
            ["power_w", Math.round(x)],
            ["cda_m2", Number(y.toFixed(3))],
          ],
          phase,
        ),
    },
  });
  const lower = html("span");
  const frame = stepFrame({
    title: words("tenTitle"),
    words: words.parts("tenAsk", { more, less }),
    toTry: words("tenTry", { percent: percent(ANOTHER) }),
    chart: map.element,
    notes: [
      html(
        "p",
        { class: "takes" },
        ...words.parts("tenDoesIt"),
        " ",
        lower,
        " ",
        words("tenTorso", { watts: meanAndSdWatts(LOW_TORSO, store.get().units) }),
      ),
      html("p", { class: "caution" }, words("tenCaution")),
    ],
  });

  return {
    element: frame.element,
    destroy: map.destroy,
    update(state, numbers) {
      const answer = bothChanges(numbers);
      const saved = saving(answer);
      const { power_change, cda_change } = numbers;
      const mirror = mirrorOf(numbers);
      const mirroredBy_s = mirrored(numbers).difference_s.value;
      const base_s = Math.round(answer.base_time_s.value);
      const tie = answer.tie_aero_share;
      const spread = answer.difference_s.sd > 0 ? [` ${show.plusMinusTime(answer.difference_s.sd)}`] : [];
      const [powerDiffers, dragDiffers] = [show.differenceWords(saved.first_s), show.differenceWords(saved.second_s)];
      frame.update(state, [
        ...words.parts("tenSays", {
          distance: distanceName(answer.distance_m, state.units),
          time: show.time(base_s),
          power: strong(powerDiffers, "power"),
          drag: strong(dragDiffers, "drag"),
          ahead: [ahead(answer, saved.difference_s), ...spread],
        }),
        " ",
        ...(warned(answer)
          ? [
              ...words.parts("tenTooMuch", {
                power: watts(numbers.power_w),
                time: show.time(base_s),
                sustainable: watts(answer.takes.sustainable_w),
              }),
              " ",
            ]
          : []),
        ...(tie === null
          ? [words("tenNoTie")]
          : words.parts("tenTie", { tie: share(tie), share: share(answer.aero_share) })),
        " ",
        words("tenMirror", {
          percent: percent(power_change),
          mirror: percent(mirror),
          differs: show.differenceWords(Math.round(mirroredBy_s)),
        }),
      ]);
      frame.since(numbers, ["power_w", "cda_m2", "power_change", "cda_change"], () => {
        const began = bothChanges(BEGAN);
        return words("tenSince", {
          began: ahead(began, saving(began).difference_s),
          beganShare: share(began.aero_share),
          ahead: ahead(answer, saved.difference_s),
          share: share(answer.aero_share),
        });
      });
      const speed = (/** @type {import("./beginning.js").Numbers} */ of) =>
        show.quantity("speed", atPower(of).speed_m_s.value, state.units, { digits: 1 });
      say(
        lower,
        words.parts("tenLower", {
          cda: meanAndSd(LOWER_BARS.cda),
          power: meanAndSd(LOWER_BARS.power),
          speed: speed(numbers),
          lower: speed(withLowerBars(numbers)),
        }),
      );
      const { columns, base_power_w: x, base_cda_m2: y } = answer;
      const point = { power: watts(x), drag: area(y), time: show.time(base_s) };
      map.update({
        grid: { xs: columns.power_w, ys: columns.cda_m2, values: columns.time_s },
        format: show.time,
        own: { value: answer.base_time_s.value, label: point.time, shortLabel: point.time },
        you: {
          x,
          y,
          label: words("theRider"),
          spoken: words("pointSpoken", point),
          step: { x: 1, y: 0.001 },
          rangeX: within(columns.power_w, RANGES.power_w),
          rangeY: within(columns.cda_m2, RANGES.cda_m2),
        },
        changes: [
          {
            to: { x: answer.more_power_w, y },
            words: words("morePower", { percent: percent(power_change) }),
            amount: powerDiffers,
            meaning: "power",
          },
          {
            to: { x: answer.less_drag_power_w, y: answer.less_drag_cda_m2 },
            words: words("lessDrag", { percent: percent(cda_change) }),
            amount: dragDiffers,
            meaning: "drag",
          },
        ],
        note: words("eachLine"),
        desc: words("tenDescription", point),
        reading: words.parts("tenReading", {
          power: strong(point.power, "power"),
          drag: strong(point.drag, "drag"),
          time: point.time,
        }),
      });
    },
  };

  /** Whether the curve allows less than these watts for so long. @param {PowerOrDragAnswer} answer */
  function warned({ warnings }) {
    return warnings.some(({ kind }) => kind === "beyond_curve");
  }

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
    if (way === "level") return words("twoLevel");
    return words(difference_s.value > 0 ? "powerAhead" : "dragAhead", { figure });
  }
}

/** What is both on the map and allowed. @param {Float64Array} column @param {readonly [number, number]} range @returns {[number, number]} */
function within(column, [least, most]) {
  return [Math.max(column[0], least), Math.min(column[column.length - 1], most)];
}
