// @ts-check
/** What axe-core finds on a page. */

import axe from "axe-core";

/** @import { Page } from "@playwright/test" */

/** WCAG to version 2.2 at level AA, and what is good practice beyond. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** The one rule that asks about colours, which takes longest. */
const COLOUR_RULE = "color-contrast";

/** Every rule; those about colours alone, for another scheme of colours; or the others, for another language. */
const ASKED = {
  all: { runOnly: RULES },
  colours: { runOnly: { type: "rule", values: [COLOUR_RULE] } },
  others: { runOnly: RULES, rules: { [COLOUR_RULE]: { enabled: false } } },
};

/** Each fault in a line; empty where there is none. @param {Page} page @param {keyof typeof ASKED} [asked] @returns {Promise<string[]>} */
export async function faults(page, asked = "all") {
  // Evaluated by the test, so the page's own content policy stays as it is.
  await page.evaluate(axe.source);
  return page.evaluate(async (options) => {
    const { violations } = await /** @type {any} */ (globalThis).axe.run(options);
    return violations.flatMap((/** @type {any} */ { id, nodes }) => nodes.map((/** @type {any} */ { target, failureSummary }) => `${id}: ${target} ${failureSummary}`));
  }, ASKED[asked]);
}
