// @ts-check
/** Group of the sheet: the events that count. */

import most from "fasterby-most";
import { h } from "../frame/dom.js";
import { keyedList } from "../parts/keyed-list.js";
import { eventLengthM, eventSeconds } from "../state/scenario.js";
import { quantity } from "../units.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { nameInput, removeButton } from "./list-parts.js";
import { numberRow } from "./number-row.js";
import { risesM } from "./rises.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Course, Event } from "../types/page.d.ts" */
/** @import { Units } from "../units.js" */
/** @import { Group } from "./groups.js" */

const say = book("sheet");
const words = book("page");
const ALL = "scenario.events";
/** Fixed times that events are customarily held over, in hours (common practice, no source). */
const USUAL_HOURS = [12, 24];
const HALF_A_DAY_S = 43_200;
const [DISTANCE, TIME] = ["distance", "time"];

/** @param {Page} page @returns {Group} */
export function events(page) {
  const { store } = page;
  const list = h("div", {});
  const addOne = (/** @type {Partial<Event>} */ event) => store.set(ALL, [...store.at(ALL), { name: "", ...event }]);
  const add = h(
    "p",
    { class: "row-actions" },
    h(
      "button",
      { type: "button", onclick: () => addOne({ distance_m: lengthM(store.at(ALL).at(-1)) }) },
      say("addEvent"),
    ),
    ...USUAL_HOURS.map((hours) =>
      h(
        "button",
        { type: "button", onclick: () => addOne({ duration_s: hours * 3600 }) },
        say("addHours", { count: hours }),
      ),
    ),
  );
  const pieces = keyedList(list, (index) => {
    const number = index + 1;
    const name = nameInput(page, `${ALL}[${index}].name`, say("eventName", { number }));
    const row = numberRow(page, `${ALL}[${index}].distance_m`, { label: say("eventDistance", { number }) });
    const time = numberRow(page, `${ALL}[${index}].duration_s`, { label: say("eventTime", { number }) });
    const by = h(
      "select",
      { "aria-label": say("eventByLabel", { number }), onchange: () => goBy(index, by.value) },
      h("option", { value: DISTANCE }),
      h("option", { value: TIME }, say("by.time")),
    );
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
      element: h(
        "div",
        { class: "piece" },
        label,
        h("label", { class: "row" }, h("span", { class: "row-label" }, say("eventBy")), by),
        row.element,
        time.element,
        road,
        actions,
      ),
      name,
      by,
      row,
      time,
      road,
      give,
      take,
      ride,
      remove,
    };
  });
  /** Those that are shown: the time of an event, or the distance of one without a course of its own. */
  const rows = () => pieces.rows().flatMap(({ row, time }) => [row, time].filter(({ element }) => !element.hidden));

  /** How far an event is, or a usual event where it goes by time. @param {Event} event */
  function lengthM(event) {
    const length_m = eventLengthM(event);
    return Number.isFinite(length_m) ? length_m : (page.field(`${ALL}[0].distance_m`)?.default ?? 0);
  }

  /** @param {number} index @param {Partial<Event>} changes what takes the place of its distance, time and course */
  function change(index, changes) {
    const { distance_m: _, duration_s: __, course: ___, ...rest } = store.get().scenario.events[index];
    store.set(`${ALL}[${index}]`, { ...rest, ...changes });
  }

  /** A course without its own time, and the time beside it. @param {Course} course @param {number} [duration_s] @returns {Partial<Event>} */
  function apart({ duration_s: own_s, ...road }, duration_s = own_s) {
    return duration_s === undefined ? { course: road } : { course: road, duration_s };
  }

  /** @param {number} index @param {string} wanted */
  function goBy(index, wanted) {
    const event = store.get().scenario.events[index];
    if (wanted === TIME) change(index, event.course ? apart(event.course, HALF_A_DAY_S) : { duration_s: HALF_A_DAY_S });
    else if (event.course)
      change(index, { course: /** @type {Course} */ (page.filler.course(apart(event.course).course)) });
    else change(index, { distance_m: lengthM(event) });
  }

  /** The course as it is ridden now becomes the event's own. @param {number} index */
  function giveCourse(index) {
    change(index, apart(store.get().scenario.course, store.get().scenario.events[index].duration_s));
    page.notify(say("courseGiven", { number: index + 1 }));
  }

  /** @param {number} index */
  function takeCourse(index) {
    const event = store.get().scenario.events[index];
    const duration_s = eventSeconds(event);
    change(index, duration_s === undefined ? { distance_m: lengthM(event) } : { duration_s });
    page.notify(say("courseTaken", { number: index + 1 }));
  }

  /** The event's own course becomes the one that questions about a single ride are asked of. @param {number} index */
  function rideCourse(index) {
    const event = store.get().scenario.events[index];
    const duration_s = eventSeconds(event);
    const { distance_m: _, ...timed } = { ...event.course, duration_s };
    store.set("scenario.course", duration_s === undefined ? event.course : timed);
    page.notify(say("courseRidden", { number: index + 1 }), { label: words("undo"), run: store.undo });
  }

  return {
    title: say("group.events"),
    covers: "events",
    element: h("div", {}, h("p", { class: "row-hint" }, say("eventsHint")), list, add),
    update(state, error) {
      const shown = pieces.update(state.scenario.events.map((_, index) => String(index)));
      add.hidden = shown.length >= most.events;
      for (const [index, { name, by, row, time, road, give, take, ride, remove }] of shown.entries()) {
        const event = state.scenario.events[index];
        name.update();
        remove.hidden = shown.length === 1;
        const timed = eventSeconds(event) !== undefined;
        by.value = timed ? TIME : DISTANCE;
        by.options[0].textContent = say(event.course ? "by.course" : "by.distance");
        row.element.hidden = timed || Boolean(event.course);
        // The time of a course that came with one stands there, and is not edited here.
        time.element.hidden = event.duration_s === undefined;
        give.hidden = Boolean(event.course);
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
  if (eventSeconds(event) !== undefined) return say(event.course ? "eventOwnTimed" : "eventTimed");
  if (!event.course) return say("eventStretched");
  const distance = quantity("distance", eventLengthM(event), units);
  if (event.course.kind === "simple") return say("eventOwnCourse", { distance });
  return say("eventOwnProfile", { distance, climb: quantity("height", risesM(event.course), units) });
}
