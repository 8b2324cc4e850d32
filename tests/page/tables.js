// @ts-check
/** The tables of the core, as the build left them, for scripts that import them under the name that the bundler knows. */

import { readFileSync } from "node:fs";
import { register } from "node:module";
import { isMainThread } from "node:worker_threads";

const KEPT = new URL("../../target/xtask/", import.meta.url);
const TABLES = "fasterby-tables";
const NOTES = "fasterby-notes";

/** @param {string} name */
const addressOf = (name) => `kept:${name}`;

/** @param {string} file */
const read = (file) => readFileSync(new URL(file, KEPT), "utf8");

// Node runs the two functions below in a thread of their own.
if (isMainThread) register(import.meta.url);

/** @type {import("node:module").ResolveHook} */
export const resolve = async (name, context, next) =>
  name === TABLES || name === NOTES ? { url: addressOf(name), shortCircuit: true } : next(name, context);

/** @type {import("node:module").LoadHook} */
export async function load(address, context, next) {
  if (address === addressOf(NOTES))
    return { format: "module", source: `export default ${read("notes.json")};`, shortCircuit: true };
  if (address !== addressOf(TABLES)) return next(address, context);
  const tables = Object.entries(JSON.parse(read("tables.json")));
  const source = tables.map(([name, table]) => `export const ${name} = ${JSON.stringify(table)};`).join("\n");
  return { format: "module", source, shortCircuit: true };
}
