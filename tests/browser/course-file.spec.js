// @ts-check
/** A course made of a ride file or a route, changed, kept on the device, and written as a file. */

import { readFile } from "node:fs/promises";
import { course, openWithCourse } from "./support/courses.js";
import { test } from "./support/one-page.js";
import { expect, test as inOwnWindow, notice, openQuestion } from "./support/page.js";
import { expectNoSidewaysScroll } from "./support/widths.js";

/** 200 steps of 0.0005° of latitude, 111.18 m for a thousandth (series of the meridian arc, common practice). */
const ROUTE_M = 200 * 0.5 * 111.18;

/** A route over one hill, as a file. @param {number} count of points */
function route(count) {
  const points = Array.from({ length: count }, (_, at) => {
    const height = 300 + 40 * Math.sin((Math.PI * at) / (count - 1)) + (at % 2);
    return `<rtept lat="${47 + 0.0005 * at}" lon="8.1"><ele>${height.toFixed(1)}</ele></rtept>`;
  });
  const text = `<gpx version="1.1"><rte>${points.join("")}</rte></gpx>`;
  return { name: "route.gpx", mimeType: "application/gpx+xml", buffer: Buffer.from(text) };
}

/** @param {import("@playwright/test").Page} page */
async function openCourse(page) {
  await openQuestion(page, "finish-time");
  await page.getByRole("combobox", { name: "Kind of course" }).selectOption({ label: "your surveyed course" });
  return page.locator(".sheet");
}

/** @param {import("@playwright/test").Page} page */
async function lengthM(page) {
  const points = (await course(page))?.points ?? [];
  return points.length ? points[points.length - 1].distance_m : 0;
}

test("a route becomes the course; smoothing its heights changes the climb, and undo takes both back", async ({
  page,
}) => {
  const sheet = await openCourse(page);
  await sheet.locator('.course-file input[type="file"]').setInputFiles(route(201));
  await expect(page.locator(".notice")).toContainText("The course is now 6.9 miles long and climbs");
  await expect(sheet.locator(".course-file")).toContainText("route.gpx: the road climbs");
  await expect.poll(() => lengthM(page)).toBeCloseTo(ROUTE_M, -2);
  const before = await course(page);
  const smooth = sheet.getByRole("spinbutton", { name: "Heights averaged over, each way" });
  await smooth.fill("400");
  await smooth.press("Enter");
  await expect.poll(() => course(page)).not.toEqual(before);
  await page.locator(".notice").getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => course(page)).toEqual(before);
});

test("a course is cut, turned round, ridden there and back and in laps", async ({ page }) => {
  const sheet = await openCourse(page);
  await sheet.locator('.course-file input[type="file"]').setInputFiles(route(201));
  await expect.poll(() => lengthM(page)).toBeCloseTo(ROUTE_M, -2);
  const whole_m = await lengthM(page);
  await sheet.getByRole("button", { name: "There and back" }).click();
  await expect.poll(() => lengthM(page)).toBeGreaterThan(2 * whole_m);
  const both_m = await lengthM(page);
  await sheet.getByRole("button", { name: "ride them" }).click();
  await expect.poll(() => lengthM(page)).toBeCloseTo(2 * both_m, 0);
  const to = sheet.getByRole("spinbutton", { name: "End of the course" });
  await to.fill("5 km");
  await to.press("Enter");
  await sheet.getByRole("button", { name: "keep this part" }).click();
  await expect.poll(() => lengthM(page)).toBeCloseTo(5000, 0);
  const first = (await course(page)).points[0];
  await sheet.getByRole("button", { name: "Turn it round" }).click();
  await expect.poll(async () => (await course(page)).points.at(-1).elevation_m).toBeCloseTo(first.elevation_m, 1);
});

test("what is no course is refused, and the course stays", async ({ page }) => {
  const sheet = await openCourse(page);
  await expect.poll(() => course(page)).toMatchObject({ kind: "profile" });
  const before = await course(page);
  await sheet.locator('.course-file input[type="file"]').setInputFiles(route(2));
  await expect(sheet.locator(".opener .wrong")).toContainText("A course is from 100 m to 2,000 km long");
  await sheet.locator('.course-file input[type="file"]').setInputFiles({
    name: "ride.txt",
    mimeType: "text/plain",
    buffer: Buffer.from("nothing of the kind"),
  });
  await expect(sheet.locator(".opener .wrong")).toContainText("ride.txt was not read.");
  expect(await course(page)).toEqual(before);
});

/** A course as the page would have it: with a bend, and heights that smoothing would change. */
const BENDS = {
  kind: "profile",
  points: Array.from({ length: 41 }, (_, at) => ({
    distance_m: 250 * at,
    elevation_m: 60 + 12 * (at % 3),
    bearing_deg: (25 * at) % 360,
    ...(at % 5 === 2 && { radius_m: 12.5 }),
  })),
};
const LENGTH_M = 10_000;

