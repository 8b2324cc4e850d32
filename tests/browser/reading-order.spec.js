// @ts-check
/** What a screen reader meets, from the accessibility tree: every question in one sensible order, every chart told in a sentence and held in a table. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { answerText, expect, openQuestion } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

/** The page's landmarks, in order. */
const LANDMARKS = [/^- banner/, /^- navigation "Questions"/, /^- main/];
/** What a question is made of, in the order in which it is read. @type {[what: string, line: RegExp][]} */
const ORDER = [
  ["the question", /heading "[^"]+" \[level=1\]/],
  ["its first number or choice", /(spinbutton|combobox) "/],
  ["how well its numbers are known", /button "Your numbers"/],
  ["the answer", /region "Answer"/],
  ["the answer as one sentence", /status: .*\d.*\./],
  ["the charts", /region "Charts"/],
  ["a chart", /- '?figure "/],
  ["a point of it that can be moved", /slider "/],
  ["what it means", /region "What it means"/],
  ["how it is worked out", /heading "How it is worked out" \[level=2\]/],
  ["the table", /heading "As a table" \[level=2\]/],
  ["taking it elsewhere", /heading "Take it with you" \[level=2\]/],
];
/** One sentence or two, and no paragraph. */
const MOST_CHARACTERS = 400;
/** More than any question has. */
const MOST_STOPS = 120;

/** A line for each thing that is read. @param {Page} page @param {string} [part] */
async function lines(page, part = "body") {
  return (await page.locator(part).ariaSnapshot()).split("\n").filter((line) => !/^\s*- \/url/.test(line));
}

/** The headings of the page with what they are part of. @param {Page} page */
function headingLevels(page) {
  return page
    .locator("h1, h2, h3, h4")
    .evaluateAll((headings) =>
      headings.filter((heading) => heading.checkVisibility()).map((heading) => Number(heading.localName[1])),
    );
}

test("what a screen reader meets in every question", async ({ page }) => {
  await everyQuestion(page, questions, async ({ title }) => {
    await test.step("is read from the question to its sentence, its answer, its charts, what it means and its folds", async () => {
      const all = await lines(page);
      const landmarks = LANDMARKS.map((landmark) => all.findIndex((line) => landmark.test(line)));
      expect(landmarks.every((line) => line >= 0)).toBe(true);
      expect(landmarks).toEqual([...landmarks].sort((a, b) => a - b));

      const main = await lines(page, "main");
      const found = ORDER.map(([what, pattern]) => ({ what, line: main.findIndex((line) => pattern.test(line)) }));
      expect(found.filter(({ line }) => line < 0)).toEqual([]);
      expect(found).toEqual([...found].sort((a, b) => a.line - b.line));
      expect(main.find((line) => line.includes("[level=1]"))).toContain(title);
    });

    await test.step("every chart has a name, and says in a sentence what it shows", async () => {
      const charts = page
        .getByRole("region", { name: "Charts" })
        .locator("figure > svg:visible, figure .chart > svg:visible");
      await expect(charts.first()).toBeVisible();
      for (const chart of await charts.all()) {
        await expect(chart).toHaveAccessibleName(/\w/);
        const told = (await chart.locator("desc").first().textContent()) ?? "";
        expect(told).toMatch(/^\S.*\d.*\.$/s);
        expect(told.length).toBeLessThanOrEqual(MOST_CHARACTERS);
        await expect(chart).toHaveAccessibleDescription(told);
      }
    });

    await test.step("every number, choice and point that can be moved has a name, and says its value with its unit", async () => {
      const main = await lines(page, "main");
      expect(
        main.filter((line) => /- (spinbutton|combobox|slider|button|checkbox|textbox)(:|$| \[)/.test(line)),
      ).toEqual([]);
      for (const handle of await page.getByRole("main").getByRole("slider").all()) {
        if (await handle.evaluate((element) => element.checkVisibility() && element.classList.contains("handle")))
          await expect(handle).toHaveAttribute("aria-valuetext", /\d/);
      }
      for (const number of await page.locator(".sentence [role=spinbutton]:visible").all())
        await expect(number).toHaveAttribute("aria-valuetext", /\d/);
    });

    await test.step("headings go down one level at a time, from a single first one", async () => {
      for (const fold of await page.locator(".folds summary:visible").all()) await fold.click();
      const levels = await headingLevels(page);
      expect(levels.filter((level) => level === 1)).toHaveLength(1);
      expect(levels.filter((level, index) => index > 0 && level > levels[index - 1] + 1)).toEqual([]);
    });
  });
});

test("the story is read step by step: heading, what it is about, chart, answer", async ({ page }) => {
  await openQuestion(page, "start-here");
  await expect(page.getByRole("region", { name: /^8\./ })).toBeVisible();
  const levels = await headingLevels(page);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  expect(levels.filter((level, index) => index > 0 && level > levels[index - 1] + 1)).toEqual([]);
  const headings = (await lines(page, "main"))
    .filter((line) => /heading "\d\./.test(line))
    .map((line) => Number(/"(\d)\./.exec(line)?.[1]));
  expect(headings).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});

test("by keyboard alone one goes to another question, changes a number, opens the sheet at it, and comes back", async ({
  page,
}) => {
  const [from, to] = questions;
  await openQuestion(page, from.id);
  const rail = page.getByRole("navigation", { name: "Questions" });
  /** @param {string} selector */
  const tabTo = async (selector) => {
    for (let stop = 0; stop < MOST_STOPS; stop += 1) {
      await page.keyboard.press("Tab");
      if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
    }
    throw new Error(`Tab does not lead to ${selector}.`);
  };

  await tabTo(`[href="#${to.id}"]`);
  await expect(rail.locator(":focus")).toBeVisible();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(to.title);
  await expect(page.getByRole("heading", { level: 1 })).toBeFocused();

  await tabTo(".sentence input");
  const before = await answerText(page);
  await page.keyboard.press("Shift+ArrowUp");
  await expect.poll(() => answerText(page)).not.toBe(before);
  await page.keyboard.press("Control+z");
  await expect.poll(() => answerText(page)).toBe(before);

  await tabTo(".known > button");
  await page.keyboard.press("Enter");
  const sheet = page.getByRole("complementary", { name: "Your numbers" });
  await expect(sheet).toBeVisible();
  await expect(sheet.locator(":focus")).toHaveCount(1);
  await page.keyboard.press("Escape");
  await expect(sheet).toBeHidden();
  await expect(page.locator(".known").getByRole("button", { name: "Your numbers" })).toBeFocused();
});
