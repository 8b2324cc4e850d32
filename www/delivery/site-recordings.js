// @ts-check
/** Where the readers of recordings are on a web server: in files beside this one. The build for one file takes `one-file-recordings.js` instead. */

import { recordings as integrity } from "fasterby-integrity";
import { checkedModule } from "./checked-module.js";

/** @param {string} file */
const beside = (file) => new URL(file, import.meta.url);

/** What reads one recording, and is ended then. */
export const openRecordingsWorker = () => new Worker(beside("recordings-worker.js"), { type: "module" });

/** The module, for its worker. */
export const recordingsModule = () => checkedModule(beside("wasm/recordings_bg.wasm"), integrity);
