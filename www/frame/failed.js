// @ts-check
/** What stands in the page where it could not start. */

import { book } from "../words/index.js";
import { byId, h } from "./dom.js";

const say = book("page");

/** Its words may be what could not be loaded, so the English ones stand here too. @param {unknown} error */
export function sayItFailed(error) {
  console.error(error);
  const message = error instanceof Error ? error.message : String(error);
  const words = say.has("failed.title")
    ? { title: say("failed.title"), why: say(typeof WebAssembly === "undefined" ? "failed.no_wasm" : "failed.not_loaded"), says: say("failed.browser_says", { message }), reload: say("reload") }
    : { title: "The calculator did not start", why: "The page could not be loaded. Check the connection and reload it.", says: message, reload: "Reload" };
  byId("host").replaceChildren(h("div", { class: "failed", role: "alert" },
    h("h1", {}, words.title), h("p", {}, words.why), h("p", { class: "soft" }, words.says),
    h("button", { type: "button", onclick: () => location.reload() }, words.reload)));
}
