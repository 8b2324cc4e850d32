// @ts-check
/**
 * What is kept on the device: the last work, recent work that a link took the place of, scenarios and courses saved by name, the units, the language.
 * Private windows and full devices may refuse; then nothing is kept and the caller says so. A copy that another tab wrote later is never
 * overwritten unasked. What cannot be read, because somebody or something has changed it, is passed over by itself.
 */

import { isObject, readJson } from "../parts/json.js";
import { READING } from "./keys.js";
import { same } from "./scenario.js";

const LAST = "fasterby:last";
/** Earlier versions of the page kept one work here. */
const BEFORE_LINK = "fasterby:before-link";
const RECENT = "fasterby:recent:";
/** Of those that are the rider's own, and of those that came from links. */
const MOST_RECENT = 4;
const UNITS = "fasterby:units";
const SAVED = "fasterby:saved:";
const COURSES = "fasterby:course:";
/** Changes when what is kept is laid out differently; what a newer page kept is left as it is. */
const LAYOUT = 1;

/** @typedef {{ layout: number, stamp: string, saved_at: string, question: string, scenario: JsonObject, with: JsonObject, from_link: boolean }} Kept `from_link` where it is what a link held, or was made from it */
/** @typedef {{ name: string, saved_at: string }} Entry */
/** @typedef {{ done: true, stamp: string } | { done: false, because: "full" | "newer-copy" | "newer-layout", saved_at?: string }} Outcome */
/** @typedef {{ question: string, scenario: JsonObject, with: JsonObject, from_link?: boolean }} Work */
/** @import { JsonObject } from "../types/page.d.ts" */

/** @param {Storage | null} [device] */
export function deviceStorage(device = localStorageOrNull()) {
  /** The stamp under which this tab last read or wrote a key. @type {Map<string, string>} */
  const seen = new Map();

  /** @param {string} key */
  function text(key) {
    try {
      return device?.getItem(key) ?? null;
    } catch {
      return null;
    }
  }

  /** @param {string} key @returns {JsonObject | null} */
  function read(key) {
    try {
      const kept = readJson(text(key) ?? "null");
      return isObject(kept) ? kept : null;
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
  function peek(key) {
    const kept = read(key);
    if (kept?.layout !== LAYOUT || !isObject(kept.scenario)) return null;
    return {
      layout: LAYOUT,
      stamp: String(kept.stamp),
      saved_at: String(kept.saved_at ?? ""),
      question: String(kept.question),
      scenario: kept.scenario,
      with: isObject(kept.with) ? kept.with : {},
      from_link: kept.from_link === true,
    };
  }

  /** @param {string} key @returns {Kept | null} */
  function readKept(key) {
    const kept = peek(key);
    if (kept) seen.set(key, kept.stamp);
    return kept;
  }

  /** @param {string} key @param {Work} work @param {{ replace?: boolean }} [options] @returns {Outcome} */
  function keep(key, { question, scenario, with: details, from_link = false }, { replace = false } = {}) {
    if (Number(read(key)?.layout) > LAYOUT) return { done: false, because: "newer-layout" };
    const there = peek(key);
    if (!replace && text(key) !== null && !(there && there.stamp === seen.get(key)))
      return { done: false, because: "newer-copy", saved_at: there?.saved_at };
    const stamp = crypto.getRandomValues(new Uint32Array(2)).join("-");
    const kept = {
      layout: LAYOUT,
      stamp,
      saved_at: new Date().toISOString(),
      question,
      scenario,
      with: details,
      ...(from_link && { from_link }),
    };
    if (!write(key, kept)) return { done: false, because: "full" };
    seen.set(key, stamp);
    return { done: true, stamp };
  }

  /** @param {string} start @returns {{ key: string, kept: Kept }[]} those that can be read, the last one first */
  function keptUnder(start) {
    const found = keys()
      .filter((key) => key.startsWith(start))
      .flatMap((key) => {
        const kept = peek(key);
        return kept ? [{ key, kept }] : [];
      });
    return found.sort((a, b) => compare(b.kept.saved_at, a.kept.saved_at));
  }

  /** What links took the place of, the last one first. */
  const recent = () => [...keptUnder(RECENT), ...keptUnder(BEFORE_LINK)];

  /**
   * Keeps work that a link takes the place of. The oldest goes where there are many: of the rider's own only for the rider's own.
   * @param {Work} work @returns {Outcome}
   */
  function keepRecent(work) {
    const from_link = work.from_link === true;
    const alike = keptUnder(RECENT).filter(({ kept }) => kept.from_link === from_link);
    if (alike.some(({ kept }) => same(kept.scenario, work.scenario) && same(kept.with, work.with)))
      return { done: true, stamp: "" };
    const key = () => RECENT + crypto.getRandomValues(new Uint32Array(2)).join("-");
    let outcome = keep(key(), work);
    // What came from links makes room for what is the rider's own.
    for (const { key: other } of from_link || outcome.done
      ? []
      : keptUnder(RECENT)
          .filter(({ kept }) => kept.from_link)
          .reverse()) {
      remove(other);
      outcome = keep(key(), work);
      if (outcome.done) break;
    }
    if (outcome.done) for (const { key: old } of alike.slice(MOST_RECENT - 1)) remove(old);
    return outcome;
  }

  function keys() {
    try {
      return device ? Array.from({ length: device.length }, (_, index) => device.key(index) ?? "") : [];
    } catch {
      return [];
    }
  }

  /** What is kept by name. @param {string} start */
  const named = (start) => ({
    /** The names, the last one first. @returns {Entry[]} */
    list: () => keptUnder(start).map(({ key, kept }) => ({ name: key.slice(start.length), saved_at: kept.saved_at })),
    /** @param {string} name */
    open: (name) => readKept(start + name),
    /** @param {string} name @param {Work} work @param {{ replace?: boolean }} [options] */
    save: (name, work, options) => keep(start + name, work, options),
    /** @param {string} name */
    forget: (name) => remove(start + name),
  });

  return {
    available: () => device !== null,
    last: () => readKept(LAST),
    /** The last work always follows the tab that changed last. @param {Work} work */
    keepLast: (work) => keep(LAST, work, { replace: true }),
    /** @returns {Kept[]} */
    recent: () => recent().map(({ kept }) => kept),
    keepRecent,
    units: () => read(UNITS),
    /** @param {unknown} units */
    keepUnits: (units) => write(UNITS, units),
    /** The language and the decimal mark that were chosen. */
    reading: () => {
      const kept = read(READING);
      const word = (/** @type {unknown} */ value) => (typeof value === "string" ? value : undefined);
      return { language: word(kept?.language), decimal_mark: word(kept?.decimal_mark) };
    },
    /** @param {{ language?: string, decimal_mark?: string }} reading */
    keepReading: (reading) => write(READING, reading),
    ...named(SAVED),
    /** Courses are kept as work that holds nothing else. */
    courses: named(COURSES),
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

/** @param {string} a @param {string} b */
const compare = (a, b) => (a < b ? -1 : a > b ? 1 : 0);
