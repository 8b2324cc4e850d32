// @ts-check
/** Parts of the page as one file, which lie packed in it. */

import { unpackedLzma } from "./lzma.js";

const FIRST_SIGN = 0x100;
const BITS_A_SIGN = 15;

/** Bytes from text that holds fifteen bits in each sign, the highest first. Of the last sign a byte of zeros may be left. @param {string} text */
function bytesOf(text) {
  const bytes = new Uint8Array(Math.floor((text.length * BITS_A_SIGN) / 8));
  let held = 0;
  let bits = 0;
  let length = 0;
  for (let i = 0; i < text.length; i += 1) {
    held = (held << BITS_A_SIGN) | (text.charCodeAt(i) - FIRST_SIGN);
    for (bits += BITS_A_SIGN; bits >= 8; length += 1) {
      bits -= 8;
      bytes[length] = held >> bits;
      held &= (1 << bits) - 1;
    }
  }
  return bytes;
}

/**
 * The parts that `element` of `xtask/src/packed.rs` wrote into the page under a name.
 * @param {"page" | "modules"} name
 * @throws {RangeError} where the file is not whole
 */
export function unpackedParts(name) {
  const held = document.getElementById(`packed-${name}`);
  const content = unpackedLzma(bytesOf(held?.textContent ?? ""));
  let end = 0;
  return (held?.dataset.lengths ?? "").split(" ").map((length) => {
    const start = end;
    end += Number(length);
    return content.subarray(start, end);
  });
}
