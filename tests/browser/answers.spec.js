// @ts-check
/** What stands on the page is what the core answers, written out; the page adds nothing of its own. */

import { everyQuestion } from "./support/every-question.js";
import { test } from "./support/one-page.js";
import { expect, figure, kept, open, openQuestion, tool, type } from "./support/page.js";
import { questions } from "./support/questions.js";

/** Exact by definition: 1609.344 m an hour. */
const M_S_PER_MPH = 0.44704;

/** @param {number} seconds */
function clock(seconds) {
  const whole = Math.round(Math.abs(seconds));
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h ? `${h}:${String(m).padStart(2, "0")}:${String(s).padStart(2, "0")}` : `${m}:${String(s).padStart(2, "0")}`;
}

/** The figure of each question out of the core's answer, and its own part of the request. @type {Record<string, { with: (own: any) => object, figure: (answer: any) => string }>} */
const core = {
  "speed-for-watts": {
    with: ({ power_w }) => ({ power_w, grade: 0, bearing_deg: 0 }),
    figure: ({ speed_m_s }) => (speed_m_s.value / M_S_PER_MPH).toFixed(1),
  },
  "power-or-drag": { with: (own) => own, figure: ({ difference_s }) => clock(difference_s.value) },
  "power-curve": { with: (own) => own, figure: ({ power_w }) => power_w.value.toFixed(0) },
  "drag-test": {
    with: ({ rides: _, laps: __, ...own }) => own,
    figure: ({ plan }) => String(plan.runs_per_position),
  },
  "next-gain": { with: ({ currency: _, ...own }) => own, figure: ({ best }) => clock(best.expected_s.value) },
  "leg-room": {
    with: (own) => own,
    figure: ({ difference }) => `${Math.abs(difference.tightest_hip_deg.value).toFixed(1)}°`,
  },
  "which-position": { with: (own) => own, figure: ({ reading }) => clock(reading.ahead_s.value) },
  "finish-time": { with: (own) => own, figure: ({ time_s }) => clock(time_s.value) },
  "ride-plan": { with: (own) => own, figure: ({ simple }) => clock(simple.time_s) },
  "hold-or-fade": {
    with: ({ low, steady, effort }) => ({ low, steady, effort }),
    figure: ({ difference_s }) => clock(difference_s.value),
  },
};

test("the figure of every question is the core's own", async ({ page }) => {
  await everyQuestion(page, questions, async ({ id, number }) => {
    await type(page, number.name, number.typed);
    await expect.poll(async () => JSON.stringify((await kept(page)) ?? "")).toContain(number.kept);
    const { scenario, with: own } = await kept(page);

    const answer = await page.evaluate(
      ([question, request]) => /** @type {any} */ (globalThis).fasterby.ask(question, request),
      [id, { scenario, with: core[id].with(own[id]) }],
    );

    await expect(figure(page)).toHaveText(core[id].figure(answer));
    // The next question may have the same number: what is kept then must be its own.
    await tool(page, "Undo").click();
    await expect.poll(async () => JSON.stringify(await kept(page))).not.toContain(number.kept);
  });
});

test("the page lists the story and the questions that are tested here, and no other", async ({ page }) => {
  await open(page);
  const links = page.getByRole("navigation", { name: "Questions" }).getByRole("link");
  const ids = await links.evaluateAll((all) => all.map((link) => link.getAttribute("href")?.slice(1)));
  expect(ids.toSorted()).toEqual(["start-here", ...questions.map(({ id }) => id)].toSorted());
  for (const { id, title } of questions) {
    await openQuestion(page, id);
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
  }
});
