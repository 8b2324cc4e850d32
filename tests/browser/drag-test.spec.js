// @ts-check
/** A drag test: planned, typed, or read from a ride file, and what is kept of it. */

import { loopRide } from "./support/loop-ride.js";
import { test } from "./support/one-page.js";
import {
  drawn,
  expect,
  figure,
  handle,
  test as inOwnWindow,
  kept,
  keptOnDevice,
  notice,
  number,
  open,
  openQuestion,
  started,
  tool,
  type,
} from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** Two positions, 0.010 m² apart, by turns. */
const AREAS = [0.245, 0.235, 0.235, 0.245, 0.245, 0.235, 0.235, 0.245];
/** What eight made laps tell of a drag area, m²: their noise is small, and a second is the finest that laps are cut at. */
const AREA_TOLERANCE = 0.003;
const RIDE = { name: "loop.csv", mimeType: "text/csv", buffer: Buffer.from(loopRide(AREAS)) };

/** @param {Page} page @param {typeof RIDE} [file] */
async function openRide(page, file = RIDE) {
  await page.locator('.opener input[type="file"]').setInputFiles(file);
}

/** @param {Page} page */
async function openTest(page) {
  await openQuestion(page, "drag-test");
  await openRide(page);
  await expect(page.locator(".laps > li")).toHaveCount(AREAS.length);
}

/** Every lap in its position. @param {Page} page */
async function assign(page) {
  await page.getByRole("combobox", { name: "Position B" }).selectOption({ index: 1 });
  await page.getByRole("button", { name: "Set the positions" }).click();
}

/** The positions among "Your numbers". @param {Page} page */
async function openPositions(page) {
  await page.locator(".known > button").click();
  await page.locator("#sheet summary").filter({ hasText: "Positions" }).first().click();
}

test("before a test it says how many runs tell, and the ring along the curve changes that", async ({ page }) => {
  await openQuestion(page, "drag-test");
  await expect(figure(page)).toHaveText("10");
  await type(page, "Difference between the positions", "1");
  await expect(figure(page)).not.toHaveText("10");
  await type(page, "Difference between the positions", "2");
  // The ring stands where the answer has put it.
  await expect(figure(page)).toHaveText("10");
  await handle(page, "Runs in each position").press("ArrowRight");
  await expect(figure(page)).toHaveText("11");
  await expect(page.getByText("Before you ride.").first()).toBeVisible();
});

test("typed runs give a drag area, are left out, removed and brought back", async ({ page }) => {
  await openQuestion(page, "drag-test");
  for (let run = 0; run < 3; run += 1) await page.getByRole("button", { name: "Add a run" }).click();
  await expect(page.locator(".claim")).toContainText("the same drag area");
  const before = await figure(page).innerText();
  await number(page, "Run 2: power").fill("300");
  await number(page, "Run 2: power").press("Tab");
  await expect(figure(page)).not.toHaveText(before);
  await page
    .getByRole("listitem")
    .filter({ hasText: "2:" })
    .getByRole("checkbox", { name: /counts$/ })
    .uncheck();
  await expect(page.locator('[data-fold="table"]')).toBeVisible();
  await page.getByRole("button", { name: "Remove run 2" }).click();
  await expect(notice(page)).toContainText("The run is removed.");
  await expect(page.getByRole("button", { name: /^Remove run/ })).toHaveCount(2);
  await tool(page, "Undo").click();
  await expect(page.getByRole("button", { name: /^Remove run/ })).toHaveCount(3);
});

test("a run that lies off the others is named as the list of runs names it", async ({ page }) => {
  await openQuestion(page, "drag-test");
  for (let run = 1; run <= 8; run += 1) {
    await page.getByRole("button", { name: "Add a run" }).click();
    await number(page, `Run ${run}: power`).fill(run === 6 ? "280" : String(229 + (run % 3)));
    await number(page, `Run ${run}: power`).press("Tab");
  }
  await expect(page.locator(".answer .takes li").filter({ hasText: "Run 6: This one lies" })).toBeVisible();
});

test("coast-downs give a drag area without a power meter: the longer they take, the less it is", async ({ page }) => {
  await openQuestion(page, "drag-test");
  const add = page.getByRole("button", { name: "Add a coast-down" });
  for (const seconds of ["26.0", "26.4", "25.8"]) {
    await add.click();
    const took = page.getByRole("spinbutton", { name: /^Coast-down \d: seconds/ }).last();
    await took.fill(seconds);
    await took.press("Tab");
  }
  await expect(page.locator(".ask")).toContainText("3 coast-downs");
  for (const position of await page.getByRole("combobox", { name: /^Coast-down \d: position/ }).all())
    await position.selectOption({ index: 0 });
  // A difference between two positions stands there until the last row has its position.
  const area = async () => Number((await figure(page).innerText()).replace(/[^\d.]/g, ""));
  await expect.poll(area).toBeGreaterThan(0.1);
  const before = await area();
  for (const took of await page.getByRole("spinbutton", { name: /^Coast-down \d: seconds/ }).all()) {
    await took.fill(String(Number(await took.inputValue()) + 3));
    await took.press("Tab");
  }
  await expect.poll(area).toBeLessThan(before);
  await number(page, "Coast-down 2: speed at its end").fill("60 km/h");
  await number(page, "Coast-down 2: speed at its end").press("Tab");
  await expect(page.locator(".wrong:visible").first()).toBeVisible();
  await page.getByRole("button", { name: "Remove coast-down 2" }).click();
  await expect(notice(page)).toContainText("The coast-down is removed.");
  await expect(page.locator(".ask")).toContainText("2 coast-downs");
});

