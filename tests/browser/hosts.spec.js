// @ts-check
/** The page on hosts of static files as they are: first and later visits, other pages beside it, an upload caught halfway, old files deleted, versions that never mix. */

import { createServer } from "node:http";
import { answerText, expect, keptOnDevice, notice, started, test } from "./support/page.js";
import { filesOf, folderOf, serve, versionOf, without } from "./support/server.js";

/** @import { Page } from "@playwright/test" */
/** @import { Files, Habits } from "./support/server.js" */

// A browser complains of every file that is missing.
test.use({ troubled: true });

const NEWER = {
  "en-GB": "A newer version of the calculator is there",
  "de-DE": "Eine neuere Fassung des Rechners liegt bereit",
  "fr-FR": "Une version plus récente du calculateur est disponible",
};
const INCOMPLETE = "Parts of the page are missing on its server";

/** @param {Page} page */
async function expectItWorks(page) {
  await started(page);
  const before = await answerText(page);
  await page.getByRole("main").getByRole("spinbutton").first().press("Shift+ArrowUp");
  await expect.poll(() => answerText(page)).not.toBe(before);
}

/** The version of the markup, the script and the style: one alone. @param {Page} page */
async function version(page) {
  const versions = await page.evaluate(() => {
    const { markup, script } = document.documentElement.dataset;
    return [markup, script, getComputedStyle(document.documentElement).getPropertyValue("--style").trim()];
  });
  expect(new Set(versions).size).toBe(1);
  return versions[0];
}

/** Goes to another question by its link. @param {Page} page @param {string} name */
const go = (page, name) => page.getByRole("navigation", { name: "Questions" }).getByRole("link", { name }).click();

/** A second version that has all of its files and none of the first one's. @param {string} baseURL */
async function twoVersions(baseURL) {
  const files = await filesOf(baseURL);
  return { first: versionOf(files, "first"), second: versionOf(files, "second") };
}

/** The newest worker, once it has kept everything or given up. @param {Page} page @returns {Promise<string>} */
function updated(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => undefined);
    const worker = registration.installing;
    if (worker)
      await new Promise((resolve) =>
        worker.addEventListener(
          "statechange",
          () => ["installed", "redundant"].includes(worker.state) && resolve(undefined),
        ),
      );
    return registration.waiting ? "waits" : "nothing newer";
  });
}

/** Its addresses are tried where a host has habits about addresses. @type {[what: string, habits: Habits][]} */
const HOSTS = [
  ["sends .html on to plain addresses", { plainAddresses: true }],
  ["gives the page for a missing file", { pageForMissing: true }],
  ["has everything kept for a year", { keptForAYear: true }],
  ["does all of these", { plainAddresses: true, pageForMissing: true, keptForAYear: true }],
];

/** Other addresses of the page. */
const ADDRESSES = ["index.html", "index.html?from=home#power-or-drag", "?from=home#finish-time"];

for (const [what, habits] of HOSTS) {
  test.describe(`a host that ${what}`, () => {
    test.use({ offlineCopy: true });

    test("serves a first visit and later ones, a frame, brings a new version on the next visit, and may then be gone", async ({
      page,
      context,
      baseURL,
    }) => {
      const { first, second } = await twoVersions(String(baseURL));
      const server = await serve(first, habits);
      await page.goto(server.address);
      await expectItWorks(page);
      await keptOnDevice(page);
      await expectItWorks(page);
      for (const path of habits.plainAddresses ? ADDRESSES : []) {
        await page.goto("about:blank");
        await page.goto(server.address + path);
        await expectItWorks(page);
      }
      const frame = await context.newPage();
      await frame.goto(`${server.address}embed/frame.html#power-or-drag`);
      await expect(frame.locator("faster-by .figure .amount b")).toHaveText(/\d:\d\d/);
      await frame.close();

      server.change(second);
      expect(await updated(page)).toBe("waits");
      await page.reload();
      await expectItWorks(page);
      expect(await version(page)).toBe("first");
      await page.close();
      const next = await context.newPage();
      await expect(async () => {
        await next.goto("about:blank");
        await next.goto(server.address);
        await started(next);
        expect(await version(next)).toBe("second");
      }).toPass();
      await expectItWorks(next);

      await server.stop();
      await next.goto("about:blank");
      await next.goto(`${server.address}index.html`);
      await expectItWorks(next);
    });
  });
}

