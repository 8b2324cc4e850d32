// @ts-check
/**
 * What every question has in common. A question declares its sentence, its answer, charts, notes and folds, each piece with what draws it;
 * the shell lays them out, lets the fields follow the state, keeps the last good answer, runs the work in the background and disposes of all.
 */

import { folds } from "../../parts/folds.js";
import { html, say as put, set } from "../../parts/html.js";
import { sentence } from "../../parts/sentence.js";
import { book } from "../../words/index.js";
import { titleOf } from "./names.js";
import { requestOf } from "./request.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { AnswerTo } from "../../types/page.d.ts" */
/** @import { CoreError } from "../../core.js" */
/** @import { Words } from "../../parts/html.js" */
/** @import { Fold } from "../../parts/folds.js" */
/** @import { Field, KnownCounts } from "../../parts/sentence.js" */
/** @import { BackgroundWork } from "./background-work.js" */

const say = book("shared");

/**
 * The last good answer and what it is about; `settled` while nothing is dragged.
 * @template Answer @typedef {{ state: State, answer: Answer, settled: boolean }} Shown
 */
/** @template Answer @typedef {{ element?: HTMLElement, elements?: readonly HTMLElement[], draw?: (shown: Shown<Answer>) => void, destroy?: () => void }} Piece */
/** @template Answer @typedef {Fold<Shown<Answer>> & { body: Node | (() => Node | Promise<Node>) | Piece<Answer> }} FoldPiece */

/**
 * @template Answer
 * @typedef {object} Pieces
 * @property {(state: State) => readonly (string | Node | Field)[]} words the sentence
 * @property {(state: State) => unknown} [wording] what the sentence's words depend on, where they change
 * @property {readonly { update: (state: State, error: CoreError | null) => boolean }[]} fields each tells whether it shows the error
 * @property {(state: State) => KnownCounts} [known] what counts as known, where it is not all of the ridden position
 * @property {(state: State) => boolean} [compares] whether there is something to compare: else what would be drawn is hidden, and the question
 *   says so itself
 * @property {(state: State, answer: Answer | null) => void} [follow] what else follows the state
 * @property {readonly Piece<Answer>[]} answer
 * @property {readonly Piece<Answer>[]} picture
 * @property {readonly Piece<Answer>[]} [data] what the rider gives beyond the sentence, where it takes much room
 * @property {readonly Piece<Answer>[]} notes
 * @property {readonly FoldPiece<Answer>[]} folds
 * @property {Pick<BackgroundWork, "update" | "destroy">} [work] about the question's own request
 * @property {Promise<void>} [answered]
 */

/**
 * @template Answer
 * @typedef {object} Shell
 * @property {() => Answer | null} answer the last good one
 * @property {() => { state: State, answer: Answer } | null} shown the same with what it is about
 * @property {() => void} redraw
 * @property {(pieces: Pieces<Answer>) => View} show
 */

/** A component with what draws it. @template {{ element?: HTMLElement, elements?: readonly HTMLElement[], destroy?: () => void }} Part, Answer @param {Part} part @param {(part: Part, shown: Shown<Answer>) => void} draw @returns {Piece<Answer>} */
export function piece(part, draw) {
  const { element, elements, destroy } = part;
  return { element, elements, destroy, draw: (shown) => draw(part, shown) };
}

/** A paragraph. @template Answer @param {string | undefined} name its class @param {(shown: Shown<Answer>) => Words} words @param {"p" | "div"} [tag] @returns {Piece<Answer>} */
export function paragraphPiece(name, words, tag = "p") {
  const element = html(tag, { class: name });
  return {
    element,
    draw(shown) {
      const said = words(shown);
      set(element, { hidden: said === "" });
      put(element, said);
    },
  };
}

/** What stands inside a fold. @template Answer @param {(shown: Shown<Answer>) => Words} words @param {string} [name] its class @returns {Piece<Answer>} */
export const passagePiece = (words, name) => paragraphPiece(name, words, "div");

/** Where the pieces of a question stand beside each other, and what a reader hears each is. */
const SECTIONS = /** @type {const} */ ([
  ["answer", "answer"],
  ["picture", "charts"],
  ["data", "data"],
  ["notes", "whatItMeans"],
]);

