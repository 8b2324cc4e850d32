// @ts-check
/** Scenarios as files: the JSON of the scenario and nothing else, so any program that reads JSON can use them. A whole question is read too. */

import most from "fasterby-most";
import { isObject, readJson } from "../parts/json.js";
import { plainName } from "../save/files.js";
import { book } from "../words/index.js";

/** @import { Work } from "../types/page.d.ts" */

const say = book("sheet");

/** @param {{ title?: string }} scenario */
export function scenarioText(scenario) {
  return `${JSON.stringify(scenario, null, 2)}\n`;
}

/** A file name that every system takes. @param {string} title */
export function fileName(title) {
  return `${plainName(title) || "scenario"}.json`;
}

/**
 * Reads a file as a scenario, or as a question that was saved whole, unchecked: the core checks it.
 * @param {Blob} file
 * @returns {Promise<Work | { message: string }>}
 */
export async function readScenario(file) {
  if (file.size > most.request_bytes) return { message: say("fileLarge") };
  let read;
  try {
    read = readJson((await file.text()).replace(/^\ufeff/, ""));
  } catch {
    return { message: say("fileNotJson") };
  }
  if (
    isObject(read) &&
    typeof read.question === "string" &&
    isObject(read.request) &&
    isObject(read.request.scenario)
  ) {
    const { question, own, request } = read;
    // What the page adds to each request is not the rider's.
    const { split_every_m: _, part: __, ...asked } = isObject(request.with) ? request.with : {};
    return { question, scenario: read.request.scenario, with: { [question]: isObject(own) ? own : asked } };
  }
  if (!isObject(read) || !("fasterby" in read)) return { message: say("fileNotScenario") };
  return { scenario: read };
}
