// @ts-check
/**
 * Work that takes longer than an answer: it begins once the rider's hands rest, runs in the worker a chunk at a time, and can be stopped and
 * resumed. It begins again only when its inputs change; units are none of them, and neither is the scenario's title.
 */

import { same } from "../../state/scenario.js";

/** @import { Jobs } from "../../jobs.js" */
/** @import { AnswerTo } from "../../types/page.d.ts" */

/** @import { Request } from "./request.js" */
/** @typedef {"idle" | "waiting" | "running" | "stopped" | "done" | "failed"} WorkState */

/**
 * @template Value @template {string} [Id=string]
 * @typedef {object} WorkOptions
 * @property {Pick<Jobs, "ask" | "cancel">} worker
 * @property {Id} question who is asked
 * @property {string} slot what else is asked in this slot overtakes it
 * @property {(value: Value | null) => number} [restMs] how long the inputs must have stood still; at once if left out
 * @property {(request: Request, value: Value | null) => object} [chunk] what the next chunk asks beyond the request's own `with`
 * @property {(answer: AnswerTo<Id>, request: Request) => { value?: Value, share?: number, done: boolean }} take what a chunk's answer gives, if anything
 *   yet, how much of the work that is, from 0 to 1, and whether it is all
 * @property {boolean} [keepsLast] whether the last value stands until the next one is there
 * @property {() => void} onChange after a chunk, and when it is stopped or resumed
 */

/** @typedef {ReturnType<typeof backgroundWork>} BackgroundWork */

/** @param {Request} request */
const inputsOf = ({ scenario: { title: _, ...scenario }, with: details }) => ({ scenario, with: details });

/** @template Value @template {string} Id @param {WorkOptions<Value, Id>} options */
export function backgroundWork({ worker, question, slot, restMs, chunk, take, keepsLast = false, onChange }) {
  /** @type {WorkState} */
  let state = "idle";
  /** @type {Request | null} */
  let wanted = null;
  /** @type {Value | null} */
  let value = null;
  let share = 0;
  /** Counts what was begun and halted, so that a late answer is known as such. */
  let run = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  function halt() {
    run += 1;
    clearTimeout(timer);
    worker.cancel(slot);
  }

  /** @param {Request} request */
  async function work(request) {
    const own = run;
    state = "running";
    do {
      const answer = await answerTo(request);
      if (own !== run) return;
      if (answer) accept(answer, request);
      else fail();
      onChange();
    } while (own === run && state === "running");
  }

  /** What the core refuses is already said beside the answer. @param {Request} request */
  async function answerTo(request) {
    const asked = { ...request, with: { ...request.with, ...chunk?.(request, value) } };
    try {
      return await worker.ask(question, asked, { slot });
    } catch {
      return null;
    }
  }

  /** @param {AnswerTo<Id>} answer @param {Request} request */
  function accept(answer, request) {
    const taken = take(answer, request);
    share = taken.share ?? 0;
    if (taken.value !== undefined) value = taken.value;
    if (taken.done) state = "done";
  }

  function fail() {
    state = "failed";
    if (keepsLast) value = null;
  }

  return {
    /** Follows the inputs: others than before are worked on once they rest. @param {Request} request */
    update(request) {
      if (wanted && same(inputsOf(request), inputsOf(wanted))) return;
      halt();
      [wanted, state, share] = [request, "waiting", 0];
      if (!keepsLast) value = null;
      timer = setTimeout(() => work(request), restMs?.(value) ?? 0);
    },
    stop() {
      halt();
      state = "stopped";
      onChange();
    },
    /** Goes on from what is there. */
    resume() {
      if (!wanted || state !== "stopped") return;
      work(wanted);
      onChange();
    },
    /** Ends it, and what it gave is gone. */
    forget() {
      halt();
      [wanted, state, value, share] = [null, "idle", null, 0];
    },
    value: () => value,
    state: () => state,
    /** Whether more is to come by itself. */
    isBusy: () => state === "waiting" || state === "running",
    share: () => share,
    destroy: halt,
  };
}
