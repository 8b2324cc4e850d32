// @ts-check
/** What every piece of the frame and the sheet is given: the store, the table of fields, the core, and how to speak to the reader. */

/** @import { Store } from "../state/history.js" */
/** @import { Field } from "../types/core.d.ts" */
/** @import { scenarioFiller } from "../state/scenario.js" */
/** @import { Notify } from "./notice.js" */
/** @import { QuestionEntry } from "../questions/index.js" */

/**
 * @typedef {object} Page
 * @property {Store} store
 * @property {(path: string) => Field | undefined} field the row of `fields()` for a path
 * @property {ReturnType<typeof scenarioFiller>} filler fills scenarios in from the defaults
 * @property {(scenario: unknown) => string | null} check the core's sentence about what is wrong with a scenario, or null
 * @property {(question: string) => void} go opens a question; "Your numbers" makes room for it
 * @property {Notify} notify
 * @property {QuestionEntry[]} questions
 */

export {};
