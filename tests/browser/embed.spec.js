// @ts-check
/** A question on somebody else's page: another origin, a strict content policy, styles and scripts of its own. */

import { createServer } from "node:http";
import { faults } from "./support/accessibility.js";
import { test as base, expect, inMotion } from "./support/page.js";

/** @import { Page } from "@playwright/test" */

/** A host page on an origin of its own. @typedef {{ show: (page: Page, body: string, options?: { head?: string, policy?: string, script?: string }) => Promise<void>, address: string }} Host */

/** The directives that the README names, and nothing else. @param {string} ours @param {string[]} [directives] */
const policyFor = (ours, directives = [`script-src ${ours} 'wasm-unsafe-eval'`, `connect-src ${ours}`]) =>
  ["default-src 'none'", ...directives].join("; ");

/** @type {import("@playwright/test").TestType<any, any>} */
const test = base.extend(
  /** @type {any} */ ({
    ours: async (/** @type {any} */ { baseURL }, /** @type {any} */ use) => use(new URL(baseURL).origin),
    host: async (/** @type {any} */ { ours }, /** @type {any} */ use) => {
      let policy = "";
      let html = "";
      const server = createServer((request, response) => {
        const isPage = request.url === "/";
        response.writeHead(isPage ? 200 : 204, {
          "content-type": "text/html; charset=utf-8",
          ...(policy && { "content-security-policy": policy }),
        });
        response.end(isPage ? html : "");
      });
      await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
      const address = `http://127.0.0.1:${/** @type {any} */ (server.address()).port}/`;
      /** @type {Host} */
      const host = {
        address,
        async show(page, body, { head = "", policy: wanted = policyFor(ours), script = "embed/v1.js" } = {}) {
          policy = wanted;
          html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>A club</title>
          ${head}${script && `<script type="module" src="${ours}/${script}"></script>`}</head><body><main><h1>The club’s own page</h1>${body}</main></body></html>`;
          await page.goto(address);
        },
      };
      await use(host);
      server.closeAllConnections();
      server.close();
    },
  }),
);

test.use({ contextOptions: inMotion });

const TWO = `
  <faster-by id="one" question="power-or-drag" units="mi C" scenario='{"course":{"distance_m":16093.44},"conditions":{"temperature_c":9}}'><p>Ten percent more power, or less drag?</p></faster-by>
  <p id="between">Words of the club between the two.</p>
  <faster-by id="two" question="finish-time" units="km C"><p>How long will it take?</p></faster-by>`;

/** @param {Page} page @param {string} id */
const figure = (page, id) => page.locator(`#${id} .figure .amount b`);

/** @param {Page} page @param {string} id @param {string} name */
const number = (page, id, name) => page.locator(`#${id}`).getByRole("spinbutton", { name, exact: true });

/** One of them, answered and seen: it is laid out before it is shown. @param {Page} page @param {string} id */
async function answeredOne(page, id) {
  await expect(figure(page, id)).toHaveText(/\d:\d\d/);
  await expect(page.locator(`#${id} [part=page]`)).toBeVisible();
}

/** Both of them, answered and seen. @param {Page} page */
async function answered(page) {
  await answeredOne(page, "one");
  await page.locator("#two").scrollIntoViewIfNeeded();
  await answeredOne(page, "two");
}

test("two questions answer on a page of another origin whose policy allows only what is documented", async ({
  page,
  host,
  ours,
  context,
}) => {
  /** @type {string[]} */
  const requests = [];
  context.on("request", (/** @type {any} */ request) => requests.push(request.url()));
  await host.show(page, TWO);
  await answered(page);

  await expect(page.locator("#one").getByRole("combobox", { name: "How far" })).toHaveValue(/16093/);
  await expect(number(page, "one", "Air temperature")).toHaveValue("9");
  const before = await figure(page, "two").innerText();
  await number(page, "two", "Drag area, CdA").fill("0.3");
  await expect(figure(page, "two")).not.toHaveText(before);

  // Each module once, however many questions ask it.
  const modules = requests.filter((url) => url.endsWith(".wasm"));
  expect(new Set(modules).size).toBe(modules.length);
  expect(modules.length).toBeGreaterThan(0);
  expect(
    requests.filter((url) => !url.startsWith(ours) && !url.startsWith(host.address) && !url.startsWith("data:")),
  ).toEqual([]);
});

test.describe("under a policy that lacks one of the documented directives", () => {
  test.use({ troubled: true });

  for (const [missing, directives] of /** @type {[string, (ours: string) => string[]][]} */ ([
    ["'wasm-unsafe-eval'", (ours) => [`script-src ${ours}`, `connect-src ${ours}`]],
    ["connect-src", (ours) => [`script-src ${ours} 'wasm-unsafe-eval'`]],
  ])) {
    test(`without ${missing} the words of the host stay, with a line that says it cannot be shown`, async ({
      page,
      host,
      ours,
    }) => {
      await host.show(page, TWO, { policy: policyFor(ours, directives(ours)) });
      await expect(page.locator("#one")).toContainText("Ten percent more power, or less drag?");
      await expect(page.locator("#one .why")).toContainText("This question cannot be shown here");
    });
  }

  test("without script-src the words of the host stay as they are", async ({ page, host, ours }) => {
    await host.show(page, TWO, { policy: policyFor(ours, []) });
    await expect(page.getByText("Ten percent more power, or less drag?")).toBeVisible();
  });
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("the words of the host are read in place of the question", async ({ page, host }) => {
    await host.show(page, TWO);
    await expect(page.getByText("Ten percent more power, or less drag?")).toBeVisible();
    await expect(page.getByText("How long will it take?")).toBeVisible();
  });
});

/** Layouts of a phone, a tablet and a desktop. */
const WIDTHS_PX = [390, 820, 1440];

for (const width of WIDTHS_PX) {
  test(`a host page that gives them a window’s room does not move when questions arrive, at ${width} pixels`, async ({
    page,
    host,
    ours,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.addInitScript(() => {
      const seen = /** @type {any} */ (globalThis);
      seen.shifts = [];
      new PerformanceObserver((list) =>
        seen.shifts.push(...list.getEntries().map((entry) => /** @type {any} */ (entry).value)),
      ).observe({ type: "layout-shift", buffered: true });
    });
    const policy = policyFor(ours, [
      `script-src ${ours} 'wasm-unsafe-eval'`,
      `connect-src ${ours}`,
      "style-src 'unsafe-inline'",
    ]);
    await host.show(page, TWO, { policy, head: "<style>faster-by { display: flow-root; min-height: 100vh; }</style>" });
    await answeredOne(page, "one");
    const place = () => page.locator("#between").evaluate((element) => element.getBoundingClientRect().top + scrollY);
    const before = await place();
    await answered(page);
    // The draws come later.
    await expect(page.locator("#one .odds")).toContainText("100");
    expect(await place()).toBe(before);
    expect(await page.evaluate(() => /** @type {any} */ (globalThis).shifts)).toEqual([]);
  });
}

test("a question far below loads only when it comes near the window", async ({ page, host, context }) => {
  /** @type {string[]} */
  const requests = [];
  context.on("request", (/** @type {any} */ request) => requests.push(request.url()));
  await host.show(
    page,
    `${"<p>Words of the club.</p>".repeat(200)}<faster-by id="one" question="finish-time">How long will it take?</faster-by>`,
  );
  await page.waitForLoadState("networkidle");
  expect(requests.filter((url) => /\.wasm|\.css/.test(url))).toEqual([]);
  await page.locator("#one").scrollIntoViewIfNeeded();
  await answeredOne(page, "one");
});

test("neither page's styles reach into the other, and the host's globals stay as they were", async ({
  page,
  host,
  ours,
}) => {
  const policy = policyFor(ours, [
    `script-src ${ours} 'wasm-unsafe-eval'`,
    `connect-src ${ours}`,
    "style-src 'unsafe-inline'",
  ]);
  const styles = () =>
    page.locator("#one").evaluate((element) => {
      const within = /** @type {ShadowRoot} */ (element.shadowRoot);
      return [".figure b", ".sentence", "h1", "summary", "table"].map((selector) => {
        const { fontSize, color, fontFamily, textAlign, textTransform, letterSpacing, display } = getComputedStyle(
          /** @type {Element} */ (within.querySelector(selector)),
        );
        return { selector, fontSize, color, fontFamily, textAlign, textTransform, letterSpacing, display };
      });
    });
  await host.show(page, TWO, { policy });
  await answered(page);
  const plain = await styles();

  await page.addInitScript(() => {
    addEventListener("DOMContentLoaded", () => {
      /** @type {any} */ (globalThis).namesBefore = [...Object.getOwnPropertyNames(globalThis), "namesBefore"];
    });
  });
  const head = `<style>html { font-size: 7px; text-transform: uppercase; letter-spacing: 3px; --paper: red; --rem: 40px; }
    * { font-family: monospace; color: red !important; text-align: right; } h1, summary, table, b, .figure { display: none; } #between { font-size: 21px; }</style>`;
  await host.show(page, TWO, { policy, head });
  await answered(page);
  expect(await styles()).toEqual(plain);
  expect(await page.locator("#between").evaluate((element) => getComputedStyle(element).fontSize)).toBe("21px");
  expect(
    await page.evaluate(() =>
      Object.getOwnPropertyNames(globalThis).filter(
        (name) => !(/** @type {any} */ (globalThis).namesBefore.includes(name)),
      ),
    ),
  ).toEqual([]);
});

test("a host page sets colours, the theme and pieces through what is documented", async ({ page, host, ours }) => {
  const policy = policyFor(ours, [
    `script-src ${ours} 'wasm-unsafe-eval'`,
    `connect-src ${ours}`,
    "style-src 'unsafe-inline'",
  ]);
  const head =
    "<style>faster-by { --faster-by-paper: rgb(250, 240, 230); } faster-by::part(folds) { display: none; }</style>";
  await host.show(
    page,
    `<faster-by id="one" question="power-or-drag" theme="light">Words</faster-by><faster-by id="two" question="finish-time" theme="dark">Words</faster-by>`,
    { policy, head },
  );
  await answered(page);
  const ground = (/** @type {string} */ id) => page.locator(`#${id} [part=page]`);
  await expect(ground("one")).toHaveCSS("background-color", "rgb(250, 240, 230)");
  await expect(ground("two")).toHaveCSS("color", "rgb(236, 238, 233)");
  await expect(page.locator("#one .folds")).toBeHidden();
});

test("axe finds nothing wrong with two questions on a page, and nothing scrolls sideways at 320 pixels", async ({
  page,
  host,
}) => {
  await host.show(page, TWO);
  await answered(page);
  expect.soft(await faults(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  await host.show(page, TWO);
  await answered(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});

/** Attributes that a page may hold by mistake or on purpose. @type {[what: string, attributes: string, said: RegExp][]} */
const WRONG = [
  ["a question nobody knows", `question="<img src=x onerror=alert(1)>"`, /no question called “<img src=x/],
  ["a scenario that is no JSON", `question="finish-time" scenario="<script>alert(1)</script>"`, /not a JSON object/],
  ["a scenario that is a list", `question="finish-time" scenario="[1]"`, /not a JSON object/],
  ["a field that does not exist", `question="finish-time" scenario='{"rider":{"<b>":1}}'`, /no field “<b>”/],
  ["a number outside its range", `question="finish-time" scenario='{"rider":{"total_mass_kg":-5}}'`, /runs from/],
  [
    "something else where a number should be",
    `question="finish-time" scenario='{"rider":{"total_mass_kg":"heavy"}}'`,
    /holds something other/,
  ],
  [
    "parts of another shape",
    `question="finish-time" scenario='{"positions":"none","course":7,"power":[]}'`,
    /cannot be shown/,
  ],
  [
    "a way to a prototype",
    `question="finish-time" scenario='{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}'`,
    /cannot be shown/,
  ],
  [
    "numbers of the question that are wrong",
    `question="finish-time" with='{"effort":{"kind":"hop"}}'`,
    /cannot be shown/,
  ],
  ["a damaged link", `state="power-or-drag/1z.@@@"`, /incomplete or damaged/],
  ["a link from later", `state="power-or-drag/99z.AAAA"`, /newer version/],
  ["nothing at all", "", /no question called/],
];

test("a place whose attributes are wrong says so in words, and the host’s own words stay", async ({ page, host }) => {
  const places = WRONG.map(
    ([, attributes], at) => `<faster-by id="wrong-${at}" ${attributes}><p>Own words.</p></faster-by>`,
  );
  await host.show(page, places.join(""));
  for (const [at, [what, , said]] of WRONG.entries()) {
    await test.step(what, async () => {
      const place = page.locator(`#wrong-${at}`);
      await place.scrollIntoViewIfNeeded();
      await expect(place.locator(".why")).toHaveText(said);
      await expect(place.getByText("Own words.")).toBeVisible();
      expect(await place.evaluate((element) => element.shadowRoot?.querySelectorAll("img, script, b").length)).toBe(0);
    });
  }
  expect(await page.evaluate(() => /** @type {any} */ ({}).polluted)).toBeUndefined();
});

test("only the numbers that the host names can be changed", async ({ page, host }) => {
  await host.show(page, `<faster-by id="one" question="power-or-drag" change="cda">Words</faster-by>`);
  await answeredOne(page, "one");
  const answer = () => page.locator("#one .lines").innerText();
  const before = await answer();

  const watts = number(page, "one", "Power");
  await expect(watts).toHaveAttribute("aria-readonly", "true");
  await watts.press("ArrowUp");
  await watts.hover();
  await page.mouse.down();
  await page.mouse.move(600, 200, { steps: 5 });
  await page.mouse.up();
  await expect(page.locator("#one").getByRole("combobox", { name: "How far" })).toBeDisabled();
  const handle = page.locator("#one").getByRole("slider", { name: "You on the map" });
  await handle.press("ArrowRight");
  expect(await answer()).toBe(before);
  await expect(watts).toHaveValue("235");

  await number(page, "one", "Drag area, CdA").press("ArrowUp");
  await expect.poll(answer).not.toBe(before);
  await page.locator("#one").getByRole("button", { name: "Back to the start" }).click();
  await expect.poll(answer).toBe(before);
});

test("a point of a chart is fixed where it moves only numbers that are", async ({ page, host }) => {
  await host.show(
    page,
    `<faster-by id="one" question="power-or-drag" change="cda">Words</faster-by>
     <faster-by id="two" question="speed-for-watts" change="cda">Words</faster-by>`,
  );
  for (const [id, fixed] of /** @type {const} */ ([
    ["one", false],
    ["two", true],
  ])) {
    await page.locator(`#${id}`).scrollIntoViewIfNeeded();
    const point = page.locator(`#${id} .handle`).first();
    await expect(point).toBeVisible();
    if (fixed) await expect(point).toHaveAttribute("aria-disabled", "true");
    else await expect(point).not.toHaveAttribute("aria-disabled");
  }
});

/** @type {[what: string, body: string, heading: string, lang: string][]} */
const LANGUAGES = [
  [
    "of its own",
    '<faster-by id="one" question="power-or-drag" lang="fr">Words</faster-by>',
    "Plus de puissance, ou moins de traînée",
    "fr",
  ],
  [
    "of what is around it",
    '<div lang="de-AT"><faster-by id="one" question="power-or-drag">Words</faster-by></div>',
    "Mehr Leistung oder weniger Luftwiderstand",
    "de",
  ],
  [
    "of the visitor, where the page speaks another one",
    '<div lang="nl"><faster-by id="one" question="power-or-drag">Words</faster-by></div>',
    "More power, or less drag",
    "en-GB",
  ],
];

test("a question speaks its own language, that of what is around it, or that of the visitor", async ({
  page,
  host,
}) => {
  for (const [what, body, heading, lang] of LANGUAGES) {
    await test.step(what, async () => {
      await host.show(page, body);
      await answeredOne(page, "one");
      await expect.soft(page.locator("#one h1"), what).toContainText(heading);
      await expect.soft(page.locator("#one [part=page]"), what).toHaveAttribute("lang", lang);
      expect.soft(await faults(page), what).toEqual([]);
    });
  }
});

for (const lang of ["de", "fr"]) {
  test(`the room that is kept is enough for ${lang}, which takes more words`, async ({ page, host }) => {
    await host.show(
      page,
      `<faster-by id="one" question="power-or-drag" lang="${lang}">Words</faster-by><faster-by id="two" question="finish-time" lang="${lang}">Words</faster-by>`,
    );
    await answered(page);
    for (const width of WIDTHS_PX) {
      await page.setViewportSize({ width, height: 900 });
      for (const id of ["one", "two"]) {
        await expect
          .poll(() =>
            page.locator(`#${id}`).evaluate((element) => {
              const room = /** @type {Element} */ (element.shadowRoot?.querySelector(".room"));
              return room.getBoundingClientRect().height - Number.parseFloat(getComputedStyle(room).minHeight);
            }),
          )
          .toBe(0);
      }
    }
  });
}

test("a question that is alone follows a change of its language, and two speak that of the first", async ({
  page,
  host,
}) => {
  await host.show(page, '<faster-by id="one" question="power-or-drag" lang="de">Words</faster-by>');
  await answeredOne(page, "one");
  await page.locator("#one").evaluate((element) => {
    /** @type {HTMLElement} */ (element).lang = "fr";
  });
  await expect(page.locator("#one h1")).toContainText("traînée");
  await host.show(
    page,
    '<faster-by id="one" question="power-or-drag" lang="fr">Words</faster-by><faster-by id="two" question="finish-time" lang="de">Words</faster-by>',
  );
  await answered(page);
  await expect(page.locator("#two [part=page]")).toHaveAttribute("lang", "fr");
});

test("what cannot be shown is said in its language", async ({ page, host }) => {
  await host.show(page, '<faster-by id="one" question="nothing" lang="de">Words</faster-by>');
  await expect(page.locator("#one .why")).toHaveText(
    /Diese Frage kann hier nicht gezeigt werden\. Es gibt keine Frage namens „nothing“/,
  );
});

test("each answer is told to the host page as an event", async ({ page, host }) => {
  await page.addInitScript(() =>
    addEventListener("answer", (event) => {
      const seen = /** @type {any} */ (globalThis);
      seen.answers ??= [];
      seen.answers.push(/** @type {CustomEvent} */ (event).detail);
    }),
  );
  await host.show(page, TWO);
  await answered(page);
  await number(page, "one", "Drag area, CdA").fill("0.3");
  const told = () =>
    page.evaluate(() =>
      /** @type {any} */ (globalThis).answers.map((/** @type {any} */ { question, request, answer }) => ({
        question,
        cda: request.scenario.positions[0].cda_m2.value,
        base_s: (answer.base_time_s ?? answer.time_s)?.value,
      })),
    );
  await expect
    .poll(async () => (await told()).at(-1))
    .toMatchObject({ question: "power-or-drag", cda: 0.3, base_s: expect.any(Number) });
  expect((await told()).map(({ question }) => question)).toEqual(
    expect.arrayContaining(["power-or-drag", "finish-time"]),
  );
});

test("a question follows its attributes, and may be moved and removed", async ({ page, host }) => {
  await host.show(page, TWO);
  await answered(page);
  await page.locator("#one").evaluate((element) => element.setAttribute("question", "speed-for-watts"));
  await expect(page.locator("#one h1")).toHaveText("What speed do my watts give?");
  await page.locator("#one").evaluate((element) => document.querySelector("main")?.append(element));
  await page.locator("#one").scrollIntoViewIfNeeded();
  await expect(page.locator("#one h1")).toHaveText("What speed do my watts give?");
  await page.locator("#one").evaluate((element) => element.remove());
  await expect(page.locator("h1", { hasText: "watts" })).toHaveCount(0);
});

test("the lines under “Put this on your site” show the same answer elsewhere", async ({
  page,
  host,
  context,
  ours,
}) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"], { origin: ours });
  await page.goto(`${ours}/#power-or-drag`);
  await page.getByRole("spinbutton", { name: "Drag area, CdA", exact: true }).fill("0.29");
  await page.locator("summary", { hasText: "Put this on your site" }).click();
  await page.getByRole("button", { name: "Copy the two lines" }).click();
  await expect(page.getByText("It is copied.")).toBeVisible();
  const lines = await page.evaluate(() => navigator.clipboard.readText());
  const own = await page.locator(".lines").first().innerText();
  expect(lines.split("\n")).toHaveLength(2);

  await host.show(page, lines.replace("<faster-by", "<faster-by id=one"));
  await expect.poll(() => page.locator("#one .lines").first().innerText()).toBe(own);
});

test.describe("on a German page", () => {
  test.use({ locale: "de-DE" });
  test("the lines and the frame under “Put this on your site” name the language", async ({ page, ours }) => {
    await page.goto(`${ours}/#finish-time`);
    await page.locator('[data-fold="site"] summary').click();
    const lines = page.locator('[data-fold="site"] textarea');
    await expect(lines.first()).toHaveValue(/ lang="de"[^>]*><p>Wie lange werde ich brauchen\? <a /);
    await expect(lines.nth(1)).toHaveValue(
      /frame\.html\?lang=de&#38;units=[^"#]*#finish-time\/[^"]*" title="Wie lange/,
    );
  });
});

test("a frame has its height also where the script for it comes late", async ({ page, host, ours }) => {
  const policy = policyFor(ours, [`script-src ${ours}`, `frame-src ${ours}`]);
  await host.show(
    page,
    `<iframe id="frame" src="${ours}/embed/frame.html#power-or-drag" title="More power, or less drag?" width="100%" height="300"></iframe>`,
    { policy, script: "" },
  );
  await expect(page.frameLocator("#frame").locator(".odds")).toContainText("of 100 tries");
  await page.evaluate(
    (src) => document.head.append(Object.assign(document.createElement("script"), { type: "module", src })),
    `${ours}/frame-height.js`,
  );
  await expect
    .poll(() => page.locator("#frame").evaluate((frame) => Number(frame.getAttribute("height"))))
    .toBeGreaterThan(1000);
});

test("a frame shows the question, asks for its height, and only its own word is taken", async ({
  page,
  host,
  ours,
}) => {
  const policy = policyFor(ours, [`script-src ${ours}`, `frame-src ${ours}`]);
  await host.show(
    page,
    `<script type="module" src="${ours}/frame-height.js"></script>
    <iframe id="frame" src="${ours}/embed/frame.html#power-or-drag" title="More power, or less drag?" width="100%" height="300"></iframe>`,
    { policy, script: "" },
  );
  await expect(page.frameLocator("#frame").locator(".figure .amount b")).toHaveText(/\d:\d\d/);
  const height = () => page.locator("#frame").evaluate((frame) => Number(frame.getAttribute("height")));
  await expect.poll(height).toBeGreaterThan(1000);
  const asked = await height();
  await page.evaluate(() => postMessage({ type: "fasterby-height", height_px: 12 }, "*"));
  await page.frames()[1].evaluate(() => {
    for (const data of [
      { type: "fasterby-height", height_px: 1e9 },
      { type: "fasterby-height", height_px: "12" },
      "12",
      null,
    ])
      parent.postMessage(data, "*");
  });
  await page.frames()[1].locator("summary").first().click();
  await expect.poll(height).toBeGreaterThanOrEqual(asked);
});
