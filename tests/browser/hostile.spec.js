// @ts-check
/** What links, names and host pages of strangers may not do: lose a rider's own numbers, widen the page, or leave a hole in a host page. */

import { createServer } from "node:http";
import { deflateRawSync } from "node:zlib";
import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import {
  answerText,
  expect,
  found,
  test as inOwnWindow,
  number,
  openQuestion,
  started,
  tool,
  type,
} from "./support/page.js";
import { questions } from "./support/questions.js";

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

inOwnWindow("a preference that was damaged does not stop the start", async ({ page }) => {
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

/** A name that turns the writing of whatever follows it. */
const TURNING = "\u202eabc";
/** Everything on the page that has a name of the reader's. */
const NAMED = {
  title: TURNING,
  positions: [
    { name: `${TURNING} low`, cda_m2: 0.25, equipment: [{ name: `${TURNING} helmet`, cda_change_m2: 0.004 }] },
    { name: `${TURNING} high`, cda_m2: 0.28 },
  ],
  events: [{ name: `${TURNING} event`, distance_m: 16_000 }],
};

test("a name that turns the writing turns nothing beside itself, wherever it stands in any question", async ({
  page,
}) => {
  const link = `1j.${Buffer.from(JSON.stringify({ s: NAMED })).toString("base64url")}`;
  const openNamed = async (/** @type {Page} */ page, /** @type {string} */ id) => {
    await page.goto(`/#${id}/${link}`);
    await started(page);
    await expect(page.locator("#host")).toHaveAttribute("data-question", id);
    await found(page);
  };
  const check = async (/** @type {{ id: string }} */ { id }) => {
    await page.locator("#host details").evaluateAll((folds) => {
      for (const fold of folds) fold.setAttribute("open", "");
    });
    await page.locator(".known").getByRole("button", { name: "Your numbers" }).click();
    await expect(page.locator(".sheet").getByLabel("Name of the position").first()).toHaveValue(`${TURNING} low`);
    const { seen, loose } = await page.evaluate(() => {
      const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      let seen = 0;
      /** @type {string[]} */
      const loose = [];
      while (texts.nextNode()) {
        const text = texts.currentNode.nodeValue ?? "";
        const parent = texts.currentNode.parentElement;
        if (!text.includes("\u202e") || parent?.closest("script, style, option, textarea")) continue;
        seen += 1;
        const unlocked = text.replace(/\u2068[^\u2068\u2069]*\u2069/gu, "");
        // A name that is all of its line turns nothing.
        let line = parent;
        while (line && getComputedStyle(line).display === "inline") line = line.parentElement;
        if (unlocked.includes("\u202e") && line?.textContent?.trim() !== text.trim())
          loose.push(`${parent?.tagName}.${parent?.getAttribute("class")}: ${text}`);
      }
      return { seen, loose };
    });
    if (id === "which-position") expect(seen).toBeGreaterThan(0);
    expect(loose).toEqual([]);
    await page.locator("#sheet").getByRole("button", { name: "Done" }).click();
    await expect(page.locator("#sheet")).toBeHidden();
  };
  await everyQuestion(page, questions, check, openNamed);
});

/** A course of tight bends, each of another radius and heading. @param {number} points */
const bends = (points) => ({
  kind: "profile",
  points: Array.from({ length: points }, (_, at) => ({
    distance_m: 20 * at,
    elevation_m: 50 + (at % 7) / 5,
    bearing_deg: (137 * at) % 360,
    ...(at % 2 === 1 && { radius_m: 5 + (at % 30) }),
  })),
});
/** What a course without points has in their place. */
const NO_SIMPLE_COURSE = { distance_m: null, grade: null, bearing_deg: null, out_and_back: null };
/** As many as the core takes. */
const MOST_POINTS = 20_000;

inOwnWindow(
  "a link with as many bends as are read is answered beside the page, which follows the hand meanwhile",
  async ({ page }) => {
    // What the page asks its worker for, but for the draws, which always are.
    await page.addInitScript(() => {
      const asked = /** @type {any} */ (globalThis).asked ?? [];
      Object.assign(globalThis, { asked });
      const post = Worker.prototype.postMessage;
      Worker.prototype.postMessage = function (/** @type {any[]} */ ...message) {
        const { question, request } = message[0] ?? {};
        if (question === "finish-time" && !request.with.part) asked.push(request.scenario.course.points?.length ?? 0);
        return Reflect.apply(post, this, message);
      };
    });
    const asked = () => page.evaluate(() => /** @type {any} */ (globalThis).asked);
    await openQuestion(page, "finish-time");
    const first = (await asked()).length;
    const short = await answerText(page);
    await type(page, CDA, "0.27");
    await expect.poll(() => answerText(page)).not.toBe(short);
    expect((await asked()).length, "a short course is ridden in the page").toBe(first);

    const held = { s: { course: { ...bends(MOST_POINTS), ...NO_SIMPLE_COURSE } } };
    const link = `#finish-time/1z.${deflateRawSync(JSON.stringify(held)).toString("base64url")}`;
    expect(link.length).toBeGreaterThan(100_000);
    await page.evaluate((hash) => {
      location.hash = hash;
    }, link);
    await expect(page.getByText(/The course has 20,?000 points; it is ridden over/)).toBeVisible();
    await found(page);
    const long = await answerText(page);
    const before = (await asked()).length;
    await type(page, CDA, "0.23");
    await expect.poll(async () => (await asked()).slice(before)).toContain(MOST_POINTS);
    await expect.poll(() => answerText(page)).not.toBe(long);
  },
);

/** A host page that holds this. @param {string} body @param {(address: string) => Promise<void>} use */
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
const DEEP_OBJECTS = `${'{"rider":'.repeat(70)}1${"}".repeat(70)}`;
const link = (/** @type {string} */ text) => `finish-time/1j.${Buffer.from(text).toString("base64url")}`;

/** The name of a question. */
const NAMES = [
  "best-colour",
  "",
  " ",
  "FINISH-TIME",
  "finish_time",
  "finish\u2011time",
  "\u202efinish-time",
  "finish-time\u0001",
  "finish-time power-or-drag",
  "../finish-time",
  "finish-time?x=1",
  "__proto__",
  "constructor",
  "toString",
  "&lt;img src=x onerror=alert(1)&gt;",
  "javascript:alert(1)",
  "q".repeat(100_000),
  "🚲",
];
/** What is no scenario as a whole. */
const NO_OBJECTS = [
  "{",
  "[]",
  "null",
  "true",
  "7",
  "&quot;{}&quot;",
  "{}{}",
  "{rider:{}}",
  '{"rider":{},}',
  '{"rider":/* none */{}}',
  '{"rider":{"total_mass_kg":NaN}}',
  '{"rider":{"total_mass_kg":0x50}}',
  '{"rider":{"total_mass_kg":+80}}',
  '{"title":"\u0001"}',
  DEEP,
  DEEP_OBJECTS,
];
/** Scenarios that are wrong inside. */
const WRONG_SCENARIOS = [
  '{"wheels":2}',
  '{"constructor":5}',
  '{"__proto__":{"polluted":1}}',
  '{"rider":{"total_mass_kg":-5}}',
  '{"rider":{"total_mass_kg":1e999}}',
  '{"rider":{"total_mass_kg":1e-300}}',
  '{"rider":{"total_mass_kg":[80]}}',
  '{"rider":{"total_mass_kg":{"value":{"value":80}}}}',
  '{"rider":{"total_mass_kg":{"value":80,"sd":-1}}}',
  '{"rider":{"total_mass_kg":{"value":80,"sd":"much"}}}',
  '{"rider":{"total_mass_kg":{"value":80,"source":"magic"}}}',
  '{"rider":{"total_mass_kg":{"value":80,"sd":1,"colour":"red"}}}',
  '{"rider":{"\\ud800":1}}',
  '{"rider":{"\\u202e":1}}',
  '{"rider":{"\\u0000":1}}',
  '{"rider":{"&lt;b&gt;":1}}',
  '{"positions":[]}',
  '{"positions":[null]}',
  '{"positions":["low"]}',
  '{"positions":{"length":3}}',
  '{"positions":[{"cda_m2":"0.2"}]}',
  '{"positions":[{"name":5,"cda_m2":0.2}]}',
  `{"positions":[${Array(2000).fill('{"cda_m2":0.2}').join(",")}]}`,
  '{"riding_position":99}',
  '{"course":{"distance_m":1e300}}',
  '{"course":{"distance_m":0}}',
  '{"course":{"kind":"moebius"}}',
  '{"course":{"kind":"profile","points":"steep"}}',
  '{"conditions":{"temperature_c":-400}}',
  '{"conditions":{"wind_from_deg":"north"}}',
  '{"power":{"cp_w":-1}}',
  '{"power":{"cp_w":[250]}}',
  '{"efforts":7}',
  '{"title":5}',
];
/** The numbers of a question, by question. @type {Record<string, string[]>} */
const WRONG_NUMBERS = {
  "power-or-drag": ['{"effort":"x"}', '{"effort":{"kind":"hop"}}', '{"power_change":"ten"}', '{"cda_change":1e999}'],
  "finish-time": [
    '{"effort":5}',
    '{"effort":[]}',
    '{"effort":{"kind":5}}',
    '{"effort":{"kind":"power","power_w":-1}}',
    '{"effort":{"kind":"power","power_w":[]}}',
    "[]",
    "5",
    "{",
    DEEP,
  ],
  "hold-or-fade": [
    '{"effort":true}',
    ...['"x"', "-1", "0.5", "[]", "true", "{}"].flatMap((value) => [`{"low":${value}}`, `{"steady":${value}}`]),
  ],
  "which-position": ['"x"', "-1", "0.5", "[]", "true", "{}"].map((value) => `{"reference":${value}}`),
  "next-gain": ['"x"', "5", "{}", "true"].map((value) => `{"times_ridden":${value}}`),
  "power-curve": ['"x"', "[]", "true", "{}"].map((value) => `{"hold_s":${value}}`),
  "leg-room": ['"x"', "[]", "true", "{}"].map((value) => `{"a":{"crank_m":${value}}}`),
  "speed-for-watts": [
    ...['"x"', "[]", "true", "{}"].map((value) => `{"grade":${value}}`),
    ...['"x"', "5", "[]"].map((value) => `{"effort":${value}}`),
    '{"power_w":"many"}',
    '{"power_w":1e999}',
    '{"__proto__":{"polluted":1}}',
  ],
};
/** Links. */
const WRONG_LINKS = [
  "finish-time/1j.!!!",
  "finish-time/1z.AAAA",
  "finish-time/9z.AAAA",
  "finish-time/0j.AAAA",
  link("[[["),
  link("[1]"),
  link("5"),
  link('{"s":[1]}'),
  link('{"s":5}'),
  link('{"s":{"rider":{"total_mass_kg":-5}}}'),
  link('{"s":{"wheels":3}}'),
  link('{"w":[1]}'),
  `finish-time/1j.${"A".repeat(500_000)}`,
];
/** Attributes that show nothing: a sentence stands there instead. @type {string[]} */
const WRONG = [
  ...NAMES.map((name) => `question="${name}"`),
  ...NO_OBJECTS.map((text) => `question="finish-time" scenario='${text}'`),
  ...WRONG_SCENARIOS.map((text) => `question="finish-time" scenario='${text}'`),
  ...["5", "[]", '"x"', "true"].flatMap((value) =>
    ["rider", "bike", "power", "conditions", "course"].map(
      (part) => `question="speed-for-watts" scenario='{"${part}":${value}}'`,
    ),
  ),
  ...Object.entries(WRONG_NUMBERS).flatMap(([id, all]) => all.map((text) => `question="${id}" with='${text}'`)),
  ...WRONG_LINKS.map((state) => `state="${state}"`),
  "",
  `question="best-colour" scenario="{" with="[" units="parsecs" theme="plaid" change="all" lang="tlh"`,
  `question="finish-time" scenario="{" with="{" state="finish-time/1z.!!!"`,
  `question="finish-time" theme="url(x)" change="__proto__" scenario='{"rider":5}'`,
];
/** Attributes that mean nothing, beside a question that is right: it answers as without them. @type {string[]} */
const IGNORED = [
  `theme="plaid" units="parsecs furlongs" change="cda wheels constructor __proto__ ((("`,
  `theme="&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;" units="${"mi ".repeat(20_000)}" change="cda"`,
  `theme="__proto__" units="constructor toString __proto__" change="${"x ".repeat(20_000)}cda"`,
  `style="x" onclick="" scenario=" " with=""`,
];
const FEWEST = 100;
/** Which languages a page may claim, and that of the visitor is spoken. */
const NO_LANGUAGES = ["tlh", "", "x".repeat(10_000), "&lt;b&gt;", "__proto__", "en_GB\u0001", "0"];

/** @param {Page} page @param {number} count how many places there are */
async function allSaid(page, count) {
  // What comes near the window is shown; those that were refused leave room for the next.
  await expect
    .poll(
      () =>
        page.locator("faster-by").evaluateAll((places) => {
          const waiting = places.filter((place) => !place.shadowRoot?.querySelector(".why, .figure"));
          waiting[0]?.scrollIntoView();
          return `${places.length - waiting.length}: ${waiting[0]?.outerHTML.slice(0, 120)}`;
        }),
      { intervals: [100] },
    )
    .toBe(`${count}: undefined`);
  return page.locator("faster-by").evaluateAll((places) =>
    places.map((place) => ({
      text: place.shadowRoot?.querySelector(".why")?.textContent ?? "",
      height: place.getBoundingClientRect().height,
      foreign: place.shadowRoot?.querySelectorAll("img, script, b").length,
    })),
  );
}

test("places whose attributes are wrong say so in a sentence and take no more room than that", async ({
  page,
  baseURL,
}) => {
  expect(new Set(WRONG).size).toBe(WRONG.length);
  expect(WRONG.length).toBeGreaterThanOrEqual(FEWEST);
  const ours = new URL(/** @type {string} */ (baseURL)).origin;
  const places = WRONG.map((attributes) => `<faster-by ${attributes}><p>Words of the club.</p></faster-by>`).join("\n");
  await onHost(`<script type="module" src="${ours}/embed.js"></script>${places}`, async (address) => {
    await page.goto(address);
    const all = await allSaid(page, WRONG.length);
    for (const [at, { text, height, foreign }] of all.entries()) {
      const which = WRONG[at].slice(0, 80);
      expect.soft(text, which).toMatch(/^This question cannot be shown here\. \u2068?[A-Z“].*\.\u2069?$/);
      expect.soft(text, which).not.toMatch(/call stack|undefined|\[object|JSON\.parse|fetch/);
      expect.soft(height, which).toBeLessThan(200);
      expect.soft(foreign, which).toBe(0);
    }
    expect(await page.evaluate(() => /** @type {any} */ ({}).polluted)).toBeUndefined();
  });
});

test("attributes that mean nothing are passed over, and the question answers", async ({ page, baseURL }) => {
  const ours = new URL(/** @type {string} */ (baseURL)).origin;
  const places = [
    ...IGNORED.map((attributes) => `<faster-by question="speed-for-watts" ${attributes}></faster-by>`),
    ...NO_LANGUAGES.map((lang) => `<faster-by question="speed-for-watts" lang="${lang}"></faster-by>`),
  ];
  await onHost(`<script type="module" src="${ours}/embed.js"></script>${places.join("\n")}`, async (address) => {
    await page.goto(address);
    for (let at = 0; at < places.length; at += 1) {
      const place = page.locator("faster-by").nth(at);
      await place.scrollIntoViewIfNeeded();
      await expect(place.locator(".figure .amount b").first(), places[at].slice(0, 120)).toHaveText(/^\d+[.,]\d$/);
      await expect(place.locator("[part=page]")).not.toHaveAttribute("data-theme");
      await expect(place.locator("[part=page]")).toHaveAttribute("lang", /^en/);
    }
    expect(await page.evaluate(() => /** @type {any} */ ({}).polluted)).toBeUndefined();
  });
});

inOwnWindow.describe("without its files", () => {
  inOwnWindow.use({ troubled: true });
  inOwnWindow("a place whose files do not come says so in words and leaves no hole", async ({ page, baseURL }) => {
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

inOwnWindow("an old library that changes how lists are written does no harm to a place", async ({ page, baseURL }) => {
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
