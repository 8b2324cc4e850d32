// @ts-check
/** What is asked of the core. */

/** @import { Question } from "../index.js" */
/** @import { State } from "../../state/history.js" */

/** What goes to the core for a question. @param {Question} question @param {State} state */
export function requestOf(question, state) {
  return question.request ? question.request(state) : { scenario: state.scenario, with: state.with[question.id] };
}
