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
import { courseChart } from "./course-chart.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Recording } from "../recordings/read.js" */
/** @import { State } from "../state/history.js" */
/** @import { CourseAnswer } from "../types/core.d.ts" */
/** @import { Course } from "../types/page.d.ts" */
/** @import { Units } from "../units.js" */

const words = book("page");
const say = book("sheet");
const QUESTION = "course";
const SMOOTH = "with.smooth_m";
const FROM = "with.from_m";
const TO = "with.to_m";
const TIMES = "with.times";

/** @param {Page} page @param {(name: string) => void} onOpened a course was made of a file of that name */
export function courseFile(page, onOpened) {
  const { store } = page;
  /** The road of the file that was opened last. @type {{ name: string, track: object } | null} */
  let opened = null;
  const open = fileOpener({ name: say("course.open"), multiple: false, units: () => store.get().units }, take);
  const values = {
    [SMOOTH]: page.field(SMOOTH)?.default ?? 0,
    [FROM]: 0,
    [TO]: courseLengthM(store.get().scenario.course),
    [TIMES]: 2,
  };
  const numbers = ownNumbers(page, values, (path) => (path === SMOOTH ? makeOfFile() : showPart()));
  const chart = courseChart({
    least_m: page.field("scenario.course.distance_m")?.min ?? 0,
    onMove(end, distance_m) {
      values[`with.${end}`] = distance_m;
      showPart();
    },
  });
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
    chart.element,
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
  function take({ columns, is_surveyed }, { file: { name = "" } }) {
    const { latitude_deg, longitude_deg, elevation_m, distance_m, bearing_deg, radius_m, wind_share } = columns;
    opened = {
      name,
      track: {
        columns: { latitude_deg, longitude_deg, elevation_m, distance_m, bearing_deg, radius_m, wind_share },
        is_surveyed,
      },
    };
    makeOfFile();
  }

  async function makeOfFile() {
    if (!opened) return;
    const { name, track } = opened;
    const made = await courseOf({ with: { recordings: [track], smooth_m: values[SMOOTH] } });
    if (!made || opened.track !== track) return;
    const { units } = store.get();
    const climb = (/** @type {number | null} */ m) => quantity("height", m ?? 0, units, { digits: 0 });
    const heights = made.is_surveyed
      ? say("course.surveyed", { name, climb: climb(made.recorded_climb_m) })
      : say("course.climbs", {
          name,
          recorded: climb(made.recorded_climb_m),
          smoothed: climb(made.smoothed_climb_m),
        });
    const sentences = [
      made.has_elevation ? heights : say("course.noHeights", { name }),
      ...(made.has_bearings ? [] : [say(made.is_surveyed ? "course.noBearings" : "course.noPositions")]),
    ];
    file.hidden = false;
    smoothing.hidden = !made.has_elevation || made.is_surveyed;
    about.textContent = sentences.join(" ");
    onOpened(name);
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

  /** The part that is chosen, in its numbers and on the chart. */
  function showPart() {
    const state = store.get();
    const shown = { course: state.scenario.course, units: state.units, from_m: values[FROM], to_m: values[TO] };
    for (const number of Object.values(numbers)) number.update(state);
    if (Object.entries(shown).some(([key, value]) => drawn?.[/** @type {keyof typeof shown} */ (key)] !== value))
      chart.update(shown.course, shown, shown.units);
    drawn = shown;
  }

  /** What the chart shows. @type {{ course: Course, units: Units, from_m: number, to_m: number } | null} */
  let drawn = null;
  return {
    file: h("div", { class: "course-file" }, open.element, file),
    edits,
    /** @param {State} state */
    update({ scenario: { course } }) {
      // The whole of another course is kept until its rider says which part.
      if (course !== drawn?.course) [values[FROM], values[TO]] = [0, courseLengthM(course)];
      showPart();
    },
  };
}
