// @ts-check
/** What the core is given of recorded laps. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { askedLaps, openLaps } from "../../www/recordings/asked-laps.js";
import { heldRecording, hold } from "../../www/recordings/held.js";

/** @import { Recording } from "../../www/recordings/read.js" */

const RECORDS = 600;

/** A ride of ten minutes, a record each second. @param {number} power_w @returns {Recording} */
function ride(power_w) {
  const column = (/** @type {(second: number) => number} */ value) =>
    Float64Array.from({ length: RECORDS }, (_, second) => value(second));
  const missing = () => column(() => Number.NaN);
  return {
    kind: "csv",
    records: RECORDS,
    columns: {
      time_s: column((second) => second),
      distance_m: column((second) => 11 * second),
      speed_m_s: column(() => 11),
      power_w: column(() => power_w),
      elevation_m: missing(),
      latitude_deg: missing(),
      longitude_deg: missing(),
      bearing_deg: missing(),
      temperature_c: missing(),
      cadence_rpm: missing(),
    },
    laps: [],
    rounds: [],
    outline: { time_s: new Float64Array(), east_m: new Float64Array(), north_m: new Float64Array() },
    stops: [],
    notes: [],
    summary: { elapsed_s: RECORDS - 1, distance_m: 11 * (RECORDS - 1), climb_m: null, mean_power_w: power_w },
  };
}

const [first, second] = [hold(ride(200)), hold(ride(210))];

test("the same ride has the same mark, another ride another one", () => {
  assert.equal(hold(ride(200)), first);
  assert.notEqual(first, second);
  assert.equal(heldRecording("no such mark"), undefined);
});

test("laps of rides that are not open are left out, and the others keep their ride", () => {
  const laps = [
    { recording: 0, from_s: 0, to_s: 100 },
    { recording: 1, from_s: 100, to_s: 200 },
    { recording: 2, from_s: 300, to_s: 400, position: 1 },
  ];
  const rides = ["gone", first, second];
  const asked = askedLaps(rides, laps);
  assert.deepEqual(asked.laps, [
    { recording: 0, from_s: 100, to_s: 200 },
    { recording: 1, from_s: 300, to_s: 400, position: 1 },
  ]);
  const powers = asked.recordings?.map(({ columns }) => columns.power_w[0]);
  assert.deepEqual(powers, [200, 210]);
  assert.deepEqual(
    openLaps(rides, laps).map(({ at }) => at),
    [1, 2],
  );
});

test("a recording is cut to what its laps need", () => {
  const asked = askedLaps([first], [{ from_s: 100, to_s: 200 }]);
  const [{ columns }] = asked.recordings ?? [];
  assert.equal(columns.time_s[0], 90);
  assert.equal(columns.time_s.at(-1), 210);
  assert.equal(columns.speed_m_s.length, columns.time_s.length);
});

test("what no page wrote is left to the core, which refuses it", () => {
  for (const [rides, laps] of [
    ["ride", []],
    [[1], []],
    [[first], "laps"],
    [[first], [null]],
    [[first], ["lap"]],
    [null, undefined],
  ]) {
    const asked = askedLaps(rides, laps);
    assert.deepEqual(asked, { rides, laps });
    assert.deepEqual(openLaps("rides", laps), []);
  }
});
