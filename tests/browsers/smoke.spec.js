// @ts-check
/** The page in engines other than Chromium's: every question, the story, the one file and a question on another site. */

import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { test as base, expect } from "@playwright/test";
import { questions } from "../browser/support/questions.js";
import { engines } from "./engines.js";
import { eventually } from "./webdriver.js";

/** @import { Browser } from "./webdriver.js" */

const ADDRESS = process.env.FASTERBY_ADDRESS ?? "http://localhost:8000/";
/** How WebDriver writes keys that are no letters. */
const TAB = "\ue004";
const UP = "\ue013";
const STEPS_OF_THE_STORY = 6;

/** @type {import("@playwright/test").TestType<any, any>} */
const test = base.extend(
  /** @type {any} */ ({
    // One browser serves all tests of an engine: starting it is what takes time.
    browser: [
      // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of fixtures from this pattern.
      async (/** @type {any} */ {}, /** @type {any} */ use, /** @type {any} */ info) => {
        const browser = await engines[info.project.name]();
        await use(browser);
        await browser.close();
      },
      { scope: "worker" },
    ],
    /** The one file, on a disk. */
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of fixtures from this pattern.
    file: async (/** @type {any} */ {}, /** @type {any} */ use) => {
      const folder = await mkdtemp(join(tmpdir(), "fasterby-"));
      const path = join(folder, "somewhere else.html");
      await writeFile(path, Buffer.from(await (await fetch(new URL("fasterby.html", ADDRESS))).arrayBuffer()));
      await use(pathToFileURL(path).href);
      await rm(folder, { recursive: true });
    },
  }),
);

/** Opens a page anew, also where only the text after `#` differs, with nothing kept from before. @param {Browser} browser @param {string} url */
async function open(browser, url) {
  await browser.go(url);
  // The driver may answer before the page is there; a blank one has no storage, and one that is left answers nothing.
  await eventually(
    () =>
      browser
        .evaluate(() => {
          if (location.href === "about:blank") return false;
          // A page that is left keeps its numbers once more.
          Storage.prototype.setItem = () => undefined;
          localStorage.clear();
          return true;
        })
        .catch(() => false),
    `The way to ${url}`,
  );
  await browser.go("about:blank");
  await browser.go(url);
  await eventually(
    () => browser.evaluate(() => document.documentElement.dataset.started === "").catch(() => false),
    `The start of ${url}`,
  );
}

/** What a change of a number must change, and whether it is still being worked out or drawn. @param {Browser} browser @returns {Promise<{ answer: string, drawing: string, points: string, searching: boolean, moving: boolean, undrawn: boolean }>} */
function look(browser) {
  return browser.evaluate(() => {
    const texts = (/** @type {string} */ selector) =>
      [...document.querySelectorAll(selector)].map((element) => element.textContent);
    return {
      answer: texts("main .claim, main .figure .amount, main .lines").join(" "),
      drawing: [...document.querySelectorAll("main .picture path")].map((path) => path.getAttribute("d")).join(" "),
      // A change may leave the answer as it was; its point on the chart moves all the same.
      points: [...document.querySelectorAll("main .picture .handle")]
        .map((point) => point.getBoundingClientRect().x.toFixed(2))
        .join(" "),
      searching: document.querySelector("#host [data-searching]") !== null,
      // A point glides to its place.
      moving: document.getAnimations().some(({ playState }) => playState === "running"),
      // A chart is drawn in the frame after the one in which it has found its width.
      undrawn: [...document.querySelectorAll("main .picture svg")].some(
        (chart) => chart.getClientRects().length > 0 && !chart.querySelector("path[d]"),
      ),
    };
  });
}

/** What is there once the charts have found their width. @param {Browser} browser */
async function settled(browser) {
  let before = await look(browser);
  await eventually(async () => {
    const now = await look(browser);
    const still =
      !now.searching &&
      !now.undrawn &&
      now.drawing.trim() !== "" &&
      now.drawing === before.drawing &&
      !now.moving &&
      now.answer === before.answer;
    before = now;
    return still;
  }, "The drawing");
  return before;
}

/** @param {string} name */
const numberNamed = (name) => `main [role="spinbutton"][aria-label="${name}"]`;

/** Types over a number of the sentence. @param {Browser} browser @param {string} name @param {string} keys */
async function type(browser, name, keys) {
  await browser.evaluate((selector) => {
    const input = /** @type {HTMLInputElement} */ (document.querySelector(selector));
    input.focus();
    input.select();
  }, numberNamed(name));
  await browser.type(numberNamed(name), keys);
}

