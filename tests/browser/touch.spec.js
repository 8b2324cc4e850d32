// @ts-check
/** By finger, on a phone with a slow processor: whatever can be dragged follows to both of its ends, nothing moves under the finger, and the page scrolls beside it. */

import { loopRide } from "./support/loop-ride.js";
import { complaint, expect, figure, inMotion, number, openQuestion, test } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Locator, Page } from "@playwright/test" */

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, contextOptions: inMotion });

/** As a phone of some years ago. */
const TIMES_SLOWER = 4;
/** A browser scrolls by whole pixels of the screen. */
const STILL_PX = 1;
/** A ring lies under the finger to within half a step of its value. */
const UNDER_FINGER_PX = 18;
/** Half an hour a week is a wide step where few hours are shown. */
const COARSE_PX = { "Your hours a week": 50 };
/** A finger goes on a little beyond an end, and no further than the edge of the glass. */
const BEYOND_PX = 12;
/** One within the chart and one to its end: the ring and the chart are looked at after each. */
const MOVES = 2;
/** An end counts as reached within this share of the range: a step of a minute, or of a watt, may be as coarse. */
const END_SHARE = 0.03;
/** The thumb of the browser's own slider. */
const THUMB_PX = 16;
/** What a finger needs (WCAG 2.2, success criterion 2.5.5). */
const FINGER_PX = 44;
/** While the processor is slowed down it is never idle, so a finger rests no longer than it must. */
const LOOK_AGAIN_MS = [10];
/** A page whose height stays for so long has drawn what a change altered. */
const QUIET_MS = 300;
const STORY = "start-here";
/** Several rings, each dragged to both ends at a quarter of the speed. */
const PATIENCE_MS = 180_000;

/** @typedef {{ x: number, y: number }} At */

/** The processor is slow while the finger is down: what comes before and after is not tried here. @param {Page} page @param {number} timesSlower */
async function finger(page, timesSlower) {
  // A finger before this one may have scrolled the page, which ends its pointer.
  await page.evaluate(() => Object.assign(globalThis, { cancelled: 0 }));
  const session = await page.context().newCDPSession(page);
  const slow = (/** @type {number} */ rate) => session.send("Emulation.setCPUThrottlingRate", { rate });
  /** @type {At} */
  let at = { x: 0, y: 0 };
  const send = (/** @type {"touchStart" | "touchMove" | "touchEnd"} */ type) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [at] });
  return {
    /** @param {At} to */
    async down(to) {
      at = to;
      await slow(timesSlower);
      await send("touchStart");
    },
    /** In a few moves, each of which is painted. @param {At} to @param {(at: At) => Promise<void>} [look] */
    async move(to, look) {
      const from = at;
      for (let n = 1; n <= MOVES; n += 1) {
        at = { x: from.x + ((to.x - from.x) * n) / MOVES, y: from.y + ((to.y - from.y) * n) / MOVES };
        await send("touchMove");
        await painted(page);
        await look?.(at);
      }
    },
    async up() {
      await send("touchEnd");
      await slow(1);
    },
  };
}

/** @param {Page} page */
const painted = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve) => {
        requestAnimationFrame(() => setTimeout(resolve));
      }),
  );

