// @ts-check
/** Nothing scrolls sideways, however narrow the screen or large the text. */

import { expect, number, openQuestion, test } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

/** 640 is a window of 1280 at a zoom of 200 %. */
const WIDTHS = [320, 390, 640, 820];

/** @param {Page} page */
async function expectNoSidewaysScroll(page) {
  await expect
    .poll(() => page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth))
    .toBeLessThanOrEqual(0);
}

/** @param {Page} page */
async function expectNoSidewaysScrollAtAnyWidth(page) {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 800 });
    await expectNoSidewaysScroll(page);
  }
}

for (const { id, number: given } of questions) {
  test(`${id} fits, folded and unfolded, with a complaint and with the sheet`, async ({ page }) => {
    await openQuestion(page, id);
    await expectNoSidewaysScrollAtAnyWidth(page);
    for (const fold of await page.locator(".folds summary").all()) await fold.click();
    await number(page, given.name).fill(given.outside);
    await expectNoSidewaysScrollAtAnyWidth(page);
    await number(page, given.name).press("Escape");
    await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
    for (const name of ["Positions", "Conditions"])
      await page.locator(".sheet-group > summary", { hasText: name }).click();
    await expectNoSidewaysScrollAtAnyWidth(page);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      expect(
        await page.locator(".sheet-body").evaluate((sheet) => sheet.scrollWidth - sheet.clientWidth),
      ).toBeLessThanOrEqual(0);
    }
  });
}

test.describe("on a small phone", () => {
  test.use({ viewport: { width: 320, height: 568 }, hasTouch: true, isMobile: true });

  test("every question is reached from the menu, and everything a finger presses is large enough", async ({ page }) => {
    await openQuestion(page, questions[0].id);
    for (const { title } of questions) {
      await page.getByRole("button", { name: "Questions" }).tap();
      await page.getByRole("dialog").getByTitle(title).tap();
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
      await expectNoSidewaysScroll(page);
    }
    for (const button of await page.getByRole("contentinfo").getByRole("button").all()) {
      // WCAG 2.2 asks for 24; the bar is what a thumb uses most.
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(40);
    }
  });

  test("a tap on a number opens it for typing and changes nothing", async ({ page }) => {
    const {
      id,
      number: { name },
    } = questions[0];
    await openQuestion(page, id);
    const before = await number(page, name).inputValue();
    await number(page, name).tap();
    await expect(number(page, name)).toBeFocused();
    await expect(number(page, name)).toHaveValue(before);
  });
});
