// @ts-check
/** The page's types say what things are: `any` switches the type checker off wherever such a value goes. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { scripts, sourceOf } from "./scripts.js";

/** The types in a script's comments that are `any`, or made of it: what stands in braces, as in `{Record<string, any>}`. @param {string} source */
function anys(source) {
  const comments = source.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  const inBraces = comments.flatMap((comment) => comment.match(/\{(?:[^{}]|\{[^{}]*\})*\}|<[^<>]*>|=any\]/g) ?? []);
  return inBraces.filter((type) => /(?<![\w"'`.-])any(?![\w"'`-])/.test(type) && !/\bany \w/.test(type));
}

test("a type that is any is found", () => {
  assert.deepEqual(anys("/** @param {any} value */"), ["{any}"]);
  assert.deepEqual(anys("/** @type {Record<string, any>} */"), ["{Record<string, any>}"]);
  assert.deepEqual(anys("/** @template [T=any] */"), ["=any]"]);
  assert.deepEqual(anys("/** @param {string} name of any field */"), []);
});

test("no script of the page has a type that is any", () => {
  assert.ok(scripts.length > 150);
  const found = scripts.flatMap((name) => anys(sourceOf(name)).map((type) => `${name}: ${type}`));
  assert.deepEqual(found, []);
});
