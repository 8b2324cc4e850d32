// @ts-check
/** More power or less drag: the reason that is given agrees with the answer. */

import { test } from "./support/one-page.js";
import { expect, open } from "./support/page.js";

/** The reason at a power, with the other numbers as they come. @param {import("@playwright/test").Page} page @param {number} power_w */
async function reason(page, power_w) {
  const packed = Buffer.from(JSON.stringify({ w: { effort: { kind: "power", power_w } } })).toString("base64url");
  await open(page, `#power-or-drag/1j.${packed}`);
  const fold = page.locator('[data-fold="why"]');
  await fold.locator("summary").click();
  return fold;
}

test("well below the tie the reason says so, and near it that the two are about level", async ({ page }) => {
  await expect(await reason(page, 235)).toContainText("You are below it.");
  // Air takes 90.9 % of the work, more than the 90.3 % at which the changes tie, and more power is still 0.3 s ahead.
  const near = await reason(page, 600);
  await expect(near).toContainText("You are about level with it");
  await expect(near).not.toContainText("above it");
});
