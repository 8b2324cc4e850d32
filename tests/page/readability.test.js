// @ts-check
/**
 * Whether the texts can be read: short sentences, no fragments that pose as sentences, no words that riders do not know or that mislead them,
 * terms that are explained on their own page, and placeholders that take any value. Rules of thumb, so each has exceptions with their reasons;
 * an exception that nothing needs any more fails. The core's own sentences (`core.js`) are checked where they are collected.
 */

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { fill } from "../../www/words/template.js";
import { COUNTED, EXCEPTIONS, FORBIDDEN, TERMS, VERBS } from "./readability-words.js";
import { LANGUAGES } from "./support.js";

/** @typedef {import("./support.js").Language} Language */
/** @typedef {{ book: string, key: string, form: string, text: string }} Text */

const WORDS = new URL("../../www/words/", import.meta.url);
const QUESTIONS = new URL("../../www/questions/", import.meta.url);
const MOST_WORDS = 25;
const FEWEST_WORDS = 2;
const TAGS = { en: "en-GB", de: "de-DE", fr: "fr-FR" };
/** Values that a placeholder may have, and one that is a plausible single word. */
const VALUES = [
  "0",
  "1",
  "2",
  "−1",
  "The lowest position that I could hold in the wind tunnel in March, with the old helmet",
];
const ONE_WORD = "Twelve";
/** A closing mark may stand between a full stop and the space after it. */
const SENTENCE_END = /(?<=[.!?…][”“»)*]*)\s+/u;

/** @param {Language} language @param {string} file @returns {Promise<Record<string, string | Record<string, string>>>} */
const read = async (language, file) => (await import(new URL(`${language}/${file}`, WORDS).href)).default;

/** Every text of a language, each plural form by itself. @param {Language} language @returns {Promise<Text[]>} */
async function textsOf(language) {
  const files = readdirSync(new URL(language, WORDS)).filter((file) => file !== "core.js");
  const books = await Promise.all(files.map(async (file) => /** @type {const} */ ([file, await read(language, file)])));
  return books.flatMap(([file, texts]) =>
    Object.entries(texts).flatMap(([key, template]) =>
      Object.entries(typeof template === "string" ? { "": template } : template).map(([form, text]) => ({
        book: file.replace(".js", ""),
        key,
        form,
        text,
      })),
    ),
  );
}

/** @param {string} text @param {string} [value] */
const filled = (text, value = ONE_WORD) =>
  fill(text, Object.fromEntries([...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => [name, value])), TAGS.en);

/** @param {string} sentence */
const wordsOf = (sentence) => sentence.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word));

/** The number of a step is no sentence, and a bold run at the head of a text that ends like one is its heading: "**Before a test.** …". @param {string} text */
const withoutHeading = (text) => text.replace(/^\d\. |^\*\*[^*]+[.:]\*\*\s*/u, "");

/** @param {string} text */
const sentencesOf = (text) => filled(withoutHeading(text)).split(SENTENCE_END).filter(Boolean);

/** @param {Text} text */
const placeOf = ({ book, key }) => `${book}: ${key}`;

/**
 * What is wrong with the texts of a language by one rule, but for its exceptions.
 * @param {Language} language @param {keyof typeof EXCEPTIONS} rule @param {(text: Text) => string[]} wrong
 */
async function assertRule(language, rule, wrong) {
  const allowed = EXCEPTIONS[rule];
  const found = (await textsOf(language)).map((text) => ({ place: placeOf(text), faults: wrong(text) }));
  const faulty = found.filter(({ faults }) => faults.length);
  const left = faulty.filter(({ place }) => !Object.hasOwn(allowed, place));
  assert.deepEqual(
    left.map(({ place, faults }) => `${place}: ${faults.join(" | ")}`),
    [],
  );
  return faulty.map(({ place }) => place);
}

