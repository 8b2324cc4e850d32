// @ts-check
/** Courses and events that go by time: filled in, carried by a link, and called by their names. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fields, scenario_version, usual_events, usual_metric_events } from "fasterby-tables";
import { fixedTimeOf } from "../../www/questions/finish-time/fixed-time.js";
import { eventWords, furtherWords, rideName } from "../../www/questions/shared/distance-names.js";
import { decode, encode } from "../../www/state/address.js";
import { eventLengthM, eventSeconds, scenarioFiller } from "../../www/state/scenario.js";
import { open } from "../../www/words/index.js";
import { LANGUAGES, speaking } from "./support.js";

const HALF_A_DAY_S = 43_200;
const { fill, newFor } = scenarioFiller({
  fields,
  version: scenario_version,
  usualEvents: usual_events,
  usualMetricEvents: usual_metric_events,
});
const units = /** @type {const} */ ({
  distance: "km",
  wind: "m/s",
  temperature: "C",
  pressure: "hPa",
  mass: "kg",
  height: "m",
});

test("a course that goes by time is filled in without a distance", async () => {
  await speaking("en");
  const { course } = fill({ course: { duration_s: HALF_A_DAY_S } });
  assert.equal(course.duration_s, HALF_A_DAY_S);
  assert.equal(course.distance_m, undefined);
  assert.notEqual(fill({ course: {} }).course.distance_m, undefined);
});

test("an event that goes by time has that, from itself or its course, and no length", () => {
  for (const event of [
    { name: "", duration_s: HALF_A_DAY_S },
    { name: "", course: { kind: /** @type {const} */ ("simple"), duration_s: HALF_A_DAY_S } },
  ]) {
    assert.equal(eventSeconds(event), HALF_A_DAY_S);
    assert.ok(Number.isNaN(eventLengthM(event)));
  }
  assert.equal(eventSeconds({ name: "", distance_m: 9000 }), undefined);
});

test("a link carries the times in place of the distances", async () => {
  const usual = newFor(units);
  const { distance_m: _, ...road } = usual.course;
  const scenario = {
    ...usual,
    course: { ...road, duration_s: HALF_A_DAY_S },
    events: [{ name: "", duration_s: 2 * HALF_A_DAY_S }, usual.events[0]],
  };
  const link = await encode(
    /** @type {any} */ ({ question: "finish-time", scenario, with: {} }),
    /** @type {any} */ ({ scenario: usual, with: {} }),
  );
  const read = await decode(link, /** @type {any} */ ({ scenario: usual, with: () => ({}) }));
  assert.deepEqual(read?.scenario.course, scenario.course);
  assert.deepEqual(read?.scenario.events, scenario.events);
});

test("the finish time asks how far where the course goes by time, unless a finish time is given", () => {
  const state = (/** @type {object} */ course, /** @type {object} */ own) =>
    /** @type {any} */ ({ scenario: { course }, with: { "finish-time": own } });
  const even = { effort: { kind: "even" } };
  assert.equal(fixedTimeOf(state({ duration_s: HALF_A_DAY_S }, even)), HALF_A_DAY_S);
  assert.equal(fixedTimeOf(state({ duration_s: HALF_A_DAY_S }, { effort: { kind: "time", time_s: 1 } })), undefined);
  assert.equal(fixedTimeOf(state({ duration_s: HALF_A_DAY_S }, { ...even, for_time_s: 3600 })), 3600);
  assert.equal(fixedTimeOf(state({ distance_m: 9000 }, even)), undefined);
});

const SAID = {
  en: ["12 hours", "12 hours (about 417 km)", "3.6 km further", "3.6 km less far", "1:30:00"],
  de: ["12 Stunden", "12 Stunden (etwa 417 km)", "3.6 km weiter", "3.6 km weniger weit", "1:30:00"],
  fr: ["12 heures", "12 heures (environ 417 km)", "3.6 km de plus", "3.6 km de moins", "1:30:00"],
};

test("a ride of a fixed time is called by it, with about how far it is", async () => {
  for (const language of LANGUAGES) {
    await speaking(language);
    await open("shared");
    const said = [
      eventWords({ name: "", duration_s: HALF_A_DAY_S }, units),
      rideName({ distance_m: 417_200, duration_s: HALF_A_DAY_S }, units),
      furtherWords(3600, units),
      furtherWords(-3600, units),
      eventWords({ name: "", duration_s: 5400 }, units),
    ].map((text) => text.replaceAll("\u00a0", " ").replace(",", "."));
    assert.deepEqual(said, SAID[language]);
    assert.equal(eventWords({ name: "mine", duration_s: HALF_A_DAY_S }, units), "mine");
  }
});
