// @ts-check
/** What the lists of the sheet are made of: parts that are there or not, names, and pieces that are added and removed. */

import { h } from "../frame/dom.js";
import { labelOf } from "../frame/field-words.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Row } from "./number-row.js" */

/** @typedef {"drag" | "hold" | "power" | null} Meaning */
/** @typedef {{ rows: Row[], elements: (Node | string | null | false | undefined)[] }} Part */

/**
 * A part that is there once its box is ticked.
 * @param {{ label: string, there: boolean, onChange: (checked: boolean) => void }} box @param {() => Part} body
 * @returns {Part}
 */
export function tickedPart({ label, there, onChange }, body) {
  const box = h("input", { type: "checkbox", checked: there, onchange: () => onChange(box.checked) });
  const { rows, elements } = there ? body() : { rows: [], elements: [] };
  return { rows, elements: [h("label", { class: "check" }, box, label), ...elements] };
}

/** Rows of numbers below one path. @param {Page} page @param {string} at @param {readonly string[]} names @param {Meaning} meaning @param {string} [called] whose numbers they are, where a name alone does not tell @returns {Part} */
export function numberRows(page, at, names, meaning, called) {
  const rows = names.map((name) => {
    const path = `${at}.${name}`;
    return numberRow(page, path, { meaning, ...(called && { label: `${labelOf(path)}, ${called}` }) });
  });
  return { rows, elements: rows.map((row) => row.element) };
}

/**
 * A name that the rider gives, and how it follows the store.
 * @param {Page} page @param {string} path @param {string} label
 */
export function nameInput({ store }, path, label) {
  const input = h("input", {
    type: "text",
    maxlength: 80,
    "aria-label": label,
    onchange: () => store.settle(),
    oninput: () => store.set(path, input.value, { merge: path }),
  });
  return {
    input,
    update() {
      if (document.activeElement !== input) input.value = store.at(path) ?? "";
    },
  };
}

/** A button that takes one away from a list. @param {Page} page @param {string} list @param {number} index @param {string} text @param {string} label */
export function removeButton({ store }, list, index, text, label) {
  return h(
    "button",
    {
      type: "button",
      "aria-label": label,
      onclick: () => {
        const left = store.at(list).filter((/** @type {unknown} */ _, /** @type {number} */ at) => at !== index);
        store.set(list, left.length ? left : undefined);
      },
    },
    text,
  );
}
