// @ts-check
/** Pasted courses: read as they were meant, or refused by their line. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { decimalMark } from "../../www/parts/number-text.js";
import { readPoints } from "../../www/sheet/points-text.js";
import { book } from "../../www/words/index.js";
import { courseByHand, HEADINGS } from "./course-by-hand.js";
import { choices, LANGUAGES, randomFrom, speaking } from "./support.js";

const COURSES = 40_000;
const LINES_EACH = 5;
const TEXTS = 200_000;
/** What the two readers may differ by: the page keeps twelve significant figures of what it has turned into SI. */
const ROUNDING = 1e-11;
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
        const [height, tenths, turned, radius, share] = [
          below(2500),
          below(10),
          below(360),
          below(500) + 5,
          below(101),
        ];
        const kind =
          sign === " "
            ? oneOf(["two", "three", "four", "five"])
            : oneOf(["two", "three", "four", "five", "no bearing"]);
        const cells = [written(km, tenths), written(height, tenths)];
        if (kind === "three") cells.push(String(turned));
        if (kind === "four") cells.push(String(turned), String(radius));
        if (kind === "five") cells.push(String(turned), "-", String(share));
        if (kind === "no bearing") cells.push("", String(radius));
        const point = {
          distance_m: km * 1000 + tenths * 100,
          elevation_m: height + tenths / 10,
          ...(["three", "four", "five"].includes(kind) && { bearing_deg: turned }),
          ...((kind === "four" || kind === "no bearing") && { radius_m: radius }),
          ...(kind === "five" && { wind_share: share / 100 }),
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

/**
 * A pasted course whose every part may be broken: lines, signs between cells, decimal marks, groups, units, empty cells, remarks, headings.
 * @param {ReturnType<typeof choices>} random
 */
function madeCourse({ below, oneOf, someOf }) {
  const rarely = (/** @type {number} */ one_in) => below(one_in) === 0;
  const between = oneOf(["\t", ";", " ", ",", ", ", " ; ", "  "]);
  const mark = oneOf([".", ".", ","]);
  const group = oneOf(["", "", " ", "\u202f", "\u00a0", ",", "."]);
  const broken = [
    "",
    "-",
    "\u2212",
    "\u2013",
    ".",
    ",",
    ";",
    "\t",
    " ",
    "x",
    "#",
    "1",
    "010",
    "\u202f",
    "e3",
    "\u0000",
  ];
  const broken_one_in = oneOf([9, 60, 1000]);
  const written = (/** @type {number} */ whole, /** @type {string[]} */ units) => {
    if (rarely(broken_one_in)) return someOf(broken, 3);
    const grouped = String(whole).replace(/(\d)(?=(\d{3})+$)/g, `$1${group}`);
    const decimals = oneOf(["", "", `${mark}${below(10)}`, `${mark}${100 + below(900)}`]);
    return `${rarely(20) ? oneOf(["-", "\u2212", "+"]) : ""}${grouped}${decimals}${rarely(8) ? oneOf(units) : ""}`;
  };
  let at = below(3);
  const lines = Array.from({ length: 1 + below(3) }, () => {
    if (rarely(30)) return oneOf(["", "  ", "# 1.5", "#", "\t", "km m", oneOf(HEADINGS)]);
    at += rarely(30) ? 0 : 1 + below(1200);
    const cells = [written(at, ["km", " km", "m", " mi", "x"]), written(below(2500), ["m", " m", " ft", "°"])];
    const more = oneOf([0, 0, 1, 2, 2, 3]);
    if (more > 0) cells.push(rarely(6) ? oneOf(["", "-"]) : written(below(360), ["°"]));
    if (more > 1) cells.push(rarely(6) ? oneOf(["", "-"]) : written(below(500), ["m", " m"]));
    if (more > 2) cells.push(rarely(6) ? oneOf(["", "-"]) : written(below(120), ["%", " %", "m"]));
    if (rarely(40)) cells.push(oneOf(["", "5"]));
    return cells.join(rarely(40) ? oneOf(["\t", ";", " ", ","]) : between);
  });
  if (rarely(15)) lines.unshift(oneOf(HEADINGS));
  return lines.join(oneOf(["\n", "\n", "\r\n"]));
}

const OWN = /** @type {const} */ ([
  [units, { distance: "km", elevation: "m", bearing: "°", radius: "m", windShare: "%" }],
  [
    { ...units, distance: "mi", height: "ft" },
    { distance: "mi", elevation: "ft", bearing: "°", radius: "m", windShare: "%" },
  ],
]);

for (const [index, language] of LANGUAGES.entries()) {
  test(`${TEXTS} pasted courses are read or refused as by another reader, in ${language}`, async () => {
    await speaking(language);
    const say = book("sheet");
    const random = choices(randomFrom(61 + index));
    let courses = 0;
    for (let count = 0; count < TEXTS; count += 1) {
      const text = madeCourse(random);
      const [its, own] = random.oneOf(OWN);
      const read = readPoints(text, its);
      const byHand = courseByHand(text, own, decimalMark());
      const differ = () => assert.fail(`${JSON.stringify([text, own.distance])}: ${JSON.stringify([read, byHand])}`);
      if ("wrong" in byHand) {
        const { key, values } = byHand.wrong;
        if (!("message" in read) || read.message !== say(/** @type {any} */ (key), values)) differ();
        continue;
      }
      courses += 1;
      if (!("points" in read) || read.points.length !== byHand.points.length) return differ();
      byHand.points.forEach((point, line) => {
        const got = /** @type {Record<string, number>} */ (/** @type {unknown} */ (read.points[line]));
        const isSame = Object.entries(point).every(([field, value]) => near(got[field], value));
        if (!isSame || Object.keys(got).length !== Object.keys(point).length) differ();
      });
    }
    assert.ok(courses > TEXTS / 10, `only ${courses} of them are courses`);
  });
}

/** @param {number} one @param {number} other */
const near = (one, other) => Math.abs(one - other) <= ROUNDING * Math.abs(other);

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

test("a remark's point is no decimal point, and groups stay together between commas and spaces", async () => {
  await speaking("en");
  const refused = readPoints("# ridden on 3.5.2026\n0,5,120\n1,6,130", units);
  assert.ok("message" in refused && refused.message.startsWith("Line 2: a comma may part"));
  assert.deepEqual(readPoints("0, 1 010\n5, 1 020", units), {
    points: [
      { distance_m: 0, elevation_m: 1010 },
      { distance_m: 5000, elevation_m: 1020 },
    ],
  });
});

test("a table in SI holds decimals alone, and a bearing in its column is no elevation", async () => {
  await speaking("en");
  for (const cell of ["Infinity", "0x10", "1e400", "9".repeat(400)]) {
    const read = readPoints(`distance_m,elevation_m,bearing_deg,radius_m\n0,1,,\n100,${cell},,`, units);
    assert.ok("message" in read && read.message.startsWith("Line 3: the elevation"), cell);
  }
  const turned = readPoints("0\t120°\n1\t130°", units);
  assert.ok("message" in turned && turned.message.startsWith("Line 1: the elevation"));
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
