// @ts-check
/** The tools of the page: top bar, the phone's bar and menu, and their keys. The buttons stand in the HTML; `data-tool` says what each does. */

import { set, say as setText } from "../parts/html.js";
import { unitsInBrief } from "../units.js";
import { book } from "../words/index.js";
import { openDialog } from "./dialog.js";
import { h } from "./dom.js";
import { questionList } from "./rail.js";

/** @import { Page } from "./page.js" */
/** @import { State } from "../state/history.js" */

/** @typedef {"undo"|"redo"|"units"|"saved"|"share"|"print"|"help"|"sheet"|"menu"} Tool */

/** Tools that a narrow screen finds in its menu, and what they are called there. */
const IN_MENU = /** @type {const} */ ([
  ["units", "unitsAndLanguage"],
  ["saved", "saveAndOpen"],
  ["redo", "redo"],
  ["print", "print"],
  ["help", "help"],
]);

const say = book("page");

/** @param {Page} page @param {Omit<Record<Tool, () => void>, "menu">} tools @param {(question: string) => void} go */
export function createBar({ store, questions }, tools, go) {
  const run = { ...tools, menu: openMenu };
  const buttons = /** @type {HTMLButtonElement[]} */ ([...document.querySelectorAll("button[data-tool]")]);
  for (const button of buttons)
    button.addEventListener("click", () => run[/** @type {Tool} */ (button.dataset.tool)]());

  function openMenu() {
    const list = questionList(questions, (id) => {
      dialog.close();
      go(id);
    });
    list.update(store.get().question);
    const dialog = openDialog(
      say("questions"),
      h("nav", { class: "questions in-menu", "aria-label": say("questions") }, ...list.elements),
      h(
        "div",
        { class: "menu-tools" },
        ...IN_MENU.map(([tool, name]) =>
          h(
            "button",
            {
              type: "button",
              onclick: () => {
                dialog.close();
                run[tool]();
              },
            },
            say(name),
          ),
        ),
      ),
    );
  }

  // In a text field the browser's own undo is what is meant, unless the field has settled; then ours is.
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || document.querySelector("dialog[open]")) return;
    const { target } = event;
    if (
      target instanceof HTMLTextAreaElement ||
      (target instanceof HTMLInputElement && target.type === "text" && target.getAttribute("role") !== "spinbutton")
    )
      return;
    const key = event.key.toLowerCase();
    const wanted = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : null;
    if (!wanted) return;
    event.preventDefault();
    run[wanted]();
  });

  return {
    /** @param {State} state */
    update({ units }) {
      for (const button of buttons) {
        if (button.dataset.tool === "undo") button.disabled = !store.canUndo();
        if (button.dataset.tool === "redo") button.disabled = !store.canRedo();
        if (button.dataset.tool !== "units") continue;
        setText(button, unitsInBrief(units));
        set(button, { "aria-label": say("unitsNow", { units: unitsInBrief(units) }) });
      }
    },
  };
}
