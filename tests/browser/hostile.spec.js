// @ts-check
/** What links, names and host pages of strangers may not do: lose a rider's own numbers, widen the page, or leave a hole in a host page. */

import { createServer } from "node:http";
import { answerText, expect, number, openQuestion, started, test, tool, type } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

const CDA = "Drag area, CdA";
const packed = (/** @type {unknown} */ held) =>
  `#speed-for-watts/1j.${Buffer.from(JSON.stringify(held)).toString("base64url")}`;
const cda = (/** @type {number} */ value) =>
  packed({ s: { positions: [{ name: "low", cda_m2: { value, sd: 0.01, source: "measured" } }] } });
const kept = (/** @type {Page} */ page) => page.evaluate(() => JSON.stringify(localStorage.getItem("fasterby:last")));

test("two links and an edit between them leave one's own numbers within reach", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  await type(page, CDA, "0.263");
  await expect.poll(() => kept(page)).toContain("0.263");
  await page.goto("about:blank");
  await page.goto(`/${cda(0.391)}`);
  await started(page);
  await type(page, CDA, "0.392");
  await expect.poll(() => kept(page)).toContain("0.392");
  await page.goto("about:blank");
  await page.goto(`/${cda(0.311)}`);
  await started(page);
  await expect(number(page, CDA)).toHaveValue("0.311");
  await page.getByRole("button", { name: "Back to mine" }).click();
  await expect(number(page, CDA)).toHaveValue("0.263");
  await tool(page, "Save").click();
  await expect(page.getByRole("dialog")).toContainText("Your numbers before the last link");
  await expect(page.getByRole("dialog")).toContainText("Numbers from an earlier link");
});

test("a preference that was damaged does not stop the start", async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem("fasterby:reading", '{"language":5}');
    localStorage.setItem("fasterby:saved:bad", '{"layout":1,"saved_at":5,"scenario":{}}');
  });
  await openQuestion(page, "speed-for-watts");
  await expect.poll(() => answerText(page)).toMatch(/mph|km/);
  await tool(page, "Save").click();
  await expect(page.getByRole("dialog")).toBeVisible();
});

test("a name of many letters, or one that turns the writing, does not widen the page", async ({ page }) => {
  for (const name of ["x".repeat(380), "\u202eabc"]) {
    await page.goto("about:blank");
    await page.goto(
      `/#which-position/1j.${Buffer.from(
        JSON.stringify({
          s: {
            positions: [
              { name, cda_m2: 0.25 },
              { name: "other", cda_m2: 0.24 },
            ],
          },
        }),
      ).toString("base64url")}`,
    );
    await started(page);
    await expect.poll(() => answerText(page)).toMatch(/\d:\d\d/);
    const [width, window] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(width).toBeLessThanOrEqual(window);
  }
});

