// @ts-check
/** The course that the page has, and the sheet open where it is given. */

import { expect, kept, openQuestion } from "./page.js";

/** The course as the page keeps it. @param {import("@playwright/test").Page} page */
export const course = async (page) => (await kept(page))?.scenario.course;

/** Opens the sheet where the course is given. @param {import("@playwright/test").Page} page */
export async function openCourseGroup(page) {
  const sheet = page.locator(".sheet");
  await page.getByRole("button", { name: "Your numbers" }).first().click();
  await sheet.locator("summary", { hasText: "Course" }).click();
  return sheet;
}

/** Opens the sheet of a page that has this course. @param {import("@playwright/test").Page} page @param {object} given */
export async function openWithCourse(page, given) {
  // A file of the site without scripts, where what the page will find is put down.
  await page.goto("./icon.svg");
  await page.evaluate((course) => {
    const work = { layout: 1, stamp: "1-1", saved_at: "2026-01-01T00:00:00Z", question: "finish-time", with: {} };
    localStorage.setItem("fasterby:last", JSON.stringify({ ...work, scenario: { fasterby: 3, course } }));
  }, given);
  await openQuestion(page, "finish-time");
  const sheet = await openCourseGroup(page);
  await expect.poll(async () => (await course(page))?.kind).toBe(/** @type {any} */ (given).kind);
  return sheet;
}
