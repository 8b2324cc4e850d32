// @ts-check
/** A choice in a sentence: taken, computed with, undone. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { answerText, expect, handle, look, number, openQuestion, tool } from "./support/page.js";
import { questions } from "./support/questions.js";

/** Every choice of each sentence, and an option that is not the first. @type {Record<string, [choice: string, option: string][]>} */
const choices = {
  "speed-for-watts": [["Which way round", "Riding at a speed of"]],
  "power-or-drag": [
    ["How far", "Over 10 miles"],
    ["Kind of course", "steady hill"],
    ["How hard", "at my best even effort"],
  ],
  "hold-or-fade": [
    ["How far", "Over 50 miles"],
    ["Kind of course", "steady hill"],
    ["How hard", "at my best even effort"],
    ["How the low position is lost", "is lost now and then"],
  ],
  // Its only choice comes with efforts in two positions.
  "power-curve": [],
  // Its choices come with laps and runs.
  "drag-test": [],
  "next-gain": [],
  "leg-room": [["How the front end is given", "the torso"]],
  "which-position": [
    ["How far", "In a time of"],
    ["Kind of course", "steady hill"],
    ["The position that the others are compared with", "the low position"],
    ["How the drag areas are known", "from separate tests"],
  ],
  // How W′ comes back stands in a fold and has a test of its own.
  "ride-plan": [
    ["How far", "Over 10 miles"],
    ["Kind of course", "steady hill"],
  ],
  "finish-time": [
    ["How far", "In one hour"],
    ["Kind of course", "steady hill"],
    ["How hard", "holding"],
  ],
};

/** These give the same set-up otherwise, widen what is drawn, or turn two positions about: the figures stay and the charts change. */
const CHANGES_CHARTS = [
  "How the front end is given",
  "How the drag areas are known",
  "The position that the others are compared with",
];

test("in every question each choice of the sentence changes the answer, and undo takes it back", async ({ page }) => {
  await everyQuestion(page, questions, async ({ id }) => {
    const before = await look(page);
    const inSentence = page.locator(".sentence").getByRole("combobox");
    const names = await inSentence.evaluateAll((all) => all.map((choice) => choice.getAttribute("aria-label")));
    expect([...new Set(names)]).toEqual(choices[id].map(([name]) => name));
    for (const [name, option] of choices[id]) {
      await test.step(`${name}: ${option}`, async () => {
        const choice = page.locator(".sentence").getByRole("combobox", { name, exact: true }).first();
        const value = await choice.inputValue();
        await choice.selectOption({ label: option });
        if (CHANGES_CHARTS.includes(name)) await expect.poll(() => look(page)).not.toEqual(before);
        else await expect.poll(() => answerText(page)).not.toBe(before.answer);
        await tool(page, "Undo").click();
        await expect.poll(() => look(page)).toEqual(before);
        await expect(choice).toHaveValue(value);
      });
    }
  });
});

test("a distance of one's own is typed where the usual ones are chosen", async ({ page }) => {
  await openQuestion(page, "finish-time");
  const before = await answerText(page);
  await page.getByRole("combobox", { name: "How far" }).selectOption({ label: "Over a distance of" });
  const distance = number(page, "Distance");
  await expect(distance).toBeFocused();
  await distance.fill("12,5 km");
  await distance.press("Enter");
  await expect(distance).toHaveValue("7.77");
  await expect.poll(() => answerText(page)).not.toBe(before);
});

test("a finish time asked for is typed as a clock shows it, and the answer is a power", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await page.getByRole("combobox", { name: "How hard" }).selectOption({ label: "to finish in" });
  const time = number(page, "Finish time");
  await time.fill("58:30");
  await time.press("Enter");
  await expect(time).toHaveValue("58:30");
  await expect(page.locator(".verdict")).toContainText(/takes\s*\d+\s*W/);
});

test("the surveyed course is asked for where its points are pasted", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await page.getByRole("combobox", { name: "Kind of course" }).selectOption({ label: "your surveyed course" });
  await expect(
    page.getByRole("complementary", { name: "Your numbers" }).getByLabel("The course is given as"),
  ).toBeVisible();
});

test("with one position left, the question about two says so, offers a second, and its link opens", async ({
  page,
  browser,
}) => {
  await openQuestion(page, "hold-or-fade");
  const before = await answerText(page);
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  const sheet = page.getByRole("complementary", { name: "Your numbers" });
  await sheet.locator(".sheet-group > summary", { hasText: "Positions" }).click();
  const second = sheet.locator(".position").nth(1);
  await second.locator("summary").first().click();
  await second.getByRole("button", { name: "Remove", exact: true }).click();
  await expect(page.getByText("positions are needed for this")).toBeVisible();
  await expect(page).toHaveURL(/\/1z\./);

  const elsewhere = await browser.newContext({ locale: "en-GB" });
  const there = await elsewhere.newPage();
  await there.goto(page.url());
  await expect(there.getByText("positions are needed for this")).toBeVisible();
  await there.getByRole("button", { name: "Add a lower position" }).click();
  await expect(there.getByText("positions are needed for this")).toBeHidden();
  await expect(handle(there, "Share of the ride held")).toBeVisible();
  await elsewhere.close();

  await tool(page, "Undo").click();
  await expect.poll(() => answerText(page)).toBe(before);
});
