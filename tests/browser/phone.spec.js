// @ts-check
/** In the lane: the page installs, lies on its side, wakes as it was, and is worked with a thumb. */

import { everyQuestion } from "./support/every-question.js";
import { expect, kept, number, open, openQuestion, started, test, type } from "./support/page.js";
import { questions } from "./support/questions.js";

/** WCAG 2.2, success criterion 2.5.8. */
const LEAST_TARGET_PX = 24;
/** What a thumb takes hold of on a chart. */
const HANDLE_PX = 44;
/** Boxes of a chart are worked out in single precision: 44 may be told as 43.99994. */
const ROUNDING_PX = 0.001;
const ON_ITS_SIDE = { width: 844, height: 390 };

test("it can be installed: a name, a start within its scope, and icons that are there", async ({ page, request }) => {
  await open(page);
  const address = await page.evaluate(() => String(document.querySelector("link[rel=manifest]")?.getAttribute("href")));
  const manifest = await (await request.get(address)).json();
  expect(manifest).toMatchObject({ name: "Fasterby", id: "./", start_url: "./", scope: "./", display: "standalone" });
  expect(manifest.icons.map((/** @type {{ purpose: string }} */ { purpose }) => purpose)).toEqual(["any", "maskable"]);
  for (const { src } of manifest.icons)
    expect((await request.get(src)).headers()["content-type"]).toContain("image/svg+xml");
});

/** Screens above the details, at most. */
const MOST_SCREENS = 5;

/** Where the figure with its ± ends, and where the bar and the details begin, px. @param {import("@playwright/test").Page} page */
function placed(page) {
  return page.evaluate(() => {
    const box = (/** @type {string} */ part) => document.querySelector(part)?.getBoundingClientRect();
    return {
      figure: Math.max(box(".figure .amount")?.bottom ?? NaN, box(".figure .pm")?.bottom ?? NaN),
      bar: box(".bar")?.top,
      details: box("details[data-fold]")?.top,
    };
  });
}

for (const locale of ["de-DE", "fr-FR"]) {
  test.describe(`in the hand, in ${locale}`, () => {
    test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale });

    test("the figure with its ± is in sight at once in every question", async ({ page }) => {
      await everyQuestion(page, questions, async () => {
        const { figure, bar } = await placed(page);
        expect(figure).toBeLessThanOrEqual(Number(bar));
      });
    });
  });
}

test.describe("in the hand", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("the bar tells the answer while a number is edited with the keyboard up, and gives way after", async ({
    page,
  }) => {
    await openQuestion(page, "hold-or-fade");
    await page.setViewportSize({ width: 390, height: 460 });
    const bar = page.locator(".bar-answer");
    await expect(bar).toBeHidden();
    const area = number(page, "Drag area of the position you keep");
    await area.tap();
    await expect(bar).toBeVisible();
    const before = await bar.innerText();
    await area.fill("0.300");
    await expect(bar).not.toHaveText(before);
    await expect(page.locator(".bar").getByRole("button", { name: "Undo" })).toBeHidden();
    await area.blur();
    await expect(bar).toBeHidden();
  });

  test("the bar tells the answer while Your numbers lies over it", async ({ page }) => {
    await openQuestion(page, "leg-room");
    await page.locator(".bar").getByRole("button", { name: "Your numbers" }).tap();
    await expect(page.locator(".sheet")).toBeVisible();
    await page.evaluate(() => scrollTo(0, 0));
    await expect(page.locator(".bar-answer")).toBeVisible();
    await page.locator(".sheet").getByRole("button", { name: "Done" }).tap();
    await expect(page.locator(".bar-answer")).toBeHidden();
  });

  test("a number opens wherever it is tapped: on its digits, its unit or its ±", async ({ page }) => {
    await openQuestion(page, "finish-time");
    for (const part of ["input", ".unit", ".pm"]) {
      const chip = page.locator(".sentence .num.drag").first();
      await chip.locator(part).tap();
      await expect(chip.locator("input")).toBeFocused();
      await chip.locator("input").blur();
    }
  });

  test("in every question the figure with its ± is in sight at once, the details begin within five screens, what a finger presses is large enough, numbers open the number pad, and it works on its side", async ({
    page,
  }) => {
    await everyQuestion(page, questions, async ({ id }) => {
      const { figure, bar, details } = await placed(page);
      expect.soft(figure, `${id}: where the figure ends`).toBeLessThanOrEqual(Number(bar));
      expect.soft(details, `${id}: where the details begin`).toBeLessThan(MOST_SCREENS * 844);

      const small = await page
        .locator("button:visible, summary:visible, select:visible, [role=slider]:visible")
        .evaluateAll(
          (targets, least) =>
            targets
              .map((target) => ({
                name: target.getAttribute("aria-label") ?? target.textContent,
                box: target.getBoundingClientRect(),
                line: target.parentElement?.closest("p, li, td") !== null,
              }))
              // A link within a line of text may be as high as the line.
              .filter(({ box, line }) => !line && box.height > 0 && box.height < least)
              .map(({ name, box }) => `${name}: ${box.height}`),
          LEAST_TARGET_PX,
        );
      expect(small).toEqual([]);
      const modes = await page
        .locator(".sentence input:visible[role=spinbutton]")
        .evaluateAll((fields) => fields.map((field) => field.getAttribute("inputmode")));
      expect(modes.length).toBeGreaterThan(0);
      for (const mode of modes) expect(["decimal", "numeric", "text"]).toContain(mode);
      for (const box of await page
        .locator("svg:visible [role=slider]")
        .evaluateAll((handles) => handles.map((handle) => handle.getBoundingClientRect().height)))
        expect(box).toBeGreaterThanOrEqual(HANDLE_PX - ROUNDING_PX);

      await test.step("on its side the sentence and the answer are reached by scrolling down alone, and the sheet leaves by its button", async () => {
        await page.setViewportSize(ON_ITS_SIDE);
        await expect
          .poll(() => page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth))
          .toBeLessThanOrEqual(0);
        await page.getByRole("region", { name: "Answer" }).scrollIntoViewIfNeeded();
        await page.locator(".known").getByRole("button", { name: "Your numbers" }).tap();
        const close = page
          .locator("#sheet")
          .getByRole("button", { name: /^(Done|Close)/ })
          .first();
        await expect(close).toBeInViewport();
        await close.tap();
        await expect(page.locator("#sheet")).toBeHidden();
      });
    });
  });

  test("a page that was put away, and then ended by the phone, wakes with its numbers", async ({ page }) => {
    const [{ id, number: given }] = questions;
    await openQuestion(page, id);
    await number(page, given.name).fill(given.typed);
    await page.evaluate(() => {
      Object.defineProperty(document, "visibilityState", { value: "hidden", configurable: true });
      document.dispatchEvent(new Event("visibilitychange"));
      dispatchEvent(new Event("pagehide"));
    });
    await expect.poll(async () => JSON.stringify(await kept(page))).toContain(given.kept);
    const next = await page.context().newPage();
    await page.close();
    await next.goto("./");
    await started(next);
    await expect(next.getByRole("main").getByRole("spinbutton", { name: given.name, exact: true })).toHaveValue(
      /^0\.25/,
    );
  });

  test("Back from another page finds the numbers as they were left", async ({ page }) => {
    const [{ id, number: given }] = questions;
    await openQuestion(page, id);
    await type(page, given.name, given.typed);
    await page.goto("about:blank");
    await page.goBack();
    await started(page);
    await expect(number(page, given.name)).toHaveValue(/^0\.25/);
  });
});
