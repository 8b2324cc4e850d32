// @ts-check
/** Sentences of the core in the language that is spoken, their numbers as it writes them. What has no translation stays as it is. */

import { decimalMark } from "../parts/number-text.js";
import { book, keysOf, language } from "./index.js";

const say = book("core");

/** @typedef {{ key: string, pattern: RegExp, names: string[] }} Known a sentence with parts that vary */

/** @type {{ language: string, sentences: Known[] }} */
let known = { language: "", sentences: [] };

/** The translated sentences with parts that vary, those with most words of their own first. */
function varying() {
  if (known.language !== language()) {
    const keys = keysOf("core")
      .filter((key) => key.includes("{"))
      .sort((a, b) => ownLetters(b) - ownLetters(a));
    known = { language: language(), sentences: keys.map(compiled) };
  }
  return known.sentences;
}

/** @param {string} key */
const ownLetters = (key) => key.replace(/\{\w*\}/g, "").length;

/** @param {string} key @returns {Known} */
function compiled(key) {
  let nameless = 0;
  const names = [...key.matchAll(/\{(\w*)\}/g)].map(([, name]) => name || String(nameless++));
  const literal = key.split(/\{\w*\}/).map((piece) => piece.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return { key, names, pattern: new RegExp(`^${literal.join("(.*?)")}$`, "s") };
}

/** @param {string} sentence in English, as the core says it */
export function coreWords(sentence) {
  return decimals(translated(sentence));
}

/** A part that varies may be words of the core itself. @param {string} sentence @returns {string} */
function translated(sentence) {
  if (say.has(sentence)) return say(sentence);
  for (const { key, pattern, names } of varying()) {
    const found = pattern.exec(sentence);
    if (found)
      return say(
        /** @type {never} */ (key),
        Object.fromEntries(names.map((name, index) => [name, translated(found[index + 1])])),
      );
  }
  return sentence;
}

/** @param {string} text */
const decimals = (text) => text.replace(/(\d)\.(?=\d)/g, `$1${decimalMark()}`);
