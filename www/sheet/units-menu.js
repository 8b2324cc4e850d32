// @ts-check
/** The choice of units: what is read changes, what is stored does not. */

import { h } from "../frame/dom.js";
import { UNIT_CHOICES } from "../units.js";
import { openDialog } from "./dialog.js";

/** @import { Page } from "../frame/page.js" */

/** @param {Page} page */
export function openUnits({ store }) {
  const { units } = store.get();
  openDialog("Units", h("p", { class: "soft" }, "Drag area is always in square metres, power in watts."),
    ...UNIT_CHOICES.map(({ key, label, options }) => h("fieldset", { class: "choices" }, h("legend", {}, label),
      ...options.map(([value, name]) => h("label", { class: "check" },
        h("input", { type: "radio", name: `units-${key}`, value, checked: units[key] === value, onchange: () => store.set(`units.${key}`, value) }), name)))));
}
