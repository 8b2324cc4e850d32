// @ts-check
/** The tables of the core, as the build left them, for scripts that import them under the name that the bundler knows. */

import { readFileSync } from "node:fs";
import { register } from "node:module";
import { isMainThread } from "node:worker_threads";

const NAME = "fasterby-tables";
const ADDRESS = "fasterby:tables";
const FILE = new URL("../../target/xtask/tables.json", import.meta.url);

// Node runs the two functions below in a thread of their own.
if (isMainThread) register(import.meta.url);

/** @type {import("node:module").ResolveHook} */
export const resolve = async (name, context, next) =>
  name === NAME ? { url: ADDRESS, shortCircuit: true } : next(name, context);

/** @type {import("node:module").LoadHook} */
export async function load(address, context, next) {
  if (address !== ADDRESS) return next(address, context);
  const tables = Object.entries(JSON.parse(readFileSync(FILE, "utf8")));
  const source = tables.map(([name, table]) => `export const ${name} = ${JSON.stringify(table)};`).join("\n");
  return { format: "module", source, shortCircuit: true };
}
