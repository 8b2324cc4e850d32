// @ts-check
/** Numbers that stand beside the state, such as how a file is made a course: shown as all numbers are, but neither kept nor undone. */

import { boundNumber } from "./bound-number.js";

/** @import { Field } from "../types/core.d.ts" */
/** @import { Store } from "../state/history.js" */

/**
 * @param {{ store: Pick<Store, "get">, field: (path: string) => Field | undefined }} page
 * @param {Record<string, number>} values by their paths, in SI
 * @param {(path: string) => void} onSettled a number has been given
 */
export function ownNumbers({ store, field }, values, onSettled) {
  let changed = "";
  /** As much of a store as a number asks of one. */
  const own = /** @type {Store} */ (
    /** @type {unknown} */ ({
      get: store.get,
      at: (/** @type {string} */ path) => values[path],
      setAll(/** @type {[path: string, value: number][]} */ changes) {
        for (const [path, value] of changes) [values[path], changed] = [value, path];
      },
      settle() {
        if (changed) onSettled(changed);
        changed = "";
      },
    })
  );
  return Object.fromEntries(
    Object.keys(values).map((path) => [path, boundNumber({ store: own, field }, { path, spread: false })]),
  );
}
