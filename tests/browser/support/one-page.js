// @ts-check
/**
 * Tests that share a page, each of which finds it as a first visit would: to open another window costs more than most tests.
 * For tests that only use the page. What else a test puts into it (scripts, routes, clocks, permissions, other pages) would stay: such a test takes its page from page.js.
 */

import { test as base, WINDOW } from "./page.js";

/** @import { Page } from "@playwright/test" */

/** What would stay for the tests that come after. */
const WOULD_STAY = /** @type {const} */ (["addInitScript", "exposeBinding", "exposeFunction", "route"]);

/** @param {Page} page */
function refuseWhatWouldStay(page) {
  for (const name of WOULD_STAY)
    page[name] = () => {
      throw new Error(`${name} would stay in the shared page: take the page of this test from page.js.`);
    };
}

/** @type {typeof base} */
export const test = base.extend(
  /** @type {any} */ ({
    context: async (/** @type {any} */ { shared }, /** @type {any} */ use) => use(shared.context()),
    // The window has it already.
    withoutCopy: async (/** @type {any} */ { shared: _ }, /** @type {any} */ use) => use(),
    page: async (/** @type {any} */ { shared, complaints: _ }, /** @type {any} */ use) => {
      await forget(shared);
      await shared.setViewportSize(WINDOW);
      await shared.emulateMedia({ media: null, colorScheme: null, reducedMotion: null });
      await shared.mouse.move(0, 0);
      refuseWhatWouldStay(shared);
      await use(shared);
    },
  }),
);

/** Leaves the page, and with it all that it keeps on the device. @param {Page} page */
export async function forget(page) {
  // A file of the site without scripts: the page keeps its numbers when it is left.
  await page.goto("./icon.svg");
  await page.evaluate(async () => {
    localStorage.clear();
    for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
  });
}
