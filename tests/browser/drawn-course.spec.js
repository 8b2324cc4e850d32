// @ts-check
/** A course that is drawn by hand: a shape, then its points moved; and a link that carries fewer points of a long one. */

import { course, openCourseGroup, openWithCourse } from "./support/courses.js";
import { test } from "./support/one-page.js";
import { expect, test as inOwnWindow, kept, notice, openQuestion, started, tool } from "./support/page.js";

/** @import { Locator, Page } from "@playwright/test" */

const LENGTH_M = 24_000;
const SIMPLE = { kind: "simple", distance_m: LENGTH_M, grade: 0, bearing_deg: 250, out_and_back: false };
/** How many points each shape has, as the core documents it, and its climb over 24 km. */
const SHAPES = /** @type {const} */ ([
  ["Flat", 11, 0],
  ["Rolling", 13, 160],
  ["One climb", 11, 300],
  ["A hill, out and back", 11, 78],
]);
/** The page says climbs in whole metres. */
const METRE = 0.51;
/** A browser scrolls by whole pixels of the screen. */
const STILL_PX = 1;
const DRAG_PX = 20;
/** Half a step of a metre, and the stroke of a ring that is held. */
const UNDER_POINTER_PX = 2;
/** What a drag of so far is at least, m: the chart shows some hundreds of metres in about as many pixels. */
const DRAGGED_M = 10;

/** @param {Page} page @returns {Promise<number[]>} */
const heights = async (page) =>
  ((await course(page))?.points ?? []).map((/** @type {{ elevation_m: number }} */ point) => point.elevation_m);

/** @param {number[]} heights_m */
const climb = (heights_m) =>
  heights_m.reduce((sum, height_m, at) => sum + (at ? Math.max(0, height_m - heights_m[at - 1]) : 0), 0);

/** Draws a shape and begins to move its points. @param {Page} page @param {string} shape @param {object} [before] */
async function drawn(page, shape, before = SIMPLE) {
  const sheet = await openWithCourse(page, before);
  await sheet.getByRole("button", { name: shape, exact: true }).click();
  await expect.poll(async () => (await course(page)).kind).toBe("profile");
  const move = sheet.getByRole("button", { name: "Move points" });
  await move.click();
  await expect(move).toHaveAttribute("aria-pressed", "true");
  return { sheet, points: sheet.getByRole("slider", { name: /^Height at / }) };
}

/** The middle of a point. @param {Locator} point */
async function middle(point) {
  await point.evaluate((element) => element.scrollIntoView({ block: "center" }));
  const box = await point.locator(".ring").boundingBox();
  if (!box) throw new Error("The point is not in sight.");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Where the chart of a point lies. @param {Locator} point */
const top = (point) => point.evaluate((element) => element.closest("svg")?.getBoundingClientRect().top ?? NaN);

for (const [shape, count, climb_m] of SHAPES) {
  test(`${shape}: a course of the same length is drawn, and one undo takes it back`, async ({ page }) => {
    const sheet = await openWithCourse(page, SIMPLE);
    const before = await course(page);
    await sheet.getByRole("button", { name: shape, exact: true }).click();
    await expect.poll(async () => (await course(page)).points?.length).toBe(count);
    const { points } = await course(page);
    expect(points.at(-1).distance_m).toBe(LENGTH_M);
    expect(Math.abs(climb(await heights(page)) - climb_m)).toBeLessThan(METRE);
    await tool(page, "Undo").click();
    await expect.poll(() => course(page)).toEqual(before);
    await expect(tool(page, "Undo")).toBeDisabled();
  });
}

test("a point is dragged up by mouse while the chart stands still, in one step of undo", async ({ page }) => {
  const { points } = await drawn(page, "One climb");
  const before = await heights(page);
  const summit = points.nth(5);
  const { x, y } = await middle(summit);
  const still = await top(summit);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const share of [0.5, 1]) {
    await page.mouse.move(x, y - share * DRAG_PX, { steps: 3 });
    expect(Math.abs((await top(summit)) - still)).toBeLessThanOrEqual(STILL_PX);
  }
  const lifted = await summit.locator(".ring").boundingBox();
  expect(Math.abs((lifted?.y ?? NaN) + (lifted?.height ?? NaN) / 2 - (y - DRAG_PX))).toBeLessThan(UNDER_POINTER_PX);
  await page.mouse.up();
  await expect.poll(async () => (await heights(page))[5]).toBeGreaterThan(before[5] + DRAGGED_M);
  const after = await heights(page);
  expect(after.filter((height_m, at) => height_m !== before[at])).toHaveLength(1);
  await tool(page, "Undo").click();
  await expect.poll(() => heights(page)).toEqual(before);
});