test.describe("with a copy on the device", () => {
  test.use({ offlineCopy: true });

  test("other pages in the same folder stay what they are", async ({ page, baseURL }) => {
    const html = (/** @type {string} */ title) => ({
      type: "text/html",
      body: Buffer.from(`<title>${title}</title><h1>${title}</h1>`),
    });
    /** @type {Files} */
    const files = new Map([...(await filesOf(String(baseURL)))].map(([path, file]) => [`tt/${path}`, file]));
    files
      .set("tt/club.html", html("The club"))
      .set("tt/results/index.html", html("Results"))
      .set("index.html", html("Home"));
    const server = await serve(files);
    await page.goto(`${server.address}tt/`);
    await keptOnDevice(page);
    for (const [path, title] of [
      ["tt/club.html", "The club"],
      ["tt/results/", "Results"],
      ["", "Home"],
    ]) {
      await page.goto(server.address + path);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
    }
    expect((await page.goto(`${server.address}tt/missing.html`))?.status()).toBe(404);
    await page.goto(`${server.address}tt/index.html`);
    await expectItWorks(page);
    await server.stop();
  });

  test("an upload caught halfway is not kept, where a host gives the page for a missing file, and a whole one is", async ({
    page,
    baseURL,
  }) => {
    const { first, second } = await twoVersions(String(baseURL));
    const server = await serve(first, { pageForMissing: true, keptForAYear: true });
    await page.goto(server.address);
    await keptOnDevice(page);

    server.change(without(second, (path) => /part-[A-M]|wasm/.test(path)));
    expect(await updated(page)).toBe("nothing newer");
    await page.reload();
    await expectItWorks(page);
    expect(await version(page)).toBe("first");

    server.change(second);
    expect(await updated(page)).toBe("waits");
    await server.stop();
  });
});

test("a first visit in the middle of an upload says what is missing, and Reload gets the whole page afterwards", async ({
  page,
  baseURL,
}) => {
  const { first } = await twoVersions(String(baseURL));
  const server = await serve(
    without(first, (path) => path.includes("/part-")),
    { pageForMissing: true, keptForAYear: true },
  );
  await page.goto(server.address);
  await expect(page.getByRole("alert")).toContainText(INCOMPLETE);
  server.change(first);
  await page.getByRole("button", { name: "Reload" }).click();
  await expectItWorks(page);
  expect(await version(page)).toBe("first");
  await server.stop();
});

for (const [what, habits] of /** @type {[string, Habits][]} */ ([
  ["says 404", {}],
  ["gives the page", { pageForMissing: true, keptForAYear: true }],
])) {
  // In each language on one of them: the words are the same on the other.
  for (const [locale, said] of Object.entries(NEWER).slice(0, habits.pageForMissing ? 3 : 1)) {
    test.describe(`once the old files are deleted, on a host that then ${what}, in ${locale}`, () => {
      test.use({ locale });

      test("an open page says that a newer version is there, and Reload opens it with the same numbers", async ({
        page,
        baseURL,
      }) => {
        const { first, second } = await twoVersions(String(baseURL));
        const server = await serve(first, habits);
        await page.goto(`${server.address}#power-or-drag`);
        await started(page);
        const drag = page.getByRole("main").locator('[data-path*="cda_m2"]').first();
        await drag.fill("0.27");
        await drag.press("Tab");

        server.change(second);
        await page.locator('#questions a[href="#hold-or-fade"]').click();
        await expect(page.locator("#notice")).toContainText(said);
        expect(await version(page)).toBe("first");
        await page.locator("#notice button").first().click();
        await expect(page.locator("html")).toHaveAttribute("data-script", "second");
        await started(page);
        expect(await version(page)).toBe("second");
        expect(
          await page.evaluate(
            () => JSON.parse(localStorage.getItem("fasterby:last") ?? "null").scenario.positions[0].cda_m2.value,
          ),
        ).toBe(0.27);
        await server.stop();
      });
    });
  }
}

test("a link that is opened after the old files are deleted keeps its numbers over Reload", async ({
  page,
  baseURL,
}) => {
  const { first, second } = await twoVersions(String(baseURL));
  const server = await serve(first);
  await page.goto(`${server.address}#which-position`);
  await started(page);
  const drag = page.getByRole("main").locator('[data-path*="cda_m2"]').first();
  await drag.fill("0.27");
  await drag.press("Tab");
  await expect.poll(() => page.url()).toContain("which-position/");
  const { hash } = new URL(page.url());

  await page.evaluate(() => localStorage.clear());
  await page.goto("about:blank");
  await page.goto(`${server.address}#power-or-drag`);
  await started(page);
  server.change(second);
  await page.evaluate((link) => {
    location.hash = link;
  }, hash);
  await expect(page.locator("#notice")).toContainText(NEWER["en-GB"]);
  await page.locator("#notice button").first().click();

  await expect(page.locator("html")).toHaveAttribute("data-script", "second");
  await started(page);
  await expect(page.locator("#host")).toHaveAttribute("data-question", "which-position");
  await expect(page.getByRole("main").locator('[data-path*="cda_m2"]').first()).toHaveValue("0.270");
  await server.stop();
});

test("a fold whose scripts were deleted says so in its place", async ({ page, baseURL }) => {
  const { first, second } = await twoVersions(String(baseURL));
  const server = await serve(first);
  await page.goto(`${server.address}#power-or-drag`);
  await started(page);
  server.change(second);
  for (const fold of ["take", "site"]) {
    const place = page.locator(`[data-fold="${fold}"]`);
    await place.locator("summary").click();
    await expect(place).toContainText(NEWER["en-GB"]);
    await expect(place.getByRole("button", { name: "Reload" })).toBeVisible();
  }
  await server.stop();
});

