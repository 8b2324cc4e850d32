// @ts-check
/**
 * Runs Rust tests that were compiled to wasm and bound for Node: `node run.mjs MODULE.js`.
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

const { WasmBindgenTestContext, __wasm: exported } = await import(pathToFileURL(resolve(process.argv[2])).href);
const tests = Object.keys(exported).filter((name) => A_TEST.test(name));
if (tests.length === 0) throw new Error("The module holds no test.");
const passed = await new WasmBindgenTestContext(false).run(tests.map((name) => exported[name]));
process.exitCode = passed ? 0 : 1;
