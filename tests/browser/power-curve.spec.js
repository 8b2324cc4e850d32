// @ts-check
/** The power curve: from the first two efforts to numbers that every question uses. */

import { faults } from "./support/accessibility.js";
import { test } from "./support/one-page.js";
import { complaint, expect, figure, handle, kept, notice, number, openQuestion, type } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page @param {string} text */
async function paste(page, text) {
  const box = page.getByRole("textbox", { name: "Efforts to add, one a line" });
  if (!(await box.isVisible())) await page.getByText("Paste several").click();
  await box.fill(text);
  await page.getByRole("button", { name: "Add these efforts" }).click();
}

/** Published means of eight trained riders (four-and-twenty): 4 min 417 W, 20 min 342 W; two equations give CP 323.25 W. */
const TWO = "4:00 417\n20 min 342 W";

test("a newcomer is invited, sees a typical curve, and begins with two efforts", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await expect(page.getByText("Two hard efforts draw your curve")).toBeVisible();
  await expect(page.getByText("No efforts are entered yet")).toBeVisible();
  await expect(page.getByText("Before a test.")).toBeVisible();
  await page.getByRole("textbox", { name: "First effort: mean power in watts" }).fill("417");
  await page.getByRole("textbox", { name: "Second effort: mean power in watts" }).fill("342 W");
  await page.getByRole("button", { name: "Draw my curve" }).click();
  await expect(figure(page)).toHaveText("342");
  await expect(page.getByRole("row", { name: /Critical power, CP\s+323 W/ })).toBeVisible();
  await expect(page.getByText("Two efforts fix a curve but cannot check it", { exact: false })).toBeVisible();
});

test("one effort gives a guess that says so", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await page.getByRole("textbox", { name: "Second effort: mean power in watts" }).fill("286");
  await page.getByRole("button", { name: "Draw my curve" }).click();
  await expect(page.getByText("This is a guess:", { exact: false })).toBeVisible();
  await expect(page.getByText("One effort does not tell CP from W′", { exact: false })).toBeVisible();
});

test("what is missing is said at the fields, and nothing is added", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await page.getByRole("button", { name: "Draw my curve" }).click();
  await expect(page.getByText("Give a time and a power", { exact: false })).toBeVisible();
  await expect(page.getByText("No efforts are entered yet")).toBeVisible();
});

test("efforts are pasted; a line that is not understood is named and the text stays", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(page, `${TWO}\n5:00 4.9 W/kg`);
  await expect(page.getByText("Line 3: “4.9 W/kg” is watts per kilogram.", { exact: false })).toBeVisible();
  await expect(page.getByRole("textbox", { name: "Efforts to add, one a line" })).toHaveValue(`${TWO}\n5:00 4.9 W/kg`);
  await expect(page.getByText("No efforts are entered yet")).toBeVisible();
  await paste(page, TWO);
  await expect(notice(page)).toContainText("2 efforts were added.");
  await expect(page.getByRole("listitem").getByRole("spinbutton")).toHaveCount(4);
});

test("an effort is edited, refused by its range, removed and brought back", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(page, `${TWO}\n12:00 355`);
  const before = await figure(page).innerText();
  await type(page, "Effort 3: mean power", "340");
  await expect(figure(page)).not.toHaveText(before);
  await number(page, "Effort 3: mean power").fill("9000");
  await expect(page.getByRole("main").getByText("10 to 3000 W", { exact: false })).toBeVisible();
  await number(page, "Effort 3: mean power").press("Escape");
  await page.getByRole("button", { name: "Remove effort 3" }).click();
  await expect(number(page, "Effort 3: mean power")).toHaveCount(0);
  await notice(page).getByRole("button", { name: "Undo" }).click();
  await expect(number(page, "Effort 3: mean power")).toHaveCount(1);
});

test("one click puts CP and W′ with their covariance into every question", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(page, `3:00 372\n5:00 343\n12:00 301\n20:00 286`);
  await page.getByRole("button", { name: "Use these in every question" }).click();
  await expect(page.getByRole("button", { name: "These are the numbers in use" })).toBeDisabled();
  await expect.poll(async () => (await kept(page))?.scenario.power.cp_w.source).toBe("measured");
  const { power, efforts } = (await kept(page)).scenario;
  expect(efforts).toHaveLength(4);
  expect(power.cp_w_prime_correlation).toBeLessThan(-0.5);
  expect(power.w_prime_j.sd).toBeGreaterThan(0);
  await openQuestion(page, "finish-time");
  await expect(page.getByRole("region", { name: "Answer" })).toContainText("W");
});

test("the time asked about is moved on the chart", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(page, TWO);
  const before = await figure(page).innerText();
  await handle(page, "The time asked about").press("Shift+ArrowRight");
  await expect(number(page, "How long to hold it")).toHaveValue("25:00");
  await expect(figure(page)).not.toHaveText(before);
});

test("a model is chosen by hand, and the page says what the efforts speak for", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(page, `3:00 372\n5:00 343\n12:00 301\n20:00 286`);
  await page.getByRole("heading", { name: "Which model?" }).click();
  await page.getByRole("combobox", { name: "Read the curve by" }).selectOption("three-parameter");
  await expect(page.getByText("You chose this model", { exact: false })).toBeVisible();
});

test("efforts in two positions say what a position costs", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(
    page,
    `3:00 372\n5:00 343\n12:00 301\n20:00 286\n4:00 335; the low position\n20:00 270; the low position`,
  );
  await expect(page.getByRole("combobox", { name: "Position of the efforts" })).toBeVisible();
  await expect(page.locator("[data-fold=positions] .gist")).toContainText("the low position");
  await expect(complaint(page)).toHaveCount(0);
});

test("with efforts, every fold open and a line that is not understood, the page has no fault", async ({ page }) => {
  await openQuestion(page, "power-curve");
  await paste(
    page,
    `0:30 700\n3:00 372\n5:00 343\n12:00 260\n20:00 286\n4:00 335; the low position\n20:00 270; the low position`,
  );
  await paste(page, "20 342");
  for (const fold of await page.locator(".folds summary").all()) await fold.click();
  for (const width of [1440, 320]) {
    await page.setViewportSize({ width, height: 900 });
    // Tables that scroll can be reached a frame after they are there.
    await expect.poll(() => faults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

test("how many tests show a gain is told with how often they would be wrong either way", async ({ page }) => {
  await openQuestion(page, "power-curve");
  const fold = page.locator("details", { hasText: "What training gives" }).first();
  await fold.locator("summary").click();
  // A test repeats to 2 %: the noncentral t distribution, at a level of 0.05 and a power of 0.8.
  await expect(fold).toContainText(
    "To show a gain of 3 % takes 9 tests before and as many after; for 6.2 % it takes 3 tests",
  );
  await expect(fold).toContainText(
    "If the gain is real, the tests then show it 4 times in 5. If it is not, they seem to 1 time in 20",
  );
});
