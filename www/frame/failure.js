// @ts-check
/** What stands in the page where it could not start. */

import { byId, h } from "./dom.js";

/** @param {{ title: string, lines: string[], reload: string }} words @param {() => void} reload */
export function showFailure({ title, lines: [why, ...more], reload: label }, reload) {
  byId("host").replaceChildren(
    h(
      "div",
      { class: "failed", role: "alert" },
      h("h1", {}, title),
      h("p", {}, why),
      ...more.map((line) => h("p", { class: "soft" }, line)),
      h("button", { type: "button", onclick: reload }, label),
    ),
  );
}
