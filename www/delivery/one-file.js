// @ts-check
/** Where the page finds its other parts when it is one file: in itself. Nothing is fetched, so it opens from a disk as well. */

import init, * as whole from "fasterby-whole";
import { unpackedParts } from "./packed-parts.js";

/** @type {Uint8Array<ArrayBuffer>[] | undefined} */
let unpacked;
/** @type {Promise<WebAssembly.Module> | undefined} */
let compiling;

/** The bytes of the module that answers everything, and of the one that reads recordings: packed together, as they share much. */
export function modules() {
  unpacked ??= unpackedParts("modules");
  return unpacked;
}

/** The module that answers everything. */
export async function wholeModule() {
  compiling ??= WebAssembly.compile(modules()[0]);
  return compiling;
}

/** @param {WebAssembly.Module} module */
export async function wholeCore(module) {
  await init({ module_or_path: module });
  return whole;
}

/** A second, smaller one would only make the file longer. */
export const [firstModule, firstCore] = [wholeModule, wholeCore];

/** The script of the page is the workers' too; `one-file-start.js` tells by the name which of them it is. @param {string} [name] */
export function openWorker(name) {
  const script = document.getElementById("script")?.textContent ?? "";
  const address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
  return new Worker(address, { name });
}

/** Nowhere that other sites reach. @type {URL | null} */
export const home = null;

/** It lies on the device already. @type {URL | null} */
export const serviceWorker = null;

/** It is one. @type {URL | null} */
export const oneFile = null;

/** It comes from no server. @returns {Promise<"this" | "other" | null>} */
export const serverHas = async () => null;

export const reload = () => location.reload();
