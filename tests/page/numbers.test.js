// @ts-check
/** Numbers and times are read as they are written, or not at all: compared with readers that know the stated grammar and nothing else. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { decimalMark, readNumber, readSum, readTime, sdText } from "../../www/parts/number-text.js";
import { compassDegrees } from "../../www/units.js";
import { isDigit, isSpace, numberByHand } from "./number-by-hand.js";
import { choices, LANGUAGES, randomFrom, speaking } from "./support.js";

const TEXTS = 200_000;

/** The names of units of time, each with its seconds. @type {[seconds: number, names: string[]][]} */
const NAMES_OF_TIME = [
  [3600, ["h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden", "heure", "heures"]],
  [60, ["m", "min", "mins", "minn", "minute", "minutes", "minuten", "'", "’", "′"]],
  [1, ["s", "sec", "secs", "second", "seconds", "seconde", "secondes", "sek", "sekunde", "sekunden", '"', "″", "”"]],
];

/**
 * The grammar of times, read from left to right into numbers, colons and names, with what stands in between.
 * @param {string} typed @returns {{ number?: string, colon?: true, seconds?: number, spaced: boolean }[] | null}
 */
function piecesOfTime(typed) {
  const signs = [...typed.trim().toLowerCase().replace(",", ".")];
  const pieces = [];
  let at = 0;
  const run = (/** @type {(sign: string | undefined) => boolean} */ belongs) => {
    const from = at;
    while (belongs(signs[at])) at += 1;
    return signs.slice(from, at).join("");
  };
  while (at < signs.length) {
    const spaced = run(isSpace) !== "";
    if (isDigit(signs[at])) {
      let number = run(isDigit);
      if (signs[at] === "." && isDigit(signs[at + 1])) {
        at += 1;
        number += `.${run(isDigit)}`;
      }
      pieces.push({ number, spaced });
    } else if (signs[at] === ":") {
      at += 1;
      pieces.push({ colon: /** @type {const} */ (true), spaced });
    } else {
      const letters = run((sign) => sign !== undefined && sign >= "a" && sign <= "z");
      const name = letters || signs[at];
      if (!letters) at += 1;
      const found = NAMES_OF_TIME.find(([, names]) => names.includes(name));
      if (!found) return null;
      if (signs[at] === ".") at += 1;
      pieces.push({ seconds: found[0], spaced });
    }
  }
  return pieces;
}

/** @param {string} typed @returns {number | null} seconds */
function timeByHand(typed) {
  const pieces = piecesOfTime(typed);
  if (!pieces?.length) return null;
  const finite = (/** @type {number} */ value) => (Number.isFinite(value) ? value : null);
  if (pieces.some(({ colon }) => colon)) {
    const inHours = pieces.at(-1)?.seconds === 3600;
    const clock = inHours ? pieces.slice(0, -1) : pieces;
    const fits = clock.every(
      ({ number, colon, spaced }, n) => (n % 2 ? colon : number !== undefined) && (n === 0 || !spaced),
    );
    if (!fits || ![3, 5].includes(clock.length)) return null;
    const numbers = clock.flatMap(({ number }) => number ?? []);
    const last = numbers[numbers.length - 1];
    const isShort = inHours && numbers.length === 2;
    if (numbers.slice(0, -1).some((number) => number.includes(".")) || last.split(".")[0].length > 2) return null;
    if (isShort && !Number.isInteger(Number(last))) return null;
    const [least, ...above] = numbers.map(Number).reverse();
    if (least >= 60 || (above.length === 2 && above[0] >= 60)) return null;
    return finite((isShort ? 60 : 1) * [least, ...above].reduce((sum, value, n) => sum + value * 60 ** n, 0));
  }
  if (pieces.length === 1 && pieces[0].number) return finite(60 * Number(pieces[0].number));
  let sum = 0;
  let below = Infinity;
  for (let n = 0; n < pieces.length; n += 2) {
    const { number } = pieces[n];
    const named = pieces[n + 1]?.seconds;
    if (number === undefined) return null;
    if (named === undefined) {
      const isLeftOut = n === 2 && pieces.length === 3 && below >= 60 && !pieces[0].number?.includes(".");
      if (!isLeftOut || number.length !== 2 || Number(number) >= 60) return null;
      return finite(sum + (Number(number) * below) / 60);
    }
    if (named >= below) return null;
    below = named;
    sum += Number(number) * named;
  }
  return finite(sum);
}

