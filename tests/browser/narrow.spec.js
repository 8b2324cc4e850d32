// @ts-check
/** On the smallest phone: every question is reached, nothing scrolls sideways, and a tap opens a number. The other widths are in accessibility.spec.js. */

import { expect, number, openQuestion, test } from "./support/page.js";
import { questions } from "./support/questions.js";

test.describe("on a small phone", () => {
  test.use({ viewport: { width: 320, height: 568 }, hasTouch: true, isMobile: true });

  test("every question is reached from the menu, and everything a finger presses is large enough", async ({ page }) => {
    await openQuestion(page, questions[0].id);
    for (const { title } of questions) {
      await page.getByRole("button", { name: "Questions" }).tap();
      await page.getByRole("dialog").getByRole("listitem").filter({ hasText: title }).getByRole("link").tap();
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
      await expect
        .poll(() => page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth))
        .toBeLessThanOrEqual(0);
    }
    for (const button of await page.getByRole("contentinfo").getByRole("button").all()) {
      // WCAG 2.2 asks for 24; the bar is what a thumb uses most.
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(40);
    }
  });

  test("a tap on a number opens it for typing and changes nothing", async ({ page }) => {
    const {
      id,
      number: { name },
    } = questions[0];
    await openQuestion(page, id);
    const before = await number(page, name).inputValue();
    await number(page, name).tap();
    await expect(number(page, name)).toBeFocused();
    await expect(number(page, name)).toHaveValue(before);
  });
});
