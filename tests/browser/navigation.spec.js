// @ts-check
/** Back and Forward move between questions; the numbers stay what they are. */

import { test } from "./support/one-page.js";
import { expect, number, openQuestion, type } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const CDA = "Drag area, CdA";

/** @param {Page} page @param {string} title */
async function expectQuestion(page, title) {
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
}

/** @param {Page} page @param {string} title */
async function go(page, title) {
  await page
    .getByRole("navigation", { name: "Questions" })
    .getByRole("listitem")
    .filter({ hasText: title })
    .getByRole("link")
    .click();
  await expectQuestion(page, title);
}

/** Several questions show the same drag area; others have numbers of their own. @param {import("./support/questions.js").Asked} asked */
const showsDragArea = ({ number: given }) => given.range.endsWith("m²");

test("Back and Forward go through the questions as they were opened, and numbers changed in between stay", async ({
  page,
}) => {
  await openQuestion(page, questions[0].id);
  for (const { title } of questions.slice(1)) await go(page, title);
  await type(page, questions[questions.length - 1].number.name, "0.277");

  for (const asked of questions.slice(0, -1).reverse()) {
    await page.goBack();
    await expectQuestion(page, asked.title);
    if (showsDragArea(asked)) await expect(number(page, asked.number.name)).toHaveValue("0.277");
  }
  await type(page, questions[0].number.name, "0.266");
  for (const asked of questions.slice(1)) {
    await page.goForward();
    await expectQuestion(page, asked.title);
    if (showsDragArea(asked)) await expect(number(page, asked.number.name)).toHaveValue("0.266");
  }
});

test("typing adds nothing to the browser's history", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  const before = await page.evaluate(() => history.length);
  await type(page, CDA, "0.277");
  await expect(page).toHaveURL(/#speed-for-watts\/1z\./);
  expect(await page.evaluate(() => history.length)).toBe(before);
});

test("undo stays with the question that is open", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  await type(page, CDA, "0.277");
  await go(page, questions[1].title);
  await page.keyboard.press("Control+z");
  await expect(number(page, CDA)).not.toHaveValue("0.277");
  await expectQuestion(page, questions[1].title);
});

test("a question opened by its link is read out by its heading", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  await go(page, questions[1].title);
  await expect(page.getByRole("heading", { level: 1 })).toBeFocused();
  await expect(page).toHaveTitle(new RegExp(questions[1].title.replace("?", "\\?")));
  await expect(
    page.getByRole("navigation", { name: "Questions" }).locator("[aria-current=page]"),
  ).toHaveAccessibleDescription(questions[1].title);
});