/** @param {import("@playwright/test").Page} page @param {object} points */
const openWith = (page, points = BENDS) => openWithCourse(page, points);

/** What the page hands over. @param {import("@playwright/test").Page} page @param {import("@playwright/test").Locator} sheet @param {string} kind */
async function saved(page, sheet, kind) {
  const downloading = page.waitForEvent("download");
  await sheet.getByRole("button", { name: `Save as ${kind}` }).click();
  const download = await downloading;
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), "utf8") };
}

/** Leaves the page with another course than before. @param {import("@playwright/test").Locator} sheet */
const turnRound = (sheet) => sheet.getByRole("button", { name: "Turn it round" }).click();

for (const kind of ["GPX", "CSV"]) {
  test(`a course that is saved as ${kind} and opened again is the same`, async ({ page }) => {
    const sheet = await openWith(page);
    await sheet.getByRole("textbox", { name: "Name of the course" }).fill("Over the bends");
    const file = await saved(page, sheet, kind);
    expect(file.name).toBe(`over-the-bends-course.${kind.toLowerCase()}`);
    await turnRound(sheet);
    await expect.poll(async () => (await course(page)).points[1].elevation_m).not.toBe(BENDS.points[1].elevation_m);
    await sheet
      .locator('.course-file input[type="file"]')
      .setInputFiles({ name: file.name, mimeType: "text/plain", buffer: Buffer.from(file.text) });
    await expect.poll(async () => (await course(page)).points).toEqual(BENDS.points);
    await expect(sheet.locator(".course-file")).toContainText("nothing was smoothed");
    await expect(sheet.getByRole("spinbutton", { name: "Heights averaged over, each way" })).toBeHidden();
  });
}

test("the table that the page writes can be pasted as it is, in any units", async ({ page }) => {
  const sheet = await openWith(page);
  const { text } = await saved(page, sheet, "CSV");
  await turnRound(sheet);
  await sheet.getByRole("textbox", { name: "Points of the course" }).fill(text);
  await sheet.getByRole("button", { name: "Use these points" }).click();
  await expect.poll(async () => (await course(page)).points).toEqual(BENDS.points);
});

test("a simple course is saved too, and a track without headings says that it runs straight", async ({ page }) => {
  const sheet = await openWith(page, { kind: "simple", distance_m: 16_000, heading: "ignore" });
  const { name, text } = await saved(page, sheet, "GPX");
  expect(name).toBe("fasterby-course.gpx");
  expect(text).toContain("straight to the east");
  await expect(notice(page)).toContainText("its track runs straight to the east");
});

test("a course is kept by its name, used again and removed, and each step is taken back", async ({ page }) => {
  const sheet = await openWith(page);
  const keep = sheet.getByRole("button", { name: "Keep it on this device" });
  await keep.click();
  await expect(sheet.getByRole("alert").filter({ hasText: "Give it a name first." })).toBeVisible();
  await sheet.getByRole("textbox", { name: "Name of the course" }).fill("Over the bends");
  await keep.click();
  await expect(notice(page)).toContainText("Over the bends");
  await turnRound(sheet);
  await expect.poll(async () => (await course(page)).points).not.toEqual(BENDS.points);
  const turned = await course(page);
  // Kept over a reload, as are the rider's numbers.
  await page.reload();
  await page.getByRole("button", { name: "Your numbers" }).first().click();
  await sheet.locator("summary", { hasText: "Course" }).click();
  await sheet.getByRole("button", { name: "Use Over the bends" }).click();
  await expect.poll(async () => (await course(page)).points).toEqual(BENDS.points);
  await notice(page).getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => course(page)).toEqual(turned);
  const remove = sheet.getByRole("button", { name: "Remove Over the bends" });
  await remove.click();
  await expect(remove).toHaveCount(0);
  await notice(page).getByRole("button", { name: "Undo" }).click();
  await expect(remove).toBeVisible();
});

inOwnWindow("a name that is taken is asked about, and a damaged entry hides only itself", async ({ page }) => {
  await page.addInitScript(() => {
    const work = { layout: 1, stamp: "2-2", saved_at: "2026-01-01T00:00:00Z", question: "", with: {} };
    const course = { kind: "simple", distance_m: 5000 };
    localStorage.setItem("fasterby:course:Mine", JSON.stringify({ ...work, scenario: { course } }));
    localStorage.setItem("fasterby:course:Cut", '{"layout":1,"scen');
    localStorage.setItem("fasterby:course:Odd", JSON.stringify({ ...work, scenario: { course: { kind: "square" } } }));
  });
  const sheet = await openWith(page);
  await expect(sheet.locator(".saved li")).toHaveCount(2);
  const before = await course(page);
  await sheet.getByRole("button", { name: "Use Odd" }).click();
  await expect(sheet.getByRole("alert").filter({ hasText: "“Odd” cannot be opened" })).toBeVisible();
  expect(await course(page)).toEqual(before);
  await sheet.getByRole("textbox", { name: "Name of the course" }).fill("Mine");
  await sheet.getByRole("button", { name: "Keep it on this device" }).click();
  await expect(sheet.getByRole("alert").filter({ hasText: "There is already a “Mine”" })).toBeVisible();
  await sheet.getByRole("button", { name: "Replace it" }).click();
  await expect(notice(page)).toContainText("Mine");
  await turnRound(sheet);
  await expect.poll(async () => (await course(page)).points).not.toEqual(BENDS.points);
  await sheet.getByRole("button", { name: "Use Mine" }).click();
  await expect.poll(async () => (await course(page)).points).toEqual(BENDS.points);
});

