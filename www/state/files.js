// @ts-check
/** Scenarios as files: the JSON of the scenario and nothing else, so any program that reads JSON can use them. */

import { book } from "../words/index.js";

const say = book("sheet");

/** The core reads no larger request. */
const MOST_BYTES = 8_000_000;

/** @param {any} scenario */
export function scenarioText(scenario) {
  return `${JSON.stringify(scenario, null, 2)}\n`;
}

/** A file name that every system takes. @param {string} title */
export function fileName(title) {
  const plain = title.normalize("NFKD").replace(/[^\w\s-]/g, "").trim().replace(/\s+/g, "-").toLowerCase().slice(0, 60);
  return `${plain || "scenario"}.json`;
}

/** Hands a file to the reader. @param {string} name @param {string} text */
export function download(name, text) {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 0);
}

/**
 * Reads a file as a scenario, unchecked: the core checks it.
 * @param {Blob} file
 * @returns {Promise<{ scenario: any } | { message: string }>}
 */
export async function readScenario(file) {
  if (file.size > MOST_BYTES) return { message: say("file_large") };
  let scenario;
  try {
    scenario = JSON.parse(await file.text());
  } catch {
    return { message: say("file_not_json") };
  }
  if (!scenario || typeof scenario !== "object" || Array.isArray(scenario) || !("fasterby" in scenario)) {
    return { message: say("file_not_scenario") };
  }
  return { scenario };
}
