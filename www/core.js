// @ts-check
/** The one door to the WebAssembly core. */

import { core } from "#delivery";
import init, { ask as askCore, fields as coreFields, sources as coreSources } from "fasterby-wasm";

/** @typedef {{ kind: string, field: string, message: string, min?: number, max?: number }} CoreError */

/** @type {Promise<void> | undefined} */
let starting;

/** Loads the core once; every caller waits for the same load. */
export function ready() {
  starting ??= init({ module_or_path: core() }).then(() => undefined);
  return starting;
}

/**
 * Asks the core; call after `ready()`.
 * @param {string} question @param {unknown} request @returns {any} the answer
 * @throws {CoreError}
 */
export function ask(question, request) {
  try {
    return askCore(question, request);
  } catch (error) {
    throw asCoreError(error);
  }
}

/** @returns {import("./state/scenario.js").Field[]} */
export function fields() {
  return coreFields();
}

/** @returns {{ key: string, citation: string, read: string, figure: string }[]} */
export function sources() {
  return coreSources();
}

/** Whatever was thrown, as the plain object the page routes to a control. @param {any} error @returns {CoreError} */
export function asCoreError(error) {
  if (error && typeof error === "object" && typeof error.message === "string" && typeof error.field === "string") return error;
  return { kind: "broken", field: "", message: "The calculation stopped unexpectedly. Undo the last change, or reload the page." };
}
