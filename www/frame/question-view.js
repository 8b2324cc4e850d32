// @ts-check
/** Shows the open question: fetched when it is first opened, then one question to the core and one redraw for each frame in which something changed. */

import { asCoreError, ask, isReady, prepareFor, ready } from "../core.js";
import { painted, pause } from "../parts/painted.js";
import { requestOf } from "../questions/shared/request.js";
import { book, isOpen, open } from "../words/index.js";
import { h } from "./dom.js";

/** @import { CoreError } from "../core.js" */
/** @import { State, Store } from "../state/history.js" */
/** @import { Answers } from "../types/page.d.ts" */
/** @import { Question, Tools, View } from "../questions/index.js" */

/** @typedef {Answers[keyof Answers]} Answer */
/** @typedef {{ question: Question, state: State, answer: Answer | null, error: CoreError | null }} Drawn */

const say = book("page");
/** What follows the sentence of a question, or the beginning of the story: each is painted by itself when the page opens. */
const PIECES = { question: ".answer, .picture > *, .data, .notes, .folds", story: ".step" };
/** What stands below an answer that takes longer is shown all the same. */
const PATIENCE_MS = 3000;
/** The book with the core's sentences. */
const CORE = "core";

/**
 * @param {HTMLElement} host
 * @param {object} page
 * @param {Store} page.store
 * @param {(id: string) => Question} page.find
 * @param {Tools} page.tools
 * @param {(question: Question) => void} [page.onShown]
 * @param {(drawn: Drawn) => void} page.onDrawn
 * @param {(error: unknown, again: () => void) => void} page.onFailed a question could not be fetched; what was shown stays
 */
