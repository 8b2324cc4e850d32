// @ts-check
/** Group of the sheet: the events that count. */

import most from "fasterby-most";
import { h } from "../frame/dom.js";
import { keyedList } from "../parts/keyed-list.js";
import { eventLengthM } from "../state/scenario.js";
import { quantity } from "../units.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { nameInput, removeButton } from "./list-parts.js";
import { numberRow } from "./number-row.js";
import { risesM } from "./rises.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Event } from "../types/page.d.ts" */
/** @import { Units } from "../units.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");
const words = book("page");
const ALL = "scenario.events";

/** @param {Page} page @returns {Group} */
export function events(page) {
  const { store } = page;
  const list = h("div", {});
  const add = h(
    "button",
    {
      type: "button",
      onclick: () => store.set(ALL, [...store.at(ALL), { name: "", distance_m: eventLengthM(store.at(ALL).at(-1)) }]),
    },
    say("addEvent"),
  );
  const pieces = keyedList(list, (index) => {
    const number = index + 1;
    const name = nameInput(page, `${ALL}[${index}].name`, say("eventName", { number }));
    const row = numberRow(page, `${ALL}[${index}].distance_m`, { label: say("eventDistance", { number }) });
    const remove = removeButton(page, ALL, index, say("remove"), say("removeEvent", { number }));
    const label = h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), name.input);
    const road = h("p", { class: "row-hint" });
    const give = h("button", { type: "button", onclick: () => giveCourse(index) }, say("giveCourse"));
    const take = h("button", { type: "button", onclick: () => takeCourse(index) }, say("takeCourse"));
    const ride = h("button", { type: "button", onclick: () => rideCourse(index) }, say("rideCourse"));
    give.setAttribute("aria-label", say("giveEventCourse", { number }));
    take.setAttribute("aria-label", say("takeEventCourse", { number }));
    ride.setAttribute("aria-label", say("rideEventCourse", { number }));
    const actions = h("p", { class: "row-actions" }, give, take, ride, remove);
    return {
      element: h("div", { class: "piece" }, label, row.element, road, actions),
      name,
      row,
      road,
      give,
      take,
      ride,
      remove,
    };
  });
  /** Of events without a course of their own, whose length is their distance. */
  const rows = () => pieces.rows().flatMap(({ row }) => (row.element.hidden ? [] : [row]));

  /** @param {number} index @param {Partial<Event>} changes what takes the place of its distance and course */
  function change(index, changes) {
    const { distance_m: _, course: __, ...rest } = store.get().scenario.events[index];
    store.set(`${ALL}[${index}]`, { ...rest, ...changes });
  }

  /** The course as it is ridden now becomes the event's own. @param {number} index */
  function giveCourse(index) {
    change(index, { course: store.get().scenario.course });
    page.notify(say("courseGiven", { number: index + 1 }));
  }

  /** @param {number} index */
  function takeCourse(index) {
    change(index, { distance_m: eventLengthM(store.get().scenario.events[index]) });
    page.notify(say("courseTaken", { number: index + 1 }));
  }

  /** The event's own course becomes the one that questions about a single ride are asked of. @param {number} index */
  function rideCourse(index) {
    store.set("scenario.course", store.get().scenario.events[index].course);
    page.notify(say("courseRidden", { number: index + 1 }), { label: words("undo"), run: store.undo });
  }

  return {
    title: say("group.events"),
    covers: "events",
    element: h("div", {}, h("p", { class: "row-hint" }, say("eventsHint")), list, add),
    update(state, error) {
      const shown = pieces.update(state.scenario.events.map((_, index) => String(index)));
      add.hidden = shown.length >= most.events;
      for (const [index, { name, row, road, give, take, ride, remove }] of shown.entries()) {
        const event = state.scenario.events[index];
        name.update();
        remove.hidden = shown.length === 1;
        row.element.hidden = give.hidden = Boolean(event.course);
        take.hidden = ride.hidden = !event.course;
        road.textContent = roadWords(event, state.units);
      }
      return updateRows(rows(), state, error);
    },
    row: (path) => findRow(rows(), path) ?? rows()[0] ?? null,
  };
}

/** Which road an event is ridden on. @param {Event} event @param {Units} units */
function roadWords(event, units) {
  if (!event.course) return say("eventStretched");
  const distance = quantity("distance", eventLengthM(event), units);
  if (event.course.kind === "simple") return say("eventOwnCourse", { distance });
  return say("eventOwnProfile", { distance, climb: quantity("height", risesM(event.course), units) });
}