inOwnWindow("a device that keeps nothing says so, and the course is as it was", async ({ page }) => {
  const sheet = await openWith(page);
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await sheet.getByRole("textbox", { name: "Name of the course" }).fill("Mine");
  await sheet.getByRole("button", { name: "Keep it on this device" }).click();
  await expect(sheet.getByRole("alert").filter({ hasText: "its storage is full" })).toBeVisible();
});

test("a part is chosen on the chart by keys; its numbers and its climb follow, and undo takes the cut back", async ({
  page,
}) => {
  const sheet = await openWith(page);
  const chart = sheet.getByRole("group", { name: "Height along the course" });
  await expect(chart).toBeVisible();
  const from = sheet.getByRole("slider", { name: "Beginning of the course" });
  const to = sheet.getByRole("slider", { name: "End of the course" });
  const reading = sheet.locator(".course-edits .reading");
  const whole = await reading.textContent();
  await from.focus();
  for (let press = 0; press < 2; press += 1) await page.keyboard.press("Shift+ArrowRight");
  await to.focus();
  await page.keyboard.press("Shift+ArrowLeft");
  await expect(reading).not.toHaveText(whole ?? "");
  await expect(reading).toContainText("it climbs");
  const begins = sheet.getByRole("spinbutton", { name: "Beginning of the course" });
  await expect(begins).toHaveValue(/^2\b/);
  // A number that is typed moves its ring.
  await begins.fill("3 miles");
  await begins.press("Enter");
  await expect(from).toHaveAttribute("aria-valuenow", /^3/);
  // Beyond the other end it is no part, and the course stays.
  await begins.fill("90 miles");
  await begins.press("Enter");
  await sheet.getByRole("button", { name: "keep this part" }).click();
  await expect(sheet.locator(".opener .wrong")).toContainText("A part of the course is at least");
  await begins.fill("3 miles");
  await begins.press("Enter");
  await sheet.getByRole("button", { name: "keep this part" }).click();
  // From 3 miles to a mile before the end, which snaps to tenths of a mile.
  await expect.poll(() => lengthM(page)).toBeCloseTo(5.2 * 1609.344 - 3 * 1609.344, -1);
  await notice(page).getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => lengthM(page)).toBe(LENGTH_M);
});

inOwnWindow.describe("on a phone", () => {
  inOwnWindow.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  inOwnWindow(
    "a part is chosen by finger, every control is large enough, and nothing scrolls sideways",
    async ({ page }) => {
      const sheet = await openWith(page);
      const from = sheet.getByRole("slider", { name: "Beginning of the course" });
      await from.scrollIntoViewIfNeeded();
      const box = await from.locator(".ring").boundingBox();
      if (!box) throw new Error("The ring is not shown.");
      const session = await page.context().newCDPSession(page);
      const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      /** @param {"touchStart" | "touchMove" | "touchEnd"} type @param {{ x: number, y: number }[]} touchPoints */
      const touch = (type, touchPoints) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
      await touch("touchStart", [at]);
      for (const across of [40, 80]) await touch("touchMove", [{ x: at.x + across, y: at.y }]);
      await touch("touchEnd", []);
      const begins = sheet.getByRole("spinbutton", { name: "Beginning of the course" });
      await expect(begins).not.toHaveValue(/^0([.]0*)?$/);
      const begins_m = Number(await from.getAttribute("aria-valuenow")) * 1609.344;
      await sheet.getByRole("button", { name: "keep this part" }).tap();
      await expect.poll(() => lengthM(page)).toBeCloseTo(LENGTH_M - begins_m, 0);
      const FINGER_PX = 44;
      await sheet.getByRole("textbox", { name: "Name of the course" }).fill("Mine");
      await sheet.getByRole("button", { name: "Keep it on this device" }).tap();
      for (const button of await sheet.locator(".course-file button:visible, .course-edits button:visible").all())
        expect((await button.boundingBox())?.height, (await button.textContent()) ?? "").toBeGreaterThanOrEqual(
          FINGER_PX,
        );
      await expectNoSidewaysScroll(page, [320], "the course");
    },
  );
});
