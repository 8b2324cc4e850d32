// @ts-check
/** What the page's modules expect of a browser, as far as they are tested without one, and seeded random choices. */

import { open, speak } from "../../www/words/index.js";

Object.defineProperty(globalThis, "navigator", {
  value: { language: "en-GB", languages: ["en-GB", "de", "fr"] },
  configurable: true,
});

/** @typedef {"en" | "de" | "fr"} Language */
export const LANGUAGES = /** @type {const} */ (["en", "de", "fr"]);

/** Opens what is said, in a language. @param {Language} language */
export async function speaking(language) {
  await speak(language);
  await Promise.all(["page", "sheet", "units", "embed", "save"].map(open));
}

/** The same numbers from the same seed, evenly spread from 0 to 1 (Mulberry32, public domain). @param {number} seed */
export function randomFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** @param {() => number} random */
export function choices(random) {
  const below = (/** @type {number} */ count) => Math.floor(random() * count);
  return {
    below,
    /** @template T @param {readonly T[]} list */
    oneOf: (list) => list[below(list.length)],
    /** A text of some of these pieces. @param {readonly string[]} pieces @param {number} most */
    someOf: (pieces, most) => Array.from({ length: below(most + 1) }, () => pieces[below(pieces.length)]).join(""),
  };
}

/** The device's storage, in memory. */
export class MemoryStorage {
  /** @type {Map<string, string>} */
  #held = new Map();
  /** How many characters it takes; as many as are wanted if left out. */
  room = Infinity;

  get length() {
    return this.#held.size;
  }

  /** @param {number} index */
  key(index) {
    return [...this.#held.keys()][index] ?? null;
  }

  /** @param {string} key */
  getItem(key) {
    return this.#held.get(key) ?? null;
  }

  /** @param {string} key @param {string} value */
  setItem(key, value) {
    const others = [...this.#held].reduce(
      (sum, [name, text]) => sum + (name === key ? 0 : name.length + text.length),
      0,
    );
    if (others + key.length + value.length > this.room) throw new DOMException("full", "QuotaExceededError");
    this.#held.set(key, value);
  }

  /** @param {string} key */
  removeItem(key) {
    this.#held.delete(key);
  }

  clear() {
    this.#held.clear();
  }
}
