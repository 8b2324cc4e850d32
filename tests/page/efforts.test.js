// @ts-check
/** Efforts as riders of three languages write them down: what is made is what is read. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { isDeepStrictEqual } from "node:util";
import { readEfforts } from "../../www/questions/power-curve/efforts-text.js";
import { effortsByHand } from "./effort-by-hand.js";
import { choices, LANGUAGES, randomFrom } from "./support.js";

const LINES = 200_000;
const allowed = {
  positions: ["my position", "low"],
  duration_s: { min: 1, max: 200_000 },
  power_w: { min: 10, max: 3000 },
};
/** @type {Record<string, { hour: string[], minute: string[], second: string[], between: string[] }>} */
const WORDS = {
  en: {
    hour: ["h", "hr", "hours"],
    minute: ["min", "minutes", "m", "'"],
    second: ["s", "sec", "seconds"],
    between: [" ", ", ", " at ", " for ", " @ "],
  },
  de: {
    hour: ["h", "Std", "Std.", "Stunden"],
    minute: ["min", "Minuten", "Min."],
    second: ["s", "Sek", "Sekunden"],
    between: [" ", ", ", " bei ", " mit "],
  },
  fr: {
    hour: ["h", "heure", "heures"],
    minute: ["min", "minutes"],
    second: ["s", "secondes"],
    between: [" ", " ; ", " à ", " pendant "],
  },
};

for (const [index, language] of LANGUAGES.entries()) {
  test(`${LINES} efforts in ${language} are those that were written down, and other texts are refused by their line`, () => {
    const { below, oneOf, someOf } = choices(randomFrom(7 + index));
    const { hour, minute, second, between } = WORDS[language];
    const two = (/** @type {number} */ number) => String(number).padStart(2, "0");
    const space = () => oneOf(["", " "]);
    /** @type {(() => [text: string, seconds: number])[]} */
    const times = [
      () => {
        const [m, s] = [1 + below(90), below(60)];
        return [`${m}:${two(s)}`, 60 * m + s];
      },
      () => {
        const [m, s] = [1 + below(90), below(60)];
        return [`${m}:${two(s)} ${oneOf(minute)}`, 60 * m + s];
      },
      () => {
        const [h, m, s] = [1 + below(9), below(60), below(60)];
        return [`${h}:${two(m)}:${two(s)}${oneOf(["", " h"])}`, 3600 * h + 60 * m + s];
      },
      () => {
        const [h, m] = [below(9), 1 + below(59)];
        return [`${h}:${two(m)} ${oneOf(hour)}`, 3600 * h + 60 * m];
      },
      () => {
        const [h, m] = [1 + below(9), below(60)];
        return [`${h}${space()}${oneOf(hour)}${space()}${two(m)}${space()}${oneOf(minute)}`, 3600 * h + 60 * m];
      },
      () => {
        const [h, m] = [1 + below(9), below(60)];
        return [`${h}h${two(m)}`, 3600 * h + 60 * m];
      },
      () => {
        const m = 1 + below(90);
        return [`${m}${space()}${oneOf(minute)}`, 60 * m];
      },
      () => {
        const s = 60 + below(3000);
        return [`${s}${space()}${oneOf(second)}`, s];
      },
    ];
    const garbage = [
      "1",
      "20",
      ":",
      "05",
      "h",
      "min",
      "s",
      "W",
      " ",
      ",",
      ".",
      ";",
      "\t",
      "kg",
      "/",
      "low",
      "-",
      "e",
      "\u0000",
      "🚴",
      "9".repeat(320),
    ];
    for (let count = 0; count < LINES; count += 1) {
      const [time, duration_s] = oneOf(times)();
      const power_w = 100 + below(900);
      const watts = `${power_w} W`;
      const line = oneOf([true, true, false])
        ? `${time}${oneOf(between)}${watts}`
        : `${watts}${oneOf(["\t", "; "])}${time}`;
      const understood = readEfforts(line, allowed);
      const [effort] = "efforts" in understood ? understood.efforts : [];
      if (effort?.duration_s !== duration_s || effort.power_w !== power_w || Object.keys(effort).length !== 2)
        assert.fail(`${JSON.stringify(line)} is ${JSON.stringify(understood)}`);
      const text = someOf(garbage, 6);
      const read = readEfforts(text, allowed);
      for (const effort of "efforts" in read ? read.efforts : []) {
        if (!(effort.duration_s >= 1 && effort.duration_s <= 200_000 && effort.power_w >= 10 && effort.power_w <= 3000))
          assert.fail(JSON.stringify(text));
      }
    }
  });
}

/** Names of places and positions, each language's own words among them. @type {Record<string, string[]>} */
const PLACES = {
  en: ["indoors", "Outside", "low", "Low, new bars", "at home", "inside x"],
  de: ["drinnen", "draußen", "Rolle", "außen", "low", "mit Auflieger"],
  fr: ["à l'intérieur", "à l’extérieur", "en salle", "dehors", "intérieur", "low", "à plat"],
};
/** Limits that some of the made efforts meet to the second and to the watt. */
const named = {
  positions: ["my position", "low", "Low, new bars", "at home", "mit Auflieger", "à plat"],
  duration_s: { min: 60, max: 7200 },
  power_w: { min: 20, max: 500 },
};

