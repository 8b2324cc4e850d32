// @ts-check
/** The fold "Put this on your site", whose content comes when it is first opened. */

import { home } from "#delivery";
import { html } from "../parts/html.js";

/** @import { Fold } from "../parts/folds.js" */
/** @import { Units } from "../units.js" */

/** @typedef {{ link: () => Promise<string>, units: () => Units, title: string }} OnScreen what is on the page now */

/** @param {OnScreen} now @returns {Fold[]} none where the page has no web address of its own */
export function siteFold(now) {
  const from = home;
  if (!from) return [];
  const body = html("div");
  let loading = false;
  return [{
    id: "site", name: "Put this on your site", gist: "Two lines that show this question with these numbers.", body,
    async onToggle(open) {
      if (!open || loading) return;
      loading = true;
      try {
        const { snippets } = await import("./snippet.js");
        body.replaceWith(snippets(from, now));
      } catch {
        loading = false;
        body.textContent = "This could not be loaded. Check the connection and open it again.";
      }
    },
  }];
}
