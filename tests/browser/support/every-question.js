// @ts-check
/** One page that goes through the questions: to open it anew for each takes longer than most checks. */

import { forget } from "./one-page.js";
import { openQuestion, test } from "./page.js";

/** @import { Page } from "@playwright/test" */
/** @import { Asked } from "./questions.js" */

/** For one question, as for a test. */
const PATIENCE_MS = 60_000;

/**
 * Opens each question in turn, as a step of its own name, and checks it. A check leaves the rider's numbers as it found them.
 * What fails in one is told by the question, and the others are checked all the same, on a page as at a first visit.
 * @template {{ id: string }} Question
 * @param {Page} page
 * @param {readonly Question[]} asked
 * @param {(question: Question) => Promise<void>} check
 * @param {(page: Page, id: string) => Promise<unknown>} [openIt]
 */
export async function everyQuestion(page, asked, check, openIt = openQuestion) {
  test.setTimeout(PATIENCE_MS * asked.length);
  /** @type {string[]} */
  const failed = [];
  const begun = page.viewportSize();
  for (const question of asked) {
    await test
      .step(
        question.id,
        async () => {
          await openIt(page, question.id);
          await check(question);
        },
        { timeout: PATIENCE_MS },
      )
      .catch(async (error) => {
        failed.push(`${question.id}: ${error.stack}`);
        await forget(page);
      });
    if (begun && page.viewportSize()?.width !== begun.width) await page.setViewportSize(begun);
  }
  if (failed.length > 0) throw new Error(failed.join("\n\n"));
}
