// @ts-check
/** Links and files of strangers: each is read, or refused with a sentence. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { deflateRawSync } from "node:zlib";
import { jsonText, readJson } from "../../www/parts/json.js";
import { questionText, fileName as savedAs } from "../../www/save/files.js";
import { decode, encode, LinkError } from "../../www/state/address.js";
import { fileName, readScenario } from "../../www/state/files.js";
import { speaking } from "./support.js";

const defaults = {
  scenario: { fasterby: 2, rider: { total_mass_kg: 82 }, course: { kind: "simple", distance_m: 40_000 } },
  with: () => ({ effort: { kind: "even" } }),
};
const nested = (/** @type {number} */ depth) => `${"[".repeat(depth)}${"]".repeat(depth)}`;
const objects = (/** @type {number} */ depth) => `${'{"a":'.repeat(depth)}1${"}".repeat(depth)}`;
const base64url = (/** @type {Uint8Array | string} */ bytes) => Buffer.from(bytes).toString("base64url");
const plainLink = (/** @type {string} */ text) => `#finish-time/1j.${base64url(text)}`;
const packedLink = (/** @type {string} */ text) => `#finish-time/1z.${base64url(deflateRawSync(text))}`;

const TEXTS = [
  "",
  "null",
  "5",
  "[]",
  '"x"',
  "{",
  "{}}",
  "[{",
  nested(100),
  nested(1_900_000),
  `{"s":${nested(100_000)}}`,
  `{"w":${objects(5_000)}}`,
  objects(100),
  '{"s":5}',
  '{"w":[]}',
  '{"s":null}',
  '{"s":{"__proto__":{"polluted":1}}}',
  '{"s":{"constructor":{"prototype":{"polluted":1}}}}',
  '{"__proto__":{"polluted":1}}',
  '{"d":{}}',
  '{"s":{"rider":null}}',
  '{"s":{"rider":5}}',
  "\ufeff{}",
  '{"s":{}}\u0000',
  '{"s":{"title":"<script>alert(1)</script>"}}',
  `{"s":{"title":"${"x".repeat(100_000)}"}}`,
  '{"s":{"title":"\\u202e"}}',
  '{"s":1e999}',
  '{"s":NaN}',
  "// {}",
];
const ADDRESSES = [
  "#",
  "#/",
  "#//",
  "#finish-time/",
  "#finish-time/1",
  "#finish-time/1z",
  "#finish-time/1z.",
  "#finish-time/1z.!!",
  "#finish-time/1z.AAAA",
  "#finish-time/1j.AAAA",
  "#finish-time/2z.AAAA",
  "#finish-time/9999j.e30",
  "#finish-time/0j.e30",
  "#finish-time/-1j.e30",
  "#finish-time/1x.e30",
  "#finish-time/1j.e30/more",
  `#finish-time/1j.${"A".repeat(500_000)}`,
  `#${"x".repeat(100_000)}/1j.e30`,
  "#__proto__/1j.e30",
  "#constructor/1j.e30",
  "#<img src=x>/1j.e30",
  "#%00/1j.e30",
  "#finish-time/1j.e30=",
  "#finish-time/1j.e3 0",
  "#finish-time/1j.\u202e",
  "#finish-time/١j.e30",
  `#finish-time/1z.${base64url(deflateRawSync(`{"s":{"title":"${" ".repeat(30_000_000)}"}}`))}`,
];

test("a hundred hostile links are read or refused with a sentence, and reach no prototype", async () => {
  await speaking("en");
  const links = [
    ...ADDRESSES,
    ...TEXTS.flatMap((text) => (text.length < 3_000_000 ? [plainLink(text), packedLink(text)] : [packedLink(text)])),
    ...Array.from(
      { length: 20 },
      (_, bytes) =>
        `#finish-time/1z.${base64url(Uint8Array.from({ length: 3 * bytes + 1 }, (_unused, at) => (at * 73 + bytes * 151) % 256))}`,
    ),
  ];
  assert.ok(links.length >= 100, `${links.length} links`);
  for (const link of links) {
    try {
      const read = await decode(link, defaults);
      if (read) assert.equal(typeof read.question, "string");
    } catch (error) {
      assert.ok(error instanceof LinkError && error.message.endsWith("."), `${link.slice(0, 80)}: ${error}`);
    }
    assert.equal(/** @type {any} */ ({}).polluted, undefined, link.slice(0, 80));
  }
});

test("a link that holds no object is refused", async () => {
  await speaking("en");
  for (const text of [
    "[1]",
    "5",
    "null",
    '"x"',
    "true",
    '{"s":[1]}',
    '{"w":5}',
    '{"s":{"rider":{"total_mass_kg":1e999}}}',
  ])
    for (const link of [plainLink(text), packedLink(text)])
      await assert.rejects(() => decode(link, defaults), LinkError, text);
});

test("a number too large for the page is refused where JSON is read", () => {
  for (const text of ["1e999", '{"power_w":1e999}', '[{"a":[-1e400]}]'])
    assert.throws(() => readJson(text), SyntaxError);
  assert.deepEqual(readJson('{"power_w":1e308}'), { power_w: 1e308 });
});

