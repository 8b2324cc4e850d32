// @ts-check
/** A link holds every number; a broken or hostile one is refused in words and touches nothing. */

import { everyQuestion } from "./support/every-question.js";
import { forget } from "./support/one-page.js";
import {
  answerText,
  expect,
  found,
  kept,
  look,
  notice,
  number,
  open,
  openQuestion,
  started,
  test,
  tool,
  type,
} from "./support/page.js";
import { questions } from "./support/questions.js";

/** @import { Page } from "@playwright/test" */

const CDA = "Drag area, CdA";

test.use({ permissions: ["clipboard-read", "clipboard-write"] });

/** The link that the Share button copies. @param {Page} page */
async function shared(page) {
  await tool(page, "Share").click();
  await expect(notice(page)).toContainText("The link is copied");
  return page.evaluate(() => navigator.clipboard.readText());
}

test("a link to any question that is opened on another device shows the same page", async ({ page, browser }) => {
  const elsewhere = await browser.newContext({ locale: "en-GB" });
  const there = await elsewhere.newPage();
  await everyQuestion(page, questions, async ({ number: given, also }) => {
    await type(page, given.name, given.typed);
    for (const [name, typed] of also) await type(page, name, typed);
    const link = await shared(page);
    await found(page);
    const here = { ...(await look(page)), sentence: await sentence(page) };

    await forget(there);
    await there.goto(link);
    await started(there);

    await expect.poll(async () => ({ ...(await look(there)), sentence: await sentence(there) })).toEqual(here);
    for (const _ of [given, ...also]) await tool(page, "Undo").click();
  });
  await elsewhere.close();
});

/** @param {Page} page */
function sentence(page) {
  return page
    .locator(".sentence")
    .evaluate((line) =>
      [...line.querySelectorAll("input, select")]
        .map((field) => /** @type {HTMLInputElement} */ (field).value)
        .join(" "),
    );
}

test("a link opened where one has numbers of one's own keeps those aside, and brings them back", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  await type(page, CDA, "0.3");
  const link = await shared(page);
  await type(page, CDA, "0.222");
  await expect.poll(async () => JSON.stringify(await kept(page))).toContain("0.222");

  const second = await page.context().newPage();
  await second.goto(link);
  await started(second);
  await expect(number(second, CDA)).toHaveValue("0.300");
  await expect(notice(second)).toContainText("Your own are kept under Save");
  await second.getByRole("button", { name: "Back to mine" }).click();
  await expect(number(second, CDA)).toHaveValue("0.222");

  await tool(second, "Save").click();
  await expect(second.getByRole("dialog")).toContainText("Your numbers before the last link");
});

/** @param {unknown} held */
const packed = (held) =>
  `#speed-for-watts/1j.${Buffer.from(typeof held === "string" ? held : JSON.stringify(held)).toString("base64url")}`;

/** @type {[what: string, hash: string, says: RegExp][]} */
const refused = [
  ["one with letters that no link has", "#speed-for-watts/1z.!!!", /damaged/],
  ["one cut short", "#speed-for-watts/1z.q1Yq", /damaged/],
  ["one that is no JSON", packed("{"), /damaged/],
  ["one nested without end", packed("[".repeat(100_000)), /damaged/],
  ["one from a newer version", "#speed-for-watts/2z.q1YqT", /newer version/],
  ["one that is too long", `#speed-for-watts/1j.${"A".repeat(500_000)}`, /too long/],
  [
    "one whose number is out of range",
    packed({ s: { rider: { total_mass_kg: { value: 9999 } } } }),
    /Rider, bicycle and kit together runs from/,
  ],
  [
    "one with text for a number",
    packed({ s: { rider: { total_mass_kg: "<img src=x onerror=alert(1)>" } } }),
    /cannot be used/,
  ],
  [
    "one with lists where there are none",
    packed({ s: { positions: "x", course: 7, conditions: [1] } }),
    /cannot be used/,
  ],
  ["one with a field that does not exist", packed({ s: { wheels: 3 } }), /no field “wheels”/],
  ["one that reaches for a prototype", packed('{"s":{"__proto__":{"polluted":1},"rider":5}}'), /cannot be used/],
  ["one with text for a number of the question", packed({ w: { power_w: "many" } }), /cannot be used/],
  ["one with a list for the numbers of the question", packed({ w: [1] }), /damaged/],
  ["a question that does not exist", "#best-colour", /no question called “best-colour”/],
];

test("a broken or hostile link is refused in words, and one's own numbers stay", async ({ page, context }) => {
  await openQuestion(page, "speed-for-watts");
  await type(page, CDA, "0.222");
  await expect.poll(async () => JSON.stringify(await kept(page))).toContain("0.222");
  const before = { answer: await answerText(page), kept: await kept(page) };
  await page.close();

  const opened = await context.newPage();
  for (const [what, hash, says] of refused) {
    await test.step(what, async () => {
      await opened.goto("about:blank");
      await open(opened, hash);
      await expect(notice(opened)).toContainText(says);
      await expect(notice(opened)).toContainText(/[Yy]our (own )?numbers/);
      await expect(number(opened, CDA)).toHaveValue("0.222");
      await expect.poll(() => answerText(opened)).toBe(before.answer);
      expect(await opened.evaluate(() => /** @type {any} */ ({}).polluted)).toBeUndefined();
      expect(await kept(opened)).toEqual(before.kept);
    });
  }
});

test("a link pasted into the address bar of an open page is taken in, and undone", async ({ page }) => {
  await openQuestion(page, "speed-for-watts");
  const own = await number(page, CDA).inputValue();
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    packed({ s: { positions: [{ name: "low", cda_m2: { value: 0.3, sd: 0.01, source: "measured" } }] } }),
  );
  await expect(number(page, CDA)).toHaveValue("0.300");
  await tool(page, "Undo").click();
  await expect(number(page, CDA)).toHaveValue(own);
});
