// @ts-check
/** Where the page finds its other parts on a web server: in files beside it. The build for one file takes `one-file.js` instead. */

import init, * as first from "fasterby-first";

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url);

/** @param {string} file */
async function compiled(file) {
  const response = await fetch(beside(file));
  if (!response.ok) throw new Error(`${file} gave ${response.status}.`);
  // A server that has no name for what it is gives it all the same.
  return response.headers.get("content-type") === "application/wasm" ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

/** The module that answers what a first visit asks. */
export const firstModule = () => compiled("wasm/first_bg.wasm");

/** Its binding comes with the script. @param {WebAssembly.Module} module */
export async function firstCore(module) {
  await init({ module_or_path: module });
  return first;
}

/** The module that answers everything. */
export const wholeModule = () => compiled("wasm/whole_bg.wasm");

/** @param {WebAssembly.Module} module */
export async function wholeCore(module) {
  const whole = await import("fasterby-whole");
  await whole.default({ module_or_path: module });
  return whole;
}

export const openWorker = () => new Worker(beside("worker.js"), { type: "module" });

/** Where the page lies, for other sites to load it from. @type {URL | null} */
export const home = beside("./");

/** What keeps the page for use without a network. @type {URL | null} */
export const serviceWorker = beside("offline.js");

/** The whole page as one file to take away. @type {URL | null} */
export const oneFile = beside("fasterby.html");
