// @ts-check
/** What is doubtful about an answer, in plain words. */

import { html, set } from "../../parts/html.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { Warning } from "../../types/core.d.ts" */

const words = book("shared");

/** @param {Tools} tools @param {(warning: Warning) => string} [sentence] */
export function warningList(tools, sentence = (warning) => tools.words(warning)) {
  const element = html("ul", { class: "takes" });
  let shown = "";
  return {
    element,
    /** @param {readonly Warning[]} warnings */
    update(warnings) {
      // Two of the same kind may read alike, as where two set-ups share the rider's lengths: each sentence stands once.
      const sentences = [...new Set(warnings.map(sentence))];
      set(element, { hidden: sentences.length === 0 });
      if (sentences.join("\n") === shown) return;
      shown = sentences.join("\n");
      element.replaceChildren(...sentences.map((warning) => html("li", {}, ...words.parts("mind", { warning }))));
    },
  };
}

/** The warnings of an answer as a piece of a question. @param {Tools} tools @param {(warning: Warning) => boolean} [told] those that are wanted @returns {{ element: HTMLElement, draw: (shown: { answer: { warnings: readonly Warning[] } }) => void }} */
export function doubts(tools, told = () => true) {
  const { element, update } = warningList(tools);
  return { element, draw: ({ answer }) => update(answer.warnings.filter(told)) };
}
