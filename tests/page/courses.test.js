// @ts-check
/** Pasted courses: read as they were meant, or refused by their line. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { readPoints } from "../../www/sheet/points-text.js";
import { choices, LANGUAGES, randomFrom, speaking } from "./support.js";

const COURSES = 40_000;
const LINES_EACH = 5;
const units = /** @type {const} */ ({
  distance: "km",
  wind: "km/h",
  temperature: "C",
  pressure: "hPa",
  mass: "kg",
  height: "m",
});

for (const [index, language] of LANGUAGES.entries()) {
  test(`${COURSES * LINES_EACH} lines of pasted courses are the points that were written, in ${language}`, async () => {
    await speaking(language);
    const { below, oneOf, someOf } = choices(randomFrom(31 + index));
    const garbage = ["0", "1", "5", ".", ",", ";", "\t", " ", "\u202f", "-", "x", "\n", "#", "9".repeat(330), "\u0000"];
    for (let count = 0; count < COURSES; count += 1) {
      const sign = oneOf(["\t", ";", " "]);
      const mark = oneOf([".", ","]);
      const group = sign === " " ? oneOf(["", "\u202f", "\u00a0"]) : oneOf(["", "\u202f", "\u00a0", " "]);
      /** @param {number} whole @param {number} tenths */
      const written = (whole, tenths) =>
        String(whole).replace(/(\d)(?=(\d{3})+$)/g, `$1${group}`) + (tenths ? `${mark}${tenths}` : "");
      let km = 0;
      const lines = Array.from({ length: LINES_EACH }, () => {
        km += 1 + below(900);
        const [height, tenths, turned, radius] = [below(2500), below(10), below(360), below(500) + 5];
        const kind = sign === " " ? oneOf(["two", "three", "four"]) : oneOf(["two", "three", "four", "no bearing"]);
        const cells = [written(km, tenths), written(height, tenths)];
        if (kind === "three") cells.push(String(turned));
        if (kind === "four") cells.push(String(turned), String(radius));
        if (kind === "no bearing") cells.push("", String(radius));
        const point = {
          distance_m: km * 1000 + tenths * 100,
          elevation_m: height + tenths / 10,
          ...((kind === "three" || kind === "four") && { bearing_deg: turned }),
          ...((kind === "four" || kind === "no bearing") && { radius_m: radius }),
        };
        return { text: cells.join(sign), point };
      });
      const read = readPoints(lines.map(({ text }) => text).join("\n"), units);
      if (!("points" in read)) assert.fail(`${JSON.stringify(lines.map(({ text }) => text))}: ${read.message}`);
      lines.forEach(({ text, point }, line) => {
        const got = read.points[line];
        if (Object.keys(got).length !== Object.keys(point).length)
          assert.fail(`${JSON.stringify(text)} is ${JSON.stringify(got)}`);
        for (const [name, value] of Object.entries(point)) {
          if (!(Math.abs(/** @type {any} */ (got)[name] - value) < 1e-6))
            assert.fail(`${JSON.stringify(text)}: ${name} is ${/** @type {any} */ (got)[name]}, not ${value}`);
        }
      });
      const other = readPoints(someOf(garbage, 12), units);
      assert.ok(
        "message" in other
          ? other.message.length > 10
          : other.points.every((point) => Object.values(point).every(Number.isFinite)),
      );
    }
  });
}

test("groups of digits stay together, and an empty bearing is no radius", async () => {
  await speaking("fr");
  for (const space of ["\u202f", "\u00a0", " "]) {
    const read = readPoints(`0\t1${space}010\n1,5\t1${space}020\t\t30`, units);
    assert.deepEqual(read, {
      points: [
        { distance_m: 0, elevation_m: 1010 },
        { distance_m: 1500, elevation_m: 1020, radius_m: 30 },
      ],
    });
  }
});

test("commas that may be decimal marks are refused with a sentence, and part numbers where there is a decimal point", async () => {
  await speaking("en");
  const refused = readPoints("0,5,120\n1,6,130", units);
  assert.ok("message" in refused && refused.message.startsWith("Line 1: a comma may part"));
  assert.deepEqual(readPoints("0,5.5,120\n1,6,130", units), {
    points: [
      { distance_m: 0, elevation_m: 5.5, bearing_deg: 120 },
      { distance_m: 1000, elevation_m: 6, bearing_deg: 130 },
    ],
  });
});

test("the table that the core writes is read in SI, whatever units and decimal mark are the rider's", async () => {
  await speaking("de");
  const table = "distance_m,elevation_m,bearing_deg,radius_m\n0,12.5,,\n1234.5,13,90,8\n2000,-1.25,,12.5\n";
  for (const distance of /** @type {const} */ (["km", "mi"])) {
    assert.deepEqual(readPoints(table, { ...units, distance }), {
      points: [
        { distance_m: 0, elevation_m: 12.5 },
        { distance_m: 1234.5, elevation_m: 13, bearing_deg: 90, radius_m: 8 },
        { distance_m: 2000, elevation_m: -1.25, radius_m: 12.5 },
      ],
    });
  }
  const refused = readPoints(`${table}3000,high,,\n`, units);
  assert.ok("message" in refused && refused.message.includes("high"));
});