/** @template {AnswerTo<string>} Answer @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {Shell<Answer>} */
export function questionShell(host, tools, question) {
  /** @type {Omit<Shown<Answer>, "settled"> | null} */
  let shown = null;
  /** @type {readonly Piece<Answer>[]} */
  let drawn = [];
  /** What is not shown yet while the page opens. @type {readonly Piece<Answer>[]} */
  let later = [];
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let following;

  /** @returns {Shown<Answer> | null} */
  const now = () => shown && { ...shown, settled: !host.querySelector("[data-dragging], [data-held]") };

  /** What is folded away follows once all that is seen has been painted; what is not shown yet, once it is. */
  function redraw() {
    clearTimeout(following);
    draw(drawn);
  }

  /** Draws what has been shown since it was left out. */
  function reveal() {
    draw(later);
  }

  /** @param {readonly Piece<Answer>[]} wanted */
  function draw(wanted) {
    const what = now();
    if (!what) return;
    later = wanted.filter(isLater);
    const there = wanted.filter((one) => !later.includes(one));
    const folded = there.filter(isFolded);
    for (const one of there) if (!folded.includes(one)) one.draw?.(what);
    if (folded.length)
      following = setTimeout(() => {
        for (const one of folded) one.draw?.(what);
      });
  }

  /** @param {Pieces<Answer>} pieces */
  function layOut({ words, folds: list, ...pieces }) {
    const ask = sentence({
      title: titleOf(question.id),
      words: words(tools.store.get()),
      onOpen: () => tools.openSheet(),
    });
    const foldList = folds([...list, ...tools.lastFolds(question.id)]);
    const inFolds = list.flatMap(({ body }) => (typeof body === "function" || body instanceof Node ? [] : [body]));
    drawn = [...SECTIONS.flatMap(([name]) => pieces[name] ?? []), ...inFolds, foldList];
    const sections = SECTIONS.filter(([name]) => pieces[name]).map(([name, label]) =>
      html("section", { class: name, "aria-label": say(label) }, ...(pieces[name] ?? []).flatMap(elementsOf)),
    );
    host.replaceChildren(
      ask.element,
      html("div", { class: pieces.data ? "work with-data" : "work" }, ...sections),
      foldList.element,
    );
    return ask;
  }

  /** @param {Pieces<Answer>} pieces @returns {View} */
  function show(pieces) {
    const { words, wording, fields, compares, follow, work, known = tools.known, answered } = pieces;
    const ask = layOut(pieces);
    let worded = wording?.(tools.store.get());
    return {
      answered,
      reveal,
      update(state, /** @type {Answer | null} */ answer, error) {
        const alone = compares?.(state) === false;
        // What the core refuses is not what the answer is about.
        if (answer && !alone)
          shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
        const wordingNow = wording?.(state);
        if (wordingNow !== worded) ask.update({ words: words(state) });
        worded = wordingNow;
        if (compares) hide(drawn, alone);
        follow?.(state, answer);
        const told = fields.map((field) => field.update(state, error)).includes(true) || alone;
        ask.update({ known: known(state), wrong: tools.trouble(error, told) });
        if (!answer || alone) return;
        if (!error) work?.update(requestOf(question, state));
        redraw();
      },
      destroy() {
        clearTimeout(following);
        work?.destroy();
        for (const { destroy } of drawn) destroy?.();
      },
    };
  }

  return { answer: () => shown?.answer ?? null, shown: () => shown, redraw, show };
}

/** @template Answer @param {Piece<Answer>} piece @returns {readonly HTMLElement[]} */
const elementsOf = ({ element, elements = element ? [element] : [] }) => elements;

/** @template Answer @param {Piece<Answer>} piece */
const isFolded = ({ element }) => Boolean(element?.closest("details:not([open])"));

/** Whether it waits for its turn to be shown as the page opens. @template Answer @param {Piece<Answer>} piece */
const isLater = (piece) => Boolean(elementsOf(piece)[0]?.closest("[data-later]"));

/** What is drawn is not there. @template Answer @param {readonly Piece<Answer>[]} drawn @param {boolean} hidden */
function hide(drawn, hidden) {
  for (const one of drawn) if (one.draw) for (const element of elementsOf(one)) element.hidden = hidden;
}
