// @ts-check
/** Efforts as riders of three languages write them down: what is made is what is read. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { readEfforts } from "../../www/questions/power-curve/efforts-text.js";
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

test("hours with their name are hours, with or without the name of minutes", () => {
  const efforts = (/** @type {string} */ line) => readEfforts(line, allowed);
  for (const line of ["1:05 h 280", "1:05 Std 280 W", "1h05min 280", "1 h 05 min 280", "1h05 280 W", "1 h 5 min 280"]) {
    assert.deepEqual(efforts(line), { efforts: [{ duration_s: 3900, power_w: 280 }] }, line);
  }
  assert.deepEqual(efforts("0:20 h 300"), { efforts: [{ duration_s: 1200, power_w: 300 }] });
  assert.deepEqual(efforts("1h30 250"), { efforts: [{ duration_s: 5400, power_w: 250 }] });
});