test("arrow keys move a point by a metre, with shift by ten; its name says where it is", async ({ page }) => {
  const { points } = await drawn(page, "Flat");
  const point = points.nth(5);
  await expect(point).toHaveAccessibleName("Height at 7.46 miles");
  await point.press("ArrowUp");
  await expect.poll(async () => (await heights(page))[5]).toBe(1);
  await point.press("Shift+ArrowUp");
  await expect.poll(async () => (await heights(page))[5]).toBe(11);
  await expect(point).toHaveAttribute("aria-valuetext", "11\u00a0m");
  await tool(page, "Undo").click();
  await expect.poll(async () => (await heights(page))[5]).toBe(1);
});

test("a height that makes the road too steep is refused in words, and the last good course stays", async ({ page }) => {
  // Points every 50 m: a stretch rises by at most 40 %, 20 m.
  const { sheet, points } = await drawn(page, "Flat", { ...SIMPLE, distance_m: 500 });
  const point = points.nth(3);
  for (let times = 0; times < 2; times += 1) await point.press("Shift+ArrowUp");
  await expect.poll(async () => (await heights(page))[3]).toBe(20);
  await point.press("ArrowUp");
  await expect(sheet.locator(".course-edits .wrong:visible")).toContainText("The road to point 4 rises by 42\u202f%");
  expect((await heights(page))[3]).toBe(20);
  await expect(point).toHaveAttribute("aria-valuenow", "20");
  await point.press("ArrowDown");
  await expect(sheet.locator(".course-edits .wrong:visible")).toHaveCount(0);
  await expect.poll(async () => (await heights(page))[3]).toBe(19);
});

test("the ends of a part are dragged again once the points are not moved", async ({ page }) => {
  const { sheet, points } = await drawn(page, "Rolling");
  await expect(points).toHaveCount(13);
  await expect(sheet.getByRole("slider", { name: "End of the course" })).toHaveCount(0);
  await sheet.getByRole("button", { name: "Move points" }).click();
  await expect(points).toHaveCount(0);
  await expect(sheet.getByRole("slider", { name: "End of the course" })).toBeVisible();
});

/** A long road with bends and wiggles. @param {number} count */
const long = (count) => ({
  kind: "profile",
  points: Array.from({ length: count }, (_, at) => ({
    distance_m: 12.345678 * at,
    elevation_m: 200 + 30 * Math.sin(0.01 * at) + 2 * Math.sin(0.37 * at),
    bearing_deg: 40 + 60 * Math.sin(0.004 * at),
  })),
});

test("a course of more than 24 points is not moved point by point", async ({ page }) => {
  const sheet = await openWithCourse(page, long(25));
  await expect(sheet.getByRole("button", { name: "Turn it round" })).toBeVisible();
  await expect(sheet.getByRole("button", { name: "Move points" })).toBeHidden();
});