test("brackets without end are refused before they are read", () => {
  for (const text of [nested(1_900_000), `{"a":${nested(65)}}`, objects(65)])
    assert.throws(() => readJson(text), SyntaxError);
  assert.deepEqual(readJson(`{"title":"${"[".repeat(200)}\\"{{"}`), { title: `${"[".repeat(200)}"{{` });
});

/** @param {string | Uint8Array<ArrayBuffer>} content */
const file = (content) => new Blob([content]);
const SHOWN = {
  question: "speed-for-watts",
  own: { by: "speed", speed_m_s: 12 },
  request: { scenario: { fasterby: 2, title: "Thursday" }, with: { speed_m_s: 12, grade: 0 } },
  answer: { columns: { power_w: new Float64Array([1, 2]) } },
};

test("sixty files are read as what they are, or refused with a sentence", async () => {
  await speaking("en");
  const good = [
    '{"fasterby":1}',
    '{"fasterby":2,"title":"x"}',
    '\ufeff{"fasterby":2}',
    ' \n{"fasterby":2}\n',
    questionText(SHOWN),
    '{"question":"finish-time","request":{"scenario":{},"with":{}},"answer":{}}',
    '{"question":"finish-time","request":{"scenario":{}}}',
    '{"question":"finish-time","request":{"scenario":{},"with":5}}',
  ];
  const bad = [
    ...TEXTS,
    '{"question":5,"request":{"scenario":{}}}',
    '{"question":"x","request":5}',
    '{"question":"x","request":{"scenario":[]}}',
    '{"question":"x"}',
    "<gpx></gpx>",
    "<?xml version='1.0'?><gpx/>",
    "PK\u0003\u0004",
    "%PDF-1.7",
    "a,b\n1,2",
    "\u0000\u0001\u0002",
    "ÿþ{",
    '{"fasterby"',
    '["fasterby"]',
    '"fasterby"',
    "{'fasterby':2}",
    "{fasterby:2}",
    " ".repeat(8_000_001),
    "x".repeat(9_000_000),
    "true",
    "0",
  ];
  const bytes = [
    Uint8Array.from([0xff, 0xfe, 0x7b, 0, 0x7d, 0]),
    Uint8Array.from([0xc3, 0x28]),
    new Uint8Array(1000),
    Uint8Array.from({ length: 4096 }, (_, at) => (at * 31) % 256),
  ];
  assert.ok(good.length + bad.length + bytes.length >= 60, `${good.length + bad.length + bytes.length} files`);
  for (const text of good) assert.ok("scenario" in (await readScenario(file(text))), text.slice(0, 80));
  for (const content of [...bad, ...bytes]) {
    const read = await readScenario(file(content));
    assert.ok(
      "message" in read && /^[A-Z].*\.$/.test(read.message),
      `${String(content).slice(0, 80)}: ${JSON.stringify(read).slice(0, 80)}`,
    );
  }
});

test("a question that was saved whole is opened with its own numbers", async () => {
  await speaking("en");
  assert.deepEqual(await readScenario(file(questionText(SHOWN))), {
    question: "speed-for-watts",
    scenario: { fasterby: 2, title: "Thursday" },
    with: { "speed-for-watts": { by: "speed", speed_m_s: 12 } },
  });
});

test("files are named after the title, in signs that every system takes", () => {
  assert.equal(savedAs("power-or-drag", "map", "svg", "Thursday 25"), "thursday-25-power-or-drag-map.svg");
  assert.equal(savedAs("power-or-drag", "map", "svg"), "fasterby-power-or-drag-map.svg");
  for (const title of [
    "../../etc/passwd",
    "con",
    "NUL",
    'a/b\\c:d*e?f"g<h>i|j',
    "\u202egpj.exe",
    "שלום",
    "x".repeat(400),
    "é".repeat(400),
    ". .",
    "\u0000",
  ]) {
    for (const name of [savedAs("finish-time", "", "json", title), fileName(title)]) {
      assert.match(name, /^[a-z0-9][a-z0-9_-]*\.json$/, title);
      assert.ok(name.length <= 80 && !/^(con|nul|prn|aux)\./.test(name), name);
    }
  }
});

test("links and requests are the same where an old library has given every list a toJSON", async () => {
  const now = {
    question: "finish-time",
    scenario: {
      ...defaults.scenario,
      positions: [{ name: "low" }, { name: "high" }],
      course: { kind: "profile", points: [{ distance_m: 0 }, { distance_m: 1 }] },
    },
    with: { effort: { kind: "even" } },
  };
  const given = { scenario: defaults.scenario, with: defaults.with() };
  const [link, text] = [await encode(now, given), jsonText(now)];
  Object.defineProperty(Array.prototype, "toJSON", {
    value() {
      return "lost";
    },
    configurable: true,
  });
  Object.defineProperty(Object.prototype, "toJSON", {
    value() {
      return "lost";
    },
    configurable: true,
  });
  try {
    assert.equal(JSON.stringify(now), '"lost"');
    assert.equal(jsonText(now), text);
    assert.equal(await encode(now, given), link);
  } finally {
    Reflect.deleteProperty(Array.prototype, "toJSON");
    Reflect.deleteProperty(Object.prototype, "toJSON");
  }
});
