// @ts-check
/** One quiet line at the foot of the page that says what just happened, with at most one thing to do about it. */

import { book } from "../words/index.js";
import { h } from "./dom.js";

const say = book("page");

/** Long enough to read a sentence twice; lines with something to do stay until they are closed. */
const SHOWN_MS = 9000;

/** @typedef {(message: string, action?: { label: string, run: () => void }) => void} Notify */

/** @param {HTMLElement} host an element with role=status @returns {Notify} */
export function createNotice(host) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  function close() {
    clearTimeout(timer);
    host.replaceChildren();
    host.hidden = true;
  }

  return (message, action) => {
    clearTimeout(timer);
    const act = action && h("button", { type: "button", onclick: () => { close(); action.run(); } }, action.label);
    const away = h("button", { type: "button", "aria-label": say("close_message"), onclick: close }, say("close"));
    host.hidden = false;
    host.replaceChildren(h("span", {}, message), ...(act ? [act] : []), away);
    if (!action) timer = setTimeout(close, SHOWN_MS);
  };
}