inOwnWindow.describe("by finger", () => {
  inOwnWindow.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  inOwnWindow(
    "a point follows a finger that touches beside it, nearer to it than to its neighbours",
    async ({ page }) => {
      const { points } = await drawn(page, "Rolling");
      const before = await heights(page);
      const point = points.nth(3);
      const { x, y } = await middle(point);
      const still = await top(point);
      const session = await page.context().newCDPSession(page);
      const send = (/** @type {"touchStart" | "touchMove" | "touchEnd"} */ type, /** @type {number} */ down = 0) =>
        session.send("Input.dispatchTouchEvent", {
          type,
          touchPoints: type === "touchEnd" ? [] : [{ x: x + 8, y: y + down }],
        });
      await send("touchStart");
      for (const down of [10, 20]) {
        await send("touchMove", down);
        expect(Math.abs((await top(point)) - still)).toBeLessThanOrEqual(STILL_PX);
      }
      await send("touchEnd");
      await expect.poll(async () => (await heights(page))[3]).toBeLessThan(before[3] - DRAGGED_M);
      const after = await heights(page);
      expect(after.filter((height_m, at) => height_m !== before[at])).toHaveLength(1);
      await page.keyboard.press("Control+z");
      await expect.poll(() => heights(page)).toEqual(before);
    },
  );
});

inOwnWindow.describe("a link", () => {
  inOwnWindow.use({ permissions: ["clipboard-read", "clipboard-write"] });
  const COUNT = 2_400;
  /** What some programs cut a link after. */
  const LONG_LINK = 8_000;

  inOwnWindow(
    "to a long course carries as many points as it says, and says how the time differs",
    async ({ page, browser }) => {
      await openWithCourse(page, long(COUNT));
      await tool(page, "Share").click();
      await expect(notice(page)).toContainText("The link is copied");
      const said = (await notice(page).textContent()) ?? "";
      const [, kept] = /The link carries ([\d,]+) of the course’s 2,400 points\./.exec(said) ?? [];
      expect(said).toMatch(/The best even effort on them is (?:slower|faster) by /);
      expect(said).not.toContain("It is long");
      const link = await page.evaluate(() => navigator.clipboard.readText());
      // The bound is used, not only kept.
      expect(link.length).toBeLessThanOrEqual(LONG_LINK);
      expect(link.length).toBeGreaterThan(LONG_LINK / 2);
      await expect.poll(() => page.url().length).toBeGreaterThan(LONG_LINK);
      expect((await course(page)).points).toHaveLength(COUNT);

      const elsewhere = await browser.newContext({ locale: "en-GB" });
      const there = await elsewhere.newPage();
      await there.goto(link);
      await started(there);
      const sheet = await openCourseGroup(there);
      const lines = async () =>
        (await sheet.getByRole("textbox", { name: "Points of the course" }).inputValue()).trim().split("\n").length;
      await expect.poll(lines).toBe(Number(kept.replace(",", "")));
      await elsewhere.close();
    },
  );

  inOwnWindow("to an event with a long course of its own says of it how many points it carries", async ({ page }) => {
    await page.addInitScript((own) => {
      const work = { layout: 1, stamp: "1-1", saved_at: "2026-01-01T00:00:00Z", question: "finish-time", with: {} };
      const scenario = { fasterby: 3, events: [{ name: "Evening ten", course: own }] };
      localStorage.setItem("fasterby:last", JSON.stringify({ ...work, scenario }));
    }, long(COUNT));
    await openQuestion(page, "finish-time");
    await tool(page, "Share").click();
    await expect(notice(page)).toContainText("The link is copied");
    const said = (await notice(page).textContent()) ?? "";
    expect(said).toMatch(/Of the course of “Evening ten” it carries [\d,]+ of 2,400 points\./);
    expect(said).toMatch(/The best even effort on them is (?:slower|faster) by /);
    expect((await page.evaluate(() => navigator.clipboard.readText())).length).toBeLessThanOrEqual(LONG_LINK);
    expect((await kept(page)).scenario.events[0].course.points).toHaveLength(COUNT);
  });

  inOwnWindow("to a course of few points carries all of them", async ({ page }) => {
    await openWithCourse(page, long(12));
    await tool(page, "Share").click();
    await expect(notice(page)).toContainText("The link is copied");
    await expect(notice(page)).not.toContainText("The link carries");
  });
});
