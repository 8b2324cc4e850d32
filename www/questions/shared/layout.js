// @ts-check
/** Where the pieces of a question stand: the sentence, the answer beside its charts, the notes, and what is folded away. */

import { html } from "../../parts/html.js";

/**
 * @param {HTMLElement} host
 * @param {{ ask: Node, answer: Node[], picture: Node[], notes: Node[], folds: Node }} pieces
 */
export function layOut(host, { ask, answer, picture, notes, folds }) {
  host.replaceChildren(
    ask,
    html("div", { class: "work" },
      html("section", { class: "answer", "aria-label": "Answer" }, ...answer),
      html("section", { class: "picture", "aria-label": "Charts" }, ...picture),
      html("section", { class: "notes", "aria-label": "What it means" }, ...notes)),
    folds,
  );
}

/** Words that help on a screen and mean nothing on paper. @param {string} words */
export const onScreen = (words) => html("span", { class: "no-print" }, words);
