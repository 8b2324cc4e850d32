// @ts-check
/** What fields there are, only the core's table says: a script that lists them would fall behind it. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fields } from "fasterby-tables";
import { scripts, sourceOf } from "./scripts.js";

/** Fewer in a row are a choice of a question's own, such as the two numbers of a lapse. */
const A_LIST = 4;
const KEYS = new Set(fields.map(({ key }) => key));

/** Where fields are named for a reason of the page's own. @type {Record<string, string>} */
const EXCEPTIONS = {
  "sheet/rider-and-bike.js": "the order of rows that are seldom wanted",
  "questions/shared/surer.js": "what helps to know each better, which the core does not say",
};

/** Lists of texts alone, or of texts that name something. */
const LISTS = /[[{]\s*((?:(?:"[^"]*"\s*:\s*)?"[^"]*"\s*,?\s*)+)[\]}]/g;

/** The lists of a script that name fields of the core, and hardly anything else. @param {string} source */
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
