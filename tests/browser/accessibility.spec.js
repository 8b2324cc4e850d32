// @ts-check
/** Axe-core finds nothing and nothing scrolls sideways: every question, unfolded, with a complaint, with the sheet, with help, light and dark, wide and on a phone. */

import { faults, faultsOfColour, faultsOfWords } from "./support/accessibility.js";
import { everyQuestion } from "./support/every-question.js";
import { drawn, expect, number, open, test } from "./support/page.js";
import { questions } from "./support/questions.js";
import { expectNoSidewaysScroll } from "./support/widths.js";

/** @import { Page } from "@playwright/test" */

const WIDE = { width: 1440, height: 1000 };
/** As wide as a phone, and high enough that the bar along the foot covers nothing: what it covers is a matter of scrolling. */
const PHONE = { width: 390, height: 14000 };
/** 640 is a window of 1280 at a zoom of 200 %. */
const WIDTHS_PX = [320, 390, 640, 820];
/** In the dark only the colours are others. */
const SCHEMES = /** @type {const} */ ([
  ["light", faults],
  ["dark", faultsOfColour],
]);

/** @param {Page} page */
async function expectNoFault(page) {
  for (const size of [PHONE, WIDE]) {
    await page.setViewportSize(size);
    for (const [colorScheme, inIt] of SCHEMES) {
      await page.emulateMedia({ colorScheme });
      await drawn(page);
      expect(await inIt(page), `${colorScheme}, ${size.width} px`).toEqual([]);
    }
  }
  await page.emulateMedia({ colorScheme: "light" });
}

/** @param {Page} page */
async function openSheet(page) {
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  const sheet = page.getByRole("complementary", { name: "Your numbers" });
  await expect(sheet).toBeVisible();
  return sheet;
}

// Without motion nothing is caught half way through a fade.
test.use({ viewport: WIDE, contextOptions: { reducedMotion: "reduce" } });

test("every question has no fault and fits every width, folded and unfolded, with a complaint and with the sheet", async ({
  page,
}) => {
  await everyQuestion(page, questions, async ({ number: given }) => {
    await expectNoSidewaysScroll(page, WIDTHS_PX);
    await page.setViewportSize(WIDE);
    for (const fold of await page.locator("[data-fold] > summary:visible").all()) await fold.click();
    await number(page, given.name).fill(given.outside);
    await expectNoSidewaysScroll(page, WIDTHS_PX);
    await expectNoFault(page);
    await number(page, given.name).press("Escape");
    const sheet = await openSheet(page);
    // Its colours are those of the whole sheet, which is looked at below.
    expect(await faultsOfWords(page, "#sheet")).toEqual([]);
    const groups = ["Positions", "Conditions"].map((name) =>
      sheet.locator(".sheet-group > summary", { hasText: name }),
    );
    for (const group of groups) await group.click();
    for (const width of WIDTHS_PX) {
      await expectNoSidewaysScroll(page, [width]);
      expect(
        await page.locator(".sheet-body").evaluate((body) => body.scrollWidth - body.clientWidth),
      ).toBeLessThanOrEqual(0);
    }
    for (const group of groups) await group.click();
    await sheet.getByRole("button", { name: "Done" }).click();
    await expect(sheet).toBeHidden();
  });
});

test("the whole sheet has no fault", async ({ page }) => {
  await open(page);
  const sheet = await openSheet(page);
  for (const name of ["Positions", "Power", "Course", "Conditions"])
    await sheet.locator(".sheet-group > summary", { hasText: name }).click();
  const position = sheet.locator(".position").first();
  for (const name of [/^It fades/, /^It lapses/, /^Drag is known at several yaws/])
    await position.getByRole("checkbox", { name }).check();
  await expectNoFault(page);
});

test("help, saved scenarios, units and the menu have no fault", async ({ page }) => {
  await open(page);
  for (const name of ["Help", "Save", "Units"]) {
    await page.setViewportSize(WIDE);
    await page.locator("header").getByRole("button", { name }).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    await expectNoFault(page);
    await page.keyboard.press("Escape");
  }
  await page.setViewportSize(PHONE);
  await drawn(page);
  await page.getByRole("button", { name: "Questions" }).click();
  for (const [colorScheme, inIt] of SCHEMES) {
    await page.emulateMedia({ colorScheme });
    expect(await inIt(page), colorScheme).toEqual([]);
  }
});
