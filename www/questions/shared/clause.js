// @ts-check
/** A run of words and numbers in a sentence that comes and goes as a whole, so that no field loses its focus when another part changes. */

import { html, set } from "../../parts/html.js";
import { isField } from "../../parts/sentence.js";

/** @typedef {{ element: HTMLElement, note: HTMLElement }} Field A number, a choice or another clause. */

/** @param {...(string | Node | Field)} words */
export function clause(...words) {
  const fields = words.filter(isField);
  const element = html("span", {}, ...words.map((word) => (isField(word) ? word.element : word)));
  const note = html("div", {}, ...fields.map((field) => field.note));
  return {
    element,
    note,
    wraps: true,
    /** @param {boolean} wanted */
    show(wanted) {
      set(element, { hidden: !wanted });
      set(note, { hidden: !wanted });
    },
  };
}
