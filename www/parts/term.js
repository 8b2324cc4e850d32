// @ts-check
/** A term that explains itself: pressing it shows one sentence beside it. */

import { html } from "./html.js";

/**
 * The browser closes the sentence on Escape and on a press elsewhere, and tells a screen reader of it.
 * @param {string} text @param {() => string} meaning asked for when it is shown, so that a closed term holds its own text alone
 */
export function term(text, meaning) {
  const button = html("button", { type: "button", class: "term" }, text);
  const note = html("span", { popover: "auto", class: "meaning" });
  note.addEventListener("beforetoggle", (event) => {
    note.textContent = event.newState === "open" ? meaning() : "";
  });
  // Without an id, so that the same term drawn again is the same element.
  button.popoverTargetElement = note;
  return html("span", { class: "term-box" }, button, note);
}
