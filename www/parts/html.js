// @ts-check
/** Making and changing HTML elements. */

import { isolated } from "./isolate.js";

/** @typedef {"power" | "drag" | "hold" | "ground"} Meaning What a colour stands for, everywhere on the page. */
/** @typedef {string | Node | ReadonlyArray<string | Node>} Words Text, an element, or a run of both. */
/** @typedef {Record<string, string | number | boolean | null | undefined>} Attributes */

/** What a reader can act on; a term does the same wherever it stands. */
const ACTIVE = "a, button:not(.term), input, select, textarea, summary";

/**
 * An element with attributes and children. `false`, `null` and `undefined` leave an attribute out; `true` writes it empty.
 * @template {keyof HTMLElementTagNameMap} Name
 * @param {Name} name
 * @param {Attributes} [attributes]
 * @param {...(string | Node)} children
 * @returns {HTMLElementTagNameMap[Name]}
 */
export function html(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  set(element, attributes);
  element.append(...children);
  return element;
}

/**
 * Writes the attributes that differ, so that an unchanged element costs no layout.
 * @param {Element} element
 * @param {Attributes} attributes
 */
export function set(element, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) {
      if (element.hasAttribute(name)) element.removeAttribute(name);
    } else {
      const text = value === true ? "" : String(value);
      if (element.getAttribute(name) !== text) element.setAttribute(name, text);
    }
  }
}

/**
 * Replaces what an element says, and leaves alone what already says the same: a redraw then costs only what changed.
 * What can be clicked is given as the same element each time, since one that looks alike may do something else.
 * @param {Element} element
 * @param {Words} content
 */
export function say(element, content) {
  const wanted =
    typeof content === "string" || content instanceof Node ? [content] : content.filter((one) => one !== "");
  wanted.forEach((one, index) => {
    const there = element.childNodes[index];
    if (!there) element.append(one);
    else if (typeof one === "string" && there instanceof Text) write(there, one);
    else if (!saysAlready(there, one)) there.replaceWith(one);
  });
  while (element.childNodes.length > wanted.length) element.lastChild?.remove();
}

/** @param {Text} text @param {string} wanted */
function write(text, wanted) {
  if (text.data !== wanted) text.data = wanted;
}

/** @param {Node} there @param {string | Node} wanted */
function saysAlready(there, wanted) {
  return there === wanted || (wanted instanceof Node && there.isEqualNode(wanted) && !isActive(there));
}

/** @param {Node} node */
function isActive(node) {
  return node instanceof Element && (node.matches(ACTIVE) || node.querySelector(ACTIVE) !== null);
}

/**
 * Semi-bold words, in the colour of their meaning when they have one.
 * @param {string} text
 * @param {Meaning | null} [meaning]
 */
export function strong(text, meaning = null) {
  return html("b", { class: meaning }, isolated(text));
}

let made = 0;
/**
 * An id no other element on the page has.
 * @param {string} stem
 */
export function uniqueId(stem) {
  made += 1;
  return `${stem}-${made}`;
}
