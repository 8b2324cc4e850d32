// @ts-check
/** "Your numbers": every input, beside the page on a wide screen and below it on a phone. The page behind stays live. */

import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { conditions } from "./conditions.js";
import { course } from "./course.js";
import { events } from "./events.js";
import { positions } from "./positions.js";
import { power } from "./power.js";
import { riderAndBike } from "./rider-and-bike.js";

/** @import { Page } from "../frame/page.js" */
/** @import { CoreError } from "../core.js" */
/** @import { State } from "../state/history.js" */

const say = book("sheet");
const words = book("page");

/** @param {Page} page @param {HTMLElement} host the `aside` that becomes the sheet */
export function createSheet(page, host) {
  const { store } = page;
  let { groups, folds, heading, title } = build();

  /** Everything on it, in the language that is spoken. */
  function build() {
    const groups = [riderAndBike(page), positions(page), power(page), events(page), course(page), conditions(page)];
    const folds = groups.map((group, index) =>
      h(
        "details",
        { class: "sheet-group", open: index === 0 },
        h("summary", {}, h("h3", {}, group.title)),
        group.element,
      ),
    );
    const heading = h("h2", { id: "sheet-title", tabindex: -1 }, words("yourNumbers"));
    const title = h("input", {
      type: "text",
      maxlength: 120,
      onchange: () => store.settle(),
      oninput: () => store.set("scenario.title", title.value, { merge: "scenario.title" }),
    });
    host.replaceChildren(
      h("div", { class: "sheet-top" }, heading, h("button", { type: "button", onclick: () => close() }, say("done"))),
      h(
        "div",
        { class: "sheet-body" },
        h("p", { class: "sheet-lead" }, say("lead")),
        h("label", { class: "row" }, h("span", { class: "row-label" }, say("title")), title),
        ...folds,
      ),
    );
    return { groups, folds, heading, title };
  }
  host.setAttribute("aria-labelledby", "sheet-title");

  /** @type {Element | null} */
  let opener = null;
  let valueAtFocus = "";
  /** @type {CoreError | null} */
  let error = null;

  host.addEventListener("focusin", ({ target }) => {
    valueAtFocus = target instanceof HTMLInputElement ? target.value : "";
  });
  // Escape first takes back what is being typed; only then does it close.
  host.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "Escape") return;
      const { target } = event;
      const typed =
        target instanceof HTMLInputElement &&
        target.getAttribute("role") === "spinbutton" &&
        target.value !== valueAtFocus;
      if (!typed) close();
    },
    { capture: true },
  );

  function close() {
    if (host.hidden) return;
    host.hidden = true;
    delete document.documentElement.dataset.sheet;
    if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
    opener = null;
  }

  /** @param {string} [path] the field that is asked for */
  function open(path) {
    if (!host.contains(document.activeElement)) opener = document.activeElement;
    host.hidden = false;
    document.documentElement.dataset.sheet = "open";
    update(store.get(), error);
    if (!path) return heading.focus({ preventScroll: true });
    const key = path.replace(/^scenario\./, "");
    const index = groups.findIndex(({ covers }) => covers.split(" ").some((start) => key.startsWith(start)));
    if (index < 0) return heading.focus({ preventScroll: true });
    folds[index].open = true;
    const row = groups[index].row(path.replace(/\.(value|sd|source)$/, ""));
    if (!row) return folds[index].querySelector("summary")?.focus();
    row.focus();
    row.element.scrollIntoView({ block: "center" });
  }

  /** @param {State} state @param {CoreError | null} latest */
  function update(state, latest) {
    error = latest;
    if (host.hidden) return;
    if (document.activeElement !== title) title.value = state.scenario.title ?? "";
    for (const group of groups) group.update(state, latest);
  }

  /** Makes it anew, as in another language; what was unfolded stays so. */
  function remake() {
    const unfolded = folds.map((fold) => fold.open);
    ({ groups, folds, heading, title } = build());
    folds.forEach((fold, index) => {
      fold.open = unfolded[index];
    });
    update(store.get(), error);
  }

  return { open, close, update, remake, toggle: () => (host.hidden ? open() : close()) };
}
