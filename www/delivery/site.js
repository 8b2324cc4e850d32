// @ts-check
/** Where the page finds its other parts on a web server: in files beside this one, in a folder named after their version. The build for one file takes `one-file.js` instead. */

import init, * as first from "fasterby-first";
import { first as firstHash, whole as wholeHash } from "fasterby-integrity";
import { checkedModule } from "./checked-module.js";
import { reloadAt, versionAt } from "./version.js";

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url);
/** Where the page and its other entries lie. */
const HOME = beside("../");
const INTEGRITY = { first: firstHash, whole: wholeHash };
const VERSION = beside("./").pathname.split("/").at(-2);

/** @param {"first" | "whole"} name */
const compiled = (name) => checkedModule(beside(`wasm/${name}_bg.wasm`), INTEGRITY[name]);

/** The module that answers what a first visit asks. */
export const firstModule = () => compiled("first");

/** Its binding comes with the script. @param {WebAssembly.Module} module */
export async function firstCore(module) {
  await init({ module_or_path: module });
  return first;
}

/** The module that answers everything. */
export const wholeModule = () => compiled("whole");

/** @param {WebAssembly.Module} module */
export async function wholeCore(module) {
  const whole = await import("fasterby-whole");
  await whole.default({ module_or_path: module });
  return whole;
}

export const openWorker = () => new Worker(beside("worker.js"), { type: "module" });

/** Which version the server has now: this one, another, or null where it does not say. @returns {Promise<"this" | "other" | null>} */
export async function serverHas() {
  const there = await versionAt(HOME);
  if (there === null) return null;
  return there === VERSION ? "this" : "other";
}

/** Opens the page anew, in the version that the server has now. */
export const reload = () => reloadAt(HOME);

/** Where the page lies, for other sites to load it from. @type {URL | null} */
export const home = HOME;

/** What keeps the page for use without a network. @type {URL | null} */
export const serviceWorker = new URL("offline.js", HOME);

/** The whole page as one file to take away. @type {URL | null} */
export const oneFile = new URL("fasterby.html", HOME);
