// @ts-check
/** Recordings: the module as the build made it, fed with a file, and the page's side of its worker. */

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import { readRecording } from "../../www/recordings/read.js";
import { noteWords } from "../../www/recordings/said.js";
import { isPacked, unpacked } from "../../www/recordings/unpack.js";
import { usualUnits } from "../../www/units.js";
import { open, speak } from "../../www/words/index.js";
import { LANGUAGES, speaking } from "./support.js";

/** @typedef {import("../../www/recordings/read.js").Recording} Recording */
/** @typedef {import("../../www/recordings/read.js").ReadingError} ReadingError */

const MODULE = new URL("../../target/xtask/wasm/recordings/", import.meta.url);
const TABLE = "time_s,distance_m,power_w\n0,0,200\n1,10,\n2,20,220\n";

/** A file whose bytes may be waited for, which outside of a browser's worker none is. */
class Held {
  /** @param {Uint8Array<ArrayBuffer>} bytes */
  constructor(bytes) {
    this.bytes = bytes;
    this.size = bytes.length;
  }

  /** @param {number} from @param {number} to */
  slice(from, to) {
    return new Held(this.bytes.slice(from, to));
  }
}

class HeldReader {
  /** @param {Held} held */
  readAsArrayBuffer(held) {
    if (held.bytes[0] === GONE) throw new Error("gone");
    return held.bytes.buffer;
  }
}

/** No recording begins with this byte. */
const GONE = 0x7f;
const PIECE_BYTES = 1 << 20;

/** @type {{ readRecording: (file: Held, progress: (share: number) => void) => Recording, mostBytes: () => number }} */
let module;

before(async () => {
  Object.assign(globalThis, { FileReaderSync: HeldReader });
  module = await import(new URL("recordings.js", MODULE).href);
  const { default: init } = /** @type {any} */ (module);
  await init({ module_or_path: readFileSync(new URL("recordings_bg.wasm", MODULE)) });
});

const held = (/** @type {string} */ text) => new Held(new TextEncoder().encode(text));

/** @param {Held} file @returns {ReadingError} */
function refusal(file) {
  try {
    module.readRecording(file, () => undefined);
  } catch (error) {
    return /** @type {ReadingError} */ (error);
  }
  return assert.fail("it was read");
}

const packed = async (/** @type {string} */ text) =>
  new Response(new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"))).blob();

test("a file goes in, and columns come out", () => {
  /** @type {number[]} */
  const shares = [];
  const { kind, records, columns, summary, notes } = module.readRecording(held(TABLE), (share) => shares.push(share));
  assert.deepEqual([kind, records], ["csv", 3]);
  assert.deepEqual([...columns.distance_m], [0, 10, 20]);
  assert.ok(columns.power_w instanceof Float64Array && Number.isNaN(columns.power_w[1]));
  assert.deepEqual(summary, { elapsed_s: 2, distance_m: 20, climb_m: null, mean_power_w: 210 });
  assert.ok(notes.some(({ text }) => text === "power_missing"));
  assert.deepEqual(shares, [1]);
});

test("a large file goes in piece by piece", () => {
  const lines = Array.from({ length: 150_000 }, (_, second) => `${second},${10 * second},200\n`);
  const file = held(`time_s,distance_m,power_w\n${lines.join("")}`);
  /** @type {number[]} */
  const shares = [];
  assert.equal(module.readRecording(file, (share) => shares.push(share)).records, lines.length);
  assert.equal(shares.length, Math.ceil(file.size / PIECE_BYTES));
  assert.ok(shares.length > 1 && shares.every((share, at) => share > (shares[at - 1] ?? 0)));
  assert.equal(shares.at(-1), 1);
});

test("a refusal is a value with its place", () => {
  const error = refusal(held(`<gpx>\n${"<a>".repeat(100)}`));
  assert.deepEqual([error.kind, error.field, error.text, error.place.line], ["recording", "", "too_deep", 2]);
});

test("a file that is too large or gone is refused", () => {
  const large = Object.assign(held(TABLE), { size: module.mostBytes() + 1 });
  assert.equal(refusal(large).text, "too_large");
  assert.equal(refusal(new Held(Uint8Array.of(GONE))).text, "file_gone");
  assert.equal(refusal(held("")).text, "empty");
});

test("a compressed file is known and unpacked, and one that is damaged is not", async () => {
  const file = await packed(TABLE);
  assert.ok(await isPacked(file));
  assert.ok(!(await isPacked(new Blob([TABLE]))) && !(await isPacked(new Blob())));
  assert.equal(await (await unpacked(file, TABLE.length)).text(), TABLE);
  await assert.rejects(unpacked(file.slice(0, -20), TABLE.length), (error) => !(error instanceof DOMException));
});

test("unpacking ends soon after the most that is read", async () => {
  const MOST = 1_000_000;
  const { size } = await unpacked(await packed("0".repeat(20 * MOST)), MOST);
  assert.ok(size > MOST && size < 2 * MOST, String(size));
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
  const given = {
    open: () => /** @type {Worker} */ (/** @type {unknown} */ (worker)),
    fetched: async () => /** @type {WebAssembly.Module} */ ({}),
  };
  return { worker, given };
}

test("progress is told, and the worker ends with the recording", async () => {
  const { worker, given } = fake([{ share: 0.5 }, { recording: { kind: "gpx" } }]);
  /** @type {(number | null)[]} */
  const shares = [];
  const recording = await readRecording(new Blob(), { ...given, progress: (share) => shares.push(share) });
  assert.equal(recording.kind, "gpx");
  assert.deepEqual(shares, [0.5]);
  assert.ok(worker.ended);
});

test("to cancel, to wait too long and to fail end the worker too", async () => {
  for (const [answers, options, wanted] of /** @type {const} */ ([
    [[], { signal: AbortSignal.timeout(5) }, "TimeoutError"],
    [[], { limit_ms: 5 }, "took_too_long"],
    [[{ broken: "no module" }], {}, "reader_missing"],
    [[{ crashed: "unreachable" }], {}, "reader_crashed"],
    [[{ error: { text: "empty" } }], {}, "empty"],
  ])) {
    const { worker, given } = fake([...answers]);
    const error = await readRecording(new Blob(), { ...given, ...options }).catch((thrown) => thrown);
    assert.equal(error.text ?? error.name, wanted);
    assert.ok(worker.ended);
  }
});

test("a worker that fails is a fault of its loading before its first word, and of the reading after", async () => {
  for (const [answers, wanted] of /** @type {const} */ ([
    [[], "reader_missing"],
    [[{ share: 0.1 }], "reader_crashed"],
  ])) {
    const { worker, given } = fake([...answers]);
    const read = readRecording(new Blob(), given).catch((thrown) => thrown);
    setTimeout(() => worker.onerror(), 5);
    assert.equal((await read).text, wanted);
  }
});

test("a module that cannot be fetched is a fault of loading, and ends the worker too", async () => {
  const { worker, given } = fake([]);
  const fetched = () => Promise.reject(new Error("gone"));
  const error = await readRecording(new Blob(), { ...given, fetched }).catch((thrown) => thrown);
  assert.equal(error.text, "reader_missing");
  assert.ok(worker.ended);
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
