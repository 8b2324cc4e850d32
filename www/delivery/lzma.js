// @ts-check
/**
 * Unpacks what was packed by LZMA, which is denser than what browsers unpack by themselves. The form is the one that
 * "LZMA specification" (Igor Pavlov, 2015, public domain) describes: properties (1 byte), size of the dictionary (4), length of the
 * content (8, little end first), then the range coder's bytes. The length must be told, so no mark of the end is read.
 */

const HEADER_BYTES = 13;
/** What the range coder reads before the first bit: a zero and four bytes. */
const RANGE_BYTES = 5;

/** A probability is a share of this; each starts at a half, and goes a 32nd of its way at a time. */
const PROBABILITY_BITS = 11;
const HALF = 1 << (PROBABILITY_BITS - 1);
const STEP_BITS = 5;
/** The range is widened where it falls below this. */
const NARROW = 1 << 24;

/** What the last pieces were; from the second number on, the last was not a literal byte. */
const STATES = 12;
const FIRST_STATE_OF_MATCHES = 7;
const POSITIONS = 16;
const LITERAL_PROBABILITIES = 0x300;
const SHORTEST_MATCH = 2;
/** Distances of matches are told apart by lengths up to this. */
const LENGTH_KINDS = 4;
const SLOT_BITS = 6;
/** Distances from this slot on have bits without a probability, but for the lowest four. */
const FIRST_DIRECT_SLOT = 14;
const ALIGNED_BITS = 4;

/** Room for `count` probabilities. @param {number} count */
const halves = (count) => new Uint16Array(count).fill(HALF);

/** Reads bits of which each is as likely as told. @param {Uint8Array} packed @param {number} from */
function rangeDecoder(packed, from) {
  let next = from;
  // The width of what is left of the range, and where in it the content lies: 32 bits each, without a sign.
  const at = new Uint32Array([0xffffffff, 0]);

  function byte() {
    if (next >= packed.length) throw new RangeError("The packed content ends early.");
    next += 1;
    return packed[next - 1];
  }

  for (let i = 0; i < RANGE_BYTES; i += 1) at[1] = (at[1] << 8) | byte();

  function widen() {
    if (at[0] >= NARROW) return;
    at[0] <<= 8;
    at[1] = (at[1] << 8) | byte();
  }

  /** A bit whose probability to be 0 is kept at `of`, and follows what is read. @param {Uint16Array} probabilities @param {number} of */
  function bit(probabilities, of) {
    const probability = probabilities[of];
    const bound = Math.imul(at[0] >>> PROBABILITY_BITS, probability) >>> 0;
    const isOne = at[1] >= bound;
    if (isOne) {
      at[0] -= bound;
      at[1] -= bound;
      probabilities[of] -= probability >> STEP_BITS;
    } else {
      at[0] = bound;
      probabilities[of] += (2 * HALF - probability) >> STEP_BITS;
    }
    widen();
    return isOne ? 1 : 0;
  }

  /** Bits that are as likely 0 as 1, the highest first. @param {number} count */
  function evenBits(count) {
    let value = 0;
    for (let i = 0; i < count; i += 1) {
      at[0] >>>= 1;
      const isOne = at[1] >= at[0];
      if (isOne) at[1] -= at[0];
      value = (value << 1) | (isOne ? 1 : 0);
      widen();
    }
    return value;
  }

  /** A number of so many bits, the highest first; what was read so far chooses the next probability. @param {Uint16Array} probabilities @param {number} bits @param {number} [from] */
  function tree(probabilities, bits, from = 0) {
    let read = 1;
    for (let i = 0; i < bits; i += 1) read = (read << 1) | bit(probabilities, from + read);
    return read - (1 << bits);
  }

  /** The same, the lowest bit first. @param {Uint16Array} probabilities @param {number} bits @param {number} [from] */
  function reverseTree(probabilities, bits, from = 0) {
    let [read, value] = [1, 0];
    for (let i = 0; i < bits; i += 1) {
      const one = bit(probabilities, from + read);
      read = (read << 1) | one;
      value |= one << i;
    }
    return value;
  }

  return { bit, evenBits, tree, reverseTree };
}

/** @typedef {ReturnType<typeof rangeDecoder>} RangeDecoder */

/** Reads lengths of matches: 8 short ones, 8 more, or 256 more. @param {RangeDecoder} range */
function lengthDecoder({ bit, tree }) {
  const choice = halves(2);
  const [short, middle, long] = [halves(POSITIONS << 3), halves(POSITIONS << 3), halves(1 << 8)];
  /** @param {number} position */
  return (position) => {
    if (!bit(choice, 0)) return tree(short, 3, position << 3);
    return bit(choice, 1) ? 16 + tree(long, 8) : 8 + tree(middle, 3, position << 3);
  };
}

