// @ts-check
/** What the groups of the sheet have in common: rows that are updated together and found by path. */

/** @import { Row } from "./number-row.js" */
/** @import { State } from "../state/history.js" */
/** @import { CoreError } from "../core.js" */

/**
 * @typedef {object} Group
 * @property {string} title
 * @property {string} covers the paths it holds, as the start of a path without `scenario.`; several parted by spaces
 * @property {HTMLElement} element
 * @property {(state: State, error: CoreError | null) => boolean} update tells whether one of its rows shows the error
 * @property {(path: string) => Row | null} row the row for a path, made visible
 */

/** @param {Row[]} rows @param {State} state @param {CoreError | null} error */
export function updateRows(rows, state, error) {
  return rows.map((row) => row.update(state, error)).some(Boolean);
}

/** @param {Row[]} rows @param {string} path */
export function findRow(rows, path) {
  return (
    rows.find((row) => row.path === path) ??
    rows.find((row) => path.startsWith(row.path) || row.path.startsWith(path)) ??
    null
  );
}
