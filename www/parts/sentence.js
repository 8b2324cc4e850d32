// @ts-check
/** The question: its title, the sentence with its numbers, what is wrong with them, and how well they are known. */

import { book } from "../words/index.js";
import { html, say, set } from "./html.js";

const words = book("page");

/** @typedef {{ element: HTMLElement, note: HTMLElement, wraps?: boolean }} Field A number or a choice; one that `wraps` is longer and may be broken over lines. */
/** @typedef {{ measured: number, estimated: number, typical: number }} KnownCounts */

/** Keeps what follows on the same line (U+2060). */
const WORD_JOINER = "\u2060";
const KINDS = /** @type {const} */ (["measured", "estimated", "typical"]);

/**
 * @param {object} options
 * @param {string} options.title
 * @param {1 | 2} [options.level] of the title as a heading
 * @param {readonly (string | Node | Field)[]} options.words Text, elements and fields in order. Punctuation after a field stays on its line.
 * @param {() => void} [options.onOpen] Opens "Your numbers".
 */
export function sentence({ title, words: first, onOpen, level = 1 }) {
  const heading = html(`h${level}`, {}, title);
  const line = html("p", { class: "sentence" });
  const notes = html("div", { class: "wrongs" });
  const trouble = html("p", { class: "wrong", role: "alert", hidden: true });
  const button = html("button", { type: "button" }, words("yourNumbers"));
  const counts = KINDS.map((kind) => ({ kind, element: html("span", { hidden: true }) }));
  const terms = html("span", { class: "no-print" }, ...words.parts("known.terms"));
  const known = html("p", { class: "known" }, button, ...counts.map((count) => count.element), terms);
  const about = html("p", { class: "about" }, level === 1 ? words("about") : "");
  about.hidden = level !== 1;
  const element = html("div", { class: "ask" }, heading, about, line, notes, known);
  if (onOpen) button.addEventListener("click", () => onOpen());
  else known.hidden = true;

  /** @param {readonly (string | Node | Field)[]} parts */
  function compose(parts) {
    line.replaceChildren();
    parts.forEach((part, index) => {
      const next = parts[index + 1];
      const punctuation = typeof next === "string" ? leadingPunctuation(next) : "";
      if (typeof part === "string") line.append(afterPunctuation(part, parts[index - 1]));
      else if (part instanceof Node) line.append(part);
      else if (part.wraps) line.append(part.element, punctuation && WORD_JOINER + punctuation);
      else
        line.append(punctuation === "" ? part.element : html("span", { class: "together" }, part.element, punctuation));
    });
    notes.replaceChildren(...parts.flatMap((part) => (isField(part) ? [part.note] : [])), trouble);
  }
  compose(first);

  return {
    element,
    heading,
    /** @param {{ words?: readonly (string | Node | Field)[], known?: KnownCounts, wrong?: string | null }} next
     *  `wrong` is an error that belongs to no field of the sentence. */
    update(next) {
      if (next.words) compose(next.words);
      if (next.known) {
        for (const { kind, element: count } of counts) {
          set(count, { hidden: next.known[kind] === 0 });
          say(count, [html("i", { class: `k ${kind}` }), words(`known.${kind}`, { count: next.known[kind] })]);
        }
      }
      if (next.wrong !== undefined) {
        set(trouble, { hidden: next.wrong === null });
        say(
          trouble,
          next.wrong === null ? "" : [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, next.wrong)],
        );
      }
    },
  };
}

/** @param {string} text */
function leadingPunctuation(text) {
  return /^[\u00a0\u202f]?[,.;:?!)]+/.exec(text)?.[0] ?? "";
}

/**
 * @param {string} text
 * @param {string | Node | Field | undefined} before
 */
function afterPunctuation(text, before) {
  return before !== undefined && isField(before) ? text.slice(leadingPunctuation(text).length) : text;
}

/** Whether a part of a sentence is a number, a choice or a clause, rather than text or an element. @template {Field} F @param {string | Node | F} part @returns {part is F} */
export function isField(part) {
  return typeof part !== "string" && !(part instanceof Node);
}
