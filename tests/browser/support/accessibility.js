// @ts-check
/** What axe-core finds on a page. */

import axe from "axe-core";

/** @import { Page } from "@playwright/test" */

/** WCAG to version 2.2 at level AA, and what is good practice beyond. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** The rule that takes longest, and the only one that depends on colours. */
const CONTRAST = "color-contrast";

/** Each fault in a line, of the page or of a part of it; empty where there is none. @param {Page} page @param {string} [part] */
export const faults = (page, part) => found(page, { runOnly: RULES }, part);

/** The faults that other colours can bring. @param {Page} page @param {string} [part] */
export const faultsOfColour = (page, part) => found(page, { runOnly: { type: "rule", values: [CONTRAST] } }, part);

/** The faults that other words can bring. @param {Page} page @param {string} [part] */
export const faultsOfWords = (page, part) =>
  found(page, { runOnly: RULES, rules: { [CONTRAST]: { enabled: false } } }, part);

/** @param {Page} page @param {object} options of axe @param {string} [part] @returns {Promise<string[]>} */
async function found(page, options, part = "html") {
  // Evaluated by the test, so the page's own content policy stays as it is.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(axe.source);
  return page.evaluate(
    async ([asked, where]) => {
      // What passes is not asked for: describing it takes about as long as finding it.
      const axe = /** @type {any} */ (globalThis).axe;
      const { violations } = await axe.run(where, { ...asked, resultTypes: ["violations"] });
      return violations.flatMap((/** @type {any} */ { id, nodes }) =>
        nodes.map((/** @type {any} */ { target, failureSummary }) => `${id}: ${target} ${failureSummary}`),
      );
    },
    /** @type {const} */ ([options, part]),
  );
}
