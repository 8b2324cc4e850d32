// @ts-check
/** Elements with their listeners in one line. Styles never come in as attributes, so the content policy can refuse inline ones. */

import { html } from "../parts/html.js";

/** @import { Attributes } from "../parts/html.js" */
/** @typedef {Node | string | null | undefined | false} Child */

/**
 * `h("button", { type: "button", onclick: save }, "Save")`: keys that begin with `on` are listeners, empty children are left out.
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag @param {Record<string, unknown>} [attributes] @param {...Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function h(tag, attributes = {}, ...children) {
  const entries = Object.entries(attributes);
  const plain = /** @type {Attributes} */ (Object.fromEntries(entries.filter(([name]) => !name.startsWith("on"))));
  const element = html(tag, plain);
  for (const [name, listener] of entries)
    if (name.startsWith("on")) element.addEventListener(name.slice(2), /** @type {EventListener} */ (listener));
  for (const child of children) if (child) element.append(child);
  return element;
}

/**
 * The element with this id, which the page's own HTML holds.
 * @param {string} id @returns {HTMLElement}
 */
export function byId(id) {
  const element = document.getElementById(id);
  if (!element) throw new Error(`The page has no element "${id}".`);
  return element;
}
