// @ts-check
/** The one door to the WebAssembly core. A small module answers what a first visit asks; the whole one is fetched for any other question. */

import { firstCore, wholeCore } from "#delivery";
import { fields as table, sources as citations } from "fasterby-tables";

/** @typedef {{ kind: string, field: string, message: string, min?: number, max?: number }} CoreError */
/** @typedef {Pick<typeof import("fasterby-whole"), "ask">} Core */

/** What the small module answers. */
const FIRST = ["power-or-drag", "finish-time", "speed-for-watts"];

/** @type {Core | undefined} */
let first;
/** @type {Core | undefined} */
let whole;

const loadFirst = once(async () => { first = await firstCore(); });
const loadWhole = once(async () => { whole = await wholeCore(); });

/** Every caller waits for the same load; after a failure the next one tries again. @param {() => Promise<void>} load */
function once(load) {
  /** @type {Promise<void> | undefined} */
  let loading;
  return () => (loading ??= load().catch((error) => {
    loading = undefined;
    throw error;
  }));
}

/** Whether a question can be asked now. @param {string} question */
export function isReady(question) {
  return Boolean(whole ?? (first && FIRST.includes(question)));
}

/** Loads what answers a question. @param {string} question */
export async function ready(question) {
  if (!isReady(question)) await (FIRST.includes(question) ? loadFirst() : loadWhole());
}

/** The module that is asked. */
function core() {
  const loaded = whole ?? first;
  if (!loaded) throw new Error("The core was asked before it was ready.");
  return loaded;
}

/**
 * Asks the core; call after `ready(question)`.
 * @param {string} question @param {unknown} request @returns {any} the answer
 * @throws {CoreError}
 */
export function ask(question, request) {
  try {
    return core().ask(question, request);
  } catch (error) {
    throw asCoreError(error);
  }
}

/** Every bound, default and its evidence, as the build took them from the core; there before the module is. */
export const fields = () => table;

/** Every citation, likewise. */
export const sources = () => citations;

/** Whatever was thrown, as the plain object the page routes to a control. @param {any} error @returns {CoreError} */
export function asCoreError(error) {
  if (error && typeof error === "object" && typeof error.message === "string" && typeof error.field === "string") return error;
  return { kind: "broken", field: "", message: "The calculation stopped unexpectedly. Undo the last change, or reload the page." };
}
