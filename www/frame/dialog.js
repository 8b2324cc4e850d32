// @ts-check
/** A native modal dialog with a heading and a way out; focus goes back to where it was by itself. */

import { uniqueId } from "../parts/html.js";
import { book } from "../words/index.js";
import { h } from "./dom.js";

const say = book("page");

/**
 * @param {string} title @param {...(Node | string)} content
 * @returns {HTMLDialogElement} opened; it removes itself when it is closed
 */
export function openDialog(title, ...content) {
  const id = uniqueId("dialog");
  const dialog = h(
    "dialog",
    { class: "dialog", "aria-labelledby": id, onclose: () => dialog.remove() },
    h(
      "div",
      { class: "sheet-top" },
      h("h2", { id, tabindex: -1, autofocus: true }, title),
      h("button", { type: "button", onclick: () => dialog.close() }, say("close")),
    ),
    h("div", { class: "dialog-body" }, ...content),
  );
  // A press on the backdrop lands on the dialog itself.
  dialog.addEventListener("click", (event) => {
    if (event.target === dialog) dialog.close();
  });
  document.body.append(dialog);
  dialog.showModal();
  return dialog;
}
