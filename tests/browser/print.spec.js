// @ts-check
/** On paper: the sentence with its numbers, the answer and the chart, dark on white, on one page. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { expect, test as inOwnWindow, number, openQuestion } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */
/** @import { Asked } from "./support/questions.js" */

/** Of 255, for each of red, green and blue. */
const DARK = 110;

/** How many pages it takes. @param {Page} page */
async function pagesOf(page) {
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

inOwnWindow("every question is printed whole", async ({ page }) => {
  const openOnScreen = async (/** @type {Page} */ page, /** @type {string} */ id) => {
    await page.emulateMedia({ media: "screen" });
    await openQuestion(page, id);
  };
  const check = async (/** @type {Asked} */ { title, number: given }) => {
    await page.emulateMedia({ media: "print" });

    await expect(page.getByRole("heading", { name: title })).toBeVisible();
    await expect(number(page, given.name)).toBeVisible();
    await expect(page.locator(".verdict .figure")).toBeVisible();
    await expect(page.locator("svg.chart").first()).toBeVisible();
    expect(await page.locator("svg.chart").first().locator("path").count()).toBeGreaterThan(0);
    for (const part of [".tools", ".questions", ".bar"]) await expect(page.locator(part).first()).toBeHidden();

    expect(await pagesOf(page)).toBe(1);
  };
  await everyQuestion(page, questions, check, openOnScreen);
});

for (const locale of ["de-DE", "fr-FR"]) {
  inOwnWindow.describe(`in ${locale}`, () => {
    inOwnWindow.use({ locale });

    inOwnWindow("a question takes no more than one page", async ({ page }) => {
      await everyQuestion(page, questions, async () => expect(await pagesOf(page)).toBe(1));
    });
  });
}

test("next gain's paper names every change with its size, its chance and what it takes, and how often each event is ridden", async ({
  page,
}) => {
  await openQuestion(page, "next-gain");
  const lists = page.getByRole("region", { name: "The changes" });
  await expect(lists).toBeHidden();

  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));

  await expect(lists.getByRole("listitem")).toHaveCount(12);
  await expect(lists).toContainText("Close-fitting clothing: Drag area, by a share −3.9 % ± 2 %; 70 % · 150");
  await expect(lists).toContainText("25 miles × 1");
});

test("what is read in the dark is printed dark on white", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "dark" });
  await openQuestion(page, questions[0].id);
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const ink = await page.locator(".sentence").evaluate(
    (line) =>
      getComputedStyle(line)
        .color.match(/[\d.]+/g)
        ?.slice(0, 3)
        .map(Number) ?? [],
  );
  expect(Math.max(...ink)).toBeLessThan(DARK);
});
