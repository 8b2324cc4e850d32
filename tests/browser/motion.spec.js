// @ts-check
/** Who asks for less motion gets none. */

import { everyQuestion } from "./support/every-question.js";
import { expect, number, test, tool } from "./support/page.js";
import { questions } from "./support/questions.js";

/** Browsers keep a transition of this length as an event without a picture. */
const NO_TIME_S = 0.02;

test.use({ contextOptions: { reducedMotion: "reduce" } });

test("in no question anything glides", async ({ page }) => {
  await everyQuestion(page, questions, async ({ number: given }) => {
    await number(page, given.name).press("Shift+ArrowUp");
    const moving = await page.evaluate(
      (most) =>
        [...document.querySelectorAll("*")].flatMap((element) => {
          const { transitionDuration, animationDuration, animationName } = getComputedStyle(element);
          const longest = Math.max(
            ...transitionDuration.split(",").map(parseFloat),
            animationName === "none" ? 0 : parseFloat(animationDuration),
          );
          return longest > most ? [`${element.tagName} ${element.getAttribute("class")} ${longest} s`] : [];
        }),
      NO_TIME_S,
    );
    expect(moving).toEqual([]);
    await tool(page, "Undo").click();
  });
});
