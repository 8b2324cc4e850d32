// @ts-check
/** Nothing leaves the device: whatever is done, every request goes to the page's own origin, and none carries a number. */

import { loopRide } from "./support/loop-ride.js";
import { expect, handle, notice, openQuestion, test, tool, type } from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const NUMBER = "0.2468";

/** Opens a made ride, and keeps its file on the device. @param {Page} page */
async function openRide(page) {
  const buffer = Buffer.from(loopRide([0.25, 0.24, 0.25]));
  await page.locator('.opener input[type="file"]').setInputFiles({ name: "ride.csv", mimeType: "text/csv", buffer });
  await expect(page.locator(".laps > li")).not.toHaveCount(0);
  await page.getByRole("checkbox", { name: "keep ride files on this device" }).check();
}

test.use({ offlineCopy: true });

test("using every part of the page asks nothing of another origin and sends nothing", async ({
  page,
  context,
  baseURL,
}) => {
  // Every question, one after the other.
  test.slow();
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const origin = new URL(String(baseURL)).origin;
  /** @type {string[]} */
  const improper = [];
  context.on("request", (request) => {
    const address = new URL(request.url());
    if (address.protocol === "blob:" || address.protocol === "data:") return;
    const fetches =
      address.origin === origin &&
      request.method() === "GET" &&
      address.search === "" &&
      !request.url().includes(NUMBER);
    if (!fetches) improper.push(`${request.method()} ${request.url()}`);
  });
  context.on("page", (other) => other.on("websocket", (socket) => improper.push(socket.url())));

  for (const { id, number, handles } of questions) {
    await openQuestion(page, id);
    await type(page, number.name, NUMBER);
    // A difference so small that no test shows it has no ring.
    const ring = handle(page, handles[0]);
    if (await ring.isVisible()) await ring.press("ArrowRight");
    if (id === "drag-test") await openRide(page);
    for (const fold of await page.locator(".folds summary:visible").all()) await fold.click();
  }
  await tool(page, "Share").click();
  await expect(notice(page)).toContainText("The link is copied");
  await tool(page, "Save").click();
  await page.getByRole("dialog").getByLabel("Name").fill("Thursday");
  await page.getByRole("dialog").getByRole("button", { name: "Save", exact: true }).click();
  await page.keyboard.press("Escape");
  await tool(page, "Help").click();
  await page.getByRole("dialog").getByRole("button", { name: "Your numbers" }).click();
  await page.goto("about:blank");

  expect(improper).toEqual([]);
});

test("the page's own policy refuses scripts, styles, forms and connections from elsewhere", async ({
  page,
  baseURL,
}) => {
  await openQuestion(page, questions[0].id);
  const policy = (await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content")) ?? "";
  for (const rule of ["default-src 'none'", "connect-src 'self'", "form-action 'none'"]) expect(policy).toContain(rule);
  expect(policy).not.toMatch(/https?:|\*/);
  expect(policy).not.toContain("'unsafe-inline'");
  expect(await (await fetch(String(baseURL))).text()).not.toMatch(/(src|href)="https?:/);
});
