// @ts-check
/** One step of the story: a heading, a sentence with its numbers, what the core says, something to try, and a chart. */

import { html, say } from "../parts/html.js";
import { isField, sentence } from "../parts/sentence.js";
import { book } from "../words/index.js";
import { BEGAN, ID } from "./beginning.js";
import { numbersOf, RANGES } from "./rider.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { BoundNumber, BoundNumberOptions } from "../frame/bound-number.js" */
/** @import { State } from "../state/history.js" */
/** @import { Words } from "../parts/html.js" */
/** @import { Name, Numbers } from "./beginning.js" */
/** @import { MovePhase } from "../parts/handle.js" */

/**
 * @typedef {object} Step
 * @property {HTMLElement} element
 * @property {(state: State, numbers: Numbers) => void} update
 * @property {() => void} destroy
 */

const tell = book("learn");
/** What is said aloud has stood still for this long. */
const QUIET_MS = 700;

/** Where the story keeps a number. @param {Name} name */
export const at = (name) => `with.${ID}.${name}`;

/** A number of the story. @param {Tools} tools @param {Name} name @param {Omit<BoundNumberOptions, "path">} options */
export function numberOf(tools, name, options) {
  const [min, max] = RANGES[name];
  return tools.number({ path: at(name), min, max, value: (state) => numbersOf(state)[name], ...options });
}

/** A handle's move as a number of the story. @param {Tools} tools @param {[Name, number][]} changes @param {MovePhase} phase */
export function moveTo({ store }, changes, phase) {
  if (phase === "commit") return store.settle();
  const within = changes.map(
    ([name, value]) =>
      /** @type {[string, number]} */ ([at(name), Math.min(RANGES[name][1], Math.max(RANGES[name][0], value))]),
  );
  store.setAll(within, { merge: `${ID} ${changes.map(([name]) => name).join(" ")}` });
}

/**
 * @param {object} options
 * @param {string} options.title
 * @param {readonly (string | Node | BoundNumber)[]} options.words
 * @param {string} options.toTry
 * @param {HTMLElement} options.chart
 * @param {readonly Node[]} [options.notes] after what the core says
 */
export function stepFrame({ title, words, toTry, chart, notes = [] }) {
  const ask = sentence({ title, words, level: 2 });
  const told = html("p", { class: "also" });
  const heard = html("p", { class: "say", role: "status" });
  const since = html("p", { class: "takes", hidden: true });
  const element = html(
    "section",
    { class: "step", "aria-label": title },
    ask.element,
    html(
      "div",
      { class: "work" },
      html(
        "div",
        { class: "answer" },
        told,
        heard,
        since,
        html("p", { class: "takes no-print" }, ...tell.parts("tryIt", { what: toTry })),
      ),
      html("div", { class: "picture" }, chart),
      html("div", { class: "notes" }, ...notes),
    ),
  );
  const numbers = words.filter(isField);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;

  /** Only the step in hand speaks, once the hand rests. */
  function speakLater() {
    clearTimeout(waiting);
    if (element.contains(document.activeElement))
      waiting = setTimeout(() => say(heard, told.textContent ?? ""), QUIET_MS);
  }

  return {
    element,
    /** @param {State} state @param {Words} says what the core says, in words */
    update(state, says) {
      for (const number of numbers) number.update(state);
      say(told, says);
      speakLater();
    },
    /**
     * What has changed since the story began, once anything has.
     * @param {Numbers} now @param {readonly Name[]} names the numbers that count @param {() => Words} words
     */
    since(now, names, words) {
      const changed = names.some((name) => Math.abs(now[name] - BEGAN[name]) > 1e-9);
      since.hidden = !changed;
      if (changed) say(since, [...tell.parts("youChanged"), " ", html("span", {}, ...[words()].flat())]);
    },
  };
}
