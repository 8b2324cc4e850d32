// @ts-check
/** Where the readers of recordings are when the page is one file: in it. */

import packed from "fasterby-packed-recordings";
import { openWorker, unpackedModule } from "./one-file.js";

/** What reads one recording, and is ended then. */
export const openRecordingsWorker = () => openWorker("recordings");

/** The module, for its worker. */
export const recordingsModule = () => unpackedModule(packed);
