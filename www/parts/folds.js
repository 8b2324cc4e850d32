// @ts-check
/** Things folded away under the answer, each with its gist in a line while closed. */

import { html, say } from "./html.js";
/** @import { Words } from "./html.js" */

/**
 * @typedef {object} Fold
 * @property {string} id
 * @property {string} name
 * @property {Words} [gist]
 * @property {Node | (() => Node)} body A function is called when the fold is first opened.
 * @property {(open: boolean) => void} [onToggle]
 */

/**
 * @param {readonly Fold[]} list
 */
export function folds(list) {
  const element = html("div", { class: "folds" });
  const made = new Map(
    list.map((fold) => {
      const gist = html("span", { class: "gist" });
      const body = html("div", { class: "fold-body" });
      const details = html(
        "details",
        { "data-fold": fold.id },
        html("summary", {}, html("h2", { class: "fold-name" }, fold.name), gist),
        body,
      );
      say(gist, fold.gist ?? "");
      if (typeof fold.body !== "function") body.append(fold.body);
      details.addEventListener("toggle", () => {
        if (details.open && typeof fold.body === "function" && !body.hasChildNodes()) body.append(fold.body());
        fold.onToggle?.(details.open);
      });
      element.append(details);
      return [fold.id, { details, gist }];
    }),
  );

  return {
    element,
    /** @param {Record<string, { gist?: Words, hidden?: boolean }>} next By fold id. */
    update(next) {
      for (const [id, { gist, hidden }] of Object.entries(next)) {
        const fold = made.get(id);
        if (!fold) continue;
        if (gist !== undefined) say(fold.gist, gist);
        if (hidden !== undefined) fold.details.hidden = hidden;
      }
    },
    /** @param {string} id */
    isOpen: (id) => made.get(id)?.details.open ?? false,
  };
}
