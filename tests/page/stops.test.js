// @ts-check
/** Stops and feeding: filled in, and carried by a link. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fields, scenario_version, usual_events, usual_metric_events } from "fasterby-tables";
import { decode, encode } from "../../www/state/address.js";
import { fieldKey, scenarioFiller } from "../../www/state/scenario.js";
import { speaking } from "./support.js";

const tables = {
  fields,
  version: scenario_version,
  usualEvents: usual_events,
  usualMetricEvents: usual_metric_events,
};
test("what is left out of stops and feeding is filled in, and a scenario without them stays so", async () => {
  await speaking("en");
  const { fill, fresh, part, field } = scenarioFiller(tables);
  const given = fill({ stops: { every_m: 30_000 }, feeding: {} });
  assert.deepEqual(given.stops, { every_m: 30_000, time_s: fresh("stops.time_s") });
  assert.deepEqual(given.feeding, part("feeding"));
  assert.equal(part("stops").every_m, field("scenario.stops.every_m")?.default);
  assert.equal(fieldKey("scenario.feeding.cda_m2.sd"), "feeding.cda_m2");
  const without = fill({});
  assert.ok(!("stops" in without) && !("feeding" in without));
});

test("a link carries stops and feeding", async () => {
  const defaults = { scenario: { fasterby: scenario_version }, with: () => ({}) };
  const stops = { every_m: 25_000, time_s: { value: 60, sd: 20, source: "estimated" } };
  const feeding = { every_s: 900, time_s: 15, cda_m2: 0.35 };
  const now = { question: "finish-time", scenario: { ...defaults.scenario, stops, feeding }, with: {} };
  const link = await encode(now, { scenario: defaults.scenario, with: {} });
  const carried = (await decode(link, defaults))?.scenario;
  assert.deepEqual([carried?.stops, carried?.feeding], [stops, feeding]);
});
