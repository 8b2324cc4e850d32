// @ts-check
/** Recordings: the module as the build made it, fed with a file, and the page's side of its worker. */

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import { readRecording } from "../../www/recordings/read.js";
import { noteWords } from "../../www/recordings/said.js";
import { usualUnits } from "../../www/units.js";
import { open, speak } from "../../www/words/index.js";
import { LANGUAGES, speaking } from "./support.js";

/** @typedef {import("../../www/recordings/read.js").Recording} Recording */
/** @typedef {import("../../www/recordings/read.js").ReadingError} ReadingError */

const MODULE = new URL("../../target/xtask/wasm/recordings/", import.meta.url);
const TABLE = "time_s,distance_m,power_w\n0,0,200\n1,10,\n2,20,220\n";

/** @type {(file: Blob, progress: (share: number | null) => void) => Promise<Recording>} */
let read;

before(async () => {
  const module = await import(new URL("recordings.js", MODULE).href);
  await module.default({ module_or_path: readFileSync(new URL("recordings_bg.wasm", MODULE)) });
  read = module.readRecording;
});

/** @param {Blob} file @returns {Promise<ReadingError>} */
const refusal = (file) =>
  read(file, () => undefined).then(
    () => assert.fail("it was read"),
    (error) => error,
  );

const packed = async (/** @type {string} */ text) =>
  new Blob([await new Response(new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"))).arrayBuffer()]);

test("a file goes in, and columns come out", async () => {
  /** @type {(number | null)[]} */
  const shares = [];
  const { kind, records, columns, summary, notes } = await read(new Blob([TABLE]), (share) => shares.push(share));
  assert.deepEqual([kind, records], ["csv", 3]);
  assert.deepEqual([...columns.distance_m], [0, 10, 20]);
  assert.ok(columns.power_w instanceof Float64Array && Number.isNaN(columns.power_w[1]));
  assert.deepEqual(summary, { elapsed_s: 2, distance_m: 20, climb_m: null, mean_power_w: 210 });
  assert.ok(notes.some(({ text }) => text === "power_missing"));
  assert.equal(shares.at(-1), 1);
});

test("a compressed file is the same, and one that is damaged is refused", async () => {
  const file = await packed(TABLE);
  assert.deepEqual((await read(file, () => undefined)).summary.distance_m, 20);
  assert.equal((await refusal(file.slice(0, -20))).text, "packing_broken");
});

test("a refusal is a value with its place", async () => {
  const error = await refusal(new Blob(["<gpx>\n", "<a>".repeat(100)]));
  assert.deepEqual([error.kind, error.field, error.text, error.place.line], ["recording", "", "too_deep", 2]);
});

/** A worker that answers with what it is told, or not at all. @param {unknown[]} answers */
function fake(answers) {
  const worker = {
    ended: false,
    onmessage: (/** @type {{ data: unknown }} */ _) => {},
    onerror: () => {},
    postMessage() {
      for (const data of answers) setTimeout(() => worker.ended || worker.onmessage({ data }));
    },
    terminate() {
      worker.ended = true;
    },
  };
  return { worker, open: () => /** @type {Worker} */ (/** @type {unknown} */ (worker)) };
}

test("progress is told, and the worker ends with the recording", async () => {
  const { worker, open: opens } = fake([{ share: 0.5 }, { recording: { kind: "gpx" } }]);
  /** @type {(number | null)[]} */
  const shares = [];
  const recording = await readRecording(new Blob(), { open: opens, progress: (share) => shares.push(share) });
  assert.equal(recording.kind, "gpx");
  assert.deepEqual(shares, [0.5]);
  assert.ok(worker.ended);
});

test("to cancel, to wait too long and to fail end the worker too", async () => {
  for (const [answers, options, wanted] of /** @type {const} */ ([
    [[], { signal: AbortSignal.timeout(5) }, "TimeoutError"],
    [[], { limit_ms: 5 }, "took_too_long"],
    [[{ broken: "no module" }], {}, "reader_missing"],
    [[{ error: { text: "empty" } }], {}, "empty"],
  ])) {
    const { worker, open: opens } = fake([...answers]);
    const error = await readRecording(new Blob(), { open: opens, ...options }).catch((thrown) => thrown);
    assert.equal(error.text ?? error.name, wanted);
    assert.ok(worker.ended);
  }
});

test("where workers are refused, the error says so", async () => {
  const refused = () => {
    throw new Error("refused");
  };
  const error = await readRecording(new Blob(), { open: refused }).catch((thrown) => thrown);
  assert.equal(error.text, "no_worker");
});

test("a note is worded in each language", async () => {
  const units = usualUnits("en-GB");
  for (const language of LANGUAGES) {
    await speaking(language);
    await open("recordings");
    const said = noteWords({ text: "gaps", values: { count: 2, longest: { kind: "clock", value: 75 } } }, units);
    assert.match(said, /2.*1:15/);
  }
  await speak("en");
});
