// @ts-check
/** What the page says at its edge: it leaves, with its question or after a while, and lies on nothing that is read or used. */

import { test } from "./support/one-page.js";
import { drawn, expect, handle, test as inOwnWindow, notice, openQuestion } from "./support/page.js";

/** @import { Locator, Page } from "@playwright/test" */

/** Longer than any notice is shown. */
const A_WHILE_MS = 30_000;

/** Brings a notice that has an Undo. @param {Page} page */
async function sayWithUndo(page) {
  await page.getByText("Paste several").click();
  await page.getByRole("textbox", { name: "Efforts to add, one a line" }).fill("4:00 417\n20 min 342 W");
  await page.getByRole("button", { name: "Add these efforts" }).click();
  await page.getByRole("button", { name: "Use these in every question" }).click();
  await expect(notice(page).getByRole("button", { name: "Undo" })).toBeVisible();
}

/** @param {Page} page */
async function openCurve(page) {
  await page.clock.install();
  await openQuestion(page, "power-curve");
}

inOwnWindow("a notice with Undo leaves after a while, but not from under the hand", async ({ page }) => {
  await openCurve(page);
  await sayWithUndo(page);
  await notice(page).getByRole("button", { name: "Undo" }).focus();
  await page.clock.fastForward(A_WHILE_MS);
  await expect(notice(page)).toBeVisible();
  await notice(page).hover();
  await page.getByRole("main").focus();
  await page.clock.fastForward(A_WHILE_MS);
  await expect(notice(page)).toBeVisible();
  await page.mouse.move(1, 1);
  await page.clock.fastForward(A_WHILE_MS);
  await expect(notice(page)).toHaveCount(0);
});

test("a notice leaves with the question that it is about", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await sayWithUndo(page);
  await page.getByRole("navigation", { name: "Questions" }).getByRole("link", { name: "Finish time" }).click();
  await expect(page.locator("#host")).toHaveAttribute("data-question", "finish-time");
  await expect(notice(page)).toHaveCount(0);
});

test("a notice stays where it is while it is pressed, so that the press counts", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openQuestion(page, "power-curve");
  await sayWithUndo(page);
  const undo = notice(page).getByRole("button", { name: "Undo" });
  await page.locator(".verdict").evaluate((element) => element.scrollIntoView({ block: "start", behavior: "instant" }));
  const before = await undo.boundingBox();
  await undo.hover();
  await page.mouse.down();
  await page.locator(".verdict").evaluate((element) => element.scrollIntoView({ block: "end", behavior: "instant" }));
  await drawn(page);
  expect(await undo.boundingBox()).toEqual(before);
  await page.mouse.up();
  await expect(notice(page)).toHaveCount(0);
});

/** @param {Locator} one @param {Locator} other */
async function apart(one, other) {
  const [a, b] = [await one.boundingBox(), await other.boundingBox()];
  return !a || !b || a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
}

for (const width of [390, 820, 1440]) {
  test(`at ${width} pixels a notice lies neither on the answer's figure, nor on the sheet, nor on what has the focus`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 844 });
    await openQuestion(page, "power-curve");
    await sayWithUndo(page);
    const verdict = page.locator(".verdict");
    const ring = handle(page, "The time asked about");
    for (const place of /** @type {const} */ (["start", "center", "end"])) {
      await verdict.evaluate((element, block) => element.scrollIntoView({ block, behavior: "instant" }), place);
      await expect.poll(() => apart(notice(page), verdict)).toBe(true);
    }
    for (const place of /** @type {const} */ (["start", "end"])) {
      await ring.evaluate((element, block) => {
        /** @type {SVGElement} */ (element).focus({ preventScroll: true });
        element.scrollIntoView({ block, behavior: "instant" });
      }, place);
      await expect.poll(() => apart(notice(page), ring)).toBe(true);
    }
    await page.evaluate(() => scrollTo(0, 0));
    const tools = page.locator(".tools");
    await expect.poll(() => apart(notice(page), tools)).toBe(true);
    await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
    const sheet = page.locator("#sheet");
    await expect(sheet).toBeVisible();
    await expect.poll(() => apart(notice(page), sheet)).toBe(true);
    await expect.poll(() => apart(notice(page), tools)).toBe(true);
  });
}
