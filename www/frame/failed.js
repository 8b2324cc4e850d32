// @ts-check
/** Why something could not be loaded, and what helps: the network is gone, the server has another version by now, or it has not all of this one. */

import { reload, serverHas } from "#delivery";
import { book, language } from "../words/index.js";
import { startWords } from "../words/start.js";
import { showFailure } from "./failure.js";

/** @typedef {{ label: string, run: () => void }} Action */

const say = book("page");

/** Says so in place of a page that could not start. Its own words may be what could not be loaded. @param {unknown} error */
export async function sayItFailed(error) {
  console.error(error);
  const message = error instanceof Error ? error.message : String(error);
  const words = startWords(language());
  const there = await serverHas();
  const opened = say.has("failed.notLoaded");
  const loading =
    there === "other"
      ? words.newer
      : there === "this"
        ? words.incomplete
        : opened
          ? say("failed.notLoaded")
          : words.unreachable;
  const why = typeof WebAssembly === "undefined" && opened ? say("failed.noWasm") : loading;
  showFailure(
    {
      title: words.title,
      lines: [why, opened ? say("failed.browserSays", { message }) : message],
      reload: words.reload,
    },
    reload,
  );
}

/**
 * What is said where a part of the page could not be loaded.
 * @param {string} otherwise where the server cannot be reached
 * @param {Action} [again] tries once more
 * @returns {Promise<{ message: string, action?: Action }>}
 */
export async function whyLost(otherwise, again) {
  const words = startWords(language());
  const there = await serverHas();
  if (there === null) return { message: otherwise, action: again };
  return { message: there === "other" ? words.newer : words.incomplete, action: { label: words.reload, run: reload } };
}

/** The same as elements, in a place of its own. @param {string} otherwise */
export async function lostNotice(otherwise) {
  const { message, action } = await whyLost(otherwise);
  const paragraph = Object.assign(document.createElement("p"), { className: "soft", textContent: message });
  if (!action) return [paragraph];
  return [
    paragraph,
    Object.assign(document.createElement("button"), { type: "button", textContent: action.label, onclick: action.run }),
  ];
}
