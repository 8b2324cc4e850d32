// @ts-check
/** The page's own reader of LZMA: what other programs packed comes back, and what is damaged is refused. */

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { unpackedLzma } from "../../www/delivery/lzma.js";

const BUILT = new URL("../../target/xtask/", import.meta.url);
const HEADER_BYTES = 13;
/** Python's packer writes a mark of the end behind the content, which a reader that knows the length has no need of. */
const MOST_END_BYTES = 8;

/** Four words in turns, so that each of the last four distances is used again. */
const TURNS = Array.from({ length: 12 }, (_, i) => {
  const words = ["abcdefgh", "ABCDEFGHIJKL", "0123456789", '!"#$%&()*+,-./'];
  return words[(i * i + Math.floor(i / 3)) % 4] + String.fromCharCode(60 + i);
}).join("");

/**
 * Content, and what Python 3.11 made of it: `lzma.compress(content, format=lzma.FORMAT_RAW, filters=[dict(id=lzma.FILTER_LZMA1,
 * preset=9 | lzma.PRESET_EXTREME, dict_size=1 << 22, lc=lc, lp=lp, pb=pb, nice_len=273)])`, behind the header
 * `bytes([(pb * 5 + lp) * 9 + lc]) + struct.pack("<IQ", 1 << 22, len(content))`.
 * @type {readonly (readonly [string, string])[]}
 */
const PACKED = [
  // lc 3, lp 0, pb 2
  ["", "XQAAQAAAAAAAAAAAAACD//v//8AAAAA="],
  ["a", "XQAAQAABAAAAAAAAAAAwwfv////gAAAA"],
  // lc 3, lp 0, pb 0
  ["a".repeat(600), "AwAAQABYAgAAAAAAAAAw8HvB/oVCauD///TcwAA="],
  // lc 3, lp 0, pb 2
  [
    "Faster by 0:42, slower by 0:42; faster by 1:42, level. ".repeat(3),
    "XQAAQAClAAAAAAAAAAAjGEpnbzTTU54Kwn2a5o2KxWeWjYcXcAzuscmEGuouiEdAheOyAA6/2rt///6LWAA=",
  ],
  // lc 0, lp 2, pb 4
  [
    TURNS,
    "xgAAQACIAAAAAAAAAAAwmIhmQzibs3mwuajeVDs1043OxQ1J+2phT/aLyjeNAbimJV70PnMRrmisKazKkqO/VuTEfZbH1yvAm42rn6nIqenq5A8JxA/kxDzfVrkxK//+hNgA",
  ],
];
const [LONGEST, LONGEST_PACKED] = PACKED[PACKED.length - 1];

const bytesOf = (/** @type {string} */ base64) => new Uint8Array(Buffer.from(base64, "base64"));
const built = (/** @type {string} */ path) => new Uint8Array(readFileSync(new URL(path, BUILT)));

/** The text that is packed, or null where it is refused. @param {Uint8Array} packed */
function unpacked(packed) {
  try {
    return new TextDecoder("latin1").decode(unpackedLzma(packed));
  } catch (error) {
    assert.ok(error instanceof RangeError, String(error));
    return null;
  }
}

test("what Python packed comes back", () => {
  for (const [content, packed] of PACKED) assert.equal(unpacked(bytesOf(packed)), content);
});

test("what the build packed for the page as one file are its modules", () => {
  const modules = ["whole", "recordings"].map((name) => built(`wasm/${name}/${name}_bg.wasm`));
  assert.ok(Buffer.concat(modules).equals(unpackedLzma(built("one-file/modules.lzma"))));
});

test("what a byte follows that is not part of it comes back too", () => {
  for (const [content, packed] of PACKED) assert.equal(unpacked(Uint8Array.of(...bytesOf(packed), 0)), content);
});

test("what is cut off anywhere before its end is refused", () => {
  for (const [content, base64] of PACKED) {
    const packed = bytesOf(base64);
    for (let length = 0; length < packed.length; length += 1) {
      const read = unpacked(packed.subarray(0, length));
      assert.ok(read === null || (read === content && length >= packed.length - MOST_END_BYTES), `${length} bytes`);
    }
  }
});

test("what is damaged is refused, or comes to an end with the length that it told", () => {
  let refused = 0;
  const sound = bytesOf(LONGEST_PACKED);
  for (let at = HEADER_BYTES; at < sound.length; at += 1) {
    for (let bit = 0; bit < 8; bit += 1) {
      const read = unpacked(sound.map((byte, i) => (i === at ? byte ^ (1 << bit) : byte)));
      if (read === null) refused += 1;
      else assert.equal(read.length, LONGEST.length);
    }
  }
  assert.ok(refused > 0);
});

test("a header of another form, and a length that nothing has room for, are refused", () => {
  const sound = bytesOf(LONGEST_PACKED);
  assert.equal(unpacked(sound.with(0, 9 * 5 * 5)), null);
  // As it stands where the length is not told.
  assert.equal(unpacked(sound.map((byte, i) => (i >= 5 && i < HEADER_BYTES ? 0xff : byte))), null);
});
