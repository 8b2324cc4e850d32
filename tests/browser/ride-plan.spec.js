// @ts-check
/** A plan of effort: its powers are the core's, its charts are read together, and it never asks for speed downhill. */

import { test } from "./support/one-page.js";
import {
  answerText,
  expect,
  found,
  test as inOwnWindow,
  kept,
  number,
  open,
  openQuestion,
  type,
} from "./support/page.js";

/** A climb, a descent and level road. */
const HILLY = {
  kind: "profile",
  points: [
    { distance_m: 0, elevation_m: 50, bearing_deg: 20 },
    { distance_m: 4000, elevation_m: 60, bearing_deg: 40 },
    { distance_m: 9000, elevation_m: 230, bearing_deg: 90 },
    { distance_m: 13000, elevation_m: 90, bearing_deg: 180 },
    { distance_m: 20000, elevation_m: 80, bearing_deg: 200 },
  ],
};

/** @param {import("@playwright/test").Page} page @param {object} [own] */
async function openPlan(page, own = {}) {
  // What a simple course has and a profile has not is taken out of the defaults.
  const gone = Object.fromEntries(
    ["distance_m", "grade", "bearing_deg", "out_and_back", "turn_radius_m"].map((name) => [name, null]),
  );
  const link = { s: { course: { ...gone, ...HILLY } }, w: own, v: 3 };
  await open(page, `#ride-plan/1j.${Buffer.from(JSON.stringify(link)).toString("base64url")}`);
  await expect(page.locator(".verdict .amount b")).toHaveText(/\d:\d\d/);
  // Only what a rider changed is kept, and read here.
  await type(page, "Air temperature", "20");
}

/** What the core says to what the page holds. @param {import("@playwright/test").Page} page */
async function planOf(page) {
  await expect.poll(async () => (await kept(page))?.scenario.conditions.temperature_c.value).toBe(20);
  const { scenario, with: own } = await kept(page);
  return page.evaluate((request) => /** @type {any} */ (globalThis).fasterby.ask("ride-plan", request), {
    scenario,
    with: own["ride-plan"],
  });
}

/** @param {import("@playwright/test").Page} page */
const cues = (page) => page.getByRole("table", { name: /^The plan/ }).first();

/** @param {import("@playwright/test").Page} page @param {string} id */
async function openFold(page, id) {
  const fold = page.locator(`[data-fold="${id}"]`);
  await fold.locator("summary").click();
  return fold;
}

test("the table and the strip hold the core's powers; where the road falls a power is a limit", async ({ page }) => {
  await openPlan(page);
  const { simple } = await planOf(page);
  const falls = simple.cues.map(({ landmark }) => landmark === "descent");
  expect(falls).toContain(true);
  const powers = simple.cues.map(({ power_w }, at) => `${falls[at] ? "up to " : ""}${power_w}`);
  await expect(cues(page).locator("tbody td:last-child")).toHaveText(powers);
  const strip = await openFold(page, "strip");
  await expect(strip.locator("li b")).toHaveText(powers);
  await page.emulateMedia({ media: "print" });
  await expect(strip.locator("ol")).toBeVisible();
  await expect(cues(page)).toBeVisible();
});

test("no speed is shown where the road falls, and the page says that a plan is about effort", async ({ page }) => {
  await openPlan(page);
  await expect(page.getByText("A plan is about effort, never about speed.")).toBeVisible();
  const speed = page.getByRole("group", { name: "Speed of the fastest plan along the ride" });
  const drawn = await speed.locator("path.curve").getAttribute("d");
  expect(drawn?.match(/M/g)).toHaveLength(2);
  await expect(page.getByText("Where the road falls more than 2.0")).toBeVisible();
});

test("reading one chart reads all of them at the same place, by keys and by the mouse", async ({ page }) => {
  await openPlan(page);
  const readings = page.getByRole("region", { name: "Charts" }).locator("figcaption");
  await page.getByRole("slider", { name: "Read the power along the ride" }).focus();
  await page.keyboard.press("ArrowRight");
  const place = (await readings.first().locator("b").first().textContent()) ?? "";
  expect(place).toMatch(/miles/);
  const count = await readings.count();
  expect(count).toBe(5);
  for (let at = 0; at < count; at += 1) await expect(readings.nth(at).locator("b").first()).toHaveText(place);
  await page.getByRole("slider", { name: "Read the power along the ride" }).blur();
  await expect(readings.first()).toContainText("The plan asks for");
  await expect(readings.nth(1)).toContainText("On the plan W′ falls to");
});

