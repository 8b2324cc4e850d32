// @ts-check
/** What to work on next: the budget, the best set, and the list of changes. */

import { test } from "./support/one-page.js";
import { answerText, expect, figure, openQuestion, tool, type } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

const ID = "next-gain";
const HOURS = "Hours to spend every week, beyond what you do now";

/** Opens a fold. @param {Page} page @param {string} id */
async function unfold(page, id) {
  await page.locator(`[data-fold="${id}"] > summary`).click();
  return page.locator(`[data-fold="${id}"]`);
}

/** A change of the list, opened. @param {Page} page @param {string} name */
async function change(page, name) {
  const card = page
    .locator(".changes details")
    .filter({ has: page.locator("summary", { hasText: name }) })
    .first();
  await card.locator("summary").click();
  return card;
}

test("without money and hours nothing of the usual list is taken, and the page says so", async ({ page }) => {
  await openQuestion(page, ID);
  await type(page, "Money to spend", "0");
  await type(page, HOURS, "0");
  await expect(page.locator(".claim")).toHaveText("Nothing on the list helps within this budget.");
  await expect(figure(page)).toHaveText("0:00");
});

test("a currency is a label that the reader types", async ({ page }) => {
  await openQuestion(page, ID);
  await page.getByRole("textbox", { name: "Your currency" }).fill("€");
  await expect(page.locator(".also").filter({ hasText: "It takes" })).toContainText("€");
  await expect(page.getByRole("img", { name: "What each change saves" })).toBeVisible();
});

test("a chance is edited in the list, what is saved on average follows, and undo takes it back", async ({ page }) => {
  await openQuestion(page, ID);
  const before = await answerText(page);
  await unfold(page, "list");
  const card = await change(page, "Close-fitting clothing");
  const chance = card.getByRole("spinbutton", { name: "Chance that it works" });
  await chance.fill("5");
  await chance.press("Tab");
  await expect.poll(() => answerText(page)).not.toBe(before);
  await tool(page, "Undo").click();
  await expect.poll(() => answerText(page)).toBe(before);
});

test("what is better measured before it is chosen is named and leads to measuring, until its chance is sure", async ({
  page,
}) => {
  await openQuestion(page, ID);
  const measure = page.locator(".takes").filter({ hasText: /^Measure / });
  await expect(measure).toHaveText(
    /^Measure Close-fitting clothing before you choose it \(Measure drag\)\. Knowing what it saves you adds \d+:\d\d on average; untested, it adds \d+:\d\d\.$/,
  );
  await measure.getByRole("button", { name: "Measure drag" }).click();
  await expect(page.locator("#host")).toHaveAttribute("data-question", "drag-test");

  await page.goBack();
  await unfold(page, "list");
  const card = await change(page, "Close-fitting clothing");
  const chance = card.getByRole("spinbutton", { name: "Chance that it works" });
  await chance.fill("100");
  await chance.press("Tab");
  await expect(measure).not.toContainText("Close-fitting clothing");
});

test("changes are added, named, told what they change, and taken off", async ({ page }) => {
  await openQuestion(page, ID);
  const list = await unfold(page, "list");
  const cards = page.locator(".changes details");
  await expect(cards).not.toHaveCount(0);
  const usual = await cards.count();
  await list.getByRole("button", { name: "Add a change" }).click();
  await expect(cards).toHaveCount(usual + 1);
  const card = cards.last();
  await expect(card).toContainText(`change ${usual + 1}`);
  // It is open, and asks for its name.
  await expect(card.getByRole("textbox", { name: "Name" })).toBeFocused();
  await card.getByRole("textbox", { name: "Name" }).fill("Lighter wheels");
  await card.getByRole("combobox", { name: "What it changes" }).selectOption({ label: "Mass" });
  await expect(card.locator("summary")).toContainText("Lighter wheels");
  // The number for a mass takes the place of the one before.
  await expect(card).toContainText("kg");
  const size = card.getByRole("spinbutton", { name: "By how much" });
  await size.fill("-2 kg");
  await size.press("Tab");
  await expect(size).toHaveValue("−2");
  await card.getByRole("button", { name: "Take off the list" }).click();
  await expect(cards).toHaveCount(usual);
});

test("new riders find a list of their own", async ({ page }) => {
  await openQuestion(page, ID);
  const list = await unfold(page, "list");
  await list.getByRole("button", { name: "The usual list for new riders" }).click();
  await expect(page.locator(".changes summary").filter({ hasText: "Eight weeks of regular training" })).toHaveCount(1);
});

test("an event that is not ridden does not count", async ({ page }) => {
  await openQuestion(page, ID);
  const before = await answerText(page);
  const events = await unfold(page, "events");
  const times = events.getByRole("spinbutton", { name: "How often 100 miles is ridden" });
  await times.fill("0");
  await times.press("Tab");
  await expect.poll(() => answerText(page)).not.toBe(before);
});

test("a block that takes more weeks than there are is left out, and the page says why", async ({ page }) => {
  await openQuestion(page, ID);
  await type(page, "For how many weeks", "1");
  const why = "takes more weeks than you have";
  const left = await unfold(page, "left-out");
  await expect(left.getByRole("listitem").filter({ hasText: "Four weeks of intervals" })).toContainText(why);
  const table = await unfold(page, "table");
  await expect(table.getByRole("row").filter({ hasText: "Four weeks of intervals" })).toContainText(why);
});

test("a change that comes only after another follows it under a new name, and is freed when that one goes", async ({
  page,
}) => {
  await openQuestion(page, ID);
  await unfold(page, "list");
  const second = await change(page, "A second step lower");
  const after = second.getByRole("combobox", { name: "Comes only after" });
  await expect(after).toHaveValue("front-lower");
  expect(await after.locator("option").allTextContents()).not.toContain("A second step lower");
  const first = page.locator(".changes details").first();
  await first.locator("summary").click();
  await first.getByRole("textbox", { name: "Name" }).fill("Spacers out");
  await expect(after).toHaveValue("Spacers out");
  await first.getByRole("button", { name: "Take off the list" }).click();
  await expect(
    page
      .locator(".changes details")
      .filter({ has: page.locator("summary", { hasText: "A second step lower" }) })
      .getByRole("combobox", { name: "Comes only after" }),
  ).toHaveValue("");
});
