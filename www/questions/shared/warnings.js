// @ts-check
/** What is doubtful about an answer, in plain words. */

import { html, strong } from "../../parts/html.js";

/** @import { Tools } from "../index.js" */
/** @import { Warning } from "../../types/core.d.ts" */

/** @param {Tools} tools */
export function warningList(tools) {
  const element = html("ul", { class: "takes" });
  let shown = "";
  return {
    element,
    /** @param {readonly Warning[]} warnings */
    update(warnings) {
      const words = warnings.map((warning) => tools.words(warning));
      element.hidden = words.length === 0;
      if (words.join("\n") === shown) return;
      shown = words.join("\n");
      element.replaceChildren(...words.map((sentence) => html("li", {}, strong("Mind. "), sentence)));
    },
  };
}
