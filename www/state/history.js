// @ts-check
/** The one store of the page, with undo and redo over every change. */

import { getAt, same, setAt } from "./scenario.js";

/** @import { Units } from "../units.js" */
/** @import { Scenario, With } from "../types/page.d.ts" */
/** @typedef {{ question: string, scenario: Scenario, with: With, units: Units, from_link?: boolean }} State `from_link` where the numbers are those of a link, or were made from them */
/** @typedef {(state: State, previous: State) => void} Listener */
/** @typedef {ReturnType<typeof createStore>} Store */

/** More steps than anyone takes back; states share what they do not change, so a step costs little. */
const MOST_STEPS = 500;

/**
 * @param {State} initial
 * @param {(next: State, previous: State) => State} [alsoChange] what goes with a change, in the same step
 */
export function createStore(initial, alsoChange = (next) => next) {
  let state = initial;
  /** @type {State[]} */
  let past = [];
  /** @type {State[]} */
  let future = [];
  /** @type {string | undefined} */
  let merging;
  /** @type {Set<Listener>} */
  const listeners = new Set();

  /** @param {State} next */
  function become(next) {
    const previous = state;
    state = next;
    for (const listener of [...listeners]) listener(state, previous);
  }

  /** @param {State} wanted @param {string} [merge] */
  function step(wanted, merge) {
    if (same(wanted, state)) return;
    const next = alsoChange(wanted, state);
    if (!merge || merge !== merging) past = [...past.slice(1 - MOST_STEPS), state];
    merging = merge;
    future = [];
    become(next);
  }

  /** @param {State[]} from @param {State[]} to */
  function travel(from, to) {
    const target = from.at(-1);
    if (!target) return false;
    from.pop();
    to.push(state);
    merging = undefined;
    become({ ...target, question: sees(target) ? state.question : target.question });
    return true;
  }

  /** Whether the change would show in the question that is open. @param {State} target */
  function sees(target) {
    const here = state.question;
    return (
      target.scenario !== state.scenario || target.units !== state.units || !same(target.with[here], state.with[here])
    );
  }

  return {
    get: () => state,
    /** What stands at a path of the state. @template T what the caller knows to stand there @param {string} path @returns {T} */
    at: (path) => getAt(state, path),
    /**
     * Changes one value. Consecutive changes with the same `merge` are one step of undo.
     * @param {string} path @param {unknown} value @param {{ merge?: string }} [options]
     */
    set: (path, value, { merge } = {}) => step(setAt(state, path, value), merge),
    /**
     * Changes several values in one step.
     * @param {[path: string, value: unknown][]} changes @param {{ merge?: string }} [options]
     */
    setAll: (changes, { merge } = {}) =>
      step(
        changes.reduce((next, [path, value]) => setAt(next, path, value), state),
        merge,
      ),
    /** Ends a run of merged changes, as when a drag is let go. */
    settle: () => {
      merging = undefined;
    },
    /** Puts another state in place; `undoable: false` leaves no step. @param {State} next @param {{ undoable?: boolean }} [options] */
    replace: (next, { undoable = true } = {}) => (undoable ? step(next) : become(next)),
    /** Moves to another question; that is the browser's Back and Forward, not undo. @param {string} question */
    go: (question) => {
      if (question !== state.question) {
        merging = undefined;
        become({ ...state, question });
      }
    },
    undo: () => travel(past, future),
    redo: () => travel(future, past),
    /** Makes what is there now the beginning, with nothing to undo. */
    forgetSteps: () => {
      [past, future, merging] = [[], [], undefined];
    },
    canUndo: () => past.length > 0,
    canRedo: () => future.length > 0,
    /** @param {Listener} listener @returns {() => void} */
    subscribe: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}
