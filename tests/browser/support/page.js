// @ts-check
/** The page as its readers see it: its sentence, its answer, its charts, and what it says. */

import { test as base, expect } from "@playwright/test";

export { expect };

/** @import { Page } from "@playwright/test" */

/** @import { PlaywrightTestArgs, PlaywrightTestOptions, PlaywrightWorkerArgs, PlaywrightWorkerOptions, TestType } from "@playwright/test" */
/** @typedef {TestType<PlaywrightTestArgs & PlaywrightTestOptions & { troubled: boolean, offlineCopy: boolean }, PlaywrightWorkerArgs & PlaywrightWorkerOptions>} Test */

/** As Playwright opens it. */
export const WINDOW = { width: 1280, height: 720 };

/** For specs about what moves: as a reader has it who does not ask for less motion. */
export const inMotion = /** @type {const} */ ({ reducedMotion: "no-preference" });

/**
 * A test fails when the page throws or the browser complains, unless it breaks something on purpose: `test.use({ troubled: true })`.
 * The page keeps no copy of itself for going offline, which takes longer than most tests, unless they ask for it: `test.use({ offlineCopy: true })`.
 * @type {Test}
 */
export const test = base.extend(
  /** @type {any} */ ({
    // For one-page.js. It stands here so that all tests may run in the same browser.
    shared: [
      async (/** @type {any} */ { browser }, /** @type {any} */ use, /** @type {any} */ { project }) => {
        const { baseURL, locale, contextOptions } = project.use;
        const context = await browser.newContext({ baseURL, locale, viewport: WINDOW, ...contextOptions });
        await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
        await use(await context.newPage());
        await context.close();
      },
      { scope: "worker" },
    ],
    troubled: [false, { option: true }],
    offlineCopy: [false, { option: true }],
    withoutCopy: [
      async (/** @type {any} */ { context, offlineCopy }, /** @type {any} */ use) => {
        if (!offlineCopy)
          await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
        await use();
      },
      { auto: true },
    ],
    complaints: [
      async (/** @type {any} */ { context, troubled }, /** @type {any} */ use) => {
        /** @type {string[]} */
        const complaints = [];
        const heard = {
          weberror: (/** @type {any} */ thrown) => complaints.push(thrown.error().stack ?? thrown.error().message),
          console: (/** @type {any} */ message) => {
            if (!troubled && ["error", "warning"].includes(message.type())) complaints.push(message.text());
          },
        };
        for (const [event, listener] of Object.entries(heard)) context.on(event, listener);
        await use(complaints);
        for (const [event, listener] of Object.entries(heard)) context.off(event, listener);
        expect(complaints).toEqual([]);
      },
      { auto: true },
    ],
  }),
);

/** Opens an address of the page and waits until it has answered. @param {Page} page @param {string} [hash] */
export async function open(page, hash = "") {
  await page.goto(`./${hash}`);
  await started(page);
}

/** Opens a question and waits until it is shown, as the one before stays until then, and until what it searches for is found. @param {Page} page @param {string} id */
export async function openQuestion(page, id) {
  await open(page, `#${id}`);
  await expect(page.locator("#host")).toHaveAttribute("data-question", id);
  await found(page);
}

/** Waits until what a question searches for is found. @param {Page} page */
export async function found(page) {
  // What is worked out beside the page is there once nothing newer is awaited.
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
  await expect(page.locator("#host [data-searching]")).toHaveCount(0);
}

/** Waits for two frames: in the first the page learns a new width or number, in the second it has followed. @param {Page} page */
export function drawn(page) {
  return page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve(undefined)))),
  );
}

/** @param {Page} page */
export async function started(page) {
  await expect(page.locator("html")).toHaveAttribute("data-started", "");
}

/** Waits until the service worker has kept everything and serves this page. @param {Page} page */
export async function keptOnDevice(page) {
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await started(page);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

/** A number of the sentence, by its name. @param {Page} page @param {string} name */
export function number(page, name) {
  return page.getByRole("main").getByRole("spinbutton", { name, exact: true });
}

/** Types over a number and leaves the field. @param {Page} page @param {string} name @param {string} text */
export async function type(page, name, text) {
  await number(page, name).fill(text);
  await number(page, name).press("Tab");
}

/** A point of a chart that can be moved. @param {Page} page @param {string} name as its name begins */
export function handle(page, name) {
  return page.getByRole("main").getByRole("slider", { name }).first();
}

/** A button of the top bar, in any language. @param {Page} page @param {string} name */
export function tool(page, name) {
  return page.locator(".tools").getByRole("button", { name });
}

/** What the page says at its foot. @param {Page} page */
export function notice(page) {
  return page.getByRole("status").filter({ has: page.getByRole("button", { name: "Close this message" }) });
}

/** The line under the sentence that says what is wrong. @param {Page} page */
export function complaint(page) {
  return page.locator(".wrongs .wrong:visible");
}

/** The answer as it is read: the claim, its figure, and the figures below. The odds follow later, from the worker. @param {Page} page */
export async function answerText(page) {
  return (
    await page.getByRole("region", { name: "Answer" }).locator(".claim, .figure .amount, table").allInnerTexts()
  ).join(" ");
}

/** The claim and its figure alone. @param {Page} page */
export function figure(page) {
  return page.getByRole("region", { name: "Answer" }).locator(".figure .amount b");
}

/** The lines and areas of the charts. @param {Page} page */
export async function drawing(page) {
  return page
    .getByRole("region", { name: "Charts" })
    .locator("svg path")
    .evaluateAll((paths) => paths.map((path) => path.getAttribute("d")).join(" "));
}

/** Everything that a change of a number must change. @param {Page} page */
export async function look(page) {
  return { answer: await answerText(page), drawing: await drawing(page) };
}

/** What the page holds, once it has kept it on the device. @param {Page} page */
export async function kept(page) {
  return page.evaluate(() => JSON.parse(localStorage.getItem("fasterby:last") ?? "null"));
}
