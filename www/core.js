// @ts-check
/** The only caller of the WebAssembly core on the page. A small module answers what a first visit asks; the whole one is fetched for any other question. */

import * as tables from "fasterby-tables";
import { firstCore, firstModule, wholeCore, wholeModule } from "#delivery";
import { unchanged } from "./parts/json.js";

/** @import { AnswerTo } from "./types/page.d.ts" */

/** @import { Value } from "./types/core.d.ts" */
/** An error or a warning: which sentence of the catalogue it is, and the values in it. @typedef {{ kind: string, field: string, text: string, values: Record<string, Value>, min?: number, max?: number }} CoreError */
/** @typedef {Pick<typeof import("fasterby-whole"), "ask">} Core */
/** @typedef {"first" | "whole"} Name */
/** A module that was compiled elsewhere. @typedef {{ name: Name, module: WebAssembly.Module }} Lent */

/** @type {Record<Name, () => Promise<WebAssembly.Module>>} */
const compile = { first: once(firstModule), whole: once(wholeModule) };
/** @type {Partial<Record<Name, Core>>} */
const cores = {};
/** @type {Record<Name, () => Promise<void>>} */
const load = {
  first: once(async () => {
    cores.first = await firstCore(await compile.first());
  }),
  whole: once(async () => {
    cores.whole = await wholeCore(await compile.whole());
  }),
};

/** Every caller waits for the same work; after a failure the next one tries again. @template T @param {() => Promise<T>} work */
function once(work) {
  /** @type {Promise<T> | undefined} */
  let working;
  return () =>
    (working ??= work().catch((error) => {
      working = undefined;
      throw error;
    }));
}

/** Whether the small module answers a question. @param {string} question */
const isInFirst = (question) => tables.questions.some(({ id, module }) => id === question && module === "first");

/** Whether the page came from what is kept on the device: the whole module is there too, and the small one is not. */
const isKept = Boolean(globalThis.navigator?.serviceWorker?.controller);

/** Whether a scenario has been met that the small module cannot read. */
let isWholeWanted = false;

/** Notes whether a scenario says what only the whole module knows: weather that changes, stops and feeding. @param {{ conditions?: unknown, stops?: unknown, feeding?: unknown } | undefined} scenario */
export function prepareFor(scenario) {
  const day = scenario?.conditions;
  const changes = typeof day === "object" && day !== null && "later" in day;
  if (changes || scenario?.stops !== undefined || scenario?.feeding !== undefined) isWholeWanted = true;
}

/** The module that answers a question, or would. @param {string} question @returns {Name} */
const nameFor = (question) => (isKept || cores.whole || isWholeWanted || !isInFirst(question) ? "whole" : "first");

/** Whether a question can be asked now. @param {string} question */
export const isReady = (question) => cores[nameFor(question)] !== undefined;

/** Loads what answers a question. @param {string} question */
export const ready = (question) => load[nameFor(question)]();

/** The module that answers a question, for a worker to borrow. @param {string} question @returns {Promise<Lent>} */
export async function lend(question) {
  const name = nameFor(question);
  return { name, module: await compile[name]() };
}

/** Takes a module instead of fetching it. @param {Lent} lent */
export async function borrow({ name, module }) {
  compile[name] = async () => module;
  await load[name]();
}

/** The module that is asked. */
function core() {
  const loaded = cores.whole ?? cores.first;
  if (!loaded) throw new Error("The core was asked before it was ready.");
  return loaded;
}

/**
 * Asks the core; call after `ready(question)`.
 * @template {string} Id @param {Id} question @param {unknown} request @returns {AnswerTo<Id>} the answer
 * @throws {CoreError}
 */
export function ask(question, request) {
  try {
    return core().ask(question, unchanged(request));
  } catch (error) {
    throw asCoreError(error);
  }
}

/** Every bound, default and its evidence, as the build took them from the core; there before the module is. */
export const fields = () => tables.fields;

/** Published figures that the page quotes, likewise. */
export const published = () => tables.published;

/** What a scenario holds before anybody has changed it, likewise. */
export const scenarioTables = () => ({
  fields: tables.fields,
  version: tables.scenario_version,
  usualEvents: tables.usual_events,
  usualMetricEvents: tables.usual_metric_events,
});

/** Whatever was thrown, as the plain object the page routes to a control. @param {unknown} thrown @returns {CoreError} */
export function asCoreError(thrown) {
  const error = /** @type {Partial<CoreError> | null | undefined} */ (thrown);
  if (typeof error?.text === "string" && typeof error.field === "string") return /** @type {CoreError} */ (error);
  return {
    kind: "broken",
    field: "",
    text: "",
    values: {},
  };
}
