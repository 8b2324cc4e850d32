// @ts-check
/** One is said as one, several as several, in each language. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { fill } from "../../www/words/template.js";
import { LANGUAGES } from "./support.js";

/** How many typical values are in use, as each language says it; in French none is one of the singular. */
const TYPICAL = {
  en: ["0 typical", "1 typical", "2 typical"],
  de: ["0 typisch", "1 typisch", "2 typisch"],
  fr: ["0 typique", "1 typique", "2 typiques"],
};
const TAGS = { en: "en-GB", de: "de-DE", fr: "fr-FR" };

for (const language of LANGUAGES) {
  test(`none, one and two typical values in ${language}`, async () => {
    const { default: words } = await import(`../../www/words/${language}/page.js`);
    const said = [0, 1, 2].map((count) => fill(words["known.typical"], { count }, TAGS[language]));
    assert.deepEqual(said, TYPICAL[language]);
  });
}

test("a placeholder without a value stays in sight", () => {
  assert.equal(fill("{count} of {many}", { count: 1 }), "1 of {many}");
});
