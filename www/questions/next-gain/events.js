// @ts-check
/** The events that count, and how often each is ridden. */

import { html, say } from "../../parts/html.js";
import { book } from "../../words/index.js";
import { distanceName } from "../shared/distance-choice.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */

const words = book("next-gain");
const AT = "with.next-gain.times_ridden";

/** @param {Tools} tools */
export function eventList(tools) {
  const { store } = tools;
  const rows = html("div", { class: "pairs" });
  const edit = html("button", { type: "button" }, words("editEvents"));
  edit.addEventListener("click", () => tools.openSheet("scenario.events[0].distance_m"));
  const element = html("div", {}, html("p", {}, words("eventsLead")), rows, html("p", { class: "row-actions" }, edit));
  /** @type {{ name: HTMLElement, field: ReturnType<Tools["number"]> }[]} */
  let made = [];

  /** @param {{ name?: string, distance_m: number }} event @param {State} state */
  const nameOf = ({ name, distance_m }, state) => name || distanceName(distance_m, state.units);

  /** @param {State} state */
  function build(state) {
    made = state.scenario.events.map((event, at) => ({
      name: html("span", { class: "row-label" }),
      field: tools.number({
        path: `${AT}[${at}]`,
        kind: "ratio",
        digits: 0,
        step: 1,
        label: words("timesLabel", { event: nameOf(event, state) }),
        value: () => store.at(AT)?.[at] ?? 1,
        changes: (times) => [
          [AT, store.get().scenario.events.map((_, i) => (i === at ? times : (store.at(AT)?.[i] ?? 1)))],
        ],
      }),
    }));
    rows.replaceChildren(
      ...made.map(({ name, field }) =>
        html(
          "div",
          { class: "row" },
          name,
          html("span", { class: "row-controls" }, field.element, html("span", { class: "soft" }, words("timesRidden"))),
          field.note,
        ),
      ),
    );
  }

  return {
    element,
    nameOf,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      if (made.length !== state.scenario.events.length) build(state);
      for (const [at, { name }] of made.entries()) say(name, nameOf(state.scenario.events[at], state));
      return made.map(({ field }) => field.update(state, error)).includes(true);
    },
  };
}
