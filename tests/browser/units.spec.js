// @ts-check
/** Other units change what is read, never what is stored. */

import { answerText, expect, kept, number, open, openQuestion, started, test, tool, type } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page @param {...string} names */
async function choose(page, ...names) {
  await tool(page, "Units").click();
  for (const name of names) await page.getByRole("dialog", { name: "Units" }).getByRole("radio", { name, exact: true }).check();
  await page.keyboard.press("Escape");
}

/** Exact by definition: 1609.344 m an hour. */
const M_S_PER_MPH = 0.44704;

/** @param {any} work */
function windOf(work) {
  const held = work?.scenario.conditions.wind_speed_m_s;
  return held?.value ?? held ?? NaN;
}

const METRIC = ["kilometres, km/h", "m/s", "°C", "kg"];
const IMPERIAL = ["miles, mph", "mph", "°F", "lb"];

test("units there and back leave the stored numbers and the answer as they were", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await type(page, "Air temperature", "17.3");
  await type(page, "Wind speed, as forecast", "7.7");
  await expect.poll(async () => windOf(await kept(page))).toBeCloseTo(7.7 * M_S_PER_MPH, 9);
  const before = { answer: await answerText(page), scenario: (await kept(page)).scenario };

  await choose(page, ...METRIC);
  await expect(number(page, "Wind speed, as forecast")).toHaveValue("3.4");
  await expect.poll(() => answerText(page)).toMatch(/km/);
  await choose(page, ...IMPERIAL);
  await expect(number(page, "Air temperature")).toHaveValue("63.1");
  await choose(page, "°C");

  await expect(number(page, "Air temperature")).toHaveValue("17.3");
  await expect.poll(() => answerText(page)).toBe(before.answer);
  expect((await kept(page)).scenario).toEqual(before.scenario);
});

test("units are remembered", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await choose(page, ...METRIC);
  await expect(tool(page, "Units")).toHaveText("Kilometres, °C");
  await expect.poll(() => page.evaluate(() => localStorage.getItem("fasterby:units"))).toContain("km");
  await page.reload();
  await started(page);
  await expect(tool(page, "Units")).toHaveText("Kilometres, °C");
});

test("a value typed in another unit is turned into the one in use", async ({ page }) => {
  await openQuestion(page, "finish-time");
  await type(page, "Air temperature", "68 °F");
  await expect(number(page, "Air temperature")).toHaveValue("20");
  await type(page, "Wind speed, as forecast", "5 m/s");
  await expect(number(page, "Wind speed, as forecast")).toHaveValue(/^11\.2/);
});

test.describe("where miles are read", () => {
  test.use({ locale: "en-US" });
  test("the units are those that a reader is used to", async ({ page }) => {
    await open(page);
    await expect(tool(page, "Units")).toHaveText("Miles, °F");
  });
});

test.describe("where kilometres are read", () => {
  test.use({ locale: "de-DE" });
  test("the units are those that a reader is used to", async ({ page }) => {
    await open(page);
    await expect(tool(page, "Einheiten und Sprache")).toHaveText("km, °C");
  });
});
