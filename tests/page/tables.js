// @ts-check
/** The tables of the core and the modules' hashes, as the build left them, for scripts that import them under the names that the bundler knows. */

import { readFileSync } from "node:fs";
import { register } from "node:module";
import { isMainThread } from "node:worker_threads";

/** What the bundler takes from a file of the build, by its name. @type {Record<string, string>} */
const FILES = { "fasterby-tables": "tables.json", "fasterby-integrity": "integrity.json" };
const SCHEME = "fasterby:";
const KEPT = new URL("../../target/xtask/", import.meta.url);

// Node runs the two functions below in a thread of their own.
if (isMainThread) register(import.meta.url);

/** @type {import("node:module").ResolveHook} */
export const resolve = async (name, context, next) =>
  FILES[name] ? { url: SCHEME + FILES[name], shortCircuit: true } : next(name, context);

/** @type {import("node:module").LoadHook} */
export async function load(address, context, next) {
  if (!address.startsWith(SCHEME)) return next(address, context);
  const file = new URL(address.slice(SCHEME.length), KEPT);
  const tables = Object.entries(JSON.parse(readFileSync(file, "utf8")));
  const source = tables.map(([name, table]) => `export const ${name} = ${JSON.stringify(table)};`).join("\n");
  return { format: "module", source, shortCircuit: true };
}
