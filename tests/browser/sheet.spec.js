// @ts-check
/** "Your numbers": every input with its value, its ± and how it is known; several positions; a live page behind. */

import { test } from "./support/one-page.js";
import { answerText, expect, kept, notice, number, open, openQuestion, tool } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page */
async function openSheet(page) {
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  return page.getByRole("complementary", { name: "Your numbers" });
}

/** @param {Page} page @param {string} name */
function group(page, name) {
  return page.locator(".sheet-group > summary", { hasText: name });
}

test("it opens with the focus in it, and Escape gives the focus back", async ({ page }) => {
  await open(page);
  const sheet = await openSheet(page);
  await expect(sheet.getByRole("heading", { name: "Your numbers" })).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(sheet).toBeHidden();
  await expect(page.locator(".known").getByRole("button", { name: "Your numbers" })).toBeFocused();
});

test("Escape takes back what is typed before it closes the sheet", async ({ page }) => {
  await open(page);
  const sheet = await openSheet(page);
  const mass = sheet.getByRole("spinbutton", { name: "Rider, bicycle and kit together", exact: true });
  const before = await mass.inputValue();
  await mass.fill("95");
  await mass.press("Escape");
  await expect(mass).toHaveValue(before);
  await expect(sheet).toBeVisible();
  await mass.press("Escape");
  await expect(sheet).toBeHidden();
});

test("a value, its ± and how it is known change the page behind, and undo takes them back", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await answerText(page);
  const sheet = await openSheet(page);
  const mass = sheet.getByRole("spinbutton", { name: "Rider, bicycle and kit together", exact: true });
  const known = sheet.getByRole("combobox", { name: "Rider, bicycle and kit together: how it is known" });
  const spread = sheet.getByRole("textbox", {
    name: "Rider, bicycle and kit together: plus or minus, one standard deviation",
  });
  await expect(known).toHaveValue("typical");

  await mass.fill("95");
  await mass.press("Tab");
  await expect.poll(() => answerText(page)).not.toBe(before);
  await expect(known).toHaveValue("estimated");
  await spread.fill("0.5");
  await known.selectOption("measured");

  await expect
    .poll(async () => (await kept(page))?.scenario.rider.total_mass_kg)
    .toEqual({ value: 95, sd: 0.5, source: "measured" });
  await expect(page.locator(".known")).toContainText("1 measured");
  for (let step = 0; step < 3; step += 1) await tool(page, "Undo").click();
  await expect.poll(() => answerText(page)).toBe(before);
  await expect(known).toHaveValue("typical");
});

test("a ± that is no number is named and changes nothing", async ({ page }) => {
  await open(page);
  const sheet = await openSheet(page);
  const spread = sheet.getByRole("textbox", {
    name: "Rider, bicycle and kit together: plus or minus, one standard deviation",
  });
  for (const wrong of ["much", "-1"]) {
    await spread.fill(wrong);
    await expect(sheet.getByText("± needs a number of zero or more.")).toBeVisible();
    await expect(spread).toHaveAttribute("aria-invalid", "true");
  }
  await spread.press("Tab");
  await expect(tool(page, "Undo")).toBeDisabled();
});

test("a position is added, named, ridden and removed, and the answer is for the ridden one", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await answerText(page);
  const sheet = await openSheet(page);
  await group(page, "Positions").click();
  const cards = sheet.locator(".position");
  const count = await cards.count();
  await cards.first().getByRole("button", { name: "Duplicate" }).click();
  await expect(cards).toHaveCount(count + 1);

  const added = cards.nth(count);
  await added.getByLabel("Name of the position").fill("tucked");
  await added.getByRole("spinbutton", { name: "Drag area, CdA", exact: true }).fill("0.2");
  expect(await answerText(page)).toBe(before);
  await added.getByLabel("ride this one").check();
  await expect.poll(() => answerText(page)).not.toBe(before);
  await expect(number(page, "Drag area, CdA")).toHaveValue("0.200");

  await added.getByRole("button", { name: "Remove", exact: true }).click();
  await expect(cards).toHaveCount(count);
  await expect.poll(() => answerText(page)).toBe(before);
});

