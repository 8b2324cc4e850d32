// @ts-check
/** Where the pieces of a question stand: the sentence, the answer beside its charts, the notes, and what is folded away. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";

const words = book("shared");

/**
 * @param {HTMLElement} host
 * @param {{ ask: Node, answer: Node[], picture: Node[], notes: Node[], folds: Node }} pieces
 */
export function layOut(host, { ask, answer, picture, notes, folds }) {
  host.replaceChildren(
    ask,
    html(
      "div",
      { class: "work" },
      html("section", { class: "answer", "aria-label": words("answer") }, ...answer),
      html("section", { class: "picture", "aria-label": words("charts") }, ...picture),
      html("section", { class: "notes", "aria-label": words("whatItMeans") }, ...notes),
    ),
    folds,
  );
}

/** Words that help on a screen and mean nothing on paper. @param {string} text */
export const onScreen = (text) => html("span", { class: "no-print hand-hint" }, text);
