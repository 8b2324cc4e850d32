// @ts-check
/** A difference of finish times as a table tells it. */

import { strong } from "../../parts/html.js";
import { ruler } from "../../parts/ruler.js";
import { difference, time } from "../../units.js";
import { book } from "../../words/index.js";
import { piece } from "./shell.js";

/** @import { Words } from "../../parts/html.js" */
/** @import { Figure } from "../../types/core.d.ts" */
/** @import { draws } from "./draws.js" */
/** @import { Piece, Shown } from "./shell.js" */

const words = book("shared");

/** "faster by" and the time, or "level". @param {number} seconds positive is faster @returns {Words} */
export function differs(seconds) {
  const { way, short } = difference(seconds);
  return way === "level"
    ? words("level")
    : words.parts(way === "faster" ? "fasterBy" : "slowerBy", { figure: strong(short) });
}

/**
 * The difference of two finish times on a ruler between them, with the range of its draws once they are there.
 * @template {{ difference_s: Figure }} Answer
 * @param {Pick<Parameters<typeof ruler>[0], "left" | "right">} ends @param {ReturnType<typeof draws>} drawn @param {(answer: Answer) => string} spoken
 * @returns {Piece<Answer>}
 */
export function differenceRuler(ends, drawn, spoken) {
  return piece(ruler(ends), (part, /** @type {Shown<Answer>} */ { answer, settled }) => {
    const taken = drawn.value();
    part.update({
      difference: answer.difference_s,
      range: taken ?? undefined,
      format: time,
      ease: settled,
      spoken: spoken(answer),
    });
  });
}
