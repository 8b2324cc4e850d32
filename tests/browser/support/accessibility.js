// @ts-check
/** What axe-core finds on a page. */

import axe from "axe-core";

/** @import { Page } from "@playwright/test" */

/** WCAG to version 2.2 at level AA, and what is good practice beyond. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Each fault in a line; empty where there is none. @param {Page} page @returns {Promise<string[]>} */
export async function faults(page) {
  // Evaluated by the test, so the page's own content policy stays as it is.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(axe.source);
  return page.evaluate(async (rules) => {
    // What passes is not asked for: describing it takes about as long as finding it.
    const { violations } = await /** @type {any} */ (globalThis).axe.run({
      runOnly: rules,
      resultTypes: ["violations"],
    });
    return violations.flatMap((/** @type {any} */ { id, nodes }) =>
      nodes.map((/** @type {any} */ { target, failureSummary }) => `${id}: ${target} ${failureSummary}`),
    );
  }, RULES);
}
