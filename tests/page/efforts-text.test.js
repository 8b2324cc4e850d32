// @ts-check
/** Efforts as riders write them down are read; what is not understood is named by its line. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { readEfforts } from "../../www/questions/power-curve/efforts-text.js";

const allowed = {
  positions: ["my position", "low", "low, new bars", "à plat"],
  duration_s: { min: 1, max: 200000 },
  power_w: { min: 10, max: 3000 },
};

/** @type {[text: string, effort: object][]} */
const understood = [
  ["4:00 417", { duration_s: 240, power_w: 417 }],
  ["0:45 520", { duration_s: 45, power_w: 520 }],
  ["1:00:00 300", { duration_s: 3600, power_w: 300 }],
  ["20 min 342 W", { duration_s: 1200, power_w: 342 }],
  ["20 Minuten 342 Watt", { duration_s: 1200, power_w: 342 }],
  ["342W for 20min", { duration_s: 1200, power_w: 342 }],
  ["20 min @ 342W", { duration_s: 1200, power_w: 342 }],
  ["20:00 - 342", { duration_s: 1200, power_w: 342 }],
  ["1200 s; 342", { duration_s: 1200, power_w: 342 }],
  ["1200,342", { duration_s: 1200, power_w: 342 }],
  ["90 420", { duration_s: 90, power_w: 420 }],
  ["1 h 280", { duration_s: 3600, power_w: 280 }],
  ["1h05 280 W", { duration_s: 3900, power_w: 280 }],
  ["3 min 30 s 360", { duration_s: 210, power_w: 360 }],
  ["5'30\" 350W", { duration_s: 330, power_w: 350 }],
  ["4,5 min 417", { duration_s: 270, power_w: 417 }],
  ["342,5 W 20 min", { duration_s: 1200, power_w: 342.5 }],
  ["20:00\t342", { duration_s: 1200, power_w: 342 }],
  [
    "20:00,342,low,2026-05-01,indoors",
    { duration_s: 1200, power_w: 342, position: 1, date: "2026-05-01", indoors: true },
  ],
  ["20:00; 342; Low, new bars; outside", { duration_s: 1200, power_w: 342, position: 2, indoors: false }],
  ["20:00 342 3.5.2026 draußen", { duration_s: 1200, power_w: 342, date: "2026-05-03", indoors: false }],
  ["20 min 342 W à l’intérieur", { duration_s: 1200, power_w: 342, indoors: true }],
  ["20:00 342 à plat", { duration_s: 1200, power_w: 342, position: 3 }],
  ["20 min, at 342 W", { duration_s: 1200, power_w: 342 }],
  ["5'30\",95 W", { duration_s: 330, power_w: 95 }],
  ["20min,342,intérieur", { duration_s: 1200, power_w: 342, indoors: true }],
];

for (const [text, effort] of understood) {
  test(`“${text}” is understood`, () => {
    assert.deepEqual(readEfforts(text, allowed), { efforts: [effort] });
  });
}

/** @type {[text: string, wrong: string, about: string][]} */
const named = [
  ["20 342", "unclearTime", "20"],
  ["20 min", "noPower", "20 min"],
  ["342 W", "noTime", "342 W"],
  ["4:00 5.2 W/kg", "perKilogram", "5.2 W/kg"],
  ["20 min 5,1 Watt pro kg", "perKilogram", "5,1 Watt pro kg"],
  ["20:00 342 W 145 bpm", "twoPowers", "145"],
  ["20:00 20:00 342 W", "twoTimes", "20:00"],
  ["20:00 342 01/05/2026", "date", "01/05/2026"],
  ["20:00 342 2026-13-01", "date", "2026-13-01"],
  ["20:75 300", "unknown", "20:75 300"],
  ["1:75:00 300", "unknown", "1:75:00 300"],
  ["20:00 300 2026-05-01 2026-05-02", "twoOthers", "2026-05-02"],
  ["20:00 300 low my position", "twoOthers", "my position"],
  ["20:00 300 indoors outdoors", "twoOthers", "outdoors"],
  ["5 min 340 upright", "unknown", "upright"],
  ["1e3 300", "unknown", "1e3 300"],
  ["20:00 5000", "powerRange", "20:00 5000"],
  ["100:00:00 200", "timeRange", "100:00:00 200"],
];

for (const [text, wrong, about] of named) {
  test(`“${text}” is named: ${wrong}`, () => {
    assert.deepEqual(readEfforts(`# tests of May\n\n4:00 417\n${text}`, allowed), {
      problems: [{ line: 4, wrong, text: about }],
    });
  });
}

test("headings, remarks and empty lines are passed over, and every wrong line is named", () => {
  assert.deepEqual(readEfforts("Time;Power\n# first\n\n4:00; 417\n20:00; 342\n", allowed), {
    efforts: [
      { duration_s: 240, power_w: 417 },
      { duration_s: 1200, power_w: 342 },
    ],
  });
  assert.deepEqual(readEfforts("4:00\n20:00 342\nx", allowed), {
    problems: [
      { line: 1, wrong: "noPower", text: "4:00" },
      { line: 3, wrong: "unknown", text: "x" },
    ],
  });
  assert.deepEqual(readEfforts("", allowed), { efforts: [] });
});

test("whatever is pasted is read or named, and ends", () => {
  const signs = [
    "1",
    "20",
    ":",
    ",",
    ".",
    " ",
    "\t",
    ";",
    "min",
    "h",
    "s",
    "W",
    "/kg",
    "low",
    "-",
    "'",
    '"',
    "é",
    "\u00a0",
    "2026-05-01",
    "|",
    "@",
    "for",
  ];
  /** @type {string[]} */
  const wrong = [];
  let seed = 7;
  const next = (/** @type {number} */ below) => {
    seed = (seed * 48271) % 2147483647;
    return seed % below;
  };
  for (let n = 0; n < 5000; n += 1) {
    const text = Array.from({ length: next(12) }, () => signs[next(signs.length)]).join("");
    const read = readEfforts(text, allowed);
    const right =
      "efforts" in read
        ? read.efforts.every(({ duration_s, power_w }) => duration_s >= 1 && power_w >= 10)
        : read.problems.every(({ line }) => line === 1);
    if (!right) wrong.push(text);
  }
  assert.deepEqual(wrong, []);
});
