// @ts-check
/** Where the readers of recordings are when the page is one file: in it. */

import { modules, openWorker } from "./one-file.js";

/** What reads one recording, and is ended then. */
export const openRecordingsWorker = () => openWorker("recordings");

/** The module, for its worker. */
export const recordingsModule = async () => WebAssembly.compile(modules()[1]);
