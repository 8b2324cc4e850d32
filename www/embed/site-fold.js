// @ts-check
/** The fold "Put this on your site", whose content comes when it is first opened. */

import { home } from "#delivery";
import { lostNotice } from "../frame/failed.js";
import { html } from "../parts/html.js";
import { book, open } from "../words/index.js";

/** @import { Fold } from "../parts/folds.js" */
/** @import { Units } from "../units.js" */

const words = book("shared");

/** @typedef {{ link: () => Promise<string>, units: () => Units, title: string }} OnScreen what is on the page now */

/** @param {OnScreen} now @returns {Fold[]} none where the page has no web address of its own */
export function siteFold(now) {
  const from = home;
  if (!from) return [];
  const body = html("div");
  let loading = false;
  return [
    {
      id: "site",
      name: words("site"),
      gist: words("siteGist"),
      body,
      async onToggle(opened) {
        if (!opened || loading) return;
        loading = true;
        try {
          const [{ snippets }] = await Promise.all([import("./snippet.js"), open("embed")]);
          body.replaceWith(snippets(from, now));
        } catch {
          loading = false;
          body.replaceChildren(...(await lostNotice(words("notLoaded"))));
        }
      },
    },
  ];
}
