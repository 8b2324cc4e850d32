// @ts-check
/** The texts that stand in the page's own HTML, in the language that is spoken: `data-say` names a text, `data-say-label` an accessible name. */

import { book } from "../words/index.js";

const say = book("page");

export function speakPage() {
  for (const element of document.querySelectorAll("[data-say]"))
    element.textContent = text(element.getAttribute("data-say"));
  for (const element of document.querySelectorAll("[data-say-label]"))
    element.setAttribute("aria-label", text(element.getAttribute("data-say-label")));
}

/** @param {string | null} key */
function text(key) {
  return key === null ? "" : say.found(key);
}
