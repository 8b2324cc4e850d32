// @ts-check
/** Weather that changes during the day: given in the sheet, told with the finish time, kept in a link, shared by every question. */

import { faults } from "./support/accessibility.js";
import { test } from "./support/one-page.js";
import { drawn, expect, figure, found, handle, number, open, openQuestion, tool } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** A number of the sheet. @param {Page} page @param {string} path */
const sheetNumber = (page, path) => page.locator(`#sheet [data-path="scenario.conditions.${path}"]`);

/** @param {Page} page @param {string} path @param {string} text */
async function typeInSheet(page, path, text) {
  await sheetNumber(page, path).fill(text);
  await sheetNumber(page, path).press("Enter");
}

const changes = (/** @type {Page} */ page) =>
  page.getByRole("checkbox", { name: "The weather changes during the day" });
const otherStart = (/** @type {Page} */ page) => page.locator(".start-at");

/** A day on which the wind freshens from 5 to 15 mph between 7 and 10 o'clock. @param {Page} page */
async function giveDay(page) {
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  await page.locator(".sheet-group > summary", { hasText: "Conditions" }).click();
  await typeInSheet(page, "wind_speed_m_s", "5");
  await typeInSheet(page, "wind_from_deg", "W");
  await changes(page).check();
  await typeInSheet(page, "later.wind_speed_m_s", "15");
  await typeInSheet(page, "later.at_s", "10");
  await page.getByRole("button", { name: "Done" }).click();
}

test("another start is compared, by typing and by dragging, and undone", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await expect(otherStart(page)).toBeHidden();
  await giveDay(page);
  await expect(otherStart(page)).toContainText("would be slower by");
  await expect(number(page, "When you start")).toHaveValue("8:00");
  await expect(number(page, "The other start")).toHaveValue("10:00");

  // The other way round, the other is faster by as much.
  const slower = /slower by (\S+)/.exec(await otherStart(page).innerText())?.[1];
  await number(page, "When you start").fill("10am");
  await number(page, "When you start").press("Enter");
  await number(page, "The other start").fill("8h");
  await number(page, "The other start").press("Enter");
  await expect(otherStart(page)).toContainText(`faster by ${slower}`);
  await number(page, "When you start").fill("half past");
  await number(page, "When you start").press("Enter");
  await expect(page.locator(".start-at .wrong:visible")).toContainText("needs a time of day, like 7:30");
  await page.keyboard.press("Escape");

  await page.locator('[data-fold="day"] summary').click();
  await expect(page.getByRole("img", { name: /Which way the course leads/ })).toBeVisible();
  await expect(page.locator('[data-fold="day"]')).toContainText(
    "The wind is 5 mph from 270° at 7:00 and 15 mph from 270° at 10:00.",
  );
  await expect(page.locator('[data-fold="day"] tbody')).toContainText("Wind speed, as forecast");
  expect(await faults(page)).toEqual([]);
  const before = await figure(page).innerText();
  await handle(page, "Your start").press("Home");
  await expect(number(page, "When you start")).toHaveValue("7:00");
  await expect(figure(page)).not.toHaveText(before);
  await tool(page, "Undo").click();
  await expect(number(page, "When you start")).toHaveValue("10:00");
  await expect(figure(page)).toHaveText(before);
});

test("the day fits a narrow phone", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await giveDay(page);
  await page.locator('[data-fold="day"] summary').click();
  await page.setViewportSize({ width: 320, height: 720 });
  await expect(page.getByRole("img", { name: /Which way the course leads/ })).toBeVisible();
  await drawn(page);
  const beyond_px = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(beyond_px).toBeLessThanOrEqual(0);
});

test("a day that stays has no other start, and its wind is told along the road", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await expect(page.locator('[data-fold="day"]')).toBeHidden();
  await giveDay(page);
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  await changes(page).uncheck();
  await page.getByRole("button", { name: "Done" }).click();
  await expect(otherStart(page)).toBeHidden();
  await expect(page.locator('[data-fold="day"] .gist')).toContainText("Head wind along the road from");
});

for (const question of ["power-or-drag", "speed-for-watts", "hold-or-fade"])
  test(`${question}: a link with weather that changes opens at a first visit`, async ({ page, browser, baseURL }) => {
    await openQuestion(page, "finish-time");
    await giveDay(page);
    await expect(otherStart(page)).toBeVisible();
    await open(page, `#${question}`);
    await expect(page).toHaveURL(new RegExp(`#${question}/1`));
    const link = page.url();
    const visitor = await browser.newContext({ baseURL });
    const first = await visitor.newPage();
    /** @type {string[]} */
    const troubles = [];
    first.on("pageerror", ({ message }) => troubles.push(message));
    await first.goto(link);
    await expect(first.locator("html")).toHaveAttribute("data-started", "");
    await found(first);
    await expect(figure(first)).toHaveText(/\d/);
    await expect(first.locator(".wrongs .wrong:visible")).toHaveCount(0);
    // As it is with the whole module loaded from the start.
    const told = await figure(first).innerText();
    await open(first, "#which-position");
    await first.goto(link);
    await expect(figure(first)).toHaveText(told);
    expect(troubles).toEqual([]);
    await visitor.close();
  });
