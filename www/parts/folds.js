// @ts-check
/** Things folded away under the answer, each with its gist in a line while closed. */

import { book } from "../words/index.js";
import { html, say } from "./html.js";

/** @import { Words } from "./html.js" */

const words = book("page");

/**
 * @template [Shown=unknown]
 * @typedef {object} Fold
 * @property {string} id
 * @property {string} name
 * @property {Words | ((shown: Shown) => Words)} [gist]
 * @property {(shown: Shown) => boolean} [hidden]
 * @property {Node | (() => Node | Promise<Node>) | { element?: Node }} body A function is called when the fold is first opened.
 * @property {(open: boolean) => void} [onToggle]
 */

/** @template Shown @param {readonly Fold<Shown>[]} list */
export function folds(list) {
  const made = list.map((fold) => {
    const gist = html("span", { class: "gist" });
    const body = html("div", { class: "fold-body" });
    const details = html(
      "details",
      { "data-fold": fold.id },
      html("summary", {}, html("h2", { class: "fold-name" }, fold.name), gist),
      body,
    );
    if (typeof fold.gist !== "function") say(gist, fold.gist ?? "");
    const inside = fold.body;
    if (typeof inside !== "function") body.append(inside instanceof Node ? inside : (inside.element ?? ""));
    let filled = typeof inside !== "function";
    details.addEventListener("toggle", async () => {
      if (details.open && !filled && typeof inside === "function") {
        filled = true;
        try {
          body.replaceChildren(await inside());
        } catch {
          // What could not be fetched is tried again when the fold is opened again.
          filled = false;
          body.replaceChildren(words("partLost"));
        }
      }
      fold.onToggle?.(details.open);
    });
    return { ...fold, details, gistElement: gist };
  });

  return {
    element: html("div", { class: "folds" }, ...made.map(({ details }) => details)),
    /** What depends on what is shown. @param {Shown} shown */
    draw(shown) {
      for (const { gist, gistElement, hidden, details } of made) {
        if (typeof gist === "function") say(gistElement, gist(shown));
        if (hidden) details.hidden = hidden(shown);
      }
    },
  };
}
