// @ts-check
/** The story, figures, files and paper in German and French. */

import { readFile } from "node:fs/promises";
import { everyQuestion } from "./support/every-question.js";
import { expect, open, openQuestion, test } from "./support/page.js";
import { questions } from "./support/questions.js";
import { isPhrase, textsOf, wordsOf } from "./support/said.js";
import { expectNoSidewaysScroll } from "./support/widths.js";

/** @import { Browser, Page } from "@playwright/test" */

/**
 * @typedef {object} Spoken
 * @property {string} language
 * @property {Record<string, string>} titles of the questions
 * @property {string} sentence how the sentence of power or drag begins
 * @property {RegExp} faster a difference
 * @property {string} inputs the heading of the inputs on paper
 */

/** By the locale of the browser. @type {Record<string, Spoken>} */
const SPOKEN = {
  "de-DE": {
    language: "de",
    titles: {
      "speed-for-watts": "Welches Tempo bringen meine Watt?",
      "power-or-drag": "Mehr Leistung oder weniger Luftwiderstand?",
      "hold-or-fade": "Lohnt sich eine schnellere Position, die ich nicht halten kann?",
      "power-curve": "Was kann ich halten, und wie lange?",
      "drag-test": "Wie groß ist meine Luftwiderstandsfläche, und ist die neue Position schneller?",
      "next-gain": "Woran soll ich als Nächstes arbeiten?",
      "leg-room": "Was macht diese Einstellung mit meiner Hüfte?",
      "which-position": "Welche Position für welche Distanz?",
      "finish-time": "Wie lange werde ich brauchen?",
      "ride-plan": "Wie teile ich meine Kraft auf dieser Strecke ein?",
    },
    sentence: "Über",
    faster: /schneller um \d/,
    inputs: "Womit gerechnet wurde",
  },
  "fr-FR": {
    language: "fr",
    titles: {
      "speed-for-watts": "Quelle vitesse donnent mes watts ?",
      "power-or-drag": "Plus de puissance, ou moins de traînée ?",
      "hold-or-fade": "Une position plus rapide en vaut-elle la peine si je ne la tiens pas ?",
      "power-curve": "Que puis-je tenir, et combien de temps ?",
      "drag-test": "Quelle est ma surface de traînée, et la nouvelle position est-elle plus rapide ?",
      "next-gain": "Sur quoi travailler ensuite ?",
      "leg-room": "Que fait ce réglage à ma hanche ?",
      "which-position": "Quelle position pour quelle distance ?",
      "finish-time": "Combien de temps me faudra-t-il ?",
      "ride-plan": "Comment répartir mon effort sur ce parcours ?",
    },
    sentence: "Sur",
    faster: /plus rapide de \d/,
    inputs: "Données d’entrée",
  },
};
const WIDTHS_PX = [320, 390, 640, 760, 820, 1440];
const PHONE = { width: 390, height: 844 };

/** The question as the English page tells it. @param {Browser} browser @param {string} id */
async function inEnglish(browser, id) {
  const elsewhere = await browser.newContext({ locale: "en-GB" });
  const page = await elsewhere.newPage();
  await openQuestion(page, id);
  await folded(page);
  const said = new Set((await textsOf(page)).map(wordsOf));
  await elsewhere.close();
  return said;
}

/** Opens every fold and waits for what comes when it is opened. @param {Page} page */
async function folded(page) {
  await page.locator("details[data-fold]").evaluateAll((all) =>
    all.forEach((fold) => {
      /** @type {HTMLDetailsElement} */ (fold).open = true;
    }),
  );
  if (await page.locator('[data-fold="take"]').count())
    await expect(page.locator('[data-fold="take"] li').first()).toBeAttached();
  if (await page.locator('[data-fold="site"]').count())
    await expect(page.locator('[data-fold="site"] textarea').first()).toBeAttached();
}

for (const [locale, { language, titles, sentence, faster, inputs }] of Object.entries(SPOKEN)) {
  test.describe(`in ${language}`, () => {
    test.use({ locale });

    test("the questions are asked in it, fit every width, and on a phone the figure with its ± is there at once", async ({
      page,
    }) => {
      await page.setViewportSize(PHONE);
      await everyQuestion(page, questions, async ({ id }) => {
        await expect.soft(page.getByRole("heading", { level: 1 }), id).toHaveText(titles[id]);
        const [sure, bar] = await Promise.all(
          [".figure .pm", "footer.bar"].map((part) => page.locator(part).evaluate((it) => it.getBoundingClientRect())),
        );
        expect.soft(sure.bottom, id).toBeLessThanOrEqual(bar.top);
        await expectNoSidewaysScroll(page, WIDTHS_PX, id);
      });
    });

    test("every step of the story, and what the reader changed, is told in it", async ({ page, browser }) => {
      await open(page, "#start-here");
      await expect(page.locator(".step .also").first()).toContainText(/\d,\d/);
      for (const chart of await page.locator('.step svg.chart [role="slider"]').all()) await chart.press("ArrowRight");
      const english = await inEnglish(browser, "start-here");
      expect((await textsOf(page)).map(wordsOf).filter((words) => english.has(words) && isPhrase(words))).toEqual([]);
      for (const width of WIDTHS_PX) {
        await page.setViewportSize({ width, height: 900 });
        await expect
          .poll(() => page.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth))
          .toBeLessThanOrEqual(0);
      }
    });

    test("the sentence, the figures and how sure they are, a saved table, and paper follow the language", async ({
      page,
    }) => {
      await openQuestion(page, "power-or-drag");
      await expect.soft(page.locator(".sentence")).toContainText(sentence);
      await expect.soft(page.locator(".lines").first()).toContainText(faster);

      await openQuestion(page, "speed-for-watts");
      await expect.soft(page.locator(".figure .amount b")).toHaveText(/^\d+,\d$/);
      await folded(page);
      const downloading = page.waitForEvent("download");
      await page.locator('[data-fold="take"] button', { hasText: "CSV" }).nth(1).click();
      const text = await readFile(await (await downloading).path(), "utf8");
      expect.soft(text.split("\r\n")[1], "as spreadsheets read it where a comma is the decimal mark").toMatch(/;\d/);
      expect.soft(text).toMatch(/\d,\d/);

      // One page, which holds every input.
      await openQuestion(page, "finish-time");
      await expect
        .poll(async () => {
          await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
          return page.locator(".paper h2").count();
        })
        .toBe(1);
      await expect(page.locator(".paper h2")).toContainText(inputs);
      await expect(page.locator(".paper .inputs")).toContainText(/\d,\d/);
      const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    });
  });
}
