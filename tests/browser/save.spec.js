// @ts-check
/** What a question gives to take away: charts as pictures, tables and curves as CSV, the whole of it as JSON, and one printed page. */

import { readFile } from "node:fs/promises";
import { columnTables } from "../../www/save/csv.js";
import { faults } from "./support/accessibility.js";
import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { expect, test as inOwnWindow, number, openQuestion, type } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

/** Around a chart on each side, and how many pixels of the PNG stand for one of it. */
const MARGIN_PX = 16;
const PNG_SCALE = 2;
/** The signature of a PNG file and where its width and height stand (ISO/IEC 15948). */
const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const PNG_WIDTH_AT = 16;
const PNG_HEIGHT_AT = 20;
/** Of 255, the mean difference of a pixel between a chart and its picture: edges may fall a fraction of a pixel apart. */
const MOST_UNLIKE = 3;
/** Chromium drops without a word whatever a page saves beyond ten files in a second; a hand is slower than that, a test is not. */
const BETWEEN_FILES_MS = 120;

/** @param {Page} page */
async function openFold(page) {
  const fold = page.locator('[data-fold="take"]');
  await fold.locator("summary").click();
  await expect(fold.getByRole("button", { name: "as JSON" })).toBeVisible();
  return fold;
}

/** @param {Page} page @param {import("@playwright/test").Locator} button */
async function saved(page, button) {
  await page.waitForTimeout(BETWEEN_FILES_MS);
  const downloading = page.waitForEvent("download");
  await button.click();
  const download = await downloading;
  return { name: download.suggestedFilename(), content: await readFile(await download.path()) };
}

/** Comma-separated values as RFC 4180 has them. @param {string} text */
function parsed(text) {
  const rows = [[""]];
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const row = rows[rows.length - 1];
    const sign = text[at];
    if (quoted && sign === '"' && text[at + 1] === '"') {
      at += 1;
      row[row.length - 1] += text[at];
    } else if (sign === '"') quoted = !quoted;
    else if (!quoted && sign === ",") row.push("");
    else if (!quoted && sign === "\r" && text[at + 1] === "\n") {
      rows.push([""]);
      at += 1;
    } else row[row.length - 1] += sign;
  }
  expect(rows.pop(), "the last line ends like the others").toEqual([""]);
  return rows;
}

