// @ts-check
/** Leg room: the crank is turned by hand or by itself, lengths are typed or guessed, and a leg that does not reach says where. */

import { test } from "./support/one-page.js";
import {
  answerText,
  expect,
  inMotion,
  test as inOwnWindow,
  look,
  number,
  openQuestion,
  tool,
  type,
} from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page */
const crank = (page) => page.getByRole("slider", { name: "Crank angle past the top", exact: true });
/** @param {Page} page */
const turning = (page) => page.locator(".turner");

test("the crank is turned with the arrow keys, and the figure, its words and both charts follow", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const limbs = () => page.locator(".leg-figure .rider.hold .limb").last().getAttribute("d");
  const before = {
    limbs: await limbs(),
    said: await page.locator(".figure-reading").textContent(),
    charts: await page.locator(".chart-figure .reading").allTextContents(),
  };
  await crank(page).press("ArrowRight");
  await expect.poll(limbs).not.toBe(before.limbs);
  await expect(page.locator(".figure-reading")).not.toHaveText(before.said ?? "");
  expect(await page.locator(".chart-figure .reading").allTextContents()).not.toEqual(before.charts);
});

test("the ring on the hip chart turns the crank too", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const at = Number(await crank(page).inputValue());
  await page.getByRole("slider", { name: "You: left and right turn the crank" }).press("ArrowRight");
  await expect(crank(page)).toHaveValue(String(at + 1));
});

test("the buttons go to the tightest hip and the straightest knee", async ({ page }) => {
  await openQuestion(page, "leg-room");
  await page.getByRole("button", { name: "Straightest knee" }).click();
  const low = Number(await crank(page).inputValue());
  expect(low).toBeGreaterThan(150);
  expect(low).toBeLessThan(180);
  await page.getByRole("button", { name: "Tightest hip" }).click();
  expect(Number(await crank(page).inputValue())).toBeLessThan(45);
});

test("the crank turns by itself while it can be seen, and stops when asked", async ({ page }) => {
  await page.emulateMedia(inMotion);
  await openQuestion(page, "leg-room");
  await page.getByRole("button", { name: "Turn the crank" }).click();
  await expect(turning(page)).toHaveAttribute("data-turning", "");
  const at = await crank(page).inputValue();
  await expect(crank(page)).not.toHaveValue(at);
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await expect(turning(page)).not.toHaveAttribute("data-turning", "");
  await page.evaluate(() => scrollTo(0, 0));
  await turning(page).scrollIntoViewIfNeeded();
  await expect(turning(page)).toHaveAttribute("data-turning", "");
  await page.getByRole("button", { name: "Stop the crank" }).click();
  await expect(turning(page)).not.toHaveAttribute("data-turning", "");
});

inOwnWindow.describe("without motion", () => {
  inOwnWindow.use({ contextOptions: { reducedMotion: "reduce" } });

  inOwnWindow("nothing turns by itself, and the slider stays", async ({ page }) => {
    await openQuestion(page, "leg-room");
    await expect(page.getByRole("button", { name: "Turn the crank" })).toBeHidden();
    await expect(crank(page)).toBeVisible();
  });
});

test("a leg that is too short says where round the turn, and the last good answer stays", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const before = await answerText(page);
  await type(page, "Saddle height, new set-up", "800");
  await expect(page.locator(".wrong:visible")).toHaveText(
    /does not reach the pedal from \d+° to \d+° past the top; at \d+° it is \d+\s*mm short\. It reaches with the saddle at 7\d\d\s*mm or less\./,
  );
  expect(await answerText(page)).toBe(before);
});

test("lower pads close the hip degree for degree, and the page says what gives it back", async ({ page }) => {
  await openQuestion(page, "leg-room");
  for (const [name, value] of [
    ["Crank length", "170"],
    ["Saddle height", "720"],
    ["Drop from saddle to pads", "110"],
  ])
    await type(page, `${name}, new set-up`, value);
  await expect(page.locator(".verdict")).toContainText("closes the hip by");
  await expect(page.locator(".verdict .figure")).toContainText("1.2°");
  await expect(page.locator(".also")).toContainText(/cranks 5\.3\s*mm shorter/);
  await expect(page.locator(".also")).toContainText(/the pads 10\s*mm higher/);
});

test("what is doubtful of both set-ups alike is said once", async ({ page }) => {
  await openQuestion(page, "leg-room");
  await expect(
    page.getByRole("main").getByRole("listitem").filter({ hasText: "would not reach the pedal" }),
  ).toHaveCount(1);
});

test("a front given by the torso's angle leaves the riders where they are", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const before = await look(page);
  const torso = await page.locator(".answer .grid tbody tr", { hasText: "Torso" }).locator("td").first().textContent();
  await page.getByRole("combobox", { name: "How the front end is given" }).first().selectOption({ label: "the torso" });
  await expect(number(page, "Torso angle, now")).toHaveValue(String(torso).replace("°", ""));
  await tool(page, "Undo").click();
  await expect.poll(() => look(page)).toEqual(before);
});

test("a length that is typed makes the angle surer, and can be guessed again", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const guesses = () => page.locator("[data-fold=lengths] .gist").textContent();
  expect(await guesses()).toContain("5 guessed");
  await page.locator("[data-fold=lengths] summary").click();
  await type(page, "Thigh, hip joint to knee", "44");
  await expect.poll(guesses).toContain("4 guessed");
  await page.getByRole("button", { name: "Guess again" }).click();
  await expect.poll(guesses).toContain("5 guessed");
});

test("how the rider pedals stands with the lengths, and changes the answer", async ({ page }) => {
  await openQuestion(page, "leg-room");
  const before = await answerText(page);
  const fold = page.locator('details[data-fold="lengths"]');
  await fold.locator("summary").click();
  await fold.getByRole("combobox", { name: "What the ankle does" }).selectOption({ label: "a still ankle" });
  await expect.poll(() => answerText(page)).not.toBe(before);
  await expect(fold.getByRole("spinbutton", { name: "Cadence, new set-up" })).toHaveValue("90");
});