test("a ride file gives laps, laps get positions, and the difference is told and kept with its test", async ({
  page,
}) => {
  await openTest(page);
  await expect(page.getByText("Your drag area in", { exact: false }).first()).toBeVisible();
  await assign(page);
  await expect(page.locator(".claim")).toContainText("has less drag than");
  const difference = Number(await figure(page).innerText());
  expect(Math.abs(difference - 0.01)).toBeLessThan(AREA_TOLERANCE);

  await page.getByRole("button", { name: "lap 3", exact: true }).click();
  await handle(page, "Where the lap begins").press("ArrowRight");
  await expect(handle(page, "Where the lap ends")).toBeVisible();
  await number(page, "Lap 3: begins at").fill("0:01");
  await expect(page.locator(".laps .wrong:visible")).toContainText("lies before the end of lap");
  await tool(page, "Undo").click();
  await expect(page.locator(".laps .wrong:visible")).toHaveCount(0);
  await page.getByRole("combobox", { name: "Lap 3: whether it counts" }).selectOption("passed");
  await expect(page.locator(".sentence")).toContainText(`${AREAS.length} laps`);

  await page.getByRole("button", { name: "Keep this in my positions" }).click();
  await expect(notice(page)).toContainText("Every question now uses the drag areas of this test.");
  await openPositions(page);
  await expect(
    page
      .locator("#sheet")
      .getByText(/\d{4}-\d\d-\d\d, \d laps: 0\.2\d\d\sm²/)
      .first(),
  ).toBeVisible();
});

test("what a film shows becomes a fade of the position by one press, and undo takes it back", async ({ page }) => {
  await openTest(page);
  await assign(page);
  const film = page.locator('[data-fold="film"]');
  await film.locator("summary").click();
  await film.getByRole("button", { name: "Add a position" }).click();
  const last = film.getByRole("spinbutton", { name: /head.*last third/i }).first();
  await last.fill("60");
  await last.press("Enter");
  await film
    .getByRole("button", { name: /fade by this/ })
    .first()
    .click();
  await expect(notice(page)).toContainText("now uses this fade");
  const positions = async () => (await kept(page))?.scenario.positions ?? [{}];
  await expect.poll(async () => (await positions())[0].fade?.tired_cda_m2.value).toBeGreaterThan(0.24);
  await notice(page).getByRole("button", { name: "Undo" }).click();
  await expect.poll(async () => "fade" in (await positions())[0]).toBe(false);
});

test("an address without its file says so, and the file brings the answer back", async ({ page }) => {
  await openTest(page);
  await assign(page);
  await expect(page.locator(".claim")).toContainText("has less drag than");
  const answer = await figure(page).innerText();
  await expect.poll(async () => JSON.stringify(await kept(page))).toContain('"position":1');
  await page.reload();
  await started(page);
  await expect(page.getByText("This ride’s file is not open here", { exact: false })).toBeVisible();
  await openRide(page);
  await expect(figure(page)).toHaveText(answer);
});

test("a ride file stays on the device only where that is asked for, and is deleted by one button", async ({ page }) => {
  await openTest(page);
  await page.getByRole("checkbox", { name: "keep ride files on this device" }).check();
  await expect(page.getByRole("button", { name: /^Delete 1 kept file/ })).toBeVisible();
  await expect.poll(async () => JSON.stringify(await kept(page))).toContain('"rides":["');
  await page.reload();
  await expect(page.locator(".laps > li")).toHaveCount(AREAS.length);
  await page.getByRole("button", { name: /^Delete 1 kept file/ }).click();
  await expect(notice(page)).toContainText("The kept files are deleted.");
  expect(await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))).toEqual([
    "fasterby-recordings",
  ]);
  await page.reload();
  await expect(page.getByText("This ride’s file is not open here", { exact: false })).toBeVisible();
});

test("what is no ride is refused with the reason, and nothing else changes", async ({ page }) => {
  await openTest(page);
  const before = await figure(page).innerText();
  await openRide(page, { name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("a letter home") });
  await expect(page.locator(".opener .wrong")).toContainText("notes.txt was not read.");
  await expect(figure(page)).toHaveText(before);
});

test("a dropped file is opened, from anywhere on the page", async ({ page }) => {
  await openQuestion(page, "drag-test");
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], "dropped.csv"));
    for (const name of ["dragover", "drop"])
      document
        .querySelector("h1")
        ?.dispatchEvent(new DragEvent(name, { dataTransfer, bubbles: true, cancelable: true }));
  }, loopRide(AREAS));
  await expect(page.locator(".laps > li")).toHaveCount(AREAS.length);
});

test("removing a position removes what was ridden in it", async ({ page }) => {
  await openTest(page);
  await assign(page);
  await openPositions(page);
  const card = page.locator("#sheet details.position").nth(1);
  await card.locator("summary").first().click();
  await card.getByRole("button", { name: "Remove", exact: true }).last().click();
  await page.keyboard.press("Escape");
  await expect(page.locator(".laps > li")).toHaveCount(AREAS.length / 2);
});

inOwnWindow.describe("as the installed page", () => {
  inOwnWindow.use({ offlineCopy: true });

  inOwnWindow("a shared ride file is opened, and asks nothing of the host", async ({ page }) => {
    await open(page, "#power-or-drag");
    await keptOnDevice(page);
    // As the device hands it over: a page's own form may send nothing anywhere.
    await page.evaluate(async (text) => {
      const body = new FormData();
      body.append("ride", new File([text], "shared.csv"));
      await fetch("./shared", { method: "POST", body, redirect: "manual" });
    }, loopRide(AREAS));
    await openQuestion(page, "drag-test");
    await expect(page.locator(".laps > li")).toHaveCount(AREAS.length);
    await drawn(page);
    expect(await page.evaluate(() => caches.has("fasterby-shared"))).toBe(false);
  });
});
