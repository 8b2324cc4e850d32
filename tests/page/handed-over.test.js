// @ts-check
/** What is shared to the page is read once, and is still there where the page was left before that. */

import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { takeHandedOver } from "../../www/recordings/handed-over.js";

const NAME = "fasterby-shared";
/** @type {Map<string, Map<string, Response>>} */
let kept = new Map();

/** The part of the browser's store of responses that is asked. @param {Map<string, Response>} entries */
const store = (entries) => ({
  keys: async () => [...entries.keys()],
  match: async (/** @type {string} */ key) => entries.get(key)?.clone(),
  delete: async (/** @type {string} */ key) => entries.delete(key),
});

beforeEach(() => {
  kept = new Map([[NAME, new Map([["shared/0", new Response("ride")]])]]);
  Object.assign(globalThis, {
    caches: {
      has: async (/** @type {string} */ name) => kept.has(name),
      open: async (/** @type {string} */ name) => store(kept.get(name) ?? new Map()),
      delete: async (/** @type {string} */ name) => kept.delete(name),
    },
  });
});

/** The texts of what is handed over. @param {boolean} read @param {() => void} [meanwhile] */
async function handedOver(read, meanwhile) {
  /** @type {string[]} */
  let texts = [];
  takeHandedOver(async (files) => {
    texts = await Promise.all(files.map((file) => file.text()));
    meanwhile?.();
    return read;
  });
  for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  return texts;
}

test("a shared file is read once", async () => {
  assert.deepEqual(await handedOver(true), ["ride"]);
  assert.deepEqual(await handedOver(true), []);
  assert.equal(kept.has(NAME), false);
});

test("a shared file is handed over again where the page was left while it was read", async () => {
  assert.deepEqual(await handedOver(false), ["ride"]);
  assert.deepEqual(await handedOver(true), ["ride"]);
});

test("what is shared while another file is read stays", async () => {
  await handedOver(true, () => kept.get(NAME)?.set("shared/1", new Response("second ride")));
  assert.deepEqual(await handedOver(true), ["second ride"]);
});
