// @ts-check
/** Making and changing HTML elements. */

/** @typedef {"power" | "drag" | "hold" | "ground"} Meaning What a colour stands for, everywhere on the page. */
/** @typedef {string | Node | ReadonlyArray<string | Node>} Words Text, an element, or a run of both. */
/** @typedef {Record<string, string | number | boolean | null | undefined>} Attributes */

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
 * Replaces what an element says; the same plain text again is left alone.
 * @param {Element} element
 * @param {Words} content
 */
export function say(element, content) {
  if (typeof content === "string") {
    if (element.textContent !== content || element.childElementCount > 0) element.textContent = content;
  } else if (content instanceof Node) {
    element.replaceChildren(content);
  } else {
    element.replaceChildren(...content);
  }
}

/**
 * Semi-bold words, in the colour of their meaning when they have one.
 * @param {string} text
 * @param {Meaning | null} [meaning]
 */
export function strong(text, meaning = null) {
  return html("b", { class: meaning }, text);
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