test("what the plan may ask changes it, and what leaves no plan is said at its number", async ({ page }) => {
  await openPlan(page);
  const before = await answerText(page);
  const limits = await openFold(page, "limits");
  await limits.getByRole("combobox", { name: "How W′ comes back" }).selectOption({ label: "not at all" });
  await expect.poll(() => answerText(page)).not.toBe(before);
  await expect.poll(async () => (await kept(page))?.with["ride-plan"].recovery).toBe("none");
  const { simple } = await planOf(page);
  await expect(cues(page).locator("tbody td:last-child")).toHaveCount(simple.cues.length);
  const least = number(page, "Least power of the plan");
  await least.fill("400");
  await least.press("Enter");
  await expect(limits.locator(".wrong:visible")).toContainText("even effort");
});

test("a plan for riders who are not quite as believed says what it gains and costs", async ({ page }) => {
  await openPlan(page, { targets: 4 });
  const { robust, simple } = await planOf(page);
  const careful = await openFold(page, "careful");
  const same = JSON.stringify(robust.cues) === JSON.stringify(simple.cues);
  await expect(careful.locator("summary")).toContainText(same ? "The same plan" : "on average");
  await expect(careful).toContainText("take");
  await expect(page.getByRole("button", { name: "Test your critical power before you trust a plan" })).toBeVisible();
});

inOwnWindow("opening it asks for one plan, and a change for one more", async ({ page }) => {
  await page.addInitScript(() => {
    const asked = /** @type {any} */ (globalThis).asked ?? [];
    Object.assign(globalThis, { asked });
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (/** @type {any[]} */ ...message) {
      if (message[0]?.question === "ride-plan") asked.push(message[0].id);
      return Reflect.apply(post, this, message);
    };
  });
  const asked = () => page.evaluate(() => /** @type {any} */ (globalThis).asked.length);
  await openQuestion(page, "ride-plan");
  expect(await asked()).toBe(1);
  await page.getByRole("combobox", { name: "Kind of course" }).selectOption({ label: "steady hill" });
  await expect.poll(asked).toBe(2);
  await found(page);
  expect(await asked()).toBe(2);
});

test("sitting up on steep climbs is asked for in one box, and stands where it begins and ends", async ({ page }) => {
  await openPlan(page);
  const fold = await openFold(page, "sit-up");
  const grade = fold.getByRole("spinbutton", { name: "Grade from which you sit up" });
  await expect(grade).toBeHidden();
  await fold.getByRole("checkbox", { name: "I sit up on steep climbs" }).check();
  await expect(grade).toHaveValue("6");
  await expect(page.locator(".also", { hasText: "No climb here is as steep" })).toBeVisible();

  // The climb has 3.4 %.
  await grade.fill("3");
  await grade.press("Enter");
  await expect(page.locator(".also", { hasText: "Sitting up on one climb" })).toBeVisible();
  // What is kept on the device follows what is shown.
  const climbs = async () => (await planOf(page)).sit_up?.climbs;
  await expect.poll(climbs).toEqual([{ from_m: 4000, to_m: 9000 }]);
  const { sit_up } = await planOf(page);
  const said = sit_up.faster_by_s.value > 0 ? "faster by" : "slower by";
  await expect(page.locator(".also", { hasText: `Sitting up on one climb, you are ${said}` })).toBeVisible();
  await expect(cues(page).locator("tbody td", { hasText: "sit up until 5.6 mi" })).toHaveCount(1);
  await expect((await openFold(page, "strip")).locator("li", { hasText: "sit up until 5.6 mi" })).toHaveCount(1);

  await page.reload();
  await expect(page.locator(".also", { hasText: "Sitting up on one climb" })).toBeVisible();
});

test("a link with nonsense for sitting up says so and leaves the rider low", async ({ page }) => {
  await openPlan(page);
  for (const nonsense of [5, [], "up", { from_grade: "steep" }, { cda_m2: {} }, { from_grade: 0.9 }]) {
    const link = { w: { sit_up: nonsense }, v: 3 };
    await page.goto("about:blank");
    await open(page, `#ride-plan/1j.${Buffer.from(JSON.stringify(link)).toString("base64url")}`);
    await expect(page.getByText(/^This link cannot be used/)).toBeVisible();
    await expect(page.locator(".verdict .amount b")).toHaveText(/\d:\d\d/);
    const fold = await openFold(page, "sit-up");
    await expect(fold.getByRole("checkbox", { name: "I sit up on steep climbs" })).not.toBeChecked();
  }
});
