// @ts-check
/** A course made of a ride file or a route, and changed. */

import { expect, kept, openQuestion, test } from "./support/page.js";

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
const course = async (page) => (await kept(page))?.scenario.course;

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
