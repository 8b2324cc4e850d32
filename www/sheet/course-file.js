// @ts-check
/** A course made of a ride file or a route, and a course cut, turned round, ridden there and back, or repeated. The core makes all of them. */

import { asCoreError, ask, ready } from "../core.js";
import { h } from "../frame/dom.js";
import { errorWords, labelOf } from "../frame/field-words.js";
import { ownNumbers } from "../frame/own-numbers.js";
import { fileOpener } from "../recordings/opener.js";
import { courseLengthM } from "../state/scenario.js";
import { quantity } from "../units.js";
import { book } from "../words/index.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Recording } from "../recordings/read.js" */
/** @import { State } from "../state/history.js" */
/** @import { CourseAnswer } from "../types/core.d.ts" */

const words = book("page");
const say = book("sheet");
const QUESTION = "course";
const SMOOTH = "with.smooth_m";
const FROM = "with.from_m";
const TO = "with.to_m";
const TIMES = "with.times";

/** @param {Page} page */
export function courseFile(page) {
  const { store } = page;
  /** The road of the file that was opened last. @type {{ name: string, columns: object } | null} */
  let opened = null;
  const open = fileOpener({ name: say("course.open"), multiple: false, units: () => store.get().units }, take);
  const values = {
    [SMOOTH]: page.field(SMOOTH)?.default ?? 0,
    [FROM]: 0,
    [TO]: courseLengthM(store.get().scenario.course),
    [TIMES]: 2,
  };
  const numbers = ownNumbers(page, values, (path) => path === SMOOTH && makeOfFile());
  const about = h("p", { class: "row-hint", role: "status" });
  const smoothing = h(
    "div",
    { class: "row" },
    h("span", { class: "row-label" }, labelOf(SMOOTH)),
    numbers[SMOOTH].element,
    numbers[SMOOTH].note,
  );
  const file = h("div", { hidden: true }, about, smoothing);
  /** @param {"turnRound" | "thereAndBack" | "keepPart" | "rideLaps"} key @param {() => object} change */
  const button = (key, change) => h("button", { type: "button", onclick: () => edit(change()) }, say(`course.${key}`));
  const edits = h(
    "div",
    { class: "course-edits" },
    h(
      "p",
      { class: "row-actions" },
      button("turnRound", () => ({ reversed: true })),
      button("thereAndBack", () => ({ out_and_back: true })),
    ),
    h(
      "p",
      { class: "row-actions" },
      h("span", {}, ...say.parts("course.part", { from: numbers[FROM].element, to: numbers[TO].element })),
      " ",
      button("keepPart", () => ({ from_m: values[FROM], to_m: values[TO] })),
    ),
    h(
      "p",
      { class: "row-actions" },
      h("span", {}, ...say.parts("course.laps", { times: numbers[TIMES].element })),
      " ",
      button("rideLaps", () => ({ times: values[TIMES] })),
    ),
    ...[FROM, TO, TIMES].map((path) => numbers[path].note),
  );

  /** @param {Recording} recording @param {{ file: { name?: string } }} wanted */
  function take({ columns }, { file: { name = "" } }) {
    const { latitude_deg, longitude_deg, elevation_m, distance_m } = columns;
    opened = { name, columns: { latitude_deg, longitude_deg, elevation_m, distance_m } };
    makeOfFile();
  }

  async function makeOfFile() {
    if (!opened) return;
    const { name, columns } = opened;
    const made = await courseOf({ with: { recordings: [{ columns }], smooth_m: values[SMOOTH] } });
    if (!made || opened.columns !== columns) return;
    const { units } = store.get();
    const climb = (/** @type {number | null} */ m) => quantity("height", m ?? 0, units, { digits: 0 });
    const sentences = [
      made.has_elevation
        ? say("course.climbs", {
            name,
            recorded: climb(made.recorded_climb_m),
            smoothed: climb(made.smoothed_climb_m),
          })
        : say("course.noHeights", { name }),
      ...(made.has_bearings ? [] : [say("course.noPositions")]),
    ];
    file.hidden = false;
    smoothing.hidden = !made.has_elevation;
    about.textContent = sentences.join(" ");
    use(made);
  }

  /** @param {object} change */
  async function edit(change) {
    const { scenario } = store.get();
    const made = await courseOf({ scenario: { course: scenario.course }, with: change });
    if (made && store.get().scenario === scenario) use(made);
  }

  /** What the core makes of it; what is wrong is said. @param {object} request @returns {Promise<CourseAnswer | null>} */
  async function courseOf(request) {
    try {
      await ready(QUESTION);
      open.complain("");
      return /** @type {CourseAnswer} */ (/** @type {unknown} */ (ask(QUESTION, request)));
    } catch (thrown) {
      open.complain(say("courseUnchanged", { why: errorWords(asCoreError(thrown), store.get().units) }));
      return null;
    }
  }

  /** @param {CourseAnswer} made */
  function use({ course, distance_m, climb_m }) {
    store.set("scenario.course", course);
    const { units } = store.get();
    page.notify(
      say("course.now", {
        distance: quantity("distance", distance_m, units, { digits: 1 }),
        climb: quantity("height", climb_m, units, { digits: 0 }),
      }),
      { label: words("undo"), run: store.undo },
    );
  }

  /** @type {unknown} */
  let measured;
  return {
    file: h("div", { class: "course-file" }, open.element, file),
    edits,
    /** @param {State} state */
    update(state) {
      const { course } = state.scenario;
      // The whole of another course is kept until its rider says which part.
      if (course !== measured) [values[FROM], values[TO]] = [0, courseLengthM(course)];
      measured = course;
      for (const number of Object.values(numbers)) number.update(state);
    },
  };
}
