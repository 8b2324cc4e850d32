// @ts-check
/** After one visit the page works with no network and no server, and a new version comes whole or not at all. */

import { answerText, expect, keptOnDevice, openQuestion, started, test } from "./support/page.js";
import { filesOf, serve, versionOf } from "./support/server.js";

/** @import { Page } from "@playwright/test" */

// Without a network the browser itself complains that the service worker could not be looked up again.
test.use({ troubled: true, offlineCopy: true });

/** @param {Page} page */
async function expectItWorks(page) {
  await started(page);
  const before = await answerText(page);
  await page.getByRole("main").getByRole("spinbutton").first().press("Shift+ArrowUp");
  await expect.poll(() => answerText(page)).not.toBe(before);
}

test("it works after a reload without a network", async ({ page, context }) => {
  await openQuestion(page, "finish-time");
  await keptOnDevice(page);
  await context.setOffline(true);
  await page.reload();
  await expectItWorks(page);
  await page.getByRole("button", { name: "Help" }).click();
  await expect(page.getByRole("dialog")).toContainText("works without a network");
});

test("it works after a reload, and in a new tab, when its server is gone", async ({ page, context, baseURL }) => {
  const server = await serve(await filesOf(String(baseURL)));
  await page.goto(server.address);
  await keptOnDevice(page);
  await server.stop();

  await page.reload();
  await expectItWorks(page);
  const tab = await context.newPage();
  await tab.goto(`${server.address}?from=home#power-or-drag`);
  await expectItWorks(tab);
});

/** A server of a first version, whose page is kept on the device. @param {Page} page @param {string | undefined} baseURL */
async function keptFirst(page, baseURL) {
  const files = await filesOf(String(baseURL));
  const server = await serve(versionOf(files, "first"));
  await page.goto(server.address);
  await keptOnDevice(page);
  return { files, server };
}

/** Which version each part of a page belongs to. @param {Page} page */
function parts(page) {
  return page.evaluate(() => {
    const { markup, script } = document.documentElement.dataset;
    return [markup, script, getComputedStyle(document.documentElement).getPropertyValue("--style").trim()];
  });
}

/** Whether a newer version waits for its turn. @param {Page} page */
function newerWaits(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    return registration.waiting !== null;
  });
}

test("a new version is fetched beside the old one and taken whole on the next visit", async ({
  page,
  context,
  baseURL,
}) => {
  const { files, server } = await keptFirst(page, baseURL);
  expect(await parts(page)).toEqual(["first", "first", "first"]);

  server.change(versionOf(files, "second"));
  await page.reload();
  await started(page);
  await expect.poll(() => newerWaits(page)).toBe(true);
  expect(await parts(page)).toEqual(["first", "first", "first"]);
  await page.reload();
  await started(page);
  expect(await parts(page)).toEqual(["first", "first", "first"]);

  await page.close();
  const next = await context.newPage();
  await expect(async () => {
    await next.goto("about:blank");
    await next.goto(server.address);
    await started(next);
    const now = await parts(next);
    expect(new Set(now).size).toBe(1);
    expect(now[0]).toBe("second");
  }).toPass();
  await expect.poll(() => next.evaluate(() => caches.keys())).toEqual(["fasterby second"]);
  await server.stop();
});

test("a new version that cannot be fetched whole is not taken, and the old one goes on", async ({ page, baseURL }) => {
  const { files, server } = await keptFirst(page, baseURL);

  const broken = versionOf(files, "second");
  broken.delete("v-second/app.js");
  server.change(broken);
  expect(
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => undefined);
      const installing = registration.installing;
      if (installing)
        await new Promise((resolve) =>
          installing.addEventListener("statechange", () => installing.state === "redundant" && resolve(undefined)),
        );
      return registration.waiting;
    }),
  ).toBeNull();

  await page.reload();
  await expectItWorks(page);
  expect(await parts(page)).toEqual(["first", "first", "first"]);
  // Opening the page has the browser try the new version again; what it began is gone once that has failed too.
  await expect.poll(() => page.evaluate(() => caches.keys())).toEqual(["fasterby first"]);
  await server.stop();
});

/**
 * Opens the choice of units and language and presses a language, which is not taken where its texts cannot be loaded.
 * @param {Page} page
 * @param {string} language
 */
async function speak(page, language) {
  await page.locator(".tools button").filter({ hasText: /°C/ }).click();
  await page.getByRole("dialog").getByRole("radio", { name: language }).click();
}

test("the texts of the languages that are read are kept, through a new version too", async ({
  page,
  context,
  baseURL,
}) => {
  const { files, server } = await keptFirst(page, baseURL);
  const kept = () =>
    page.evaluate(async () => {
      const cache = await caches.open("fasterby first");
      return (await cache.keys()).map(({ url }) => url).filter((url) => url.includes("/languages/"));
    });
  expect(await kept()).toEqual([`${server.address}languages/en`]);

  // Without a network there are only the texts that are kept, and the page says so.
  await context.setOffline(true);
  await speak(page, "Deutsch");
  await expect(page.getByRole("status").filter({ hasText: "could not be loaded in this language" })).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("lang", "en-GB");
  await context.setOffline(false);
  await page.keyboard.press("Escape");
  await speak(page, "Français");
  await expect(page.locator("html")).toHaveAttribute("lang", "fr");
  await expect.poll(kept).toContain(`${server.address}languages/fr`);

  await context.setOffline(true);
  await page.reload();
  await started(page);
  await expect(page.locator("html")).toHaveAttribute("lang", "fr");
  await expect(page.getByRole("heading", { level: 1 })).toContainText("puissance");
  await context.setOffline(false);

  server.change(versionOf(files, "second"));
  await expect.poll(() => newerWaits(page)).toBe(true);
  const newer = await page.evaluate(async () => {
    const cache = await caches.open("fasterby second");
    return (await cache.keys()).map(({ url }) => url.split("/languages/")[1]).filter(Boolean);
  });
  expect(newer.sort()).toEqual(["en", "fr"]);
  await server.stop();
});