for (const { id, title, number } of questions) {
  test(`${id} answers, follows its numbers and the arrow keys, and says what a number may be`, async ({ browser }) => {
    await open(browser, `${ADDRESS}#${id}`);
    expect(await browser.evaluate(() => document.querySelector("h1")?.textContent)).toBe(title);
    const first = await settled(browser);
    expect(first.answer).toMatch(/\d/);

    await type(browser, number.name, number.typed + TAB);
    await expect.poll(() => look(browser)).not.toEqual(first);
    const typed = await settled(browser);
    expect(typed.drawing).toMatch(/M/);

    await type(browser, number.name, UP);
    await expect.poll(() => look(browser)).not.toEqual(typed);

    await type(browser, number.name, number.outside + TAB);
    const complaint = () =>
      browser.evaluate(() => document.querySelector(".wrongs .wrong:not([hidden])")?.textContent ?? "");
    await expect.poll(complaint).toContain(number.range.split(" ")[0]);
  });
}

test("the odds of a difference are counted beside the page", async ({ browser }) => {
  await open(browser, `${ADDRESS}#power-or-drag`);
  await expect.poll(() => browser.evaluate(() => document.querySelector(".odds")?.textContent)).toMatch(/of\s100/);
});

test("a link to numbers opens them", async ({ browser }) => {
  const { id, number } = questions[0];
  await open(browser, `${ADDRESS}#${id}`);
  // A reader of kilometres starts with other numbers, which the address then holds.
  const opened = await browser.evaluate(() => location.hash);
  expect(opened.split("/")[0]).toBe(`#${id}`);
  await type(browser, number.name, number.typed + TAB);
  await expect.poll(() => browser.evaluate(() => location.hash)).not.toBe(opened);
  const link = await browser.evaluate(() => location.href);
  const linked = await settled(browser);
  await open(browser, link);
  expect(await settled(browser)).toEqual(linked);
});

test("every step of the story answers", async ({ browser }) => {
  await open(browser, `${ADDRESS}#start-here`);
  const answers = () =>
    browser.evaluate(
      () =>
        [...document.querySelectorAll("main section .answer")].filter((answer) => /\d/.test(answer.textContent ?? ""))
          .length,
    );
  await expect.poll(answers).toBeGreaterThanOrEqual(STEPS_OF_THE_STORY);
});

test("the page is kept for use without a network", async ({ browser }) => {
  await open(browser, ADDRESS);
  await expect
    .poll(() => browser.evaluate(() => navigator.serviceWorker.getRegistration().then((one) => Boolean(one?.active))))
    .toBe(true);
});

/** Goes to a question on the page that is open. @param {Browser} browser @param {string} id */
async function goTo(browser, id) {
  await browser.evaluate((id) => {
    location.hash = id;
  }, id);
  const isThere = (/** @type {string} */ id) => document.getElementById("host")?.dataset.question === id;
  await eventually(() => browser.evaluate(isThere, id), `The question ${id}`);
}

test("the one file answers every question from a disk, as the site does", async ({ browser, file }) => {
  /** @type {Record<string, Awaited<ReturnType<typeof look>>>} */
  const onSite = {};
  await open(browser, ADDRESS);
  for (const { id } of questions) {
    await goTo(browser, id);
    onSite[id] = await settled(browser);
  }
  await open(browser, file);
  for (const { id } of questions) {
    await goTo(browser, id);
    await expect.poll(() => look(browser), id).toEqual(onSite[id]);
  }
});

test("two questions answer on a page of another origin under a strict policy", async ({ browser }) => {
  const { origin } = new URL(ADDRESS);
  const policy = `default-src 'none'; script-src ${origin} 'wasm-unsafe-eval'; connect-src ${origin}`;
  const server = createServer((_, response) => {
    response.writeHead(200, { "content-type": "text/html; charset=utf-8", "content-security-policy": policy });
    response.end(`<!doctype html><html lang="en"><title>A club</title><script type="module" src="${origin}/embed/v1.js"></script>
      <faster-by question="power-or-drag" units="mi C">Words</faster-by><faster-by question="finish-time" units="km C">Words</faster-by>`);
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  try {
    await browser.go(`http://127.0.0.1:${/** @type {import("node:net").AddressInfo} */ (server.address()).port}/`);
    const figures = () =>
      browser.evaluate(() =>
        [...document.querySelectorAll("faster-by")].map((element) => {
          element.scrollIntoView();
          return element.shadowRoot?.querySelector(".figure .amount b")?.textContent ?? "";
        }),
      );
    await expect.poll(figures).toEqual([expect.stringMatching(/\d:\d\d/), expect.stringMatching(/\d:\d\d/)]);
  } finally {
    server.closeAllConnections();
    server.close();
  }
});
