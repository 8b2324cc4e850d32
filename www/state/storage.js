// @ts-check
/**
 * What is kept on the device: the last work, scenarios saved by name, the units, the language. Private windows and full devices may refuse; then
 * nothing is kept and the caller says so. A copy that another tab wrote later is never overwritten unasked.
 */

import { READING } from "./keys.js";

const LAST = "fasterby:last";
const BEFORE_LINK = "fasterby:before-link";
const UNITS = "fasterby:units";
const INDEX = "fasterby:saved";
const SAVED = "fasterby:saved:";
/** Changes when what is kept is laid out differently; what a newer page kept is left as it is. */
const LAYOUT = 1;

/** @typedef {{ layout: number, stamp: string, saved_at: string, question: string, scenario: any, with: Record<string, any> }} Kept */
/** @typedef {{ name: string, saved_at: string }} Entry */
/** @typedef {{ done: true, stamp: string } | { done: false, because: "full" | "newer-copy" | "newer-layout", saved_at?: string }} Outcome */
/** @typedef {{ question: string, scenario: any, with: Record<string, any> }} Work */

/** @param {Storage | null} [device] */
export function deviceStorage(device = localStorageOrNull()) {
  /** The stamp under which this tab last read or wrote a key. @type {Map<string, string>} */
  const seen = new Map();

  /** @param {string} key @returns {any} */
  function read(key) {
    try {
      return JSON.parse(device?.getItem(key) ?? "null");
    } catch {
      return null;
    }
  }

  /** @param {string} key @param {unknown} value */
  function write(key, value) {
    try {
      if (!device) return false;
      device.setItem(key, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  }

  /** @param {string} key */
  function remove(key) {
    try {
      device?.removeItem(key);
    } catch {
      /* Nothing was kept, so nothing is left. */
    }
  }

  /** @param {string} key @returns {Kept | null} */
  function readKept(key) {
    const kept = read(key);
    if (!kept || typeof kept !== "object" || kept.layout !== LAYOUT || typeof kept.scenario !== "object") return null;
    seen.set(key, kept.stamp);
    return kept;
  }

  /** @param {string} key @param {Work} work @param {{ replace?: boolean }} [options] @returns {Outcome} */
  function keep(key, { question, scenario, with: details }, { replace = false } = {}) {
    const there = read(key);
    if (there?.layout > LAYOUT) return { done: false, because: "newer-layout" };
    if (there && !replace && there.stamp !== seen.get(key)) return { done: false, because: "newer-copy", saved_at: there.saved_at };
    const stamp = crypto.getRandomValues(new Uint32Array(2)).join("-");
    const kept = { layout: LAYOUT, stamp, saved_at: new Date().toISOString(), question, scenario, with: details };
    if (!write(key, kept)) return { done: false, because: "full" };
    seen.set(key, stamp);
    return { done: true, stamp };
  }

  /** The names in order; rebuilt from the keys where the list itself was lost. @returns {Entry[]} */
  function list() {
    const index = read(INDEX);
    const known = new Map(Array.isArray(index) ? index.map((entry) => [String(entry?.name), entry]) : []);
    /** @type {Entry[]} */
    const entries = [];
    for (const key of keys()) {
      if (!key.startsWith(SAVED)) continue;
      const name = key.slice(SAVED.length);
      entries.push({ name, saved_at: known.get(name)?.saved_at ?? read(key)?.saved_at ?? "" });
    }
    return entries.sort((a, b) => b.saved_at.localeCompare(a.saved_at));
  }

  function keys() {
    try {
      return device ? Object.keys(device) : [];
    } catch {
      return [];
    }
  }

  return {
    available: () => device !== null,
    last: () => readKept(LAST),
    /** The last work always follows the tab that changed last. @param {Work} work */
    keepLast: (work) => keep(LAST, work, { replace: true }),
    beforeLink: () => readKept(BEFORE_LINK),
    /** @param {Work} work */
    keepBeforeLink: (work) => keep(BEFORE_LINK, work, { replace: true }),
    units: () => read(UNITS),
    /** @param {unknown} units */
    keepUnits: (units) => write(UNITS, units),
    /** The language and the decimal mark that were chosen. */
    reading: () => read(READING),
    /** @param {{ language?: string, decimal_mark?: string }} reading */
    keepReading: (reading) => write(READING, reading),
    list,
    /** @param {string} name */
    open: (name) => readKept(SAVED + name),
    /** @param {string} name @param {Work} work @param {{ replace?: boolean }} [options] */
    save: (name, work, options) => {
      const outcome = keep(SAVED + name, work, options);
      if (outcome.done) write(INDEX, list());
      return outcome;
    },
    /** @param {string} name */
    forget: (name) => {
      remove(SAVED + name);
      write(INDEX, list());
    },
    /**
     * Calls back when another tab changes what is kept.
     * @param {(change: { what: "last" | "saved", name?: string }) => void} listener
     */
    onOtherTab: (listener) => {
      addEventListener("storage", ({ key }) => {
        if (key === LAST) listener({ what: "last" });
        else if (key?.startsWith(SAVED)) listener({ what: "saved", name: key.slice(SAVED.length) });
      });
    },
  };
}

function localStorageOrNull() {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}
