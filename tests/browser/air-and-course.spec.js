// @ts-check
/** A target time and its chance; the course's altitude, turn and bearings; what altitude takes from power. */

import { test } from "./support/one-page.js";
import { complaint, expect, figure, kept, number, openQuestion, type } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page @param {string} name a group of the sheet */
async function openGroup(page, name) {
  const sheet = page.getByRole("complementary", { name: "Your numbers" });
  if (await sheet.isHidden()) await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  await page.locator(".sheet-group > summary", { hasText: name }).click();
  return sheet;
}

test("a target time has a chance, which a slower target raises, and which a link keeps", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const answer = page.getByRole("region", { name: "Answer" });
  await expect(answer.locator(".chance")).toBeHidden();
  await answer.getByRole("checkbox", { name: "I have a target time" }).check();
  await expect(answer.locator(".chance")).toHaveText(/about [45] in 10/);
  await type(page, "Target time", "2:00:00");
  await expect(answer.locator(".chance")).toHaveText("over 99 in 100");
  await expect(page).toHaveURL(/#finish-time\/1/);
  await page.reload();
  await expect(answer.locator(".chance")).toHaveText("over 99 in 100");
  await answer.getByRole("checkbox", { name: "I have a target time" }).uncheck();
  await expect(answer.locator(".chance")).toBeHidden();
});

test("a turn with a radius costs seconds, and the note that it is not counted goes", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const note = page.getByText("Turning round is not counted.");
  await expect(note).toBeVisible();
  const before = await figure(page).innerText();
  const sheet = await openGroup(page, "Course");
  await sheet.getByRole("checkbox", { name: /count the turn/ }).check();
  await expect(sheet.getByRole("spinbutton", { name: "Radius of the turn", exact: true })).toBeVisible();
  await expect(note).toBeHidden();
  await expect.poll(() => figure(page).innerText()).not.toBe(before);
});

test("points without bearings leave the wind out and say so; the altitude is theirs", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const sheet = await openGroup(page, "Course");
  await sheet.getByRole("combobox", { name: "The course is given as" }).selectOption("profile");
  await sheet.getByRole("textbox", { name: "Points of the course" }).fill("0 1600\n10 1600 - 100\n20 1600");
  await sheet.getByRole("button", { name: "Use these points" }).click();
  await expect
    .poll(async () => (await kept(page))?.scenario.course.points)
    .toEqual([
      { distance_m: 0, elevation_m: expect.any(Number) },
      { distance_m: expect.any(Number), elevation_m: expect.any(Number), radius_m: expect.any(Number) },
      { distance_m: expect.any(Number), elevation_m: expect.any(Number) },
    ]);
  await expect(
    page.getByText("The wind is left out, because the course does not say which way it leads."),
  ).toBeHidden();
  await type(page, "Wind speed, as forecast", "10");
  await expect(
    page.getByText("The wind is left out, because the course does not say which way it leads."),
  ).toBeVisible();
});

test("power is lowered for altitude only where that is switched on", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const sheet = await openGroup(page, "Conditions");
  await sheet.getByRole("combobox", { name: "The altitude is" }).selectOption("given");
  await sheet.getByRole("spinbutton", { name: "Altitude of the course", exact: true }).fill("2000 m");
  await expect(page.getByText("The thin air at 2000 m makes you faster here")).toBeVisible();
  const before = await figure(page).innerText();
  await openGroup(page, "Power");
  await sheet.getByRole("checkbox", { name: /Lower it for altitude/ }).check();
  await expect(page.getByText("your power curve is lowered by")).toBeVisible();
  await expect.poll(() => figure(page).innerText()).not.toBe(before);
});

test("a range whose end is small does not read as nought", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await page.getByRole("main").getByRole("combobox", { name: "How far" }).selectOption("distance");
  await number(page, "Distance").fill("0");
  await expect(complaint(page).first()).toContainText("runs from 0.062 to");
});

test("a surveyed course opens where its points are entered, and the ride then leads with its road", async ({
  page,
}) => {
  await openQuestion(page, "finish-time");
  const charts = page.getByRole("region", { name: "Charts" }).locator("figure");
  await expect(charts.first()).not.toContainText("height");
  await page.getByRole("combobox", { name: "Kind of course" }).selectOption({ label: "your surveyed course" });
  const points = page.getByRole("textbox", { name: "Points of the course" });
  await expect(points).toBeFocused();
  await points.fill("0 100\n5 160\n10 90");
  await page.getByRole("button", { name: "Use these points" }).click();
  await page.locator(".sheet").getByRole("button", { name: "Done" }).click();
  await expect(charts.first()).toContainText("The road lies between 90 m and 160 m.");
  await expect(charts.nth(1)).toContainText("on average");
});

test("where the wind comes from may be given by its letters", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await type(page, "Wind speed, as forecast", "10");
  await type(page, "Wind from", "sw");
  await expect(number(page, "Wind from")).toHaveValue("225");
});
