// @ts-check
/**
 * The address after `#`: the question, and what differs from the defaults. Nothing here is ever evaluated.
 *
 *     #power-or-drag                   the question, with the numbers that are on the page
 *     #power-or-drag/1z.q1YqT...       and numbers: version 1, deflated, base64url
 *     #power-or-drag/1j.eyJz...        the same where the browser cannot deflate
 */

import { isObject, jsonText, readJson } from "../parts/json.js";
import { shortMark } from "../parts/short-mark.js";
import { book } from "../words/index.js";
import { olderDefaults, same } from "./scenario.js";

/** @import { Json, JsonObject, Linked } from "../types/page.d.ts" */

const say = book("page");

/** Changes when the meaning of the packed text changes. */
const VERSION = 1;
/** A course of some thousand points fits; anything longer is no link that this page made. */
const MOST_CHARACTERS = 400_000;
/** What a link may unpack to; a small one that swells is refused while it swells. */
const MOST_BYTES = 4_000_000;

/** What a question's own numbers were in links without a version of the scenario, where that was otherwise. @type {Record<string, JsonObject>} */
const OLDER_DETAILS = { "speed-for-watts": { power_w: 250 } };

/** What is said instead of an answer when a link cannot be used. */
export class LinkError extends Error {}

/**
 * The difference as a JSON merge patch (RFC 7396): only keys that differ, null for a key that is gone, lists whole.
 * @param {Json} base @param {Json} target @returns {Json}
 */
export function differenceOf(base, target) {
  if (!isObject(base) || !isObject(target)) return target;
  /** @type {JsonObject} */
  const patch = {};
  for (const key of Object.keys(target))
    if (!same(base[key], target[key])) patch[key] = differenceOf(base[key], target[key]);
  for (const key of Object.keys(base)) if (!(key in target)) patch[key] = null;
  return patch;
}

/**
 * Applies a JSON merge patch. Keys are defined, never assigned, so none can reach a prototype.
 * @template {Json} Patch @param {Json} base @param {Patch} patch @returns {Patch}
 */
export function patched(base, patch) {
  if (!isObject(patch)) return patch;
  const result = new Map(isObject(base) ? Object.entries(base) : []);
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) result.delete(key);
    else result.set(key, patched(result.get(key), value));
  }
  return /** @type {typeof patch} */ (Object.fromEntries(result));
}

/**
 * The address of a question with its numbers.
 * @param {{ question: string, scenario: JsonObject, with: JsonObject }} now
 * @param {{ scenario: JsonObject, with: JsonObject }} defaults
 * @returns {Promise<string>} such as `#power-or-drag/1z.q1YqT`
 */
export async function encode(now, defaults) {
  const s = differenceOf(defaults.scenario, now.scenario);
  const w = differenceOf(defaults.with, now.with);
  const parts = { ...(holds(s) && { s }), ...(holds(w) && { w }) };
  if (!holds(parts)) return `#${now.question}`;
  const text = new TextEncoder().encode(
    jsonText({ ...parts, d: markOf(defaults.scenario), v: defaults.scenario.fasterby }),
  );
  const deflated = await deflate(text);
  return `#${now.question}/${VERSION}${deflated ? "z" : "j"}.${toBase64url(deflated ?? text)}`;
}

/** @param {Json} patch */
const holds = (patch) => isObject(patch) && Object.keys(patch).length > 0;

/** The question that an address names, whatever follows it. @param {string} hash */
export function questionOf(hash) {
  return hash.replace(/^#/, "").split("/")[0];
}

/**
 * What an address holds. The scenario and the question's own numbers come back complete, but unchecked: the core checks them.
 * @param {string} hash
 * @param {{ scenario: JsonObject, with: (question: string) => JsonObject }} defaults
 * @returns {Promise<Linked | null>} null where it names a question only
 * @throws {LinkError} with a sentence for the reader
 */
export async function decode(hash, defaults) {
  const [question, packed] = splitOnce(hash.replace(/^#/, ""), "/");
  if (!packed) return null;
  if (packed.length > MOST_CHARACTERS) throw new LinkError(say("link.tooLong"));
  const found = /^(\d{1,4})([zj])\.([A-Za-z0-9_-]+)$/.exec(packed);
  if (!found) throw new LinkError(say("link.damaged"));
  if (Number(found[1]) > VERSION) throw new LinkError(say("link.newer"));
  try {
    const bytes = fromBase64url(found[3]);
    const text = new TextDecoder("utf-8", { fatal: true }).decode(found[2] === "z" ? await inflate(bytes) : bytes);
    const packed = readJson(text);
    if (!isObject(packed)) throw new Error("A link holds an object.");
    const { s = {}, w = {}, d, v = 2 } = packed;
    if (!isObject(s) || !isObject(w)) throw new Error("The parts of a link are objects.");
    const isOlder = Number(v) < Number(defaults.scenario.fasterby);
    return {
      question,
      scenario: patched(isOlder ? olderDefaults(defaults.scenario) : defaults.scenario, s),
      with: patched({ ...defaults.with(question), ...(isOlder && OLDER_DETAILS[question]) }, w),
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
 * A short mark of the defaults, so that a link says when a typical value has changed since it was made. What the
 * second version of the scenario added changes no number that an older link left out.
 * @param {JsonObject} defaults
 */
function markOf(defaults) {
  return shortMark(jsonText({ ...defaults, fasterby: 1, events: undefined }));
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
  if (typeof DecompressionStream === "undefined") throw new LinkError(say("link.oldBrowser"));
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
      throw new LinkError(say("link.tooLarge"));
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
