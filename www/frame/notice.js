// @ts-check
/** One quiet line at the edge of the page that says what just happened, with at most one thing to do about it. */

import { set } from "../parts/html.js";
import { book } from "../words/index.js";
import { h } from "./dom.js";

/** @import { Store } from "../state/history.js" */

const say = book("page");

/** Long enough to read a sentence twice, and to do something about it; the clock stands while the line is pointed at or has the focus. */
const SHOWN_MS = { read: 9000, act: 20_000 };
/** Where it can stand, best first; in the flow of the page it covers nothing. */
const SPOTS = /** @type {const} */ (["foot", "head", "below"]);
const IN_FLOW = "flow";
/** What it never covers. */
const IN_USE = ".sheet, .tools, [data-held], [data-dragging], :focus:not(main)";
/** What it leaves clear as well, the first of these for which there is room: all of the answer, or its figure. */
const ANSWER = [".answer", ".verdict"];
/** After these it may have come to lie on something. */
const MOVES = ["scroll", "resize", "focusin", "pointerdown"];

/** @typedef {(message: string, action?: { label: string, run: () => void }) => void} Notify */

/**
 * @param {HTMLElement} host an element with role=status
 * @param {Store} [store] whose change of question ends what is said
 * @returns {Notify}
 */
export function createNotice(host, store) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let shown_ms = SHOWN_MS.read;
  let frame = 0;

  function close() {
    clearTimeout(timer);
    for (const type of MOVES) removeEventListener(type, placeLater, { capture: true });
    host.replaceChildren();
    host.hidden = true;
  }

  function wait() {
    clearTimeout(timer);
    timer = setTimeout(() => (host.matches(":hover, :focus-within") || document.hidden ? wait() : close()), shown_ms);
  }

  /** @param {Event} event */
  function placeLater({ target }) {
    if (target instanceof Node && host.contains(target)) return;
    if (frame === 0) frame = requestAnimationFrame(place);
  }

  function place() {
    frame = 0;
    // Under a finger it stays where it is: a button that moves away misses the end of the press.
    if (host.matches(":active")) return;
    for (const answer of ANSWER) {
      for (const spot of SPOTS) {
        set(host, { "data-at": spot });
        if (!covers(host, `${IN_USE}, ${answer}`)) return;
      }
    }
    set(host, { "data-at": IN_FLOW });
  }

  store?.subscribe((state, previous) => {
    if (state.question !== previous.question) close();
  });

  return (message, action) => {
    const act =
      action &&
      h(
        "button",
        {
          type: "button",
          onclick: () => {
            close();
            action.run();
          },
        },
        action.label,
      );
    const away = h("button", { type: "button", "aria-label": say("closeMessage"), onclick: close }, say("close"));
    host.hidden = false;
    host.replaceChildren(h("span", {}, message), ...(act ? [act] : []), away);
    shown_ms = action ? SHOWN_MS.act : SHOWN_MS.read;
    wait();
    for (const type of MOVES) addEventListener(type, placeLater, { capture: true, passive: true });
    place();
  };
}

/** Whether it lies on one of the things. @param {HTMLElement} host @param {string} things */
function covers(host, things) {
  const own = host.getBoundingClientRect();
  const root = /** @type {Document | ShadowRoot} */ (host.getRootNode());
  return [...root.querySelectorAll(things)]
    .filter((one) => !host.contains(one))
    .map((one) => one.getBoundingClientRect())
    .some(
      (box) =>
        box.width > 0 &&
        box.height > 0 &&
        Math.min(own.right, box.right) > Math.max(own.left, box.left) &&
        Math.min(own.bottom, box.bottom) > Math.max(own.top, box.top),
    );
}
