// @ts-check
/** Which numbers a visitor may change: the store refuses the others, and the sentence shows them as plain text. */

/** @import { Store } from "../state/history.js" */

/** The words of the attribute `change`, and the paths that each stands for. @type {Record<string, RegExp>} */
const NAMES = {
  power: /^scenario\.power\.|^scenario\.efforts\b|\.power_w$|\.power_change$|\.effort$/,
  cda: /cda/,
  time: /time_s$/,
  distance: /^scenario\.course\.(?:distance_m|duration_s)|^scenario\.course$/,
  course: /^scenario\.course\b/,
  position:
    /^scenario\.(?:positions|riding_position)\b|^with\.hold-or-fade\.(?!effort)|^with\.which-position\.(?!distance)/,
  weather: /^scenario\.conditions\b/,
};

/** A path that each of these words stands for. */
const EXAMPLES = [
  "scenario.power.cp_w",
  "scenario.positions[0].cda_m2",
  "with.finish-time.for_time_s",
  "scenario.course.distance_m",
  "scenario.riding_position",
  "scenario.conditions.wind_speed_m_s",
];

/** The choice of a distance names no path of its own. */
const UNNAMED = "scenario.course.distance_m";

/**
 * @param {string | null} change names with spaces between; without the attribute everything may be changed
 * @returns {((path: string) => boolean) | null}
 */
export function limitsFrom(change) {
  if (change === null) return null;
  const open = change
    .split(/[\s,]+/)
    .filter((name) => Object.hasOwn(NAMES, name))
    .map((name) => NAMES[name]);
  return (path) => open.some((paths) => paths.test(path.replace(/\.(value|sd|source)$/, "")));
}

/** Whether nothing at all may be changed. @param {(path: string) => boolean} may */
export const locked = (may) => !EXAMPLES.some(may);

/** @param {Store} store @param {((path: string) => boolean) | null} may @returns {Store} */
export function limited(store, may) {
  if (!may) return store;
  return {
    ...store,
    set: (path, value, options) => {
      if (may(path)) store.set(path, value, options);
    },
    setAll: (changes, options) => {
      const allowed = changes.filter(([path]) => may(path));
      if (allowed.length) store.setAll(allowed, options);
    },
  };
}

/** Keeps fixed numbers from taking the hand: they are read, not changed. @param {HTMLElement} root @param {((path: string) => boolean) | null} may */
export function fixNumbers(root, may) {
  if (!may) return;
  for (const field of root.querySelectorAll(".sentence .num")) {
    const control = field.querySelector("input, select");
    const path = control?.getAttribute("data-path") ?? UNNAMED;
    if (may(path)) continue;
    field.setAttribute("data-fixed", "");
    if (control instanceof HTMLSelectElement) control.disabled = true;
    if (control instanceof HTMLInputElement) control.readOnly = true;
    if (control instanceof HTMLInputElement) control.setAttribute("aria-readonly", "true");
  }
  for (const handle of root.querySelectorAll(".handle")) {
    if (!isFixed(handle, may)) continue;
    handle.setAttribute("data-fixed", "");
    handle.setAttribute("aria-disabled", "true");
    handle.setAttribute("tabindex", "-1");
  }
  // A list that is edited as a whole says what it changes.
  for (const list of root.querySelectorAll("[data-changes]")) {
    if (may(list.getAttribute("data-changes") ?? "")) continue;
    for (const control of list.querySelectorAll("button, input, select, textarea")) {
      /** @type {HTMLInputElement} */ (control).disabled = true;
    }
  }
}

/** A point of a chart is fixed where none of the numbers that it moves may be changed. @param {Element} handle @param {(path: string) => boolean} may */
function isFixed(handle, may) {
  const moves = (handle.getAttribute("data-moves") ?? "").split(" ").filter(Boolean);
  return locked(may) || (moves.length > 0 && !moves.some(may));
}

/** @param {HTMLElement} root */
export function guardFixed(root) {
  /** @param {Event} event */
  const stop = (event) => {
    const { target } = event;
    const leaves = event instanceof KeyboardEvent && event.key === "Tab";
    if (target instanceof Element && target.closest("[data-fixed]") && !leaves) event.stopPropagation();
  };
  for (const type of ["pointerdown", "keydown"]) root.addEventListener(type, stop, { capture: true });
}
