// @ts-check
/** Why a file is not read, where the page itself finds that. */

/** @import { ReadingError } from "./read.js" */

/** @param {"no_worker" | "took_too_long" | "reader_missing" | "reader_crashed" | "packing_broken" | "file_gone"} text @returns {ReadingError} */
export const refusal = (text) => ({ kind: "recording", field: "", text, values: {}, place: {} });