for (const [index, language] of LANGUAGES.entries()) {
  test(`${TEXTS} texts are the numbers that they say, in ${language}`, async () => {
    await speaking(language);
    const { oneOf, someOf } = choices(randomFrom(index + 1));
    const pieces = [
      "0",
      "1",
      "2",
      "5",
      "9",
      "000",
      "010",
      "123",
      ",",
      ".",
      " ",
      "\u202f",
      "\u00a0",
      "-",
      "+",
      "\u2212",
    ];
    let numbers = 0;
    for (let count = 0; count < TEXTS; count += 1) {
      const typed = oneOf(["", "", "-", "+"]) + someOf(pieces, 7) + oneOf(["", "", "", " W", "W", "kg", "x", "°"]);
      const digits = oneOf([0, 0, 1, 3]);
      const read = numberByHand(typed, digits, decimalMark());
      const byHand = read && (["", "w", "ws"].includes(read.unit) ? read.value : "unit");
      const { value, wrong } = readNumber(typed, { unit: "W", digits });
      const got = value ?? (wrong === "other-unit" ? "unit" : null);
      if (got !== byHand) assert.equal(got, byHand, `${JSON.stringify(typed)} with ${digits} decimals`);
      if (typeof byHand === "number") numbers += 1;
    }
    assert.ok(numbers > TEXTS / 10, `only ${numbers} of them are numbers`);
  });

  test(`${TEXTS} texts are the times that they say, in ${language}`, async () => {
    await speaking(language);
    const { below, oneOf, someOf } = choices(randomFrom(100 + index));
    const hour = ["h", "hr", "hrs", "hour", "hours", "std", "Stunde", "Stunden", "heure", "heures", "h.", "H"];
    const minute = ["min", "m", "mins", "Minute", "Minuten", "minutes", "min.", "'", "’"];
    const second = ["s", "sec", "secs", "Sek", "Sekunden", "seconde", "secondes", '"'];
    const space = () => oneOf(["", " ", "  "]);
    const two = (/** @type {number} */ number) => String(number).padStart(2, "0");
    /** Each a text and the seconds that it says; made, not read. @type {(() => [text: string, seconds: number])[]} */
    const ways = [
      () => {
        const [m, s] = [below(200), below(60)];
        return [`${m}:${two(s)}`, 60 * m + s];
      },
      () => {
        const [h, m, s] = [below(30), below(60), below(60)];
        return [`${h}:${two(m)}:${two(s)}`, 3600 * h + 60 * m + s];
      },
      () => {
        const [h, m] = [below(30), below(60)];
        return [`${h}:${two(m)}${space()}${oneOf(hour)}`, 3600 * h + 60 * m];
      },
      () => {
        const [h, m] = [below(30), below(60)];
        return [`${h}${space()}${oneOf(hour)}${space()}${two(m)}`, 3600 * h + 60 * m];
      },
      () => {
        const [m, s] = [below(90), below(60)];
        return [`${m}${space()}${oneOf(minute)}${space()}${two(s)}`, 60 * m + s];
      },
      () => {
        const [h, m] = [below(30), below(60)];
        return [`${h}${space()}${oneOf(hour)}${space()}${m}${space()}${oneOf(minute)}`, 3600 * h + 60 * m];
      },
      () => {
        const [h, m, s] = [below(9), below(60), below(60)];
        return [`${h} ${oneOf(hour)} ${m}${oneOf(minute)} ${s} ${oneOf(second)}`, 3600 * h + 60 * m + s];
      },
      () => {
        const m = below(1000) / 10;
        return [`${String(m).replace(".", oneOf([",", "."]))}${space()}${oneOf(minute)}`, 60 * m];
      },
      () => {
        const s = below(600);
        return [`${s}${space()}${oneOf(second)}`, s];
      },
      () => {
        const m = below(600);
        return [String(m), 60 * m];
      },
    ];
    const pieces = [
      "1",
      "2",
      "05",
      "30",
      "60",
      ":",
      ":",
      "h",
      "std",
      "min",
      "'",
      "s",
      " ",
      ",",
      ".",
      "-",
      "e",
      "9".repeat(400),
    ];
    let read = 0;
    for (let count = 0; count < TEXTS; count += 1) {
      const [typed, seconds] = oneOf(ways)();
      const { value } = readTime(`${space()}${typed}${space()}`);
      if (value === undefined || Math.abs(value - seconds) > 1e-6)
        assert.fail(`${JSON.stringify(typed)} is ${value}, not ${seconds}`);
      const other = someOf(pieces, 6);
      const [got, byHand] = [readTime(other).value ?? null, timeByHand(other)];
      const agree = got === byHand || (got !== null && byHand !== null && Math.abs(got - byHand) <= 1e-9 * byHand);
      if (!agree) assert.equal(got, byHand, JSON.stringify(other));
      if (byHand !== null) read += 1;
    }
    assert.ok(read > TEXTS / 20, `only ${read} of the others are times`);
  });
}

