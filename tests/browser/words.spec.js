// @ts-check
/** The page in each of its languages: nothing left in another, numbers as they are written there, the choice kept, and the books in step. */

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { faults } from "./support/accessibility.js";
import { expect, kept, number, open, openQuestion, test, tool } from "./support/page.js";
import { questions } from "./support/questions.js";
import { isPhrase, textsOf, wordsOf } from "./support/said.js";

/** @import { Page } from "@playwright/test" */

const LANGUAGES = { de: { locale: "de-DE", name: "Deutsch" }, fr: { locale: "fr-FR", name: "Français" } };

/** Phrases that are the same in English and another language. */
const SAME = ["miles mph", "W′ W prime"];
const PAGES = ["start-here", ...questions.map(({ id }) => id)];
const WIDTHS_PX = [1440, 820, 390, 320];

/** @param {string} language */
const folderOf = (language) => join(test.info().config.rootDir, "../../www/words", language);

/** @param {string} language @returns {string[]} */
const booksIn = (language) => readdirSync(folderOf(language)).sort();

/** @param {string} language @param {string} file @returns {Promise<Record<string, string | Record<string, string>>>} */
const read = async (language, file) => (await import(pathToFileURL(join(folderOf(language), file)).href)).default;

/** @param {string | Record<string, string>} template */
const formsOf = (template) => (typeof template === "string" ? [template] : Object.values(template));

/** @param {string} text */
const placeholders = (text) => [...new Set(text.match(/\{\w+\}/g) ?? [])].sort();

for (const language of Object.keys(LANGUAGES)) {
  test(`the books in ${language} have the keys, placeholders and forms of the English ones`, async () => {
    expect(booksIn(language)).toEqual(booksIn("en"));
    for (const file of booksIn("en").filter((file) => file !== "core.js")) {
      const [english, translated] = [await read("en", file), await read(language, file)];
      expect(Object.keys(translated).sort(), file).toEqual(Object.keys(english).sort());
      for (const [key, template] of Object.entries(english)) {
        expect(typeof translated[key], `${file}: ${key}`).toBe(typeof template);
        const wanted = placeholders(formsOf(template).join(" "));
        // A form for one may leave its number out.
        expect(placeholders(formsOf(translated[key]).join(" ")), `${file}: ${key}`).toEqual(wanted);
        for (const form of formsOf(translated[key]))
          expect((form.match(/\*\*/g) ?? []).length % 2, `${file}: ${key}`).toBe(0);
      }
    }
  });
}

/** Opens what is folded away, and waits for what comes when it is opened. @param {Page} page */
async function unfold(page) {
  // What unfolds may hold more that is folded.
  await expect(async () => {
    await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    await expect(page.locator("details:not([open])")).toHaveCount(0, { timeout: 500 });
  }).toPass();
  for (const [fold, fetched] of [
    ["take", "li"],
    ["site", "textarea"],
  ]) {
    const there = page.locator(`[data-fold="${fold}"]`);
    if (await there.count()) await expect(there.locator(fetched).first()).toBeAttached();
  }
}

/** Everything that is said on a page and in its sheet, as words alone. @param {Page} page @param {string} id */
async function saidOn(page, id) {
  await openQuestion(page, id);
  await unfold(page);
  const opener = page.locator(".known button:visible");
  if (await opener.count()) {
    await opener.first().click();
    await expect(page.locator("#sheet .sheet-group").first()).toBeVisible();
    await unfold(page);
  }
  return new Set((await textsOf(page)).map(wordsOf));
}

/** What each dialog says. @param {Page} page */
async function saidInDialogs(page) {
  await open(page);
  const said = new Set();
  for (const name of ["units", "saved", "help"]) {
    await page.locator(`.tools [data-tool="${name}"]`).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    for (const text of await textsOf(page)) said.add(wordsOf(text));
    await page.keyboard.press("Escape");
  }
  return said;
}

for (const id of PAGES) {
  test(`${id} leaves nothing in English, fits every width and has no fault, in ${Object.keys(LANGUAGES).join(" and ")}`, async ({
    page,
    browser,
  }) => {
    const english = await saidOn(page, id);
    for (const { locale } of Object.values(LANGUAGES)) {
      const there = await (await browser.newContext({ locale })).newPage();
      const said = await saidOn(there, id);
      expect(
        [...said].filter((words) => english.has(words) && isPhrase(words) && !SAME.includes(words)),
        locale,
      ).toEqual([]);
      for (const width of WIDTHS_PX) {
        await there.setViewportSize({ width, height: 844 });
        await expect
          .poll(
            () => there.evaluate(() => (document.scrollingElement?.scrollWidth ?? 0) - innerWidth),
            `${locale}, ${width} px`,
          )
          .toBeLessThanOrEqual(0);
      }
      expect(await faults(there), locale).toEqual([]);
      await there.context().close();
    }
  });
}

