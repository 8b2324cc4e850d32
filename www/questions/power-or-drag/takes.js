// @ts-check
/** What each change takes: training for the power, a lower shape for the drag, and what is published about both. */

import { citations } from "../shared/worked-out.js";
import { html, say, strong } from "../../parts/html.js";
import { sources } from "../../core.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const TRAINED = "laursen-2002";
const LOWER_BARS = "polanco-2020";
const TORSO_ANGLE = "faulkner-2021";

/** Savings that differ by less than this share of the larger are close. */
const CLOSE = 0.2;
const CLOSE_CALL = "The seconds are close, so the choice is mostly one of price. That is why position so often wins although the clock calls it nearly level.";
const PRICE = "If you already train, a tenth more power is a lot to ask; lower bars can be tried in an afternoon. But a shape that takes as much power as it is worth, or that is lost in the last miles, is not fast: measure your power in it before you decide.";

/** What was read in a source, in its own words here. @param {string} key */
const figure = (key) => sources().find((source) => source.key === key)?.figure ?? "";

/** @param {Answer} answer */
function close({ difference_s, more_power_saves_s, less_drag_saves_s }) {
  return Math.abs(difference_s.value) < CLOSE * Math.max(Math.abs(more_power_saves_s.value), Math.abs(less_drag_saves_s.value));
}

/** @param {Answer} answer */
export function takesGist(answer) {
  return close(answer) ? "The seconds are close. The price seldom is." : "Training on the one side, a lower shape on the other, and what is published about both.";
}

/** How long the changed power could be held, as the middle of a sentence. @param {Tools} tools @param {Answer} answer */
function held({ units }, { takes, more_power_w }) {
  if (takes.more_power_held_s !== null) return ["today your curve gives you that for ", strong(units.time(takes.more_power_held_s))];
  return [more_power_w > takes.sustainable_w ? "today your curve does not give you that at all" : "today your curve already gives you that for as long as you like"];
}

/** The watts that the change of drag area is worth, where a lower shape would stop paying. @param {Tools} tools @param {State} state @param {Answer} answer */
function priceOfDrag({ units }, state, { exchange }) {
  const percent = -state.with["power-or-drag"].cda_change * 100;
  return strong(units.quantity("power", exchange.w_per_cda_percent * percent, state.units, { digits: 0 }));
}

/** Two sentences beside the answer. @param {Tools} tools */
export function takesInBrief(tools) {
  const { units } = tools;
  const lead = html("p", { class: "also" });
  const power = html("p", { class: "takes" });
  const drag = html("p", { class: "takes" });
  return {
    element: html("div", {}, lead, html("div", { class: "side-by-side" }, power, drag)),
    /** @param {State} state @param {Answer} answer @param {number} more_power_time_s as the page rounds it */
    update(state, answer, more_power_time_s) {
      const { power_change, cda_change } = state.with["power-or-drag"];
      say(lead, close(answer) ? "The seconds are close. What they take is not:" : "What each takes:");
      say(power, [strong("More power takes training. ", "power"),
        `${units.percent(power_change)} more is ${units.quantity("power", answer.more_power_w, state.units, { digits: 0 })}; `, ...held(tools, answer),
        `, and this ride would last ${units.time(more_power_time_s)}. Published: four weeks of intervals made highly trained riders’ 40-km trials 4.4 to 5.8\u202f% better.`]);
      say(drag, [strong("Less drag takes a lower shape. ", "drag"),
        `Published: lower bars cut CdA by 10.7\u00a0±\u00a03.1\u202f% in five riders, and their power by 9.5\u00a0±\u00a05.4\u202f%. Your ${units.percent(-cda_change)} stops paying once it costs you about `,
        priceOfDrag(tools, state, answer), "."]);
    },
  };
}

/** @param {Tools} tools */
export function takesInFull(tools) {
  const { units } = tools;
  const own = html("p");
  const choosing = html("p");
  const element = html("div", {},
    own,
    choosing,
    html("ul", {},
      html("li", {}, strong("Trained riders: "), figure(TRAINED)),
      html("li", {}, strong("New riders: "), "no figure checked against a paper; from memory, 10 to 15 % in two months. If you are new, more power is the cheaper of the two for a while."),
      html("li", {}, strong("Lower bars: "), figure(LOWER_BARS)),
      html("li", {}, strong("Torso angle: "), figure(TORSO_ANGLE))),
    html("p", { class: "caution" }, "Hard training and maximal efforts want a healthy heart and rest between; a change of fit wants small steps and, if anything hurts, a fitter or a physiotherapist."),
    citations([TRAINED, LOWER_BARS, TORSO_ANGLE]));
  return {
    element,
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      const { cda_change } = state.with["power-or-drag"];
      say(choosing, `${close(answer) ? CLOSE_CALL : "The seconds favour one of the two here, but they are not the price."} ${PRICE}`);
      const now = answer.takes.power_held_s;
      say(own, [`At ${units.quantity("power", answer.base_power_w, state.units, { digits: 0 })} your power curve lasts ${now === null ? "as long as this ride needs" : units.time(now)}; at ${units.quantity("power", answer.more_power_w, state.units, { digits: 0 })}, `,
        ...held(tools, answer), `. For a finish time like yours it allows ${units.quantity("power", answer.takes.sustainable_w, state.units, { digits: 0 })}. `,
        `On the other side, ${units.percent(-cda_change)} less drag is ${units.quantity("area", answer.less_drag_cda_m2, state.units)} in place of ${units.quantity("area", answer.base_cda_m2, state.units)}, and stops paying once the new shape costs about `,
        priceOfDrag(tools, state, answer), "."]);
    },
  };
}
