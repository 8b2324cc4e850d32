// @ts-check
/** Events and courses that go by time: given in "Your numbers" or in the sentence, answered in minutes and in distance, and kept. */

import { openWithCourse } from "./support/courses.js";
import { test } from "./support/one-page.js";
import { answerText, expect, kept, notice, open, openQuestion, type } from "./support/page.js";

const HALF_A_DAY_S = 43_200;

/** @param {import("@playwright/test").Page} page */
async function openEvents(page) {
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  await page.locator(".sheet-group > summary", { hasText: "Events" }).click();
  return page.getByRole("complementary", { name: "Your numbers" });
}

/** @param {import("@playwright/test").Page} page */
const howFar = (page) => page.getByRole("main").getByRole("combobox", { name: "How far" });

test("12 hours is added to the events, typed anew, and told in time and distance", async ({ page }) => {
  await openQuestion(page, "which-position");
  const sheet = await openEvents(page);
  await sheet.getByRole("button", { name: "Add 12 hours" }).click();
  await expect
    .poll(async () => (await kept(page))?.scenario.events.at(-1))
    .toEqual({
      name: "",
      duration_s: HALF_A_DAY_S,
    });
  const row = page.getByRole("table", { name: "Finish times at your events" }).getByRole("row").last();
  await expect(row).toContainText(/12 hours, about \d+/);
  await expect(row).toContainText(/(faster|slower) by .*(further|less far)/);

  const time = sheet.getByLabel("Time of event 5");
  await expect(time).toHaveValue("12:00:00");
  await time.fill("6 h");
  await time.press("Tab");
  await expect(row).toContainText(/6 hours, about \d+/);

  // By a distance again, and back, with the keyboard's own control.
  await sheet.getByLabel("What event 5 goes by").selectOption("a distance");
  await expect(row).not.toContainText("hours");
  await sheet.getByLabel("What event 5 goes by").selectOption("a fixed time");
  await expect(row).toContainText(/12 hours, about \d+/);
});

test("next gain says how much further the best set gets in a day", async ({ page }) => {
  await openQuestion(page, "next-gain");
  const sheet = await openEvents(page);
  await sheet.getByRole("button", { name: "Add 24 hours" }).click();
  await expect(page.getByText(/24 hours: you cover about \d+.*faster by .*further/)).toBeVisible({ timeout: 60_000 });
});

test("a fixed time in the sentence is ridden by every question, and a link keeps it", async ({ page }) => {
  await open(page);
  await howFar(page).selectOption("In 12 hours");
  await expect(page.getByText(/12 hours \(about \d+.*\).*further/)).toBeVisible();
  await expect.poll(async () => (await kept(page))?.scenario.course.duration_s).toBe(HALF_A_DAY_S);
  expect((await kept(page))?.scenario.course.distance_m).toBeUndefined();
  const hash = new URL(page.url()).hash;

  await openQuestion(page, "finish-time");
  await expect(howFar(page)).toHaveValue(`time ${HALF_A_DAY_S}`);
  await expect.poll(() => answerText(page)).toContain("12 hours");

  await open(page, hash);
  await expect(howFar(page)).toHaveValue(`time ${HALF_A_DAY_S}`);
  await howFar(page).selectOption("Over 25 miles");
  await expect(page.getByText(/about \d+.*further/)).toBeHidden();
});

test("a course that goes by time goes by it still when it is drawn, typed or given in another way", async ({
  page,
}) => {
  const course = { kind: "simple", duration_s: HALF_A_DAY_S, grade: 0, bearing_deg: 0, heading: "ignore" };
  const sheet = await openWithCourse(page, course);
  /** @param {string} kind */
  const staysSo = (kind) =>
    expect
      .poll(async () => (await kept(page))?.scenario.course)
      .toMatchObject({ kind, duration_s: HALF_A_DAY_S, heading: "ignore" });
  await sheet.getByRole("button", { name: "Rolling" }).click();
  await staysSo("profile");
  await sheet.getByLabel("Points of the course").fill("0 10\n10 20\n20 10");
  await sheet.getByRole("button", { name: "Use these points" }).click();
  await expect.poll(async () => (await kept(page))?.scenario.course.points?.length).toBe(3);
  await staysSo("profile");
  await sheet.getByLabel("The course is given as").selectOption("one slope and direction");
  await staysSo("simple");
  expect((await kept(page))?.scenario.course.distance_m).toBeUndefined();
  await sheet.getByLabel("The course is given as").selectOption("points along the road");
  await staysSo("profile");
});

test("a course that goes by time is drawn as long as its own rider gets", async ({ page }) => {
  const sheet = await openWithCourse(page, { kind: "simple", duration_s: HALF_A_DAY_S, grade: 0, bearing_deg: 0 });
  await type(page, "Drag area, CdA", "0.2");
  await expect.poll(async () => (await kept(page))?.scenario.positions?.[0]?.cda_m2?.value).toBe(0.2);
  await sheet.getByRole("button", { name: "Flat", exact: true }).click();
  await expect(notice(page)).toContainText(/The course is now [\d.]+\smiles long/);
  const [, far] = /now ([\d.]+)\smiles/.exec((await notice(page).textContent()) ?? "") ?? [];
  await expect(page.getByText(new RegExp(`you cover ${far}\\smiles, plus`))).toBeAttached();
});
