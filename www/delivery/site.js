// @ts-check
/** Where the page finds its other parts on a web server: in files beside it. The build for one file takes `one-file.js` instead. */

import init, * as first from "fasterby-first";

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url);

/** The small module, whose binding comes with the script. */
export async function firstCore() {
  await init({ module_or_path: beside("wasm/first_bg.wasm") });
  return first;
}

/** The module that answers everything, with its binding. */
export async function wholeCore() {
  const whole = await import("fasterby-whole");
  await whole.default({ module_or_path: beside("wasm/whole_bg.wasm") });
  return whole;
}

export const openWorker = () => new Worker(beside("worker.js"), { type: "module" });

/** Where the page lies, for other sites to load it from. @type {URL | null} */
export const home = beside("./");

/** What keeps the page for use without a network. @type {URL | null} */
export const serviceWorker = beside("offline.js");

/** The whole page as one file to take away. @type {URL | null} */
export const oneFile = beside("fasterby.html");
