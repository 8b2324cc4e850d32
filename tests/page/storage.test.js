// @ts-check
/** A rider's own work is still there after links, full devices and storage that somebody has changed. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { deviceStorage } from "../../www/state/storage.js";
import { languageOf } from "../../www/words/languages.js";
import { choices, MemoryStorage, randomFrom } from "./support.js";

/** @param {number} mass @param {boolean} [from_link] */
const work = (mass, from_link = false) => ({
  question: "finish-time",
  scenario: { fasterby: 2, rider: { total_mass_kg: mass } },
  with: { "finish-time": {} },
  from_link,
});
const massOf = (/** @type {any} */ kept) => kept.scenario.rider?.total_mass_kg;
/** @param {MemoryStorage} device */
const storageOf = (device) => deviceStorage(/** @type {any} */ (device));

test("two links and an edit leave the rider's own numbers among the recent ones", () => {
  const storage = storageOf(new MemoryStorage());
  storage.keepLast(work(63));
  // A link takes the place of the rider's own, is changed, and gives way to another.
  storage.keepRecent(work(63));
  storage.keepLast(work(91, true));
  storage.keepRecent(work(92, true));
  storage.keepLast(work(70, true));
  assert.deepEqual(
    storage
      .recent()
      .filter(({ from_link }) => !from_link)
      .map(massOf),
    [63],
  );
  assert.deepEqual(storage.recent().map(massOf).sort(), [63, 92]);
  assert.equal(storage.last()?.from_link, true);
});

test("however many links are opened, the rider's own numbers stay, and so do the last few of their own", () => {
  const storage = storageOf(new MemoryStorage());
  storage.keepRecent(work(63));
  for (let link = 0; link < 50; link += 1) storage.keepRecent(work(100 + link, true));
  const recent = storage.recent();
  assert.ok(recent.some((kept) => massOf(kept) === 63));
  assert.ok(recent.length <= 8, `${recent.length} are kept`);
});

test("the same numbers are kept once", () => {
  const storage = storageOf(new MemoryStorage());
  for (let time = 0; time < 5; time += 1) storage.keepRecent(work(63));
  assert.equal(storage.recent().length, 1);
});

test("on a full device what came from links makes room for the rider's own, and a refusal is told", () => {
  const device = new MemoryStorage();
  const storage = storageOf(device);
  storage.keepRecent(work(91, true));
  device.room = 400;
  assert.equal(storage.keepRecent(work(63)).done, true);
  assert.deepEqual(storage.recent().map(massOf), [63]);
  device.room = 10;
  assert.deepEqual(storage.keepRecent(work(64)), { done: false, because: "full" });
  assert.deepEqual(storage.recent().map(massOf), [63]);
});

test("numbers that an earlier version kept before a link are found", () => {
  const device = new MemoryStorage();
  device.setItem(
    "fasterby:before-link",
    JSON.stringify({ layout: 1, stamp: "1", saved_at: "2026-01-01T00:00:00Z", ...work(63) }),
  );
  assert.deepEqual(storageOf(device).recent().map(massOf), [63]);
});

const ENTRY = {
  layout: 1,
  stamp: "1-1",
  saved_at: "2026-01-01T00:00:00Z",
  question: "finish-time",
  scenario: { fasterby: 2 },
  with: {},
};
/** What may stand in the place of a value, or of a whole entry. */
const VALUES = [
  "",
  "null",
  "5",
  "-1",
  "true",
  '"x"',
  "[]",
  "[1]",
  "{}",
  '{"layout":1}',
  "{",
  "\u0000",
  "[".repeat(100_000),
  '{"__proto__":{"x":1}}',
  "1e999",
  "undefined",
];
const KEYS = [
  "fasterby:last",
  "fasterby:before-link",
  "fasterby:recent:1",
  "fasterby:saved:other",
  "fasterby:saved",
  "fasterby:reading",
  "fasterby:units",
  "fasterby:saved:",
  "unlike",
];

/** @returns {[key: string, text: string][]} */
function damages() {
  const whole = KEYS.flatMap((key) => VALUES.map((text) => /** @type {[string, string]} */ ([key, text])));
  const parts = Object.keys(ENTRY).flatMap((name) =>
    VALUES.filter((text) => text.length < 50).flatMap((text) =>
      ["fasterby:last", "fasterby:saved:other", "fasterby:recent:1"].map(
        (key) =>
          /** @type {[string, string]} */ ([
            key,
            JSON.stringify({ ...ENTRY, [name]: 0 }).replace(`"${name}":0`, `"${name}":${text}`),
          ]),
      ),
    ),
  );
  const readings = VALUES.flatMap((text) => [
    ["fasterby:reading", `{"language":${text}}`],
    ["fasterby:reading", `{"decimal_mark":${text}}`],
    ["fasterby:units", `{"distance":${text}}`],
  ]);
  return [...whole, ...parts, .../** @type {[string, string][]} */ (readings)];
}

