// @ts-check
/** Hold or fade: how a position is lost, as a filmed test gives it. */

import { test } from "./support/one-page.js";
import { answerText, expect, kept, number, openQuestion, type } from "./support/page.js";

test("how a position is lost can be given as the thirds of a test, and the answer follows", async ({ page }) => {
  await openQuestion(page, "hold-or-fade");
  await page
    .getByRole("combobox", { name: "How the low position is lost" })
    .selectOption({ label: "slips as a filmed test shows" });
  await expect.poll(async () => Boolean((await kept(page))?.scenario.positions[1].fade_test)).toBe(true);
  expect((await kept(page)).scenario.positions[1].fade).toBeUndefined();
  const before = await answerText(page);
  await expect(number(page, "Drag area over the last third")).toBeVisible();
  await type(page, "Drag area over the last third", "0.26");
  await expect.poll(() => answerText(page)).not.toBe(before);
});