/** Reads how far back matches lie, less one. @param {RangeDecoder} range */
function distanceDecoder({ evenBits, tree, reverseTree }) {
  const slots = halves(LENGTH_KINDS << SLOT_BITS);
  const aligned = halves(1 << ALIGNED_BITS);
  const middle = Array.from({ length: FIRST_DIRECT_SLOT }, (_, slot) => halves(1 << (slot >> 1)));
  /** @param {number} length */
  return (length) => {
    const slot = tree(slots, SLOT_BITS, Math.min(length, LENGTH_KINDS - 1) << SLOT_BITS);
    if (slot < 4) return slot;
    const bits = (slot >> 1) - 1;
    const highest = ((2 | (slot & 1)) << bits) >>> 0;
    if (slot < FIRST_DIRECT_SLOT) return highest + reverseTree(middle[slot], bits);
    const direct = evenBits(bits - ALIGNED_BITS) << ALIGNED_BITS;
    return highest + (direct >>> 0) + reverseTree(aligned, ALIGNED_BITS);
  };
}

/** @param {Uint8Array} packed @throws {RangeError} where it ends early, or is not of this form */
function headerOf(packed) {
  if (packed.length < HEADER_BYTES) throw new RangeError("The packed content ends early.");
  const view = new DataView(packed.buffer, packed.byteOffset, HEADER_BYTES);
  const [properties, length] = [view.getUint8(0), Number(view.getBigUint64(5, true))];
  if (properties >= 9 * 5 * 5) throw new RangeError("The packed content is not of this form.");
  const [literalBits, others] = [properties % 9, Math.trunc(properties / 9)];
  return { literalBits, literalPositionBits: others % 5, positionBits: Math.trunc(others / 5), length };
}

/**
 * What is packed.
 * @param {Uint8Array} packed
 * @returns {Uint8Array<ArrayBuffer>}
 * @throws {RangeError} where it ends early, is not of this form, or tells a length that there is no room for
 */
export function unpackedLzma(packed) {
  const { literalBits, literalPositionBits, positionBits, length } = headerOf(packed);
  const range = rangeDecoder(packed, HEADER_BYTES);
  const { bit } = range;
  const [matchLength, repeatedLength, distanceOf] = [
    lengthDecoder(range),
    lengthDecoder(range),
    distanceDecoder(range),
  ];
  const literals = halves(LITERAL_PROBABILITIES << (literalBits + literalPositionBits));
  const [isMatch, isRepeatedFar] = [halves(STATES * POSITIONS), halves(STATES * POSITIONS)];
  const [isRepeated, isNotLast, isNotSecond, isNotThird] = Array.from({ length: 4 }, () => halves(STATES));
  const content = new Uint8Array(length);
  let size = 0;
  let state = 0;
  // How far back the last four matches lay, less one.
  let [last, second, third, fourth] = [0, 0, 0, 0];

  function literal() {
    const before = size > 0 ? content[size - 1] : 0;
    const place = ((size & ((1 << literalPositionBits) - 1)) << literalBits) + (before >> (8 - literalBits));
    const from = LITERAL_PROBABILITIES * place;
    let read = 1;
    if (state >= FIRST_STATE_OF_MATCHES) {
      // After a match, the byte that would have gone on with it is telling as long as they are the same.
      let expected = content[size - last - 1];
      while (read < 0x100) {
        const likely = (expected >> 7) & 1;
        expected <<= 1;
        const one = bit(literals, from + ((1 + likely) << 8) + read);
        read = (read << 1) | one;
        if (one !== likely) break;
      }
    }
    while (read < 0x100) read = (read << 1) | bit(literals, from + read);
    content[size] = read;
    size += 1;
    state = state < 4 ? 0 : state - (state < 10 ? 3 : 6);
  }

  /** @param {number} count */
  function copy(count) {
    if (last >= size || count > length - size) throw new RangeError("The packed content is not of this form.");
    for (const end = size + count; size < end; size += 1) content[size] = content[size - last - 1];
  }

  /** @param {number} position */
  function match(position) {
    const isAfterLiteral = state < FIRST_STATE_OF_MATCHES;
    if (!bit(isRepeated, state)) {
      const read = matchLength(position);
      [fourth, third, second, last] = [third, second, last, distanceOf(read)];
      state = isAfterLiteral ? 7 : 10;
      copy(read + SHORTEST_MATCH);
      return;
    }
    if (!bit(isNotLast, state)) {
      if (!bit(isRepeatedFar, state * POSITIONS + position)) {
        state = isAfterLiteral ? 9 : 11;
        copy(1);
        return;
      }
    } else if (!bit(isNotSecond, state)) [last, second] = [second, last];
    else if (!bit(isNotThird, state)) [last, second, third] = [third, last, second];
    else [last, second, third, fourth] = [fourth, last, second, third];
    state = isAfterLiteral ? 8 : 11;
    copy(repeatedLength(position) + SHORTEST_MATCH);
  }

  while (size < length) {
    const position = size & ((1 << positionBits) - 1);
    if (bit(isMatch, state * POSITIONS + position)) match(position);
    else literal();
  }
  return content;
}
