// @ts-check
/** Stops and feeding: added in the sheet and taken back, told with the finish time, kept in a link, ridden by every question. */

import { faults } from "./support/accessibility.js";
import { test } from "./support/one-page.js";
import { drawn, expect, figure, found, test as inOwnWindow, openQuestion, tool } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

const stops = (/** @type {Page} */ page) => page.getByRole("checkbox", { name: "I stop on the way" });
const feeding = (/** @type {Page} */ page) => page.getByRole("checkbox", { name: "I eat or drink while riding" });
const told = (/** @type {Page} */ page) => page.locator(".takes", { hasText: "Stops and feeding" });

/** @param {Page} page */
async function openCourse(page) {
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  await page.locator(".sheet-group > summary", { hasText: "Course" }).click();
}

/** Stops each ten miles, and a bottle each twenty minutes. @param {Page} page */
async function giveStops(page) {
  await openCourse(page);
  await stops(page).focus();
  await page.keyboard.press("Space");
  const apart = page.locator('#sheet [data-path="scenario.stops.every_m"]');
  await apart.fill("10");
  await apart.press("Enter");
  await feeding(page).check();
}

test("stops and feeding are added, told and undone", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await figure(page).innerText();
  await giveStops(page);
  await expect(page.locator("#sheet")).toContainText("Stop where it is safe, off the road.");
  expect(await faults(page)).toEqual([]);
  await page.getByRole("button", { name: "Done" }).click();
  await expect(told(page)).toContainText(
    /take\s\S+\s±\s\S+:\s4:00\s±\s2:00\sstanding at 2 stops, .*starting again.*sitting up\./,
  );
  await expect(figure(page)).not.toHaveText(before);

  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const paper = page.locator(".paper");
  await expect(paper).toContainText("How far the stops are apart 10 miles");
  await expect(paper).toContainText("How long you stand at each stop 2:00 ± 1:00, typical");
  await expect(paper).toContainText("Drag area while eating or drinking 0.330 m² ± 0.03 m², typical");
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));

  await tool(page, "Undo").click();
  await expect(told(page)).not.toContainText("sitting up");
  await tool(page, "Undo").click();
  await tool(page, "Undo").click();
  await expect(told(page)).toHaveCount(0);
  await expect(figure(page)).toHaveText(before);
});

inOwnWindow("what the weather changes by while the rider stands is told apart", async ({ page }) => {
  await page.addInitScript(() => {
    const later = {
      first_at_s: 28_800,
      at_s: 43_200,
      start_at_s: 28_800,
      wind_speed_m_s: 1,
      wind_from_deg: 0,
      temperature_c: 18,
    };
    const conditions = { wind_speed_m_s: 6, wind_from_deg: 0, temperature_c: 18, later };
    const course = { kind: "simple", distance_m: 90_000, grade: 0, bearing_deg: 0, out_and_back: false };
    const scenario = { fasterby: 3, course, conditions, stops: { every_m: 20_000, time_s: 1_800 } };
    const work = { layout: 1, stamp: "1-1", saved_at: "2026-01-01T00:00:00Z", question: "finish-time", with: {} };
    localStorage.setItem("fasterby:last", JSON.stringify({ ...work, scenario }));
  });
  await openQuestion(page, "finish-time");
  await expect(told(page)).toContainText("The weather changes while you stand: that makes you faster by");
});

test("they fit a narrow phone", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await giveStops(page);
  await page.setViewportSize({ width: 320, height: 720 });
  const beyond_px = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(await beyond_px()).toBeLessThanOrEqual(0);
  await page.getByRole("button", { name: "Done" }).click();
  await drawn(page);
  expect(await beyond_px()).toBeLessThanOrEqual(0);
});

test("a link with stops opens at a first visit, and a plan says what they cost", async ({ page, browser, baseURL }) => {
  await openQuestion(page, "ride-plan");
  await giveStops(page);
  await page.getByRole("button", { name: "Done" }).click();
  await expect(page.locator(".also", { hasText: "2 stops take" })).toBeVisible();
  await openQuestion(page, "power-or-drag");
  await expect(page).toHaveURL(/#power-or-drag\/1/);
  const shown = await figure(page).innerText();
  const visitor = await browser.newContext({ baseURL });
  const first = await visitor.newPage();
  await first.goto(page.url());
  await found(first);
  await expect(figure(first)).toHaveText(shown);
  await expect(first.locator(".wrongs .wrong:visible")).toHaveCount(0);
  await visitor.close();
});
