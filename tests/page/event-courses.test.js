// @ts-check
/** Events with a course of their own: filled in, measured, and carried by a link. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fields, scenario_version, usual_events, usual_metric_events } from "fasterby-tables";
import { risesM } from "../../www/sheet/rises.js";
import { decode, encode } from "../../www/state/address.js";
import { eventLengthM, fieldKey, scenarioFiller } from "../../www/state/scenario.js";
import { speaking } from "./support.js";

const points = [0, 4000, 9000].map((distance_m, i) => ({
  distance_m,
  elevation_m: [20, 90, 60][i],
  bearing_deg: 40 * i,
}));
const hill = { kind: /** @type {const} */ ("profile"), points };
const flat = { kind: /** @type {const} */ ("simple"), distance_m: 12_000 };
const tables = {
  fields,
  version: scenario_version,
  usualEvents: usual_events,
  usualMetricEvents: usual_metric_events,
};

test("an event is as long as its own course, or as it says", () => {
  assert.deepEqual(
    [
      { name: "", course: hill },
      { name: "", course: flat },
      { name: "", distance_m: 16_000 },
    ].map(eventLengthM),
    [9000, 12_000, 16_000],
  );
  assert.equal(risesM(hill), 70);
});

test("an event's own course is filled in as the scenario's, and its numbers are the same fields", async () => {
  await speaking("en");
  const { fill, field } = scenarioFiller(tables);
  const events = [
    { name: "", course: flat },
    { name: "", course: hill },
    { name: "", distance_m: 9000 },
  ];
  const filled = fill({ course: flat, events });
  assert.deepEqual(filled.events, [{ name: "", course: filled.course }, events[1], events[2]]);
  assert.equal(fieldKey("scenario.events[3].course.grade.sd"), "course.grade");
  assert.equal(field("scenario.events[3].course.grade"), field("scenario.course.grade"));
});

test("a link carries the course that an event has of its own", async () => {
  const defaults = { scenario: { fasterby: scenario_version, events: [] }, with: () => ({}) };
  const events = [
    { name: "flat", distance_m: 16_000 },
    { name: "the hill", course: hill },
  ];
  const now = { question: "finish-time", scenario: { ...defaults.scenario, events }, with: {} };
  const link = await encode(now, { scenario: defaults.scenario, with: {} });
  assert.deepEqual((await decode(link, defaults))?.scenario.events, events);
});