/** Scrolls what is to be dragged to the middle of the window, as a hand would, once what the last change still draws out of sight is drawn. @param {Locator} it */
const toMiddle = (it) =>
  it.evaluate(async (element, quietMs) => {
    for (let before = NaN, since = performance.now(); performance.now() - since < quietMs; ) {
      const height = document.documentElement.scrollHeight;
      if (height !== before) [before, since] = [height, performance.now()];
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    dispatchEvent(new WheelEvent("wheel"));
    const { top, bottom } = element.getBoundingClientRect();
    scrollBy({ top: (top + bottom) / 2 - innerHeight / 2, behavior: "instant" });
  }, QUIET_MS);

/** A ring as it is seen, and what its chart stands at. @param {Locator} ring */
const seen = (ring) =>
  ring.evaluate((element) => {
    const middle = (/** @type {DOMRect} */ { left, top, width, height }) => ({
      x: left + width / 2,
      y: top + height / 2,
    });
    const { left, top, right, bottom } = /** @type {Element} */ (element.closest("svg")).getBoundingClientRect();
    const value = (/** @type {string} */ name) => Number(element.getAttribute(`aria-value${name}`));
    return {
      ...middle(/** @type {Element} */ (element.querySelector(".ring")).getBoundingClientRect()),
      now: value("now"),
      min: value("min"),
      max: value("max"),
      chart: { left, top, right, bottom },
    };
  });

/** How far a ring is from the finger; at an end of its range it stays behind. @param {{ now: number, min: number, max: number, x: number }} ring @param {At} finger */
function fromFinger({ now, min, max, x }, finger) {
  const nearEnd = END_SHARE * (max - min);
  return now <= min + nearEnd || now >= max - nearEnd ? 0 : Math.abs(x - finger.x);
}

/** Each is marked, as names may be shared. @param {Page} page */
async function rings(page) {
  const all = page.getByRole("main").locator(".handle[role=slider]:visible");
  const names = await all.evaluateAll((elements) =>
    elements.map((element, index) => {
      element.setAttribute("data-ring", String(index));
      return element.getAttribute("aria-label") ?? "";
    }),
  );
  return names.map((name, index) => ({ name, ring: page.locator(`[data-ring="${index}"]`) }));
}

/** @param {Page} page @param {string} id @param {number} [timesSlower] */
async function openToTouch(page, id, timesSlower = TIMES_SLOWER) {
  await page.addInitScript(() => {
    addEventListener(
      "pointercancel",
      () => {
        /** @type {any} */ (globalThis).cancelled += 1;
      },
      { capture: true },
    );
  });
  await openQuestion(page, id);
  return finger(page, timesSlower);
}

/** @param {Page} page */
const cancelled = (page) => page.evaluate(() => /** @type {any} */ (globalThis).cancelled);

/** @param {Page} page @param {string} id */
async function everyRingFollows(page, id) {
  const found = await rings(page);
  const undo = page.locator(".bar").getByRole("button", { name: "Undo" });
  const asked = questions.find((question) => question.id === id);
  for (const name of asked?.handles ?? []) expect(found.some((one) => one.name.startsWith(name))).toBe(true);
  expect(found.length > 0).toBe(!asked?.still);
  if (asked?.still) return;

  for (const [place, { ring, name }] of found.entries()) {
    await test.step(name, async () => {
      // How slow an answer is depends on the question, not on the ring: one tells what a slow processor does to all of them.
      const touch = await finger(page, place === 0 ? TIMES_SLOWER : 1);
      await toMiddle(ring);
      const before = await seen(ring);
      const { chart } = before;
      await touch.down(before);
      for (const end of /** @type {const} */ (["min", "max"])) {
        const x = end === "min" ? Math.max(1, chart.left - BEYOND_PX) : Math.min(389, chart.right + BEYOND_PX);
        await touch.move({ x, y: before.y }, async (at) => {
          const now = await seen(ring);
          expect(
            Math.hypot(now.chart.left - chart.left, now.chart.top - chart.top),
            "the chart moved under the finger",
          ).toBeLessThanOrEqual(STILL_PX);
          const most_px = Reflect.get(COARSE_PX, name) ?? UNDER_FINGER_PX;
          if (fromFinger(now, at) <= most_px) return;
          // A slow processor paints a move some frames later.
          await expect
            .poll(async () => fromFinger(await seen(ring), at), {
              message: `the ring, now at ${now.now} of ${now.min} to ${now.max}, is under the finger at ${at.x} px`,
              intervals: LOOK_AGAIN_MS,
            })
            .toBeLessThanOrEqual(most_px);
        });
        const there = await seen(ring);
        const range = there.max - there.min;
        expect(
          Math.abs(there.now - there[end]) / range,
          `${there.now} is not the ${end} of ${there.min} to ${there.max}`,
        ).toBeLessThan(END_SHARE);
      }
      await touch.up();
      expect(await cancelled(page)).toBe(0);
      // At its end it may leave the next ring nothing to show.
      if (await undo.isDisabled()) return;
      await undo.tap();
      await expect.poll(async () => (await seen(ring)).now).toBe(before.now);
    });
  }

  const [{ ring }] = found;
  const touch = await finger(page, TIMES_SLOWER);
  await toMiddle(ring);
  const { x, y, now, chart } = await seen(ring);
  const scroll = () => page.evaluate(() => scrollY);
  const from = await scroll();
  const beside = x > (chart.left + chart.right) / 2 ? chart.left + 80 : chart.right - 40;
  await touch.down({ x: beside, y });
  await touch.move({ x: beside, y: y - 150 });
  await touch.up();
  await expect.poll(scroll).toBeGreaterThan(from + 50);
  expect((await seen(ring)).now).toBe(now);
}

/** Numbers move as fast as they are painted, at any speed: slowing all of them down takes a minute. @param {Page} page */
async function everyNumberFollows(page) {
  const touch = await finger(page, 1);
  const fields = page.locator(".sentence").getByRole("spinbutton");
  expect(await fields.count()).toBeGreaterThan(0);
  for (const field of await fields.all()) {
    const chip = field.locator("xpath=..");
    await toMiddle(chip);
    const box = async () => (await chip.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    const start = await box();
    const from = { x: start.x + start.width / 2, y: start.y + start.height / 2 };
    const value = async () => Number((await field.getAttribute("aria-valuenow")) ?? NaN);
    const before = await value();
    const most = Number(await field.getAttribute("aria-valuemax"));
    await touch.down(from);
    for (const x of [5, 385]) {
      await touch.move({ x, y: from.y }, async () => {
        const now = await box();
        expect(Math.hypot(now.x - start.x, now.y - start.y), "the number moved under the finger").toBeLessThanOrEqual(
          STILL_PX,
        );
      });
      if (x > from.x + 20 && before < most) expect(await value()).toBeGreaterThan(before);
    }
    await touch.up();
    expect(await cancelled(page)).toBe(0);
    await expect(complaint(page)).toHaveCount(0);
  }
  const last = page.locator(".sentence .num:visible").last();
  await toMiddle(last);
  const scroll = () => page.evaluate(() => scrollY);
  const from = await scroll();
  const box = await last.boundingBox();
  if (!box) throw new Error("No number is in sight.");
  await touch.down({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
  await touch.move({ x: box.x + box.width / 2, y: box.y - 200 });
  await touch.up();
  await expect.poll(scroll).toBeGreaterThan(from + 50);
}

for (const id of [...questions.map((question) => question.id), STORY]) {
  test(`${id}: rings and numbers follow a finger`, async ({ page }) => {
    test.setTimeout(PATIENCE_MS);
    await openToTouch(page, id);
    await test.step("every ring to both ends while its chart stands still, and the page scrolls beside it", () =>
      everyRingFollows(page, id));
    await test.step("each number in a sentence sideways, and stays under it; up and down scrolls the page", () =>
      everyNumberFollows(page));
  });
}

test("the ends of a recorded lap follow a finger, while the ride stands still", async ({ page }) => {
  test.setTimeout(PATIENCE_MS);
  const touch = await openToTouch(page, "drag-test");
  const buffer = Buffer.from(loopRide([0.25, 0.25, 0.25, 0.25]));
  await page.locator('.opener input[type="file"]').setInputFiles({ name: "ride.csv", mimeType: "text/csv", buffer });
  await page.getByRole("button", { name: "lap 2", exact: true }).tap();
  for (const [name, way] of /** @type {const} */ ([
    ["Where the lap begins", 1],
    ["Where the lap ends", -1],
  ])) {
    const ring = page.getByRole("main").getByRole("slider", { name });
    await toMiddle(ring);
    const before = await seen(ring);
    await touch.down(before);
    const to = { x: before.x + way * 20, y: before.y };
    await touch.move(to, async () => {
      const { chart } = await seen(ring);
      const moved_px = Math.hypot(chart.left - before.chart.left, chart.top - before.chart.top);
      expect(moved_px, "the chart moved under the finger").toBeLessThanOrEqual(STILL_PX);
    });
    await expect
      .poll(async () => Math.abs((await seen(ring)).x - to.x), { intervals: LOOK_AGAIN_MS })
      .toBeLessThanOrEqual(UNDER_FINGER_PX);
    await touch.up();
    expect(way * ((await seen(ring)).now - before.now)).toBeGreaterThan(0);
  }
  expect(await cancelled(page)).toBe(0);
});

test("the crank's slider follows a finger over its whole turn while the rider above it stands still, and the page scrolls beside it", async ({
  page,
}) => {
  const touch = await openToTouch(page, "leg-room");
  const slider = page.getByRole("slider", { name: "Crank angle past the top", exact: true });
  const view = page.locator(".leg-view");
  const seenSlider = () =>
    slider.evaluate((/** @type {HTMLInputElement} */ element) => {
      const { left, top, width, height } = element.getBoundingClientRect();
      return { left, width, middle: top + height / 2, value: Number(element.value), most: Number(element.max) };
    });
  const places = () =>
    view.evaluate((element) =>
      [element, ...element.children, ...element.querySelectorAll("input, button")].flatMap((part) => {
        const { left, top } = part.getBoundingClientRect();
        return [left, top];
      }),
    );
  await toMiddle(slider);
  const before = await seenSlider();
  const legs = () => view.locator(".rider.hold .limb").last().getAttribute("d");
  const stood = await places();
  // The browser gives its own sliders a thumb about as wide as this, whose middle cannot reach the very edge.
  const share = (/** @type {number} */ x) =>
    Math.min(1, Math.max(0, (x - before.left - THUMB_PX / 2) / (before.width - THUMB_PX)));
  const thumb = before.left + THUMB_PX / 2 + (before.value / before.most) * (before.width - THUMB_PX);
  await touch.down({ x: thumb, y: before.middle });
  for (const end of /** @type {const} */ ([0, 0.3, 0.6, 1])) {
    const drawn = await legs();
    const x = Math.min(389, Math.max(1, before.left - BEYOND_PX + end * (before.width + 2 * BEYOND_PX)));
    await touch.move({ x, y: before.middle }, async (at) => {
      const moved_px = (await places()).map((place, n) => Math.abs(place - stood[n]));
      expect(Math.max(...moved_px), "something moved under the finger").toBeLessThanOrEqual(STILL_PX);
      await expect
        .poll(async () => Math.abs((await seenSlider()).value / before.most - share(at.x)) * before.width, {
          message: `the thumb is under the finger at ${at.x} px`,
          intervals: LOOK_AGAIN_MS,
        })
        .toBeLessThanOrEqual(UNDER_FINGER_PX);
    });
    if (end === 0 || end === 1) expect((await seenSlider()).value).toBe(end * before.most);
    await expect.poll(legs, { intervals: LOOK_AGAIN_MS }).not.toBe(drawn);
  }
  await touch.up();
  expect(await cancelled(page)).toBe(0);

  const { value } = await seenSlider();
  const scroll = () => page.evaluate(() => scrollY);
  for (const above_px of [FINGER_PX, 0]) {
    await toMiddle(slider);
    const { left, width, middle } = await seenSlider();
    const [x, y] = [left + width - THUMB_PX / 2, middle - above_px];
    const from = await scroll();
    await touch.down({ x, y });
    await touch.move({ x, y: y - 150 });
    await touch.up();
    await expect.poll(scroll).toBeGreaterThan(from + 50);
    expect((await seenSlider()).value).toBe(value);
  }
});

test("a drag that the browser ends keeps its last value, and is one step of undo", async ({ page }) => {
  const touch = await openToTouch(page, "finish-time");
  const before = await figure(page).textContent();
  const [{ ring }] = await rings(page);
  await toMiddle(ring);
  const at = await seen(ring);
  await touch.down(at);
  await touch.move({ x: at.x - 60, y: at.y });
  const last = await seen(ring);
  expect(last.now).not.toBe(at.now);
  await ring.evaluate((element) => {
    const pointerId = [...Array(40).keys()].find((id) => element.hasPointerCapture(id));
    element.dispatchEvent(new PointerEvent("pointercancel", { bubbles: true, pointerId }));
  });
  await touch.move({ x: at.x + 60, y: at.y });
  await touch.up();
  expect((await seen(ring)).now).toBe(last.now);
  await page.locator(".bar").getByRole("button", { name: "Undo" }).tap();
  await expect(figure(page)).toHaveText(before ?? "");
  expect((await seen(ring)).now).toBe(at.now);
  await expect(page.locator(".bar").getByRole("button", { name: "Undo" })).toBeDisabled();
});

test("a tap anywhere on a number opens it, also beside its one digit, and a minus can be typed where there is one", async ({
  page,
}) => {
  await openQuestion(page, "speed-for-watts");
  const fields = await page.locator(".sentence").getByRole("spinbutton").all();
  for (const field of fields) {
    for (const part of await field.locator("xpath=..").locator(".unit:visible, .pm:visible").all()) {
      await page.locator("h1").tap();
      await expect(field).not.toBeFocused();
      await part.tap();
      await expect(field).toBeFocused();
    }
    const least = Number(await field.getAttribute("aria-valuemin"));
    if (least < 0) await expect(field).toHaveAttribute("inputmode", "text");
    const box = await field.locator("xpath=..").boundingBox();
    if (!box) throw new Error("A number is not in sight.");
    const reach = await field.evaluate((element) => {
      const { width, height } = getComputedStyle(/** @type {Element} */ (element.parentElement), "::before");
      return { width: Number.parseFloat(width), height: Number.parseFloat(height) };
    });
    expect(Math.min(reach.width, reach.height)).toBeGreaterThanOrEqual(FINGER_PX);
  }
  const wind = number(page, "Wind speed, as forecast");
  await wind.fill("0");
  await wind.press("Tab");
  const box = await wind.locator("xpath=..").boundingBox();
  if (!box) throw new Error("The wind is not in sight.");
  await page.touchscreen.tap(box.x + box.width / 2 + FINGER_PX / 2 - 2, box.y + box.height / 2);
  await expect(wind).toBeFocused();
});