/**
 * A text of efforts whose every part may be broken or missing.
 * @param {ReturnType<typeof choices>} random @param {string} language
 */
function madeEfforts({ below, oneOf, someOf }, language) {
  const { hour, minute, second, between } = WORDS[language];
  const rarely = (/** @type {number} */ one_in) => below(one_in) === 0;
  const two = (/** @type {number} */ number) => String(number).padStart(2, "0");
  const space = () => oneOf(["", "", " ", "\u202f"]);
  const decimals = () => (rarely(4) ? oneOf([".5", ",5", ",25", ".123", ",125"]) : "");
  const broken = [
    ...[
      "1",
      "20",
      "05",
      "60",
      "300",
      "9".repeat(320),
      ":",
      ",",
      ".",
      ";",
      "|",
      "\t",
      " ",
      "-",
      "/",
      "@",
      "–",
      "#",
      "e",
      "x",
    ],
    ...[
      "h",
      "min",
      "m",
      "s",
      "'",
      '"',
      "W",
      "w/kg",
      " W per kg",
      "for ",
      "at",
      "à ",
      "low",
      "2026-05-01",
      "1/2/26",
      "🚴",
    ],
  ];
  const minutes = () => `${1 + below(rarely(5) ? 2000 : 90)}`;
  const time = oneOf([
    () => `${minutes()}:${two(below(63))}${decimals()}`,
    () => `${minutes()}:${two(below(60))} ${oneOf([...minute, ...hour])}`,
    () => `${below(9)}:${two(below(63))}:${two(below(63))}${decimals()}${oneOf(["", " ", "h", " min"])}`,
    () =>
      `${1 + below(3)}${decimals()}${space()}${oneOf(hour)}${space()}${below(63)}${space()}${oneOf(["", ...minute])}`,
    () =>
      `${minutes()}${decimals()}${space()}${oneOf(minute)}${space()}${oneOf(["", two(below(63))])}${space()}${oneOf(["", ...second])}`,
    () => `${below(4000)}${decimals()}${space()}${oneOf(["", ...second])}`,
    () => `${below(3)} ${oneOf(hour)} ${below(70)}${oneOf(minute)} ${below(70)} ${oneOf(second)}`,
  ]);
  const power = () =>
    `${below(rarely(9) ? 4000 : 600)}${decimals()}${oneOf(["", "", "W", " W", " watts", " Watt", " W/kg"])}`;
  const date = () =>
    oneOf([
      `2026-${two(1 + below(12))}-${two(1 + below(rarely(9) ? 40 : 31))}`,
      `${1 + below(31)}.${1 + below(12)}.2026`,
      `${below(40)}/${below(20)}/26`,
    ]);
  const broken_one_in = oneOf([5, 40, 1000]);
  const lines = Array.from({ length: 1 + below(2) }, () => {
    if (rarely(25)) return oneOf(["", " ", "# 20:00", "time; power", "-"]);
    const pieces = rarely(4) ? [power(), time()] : [time(), power()];
    if (rarely(4)) pieces.push(oneOf(PLACES[language]));
    if (rarely(6)) pieces.push(date());
    if (rarely(12)) pieces.push(oneOf(PLACES[language]));
    if (rarely(25)) pieces.splice(below(pieces.length), 1);
    if (rarely(25)) pieces.push(oneOf([time, power, date])());
    const parting = oneOf([...between, ...between, "\t", "; ", ",", ", ", "|", " - ", ": ", ""]);
    return pieces.map((piece) => (rarely(broken_one_in) ? piece + someOf(broken, 2) : piece)).join(parting);
  });
  return lines.join(oneOf(["\n", "\r\n"]));
}

for (const [index, language] of LANGUAGES.entries()) {
  test(`${LINES} texts are the efforts, or have the faults, that another reader finds, in ${language}`, () => {
    const random = choices(randomFrom(53 + index));
    let lists = 0;
    for (let count = 0; count < LINES; count += 1) {
      const text = madeEfforts(random, language);
      const read = readEfforts(text, named);
      const got = "efforts" in read ? read : { problems: read.problems.map(({ line, wrong }) => ({ line, wrong })) };
      const byHand = effortsByHand(text, named);
      if (!isDeepStrictEqual(got, byHand)) assert.deepEqual(got, byHand, JSON.stringify(text));
      if ("efforts" in read && read.efforts.length > 0) lists += 1;
    }
    assert.ok(lists > LINES / 10, `only ${lists} of them are efforts`);
  });
}

test("hours with their name are hours, with or without the name of minutes", () => {
  const efforts = (/** @type {string} */ line) => readEfforts(line, allowed);
  for (const line of ["1:05 h 280", "1:05 Std 280 W", "1h05min 280", "1 h 05 min 280", "1h05 280 W", "1 h 5 min 280"]) {
    assert.deepEqual(efforts(line), { efforts: [{ duration_s: 3900, power_w: 280 }] }, line);
  }
  assert.deepEqual(efforts("0:20 h 300"), { efforts: [{ duration_s: 1200, power_w: 300 }] });
  assert.deepEqual(efforts("1h30 250"), { efforts: [{ duration_s: 5400, power_w: 250 }] });
});