test("whatever is damaged hides itself alone, and never stops the start", () => {
  const states = damages();
  assert.ok(states.length >= 400, `${states.length} states`);
  for (const [key, text] of states) {
    const device = new MemoryStorage();
    const storage = storageOf(device);
    storage.save("mine", work(63));
    device.setItem(key, text);
    const about = `${key} = ${text.slice(0, 60)}`;
    assert.ok(
      storage.list().some(({ name }) => name === "mine"),
      about,
    );
    for (const { name, saved_at } of storage.list()) assert.equal(typeof name + typeof saved_at, "stringstring", about);
    assert.equal(massOf(storage.open("mine")), 63, about);
    for (const kept of [storage.last(), ...storage.recent(), storage.open("other")]) {
      if (kept)
        assert.deepEqual(
          [typeof kept.question, typeof kept.saved_at, typeof kept.scenario, typeof kept.with],
          ["string", "string", "object", "object"],
          about,
        );
    }
    assert.equal(
      languageOf([storage.reading().language, "de"]),
      storage.reading().language === "en" ? "en" : "de",
      about,
    );
    storage.units();
    // Work is kept all the same, and what stands there already is not overwritten unasked.
    assert.ok(storage.keepLast(work(64)).done || storage.last() === null, about);
    if (key === "fasterby:saved:other") assert.equal(storageOf(device).save("other", work(65)).done, false, about);
  }
});

test("many damages at once hide only themselves", () => {
  const { oneOf, below } = choices(randomFrom(5));
  const states = damages();
  for (let count = 0; count < 500; count += 1) {
    const device = new MemoryStorage();
    const storage = storageOf(device);
    storage.save("mine", work(63));
    storage.keepRecent(work(62));
    for (let more = below(8); more >= 0; more -= 1) device.setItem(...oneOf(states));
    assert.ok(storage.list().some(({ name }) => name === "mine"));
    assert.ok(storage.recent().some((kept) => massOf(kept) === 62));
  }
});

test("a browser that refuses storage keeps nothing and says so", () => {
  const refusing = new Proxy(new MemoryStorage(), {
    get: () => {
      throw new DOMException("refused", "SecurityError");
    },
  });
  for (const storage of [storageOf(refusing), deviceStorage(null)]) {
    assert.deepEqual([storage.last(), storage.recent(), storage.list()], [null, [], []]);
    assert.equal(storage.keepLast(work(63)).done, false);
    storage.forget("mine");
  }
});

/** @param {number} distance_m */
const courseWork = (distance_m) => ({ question: "", scenario: { course: { kind: "simple", distance_m } }, with: {} });

test("courses are kept by name apart from scenarios, and a removed one comes back", () => {
  const storage = storageOf(new MemoryStorage());
  storage.save("Mine", work(63));
  assert.equal(storage.courses.save("Mine", courseWork(5000)).done, true);
  assert.equal(massOf(storage.open("Mine")), 63);
  assert.deepEqual(storage.courses.open("Mine")?.scenario, courseWork(5000).scenario);
  const held = storage.courses.open("Mine");
  storage.courses.forget("Mine");
  assert.deepEqual(storage.courses.list(), []);
  assert.deepEqual(
    storage.list().map(({ name }) => name),
    ["Mine"],
  );
  assert.ok(held && storage.courses.save("Mine", held).done);
  assert.deepEqual(storage.courses.open("Mine")?.scenario, courseWork(5000).scenario);
});

test("a course's name that is taken is not overwritten unasked, and a full device is told", () => {
  const device = new MemoryStorage();
  storageOf(device).courses.save("Mine", courseWork(5000));
  // Another tab, which has not read it.
  const { courses } = storageOf(device);
  const refused = courses.save("Mine", courseWork(9000));
  assert.ok(!refused.done && refused.because === "newer-copy");
  assert.equal(courses.save("Mine", courseWork(9000), { replace: true }).done, true);
  device.room = 10;
  assert.deepEqual(courses.save("Other", courseWork(1000)), { done: false, because: "full" });
  assert.deepEqual(courses.open("Mine")?.scenario, courseWork(9000).scenario);
});

test("a damaged course hides itself alone", () => {
  for (const text of VALUES) {
    const device = new MemoryStorage();
    const { courses } = storageOf(device);
    courses.save("Mine", courseWork(5000));
    device.setItem("fasterby:course:Damaged", text);
    assert.deepEqual(
      courses.list().map(({ name }) => name),
      ["Mine"],
      text.slice(0, 20),
    );
    assert.equal(courses.open("Damaged"), null);
  }
});
