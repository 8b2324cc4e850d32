// @ts-check
/** The page as one file: opened from a disk, it answers as the site does and asks for nothing. */

import { writeFile } from "node:fs/promises";
import { fileURLToPath, pathToFileURL } from "node:url";

import { faults } from "./support/accessibility.js";
import { loopRide } from "./support/loop-ride.js";
import {
  answerText,
  test as base,
  drawing,
  expect,
  figure,
  found,
  kept,
  look,
  number,
  openQuestion,
  started,
  tool,
  type,
} from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

/** As agreed with `cargo xtask size`; 1 KB is 1,000 bytes. */
const MOST_BYTES = 1_000_000;
/** Drag areas of the laps of a ride, m². */
const AREAS = [0.245, 0.235];
/** How much of the packed text a damaged file has left. */
const KEPT_SIGNS = 1000;
/** Every question, twice. */
const PATIENCE_MS = 180_000;

/** @type {import("@playwright/test").TestType<any, any>} */
const test = base.extend(
  /** @type {any} */ ({
    /** The file on a disk, and what was asked for while it was open. */
    file: async (/** @type {any} */ { page, baseURL }, /** @type {any} */ use, /** @type {any} */ info) => {
      const response = await fetch(new URL("fasterby.html", baseURL));
      expect(response.status).toBe(200);
      const content = Buffer.from(await response.arrayBuffer());
      const path = info.outputPath("somewhere else.html");
      await writeFile(path, content);
      const address = pathToFileURL(path).href;
      /** @type {string[]} */
      const asked = [];
      page.context().on("request", (/** @type {any} */ request) => {
        if (!/^(data|blob):/.test(request.url())) asked.push(request.url().split("#")[0]);
      });
      await use({ address, content, asked });
      expect(asked.filter((url) => url !== address && !url.startsWith(String(baseURL)))).toEqual([]);
    },
  }),
);

/** @param {Page} page @param {{ address: string }} file @param {string} [hash] */
async function openFile(page, file, hash = "") {
  await page.goto("about:blank");
  await page.goto(`${file.address}${hash}`);
  await started(page);
}

test.use({ offlineCopy: true });

test("it is one file within its bound, and names no other", async ({ file }) => {
  expect(file.content.length).toBeLessThanOrEqual(MOST_BYTES);
  const markup = String(file.content).replace(/<script.*<\/script>|<style>.*<\/style>/gs, "");
  expect(
    [...markup.matchAll(/ (?:src|href)="([^"]*)"/g)].map(([, to]) => to).filter((to) => to && !/^(#|data:)/.test(to)),
  ).toEqual([]);
});

test("from a disk every question answers, typing changes the answer, and both are the site’s", async ({
  page,
  context,
  file,
}) => {
  test.setTimeout(PATIENCE_MS);
  const onSite = await context.newPage();
  await openFile(page, file);
  for (const { id, title, number: given } of questions) {
    await test.step(id, async () => {
      await openQuestion(onSite, id);
      await page.goto(`${file.address}#${id}`);
      await expect(page.locator("#host")).toHaveAttribute("data-question", id);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
      await found(onSite);
      const before = await look(onSite);
      await expect.poll(() => look(page)).toEqual(before);

      await type(onSite, given.name, given.typed);
      await expect.poll(() => answerText(onSite)).not.toBe(before.answer);
      await found(onSite);
      const after = await look(onSite);
      await type(page, given.name, given.typed);
      await expect.poll(() => look(page)).toEqual(after);

      for (const each of [onSite, page]) {
        await tool(each, "Undo").click();
        await expect.poll(() => look(each)).toEqual(before);
      }
    });
  }
  expect(new Set(file.asked.filter((/** @type {string} */ url) => url.startsWith("file:")))).toEqual(
    new Set([file.address]),
  );
});

test("the odds are worked out beside the page, by a worker made of the same file, and axe finds no fault", async ({
  page,
  file,
}) => {
  const worker = page.waitForEvent("worker");
  await openFile(page, file, "#power-or-drag");
  await expect.soft(page.locator(".odds")).toContainText("of 100 tries");
  expect.soft((await worker).url()).toMatch(/^blob:/);
  expect(await faults(page)).toEqual([]);
});

test("a ride file is read by a worker made of the same file", async ({ page, file }) => {
  await openFile(page, file, "#drag-test");
  const worker = page.waitForEvent("worker");
  const ride = { name: "loop.csv", mimeType: "text/csv", buffer: Buffer.from(loopRide(AREAS)) };
  await page.locator('.opener input[type="file"]').setInputFiles(ride);
  await expect(page.locator(".laps > li")).toHaveCount(AREAS.length);
  expect((await worker).url()).toMatch(/^blob:/);
});

test("where a worker is refused, the odds are worked out in the page", async ({ page, file }) => {
  await page.addInitScript(() => {
    globalThis.Worker = /** @type {any} */ (
      function refused() {
        throw new Error("refused");
      }
    );
  });
  await openFile(page, file, "#power-or-drag");
  await expect(page.locator(".odds")).toContainText("of 100 tries");
});