/** @type {Record<keyof typeof EXCEPTIONS, (language: Language) => (text: Text) => string[]>} */
const RULES = {
  /** Words are counted with every placeholder as one word. A semicolon or a colon does not end a sentence. */
  length: () => (text) => sentencesOf(text.text).filter((sentence) => wordsOf(sentence).length > MOST_WORDS),
  /**
   * What ends with a full stop is a sentence: it has two words, does not begin with a small letter after another sentence, and holds one of
   * the verbs that the texts use. One that a placeholder fills whole is what is put there. A verb that is new to the texts is added to the list, which takes a moment; a fragment stands out there. It
   * does not show that the verb is finite or belongs to the subject.
   */
  fragment: (language) => (text) =>
    sentencesOf(text.text).filter((sentence, at) => {
      if (!/\.[”“»)*]*$/u.test(sentence) || !/\p{L}/u.test(sentence.replaceAll(ONE_WORD, ""))) return false;
      if (wordsOf(sentence).length < FEWEST_WORDS) return true;
      return (at > 0 && /^\p{Ll}/u.test(sentence)) || !VERBS[language].test(sentence);
    }),
  forbidden: (language) => (text) =>
    FORBIDDEN[language]
      .filter(({ word, only }) => (!only || only.includes(text.book)) && word.test(text.text.replace(/\{\w+\}/g, "")))
      .map(({ word, why }) => `${word.source} (${why})`),
  /**
   * A number beside a word that it changes has a form for one; and in French, where that form is also for none and for one and a half, the
   * form holds the number. Words that a number leaves as they are, are listed.
   */
  plural: (language) => (text) => {
    if (text.form === "") return text.text.match(COUNTED[language]) ?? [];
    const saysIt = /\{(?:count|number|crossings)\}/u.test(text.text);
    return language === "fr" && text.form === "one" && /\s/u.test(text.text) && !saysIt ? [text.text] : [];
  },
  placeholders: () => (text) =>
    VALUES.map((value) => filled(text.text, value)).filter((said) => /[{}]|\[[^\]]*\||undefined|NaN| {2}/u.test(said)),
};

for (const [rule, check] of Object.entries(RULES)) {
  const name = /** @type {keyof typeof EXCEPTIONS} */ (rule);
  /** @type {Set<string>} */
  const needed = new Set();
  for (const language of LANGUAGES) {
    test(`readable texts in ${language}: ${rule}`, async () => {
      for (const place of await assertRule(language, name, check(language))) needed.add(place);
    });
  }
  test(`no exception from the rule of ${rule} is idle`, () => {
    assert.deepEqual(
      Object.keys(EXCEPTIONS[name]).filter((place) => !needed.has(place)),
      [],
    );
  });
}

/** The keys of the terms that a text explains. @param {string} text */
const explained = (text) => [...text.matchAll(/\[[^|\]]+\|(\w+)\]/g)].map(([, key]) => key);

/** The scripts of a question, as one text. @param {string} id */
function scriptsOf(id) {
  const folder = new URL(`${id}/`, QUESTIONS);
  return readdirSync(folder)
    .map((file) => readFileSync(new URL(file, folder), "utf8"))
    .join("\n");
}

/** The books of the questions, and of the story. */
const PAGES = [...readdirSync(QUESTIONS, { withFileTypes: true })]
  .filter((entry) => entry.isDirectory() && entry.name !== "shared")
  .map(({ name }) => name);

for (const language of LANGUAGES) {
  test(`each term is explained on its own page in ${language}`, async () => {
    const texts = await textsOf(language);
    const ofBook = (/** @type {string} */ name) => texts.filter(({ book }) => book === name);
    for (const page of [...PAGES, "learn"]) {
      const scripts = page === "learn" ? "" : scriptsOf(page);
      const own = ofBook(page).flatMap(({ text }) => explained(text));
      // The sentence names critical power and W′ where a question lets its rider choose an effort; the answer explains ± and tries itself.
      if (scripts.includes("shared/effort-choice.js"))
        own.push(...explained(ofBook("shared").find(({ key }) => key === "fromCurve")?.text ?? ""));
      const missing = TERMS[language]
        .filter(({ key, word }) => !own.includes(key) && ofBook(page).some(({ text }) => word.test(text)))
        .map(({ key }) => key);
      assert.deepEqual(missing, [], page);
      // Under the sentence of a question stands what ± means; the story has no such line.
      if (page === "learn") assert.ok(own.includes("sd"), "the story shows ± and explains it");
    }
  });

  test(`each explanation in ${language} is one sentence`, async () => {
    const texts = await textsOf(language);
    const used = new Set(texts.flatMap(({ text }) => explained(text)).concat("sd", "tries"));
    const meanings = texts.filter(({ book, key }) => book === "page" && key.startsWith("term."));
    assert.deepEqual(meanings.map(({ key }) => key.replace("term.", "")).sort(), [...used].sort());
    for (const { key, text } of meanings) assert.equal(sentencesOf(text).length, 1, key);
  });
}
