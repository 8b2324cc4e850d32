// @ts-check
/** Work is kept on the device, by name and as files, and what cannot be kept is said. */

import { readFile } from "node:fs/promises";
import { test } from "./support/one-page.js";
import {
  answerText,
  expect,
  test as inOwnWindow,
  kept,
  notice,
  number,
  open,
  openQuestion,
  started,
  tool,
  type,
} from "./support/page.js";

/** @import { Page } from "@playwright/test" */

const CDA = "Drag area, CdA";

/** @param {Page} page */
async function openSaved(page) {
  await page.bringToFront();
  if (!(await page.getByRole("dialog").isVisible())) await tool(page, "Save").click();
  const dialog = page.getByRole("dialog", { name: "Save and open" });
  await expect(dialog).toBeVisible();
  return dialog;
}

/** @param {Page} page @param {string} name */
async function save(page, name) {
  const dialog = await openSaved(page);
  await dialog.getByLabel("Name").fill(name);
  await dialog.getByRole("button", { name: "Save", exact: true }).click();
}

/** @param {Page} page @param {string} cda */
async function change(page, cda) {
  await page.bringToFront();
  await type(page, CDA, cda);
  await expect.poll(async () => JSON.stringify(await kept(page))).toContain(`"value":${cda}`);
}

inOwnWindow("what was on the page is there again after a reload, and after a new visit", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  await change(page, "0.222");
  const before = await answerText(page);
  await page.reload();
  await started(page);
  await expect(number(page, CDA)).toHaveValue("0.222");
  await page.close({ runBeforeUnload: true });

  const later = await page.context().newPage();
  await open(later);
  await expect(number(later, CDA)).toHaveValue("0.222");
  await expect.poll(() => answerText(later)).toBe(before);
});

test("a scenario saved by name opens again, and is removed only when asked twice", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  await change(page, "0.222");
  await save(page, "Thursday <evening>");
  await expect(notice(page)).toContainText("It is saved on this device as “Thursday <evening>”");
  await page.keyboard.press("Escape");
  await change(page, "0.333");

  let dialog = await openSaved(page);
  await dialog.getByRole("button", { name: "Open Thursday <evening>" }).click();
  await expect(number(page, CDA)).toHaveValue("0.222");
  await tool(page, "Undo").click();
  await expect(number(page, CDA)).toHaveValue("0.333");

  dialog = await openSaved(page);
  await dialog.getByRole("button", { name: "Remove Thursday <evening>" }).click();
  await expect(dialog.getByRole("alert")).toContainText("cannot be undone");
  await dialog.getByRole("button", { name: "Keep it" }).click();
  await expect(dialog.getByRole("listitem")).toHaveCount(1);
  await dialog.getByRole("button", { name: "Remove Thursday <evening>" }).click();
  await dialog.getByRole("button", { name: "Remove it" }).click();
  await expect(dialog.getByRole("listitem")).toHaveCount(0);
});

test("a scenario goes out as a file and comes in again unchanged", async ({ page, browser }) => {
  await openQuestion(page, "finish-time");
  await change(page, "0.222");
  const answer = await answerText(page);
  const dialog = await openSaved(page);
  const downloading = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Export as a file" }).click();
  const content = await readFile(await (await downloading).path(), "utf8");
  expect(JSON.parse(content)).toMatchObject({ fasterby: 3, positions: expect.any(Array) });

  const elsewhere = await browser.newContext({ locale: "en-GB" });
  const there = await elsewhere.newPage();
  await openQuestion(there, "finish-time");
  await openSaved(there);
  await chooseFile(there, content);
  await expect(notice(there)).toContainText("ride.json is open");
  await expect.poll(() => answerText(there)).toBe(answer);
  await elsewhere.close();
});

/** @param {Page} page @param {string} content */
async function chooseFile(page, content) {
  await page
    .getByRole("dialog")
    .locator("input[type=file]")
    .setInputFiles({ name: "ride.json", mimeType: "application/json", buffer: Buffer.from(content) });
}