inOwnWindow(
  "in every question charts are saved as pictures that stand alone, figures as data, and the whole fits on one page of A4 and of Letter",
  async ({ page }) => {
    await everyQuestion(page, questions, async ({ id }) => {
      const fold = await openFold(page);

      await test.step("every chart is saved as a picture that stands alone", async () => {
        const charts = page.locator("#host svg.chart:visible");
        const buttons = fold.getByRole("button", { name: "as SVG" });
        await expect(buttons).toHaveCount(await charts.count());

        for (let index = 0; index < (await buttons.count()); index += 1) {
          const { name, content } = await saved(page, buttons.nth(index));
          expect(name).toMatch(new RegExp(`^fasterby-${id}-[a-z0-9-]+\\.svg$`));
          const text = String(content);
          expect(text).not.toMatch(/class=|style=|var\(|color-mix|color\(|tabindex|<script|<image|href/);
          const read = await page.evaluate((source) => {
            const svg = new DOMParser().parseFromString(source, "image/svg+xml").documentElement;
            return {
              root: svg.localName,
              title: svg.querySelector("title")?.textContent,
              words: Array.from(svg.querySelectorAll("text"), (one) => one.textContent),
              width: Number(svg.getAttribute("width")),
              height: Number(svg.getAttribute("height")),
            };
          }, text);
          const shown = await charts.nth(index).evaluate((chart) => ({
            title: chart.getAttribute("aria-label"),
            words: Array.from(chart.querySelectorAll("text"))
              .filter((one) => getComputedStyle(one).display !== "none")
              .map((one) => one.textContent),
            width: chart.clientWidth,
            height: chart.clientHeight,
          }));
          expect(read).toEqual({
            root: "svg",
            ...shown,
            width: shown.width + 2 * MARGIN_PX,
            height: shown.height + 2 * MARGIN_PX,
          });

          const png = await saved(page, fold.getByRole("button", { name: "as PNG" }).nth(index));
          expect(png.name).toBe(name.replace(".svg", ".png"));
          expect([...png.content.subarray(0, PNG_SIGNATURE.length)]).toEqual(PNG_SIGNATURE);
          expect(png.content.readUInt32BE(PNG_WIDTH_AT)).toBe(PNG_SCALE * read.width);
          expect(png.content.readUInt32BE(PNG_HEIGHT_AT)).toBe(PNG_SCALE * read.height);
        }
      });

      await test.step("the saved request gives the saved answer, and its columns are the saved figures", async () => {
        const { name, content } = await saved(page, fold.getByRole("button", { name: "as JSON" }));
        expect(name).toBe(`fasterby-${id}.json`);
        const file = JSON.parse(String(content));
        expect(file.question).toBe(id);
        const again = await page.evaluate(({ question, request }) => {
          const plain = (/** @type {string} */ _, /** @type {any} */ value) =>
            ArrayBuffer.isView(value) ? Array.from(/** @type {Float64Array} */ (value)) : value;
          return JSON.stringify(/** @type {any} */ (globalThis).fasterby.ask(question, request), plain);
        }, file);
        expect(JSON.parse(again)).toEqual(file.answer);

        const buttons = fold.locator("li", { hasText: /^[a-z0-9]+(_[a-z0-9]+)*(, |CSV)/ }).getByRole("button");
        // Choices one after the other are one table, whose rows are labelled in words.
        const labels = (file.answer.choices ?? []).length > 1 ? 1 : 0;
        const tables = columnTables(
          file.answer.columns,
          (file.answer.choices ?? []).map((/** @type {unknown} */ _, /** @type {number} */ place) => String(place)),
        );
        await expect(buttons).toHaveCount(tables.length);
        for (const [index, { rows }] of tables.entries()) {
          const [head, ...body] = parsed(String((await saved(page, buttons.nth(index))).content));
          expect(head).toEqual(rows[0]);
          expect(body.map((row) => row.slice(labels).map(Number))).toEqual(
            rows.slice(1).map((row) => row.slice(labels)),
          );
          if (!labels)
            for (const name of head)
              if (file.answer.columns[name].length === body.length)
                expect(body.map((row) => Number(row[head.indexOf(name)]))).toEqual(file.answer.columns[name]);
        }
      });

      await test.step("every table is saved with a name for each column of figures", async () => {
        const buttons = fold.getByRole("heading", { name: "Tables" }).locator("+ ul").getByRole("button");
        expect(await buttons.count()).toBeGreaterThan(0);
        for (const button of await buttons.all()) {
          const { name, content } = await saved(page, button);
          expect(name).toMatch(new RegExp(`^fasterby-${id}-[a-z0-9-]+\\.csv$`));
          const [head, ...body] = parsed(String(content).replace(/^\ufeff/, ""));
          expect(body.length).toBeGreaterThan(0);
          for (const row of body) expect(row).toHaveLength(head.length);
          head.forEach((heading, column) => {
            if (body.some((row) => /^[+-]?[\d.]+$/.test(row[column]))) expect(heading).not.toBe("");
          });
        }
      });

      await test.step("it fits on one page of A4 and of Letter, inputs and link and all", async () => {
        await fold.locator("summary").click();
        await ready(page);
        for (const format of ["A4", "Letter"]) {
          const pdf = (await page.pdf({ format })).toString("latin1");
          expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g), format).toHaveLength(1);
        }
        await page.evaluate(() => dispatchEvent(new Event("afterprint")));
      });
    });
  },
);

