// @ts-check
/** Every text of the page, seen or heard, for comparing what it says in one language with another. */

/** @import { Page } from "@playwright/test" */

/** Texts that are the same in every language: citations, the names of languages, and what a rider or the browser wrote. */
const SAME =
  "[data-source], main [lang=en], .sources, [name=language], .snippet, pre, code, noscript, script, style, math, textarea";

/** What is said in the body: text nodes, and attributes that are read out. @param {Page} page @returns {Promise<string[]>} */
export function textsOf(page) {
  return page.evaluate((same) => {
    const found = new Set();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.parentElement?.closest(same) && !node.parentElement?.closest("label[lang]"))
        found.add(node.textContent ?? "");
    }
    for (const name of ["aria-label", "aria-valuetext", "title", "placeholder", "alt"]) {
      for (const element of document.body.querySelectorAll(`[${name}]`))
        if (!element.closest(same)) found.add(element.getAttribute(name) ?? "");
    }
    // Names with an underscore are those of columns in files.
    return /** @type {string[]} */ ([...found]).filter((text) => !text.includes("_"));
  }, SAME);
}

/** Only the words of a text, so that figures written differently do not make two texts of one. @param {string} text */
export function wordsOf(text) {
  return (text.match(/\p{L}[\p{L}’'′-]*/gu) ?? []).join(" ");
}

/** Whether it is more than a name or a sign: two words or more, one of them long. @param {string} words */
export const isPhrase = (words) => words.includes(" ") && /\p{L}{4}/u.test(words);