test("a core of another version is refused, and the answers stay those of the page's own", async ({
  page,
  baseURL,
}) => {
  const { first, second } = await twoVersions(String(baseURL));
  const server = await serve(first);
  await page.goto(`${server.address}#power-or-drag`);
  await started(page);
  const before = await answerText(page);

  // As where a host, or a cache on the way, gives newer files under the old names.
  const mixed = new Map([
    ...first,
    ["version.json", /** @type {{ type: string, body: Buffer }} */ (second.get("version.json"))],
  ]);
  const core = "v-first/wasm/whole_bg.wasm";
  const { type: kind, body } = /** @type {{ type: string, body: Buffer }} */ (first.get(core));
  // A custom section at the end changes nothing that is computed, so such a module would answer.
  mixed.set(core, { type: kind, body: Buffer.concat([body, Buffer.from([0, 2, 1, 0x78])]) });
  server.change(mixed);
  await go(page, "Hold or fade");
  await expect(notice(page)).toContainText(NEWER["en-GB"]);
  await expect(page.locator("#host")).toHaveAttribute("data-question", "power-or-drag");
  expect(await answerText(page)).toBe(before);
  await server.stop();
});

test("a page that a host kept from an older version says that a newer one is there, and Reload opens it", async ({
  page,
  baseURL,
}) => {
  const { first, second } = await twoVersions(String(baseURL));
  const stale = new Map([
    ...second,
    ["index.html", /** @type {{ type: string, body: Buffer }} */ (first.get("index.html"))],
  ]);
  const server = await serve(stale, { pageForMissing: true });
  await page.goto(server.address);
  await expect(page.getByRole("alert")).toContainText(NEWER["en-GB"]);
  server.change(second);
  await page.getByRole("button", { name: "Reload" }).click();
  await expectItWorks(page);
  expect(await version(page)).toBe("second");
  await server.stop();
});

test("where the server does not answer, the connection is what is to be checked", async ({ page, baseURL }) => {
  const server = await serve(await filesOf(String(baseURL)));
  await page.goto(`${server.address}#power-or-drag`);
  await started(page);
  await server.stop();
  await go(page, "Hold or fade");
  await expect(notice(page)).toContainText("Check the connection");
  await expect(notice(page).getByRole("button", { name: "Try again" })).toBeVisible();
});

/** @param {string} ours @param {string} script */
async function hostPage(ours, script) {
  const server = createServer((_, response) => {
    response.writeHead(200, {
      "content-type": "text/html; charset=utf-8",
      "content-security-policy": `default-src 'none'; script-src ${ours} 'wasm-unsafe-eval'; connect-src ${ours}`,
    });
    response.end(
      `<!doctype html><html lang="en"><title>A club</title><script type="module" src="${ours}/${script}"></script><faster-by question="power-or-drag">Words</faster-by>`,
    );
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  return {
    address: `http://127.0.0.1:${/** @type {import("node:net").AddressInfo} */ (server.address()).port}/`,
    stop: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

for (const script of ["embed/v1.js", "embed.js"]) {
  test(`a question by ${script} follows from version to version, also where its script is kept for a year and old files are deleted`, async ({
    page,
    baseURL,
  }) => {
    const { first, second } = await twoVersions(String(baseURL));
    const server = await serve(first, { keptForAYear: true, pageForMissing: true });
    const club = await hostPage(new URL(server.address).origin, script);
    const element = page.locator("html");
    for (const [files, name] of /** @type {[Files, string][]} */ ([
      [first, "first"],
      [second, "second"],
    ])) {
      server.change(files);
      await page.goto(club.address);
      await expect(page.locator("faster-by .figure .amount b")).toHaveText(/\d:\d\d/);
      await expect(element).toHaveAttribute("data-element", name);
    }
    club.stop();
    await server.stop();
  });
}

test("a question on another site is shown in the version its script came with, while a new one is being uploaded", async ({
  page,
  baseURL,
}) => {
  const { first, second } = await twoVersions(String(baseURL));
  const server = await serve(
    new Map([...first, ["version.json", /** @type {{ type: string, body: Buffer }} */ (second.get("version.json"))]]),
  );
  const club = await hostPage(new URL(server.address).origin, "embed/v1.js");
  await page.goto(club.address);
  await expect(page.locator("faster-by .figure .amount b")).toHaveText(/\d:\d\d/);
  await expect(page.locator("html")).toHaveAttribute("data-element", "first");
  club.stop();
  await server.stop();
});

test("whatever changes with a version lies in its folder, and the entries name no other", async ({ baseURL }) => {
  const files = await filesOf(String(baseURL));
  const folder = folderOf(files);
  const changing = [...files.keys()].filter((path) =>
    /\.(?:css|wasm)$|(?:app|worker|place|element|part-\w+)\.js$/.test(path),
  );
  expect(changing.length).toBeGreaterThan(20);
  expect(changing.filter((path) => !path.startsWith(`${folder}/`))).toEqual([]);
  for (const [path, { body }] of files) {
    if (path.startsWith(`${folder}/`)) continue;
    expect(
      (String(body).match(/\bv-[0-9a-f]{16}\b/g) ?? []).filter((name) => name !== folder),
      path,
    ).toEqual([]);
  }
});