/** Waits until what a printed page adds has been loaded, and makes it. @param {Page} page */
async function ready(page) {
  await expect
    .poll(() =>
      page.evaluate(() => {
        dispatchEvent(new Event("beforeprint"));
        const found = document.querySelector(".paper") !== null;
        if (!found) dispatchEvent(new Event("afterprint"));
        return found;
      }),
    )
    .toBe(true);
}

test("a printed page lists every input with its spread and how it is known, and the link as text and as a code", async ({
  page,
}) => {
  await openQuestion(page, "power-or-drag");
  await type(page, "Drag area, CdA", "0.222");
  await expect.poll(() => page.url()).toContain("/1");
  await page.emulateMedia({ media: "print" });
  await ready(page);
  const paper = page.locator(".paper");
  await expect(paper).toContainText("Drag area, CdA 0.222 m² ± 0.04 m², estimated");
  await expect(paper).toContainText("Air temperature 15 °C ± 2 °C, typical");
  await expect(paper).toContainText("Out and back yes");
  await expect(paper).toContainText(page.url());
  await expect(paper.getByRole("img", { name: "QR code of the link" })).toBeVisible();
  await expect(page.locator(".caution").first()).toBeVisible();

  await page.emulateMedia({ media: "screen" });
  await expect(paper).toBeHidden();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await expect(paper).toHaveCount(0);
});

test("what is saved follows what is typed", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  const fold = await openFold(page);
  const table = fold.locator("li", { hasText: "Finish time by power and drag area" }).getByRole("button");
  const before = await saved(page, table);
  await type(page, "Air temperature", "30");
  await expect(number(page, "Air temperature")).toHaveValue("30");
  const after = await saved(page, table);
  expect(String(after.content)).not.toBe(String(before.content));
  const file = JSON.parse(String((await saved(page, fold.getByRole("button", { name: "as JSON" }))).content));
  expect(file.request.scenario.conditions.temperature_c.value).toBe(30);
});

inOwnWindow("a saved picture looks like the chart, in the light and in the dark", async ({ page, context }) => {
  for (const colorScheme of /** @type {const} */ (["light", "dark"])) {
    await page.goto("about:blank");
    await page.emulateMedia({ colorScheme });
    await openQuestion(page, "power-or-drag");
    const fold = await openFold(page);
    const { content } = await saved(page, fold.getByRole("button", { name: "as SVG" }).first());
    const chart = page.locator("#host svg.chart").first();
    const seen = await chart.screenshot();
    const alone = await context.newPage();
    await alone.setContent(`<body style="margin:0">${content}`);
    const box = await chart.evaluate((one) => ({ x: 16, y: 16, width: one.clientWidth, height: one.clientHeight }));
    const drawn = await alone.screenshot({ clip: box });
    const unlike = await alone.evaluate(
      async (pictures) => {
        const images = await Promise.all(
          pictures.map(async (picture) => {
            const image = new Image();
            image.src = picture;
            await image.decode();
            return image;
          }),
        );
        // A chart that does not begin on a whole pixel is photographed one pixel larger.
        const [width, height] = [
          Math.min(...images.map((image) => image.width)),
          Math.min(...images.map((image) => image.height)),
        ];
        const [one, other] = images.map((image) => {
          const canvas = Object.assign(document.createElement("canvas"), { width, height });
          const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
          context.drawImage(image, 0, 0);
          return context.getImageData(0, 0, width, height).data;
        });
        return one.reduce((sum, value, index) => sum + Math.abs(value - other[index]), 0) / one.length;
      },
      [seen, drawn].map((png) => `data:image/png;base64,${png.toString("base64")}`),
    );
    expect(unlike).toBeLessThan(MOST_UNLIKE);
    await alone.close();
  }
});

test("the open fold has no faults that axe finds, and fits 320 pixels", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await openQuestion(page, "finish-time");
  await openFold(page);
  expect(await faults(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
