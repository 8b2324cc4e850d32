// @ts-check
/** A course made of a ride file or a route, or drawn; and a course cut, turned round, ridden there and back, repeated, or moved point by point. The core makes or checks all of them. */

import { asCoreError, ask, ready } from "../core.js";
import { h } from "../frame/dom.js";
import { errorWords, labelOf } from "../frame/field-words.js";
import { ownNumbers } from "../frame/own-numbers.js";
import { fileOpener } from "../recordings/opener.js";
import { aboutCourse, courseLengthM } from "../state/scenario.js";
import { quantity } from "../units.js";
import { book } from "../words/index.js";
import { courseChart, MOST_MOVED } from "./course-chart.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Recording } from "../recordings/read.js" */
/** @import { State } from "../state/history.js" */
/** @import { MovePhase } from "../parts/handle.js" */
/** @import { CourseAnswer, Preset } from "../types/core.d.ts" */
/** @import { Course } from "../types/page.d.ts" */
/** @import { Units } from "../units.js" */

const words = book("page");
const say = book("sheet");
const QUESTION = "course";
const SMOOTH = "with.smooth_m";
const FROM = "with.from_m";
const TO = "with.to_m";
const TIMES = "with.times";
const HEIGHT = "scenario.course.points.elevation_m";
/** What the invented shapes are called. @type {Record<Preset, "flat" | "rolling" | "oneClimb" | "outAndBack">} */
const PRESETS = { flat: "flat", rolling: "rolling", one_climb: "oneClimb", out_and_back: "outAndBack" };

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
    step_m: page.field(HEIGHT)?.step,
    onPoint: movePoint,
  });
  const movePoints = h(
    "button",
    {
      type: "button",
      "aria-pressed": "false",
      onclick: () => {
        movePoints.setAttribute("aria-pressed", String(!isMoving()));
        showPart();
      },
    },
    say("course.movePoints"),
  );
  const refusal = h("p", { class: "wrong", role: "alert", hidden: true });
  const about = h("p", { class: "row-hint", role: "status" });
  const smoothing = h(
    "div",
    { class: "row" },
    h("span", { class: "row-label" }, labelOf(SMOOTH)),
    numbers[SMOOTH].element,
    numbers[SMOOTH].note,
  );
  const file = h("div", { hidden: true }, about, smoothing);
  /** @param {"turnRound" | "thereAndBack" | "keepPart" | "rideLaps" | "flat" | "rolling" | "oneClimb" | "outAndBack"} key @param {() => object} change */
  const button = (key, change) => h("button", { type: "button", onclick: () => edit(change()) }, say(`course.${key}`));
  const presets = h(
    "div",
    { class: "course-edits" },
    h("p", { class: "row-hint" }, say("course.draw")),
    h(
      "p",
      { class: "row-actions" },
      ...Object.entries(PRESETS).map(([preset, key]) => button(key, () => ({ preset }))),
    ),
  );
  const edits = h(
    "div",
    { class: "course-edits" },
    chart.element,
    refusal,
    h(
      "p",
      { class: "row-actions" },
      movePoints,
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
    const made = await courseOf({ scenario: aboutCourse(scenario), with: change });
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

  /** One drag is one step of undo. @param {number} at @param {number} elevation_m @param {MovePhase} phase */
  function movePoint(at, elevation_m, phase) {
    if (phase === "commit") return store.settle();
    const { scenario, units } = store.get();
    const { points = [] } = scenario.course;
    const course = {
      ...scenario.course,
      points: points.map((point, k) => (k === at ? { ...point, elevation_m } : point)),
    };
    const why = page.check({ ...scenario, course });
    refusal.hidden = !why;
    refusal.textContent = why ? say("courseUnchanged", { why }) : "";
    // The point goes back to where the course still has it.
    if (why) return chart.update(scenario.course, partOf(), units, true);
    moved = course;
    store.set("scenario.course", course, { merge: `${HEIGHT} ${at}` });
  }

  const isMoving = () => movePoints.getAttribute("aria-pressed") === "true" && !movePoints.hidden;
  const partOf = () => ({ from_m: values[FROM], to_m: values[TO] });

  /** The part that is chosen, in its numbers and on the chart. */
  function showPart() {
    const state = store.get();
    const { course } = state.scenario;
    movePoints.hidden = (course.points?.length ?? 0) > MOST_MOVED;
    const shown = { course, units: state.units, ...partOf(), moving: isMoving() };
    for (const number of Object.values(numbers)) number.update(state);
    if (Object.entries(shown).some(([key, value]) => drawn?.[/** @type {keyof typeof shown} */ (key)] !== value)) {
      if (drawn && drawn.course !== course) refusal.hidden = true;
      chart.update(shown.course, shown, shown.units, shown.moving);
    }
    drawn = shown;
  }

  /** What the chart shows. @type {{ course: Course, units: Units, from_m: number, to_m: number, moving: boolean } | null} */
  let drawn = null;
  /** The course whose point was moved last. @type {Course | null} */
  let moved = null;
  return {
    file: h("div", { class: "course-file" }, open.element, file),
    presets,
    edits,
    /** @param {State} state */
    update({ scenario: { course } }) {
      // The whole of another course is kept until its rider says which part.
      if (course !== drawn?.course && course !== moved) [values[FROM], values[TO]] = [0, courseLengthM(course)];
      showPart();
    },
  };
}
