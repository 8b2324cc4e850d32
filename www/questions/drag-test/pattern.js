// @ts-check
/** Positions given to all laps of a ride at once, by the order in which they were ridden. */

import { choice } from "../../parts/choice.js";
import { html, set } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { positionName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { LapForm } from "../../types/page.d.ts" */

const words = book("drag-test");
const AT = "with.drag-test.laps";
/** The orders that there are, each repeated to the end: 0 is the first position, 1 the second. */
const ORDERS = /** @type {const} */ ({ abba: [0, 1, 1, 0], ab: [0, 1], aabb: [0, 0, 1, 1], a: [0] });

/** @param {Tools} tools @param {() => { lap: LapForm, at: number }[]} ownLaps */
export function patternPick({ store }, ownLaps) {
  let order = /** @type {keyof typeof ORDERS} */ ("abba");
  const pair = [0, 1];
  const orderPick = choice({
    label: words("order"),
    options: Object.keys(ORDERS).map((name) => ({
      value: name,
      name: words(`order.${/** @type {keyof typeof ORDERS} */ (name)}`),
    })),
    onChange: (value) => {
      order = /** @type {keyof typeof ORDERS} */ (value);
    },
  });
  const [first, second] = [0, 1].map((place) =>
    choice({
      label: words(place === 0 ? "firstPosition" : "secondPosition"),
      options: [],
      onChange: (value) => {
        pair[place] = Number(value);
      },
    }),
  );
  const assign = html("button", { type: "button" }, words("assign"));
  assign.addEventListener("click", () => {
    const all = [...store.at(AT)];
    const turns = ORDERS[order];
    for (const [place, { lap, at }] of ownLaps().entries())
      all[at] = { ...lap, position: pair[turns[place % turns.length]] };
    store.set(AT, all);
  });
  const sentence = words.parts("assignOrder", {
    order: orderPick.element,
    first: first.element,
    second: second.element,
  });
  const element = html("p", { class: "pattern" }, ...sentence, " ", assign);
  return {
    element,
    /** @param {State} state @param {number} laps */
    update(state, laps) {
      const { positions } = state.scenario;
      const options = positions.map((_, place) => ({ value: String(place), name: positionName(state, place) }));
      for (const place of [0, 1]) if (pair[place] >= positions.length) pair[place] = 0;
      first.update({ options, value: String(pair[0]) });
      second.update({ options, value: String(pair[1]) });
      orderPick.update({ value: order });
      set(element, { hidden: laps < 2 || positions.length < 2 });
    },
  };
}
