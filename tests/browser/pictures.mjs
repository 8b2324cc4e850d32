// @ts-check
/** Takes the pictures that README.md shows: the page on a desktop and on a phone. `cargo xtask pictures` serves the page and says where. */

import { fileURLToPath } from "node:url";
import { chromium } from "@playwright/test";

const { FASTERBY_ADDRESS: address = "http://localhost:8000/", CHROME: executablePath } = process.env;
/** A comparison that a rider finds first, and the ride of a finish time. */
const PICTURES = [
  { name: "page", hash: "#power-or-drag", viewport: { width: 1280, height: 860 } },
  { name: "phone", hash: "#power-or-drag", viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
];

const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
try {
  for (const { name, hash, ...device } of PICTURES) {
    const page = await browser.newPage({ ...device, locale: "en-GB", deviceScaleFactor: 2, reducedMotion: "reduce" });
    await page.goto(`${address}${hash}`);
    await page.waitForSelector("html[data-started]");
    // The odds come from the worker.
    await page.waitForFunction(() => !document.querySelector("#host [data-searching]"));
    await page.waitForTimeout(1500);
    const path = fileURLToPath(new URL(`../../.readme/${name}.png`, import.meta.url));
    await page.screenshot({ path });
    await page.close();
    console.log(path);
  }
} finally {
  await browser.close();
}
