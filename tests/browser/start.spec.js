// @ts-check
/** The page starts without a complaint, or says why it cannot. */

import { everyQuestion } from "./support/every-question.js";
import { forget, test } from "./support/one-page.js";
import {
  answerText,
  expect,
  inMotion,
  test as inOwnWindow,
  number,
  open,
  openQuestion,
  started,
  type,
} from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

/** What the smaller module answers. */
const FIRST = ["power-or-drag", "speed-for-watts"];
/** A layout shift that readers hardly notice: "good" up to 0.1, https://web.dev/articles/cls. */
const MOST_MOVED = 0.1;

inOwnWindow.use({ contextOptions: inMotion });

inOwnWindow("it opens, answers, and fetches nothing that is not there", async ({ page }) => {
  /** @type {string[]} */
  const missing = [];
  page.on("requestfailed", (request) => missing.push(request.url()));
  page.on("response", (response) => {
    if (response.status() >= 400) missing.push(`${response.url()} ${response.status()}`);
  });
  await open(page);
  await expect(page).toHaveTitle(/Fasterby/);
  expect(await answerText(page)).toMatch(/\d/);
  expect(missing).toEqual([]);
});

for (const [width, height] of [
  [390, 844],
  [1440, 900],
]) {
  inOwnWindow(
    `every question comes piece by piece at ${width} px, what is read stays where it is, and one module is fetched, the smaller one if that answers it`,
    async ({ page }) => {
      /** @type {string[]} */
      let modules = [];
      page.on("request", (request) => {
        if (request.url().endsWith(".wasm"))
          modules.push(new URL(request.url()).pathname.replace(/^\/v-[0-9a-f]+/, ""));
      });
      await page.setViewportSize({ width, height });
      await page.addInitScript(() => {
        globalThis.moved = 0;
        new PerformanceObserver((list) => {
          for (const shift of list.getEntries()) globalThis.moved += /** @type {any} */ (shift).value;
        }).observe({ type: "layout-shift", buffered: true });
      });
      const openAnew = async (/** @type {Page} */ page, /** @type {string} */ id) => {
        await forget(page);
        modules = [];
        await openQuestion(page, id);
      };
      const check = async (/** @type {{ id: string }} */ { id }) => {
        await expect(page.locator("[data-later]")).toHaveCount(0);
        expect.soft(await page.evaluate(() => globalThis.moved), `${id}: how much moved`).toBeLessThan(MOST_MOVED);
        expect.soft(await answerText(page), id).toMatch(/\d/);
        // Once: the worker borrows it.
        expect.soft(modules, id).toEqual([FIRST.includes(id) ? "/wasm/first_bg.wasm" : "/wasm/whole_bg.wasm"]);
      };
      await everyQuestion(page, questions, check, openAnew);
    },
  );
}

inOwnWindow(
  "the sentence can be read and changed while the core is on its way, and the answer is to what it says then",
  async ({ page }) => {
    let release = () => {};
    const held = new Promise((resolve) => {
      release = () => resolve(undefined);
    });
    await page.route("**/*.wasm", async (route) => {
      await held;
      await route.continue();
    });
    await page.goto("./#speed-for-watts");
    await expect(number(page, "Drag area, CdA")).toHaveValue(/^0\.\d+$/);
    await type(page, "Drag area, CdA", "0.2");
    await expect(page.getByRole("region", { name: "Answer" })).toBeHidden();
    await expect(page.getByText("The calculation is still being fetched.")).toBeVisible();
    release();
    await started(page);
    await expect(page.getByText("The calculation is still being fetched.")).toHaveCount(0);
    const answered = await answerText(page);
    expect(answered).toMatch(/\d/);
    await expect(number(page, "Drag area, CdA")).toHaveValue("0.200");
    await type(page, "Drag area, CdA", "0.3");
    await expect.poll(() => answerText(page)).not.toBe(answered);
    await type(page, "Drag area, CdA", "0.2");
    await expect.poll(() => answerText(page)).toBe(answered);
  },
);

test("a first visit at any width finds more power against less drag answered on the first screen", async ({ page }) => {
  for (const [width, height] of [
    [390, 844],
    [820, 1100],
    [1440, 900],
  ]) {
    await test.step(`${width} px`, async () => {
      await page.setViewportSize({ width, height });
      await forget(page);
      await open(page);
      await expect.soft(page.getByRole("heading", { level: 1 }), `${width} px`).toHaveText("More power, or less drag?");
      await expect.soft(page.locator(".claim"), `${width} px`).toBeInViewport({ ratio: 1 });
      await expect.soft(page.locator(".figure b"), `${width} px`).toBeInViewport({ ratio: 1 });
    });
  }
});

inOwnWindow("where a worker is refused, the odds are worked out in the page", async ({ page }) => {
  await page.addInitScript(() => {
    globalThis.Worker = /** @type {any} */ (
      function refused() {
        throw new Error("refused");
      }
    );
  });
  await openQuestion(page, "power-or-drag");
  await expect(page.locator(".odds")).toContainText("of 100 tries");
});

inOwnWindow("a browser that cannot pack links makes longer ones, which open", async ({ page }) => {
  await page.addInitScript(() => {
    delete (/** @type {any} */ (globalThis).CompressionStream);
  });
  await openQuestion(page, "finish-time");
  await page.getByRole("main").getByRole("spinbutton").first().press("Shift+ArrowUp");
  await expect(page).toHaveURL(/#finish-time\/1j\./);
  const before = await answerText(page);
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await started(page);
  await expect.poll(() => answerText(page)).toBe(before);
});

inOwnWindow.describe("without what it needs", () => {
  inOwnWindow.use({ troubled: true });

  inOwnWindow("it says that WebAssembly is missing", async ({ page }) => {
    await page.addInitScript(() => {
      delete (/** @type {any} */ (globalThis).WebAssembly);
    });
    await page.goto("./");
    await expect(page.getByRole("alert")).toContainText("no WebAssembly");
  });

  inOwnWindow("it says that the calculation could not be loaded, and offers to try again", async ({ page }) => {
    await page.route("**/*.wasm", (route) => route.abort());
    await page.goto("./");
    await expect(page.getByRole("alert")).toContainText("missing on its server");
    await page.unroute("**/*.wasm");
    await page.getByRole("button", { name: "Reload" }).click();
    await started(page);
  });
});

inOwnWindow.describe("without JavaScript", () => {
  inOwnWindow.use({ javaScriptEnabled: false });

  inOwnWindow("it says what it is, and answers the commonest question in words", async ({ page }) => {
    await page.goto("./");
    const plain = page.locator("noscript .plain");
    await expect(plain).toBeVisible();
    await expect(plain).toContainText("It needs JavaScript for that");
    await expect(plain.locator("[lang=de]")).toContainText("Dafür braucht sie JavaScript");
    await expect(plain.locator("[lang=fr]")).toContainText("Il lui faut JavaScript");
    await expect(plain).toContainText("On a flat road in still air more power is faster by a few seconds in an hour");
  });
});
