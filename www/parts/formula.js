// @ts-check
/** Formulas as MathML, which browsers set and screen readers read without help. */

import { set } from "./html.js";

/** @typedef {string | MathMLElement | readonly FormulaPart[]} FormulaPart A symbol, a number, an operator, or a run of them. */

const OPERATOR = /^[=+\-−×·÷±<>≤≥≈,;|()[\]∫∑→]$/;
const NUMBER = /^\d[\d.,\u202f]*$/;

/**
 * `formula("power equals force times speed", ["P", "=", "F", "v"])`
 * @param {string} words The formula read aloud.
 * @param {FormulaPart} parts
 * @param {{ block?: boolean }} [how]
 */
export function formula(words, parts, { block = false } = {}) {
  const element = math("math", row(parts));
  element.setAttribute("alttext", words);
  element.setAttribute("class", block ? "formula block" : "formula");
  if (!block) return element;
  element.setAttribute("display", "block");
  // Only a formula that scrolls needs to be reached by the keyboard.
  new ResizeObserver(() =>
    set(element, { tabindex: element.scrollWidth > element.clientWidth + 1 ? 0 : null }),
  ).observe(element);
  return element;
}

/** @param {FormulaPart} over @param {FormulaPart} under */
export const fraction = (over, under) => math("mfrac", row(over), row(under));
/** @param {FormulaPart} base @param {FormulaPart} below */
export const subscript = (base, below) => math("msub", row(base), row(below));
/** @param {FormulaPart} base @param {FormulaPart} above */
export const power = (base, above) => math("msup", row(base), row(above));
/** @param {FormulaPart} base @param {FormulaPart} below @param {FormulaPart} above */
export const subscriptPower = (base, below, above) => math("msubsup", row(base), row(below), row(above));
/** @param {FormulaPart} inside */
export const squareRoot = (inside) => math("msqrt", row(inside));
/** @param {string} text */
export const plainWords = (text) => math("mtext", text);

/**
 * @param {FormulaPart} part
 * @returns {MathMLElement}
 */
function row(part) {
  if (typeof part === "string") return math(NUMBER.test(part) ? "mn" : OPERATOR.test(part) ? "mo" : "mi", part);
  if (part instanceof Node) return part;
  return math("mrow", ...part.map(row));
}

/**
 * @param {string} name
 * @param {...(string | Node)} children
 */
function math(name, ...children) {
  const element = /** @type {MathMLElement} */ (document.createElementNS("http://www.w3.org/1998/Math/MathML", name));
  element.append(...children);
  return element;
}
