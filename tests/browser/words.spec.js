// @ts-check
/** The page in each of its languages: nothing left in another, numbers as they are written there, and the choice kept. */

import { faults, faultsOfWords } from "./support/accessibility.js";
import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { expect, found, test as inOwnWindow, kept, number, open, openQuestion, tool } from "./support/page.js";
import { questions } from "./support/questions.js";
import { isPhrase, textsOf, wordsOf } from "./support/said.js";
import { expectNoSidewaysScroll } from "./support/widths.js";

/** @import { Page } from "@playwright/test" */

const LANGUAGES = { de: { locale: "de-DE", name: "Deutsch" }, fr: { locale: "fr-FR", name: "Français" } };

/** Phrases that are the same in English and another language. */
const SAME = ["miles mph", "W′ W prime", "Plan W"];
const PAGES = ["start-here", ...questions.map(({ id }) => id)];
const WIDTHS_PX = [1440, 820, 390, 320];
const WIDE = { width: 1280, height: 844 };

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

/** Everything that is said on a page and in its sheet, as words alone. @param {Page} page */
async function saidOn(page) {
  await unfold(page);
  const opener = page.locator(".known > button:visible");
  if (await opener.count()) {
    if (await page.locator("#sheet").isHidden()) await opener.first().click();
    await expect(page.locator("#sheet .sheet-group").first()).toBeVisible();
    await unfold(page);
  }
  return new Set((await textsOf(page)).map(wordsOf));
}

/** Chooses a language. @param {Page} page @param {string} name */
async function speak(page, name) {
  await page.locator('.tools [data-tool="units"]').click();
  // Its mark follows once the words are fetched.
  await page.getByRole("dialog").getByRole("radio", { name, exact: true }).click();
}

/** Chooses a language with the units of a reader there; French has the word “miles”. @param {Page} page @param {string} language @param {string} name */
async function speakAsThere(page, language, name) {
  await speak(page, name);
  // The dialog in the language before leaves once the one in this language is there.
  await page.locator('input[name="units-distance"][value="km"]').last().check();
  await page.keyboard.press("Escape");
  await expect(page.locator("html")).toHaveAttribute("lang", language);
  await found(page);
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

// In two halves, which run beside each other.
for (const pages of [PAGES.slice(0, PAGES.length / 2), PAGES.slice(PAGES.length / 2)]) {
  const named = pages.map((id) => ({ id }));
  test(`${pages.join(", ")} leave nothing in English, fit every width and have no fault, in ${Object.keys(LANGUAGES).join(" and ")}`, async ({
    page,
  }) => {
    await page.setViewportSize(WIDE);
    /** @type {Record<string, Set<string>>} */
    const english = {};
    await everyQuestion(page, named, async ({ id }) => {
      english[id] = await saidOn(page);
    });
    for (const [language, { name }] of Object.entries(LANGUAGES)) {
      const openInIt = async (/** @type {Page} */ page, /** @type {string} */ id) => {
        await openQuestion(page, id);
        if ((await page.locator("html").getAttribute("lang")) !== language) await speakAsThere(page, language, name);
      };
      const check = async (/** @type {{ id: string }} */ { id }) => {
        const said = await saidOn(page);
        const left = [...said].filter((words) => english[id].has(words) && isPhrase(words) && !SAME.includes(words));
        expect.soft(left, `${id} in ${language}`).toEqual([]);
        await expectNoSidewaysScroll(page, WIDTHS_PX, language);
        expect(await faultsOfWords(page)).toEqual([]);
      };
      await test.step(name, () => everyQuestion(page, named, check, openInIt));
    }
  });
}

for (const [language, { locale, name }] of Object.entries(LANGUAGES)) {
  inOwnWindow.describe(name, () => {
    inOwnWindow.use({ locale });

    inOwnWindow("the dialogs leave nothing in English", async ({ page, browser }) => {
      const english = await (await browser.newContext({ locale: "en-GB" })).newPage();
      const said = await saidInDialogs(english);
      await english.context().close();
      expect(
        [...(await saidInDialogs(page))].filter((words) => said.has(words) && isPhrase(words) && !SAME.includes(words)),
      ).toEqual([]);
    });

    inOwnWindow(
      "it has no fault that axe finds, its language is named, and what the core warns of is said in it",
      async ({ page }) => {
        await openQuestion(page, "power-or-drag");
        await expect.soft(page.locator("html")).toHaveAttribute("lang", language);
        expect.soft(await faults(page)).toEqual([]);
        await page.locator('.tools [data-tool="units"]').click();
        expect.soft(await faults(page)).toEqual([]);
        await page.keyboard.press("Escape");
        const field = page.locator('main input[data-path$="temperature_c"]').first();
        await field.fill("45");
        await field.press("Tab");
        await expect(page.getByRole("main")).toContainText(language === "de" ? "üblich ist" : "d’habitude, c’est de");
      },
    );

    inOwnWindow("a number is typed and shown with a comma, and an error says its range with one", async ({ page }) => {
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
  });
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
  await tool(page, "Rückgängig").click();
  await expect(field).toHaveValue("0,240");
  await tool(page, "Wiederholen").click();
  await expect(field).toHaveValue("0,222");
  await expect.poll(async () => (await kept(page))?.scenario.positions[0].name).toBe("meine Position");
  await page.reload();
  await expect(number(page, "Luftwiderstandsfläche, CdA")).toHaveValue("0,222");
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await speak(page, "English");
  await page.keyboard.press("Escape");
  await expect(number(page, "Drag area, CdA")).toHaveValue("0.222");
});

test("the sheet follows another language while it is open", async ({ page }) => {
  await open(page);
  await page.locator(".known > button").click();
  await speak(page, "Français");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("complementary", { name: "Tes chiffres" })).toBeVisible();
  await expect(page.locator("#sheet")).toContainText("La vérité est à ± près deux fois sur trois");
});

test("the decimal mark may be another than the language's, and is kept", async ({ page }) => {
  await openQuestion(page, "power-or-drag");
  await page.locator('.tools [data-tool="units"]').click();
  const comma = page.getByRole("dialog").getByRole("radio", { name: "comma: 0,242" });
  // The dialog is made anew in the new mark, so what is checked is looked up again.
  await comma.click();
  await expect(comma).toBeChecked();
  await page.keyboard.press("Escape");
  await expect(number(page, "Drag area, CdA")).toHaveValue("0,240");
  await page.reload();
  await expect(number(page, "Drag area, CdA")).toHaveValue("0,240");
});

inOwnWindow.describe("when a language cannot be fetched", () => {
  inOwnWindow.use({ troubled: true });

  inOwnWindow("the page stays as it was and says so", async ({ page }) => {
    await open(page);
    await page.locator('.tools [data-tool="units"]').click();
    await page.route(/part-.*\.js/, (route) => route.abort());
    await page.getByRole("dialog").getByRole("radio", { name: "Deutsch", exact: true }).click();
    await expect(page.locator("#notice")).toContainText("missing on its server");
    await expect(page.locator(".answer h1, .ask h1")).toHaveText("More power, or less drag?");
    await expect(page.getByRole("dialog").getByRole("radio", { name: "English", exact: true })).toBeChecked();
  });
});
