// @ts-check
import { expect, test } from "@playwright/test";

test("the page opens, answers, and complains of nothing", async ({ page }) => {
  /** @type {string[]} */
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("requestfailed", (request) => complaints.push(`${request.url()} could not be fetched`));
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${response.url()} gave ${response.status()}`);
  });

  await page.goto("./");

  await expect(page).toHaveTitle(/Fasterby/);
  await expect(page.getByRole("main").getByRole("spinbutton").first()).toBeVisible();
  expect(complaints).toEqual([]);
});

test("the page asks nothing of any other origin", async ({ page, baseURL }) => {
  const origin = new URL(String(baseURL)).origin;
  /** @type {string[]} */
  const elsewhere = [];
  page.on("request", (request) => {
    const address = new URL(request.url());
    if (address.protocol.startsWith("http") && address.origin !== origin) elsewhere.push(request.url());
  });

  await page.goto("./", { waitUntil: "networkidle" });

  expect(elsewhere).toEqual([]);
});
