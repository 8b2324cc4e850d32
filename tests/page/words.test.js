// @ts-check
/** The books of each language hold the same texts, and one is said as one, several as several. */

import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { test } from "node:test";
import messages from "fasterby-messages";
import { fields } from "fasterby-tables";
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

const booksIn = (/** @type {string} */ language) =>
  readdirSync(new URL(`../../www/words/${language}`, import.meta.url)).sort();

/** @param {string} language @param {string} file @returns {Promise<Record<string, string | Record<string, string>>>} */
const read = async (language, file) => (await import(`../../www/words/${language}/${file}`)).default;

/** @param {string | Record<string, string>} template */
const formsOf = (template) => (typeof template === "string" ? [template] : Object.values(template));

/** @param {string} text */
const placeholders = (text) => [...new Set(text.match(/\{\w+\}/g) ?? [])].sort();

/** After these a key ends in a name that the core, a question or a symbol has. */
const NAMED_ELSEWHERE =
  /^(field|questions|lengths|changes|how|why|usual|model|outcome|evidence|column|axis|seen|rule|dragTests|common-practice$|from-memory$|fade_test$)|\.(name|symbol)$/;

/** Books whose keys are the names of sentences in Rust. */
const OF_RUST = ["core.js", "recordings.js"];

test("a key is of words as in scripts, in groups with points between", async () => {
  for (const file of booksIn("en").filter((one) => !OF_RUST.includes(one))) {
    const odd = Object.keys(await read("en", file)).filter(
      (key) => !/^[a-z][A-Za-z0-9]*(\.[A-Za-z0-9]+)*$/.test(key) && !NAMED_ELSEWHERE.test(key),
    );
    assert.deepEqual(odd, [], file);
  }
});

for (const language of LANGUAGES.filter((one) => one !== "en")) {
  test(`the books in ${language} have the keys, placeholders and forms of the English ones`, async () => {
    assert.ok(booksIn("en").length > 0);
    assert.deepEqual(booksIn(language), booksIn("en"));
    for (const file of booksIn("en").filter((name) => name !== "core.js")) {
      const [english, translated] = [await read("en", file), await read(language, file)];
      assert.deepEqual(Object.keys(translated).sort(), Object.keys(english).sort(), file);
      for (const [key, template] of Object.entries(english)) {
        const where = `${file}: ${key}`;
        assert.equal(typeof translated[key], typeof template, where);
        // A form for one may leave its number out.
        const wanted = placeholders(formsOf(template).join(" "));
        assert.deepEqual(placeholders(formsOf(translated[key]).join(" ")), wanted, where);
        for (const form of formsOf(translated[key])) assert.equal((form.match(/\*\*/g) ?? []).length % 2, 0, where);
      }
    }
  });
}

for (const language of LANGUAGES) {
  test(`every message of the core is worded in ${language}, with its placeholders`, async () => {
    const worded = await read(language, "core.js");
    assert.ok(messages.length > 90);
    for (const { id, english } of messages) {
      assert.ok(Object.hasOwn(worded, id), `core.js lacks ${id}`);
      assert.deepEqual(placeholders(formsOf(worded[id]).join(" ")), placeholders(english), id);
    }
  });
}

for (const language of LANGUAGES.filter((one) => one !== "en")) {
  test(`every field's note is worded in ${language}, and nothing that the core does not say`, async () => {
    const said = [...messages.map(({ id }) => id), ...fields.map(({ key }) => `note.${key}`)];
    assert.deepEqual(Object.keys(await read(language, "core.js")).sort(), said.sort());
  });
}
