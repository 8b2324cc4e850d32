// @ts-check
/** The tables of the core and the modules' hashes, as the build left them, for scripts that import them under the names that the bundler knows. */

import { readFileSync } from "node:fs";
import { register } from "node:module";
import { isMainThread } from "node:worker_threads";

const KEPT = new URL("../../target/xtask/", import.meta.url);
/** What is one value, by its name. @type {Record<string, string>} */
const WHOLE = {
  "fasterby-notes": "notes.json",
  "fasterby-sources": "sources.json",
  "fasterby-messages": "messages.json",
  "fasterby-most": "most.json",
};
/** Whose members are exports of their own. @type {Record<string, string>} */
const BY_NAME = { "fasterby-tables": "tables.json", "fasterby-integrity": "integrity.json" };
const SCHEME = "kept:";

/** @param {string} file */
const read = (file) => readFileSync(new URL(file, KEPT), "utf8");

// Node runs the two functions below in a thread of their own.
if (isMainThread) register(import.meta.url);

/** @type {import("node:module").ResolveHook} */
export const resolve = async (name, context, next) =>
  WHOLE[name] || BY_NAME[name] ? { url: SCHEME + name, shortCircuit: true } : next(name, context);

/** @type {import("node:module").LoadHook} */
export async function load(address, context, next) {
  const name = address.startsWith(SCHEME) ? address.slice(SCHEME.length) : "";
  if (WHOLE[name]) return { format: "module", source: `export default ${read(WHOLE[name])};`, shortCircuit: true };
  if (!BY_NAME[name]) return next(address, context);
  const tables = Object.entries(JSON.parse(read(BY_NAME[name])));
  const source = tables.map(([name, table]) => `export const ${name} = ${JSON.stringify(table)};`).join("\n");
  return { format: "module", source, shortCircuit: true };
}
