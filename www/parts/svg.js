// @ts-check
/** Making and reusing SVG elements. */

import { set } from "./html.js";
/** @import { Attributes } from "./html.js" */

/**
 * @template {keyof SVGElementTagNameMap} Name
 * @param {Name} name
 * @param {Attributes} [attributes]
 * @param {...(string | Node)} children
 * @returns {SVGElementTagNameMap[Name]}
 */
export function svg(name, attributes = {}, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  set(element, attributes);
  element.append(...children);
  return element;
}

/**
 * A run of like elements that is drawn again and again: elements are kept, changed, added or removed, never rebuilt.
 * `dress` must write every attribute it ever writes, since an element may have stood for another item before.
 * @template {keyof SVGElementTagNameMap} Name
 * @param {SVGElement} parent
 * @param {Name} name
 */
export function pool(parent, name) {
  /** @type {SVGElementTagNameMap[Name][]} */
  const made = [];
  /**
   * @template Item
   * @param {readonly Item[]} items
   * @param {(element: SVGElementTagNameMap[Name], item: Item) => void} dress
   */
  return function draw(items, dress) {
    items.forEach((item, index) => {
      let element = made[index];
      if (!element) {
        element = svg(name);
        made.push(element);
        parent.append(element);
      }
      dress(element, item);
    });
    while (made.length > items.length) made.pop()?.remove();
  };
}

/**
 * A length in pixels, short enough for a path.
 * @param {number} length_px
 */
export function px(length_px) {
  return String(Math.round(length_px * 10) / 10);
}

/**
 * @param {readonly (readonly [number, number])[]} points
 */
export function polyline(points) {
  return points.map(([x, y], index) => `${index ? "L" : "M"}${px(x)} ${px(y)}`).join("");
}