for (const [language, { locale, name }] of Object.entries(LANGUAGES)) {
  test.describe(name, () => {
    test.use({ locale });

    test("the dialogs leave nothing in English", async ({ page, browser }) => {
      const english = await (await browser.newContext({ locale: "en-GB" })).newPage();
      const said = await saidInDialogs(english);
      await english.context().close();
      expect(
        [...(await saidInDialogs(page))].filter((words) => said.has(words) && isPhrase(words) && !SAME.includes(words)),
      ).toEqual([]);
    });

    test("a number is typed and shown with a comma, and an error says its range with one", async ({ page }) => {
      await openQuestion(page, "power-or-drag");
      const field = page.locator('main input[data-path$="cda_m2"]').first();
      const figure = page.locator("main .answer .figure .amount b");
      const before = await figure.textContent();
      await field.fill("0,198");
      await field.press("Tab");
      await expect(field).toHaveValue("0,198");
      await expect(figure).not.toHaveText(before ?? "");
      await field.fill("0.201");
      await field.press("Tab");
      await expect(field).toHaveValue("0,201");
      await field.fill("9");
      await expect(page.locator(".wrongs .wrong:visible")).toContainText("0,800");
    });

    test("what the core warns of is said in it", async ({ page }) => {
      await openQuestion(page, "power-or-drag");
      const said = await page.evaluate(() => document.documentElement.lang);
      expect(said).toBe(language);
      const field = page.locator('main input[data-path$="temperature_c"]').first();
      await field.fill("45");
      await field.press("Tab");
      await expect(page.getByRole("main")).toContainText(language === "de" ? "üblich ist" : "d’habitude, c’est de");
    });

    test("it has no fault that axe finds, and its language is named", async ({ page }) => {
      await open(page);
      await expect(page.locator("html")).toHaveAttribute("lang", language);
      expect(await faults(page)).toEqual([]);
      await page.locator('.tools [data-tool="units"]').click();
      expect(await faults(page)).toEqual([]);
    });
  });
}

/** @param {Page} page @param {string} name */
async function speak(page, name) {
  await page.locator('.tools [data-tool="units"]').click();
  // Its mark follows once the words are fetched.
  await page.getByRole("dialog").getByRole("radio", { name, exact: true }).click();
}

test("another language is chosen without losing a number or a step of undo, and is kept", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  await number(page, "Drag area, CdA").fill("0.222");
  await number(page, "Drag area, CdA").press("Tab");
  await speak(page, "Deutsch");
  await expect(
    page.getByRole("dialog", { name: "Einheiten und Sprache" }).getByRole("radio", { name: "Deutsch" }),
  ).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Mehr Leistung oder weniger Luftwiderstand?");
  const field = number(page, "Luftwiderstandsfläche, CdA");
  await expect(field).toHaveValue("0,222");
  await tool(page, "Zurück").click();
  await expect(field).toHaveValue("0,240");
  await tool(page, "Wieder vor").click();
  await expect(field).toHaveValue("0,222");
  await expect.poll(async () => (await kept(page))?.scenario.positions[0].name).toBe("meine Haltung");
  await page.reload();
  await expect(number(page, "Luftwiderstandsfläche, CdA")).toHaveValue("0,222");
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await speak(page, "English");
  await page.keyboard.press("Escape");
  await expect(number(page, "Drag area, CdA")).toHaveValue("0.222");
});

test("the sheet follows another language while it is open", async ({ page }) => {
  await open(page);
  await page.locator(".known button").click();
  await speak(page, "Français");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("complementary", { name: "Tes chiffres" })).toBeVisible();
  await expect(page.locator("#sheet")).toContainText("± est un écart type");
});

test("the decimal mark may be another than the language's, and is kept", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  await page.locator('.tools [data-tool="units"]').click();
  await page.getByRole("dialog").getByRole("radio", { name: "comma: 0,242" }).check();
  await page.keyboard.press("Escape");
  await expect(number(page, "Drag area, CdA")).toHaveValue("0,240");
  await page.reload();
  await expect(number(page, "Drag area, CdA")).toHaveValue("0,240");
});

test.describe("when a language cannot be fetched", () => {
  test.use({ troubled: true });

  test("the page stays as it was and says so", async ({ page }) => {
    await open(page);
    await page.locator('.tools [data-tool="units"]').click();
    await page.route(/part-.*\.js/, (route) => route.abort());
    await page.getByRole("dialog").getByRole("radio", { name: "Deutsch", exact: true }).click();
    await expect(page.locator("#notice")).toContainText("missing on its server");
    await expect(page.locator(".answer h1, .ask h1")).toHaveText("More power, or less drag?");
    await expect(page.getByRole("dialog").getByRole("radio", { name: "English", exact: true })).toBeChecked();
  });
});