export function createQuestionView(host, { store, find, tools, onShown, onDrawn, onFailed }) {
  /** @type {{ question: Question, view: View, answer: Answer | null } | null} */
  let shown = null;
  /** The question that is being fetched, or could not be. @type {{ question: Question, done: Promise<void>, failed: boolean } | null} */
  let coming = null;
  let opened = false;
  /** What a visit opens with, until all of it is there. @type {Promise<void>} */
  let opening = Promise.resolve();
  let scheduled = false;
  let gone = false;

  /**
   * Until a question is there, the one before stays and follows what is changed.
   * @param {{ again?: boolean }} [options] whether one that could not be fetched is tried again
   * @returns {Promise<void>} once the open question is shown, or cannot be
   */
  function draw({ again = true } = {}) {
    scheduled = false;
    if (gone) return Promise.resolve();
    const wanted = find(store.get().question);
    if (shown) drawShown(shown);
    if (shown?.question === wanted) coming = null;
    else if (coming?.question !== wanted || (coming.failed && again))
      coming = { question: wanted, done: fetchAndShow(wanted), failed: false };
    return coming?.done ?? opening;
  }

  /** @param {Question} question */
  async function fetchAndShow(question) {
    const stillWanted = () => !gone && coming?.question === question;
    const inPieces = !opened;
    try {
      const [{ create }] = await Promise.all([
        question.load(),
        inPieces || ready(question.id),
        ...booksOf(question).map(open),
      ]);
      if (!stillWanted()) return;
      coming = null;
      shown?.view.destroy();
      host.replaceChildren();
      host.removeAttribute("aria-busy");
      shown = { question, view: create(host, tools, question), answer: null };
    } catch (error) {
      if (!stillWanted()) return;
      if (coming) coming.failed = true;
      return onFailed(error, draw);
    }
    onShown?.(question);
    if (inPieces) {
      opening = drawInPieces(shown);
      await opening;
    } else {
      drawShown(shown);
    }
  }

  /**
   * What a visit opens with: its beginning is read while the core is fetched, and all the rest at once would keep a slow device from showing
   * or hearing anything.
   * @param {NonNullable<typeof shown>} now
   */
  async function drawInPieces(now) {
    const stillShown = () => !gone && shown === now;
    const pieces = host.querySelectorAll(now.question.story ? PIECES.story : PIECES.question);
    for (const piece of pieces) piece.setAttribute("data-later", "");
    const waiting = h("p", { class: "starting", role: "status" }, say("coming"));
    host.append(waiting);
    begin(now);
    await painted();
    const state = store.get();
    const answering = askedAside(now.question, state);
    try {
      await ready(now.question.id);
    } catch (error) {
      if (!stillShown()) return;
      now.view.destroy();
      host.replaceChildren();
      shown = null;
      return onFailed(error, draw);
    }
    const said = await answering;
    if (speaks(said)) await open(CORE).catch(() => {});
    if (!stillShown()) return;
    // One that was overtaken leaves the drawing to what came after it.
    if (now.question.story || said.answer || said.error) drawShown(now, store.get() === state ? said : undefined);
    waiting.remove();
    await showInTurn(now, pieces[0]);
    await now.view.whole;
    await showInTurn(now, pieces[0]);
    opened = true;
    open(CORE).catch(() => {});
  }

  const nextPiece = () => host.querySelector("[data-later]");

  /** Others may come meanwhile. @param {NonNullable<typeof shown>} now @param {Element} first */
  async function showInTurn({ view }, first) {
    for (let piece = nextPiece(); piece; piece = nextPiece()) {
      piece.removeAttribute("data-later");
      view.reveal?.();
      await painted();
      if (piece === first && view.answered) await Promise.race([view.answered, pause(PATIENCE_MS)]);
    }
  }

  /** What needs no core: the sentence of a question. @param {NonNullable<typeof shown>} now */
  function begin({ question, view }) {
    if (!question.story) view.update(store.get(), null, null);
  }

  /** What the core says, worked out beside the page. @param {Question} question @param {State} state @returns {Promise<ReturnType<typeof asked>>} */
  async function askedAside(question, state) {
    try {
      return {
        answer: question.story
          ? null
          : await tools.worker.ask(question.id, requestOf(question, state), { slot: "first answer" }),
        error: null,
      };
    } catch (thrown) {
      return { answer: null, error: asCoreError(thrown) };
    }
  }

  /** @param {NonNullable<typeof shown>} now @param {ReturnType<typeof asked>} [said] where it is known already */
  function drawShown(now, said) {
    const state = store.get();
    prepareFor(state.scenario);
    if (!said && takesLong(now.question, state)) {
      if (!now.answer) begin(now);
      return void answerAside(now, state);
    }
    if (!said && isReady(now.question.id)) said = asked(now.question, state);
    if (!said) {
      begin(now);
      return void follow(now, ready(now.question.id));
    }
    if (speaks(said) && !isOpen(CORE)) return void follow(now, open(CORE));
    // Whoever of several asked for this state: an overtaken one does not come back.
    host.removeAttribute("aria-busy");
    if (!said.error) now.answer = said.answer;
    now.view.update(state, now.answer, said.error);
    onDrawn({ question: now.question, state, answer: now.answer, error: said.error });
  }

  /** Draws again once what was missing has been fetched. @param {NonNullable<typeof shown>} now @param {Promise<void>} fetching */
  function follow(now, fetching) {
    const stillShown = () => !gone && shown === now;
    return fetching.then(
      () => stillShown() && drawShown(now),
      (error) => stillShown() && onFailed(error, draw),
    );
  }

  /** The page follows what is done on it while an answer is worked out that takes longer; only the last one is drawn. @param {NonNullable<typeof shown>} now @param {State} state */
  async function answerAside(now, state) {
    host.setAttribute("aria-busy", "true");
    const said = await askedAside(now.question, state);
    if (gone || shown !== now || store.get() !== state || !(said.answer || said.error)) return;
    drawShown(now, said);
  }

  return {
    /** Draws in the next frame, however often it is called before. */
    schedule() {
      if (scheduled) return;
      scheduled = true;
      requestAnimationFrame(() => draw({ again: false }));
    },
    draw,
    /** Makes the question anew, as in another language. */
    remake() {
      shown?.view.destroy();
      shown = null;
      return draw();
    },
    destroy() {
      gone = true;
      shown?.view.destroy();
    },
  };
}

/** A course of more points is ridden beside the page. */
const MOST_POINTS_IN_PAGE = 400;

/** @param {Question} question @param {State} state */
function takesLong({ story, slow }, { scenario: { course } }) {
  return !story && (slow || (course.kind === "profile" && (course.points?.length ?? 0) > MOST_POINTS_IN_PAGE));
}

/** The texts that a question is told in. The story asks several, each of which may have something to say. @param {Question} question */
export function booksOf(question) {
  return [...(question.story ? ["learn", CORE] : [question.id]), "shared"];
}

/** Whether the core says something beside its figures. @param {{ answer: Answer | null, error: CoreError | null }} said */
function speaks({ answer, error }) {
  return error !== null || Boolean(answer && "warnings" in answer && answer.warnings.length);
}

/** @param {Question} question @param {State} state @returns {{ answer: Answer | null, error: CoreError | null }} */
function asked(question, state) {
  try {
    return { answer: answerTo(question, state), error: null };
  } catch (thrown) {
    return { answer: null, error: asCoreError(thrown) };
  }
}

/** What the core says to a question; the story asks by itself. @param {Question} question @param {State} state */
export function answerTo(question, state) {
  return question.story ? null : ask(question.id, requestOf(question, state));
}
