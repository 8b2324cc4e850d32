// @ts-check
/** The rider's own point on a chart, moved by keys and by hand. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { answerText, drawn, expect, found, handle, inMotion, openQuestion, tool } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const DRAG_PX = 60;

/** @param {Page} page @param {string} name */
async function drag(page, name) {
  const ring = handle(page, name).locator(".ring");
  await ring.scrollIntoViewIfNeeded();
  const box = await ring.boundingBox();
  if (!box) throw new Error(`${name} is not on the page.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - DRAG_PX / 2, y, { steps: 3 });
  await page.mouse.move(x - DRAG_PX, y, { steps: 3 });
  await page.mouse.up();
}

test.beforeEach(({ page }) => page.emulateMedia(inMotion));

/** @type {[way: string, move: (page: Page, name: string) => Promise<void>][]} */
const ways = [
  ["an arrow key", (page, name) => handle(page, name).press("Shift+ArrowLeft")],
  ["dragging", drag],
];

test("in every question arrow keys and dragging move each point, the answer follows, and undo takes each back", async ({
  page,
}) => {
  const withPoints = questions.filter((question) => question.handles.length > 0);
  await everyQuestion(page, withPoints, async ({ handles }) => {
    for (const name of handles) {
      for (const [way, move] of ways) {
        await test.step(`“${name}” by ${way}`, async () => {
          const answer = await answerText(page);
          const { place, words } = await whereIs(page, name);

          await move(page, name);
          await expect.poll(() => answerText(page)).not.toBe(answer);
          // What was answered on the way is not where the point was left.
          await drawn(page);
          await found(page);
          const after = await answerText(page);
          expect((await whereIs(page, name)).words).not.toBe(words);

          await tool(page, "Undo").click();
          await expect.poll(() => answerText(page)).toBe(answer);
          expect(await whereIs(page, name)).toEqual({ place, words });
          await expect(tool(page, "Undo")).toBeDisabled();
          await tool(page, "Redo").click();
          await expect.poll(() => answerText(page)).toBe(after);
          await tool(page, "Undo").click();
          await expect.poll(() => answerText(page)).toBe(answer);
        });
      }
    }
  });
});

/** @param {Page} page @param {string} name */
async function whereIs(page, name) {
  return {
    place: await handle(page, name).getAttribute("transform"),
    words: await handle(page, name).getAttribute("aria-valuetext"),
  };
}

test("on a map, left and right change one quantity, up and down the other", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  const point = handle(page, "You on the map");
  const read = async () =>
    (await point.getAttribute("aria-valuetext"))
      ?.match(/([\d.]+)\sW at ([\d.]+)\sm²/)
      ?.slice(1)
      .map(Number) ?? [];
  const [power_w, cda_m2] = await read();

  await point.press("Shift+ArrowRight");
  await expect.poll(async () => (await read())[0]).toBeGreaterThan(power_w);
  expect((await read())[1]).toBe(cda_m2);

  const [more_w] = await read();
  await point.press("Shift+ArrowUp");
  await expect.poll(async () => (await read())[1]).toBeGreaterThan(cda_m2);
  expect((await read())[0]).toBe(more_w);
});