/** A host page that holds this. @param {Page} page @param {string} body @param {(address: string) => Promise<void>} use */
async function onHost(body, use) {
  const server = createServer((_, response) =>
    response
      .writeHead(200, { "content-type": "text/html; charset=utf-8" })
      .end(`<!doctype html><html lang="en"><title>A club</title><body>${body}</body></html>`),
  );
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  try {
    await use(`http://127.0.0.1:${/** @type {any} */ (server.address()).port}/`);
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

const DEEP = `{"rider":${"[".repeat(200_000)}${"]".repeat(200_000)}}`;
/** Attributes that show nothing: a sentence stands there instead. @type {string[]} */
const WRONG = [
  `question="best-colour"`,
  `question="finish-time" scenario='{'`,
  `question="finish-time" scenario='[]'`,
  `question="finish-time" scenario='${DEEP}'`,
  ...["power-or-drag", "finish-time", "hold-or-fade"].flatMap((id) =>
    ['"x"', "5", "[]", '{"kind":5}', '{"kind":"hop"}', "true"].map(
      (effort) => `question="${id}" with='{"effort":${effort}}'`,
    ),
  ),
  ...['"x"', "5", "[]"].map((effort) => `question="speed-for-watts" with='{"effort":${effort}}'`),
  ...['"x"', "-1", "0.5", "[]", "true", "{}"].flatMap((value) => [
    `question="which-position" with='{"reference":${value}}'`,
    `question="hold-or-fade" with='{"low":${value}}'`,
    `question="hold-or-fade" with='{"steady":${value}}'`,
  ]),
  ...['"x"', "5", "{}", "true"].map((value) => `question="next-gain" with='{"times_ridden":${value}}'`),
  ...['"x"', "[]", "true", "{}"].flatMap((value) => [
    `question="power-curve" with='{"hold_s":${value}}'`,
    `question="leg-room" with='{"a":{"crank_m":${value}}}'`,
    `question="speed-for-watts" with='{"grade":${value}}'`,
  ]),
  ...["5", "[]", '"x"', "true"].flatMap((value) =>
    ["rider", "bike", "power", "conditions", "course"].map(
      (part) => `question="speed-for-watts" scenario='{"${part}":${value}}'`,
    ),
  ),
  ...["1j.!!!", "1z.AAAA", "9z.AAAA", `1j.${Buffer.from("[[[").toString("base64url")}`].map(
    (link) => `state="finish-time/${link}"`,
  ),
];

test("places whose attributes are wrong say so in a sentence and take no more room than that", async ({
  page,
  baseURL,
}) => {
  const ours = new URL(/** @type {string} */ (baseURL)).origin;
  const places = WRONG.map((attributes) => `<faster-by ${attributes}><p>Words of the club.</p></faster-by>`).join("\n");
  await onHost(`<script type="module" src="${ours}/embed.js"></script>${places}`, async (address) => {
    await page.goto(address);
    for (let at = 0; at < WRONG.length; at += 1) {
      const place = page.locator("faster-by").nth(at);
      await place.scrollIntoViewIfNeeded();
      await expect(place.locator(".why"), WRONG[at].slice(0, 80)).toHaveText(
        /^This question cannot be shown here\. [A-Z“].*\.$/,
      );
      await expect(place.locator(".why")).not.toHaveText(/call stack|undefined|JSON\.parse|fetch/);
      expect((await place.boundingBox())?.height, WRONG[at].slice(0, 80)).toBeLessThan(200);
    }
  });
});

test.describe("without its files", () => {
  test.use({ troubled: true });
  test("a place whose files do not come says so in words and leaves no hole", async ({ page, baseURL }) => {
    const ours = new URL(/** @type {string} */ (baseURL)).origin;
    await page.route(/wasm|style\.css/, (route) => route.abort());
    await onHost(
      `<script type="module" src="${ours}/embed.js"></script><faster-by question="finish-time"><p>Words of the club.</p></faster-by>`,
      async (address) => {
        await page.goto(address);
        await expect(page.locator(".why")).toHaveText(/could not be loaded/);
        await expect(page.locator(".why")).not.toHaveText(/fetch/);
        expect((await page.locator("faster-by").boundingBox())?.height).toBeLessThan(200);
      },
    );
  });
});

test("an old library that changes how lists are written does no harm to a place", async ({ page, baseURL }) => {
  const ours = new URL(/** @type {string} */ (baseURL)).origin;
  await onHost(
    `<script>Array.prototype.toJSON = function () { return "lost"; };</script><script type="module" src="${ours}/embed.js"></script><faster-by question="finish-time"></faster-by>`,
    async (address) => {
      await page.goto(address);
      await expect(page.locator("faster-by .figure .amount b").first()).toHaveText(/\d:\d\d/);
    },
  );
});

test("a frame takes the attributes in its address, and where all is fixed nothing invites to change it", async ({
  page,
}) => {
  await page.goto("/embed/frame.html?lang=en&units=km&theme=dark&change=#speed-for-watts");
  const place = page.locator("faster-by");
  await expect(place.locator(".answer")).toContainText("km/h");
  await expect(place.locator("[part=page]")).toHaveAttribute("data-theme", "dark");
  await expect(place.getByText("Drag the ring").first()).toBeHidden();
  for (const handle of await place.locator(".handle").all()) {
    await expect(handle).toHaveAttribute("aria-disabled", "true");
    await expect(handle).toHaveAttribute("tabindex", "-1");
  }
});

test("which position's table has one figure a cell and its rows a name", async ({ page }) => {
  await openQuestion(page, "which-position");
  await page.locator('[data-fold="take"] summary').click();
  const item = page.locator('[data-fold="take"] li', { hasText: "distance_m" }).first();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    item.getByRole("button", { name: /CSV/ }).click(),
  ]);
  const stream = await download.createReadStream();
  let text = "";
  for await (const piece of stream) text += piece;
  const [head, ...rows] = text
    .replace(/^\ufeff/, "")
    .trim()
    .split("\r\n");
  expect(head).toMatch(/^choice,distance_m,difference_s/);
  for (const row of rows) expect(row).toMatch(/^[^,]*[^,\d.-][^,]*,\d/);
});
