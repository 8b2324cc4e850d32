// @ts-check
/** The events that count, and how often each is ridden. */

import { html, say } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { book } from "../../words/index.js";
import { eventWords } from "../shared/distance-names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Event } from "../../types/page.d.ts" */

const words = book("next-gain");
const AT = "with.next-gain.times_ridden";

/** @param {Tools} tools */
export function eventList(tools) {
  const { store } = tools;
  const rows = html("div", { class: "pairs" });
  const edit = html("button", { type: "button" }, words("editEvents"));
  edit.addEventListener("click", () => tools.openSheet("scenario.events[0].distance_m"));
  const element = html("div", {}, html("p", {}, words("eventsLead")), rows, html("p", { class: "row-actions" }, edit));
  /** @param {Event} event @param {State} state */
  const nameOf = (event, state) => eventWords(event, state.units);

  const made = keyedList(rows, (at) => {
    const state = store.get();
    const name = html("span", { class: "row-label" });
    const field = tools.number({
      path: `${AT}[${at}]`,
      kind: "ratio",
      digits: 0,
      step: 1,
      label: words("timesLabel", { event: nameOf(state.scenario.events[at], state) }),
      value: () => store.at(AT)?.[at] ?? 1,
      changes: (times) => [
        [AT, store.get().scenario.events.map((_, i) => (i === at ? times : (store.at(AT)?.[i] ?? 1)))],
      ],
    });
    const times = html("span", { class: "soft" }, words("timesRidden"));
    const controls = html("span", { class: "row-controls" }, field.element, times);
    return { element: html("div", { class: "row" }, name, controls, field.note), name, field };
  });

  return {
    element,
    nameOf,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      // Its name is in the label, which is made once.
      const shown = made.update(state.scenario.events.map((event, at) => `${at} ${nameOf(event, state)}`));
      for (const [at, { name }] of shown.entries()) say(name, nameOf(state.scenario.events[at], state));
      return shown.map(({ field }) => field.update(state, error)).includes(true);
    },
  };
}
