// @ts-check
/** What is asked of the core. */

/** @import { Scenario } from "../../types/page.d.ts" */
/** @import { Question } from "../index.js" */
/** @import { State } from "../../state/history.js" */

/** @typedef {{ scenario: Scenario, with: Record<string, unknown> }} Request */

/** What goes to the core for a question. @param {Question} question @param {State} state @returns {Request} */
export function requestOf(question, state) {
  return question.request ? question.request(state) : { scenario: state.scenario, with: state.with[question.id] };
}
