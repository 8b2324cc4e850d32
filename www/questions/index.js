// @ts-check
/** The questions of the page, in the order of the rail. A new one is one file beside this and one line in the list; its name and title stand in the book "page". */

import { story } from "../learn/start-here.js";
import { question as dragTest } from "./drag-test.js";
import { question as finishTime } from "./finish-time.js";
import { question as holdOrFade } from "./hold-or-fade.js";
import { question as legRoom } from "./leg-room.js";
import { question as nextGain } from "./next-gain.js";
import { question as powerCurve } from "./power-curve.js";
import { question as powerOrDrag } from "./power-or-drag.js";
import { question as ridePlan } from "./ride-plan.js";
import { question as speedForWatts } from "./speed-for-watts.js";
import { question as whichPosition } from "./which-position.js";

/** @import { State, Store } from "../state/history.js" */
/** @import { Request } from "./shared/request.js" */
/** @import { Field } from "../types/core.d.ts" */
/** @import { AnswerTo, JsonObject, Position } from "../types/page.d.ts" */
/** @import { CoreError } from "../core.js" */
/** @import { Jobs } from "../jobs.js" */
/** @import { BoundNumber, BoundNumberOptions } from "../frame/bound-number.js" */
/** @import { Notify } from "../frame/notice.js" */
/** @import { Fold } from "../parts/folds.js" */

/** @typedef {"start" | "understand" | "measure" | "decide" | "ride"} Group */

/**
 * What a question may use of the page.
 * @typedef {object} Tools
 * @property {Store} store
 * @property {(question: string) => void} go opens another question
 * @property {(path?: string) => void} openSheet opens "Your numbers", at a field such as `scenario.bike.rolling_coefficient`
 * @property {Jobs} worker long jobs off the main thread
 * @property {(options: BoundNumberOptions) => BoundNumber} number a number of the sentence, tied to the store
 * @property {(state: State, positions?: number[]) => { measured: number, estimated: number, typical: number }} known for the line under the sentence; counts the ridden position unless others are named
 * @property {(error: CoreError | null, shown: boolean) => string | null} trouble the sentence for an error that no number of the question shows
 * @property {(about: CoreError) => string} words an error or a warning as the reader's sentence
 * @property {(path: string) => Field | undefined} field range, default and evidence of an input
 * @property {(path: string) => string} label what an input is called
 * @property {(group: string) => JsonObject} freshPart the numbers of a part, such as `with.sit_up`, at their defaults
 * @property {(position?: JsonObject) => Position} newPosition a position filled in from the defaults
 * @property {Notify} notify
 * @property {boolean} [opensFiles] whether a rider may open files here
 * @property {(question: string) => Fold[]} lastFolds what every question ends with: taking it elsewhere
 */

/**
 * What shows a question: `update` takes the last good answer (null before the first), and the error if there is one. `answered`, where the
 * first verdict takes longer than the answer, resolves once it is there: what stands below waits for it. `reveal` draws what was not shown when
 * `update` was last told of an answer, and is now. `whole` resolves once
 * what is made little by little is there.
 * @typedef {{ update(state: State, answer: AnswerTo<string> | null, error: CoreError | null): void, answered?: Promise<void>, whole?: Promise<void>, reveal?(): void, destroy(): void }} View
 */

/**
 * @typedef {object} Question
 * @property {string} id the core's name for it
 * @property {Group} group
 * @property {JsonObject} defaults its own part of the state, at `with.<id>`
 * @property {JsonObject} [metric] what of it is otherwise for a new rider who reads kilometres
 * @property {string[]} [positionFields] which of those are indices of positions, so that they follow when one is removed
 * @property {(own: JsonObject, moved: (position: number) => number | null) => JsonObject} [movePositions] the same for positions deeper inside; null for the removed one
 * @property {(JsonObject & { name: string })[]} [positions] positions that a new rider finds beside their own, because the question compares them; their names are keys of the book "page"
 * @property {boolean} [comparesAll] whether every position goes into it
 * @property {boolean} [alone] nothing of the scenario goes into it, only numbers of its own
 * @property {boolean} [slow] its answer takes so long that it is worked out beside the page
 * @property {boolean} [story] asks the core itself, step by step, instead of being one of its questions
 * @property {(state: State) => Request} [request] the scenario and its own part of the state if left out
 * @property {() => Promise<{ create: (host: HTMLElement, tools: Tools, question: Question) => View }>} load fetches what shows it
 */
/** @typedef {Pick<Question, "id" | "group" | "positionFields" | "movePositions">} QuestionEntry */

/** In the order of the rail. @type {Group[]} */
export const GROUPS = ["start", "understand", "measure", "decide", "ride"];

/** @type {Question[]} */
export const questions = [
  speedForWatts,
  powerOrDrag,
  holdOrFade,
  powerCurve,
  dragTest,
  legRoom,
  whichPosition,
  nextGain,
  finishTime,
  ridePlan,
];

/** What the rail lists: the story first. @type {Question[]} */
export const pages = [story, ...questions];

/** The question that a first visit opens: the one that riders argue about. */
export const opening = powerOrDrag;
