// @ts-check
/** What a page says, in words: seen, heard and printed. */

/** @import { Locator, Page } from "@playwright/test" */

/** Told as they stand in every language: references, formulas, and lines to copy. */
const AS_THEY_STAND = "[data-source] > :first-child, math, textarea, .link, script, style";
/** Two words of three letters or more: a unit, a symbol or a name alone is the same in several languages. */
const SENTENCE = /\p{L}{3,}\P{L}+(?:.*\P{L})?\p{L}{3,}/u;

/** Columns of a file, by the names of their fields. */
const FIELDS = /^[a-z]+(?:_[a-z0-9]+)+(?:, [a-z_0-9]+)*$/;

/** Every run of words within an element, folded ones too. @param {Locator} place @returns {Promise<string[]>} */
export async function toldIn(place) {
  const texts = await place.evaluate((root, leftOut) => {
    /** @type {string[]} */
    const found = [];
    for (const details of root.querySelectorAll("details")) details.open = true;
    for (const element of [root, ...root.querySelectorAll("*")]) {
      if (element.closest(leftOut)) continue;
      for (const name of ["aria-label", "aria-valuetext", "title", "placeholder"]) found.push(element.getAttribute(name) ?? "");
      for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) found.push(node.nodeValue ?? "");
    }
    return found;
  }, AS_THEY_STAND);
  return [...new Set(texts.map((text) => text.replace(/\s+/g, " ").trim()))].filter((text) => SENTENCE.test(text) && !FIELDS.test(text));
}

/** What one page says word for word as the other does. @param {string[]} texts @param {string[]} others */
export const saidInBoth = (texts, others) => texts.filter((text) => others.includes(text));
