// @ts-check
/** Where the page finds its other parts on a web server: in files beside it. The build for one file takes `one-file.js` instead. */

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url);

/** The core, as wasm-bindgen's `init` takes it. @returns {URL | Response} */
export const core = () => beside("wasm/fasterby_bg.wasm");

export const openWorker = () => new Worker(beside("worker.js"), { type: "module" });

/** Where the page lies, for other sites to load it from. @type {URL | null} */
export const home = beside("./");

/** What keeps the page for use without a network. @type {URL | null} */
export const serviceWorker = beside("offline.js");

/** The whole page as one file to take away. @type {URL | null} */
export const oneFile = beside("fasterby.html");
