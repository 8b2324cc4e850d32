// @ts-check
/** A number in a sentence: typed, stepped, dragged, refused, taken back. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { answerText, complaint, drawn, expect, found, look, number, openQuestion, tool } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const DRAG_PX = 90;

/** @param {Page} page @param {string} name */
async function dragSideways(page, name) {
  const box = await number(page, name).boundingBox();
  if (!box) throw new Error(`${name} is not on the page.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + DRAG_PX / 2, y, { steps: 3 });
  await page.mouse.move(x + DRAG_PX, y, { steps: 3 });
  await page.mouse.up();
}

/** @type {[way: string, change: (page: Page, given: { name: string, typed: string }) => Promise<unknown>][]} */
const ways = [
  [
    "typing",
    async (page, { name, typed }) => {
      await number(page, name).fill("");
      await number(page, name).pressSequentially(typed);
      await number(page, name).press("Tab");
    },
  ],
  ["an arrow key", (page, { name }) => number(page, name).press("Shift+ArrowUp")],
  ["dragging it sideways", (page, { name }) => dragSideways(page, name)],
];

test("in every question a number changes the answer and the chart, undo takes it back, redo brings it again, and what is wrong is named", async ({
  page,
}) => {
  await everyQuestion(page, questions, async ({ number: given }) => {
    const before = await look(page);
    const valueBefore = await number(page, given.name).inputValue();

    await test.step("outside its range it is answered by the range, nonsense by its name, and the last good answer stays", async () => {
      await number(page, given.name).fill(given.outside);
      await expect(complaint(page)).toContainText(given.range);
      await expect(number(page, given.name)).toHaveAttribute("aria-invalid", "true");
      expect(await look(page)).toEqual(before);

      for (const nonsense of ["fast", "", "--1", "1e999", "<b>1</b>", "0.25 bananas"]) {
        await number(page, given.name).fill(nonsense);
        await expect(complaint(page)).toContainText(given.name);
        expect(await look(page)).toEqual(before);
      }

      await number(page, given.name).press("Escape");
      await expect(number(page, given.name)).toHaveValue(valueBefore);
      await expect(complaint(page)).toHaveCount(0);
      await expect(tool(page, "Undo")).toBeDisabled();
    });

    /** @type {{ look: object, value: string } | undefined} */
    let last;
    for (const [way, change] of ways) {
      await test.step(way, async () => {
        await change(page, given);

        await drawn(page);
        await expect.poll(() => answerText(page)).not.toBe(before.answer);
        await found(page);
        const after = await look(page);
        expect(after.drawing).not.toBe(before.drawing);
        const valueAfter = await number(page, given.name).inputValue();
        expect(valueAfter).not.toBe(valueBefore);

        await tool(page, "Undo").click();
        await expect.poll(() => look(page)).toEqual(before);
        await expect(number(page, given.name)).toHaveValue(valueBefore);
        await expect(tool(page, "Undo")).toBeDisabled();
        last = { look: after, value: valueAfter };
      });
    }

    await test.step("redo brings the last of them again", async () => {
      await tool(page, "Redo").click();
      await expect.poll(() => look(page)).toEqual(last?.look);
      await expect(number(page, given.name)).toHaveValue(last?.value ?? "");
      await tool(page, "Undo").click();
    });
  });
});

test("a comma, spaces and the unit may be typed", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  const cda = number(page, "Drag area, CdA");
  await cda.fill("0.251");
  await cda.press("Enter");
  const wanted = await answerText(page);
  await cda.fill("0.3");
  await expect.poll(() => answerText(page)).not.toBe(wanted);

  await cda.fill(" 0,251 m² ");
  await cda.press("Enter");

  await expect(cda).toHaveValue("0.251");
  await expect.poll(() => answerText(page)).toBe(wanted);
});

test("the wheel over a number scrolls the page and changes nothing", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  const cda = number(page, "Drag area, CdA");
  await cda.focus();
  const before = await cda.inputValue();
  await cda.hover();
  await page.mouse.wheel(0, 200);
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(0);
  await expect(cda).toHaveValue(before);
});
