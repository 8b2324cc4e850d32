// @ts-check
/** What each change takes: training for the power, a lower shape for the drag, and what is published about both. */

import { html, say, strong } from "../../parts/html.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import {
  FOUR_WEEKS,
  LOW_TORSO,
  LOW_TORSO_DEG,
  LOWER_BARS,
  meanAndSd,
  meanAndSdWatts,
  shortPercent,
  TRIAL_M,
} from "../shared/published.js";
import { citations } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");

const TRAINED = "laursen-2002";
const LOWER_BARS_SOURCE = "polanco-2020";
const TORSO_ANGLE = "faulkner-2021";

/** Savings that differ by less than this share of the larger are close. */
const CLOSE = 0.2;
/** What new riders gain in two months, as shares, from memory. */
const NEW_RIDERS = /** @type {const} */ ([0.1, 0.15]);

/** @param {Answer} answer */
function close({ difference_s, more_power_saves_s, less_drag_saves_s }) {
  return (
    Math.abs(difference_s.value) <
    CLOSE * Math.max(Math.abs(more_power_saves_s.value), Math.abs(less_drag_saves_s.value))
  );
}

/** @param {Answer} answer */
export function takesGist(answer) {
  return words(close(answer) ? "takesGistClose" : "takesGist");
}

/** How long the changed power could be held, as the middle of a sentence; `lasts` where the curve is its subject. @param {Answer} answer @param {"held" | "lasts"} [as] */
function held({ takes, more_power_w }, as = "held") {
  if (takes.more_power_held_s !== null) return words.parts(`${as}For`, { time: units.time(takes.more_power_held_s) });
  return words.parts(more_power_w > takes.sustainable_w ? `${as}Not` : `${as}Always`);
}

/** The watts that the change of drag area is worth, where a lower shape would stop paying. @param {State} state @param {Answer} answer */
function priceOfDrag(state, { exchange }) {
  const percent = -state.with["power-or-drag"].cda_change * 100;
  return units.quantity("power", exchange.w_per_cda_percent * percent, state.units, { digits: 0 });
}

/** Two sentences beside the answer. */
export function takesInBrief() {
  const lead = html("p", { class: "also" });
  const power = html("p", { class: "takes" });
  const drag = html("p", { class: "takes" });
  return {
    element: html("div", {}, lead, html("div", { class: "side-by-side" }, power, drag)),
    /** @param {State} state @param {Answer} answer @param {number} more_power_time_s as the page rounds it */
    update(state, answer, more_power_time_s) {
      const { power_change, cda_change } = state.with["power-or-drag"];
      const [least, most] = FOUR_WEEKS;
      say(lead, words(close(answer) ? "takesLeadClose" : "takesLead"));
      say(
        power,
        words.parts("powerTakes", {
          lead: strong(words("powerTakesLead"), "power"),
          percent: shortPercent(power_change),
          watts: units.quantity("power", answer.more_power_w, state.units, { digits: 0 }),
          held: held(answer),
          time: units.time(more_power_time_s),
          trial: units.quantity("distance", TRIAL_M, { ...state.units, distance: "km" }),
          low: units.number(100 * least, { digits: 1 }),
          high: units.percent(most, 1),
        }),
      );
      say(drag, [
        ...words.parts("dragTakes", {
          lead: strong(words("dragTakesLead"), "drag"),
          cda: meanAndSd(LOWER_BARS.cda),
          power: meanAndSd(LOWER_BARS.power),
        }),
        ...(cda_change < 0
          ? [
              " ",
              ...words.parts("dragLimit", { percent: shortPercent(-cda_change), price: priceOfDrag(state, answer) }),
            ]
          : []),
      ]);
    },
  };
}

/** @param {Tools} tools */
export function takesInFull(tools) {
  const watts = (/** @type {State} */ state, /** @type {number} */ power_w) =>
    units.quantity("power", power_w, state.units, { digits: 0 });
  const own = html("p");
  const choosing = html("p");
  const [low, high] = NEW_RIDERS;
  const [least, most] = FOUR_WEEKS;
  const trial = units.quantity("distance", TRIAL_M, { ...tools.store.get().units, distance: "km" });
  const element = html(
    "div",
    {},
    own,
    choosing,
    html(
      "ul",
      {},
      html(
        "li",
        {},
        ...words.parts("trainedRiders", {
          trial,
          low: units.number(100 * least, { digits: 1 }),
          high: units.percent(most, 1),
        }),
      ),
      html("li", {}, ...words.parts("newRiders", { low: units.number(100 * low), high: units.percent(high) })),
      html(
        "li",
        {},
        ...words.parts("lowerBars", { cda: meanAndSd(LOWER_BARS.cda), power: meanAndSd(LOWER_BARS.power) }),
      ),
      html(
        "li",
        {},
        ...words.parts("torsoAngle", {
          watts: meanAndSdWatts(LOW_TORSO, tools.store.get().units),
          angle: units.quantity("angle", LOW_TORSO_DEG, tools.store.get().units),
        }),
      ),
    ),
    html("p", { class: "caution" }, words("takesCaution")),
    citations([TRAINED, LOWER_BARS_SOURCE, TORSO_ANGLE]),
  );
  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      const { cda_change } = state.with["power-or-drag"];
      say(choosing, `${words(close(answer) ? "closeCall" : "oneFavoured")} ${words("price")}`);
      const now_s = answer.takes.power_held_s;
      say(own, [
        ...words.parts(now_s === null ? "ownCurveLong" : "ownCurve", {
          power: watts(state, answer.base_power_w),
          time: now_s === null ? "" : units.time(now_s),
          more: watts(state, answer.more_power_w),
          held: held(answer, "lasts"),
          sustainable: watts(state, answer.takes.sustainable_w),
        }),
        ...(cda_change < 0
          ? [
              " ",
              ...words.parts("ownDrag", {
                percent: shortPercent(-cda_change),
                lower: units.quantity("area", answer.less_drag_cda_m2, state.units),
                area: units.quantity("area", answer.base_cda_m2, state.units),
                price: priceOfDrag(state, answer),
              }),
            ]
          : []),
      ]);
    },
  };
}
