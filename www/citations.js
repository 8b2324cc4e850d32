// @ts-check
/** The citations of the core's figures, fetched with what first shows one. */

import sources from "fasterby-sources";

const byKey = new Map(sources.map((source) => [source.key, source]));

/** The citation for a key, or an empty text. @param {string} key */
export const citation = (key) => byKey.get(key)?.citation ?? "";

/** Those of these keys, in the core's order. @param {readonly string[]} keys */
export const sourcesOf = (keys) => sources.filter(({ key }) => keys.includes(key));
