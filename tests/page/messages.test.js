// @ts-check
/** What the core says is data: no script reads a sentence to learn something from it. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { scripts, sourceOf } from "./scripts.js";

/** A message, or a sentence made of one, that is taken apart. */
const TAKEN_APART =
  /\b(?:message|sentence|errorWords\([^)]*\)|\.words\([^)]*\))(?:\??\.\w+)?\.(?:match|matchAll|replace|replaceAll|search|split|startsWith|endsWith|includes|indexOf)\(|\.(?:test|exec)\((?:\w+\.)?(?:message|sentence)\)/g;

/** @param {string} source */
const takenApart = (source) => source.replace(/\/\*[\s\S]*?\*\//g, "").match(TAKEN_APART) ?? [];

test("a sentence that is taken apart is found", () => {
  assert.equal(takenApart("const [from] = message.match(/\\d+/g) ?? [];").length, 1);
  assert.equal(takenApart("error.message.split(' ')").length, 1);
  assert.equal(takenApart("/longer/.test(warning.message)").length, 1);
  assert.equal(takenApart("errorWords(error, units).replace('a', 'b')").length, 1);
  assert.equal(takenApart("say(note, message)").length, 0);
});

test("no script takes a message of the core apart", () => {
  assert.ok(scripts.length > 150);
  const found = scripts.flatMap((name) => takenApart(sourceOf(name)).map((what) => `${name}: ${what}`));
  assert.deepEqual(found, []);
});
