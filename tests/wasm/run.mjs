// @ts-check
/**
 * Runs Rust tests that were compiled to wasm and bound for Node: `node run.mjs MODULE.js ...`, each module in turn.
 * Its names beginning with `__wbg` are those of the very version of wasm-bindgen that bound them.
 */

import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

/** How the export of a test is named, and after `::` the test itself. */
const A_TEST = /^__wbgt_.*::/;

// What the tests print with, and how one of them is called.
Object.assign(globalThis, {
  __wbgtest_og_console_log: console.log,
  __wbgtest_og_console_error: console.error,
  __wbg_test_invoke: (/** @type {() => unknown} */ test) => test(),
});

/** Whether every test of a module passes. @param {string} path */
async function passes(path) {
  const { WasmBindgenTestContext, __wasm: exported } = await import(pathToFileURL(resolve(path)).href);
  const tests = Object.keys(exported).filter((name) => A_TEST.test(name));
  if (tests.length === 0) throw new Error(`${path} holds no test.`);
  return new WasmBindgenTestContext(false).run(tests.map((name) => exported[name]));
}

let failed = 0;
for (const path of process.argv.slice(2)) {
  console.log(path);
  if (!(await passes(path))) failed += 1;
}
process.exitCode = failed > 0 ? 1 : 0;
