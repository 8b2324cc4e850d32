// @ts-check
/** Group of the sheet: where the ride goes, in one line or as surveyed points. */

import { h } from "../frame/dom.js";
import { errorWords } from "../frame/field-words.js";
import { uniqueId } from "../parts/html.js";
import { amountOf, courseLengthM } from "../state/scenario.js";
import { book } from "../words/index.js";
import { courseFile } from "./course-file.js";
import { courseKeeping } from "./course-keeping.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";
import { columnWords, pointsText, readPoints } from "./points-text.js";
import { stopsAndFeeding } from "./stops.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */
/** @import { State } from "../state/history.js" */
/** @import { Course } from "../types/page.d.ts" */

const say = book("sheet");

const GIVEN = "given";
const TURN = "scenario.course.turn_radius_m";
const LASTING = "scenario.course.duration_s";
const [DISTANCE, TIME] = ["distance", "time"];

/** @param {Page} page @returns {Group} */
export function course(page) {
  const { store, filler, check } = page;
  const kind = h(
    "select",
    { onchange: () => changeKind(kind.value) },
    h("option", { value: "simple" }, say("course.simple")),
    h("option", { value: "profile" }, say("course.profile")),
  );

  const by = h(
    "select",
    { onchange: () => goBy(by.value) },
    h("option", { value: DISTANCE }),
    h("option", { value: TIME }, say("by.time")),
  );
  const time = numberRow(page, LASTING, { hint: say("courseTimed") });
  const rows = ["distance_m", "grade", "bearing_deg"].map((key) =>
    numberRow(page, `scenario.course.${key}`, { meaning: key === "grade" ? "ground" : null }),
  );
  const outAndBack = h("input", {
    type: "checkbox",
    onchange: () => store.set("scenario.course.out_and_back", outAndBack.checked),
  });
  const turn = numberRow(page, TURN);
  const turns = h("input", {
    type: "checkbox",
    onchange: () => store.set(TURN, turns.checked ? filler.fresh("course.turn_radius_m") : undefined),
  });
  const turnPart = h("div", {}, h("label", { class: "check" }, turns, say("turnPart")), turn.element);
  const simple = h(
    "div",
    {},
    ...rows.map((row) => row.element),
    h("label", { class: "check" }, outAndBack, say("outAndBack")),
    turnPart,
  );
  const windless = h("input", {
    type: "checkbox",
    onchange: () => store.set("scenario.course.heading", windless.checked ? "ignore" : undefined),
  });

  const ids = { hint: uniqueId("hint"), wrong: uniqueId("wrong") };
  const hint = h("p", { class: "row-hint", id: ids.hint });
  const wrong = h("p", { class: "wrong", id: ids.wrong, role: "alert", hidden: true });
  const text = h("textarea", {
    rows: 10,
    spellcheck: "false",
    "aria-label": say("points"),
    "aria-describedby": `${ids.hint} ${ids.wrong}`,
  });
  const keeping = courseKeeping(page);
  const made = courseFile(page, keeping.propose);
  const profile = h(
    "div",
    {},
    hint,
    text,
    wrong,
    h("button", { type: "button", onclick: usePoints }, say("usePoints")),
    made.edits,
  );
  /** @type {unknown} */
  let written;

  const start = h(
    "select",
    {
      onchange: () =>
        store.set(
          "scenario.start",
          start.value === GIVEN ? { speed_m_s: filler.fresh("start.speed_m_s") } : start.value,
        ),
    },
    h("option", { value: "standing" }, say("start.standing")),
    h("option", { value: "rolling" }, say("start.rolling")),
    h("option", { value: GIVEN }, say("start.given")),
  );
  const startSpeed = numberRow(page, "scenario.start.speed_m_s");
  const stops = stopsAndFeeding(page);

  /** How long the course is given as. @param {string} wanted */
  function goBy(wanted) {
    const { duration_s: _, ...road } = store.get().scenario.course;
    const { distance_m: __, ...rest } = road;
    const timed = { ...rest, duration_s: page.field(LASTING)?.default };
    store.set("scenario.course", wanted === TIME ? timed : filler.course(road));
  }

  /** @param {string} wanted */
  function changeKind(wanted) {
    const { duration_s, heading, ...road } = store.get().scenario.course;
    const course = /** @type {Course} */ (filler.course(road));
    const stays = { ...(duration_s && { duration_s }), ...(heading && { heading }) };
    if (wanted === "simple") {
      const { distance_m, ...simple } = /** @type {Course} */ (filler.course({ distance_m: courseLengthM(course) }));
      store.set("scenario.course", { ...simple, ...(!duration_s && { distance_m }), ...stays });
    } else {
      const [distance_m, grade, bearing_deg] = [course.distance_m, course.grade, course.bearing_deg].map((held) =>
        amountOf(held ?? 0),
      );
      const turn_m = course.out_and_back ? distance_m / 2 : distance_m;
      const start = { distance_m: 0, elevation_m: 0, bearing_deg };
      const turn = { distance_m: turn_m, elevation_m: turn_m * grade, bearing_deg: (bearing_deg + 180) % 360 };
      const points = course.out_and_back
        ? [start, turn, { ...turn, distance_m, elevation_m: 0 }]
        : [start, { ...turn, bearing_deg }];
      store.set("scenario.course", { kind: "profile", points, ...stays });
    }
  }

  function usePoints() {
    const read = readPoints(text.value, store.get().units);
    if ("message" in read) return complain(say("courseUnchanged", { why: read.message }));
    const course = { ...store.get().scenario.course, points: read.points };
    const refused = check({ ...store.get().scenario, course });
    if (refused) return complain(say("courseUnchanged", { why: refused }));
    complain("");
    store.set("scenario.course", course);
    page.notify(say("pointsUsed", { count: read.points.length }));
  }

  /** @param {string} message */
  function complain(message) {
    wrong.hidden = !message;
    wrong.textContent = message;
    text.setAttribute("aria-invalid", String(Boolean(message)));
  }

  /** @param {State} state */
  function showPoints({ scenario, units }) {
    hint.textContent = say("pointsHint", { columns: columnWords(units) });
    if (written === scenario.course && document.activeElement === text) return;
    const shown = pointsText(scenario.course.points ?? [], units);
    if (written !== scenario.course || text.dataset.units !== units.distance + units.height) {
      text.value = shown;
      text.dataset.units = units.distance + units.height;
      written = scenario.course;
      complain("");
    }
  }

  return {
    title: say("group.course"),
    covers: "course start stops feeding",
    element: h(
      "div",
      {},
      h("label", { class: "row" }, h("span", { class: "row-label" }, say("courseAs")), kind),
      h("label", { class: "row" }, h("span", { class: "row-label" }, say("courseBy")), by),
      time.element,
      made.file,
      made.presets,
      simple,
      profile,
      h("label", { class: "check" }, windless, say("windIgnored")),
      h("label", { class: "row" }, h("span", { class: "row-label" }, say("start")), start),
      startSpeed.element,
      stops.element,
      keeping.element,
      h("p", { class: "caution" }, say("courseCaution")),
    ),
    update(state, error) {
      const { course, start: starts } = state.scenario;
      const isProfile = course.kind === "profile";
      windless.checked = course.heading === "ignore";
      kind.value = course.kind;
      const timed = course.duration_s !== undefined;
      by.value = timed ? TIME : DISTANCE;
      by.options[0].textContent = say(isProfile ? "by.points" : "by.distance");
      time.element.hidden = !timed;
      rows[0].element.hidden = timed;
      const aboutTime = timed && time.update(state, error);
      simple.hidden = isProfile;
      profile.hidden = !isProfile;
      const atSpeed = typeof starts === "object";
      start.value = atSpeed ? GIVEN : starts;
      startSpeed.element.hidden = !atSpeed;
      const aboutStops = stops.update(state, error);
      const aboutStart = (atSpeed && startSpeed.update(state, error)) || aboutStops;
      if (!isProfile) {
        outAndBack.checked = course.out_and_back === true;
        turns.checked = course.turn_radius_m !== undefined;
        turnPart.hidden = !outAndBack.checked;
        turn.element.hidden = !turns.checked;
        const shown = [...rows.slice(timed ? 1 : 0), ...(turns.checked && outAndBack.checked ? [turn] : [])];
        return updateRows(shown, state, error) || aboutStart || aboutTime;
      }
      showPoints(state);
      made.update(state);
      const about = !aboutTime && (error?.field.startsWith("scenario.course") ?? false);
      if (error && about) complain(errorWords(error, state.units));
      return about || aboutStart || aboutTime;
    },
    row(path) {
      // Where points are asked for, the course becomes one that has them.
      if (path === "scenario.course.points" && store.get().scenario.course.kind !== "profile") {
        changeKind("profile");
        [simple.hidden, profile.hidden] = [true, false];
      }
      if (path.startsWith("scenario.start")) return startSpeed.element.hidden ? null : startSpeed;
      if (path === LASTING && !time.element.hidden) return time;
      if (/^scenario\.(stops|feeding)/.test(path)) return findRow(stops.rows, path);
      if (store.get().scenario.course.kind === "profile")
        return { path, element: text, update: () => false, focus: () => text.focus() };
      return findRow(
        [...rows.filter(({ element }) => !element.hidden), ...(turn.element.hidden || turnPart.hidden ? [] : [turn])],
        path,
      );
    },
  };
}
