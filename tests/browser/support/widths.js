// @ts-check
/** A page in windows of several widths. */

import { expect } from "./page.js";

/** @import { Page } from "@playwright/test" */

/** A phone held upright, whose height says nothing about how wide the page is. */
const HEIGHT_PX = 844;

/** Nothing scrolls sideways at any of these widths. @param {Page} page @param {number[]} widths_px @param {string} [what] */
export async function expectNoSidewaysScroll(page, widths_px, what = "") {
  for (const width of widths_px) {
    await page.setViewportSize({ width, height: HEIGHT_PX });
    await expect
      .poll(
        () => page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth),
        `${what} ${width} px`,
      )
      .toBeLessThanOrEqual(0);
  }
}
