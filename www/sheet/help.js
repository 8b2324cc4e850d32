// @ts-check
/** Help: what the page is, its words, its cautions, what is not known, and where the numbers go (nowhere). */

import { oneFile } from "#delivery";
import { openDialog } from "../frame/dialog.js";
import { h } from "../frame/dom.js";
import { book } from "../words/index.js";

const say = book("sheet");
const words = book("page");

/** Keeps the full stop on the line of the button before it (U+2060). */
const WORD_JOINER = "\u2060";

const WORDS = /** @type {const} */ ([
  "cda",
  "crr",
  "cp",
  "wPrime",
  "duration",
  "yaw",
  "density",
  "fade",
  "sd",
  "tries",
  "known",
]);
const CAUTIONS = /** @type {const} */ (["look", "traffic", "crosswind", "descents", "maximal", "fit", "rules"]);
const NOT_KNOWN = /** @type {const} */ (["own", "fade", "gusts", "model"]);

/** The sentence that the same word explains itself with elsewhere, or one of its own. @param {string} word */
function meaning(word) {
  const [shown, own] = [`term.${word}`, `word.${word}.meaning`];
  return words.found(shown) || say.found(own);
}

/**
 * @param {{ questions: string[], offline: string }} page `offline` is a sentence about working without a network
 * @param {(path?: string) => void} openSheet
 */
export function openHelp({ questions, offline }, openSheet) {
  const list = (/** @type {string[]} */ lines) =>
    h("ul", { class: "bullets" }, ...lines.map((line) => h("li", {}, line)));
  const dialog = openDialog(
    words("help"),
    h(
      "p",
      {},
      ...say.parts("help.what", {
        your_numbers: [
          h(
            "button",
            {
              type: "button",
              class: "link-button",
              onclick: () => {
                dialog.close();
                openSheet();
              },
            },
            words("yourNumbers"),
          ),
          WORD_JOINER,
        ],
      }),
    ),
    h("p", {}, say("help.questions", { questions: questions.join(" ") })),
    h("h3", {}, say("help.changing")),
    h("p", {}, say("help.howToChange")),
    h("h3", {}, say("help.words")),
    h("dl", {}, ...WORDS.flatMap((word) => [h("dt", {}, say(`word.${word}`)), h("dd", {}, meaning(word))])),
    h("h3", {}, say("help.safely")),
    list(CAUTIONS.map((caution) => say(`caution.${caution}`))),
    h("h3", {}, say("help.notKnown")),
    list(NOT_KNOWN.map((gap) => say(`notKnown.${gap}`))),
    h("h3", {}, say("help.where")),
    h("p", {}, say("help.nowhere", { offline })),
    ...(oneFile
      ? [
          h(
            "p",
            {},
            ...say.parts("help.oneFile", {
              link: h("a", { href: oneFile.href, download: "fasterby.html" }, say("help.saveOneFile")),
            }),
          ),
        ]
      : []),
  );
}