test("a position may fade, lapse, and have a drag for each yaw", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await answerText(page);
  const sheet = await openSheet(page);
  await group(page, "Positions").click();
  const card = sheet.locator(".position").first();
  await card.getByLabel(/^It fades/).check();
  await expect.poll(() => answerText(page)).not.toBe(before);
  const faded = await answerText(page);
  await card.getByLabel(/^It lapses/).check();
  await expect.poll(() => answerText(page)).not.toBe(faded);
  await card.getByRole("checkbox", { name: "Drag is known at several yaws" }).check();
  await card.getByRole("textbox", { name: "Ratio to zero yaw, row 2" }).fill("0.9");
  await expect
    .poll(async () => (await kept(page))?.scenario.positions[0].yaw_table)
    .toEqual([
      { yaw_deg: 0, ratio: 1 },
      { yaw_deg: 10, ratio: 0.9 },
    ]);
  await card.getByLabel(/^It fades/).uncheck();
  await card.getByLabel(/^It lapses/).uncheck();
  await card.getByRole("checkbox", { name: "Drag is known at several yaws" }).uncheck();
  await expect.poll(() => answerText(page)).toBe(before);
});

test("a course is pasted as points; a line that cannot be read is named and the course stays", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await answerText(page);
  const sheet = await openSheet(page);
  await group(page, "Course").click();
  await sheet.getByLabel("The course is given as").selectOption("profile");
  const points = sheet.getByRole("textbox", { name: "Points of the course" });
  const use = sheet.getByRole("button", { name: "Use these points" });
  for (const wrong of ["0 10\n1 high", "0 10", "0 10\n0 20", "0 10\n1 99999"]) {
    await points.fill(wrong);
    await use.click();
    await expect(sheet.getByRole("alert").filter({ visible: true })).toContainText("The course is as it was");
  }
  await points.fill("0;10;90\n5,5;60;180;25\n10;10");
  await use.click();
  await expect(notice(page)).toContainText("The course now has 3 points");
  await expect.poll(() => answerText(page)).not.toBe(before);
});

test("what no road or no air can be is named as it is typed: a slope by its point, a share in percent", async ({
  page,
}) => {
  await openQuestion(page, "finish-time");
  const sheet = await openSheet(page);
  await group(page, "Course").click();
  await sheet.getByLabel("The course is given as").selectOption("profile");
  await sheet.getByRole("textbox", { name: "Points of the course" }).fill("0 10\n1 900");
  await sheet.getByRole("button", { name: "Use these points" }).click();
  const wrong = sheet.getByRole("alert").filter({ visible: true });
  await expect(wrong).toContainText("The road to point 2 rises by 55");
  await expect(wrong).not.toContainText("runs from");

  await group(page, "Conditions").click();
  const humidity = sheet.getByRole("spinbutton", { name: "Relative humidity", exact: true });
  await humidity.fill("150");
  await humidity.press("Tab");
  await expect(sheet.getByText(/Relative humidity runs from 0 to 100\s*%/)).toBeVisible();
});

test("a question leads to what would make its answer surer: the test that measures it, or its field", async ({
  page,
}) => {
  await openQuestion(page, "finish-time");
  const link = page.locator(".surer").getByRole("button");
  await expect(link).toHaveText("Measure it here");
  await link.click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("What is my drag area");
  await page.goBack();
  // Once the drag area is sure, another input carries most of the ±.
  await page.locator(".known > button").click();
  await page.locator("#sheet summary").filter({ hasText: "Positions" }).first().click();
  await page.getByRole("textbox", { name: "Drag area, CdA: plus or minus, one standard deviation" }).first().fill("0");
  await page.keyboard.press("Escape");
  await expect(link).toHaveText("Give your own");
  await link.click();
  const focused = page.getByRole("complementary", { name: "Your numbers" }).locator("input:focus");
  await expect(focused).toBeVisible();
  await expect(focused).toHaveRole("spinbutton");
});