test("what could be meant in two ways is no number, and neither is what no computer holds", () => {
  for (const typed of ["1.5,5", "1,5,5", "1 2", "12 34", "1,,5", "1..5", "1 .5 5", "9".repeat(400), "1e5"]) {
    assert.notEqual(readNumber(typed, { unit: "W", digits: 1 }).wrong, undefined, typed);
  }
  for (const typed of [
    "9".repeat(400),
    `${"9".repeat(400)}:00`,
    `1:${"9".repeat(400)}`,
    "1:99",
    "1:60:00",
    "1:05,5 h",
    "",
    ":",
    "h",
  ]) {
    assert.deepEqual(readTime(typed), { wrong: "not-a-number" }, typed);
  }
});

test("hours are read with and without the name of minutes", () => {
  for (const [typed, seconds] of /** @type {[string, number][]} */ ([
    ["1h30", 5400],
    ["1 h 30", 5400],
    ["1:05 h", 3900],
    ["1:05 Std", 3900],
    ["0:20 h", 1200],
    ["5'30", 330],
    ["1 h 5 min", 3900],
  ])) {
    assert.equal(readTime(typed).value, seconds, typed);
  }
});

test("masses are read as a sum of their parts, each in any unit that a mass may have", () => {
  const kilograms = { unit: "kg", digits: 1, otherUnits: { lb: (/** @type {number} */ value) => value / 2 } };
  assert.equal(readSum("70 + 9", kilograms), 79);
  assert.equal(readSum("70,5+9.5 kg", kilograms), 80);
  assert.equal(readSum("70 + 10 lb", kilograms), 75);
  for (const typed of ["70", "70 +", "+ 9", "70 + W", "", "+"])
    assert.equal(readSum(typed, kilograms), undefined, typed);
});

test("the wind's direction is read by its letters, in each language by its own", async () => {
  const said = { en: ["SW", "E", "nnw"], de: ["SW", "O", "nnw"], fr: ["SO", "E", "nno"] };
  for (const language of LANGUAGES) {
    await speaking(language);
    assert.deepEqual(said[language].map(compassDegrees), [225, 90, 337.5], language);
    for (const text of ["", "X", "SWSW", "225", "S W"]) assert.equal(compassDegrees(text), undefined, text);
  }
});

test("a standard deviation has one significant figure, or two after a 1, and none where only rounding is left", async () => {
  await speaking("en");
  const said = {
    0.0083: "0.008",
    0.0149: "0.015",
    0.0196: "0.02",
    3.4: "3",
    1.2: "1.2",
    27: "27",
    1.5e-16: "0",
    0: "0",
  };
  for (const [sd, text] of Object.entries(said)) assert.equal(sdText(Number(sd)), text, sd);
});
