// @ts-check
/**
 * The address after `#`: the question, and what differs from the defaults. Nothing here is ever evaluated.
 *
 *     #power-or-drag                   the question, with the numbers that are on the page
 *     #power-or-drag/1z.q1YqT...       and numbers: version 1, deflated, base64url
 *     #power-or-drag/1j.eyJz...        the same where the browser cannot deflate
 */

import { jsonText, readJson } from "../parts/json.js";
import { book } from "../words/index.js";
import { olderDefaults, same } from "./scenario.js";

const say = book("page");

/** Changes when the meaning of the packed text changes. */
const VERSION = 1;
/** A course of some thousand points fits; anything longer is no link that this page made. */
const MOST_CHARACTERS = 400_000;
/** What a link may unpack to; a small one that swells is refused while it swells. */
const MOST_BYTES = 4_000_000;

/** What a question's own numbers were in links without a version of the scenario, where that was otherwise. @type {Record<string, any>} */
const OLDER_DETAILS = { "speed-for-watts": { power_w: 250 } };

/** What is said instead of an answer when a link cannot be used. */
export class LinkError extends Error {}

/** @typedef {{ scenario?: any, with?: any, defaults: string }} Packed */

/**
 * The difference as a JSON merge patch (RFC 7396): only keys that differ, null for a key that is gone, lists whole.
 * @param {any} base @param {any} target @returns {any}
 */
export function differenceOf(base, target) {
  if (!plain(base) || !plain(target)) return target;
  /** @type {Record<string, any>} */
  const patch = {};
  for (const key of Object.keys(target))
    if (!same(base[key], target[key])) patch[key] = differenceOf(base[key], target[key]);
  for (const key of Object.keys(base)) if (!(key in target)) patch[key] = null;
  return patch;
}

/**
 * Applies a JSON merge patch. Keys are defined, never assigned, so none can reach a prototype.
 * @param {any} base @param {any} patch @returns {any}
 */
export function patched(base, patch) {
  if (!plain(patch)) return patch;
  const result = new Map(plain(base) ? Object.entries(base) : []);
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) result.delete(key);
    else result.set(key, patched(result.get(key), value));
  }
  return Object.fromEntries(result);
}

/** @param {any} value */
function plain(value) {
  return value !== null && typeof value === "object" && !Array.isArray(value);
}

/**
 * The address of a question with its numbers.
 * @param {{ question: string, scenario: any, with: any }} now
 * @param {{ scenario: any, with: any }} defaults
 * @returns {Promise<string>} such as `#power-or-drag/1z.q1YqT`
 */
export async function encode(now, defaults) {
  const scenario = differenceOf(defaults.scenario, now.scenario);
  const details = differenceOf(defaults.with, now.with);
  const parts = {
    ...(Object.keys(scenario).length && { s: scenario }),
    ...(Object.keys(details).length && { w: details }),
  };
  if (!Object.keys(parts).length) return `#${now.question}`;
  const text = new TextEncoder().encode(
    jsonText({ ...parts, d: markOf(defaults.scenario), v: defaults.scenario.fasterby }),
  );
  const deflated = await deflate(text);
  return `#${now.question}/${VERSION}${deflated ? "z" : "j"}.${toBase64url(deflated ?? text)}`;
}

/** The question that an address names, whatever follows it. @param {string} hash */
export function questionOf(hash) {
  return hash.replace(/^#/, "").split("/")[0];
}

/**
 * What an address holds. The scenario and the question's own numbers come back complete, but unchecked: the core checks them.
 * @param {string} hash
 * @param {{ scenario: any, with: (question: string) => any }} defaults
 * @returns {Promise<{ question: string, scenario: any, with: any, otherDefaults: boolean } | null>} null where it names a question only
 * @throws {LinkError} with a sentence for the reader
 */
export async function decode(hash, defaults) {
  const [question, packed] = splitOnce(hash.replace(/^#/, ""), "/");
  if (!packed) return null;
  if (packed.length > MOST_CHARACTERS) throw new LinkError(say("link.too_long"));
  const found = /^(\d{1,4})([zj])\.([A-Za-z0-9_-]+)$/.exec(packed);
  if (!found) throw new LinkError(say("link.damaged"));
  if (Number(found[1]) > VERSION) throw new LinkError(say("link.newer"));
  try {
    const bytes = fromBase64url(found[3]);
    const text = new TextDecoder("utf-8", { fatal: true }).decode(found[2] === "z" ? await inflate(bytes) : bytes);
    const { s = {}, w = {}, d, v = 2 } = readJson(text);
    if (!plain(s) || !plain(w)) throw new Error("The parts of a link are objects.");
    return {
      question,
      scenario: patched(v < defaults.scenario.fasterby ? olderDefaults(defaults.scenario) : defaults.scenario, s),
      with: patched({ ...defaults.with(question), ...(v < defaults.scenario.fasterby && OLDER_DETAILS[question]) }, w),
      otherDefaults: d !== markOf(defaults.scenario),
    };
  } catch (error) {
    throw error instanceof LinkError ? error : new LinkError(say("link.damaged"));
  }
}

/** @param {string} text @param {string} mark */
function splitOnce(text, mark) {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ""] : [text.slice(0, at), text.slice(at + 1)];
}

/**
 * A short mark of the defaults (32-bit FNV-1a), so that a link says when a typical value has changed since it was made. What the
 * second version of the scenario added changes no number that an older link left out.
 * @param {any} defaults
 */
function markOf(defaults) {
  let mark = 0x811c9dc5;
  for (const character of jsonText({ ...defaults, fasterby: 1, events: undefined }))
    mark = Math.imul(mark ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return (mark >>> 0).toString(36);
}

/** @param {Uint8Array<ArrayBuffer>} bytes @returns {Promise<Uint8Array<ArrayBuffer> | null>} null where the browser cannot */
async function deflate(bytes) {
  try {
    return await through(bytes, new CompressionStream("deflate-raw"));
  } catch {
    return null;
  }
}

/** @param {Uint8Array<ArrayBuffer>} bytes */
async function inflate(bytes) {
  if (typeof DecompressionStream === "undefined") throw new LinkError(say("link.old_browser"));
  return through(bytes, new DecompressionStream("deflate-raw"));
}

/** @param {Uint8Array<ArrayBuffer>} bytes @param {CompressionStream | DecompressionStream} stream */
async function through(bytes, stream) {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  /** @type {Uint8Array[]} */
  const chunks = [];
  let size = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.length;
    if (size > MOST_BYTES) {
      await reader.cancel();
      throw new LinkError(say("link.too_large"));
    }
    chunks.push(next.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** @param {Uint8Array} bytes */
function toBase64url(bytes) {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** @param {string} text */
function fromBase64url(text) {
  return Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (character) => character.charCodeAt(0));
}
