// @ts-check
/** A caution of a question: one line until the rider reads on; on paper, and to those who hear the page, all of it. */

import { html, set } from "../../parts/html.js";
import { book } from "../../words/index.js";

const shared = book("shared");

/** @param {readonly (string | Node)[]} words */
export function caution(words) {
  const text = html("p", { class: "caution" }, ...words);
  const more = html("button", { type: "button", "aria-expanded": "false" }, shared("readOn"));
  const element = html("div", { class: "cautious" }, text, more);
  more.addEventListener("click", () => {
    const open = !element.hasAttribute("data-open");
    set(element, { "data-open": open });
    set(more, { "aria-expanded": String(open) });
    more.textContent = shared(open ? "readLess" : "readOn");
  });
  return { element };
}
