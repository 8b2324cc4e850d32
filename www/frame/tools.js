// @ts-check
/** What a question may use of the page around it, whether that is the whole page or a place on somebody else's. */

import { countKnown } from "../state/scenario.js";
import { boundNumber } from "./bound-number.js";
import { errorWords, labelOf } from "./field-words.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { scenarioFiller } from "../state/scenario.js" */

/**
 * @param {Pick<Tools, "store" | "notify" | "worker" | "go" | "openSheet" | "lastFolds" | "opensFiles"> & { filler: ReturnType<typeof scenarioFiller> }} page
 * @returns {Tools}
 */
export function createTools({ filler, ...page }) {
  const { store } = page;
  return {
    ...page,
    number: (options) => boundNumber({ store, field: filler.field }, options),
    known: ({ scenario }, positions) => countKnown(scenario, positions),
    words: (about) => errorWords(about, store.get().units),
    trouble: (error, shown) => (error && !shown ? errorWords(error, store.get().units) : null),
    field: filler.field,
    label: labelOf,
    newPosition: filler.position,
    freshPart: filler.part,
  };
}