test("what follows # on the site opens the same numbers in the file", async ({ page, file }) => {
  const { id, number: given } = questions[0];
  await openQuestion(page, id);
  await type(page, given.name, given.typed);
  await expect(page).toHaveURL(/#speed-for-watts\/1z\./);
  const answer = await answerText(page);

  await openFile(page, file, new URL(page.url()).hash);
  await expect(number(page, given.name)).toHaveValue(given.typed === "0.25" ? "0.250" : given.typed);
  await expect.poll(() => answerText(page)).toBe(answer);
});

test("its address follows the numbers, its questions have their own, and Back returns", async ({ page, file }) => {
  await openFile(page, file, "#finish-time");
  await page.getByRole("main").getByRole("spinbutton").first().press("Shift+ArrowUp");
  await expect(page).toHaveURL(/^file:.*#finish-time\/1z\./);
  await page.getByRole("navigation", { name: "Questions" }).getByRole("link").first().click();
  await expect(page).toHaveURL(/^file:.*#/);
  await expect(page.getByRole("heading", { level: 1 })).not.toHaveText("How long will it take?");
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("How long will it take?");
});

test("it keeps the numbers between visits, registers no service worker, and opens again by its own name", async ({
  page,
  file,
}) => {
  const { id, number: given } = questions[1];
  await openFile(page, file, `#${id}`);
  await type(page, given.name, given.typed);
  await expect
    .poll(async () => JSON.stringify((await kept(page))?.scenario.positions ?? ""))
    .toContain(`"value":${given.typed}`);
  const shown = await figure(page).innerText();
  await page.getByRole("link", { name: "Fasterby", exact: true }).click();
  await started(page);
  await openFile(page, file, `#${id}`);
  await expect(figure(page)).toHaveText(shown);
  await expect.poll(() => drawing(page)).not.toBe("");
});

test("what the site fetches later is in the file already: the story, the sheet, and pictures to take away", async ({
  page,
  file,
}) => {
  await openFile(page, file, "#start-here");
  await expect(page.getByRole("region", { name: "6. Uphill and into the wind" })).toBeVisible();

  await page.goto(`${file.address}#power-or-drag`);
  await expect(page.locator("#host")).toHaveAttribute("data-question", "power-or-drag");
  const fold = page.locator('[data-fold="take"]');
  await fold.locator("summary").click();
  for (const kind of ["SVG", "PNG", "JSON"]) {
    const download = page.waitForEvent("download");
    await fold
      .getByRole("button", { name: `as ${kind}` })
      .first()
      .click();
    expect((await download).suggestedFilename()).toMatch(
      new RegExp(`^fasterby-power-or-drag.*\\.${kind.toLowerCase()}$`),
    );
  }
  await expect(page.locator('[data-fold="site"]')).toHaveCount(0);

  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole("contentinfo").getByRole("button", { name: "Your numbers" }).click();
  await expect(page.locator("#sheet")).toBeVisible();
});

test("its dialogs and sheet open, and it says that its link leads to this device", async ({ page, file, context }) => {
  await openFile(page, file, "#power-or-drag");
  await tool(page, "Help").click();
  await expect(page.getByRole("dialog")).toContainText("They go nowhere. Everything is worked out on this device.");
  await expect(page.getByRole("dialog").getByRole("link", { name: "Save this page as one file" })).toHaveCount(0);
  await page.keyboard.press("Escape");
  await page.evaluate(() => {
    Object.defineProperty(navigator, "clipboard", { value: undefined });
  });
  await tool(page, "Share").click();
  await expect(page.getByRole("dialog")).toContainText("somebody else needs the file too");
  expect(context.serviceWorkers()).toEqual([]);
});

test.describe("its own policy", () => {
  // The browser complains of what it refuses.
  test.use({ troubled: true });

  test("refuses a connection, and a script that is not its own", async ({ page, file, baseURL }) => {
    await openFile(page, file);
    const refused = await page.evaluate(async (address) => {
      /** @type {string[]} */
      const directives = [];
      addEventListener("securitypolicyviolation", (event) => directives.push(event.effectiveDirective));
      await fetch(address).catch(() => undefined);
      document.body.append(
        Object.assign(document.createElement("script"), { textContent: "globalThis.foreign = true" }),
      );
      await new Promise((resolve) => setTimeout(resolve));
      return { directives, foreign: "foreign" in globalThis };
    }, String(baseURL));
    expect(refused).toEqual({ directives: expect.arrayContaining(["connect-src", "script-src-elem"]), foreign: false });
  });
});

test("a file that is not whole leaves the sentence that says so", async ({ page, file, complaints }) => {
  const text = file.content.toString("utf16le");
  const packed = text.indexOf(">", text.indexOf('id="packed-page"'));
  const damaged = text.slice(0, packed + KEPT_SIGNS) + text.slice(text.indexOf("</script>", packed));
  await writeFile(fileURLToPath(file.address), Buffer.from(damaged, "utf16le"));
  await page.goto(file.address);
  await expect(page.locator(".starting")).toContainText("If this line stays");
  await expect(page.locator("style, html[data-started]")).toHaveCount(0);
  expect(complaints.splice(0).join()).toContain("ends early");
});

test("the site offers it in its help, and the service worker never gives the site in its place", async ({
  page,
  baseURL,
}) => {
  await openQuestion(page, "finish-time");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await started(page);
  await tool(page, "Help").click();
  const download = page.waitForEvent("download");
  await page.getByRole("dialog").getByRole("link", { name: "Save this page as one file" }).click();
  expect((await download).suggestedFilename()).toBe("fasterby.html");
  await page.goto(`${baseURL}fasterby.html`);
  await started(page);
  await expect(page.locator("script#script")).toHaveCount(1);
});
