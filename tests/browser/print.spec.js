// @ts-check
/** On paper: the sentence with its numbers, the answer and the chart, dark on white, on one page or two. */

import { expect, number, openQuestion, test } from "./support/page.js";
import { questions } from "./support/questions.js";

const MOST_PAGES = 2;
/** Of 255, for each of red, green and blue. */
const DARK = 110;

test("every question is printed whole", async ({ page }) => {
  for (const { id, title, number: given } of questions) {
    await test.step(id, async () => {
      await page.emulateMedia({ media: "screen" });
      await openQuestion(page, id);
      await page.emulateMedia({ media: "print" });

      await expect(page.getByRole("heading", { name: title })).toBeVisible();
      await expect(number(page, given.name)).toBeVisible();
      await expect(page.locator(".verdict .figure")).toBeVisible();
      await expect(page.locator("svg.chart").first()).toBeVisible();
      expect(await page.locator("svg.chart").first().locator("path").count()).toBeGreaterThan(0);
      for (const part of [".tools", ".questions", ".bar"]) await expect(page.locator(part).first()).toBeHidden();

      const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
      const pages = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
      expect(pages).toBeGreaterThanOrEqual(1);
      expect(pages).toBeLessThanOrEqual(MOST_PAGES);
    });
  }
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
