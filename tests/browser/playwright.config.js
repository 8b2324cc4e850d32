// @ts-check
import { defineConfig } from "@playwright/test";

// `cargo xtask test browser` serves the built page and says where, and which Chromium to use. It also gives XTASK, the program
// that serves (`XTASK serve --no-build --port 0`), to tests that must stop their server. Run by itself, Playwright starts one.
const ownAddress = "http://localhost:8123/";
const address = process.env.FASTERBY_ADDRESS;

export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.js",
  outputDir: "../../target/browser-tests",
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  retries: 0,
  // One more than the processors that the bound of time is for: a test that waits for the page leaves its own idle.
  workers: 3,
  reporter: "list",
  // Patient, for a machine that is busy with other things; a page that works answers at once.
  timeout: 60_000,
  expect: { timeout: 20_000 },
  use: {
    baseURL: address ?? ownAddress,
    locale: "en-GB",
    trace: "off",
    // Charts that glide are drawn over and over. Specs about what moves have them glide: `inMotion` of support/page.js.
    contextOptions: { reducedMotion: "reduce" },
    launchOptions: {
      executablePath: process.env.CHROME,
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
      ],
    },
  },
  webServer: address
    ? undefined
    : { command: "cargo xtask serve --port 8123", url: ownAddress, reuseExistingServer: true, timeout: 300_000 },
});
