// @ts-check
/** The course in a sentence: what kind of road, and its slope where it has one. */

import { choice } from "../../parts/choice.js";
import { amountOf, courseLengthM } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { clause } from "./clause.js";

/** @import { Tools } from "../index.js" */
/** @import { Course } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */

const words = book("shared");
const AT = "scenario.course";
/** A hill for a start, which the sentence then lets the rider change. */
const A_HILL = 0.04;

/** @type {readonly ["outAndBack", "oneWay", "hill", "surveyed"]} */
const KINDS = ["outAndBack", "oneWay", "hill", "surveyed"];

/** @param {Course} course @returns {typeof KINDS[number]} */
export function courseKind(course) {
  if (course.kind === "profile") return "surveyed";
  if (amountOf(course.grade ?? 0) !== 0) return "hill";
  return course.out_and_back ? "outAndBack" : "oneWay";
}

/** A field of the sentence: "a flat out-and-back road", "steady hill rising 4 %". @param {Tools} tools */
export function courseChoice(tools) {
  const { store } = tools;
  const kind = choice({
    label: words("kindOfCourse"),
    path: AT,
    options: KINDS.map((value) => ({ value, name: words(value) })),
    onChange: change,
  });
  const grade = tools.number({ path: `${AT}.grade`, meaning: "ground" });
  const hill = clause(" ", ...words.parts("rising", { grade }));
  const field = clause(kind, hill);

  /** @param {string} wanted */
  function change(wanted) {
    const { course } = store.get().scenario;
    if (wanted === "surveyed") {
      tools.openSheet(`${AT}.points`);
      return;
    }
    const {
      grade: _slope,
      out_and_back: _back,
      ...rest
    } = course.kind === "profile" ? { kind: "simple", distance_m: courseLengthM(course), bearing_deg: 0 } : course;
    store.set(AT, { ...rest, grade: wanted === "hill" ? A_HILL : 0, out_and_back: wanted === "outAndBack" });
  }

  return {
    ...field,
    /** @param {State} state @param {import("../../core.js").CoreError | null} error @returns {boolean} */
    update(state, error) {
      const now = courseKind(state.scenario.course);
      // A slope of 0 that is being typed is not yet a flat road.
      const typing = grade.input.matches(":focus");
      kind.update({ value: typing ? "hill" : now });
      hill.show(now === "hill" || typing);
      return now !== "surveyed" && grade.update(state, error);
    },
  };
}
