// @ts-check
/** Other units change what is read, never what is stored. */

import { test } from "./support/one-page.js";
import {
  answerText,
  expect,
  test as inOwnWindow,
  kept,
  number,
  open,
  openQuestion,
  started,
  tool,
  type,
} from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** @param {Page} page @param {...string} names */
async function choose(page, ...names) {
  await tool(page, "Units").click();
  for (const name of names)
    await page.getByRole("dialog", { name: "Units" }).getByRole("radio", { name, exact: true }).check();
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

/** A number of each kind that is read in several units, and one value of it in both. */
const EITHER_WAY = [
  { name: "Rider, bicycle and kit together", metric: [83, "kg"], imperial: [183, "lb"] },
  { name: "Distance", metric: [32, "km"], imperial: [19.9, "mi"] },
  { name: "Air temperature", metric: [9, "°C"], imperial: [48.2, "°F"] },
  { name: "Air pressure", metric: [1020, "hPa"], imperial: [30.12, "inHg"] },
  { name: "Altitude of the course", metric: [305, "m"], imperial: [1001, "ft"] },
  { name: "Wind speed, as forecast", metric: [5, "m/s"], imperial: [11.2, "mph"] },
];
/** Both values are rounded to what the field shows. */
const ROUNDING_SHARE = 0.012;

test("every kind of unit may be typed beside a number, whichever is in use and however often that has changed", async ({
  page,
}) => {
  await page.setViewportSize({ width: 1440, height: 1000 });
  await openQuestion(page, "finish-time");
  await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
  const sheet = page.getByRole("complementary", { name: "Your numbers" });
  // It is fetched when it is first opened.
  await expect(sheet.locator(".sheet-group").first()).toBeVisible();
  await sheet.locator(".sheet-group").evaluateAll((groups) => {
    for (const group of groups) group.setAttribute("open", "");
  });
  await sheet.getByRole("combobox", { name: "The altitude is" }).selectOption("given");
  for (const [use, units] of /** @type {const} */ ([
    ["imperial", [...IMPERIAL, "inHg", "ft"]],
    ["metric", [...METRIC, "hPa", "m"]],
    ["imperial", [...IMPERIAL, "inHg", "ft"]],
  ])) {
    await choose(page, ...units);
    for (const row of EITHER_WAY) {
      const field = sheet.getByRole("spinbutton", { name: row.name, exact: true });
      const wanted = Number(row[use][0]);
      for (const typed of [row.metric, row.imperial]) {
        await field.fill("");
        await field.fill(typed.join(" "));
        await field.press("Tab");
        await expect(field, `${typed.join(" ")} with ${use} units in use`).not.toHaveAttribute("aria-invalid", "true");
        const shown = Number(await field.inputValue());
        expect(Math.abs(shown / wanted - 1), `${typed.join(" ")} was read as ${shown} ${row[use][1]}`).toBeLessThan(
          ROUNDING_SHARE,
        );
      }
    }
  }
});

inOwnWindow.describe("where miles are read", () => {
  inOwnWindow.use({ locale: "en-US" });
  inOwnWindow("the units are those that a reader is used to", async ({ page }) => {
    await open(page);
    await expect(tool(page, "Units")).toHaveText("Miles, °F");
  });
});

inOwnWindow.describe("where kilometres are read", () => {
  inOwnWindow.use({ locale: "de-DE" });
  inOwnWindow("the units are those that a reader is used to", async ({ page }) => {
    await open(page);
    await expect(tool(page, "Einheiten und Sprache")).toHaveText("km, °C");
  });
});
