// @ts-check
/** Only the core's table lists the fields; a list of them in a script would become outdated. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fields } from "fasterby-tables";
import { scripts, sourceOf } from "./scripts.js";

/** A shorter list is a question's own choice of fields, such as the two numbers of a lapse. */
const A_LIST = 4;
const KEYS = new Set(fields.map(({ key }) => key));

/** Scripts that may list fields, with the reason. @type {Record<string, string>} */
const EXCEPTIONS = {
  "sheet/rider-and-bike.js": "the order of rows that are seldom wanted",
  "questions/shared/surer.js": "what helps to know each better, which the core does not say",
};

/** An array of texts, or an object whose values are texts. */
const LISTS = /[[{]\s*((?:(?:"[^"]*"\s*:\s*)?"[^"]*"\s*,?\s*)+)[\]}]/g;

/** The lists in a script that name at least so many fields of the core. @param {string} source */
function listsOfFields(source) {
  return [...source.matchAll(LISTS)]
    .map(([, inside]) => [...inside.matchAll(/"([^"]*)"/g)].map(([, text]) => text.replace(/^scenario\./, "")))
    .map((texts) => texts.filter((text) => KEYS.has(text)))
    .filter((named) => named.length >= A_LIST);
}

test("a list of fields is seen", () => {
  assert.equal(
    listsOfFields('const A = ["power.cp_w", "power.w_prime_j", "power.peak_w", "rider.total_mass_kg"];').length,
    1,
  );
  assert.equal(listsOfFields('const A = ["power", "drag", "hold", "ground"];').length, 0);
});

test("no script lists the core's fields, but for the exceptions", () => {
  const found = scripts
    .filter((name) => !name.startsWith("words/"))
    .filter((name) => listsOfFields(sourceOf(name)).length > 0);
  assert.deepEqual(found.sort(), Object.keys(EXCEPTIONS).sort());
});
