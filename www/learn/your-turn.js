// @ts-check
/** The end of the story: what the reader changed goes into their own numbers, if and when they say so. */

import { valueChanges } from "../frame/bound-number.js";
import { html, say, strong } from "../parts/html.js";
import { BEGAN, numbersOf } from "./rider.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { State } from "../state/history.js" */
/** @import { Name, Numbers } from "./rider.js" */

const QUESTION = "power-or-drag";
/** What that question has a place for. @type {readonly Name[]} */
const TAKEN_ALONG = ["power_w", "cda_m2", "power_change", "cda_change"];

/** @param {Tools} tools */
export function yourTurn(tools) {
  const { store, units: show } = tools;
  const told = html("p", { class: "also" });
  const along = html("button", { type: "button", class: "choose" }, "Ask it of my own ride, with what I changed");
  const asItIs = html("button", { type: "button", class: "choose" }, "Ask it of my own ride");
  const element = html("section", { class: "step", "aria-label": "Now your own ride" },
    html("div", { class: "ask" }, html("h2", {}, "Now your own ride")),
    told,
    html("p", { class: "chooses no-print" }, along, asItIs),
    html("p", { class: "takes" }, "So far none of this has touched your own numbers, and Undo takes it back if you bring something along. The slope, the wind and the position that is lost have their place under Your numbers and in Hold or fade."));
  along.addEventListener("click", () => {
    takeAlong(numbersOf(store.get()));
    tools.go(QUESTION);
    tools.notify("What you changed in the story is in your own numbers now. Undo takes it back.");
  });
  asItIs.addEventListener("click", () => tools.go(QUESTION));

  /** @param {Numbers} numbers */
  const changed = (numbers) => TAKEN_ALONG.filter((name) => Math.abs(numbers[name] - BEGAN[name]) > 1e-9);

  /** One step of undo. @param {Numbers} numbers */
  function takeAlong(numbers) {
    const { scenario } = store.get();
    const cda = `scenario.positions[${scenario.riding_position}].cda_m2`;
    /** @type {Record<string, () => [string, unknown][]>} */
    const places = {
      power_w: () => [[`with.${QUESTION}.effort`, { kind: "power", power_w: numbers.power_w }]],
      cda_m2: () => valueChanges(store.at(cda), cda, numbers.cda_m2),
      power_change: () => [[`with.${QUESTION}.power_change`, numbers.power_change]],
      cda_change: () => [[`with.${QUESTION}.cda_change`, numbers.cda_change]],
    };
    store.setAll(changed(numbers).flatMap((name) => places[name]()));
    store.settle();
  }

  return {
    element,
    /** @param {State} state @param {Numbers} numbers */
    update({ units }, numbers) {
      const percent = (/** @type {number} */ share) => show.percent(Math.abs(share), 1).replace(".0", "");
      /** @type {Record<string, string>} */
      const words = {
        power_w: show.quantity("power", numbers.power_w, units, { digits: 0 }),
        cda_m2: `a CdA of ${show.quantity("area", numbers.cda_m2, units)}`,
        power_change: `${percent(numbers.power_change)} more power`,
        cda_change: `${percent(numbers.cda_change)} less drag`,
      };
      const names = changed(numbers);
      along.hidden = names.length === 0;
      say(told, names.length
        ? ["You changed ", ...names.flatMap((name, i) => [i === 0 ? "" : i === names.length - 1 ? " and " : ", ", strong(words[name])]), ". Bring that along to “More power, or less drag?”, or open it with the numbers that are there."]
        : ["The rider of this story is not you. “More power, or less drag?” asks the same of your own power, position, course and day, and says how sure the answer is."]);
    },
  };
}
