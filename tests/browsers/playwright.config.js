// @ts-check
import { defineConfig } from "@playwright/test";

// `cargo xtask test browsers` serves the built page and says where (FASTERBY_ADDRESS), and which programs to use: FIREFOX,
// WEBKIT_DRIVER and XVFB. The runner alone is Playwright's; Firefox is steered through its own protocol, WebKit through its driver.
export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.js",
  outputDir: "../../target/browsers-tests",
  forbidOnly: Boolean(process.env.CI),
  // One browser of each engine, beside each other.
  workers: 2,
  retries: 0,
  reporter: "list",
  timeout: 120_000,
  expect: { timeout: 20_000 },
  projects: [{ name: "firefox" }, { name: "webkit" }],
});
