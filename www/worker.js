// @ts-check
/**
 * Long jobs off the main thread. Jobs that share a `slot` replace each other: only the newest that has arrived is worked on.
 * In: `{ id, slot, question, request, lent }`, the last the module that answers it, or `{ cancel: slot }`.
 * Out: `{ id, answer }`, `{ id, error }`, `{ id, stale: true }`, or `{ broken }` where the core cannot be started.
 */

import { asCoreError, ask, borrow } from "./core.js";

/** @typedef {{ id: number, slot: string, question: string, request: unknown, lent: import("./core.js").Lent }} Job */

/** @type {Map<string, Job>} */
const waiting = new Map();
const turn = new MessageChannel();
let turning = false;

/** Lets messages that have arrived be read before the next job begins. */
function nextTurn() {
  if (turning) return;
  turning = true;
  turn.port2.postMessage(null);
}

turn.port1.onmessage = async () => {
  turning = false;
  const job = waiting.values().next().value;
  if (!job) return;
  waiting.delete(job.slot);
  try {
    await borrow(job.lent);
  } catch (error) {
    postMessage({ broken: String(error) });
    return;
  }
  try {
    postMessage({ id: job.id, answer: ask(job.question, job.request) });
  } catch (error) {
    postMessage({ id: job.id, error: asCoreError(error) });
  }
  nextTurn();
};

addEventListener("message", ({ data }) => {
  const slot = data.cancel ?? data.slot;
  const stale = waiting.get(slot);
  if (stale) postMessage({ id: stale.id, stale: true });
  waiting.delete(slot);
  if (data.cancel === undefined) waiting.set(slot, data);
  nextTurn();
});
