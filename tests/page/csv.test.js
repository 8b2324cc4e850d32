// @ts-check
/** Tables for other programs: no formulas, one figure a cell, every column named. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { isolated } from "../../www/parts/isolate.js";
import { columnTables, csvText, rowsOfFigures } from "../../www/save/csv.js";

const FORMULAS = [
  "=1+1",
  "+1+cmd|' /C calc'!A0",
  "-2+3+cmd|x",
  "@SUM(A1)",
  "＝1+1",
  "＋1+1",
  "－1+1",
  "＠SUM(1)",
  "\t=1+1",
  "\r=1",
  "\n=1",
  " =1+1",
  "\u00a0=1",
  "\ufeff=1",
  "\u200b=1",
  "|x",
  "%x",
  "-x",
  "+x",
  "−2+3",
  "-1+1",
  "+1*2",
  "-1,5;=1",
];
const NUMBERS = [
  "-2.5",
  "+2.84",
  "1:07:43",
  "-0:12",
  "12",
  "3 %",
  "-3 %".replace(" ", ""),
  "1 250",
  "low",
  "O'Neil",
  "1=1",
  "a@b",
];

test("no name begins a formula in any spreadsheet, and numbers stay numbers", () => {
  for (const separator of /** @type {const} */ ([",", ";"])) {
    for (const name of FORMULAS) {
      const [, line] = csvText([["name"], [name]], separator)
        .replace(/^\ufeff/, "")
        .split(/name\r\n/);
      assert.match(line, /^"?'/, JSON.stringify(name));
    }
    for (const name of NUMBERS) assert.doesNotMatch(csvText([["name"], [name]], separator), /'(?!Neil)/, name);
  }
});

test("a cell that holds several figures becomes a column for each, named by what it is", () => {
  const cell = (/** @type {Record<string, string>} */ parts) => new Map(Object.entries(parts));
  const rows = rowsOfFigures(
    [
      [cell({ value: "event" }), cell({ value: "high" }), cell({ value: "low" })],
      [
        cell({ value: "10 miles" }),
        cell({ value: "24:01" }),
        cell({ value: "23:40", difference: "faster by 0:21", spread: "± 0:12" }),
      ],
      [
        cell({ value: "25 miles" }),
        cell({ value: "1:01:00" }),
        cell({ value: "1:00:10", difference: "faster by 0:50", spread: "± 0:30" }),
      ],
    ],
    true,
    (part) => ({ difference: "difference", spread: "±" })[part] ?? "",
  );
  assert.deepEqual(rows, [
    ["event", "high", "low", "low, difference", "low, ±"],
    ["10 miles", "24:01", "23:40", "faster by 0:21", "0:12"],
    ["25 miles", "1:01:00", "1:00:10", "faster by 0:50", "0:30"],
  ]);
});

test("figures of one choice after the other are labelled by choice and distance in one table", () => {
  const tables = columnTables({ distance_m: [5, 10], difference_s: [0, 0, 1, 2], difference_sd_s: [0, 0, 0.5, 0.6] }, [
    "high",
    "low",
  ]);
  assert.deepEqual(tables, [
    {
      by: "distance_m",
      rows: [
        ["choice", "distance_m", "difference_s", "difference_sd_s"],
        ["high", 5, 0, 0],
        ["high", 10, 0, 0],
        ["low", 5, 1, 0.5],
        ["low", 10, 2, 0.6],
      ],
    },
  ]);
});

test("a name that turns the direction of writing keeps it to itself", () => {
  assert.equal(isolated("low"), "low");
  for (const name of ["\u202elow", "שלום", "a\u2069b\u202e"]) {
    assert.match(isolated(name), /^\u2068[^\u2066-\u2069]*\u2069$/);
  }
});

test("signs that part cells or rows are quoted, and quotation marks doubled (RFC 4180)", () => {
  assert.equal(
    csvText([
      ["name", "figure"],
      ["=1+1", "-2.5"],
      ['low, "new"', "two\r\nlines"],
      ["+ more", "+2.84"],
    ]),
    'name,figure\r\n\'=1+1,-2.5\r\n"low, ""new""","two\r\nlines"\r\n\'+ more,+2.84\r\n',
  );
});
