// @ts-check
/** Shows the open question: one question to the core and one redraw for each frame in which something changed. */

import { ask, asCoreError, isReady, ready } from "../core.js";
import { h } from "./dom.js";

/** @import { CoreError } from "../core.js" */
/** @import { State, Store } from "../state/history.js" */
/** @import { Question, Tools, View } from "../questions/index.js" */

/**
 * @param {HTMLElement} host
 * @param {{ store: Store, find: (id: string) => Question, tools: Tools, onShown?: (question: Question) => void, onDrawn: (state: State, error: CoreError | null, answer: any) => void }} page
 */
export function createQuestionView(host, { store, find, tools, onShown, onDrawn }) {
  /** @type {{ question: Question, view: View, answer: any } | null} */
  let shown = null;
  let scheduled = false;

  /** @param {State} state */
  function showing(state) {
    if (shown?.question.id === state.question) return shown;
    shown?.view.destroy();
    host.replaceChildren();
    const question = find(state.question);
    shown = { question, view: question.create(host, tools), answer: null };
    onShown?.(question);
    return shown;
  }

  /** What was open stays until the next question can be asked. */
  async function open() {
    const { question } = store.get();
    try {
      await ready(question);
    } catch {
      if (store.get().question === question) sayItIsLost(find(question));
      return;
    }
    draw();
  }

  /** @param {Question} question */
  function sayItIsLost(question) {
    shown?.view.destroy();
    shown = null;
    host.replaceChildren(h("h1", {}, question.title),
      h("p", { role: "alert" }, "This part of the page could not be loaded. Check the connection and try again."),
      h("button", { type: "button", onclick: draw }, "Try again"));
  }

  function draw() {
    scheduled = false;
    const state = store.get();
    if (!isReady(state.question)) return open();
    const now = showing(state);
    /** @type {CoreError | null} */
    let error = null;
    try {
      now.answer = answerTo(now.question, state);
    } catch (thrown) {
      error = asCoreError(thrown);
    }
    now.view.update(state, now.answer, error);
    onDrawn(state, error, now.answer);
  }

  return {
    /** Draws in the next frame, however often it is called before. */
    schedule() {
      if (scheduled) return;
      scheduled = true;
      requestAnimationFrame(draw);
    },
    draw,
    destroy: () => shown?.view.destroy(),
  };
}

/** What the core says to a question; the story asks by itself. @param {Question} question @param {State} state */
export function answerTo(question, state) {
  return question.story ? null : ask(question.id, requestOf(question, state));
}

/** What goes to the core for a question. @param {Question} question @param {State} state */
export function requestOf(question, state) {
  return question.request ? question.request(state) : { scenario: state.scenario, with: state.with[question.id] };
}
