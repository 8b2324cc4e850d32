// @ts-check
/** Everything can be done without a mouse, and one always sees where one is. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { answerText, expect, openQuestion } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const MOST_STOPS = 80;

/** Where the focus is: which part of the page, and whether anything shows it. @param {Page} page */
function here(page) {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return null;
    /** @type {[selector: string, part: string][]} */
    const parts = [
      [".sentence", "number"],
      [".known", "known"],
      [".handle", "handle"],
      [".reader", "reader"],
      [".folds summary", "fold"],
      [".skip", "skip"],
      [".tools", "tool"],
      [".questions", "question"],
    ];
    const part = parts.find(([selector]) => at.closest(selector))?.[1] ?? "other";
    const seen = [at, at.closest(".num"), at.querySelector(".reach")]
      .filter((element) => element !== null)
      .some((element) => {
        const { outlineStyle, outlineWidth, stroke, strokeWidth } = getComputedStyle(element);
        const outlined = outlineStyle !== "none" && parseFloat(outlineWidth) >= 2;
        const ringed = element instanceof SVGElement && stroke !== "none" && parseFloat(strokeWidth) >= 2;
        return outlined || ringed;
      });
    return { part, seen, name: at.getAttribute("aria-label") ?? at.textContent?.slice(0, 40) ?? "" };
  });
}

/** Begins where the focus is on a page just opened: a question that another led to has it on its heading. @param {Page} page */
function focusTop(page) {
  return page.evaluate(() => {
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute("tabindex");
  });
}

test("every question by keys alone", async ({ page }) => {
  await everyQuestion(page, questions, async ({ handles, still }) => {
    await focusTop(page);

    await test.step("Tab goes through the numbers, the charts and the folds in their order, and the focus shows", async () => {
      // What is counted beside the page may add a fold.
      await expect(page.getByText("tries are counted")).toHaveCount(0);
      /** @type {{ part: string, seen: boolean, name: string }[]} */
      const stops = [];
      for (let stop = 0; stop < MOST_STOPS; stop += 1) {
        await page.keyboard.press("Tab");
        const at = await here(page);
        if (!at) break;
        stops.push(at);
      }

      expect(stops.filter(({ seen, part }) => !seen && part !== "skip").map(({ name }) => name)).toEqual([]);
      expect(stops[0].part).toBe("skip");
      const named = (/** @type {string} */ part) => stops.filter((stop) => stop.part === part).map(({ name }) => name);
      const fields = await page
        .locator(".sentence")
        .evaluate((line) =>
          [...line.querySelectorAll("input, select, .term")]
            .filter((field) => field.checkVisibility())
            .map((field) => field.getAttribute("aria-label") ?? field.textContent),
        );
      expect(named("number")).toEqual(fields);
      for (const name of handles) expect(named("handle").some((label) => label.startsWith(name))).toBe(true);
      expect(named("fold").length).toBe(await page.locator(".folds summary:visible").count());
      const first = (/** @type {string} */ part) => stops.findIndex((stop) => stop.part === part);
      const last = (/** @type {string} */ part) => stops.findLastIndex((stop) => stop.part === part);
      if (still) expect(first("handle")).toBe(-1);
      else expect(last("number")).toBeLessThan(first("handle"));
      expect(Math.max(last("number"), last("handle"))).toBeLessThan(first("fold"));
    });

    await test.step("a fold opens and closes by Enter", async () => {
      const fold = page.locator(".folds details:visible").first();
      await fold.locator("summary").focus();
      await page.keyboard.press("Enter");
      await expect(fold).toHaveJSProperty("open", true);
      await page.keyboard.press("Enter");
      await expect(fold).toHaveJSProperty("open", false);
    });

    await test.step("every curve can be read point by point with the arrow keys", async () => {
      for (const figure of await page
        .getByRole("main")
        .locator("figure:visible", { has: page.locator(".reader") })
        .all()) {
        const reader = figure.locator(".reader");
        await reader.focus();
        await page.keyboard.press("ArrowRight");
        const first = await figure.locator("figcaption").innerText();
        await expect(reader).toHaveAttribute("aria-valuetext", /\d/);
        await page.keyboard.press("ArrowRight");
        await expect(figure.locator("figcaption")).not.toHaveText(first);
      }
    });

    await test.step("the table says in figures what the chart shows", async () => {
      await page.locator(".folds summary", { hasText: "As a table" }).press("Enter");
      const table = page.locator(".folds details", { hasText: "As a table" }).getByRole("table");
      await expect(table.first()).toBeVisible();
      await expect.poll(() => table.first().getByRole("row").count()).toBeGreaterThan(3);
      await expect(table.first().locator("caption")).not.toBeEmpty();
    });
  });
});

test("the skip link leads past the tools to the question", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("main")).toBeFocused();
});

test("Control Z and Control Shift Z undo and redo a number that has the focus", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  const before = await answerText(page);
  const field = page.getByRole("main").getByRole("spinbutton").first();
  await field.press("Shift+ArrowUp");
  await expect.poll(() => answerText(page)).not.toBe(before);
  const after = await answerText(page);
  await page.keyboard.press("Control+z");
  await expect.poll(() => answerText(page)).toBe(before);
  await page.keyboard.press("Control+Shift+z");
  await expect.poll(() => answerText(page)).toBe(after);
});

test("what changes is spoken once, in a whole sentence", async ({ page }) => {
  await openQuestion(page, questions[0].id);
  const spoken = page.getByRole("region", { name: "Answer" }).getByRole("status");
  await expect(spoken).toHaveText(/\w.*\.$/);
  const before = await spoken.textContent();
  await page.getByRole("main").getByRole("spinbutton").first().press("Shift+ArrowUp");
  await expect(spoken).not.toHaveText(String(before));
  await expect(spoken).toHaveText(/plus or minus.*\.$/);
});

test("a term shows its sentence by a key, and Escape takes it away and leaves the focus there", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  const term = page.locator(".sentence .term:visible").first();
  await term.focus();
  await page.keyboard.press("Enter");
  await expect(page.locator(".meaning:popover-open")).toHaveText(
    "CdA is how big you are to the air, shape and size together; less is faster.",
  );
  await page.keyboard.press("Escape");
  await expect(page.locator(".meaning:popover-open")).toHaveCount(0);
  await expect(term).toBeFocused();
});

test("± and tries explain themselves beside Your numbers", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await page.locator(".known").getByRole("button", { name: "±" }).press("Enter");
  await expect(page.locator(".meaning:popover-open")).toHaveText(
    "The truth lies within ± two times in three, and within twice that 19 times in 20.",
  );
  await page.locator(".known").getByRole("button", { name: "tries" }).press("Enter");
  await expect(page.locator(".meaning:popover-open")).toHaveText(
    "In each try, all your numbers vary at random within their ±.",
  );
});