test("a file that is no scenario is refused in words, and nothing changes", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  await change(page, "0.222");
  const before = await answerText(page);
  const dialog = await openSaved(page);
  /** @type {[content: string, says: RegExp][]} */
  const files = [
    ["", /not JSON/],
    ["no JSON at all", /not JSON/],
    ["[1, 2]", /no “fasterby” version/],
    ['{"wheels":2}', /no “fasterby” version/],
    ['{"fasterby":4}', /newer/i],
    ['{"fasterby":1,"wheels":3}', /no field “wheels”/],
    ['{"fasterby":1,"rider":{"total_mass_kg":900}}', /Rider, bicycle and kit together runs from/],
    ['{"fasterby":1,"rider":"heavy"}', /./],
    ['{"fasterby":1,"positions":[]}', /./],
    [`{"fasterby":1,"title":"${"x".repeat(8_000_000)}"}`, /larger than any set of numbers/],
  ];
  for (const [content, says] of files) {
    await chooseFile(page, content);
    await expect(dialog.getByRole("alert")).toContainText("ride.json: ");
    await expect(dialog.getByRole("alert")).toContainText(says);
  }
  await page.keyboard.press("Escape");
  expect(await answerText(page)).toBe(before);
  await expect(number(page, CDA)).toHaveValue("0.222");
});

inOwnWindow("two tabs each keep their own numbers, and each is told of the other", async ({ page, context }) => {
  await openQuestion(page, "speed-for-watts");
  await change(page, "0.222");
  const second = await context.newPage();
  await openQuestion(second, "speed-for-watts");

  await change(second, "0.333");
  await expect(notice(page)).toContainText("open in another tab");
  await expect(number(page, CDA)).toHaveValue("0.222");
  await change(page, "0.244");
  await expect(notice(second)).toContainText("open in another tab");
  await expect(number(second, CDA)).toHaveValue("0.333");
});

inOwnWindow("a scenario that another tab saved is not overwritten unasked", async ({ page, context }) => {
  await openQuestion(page, "speed-for-watts");
  const second = await context.newPage();
  await openQuestion(second, "speed-for-watts");
  await change(page, "0.222");
  await save(page, "Club ride");
  await change(second, "0.333");

  await save(second, "Club ride");
  await expect(second.getByRole("dialog").getByRole("alert")).toContainText("There is already a “Club ride”");
  await second.getByRole("button", { name: "Replace it" }).click();
  await expect(notice(second)).toContainText("saved on this device");
  await expect(notice(page)).toContainText("“Club ride” was changed in another tab");

  await save(page, "Club ride");
  await expect(page.getByRole("dialog").getByRole("alert")).toContainText("There is already a “Club ride”");
});

inOwnWindow("what a newer version of the page has kept is left as it is", async ({ page, context }) => {
  const newer = JSON.stringify({ layout: 99, stamp: "1-1", saved_at: "2030-01-01T00:00:00Z", everything: "else" });
  await context.addInitScript((text) => {
    for (const key of ["fasterby:last", "fasterby:saved:Club ride"])
      if (!localStorage.getItem(key)) localStorage.setItem(key, text);
  }, newer);
  await openQuestion(page, "speed-for-watts");
  await type(page, CDA, "0.222");
  await expect(notice(page)).toContainText("A newer version of this page has kept work on this device");
  await save(page, "Club ride");
  await expect(page.getByRole("dialog").getByRole("alert")).toContainText("saved by a newer version");
  expect(
    await page.evaluate(() => [
      localStorage.getItem("fasterby:last"),
      localStorage.getItem("fasterby:saved:Club ride"),
    ]),
  ).toEqual([newer, newer]);
});

/** @type {[what: string, refuse: () => void, says: RegExp][]} */
const refusals = [
  [
    "the device is full",
    () => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    },
    /full or switched off/,
  ],
  [
    "the browser refuses storage",
    () => {
      Object.defineProperty(globalThis, "localStorage", {
        get() {
          throw new DOMException("no", "SecurityError");
        },
      });
    },
    /keeps nothing/,
  ],
];

for (const [what, refuse, says] of refusals) {
  inOwnWindow(`when ${what}, the page says so and goes on`, async ({ page, context }) => {
    await context.addInitScript(refuse);
    await openQuestion(page, "speed-for-watts");
    const before = await answerText(page);

    await type(page, CDA, "0.222");

    await expect.poll(() => answerText(page)).not.toBe(before);
    await expect(notice(page)).toContainText("This browser keeps nothing for this page");
    await expect(page).toHaveURL(/#speed-for-watts\/1z\./);
    const dialog = await openSaved(page);
    if (await dialog.getByLabel("Name").isVisible()) await save(page, "Club ride");
    await expect(dialog).toContainText(says);
    const downloading = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Export as a file" }).click();
    expect(await readFile(await (await downloading).path(), "utf8")).toContain("0.222");
  });
}
