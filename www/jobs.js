// @ts-check
/** The page's side of the worker: ask for something long, and only the newest request of a slot is answered. */

import { openWorker } from "#delivery";
import { ask, lend, ready } from "./core.js";

/** @import { AnswerTo } from "./types/page.d.ts" */

/** @typedef {ReturnType<typeof createJobs>} Jobs */

/** A running job cannot be interrupted; one that a newer request has overtaken for this long is ended with its worker. */
const PATIENCE_MS = 400;

/** @param {() => Worker} [open] */
export function createJobs(open = openWorker) {
  /** @type {Map<number, { slot: string, question: string, request: unknown, resolve: (answer: unknown) => void, reject: (error: unknown) => void }>} */
  const pending = new Map();
  /** @type {Worker | null | undefined} undefined before the first job, null where workers are refused */
  let worker;
  let lastId = 0;

  function start() {
    try {
      const started = open();
      started.onmessage = ({ data }) => (data.broken ? onMainThread() : settle(data));
      started.onerror = onMainThread;
      return started;
    } catch {
      return null;
    }
  }

  /** @param {{ id?: number, answer?: unknown, error?: unknown, stale?: boolean }} message */
  function settle({ id, answer, error, stale }) {
    const job = id === undefined ? undefined : pending.get(id);
    if (!job || id === undefined) return;
    pending.delete(id);
    if (error) job.reject(error);
    else job.resolve(stale ? null : answer);
  }

  /** Workers are refused here, so whatever waits is worked out in the page. */
  function onMainThread() {
    worker?.terminate();
    worker = null;
    for (const id of pending.keys()) inPage(id);
  }

  /** @param {number} id */
  async function inPage(id) {
    await new Promise((resolve) => setTimeout(resolve));
    const job = pending.get(id);
    if (!job) return;
    try {
      await ready(job.question);
      settle({ id, answer: ask(job.question, job.request) });
    } catch (error) {
      settle({ id, error });
    }
  }

  /** @param {number} id */
  async function send(id) {
    const job = pending.get(id);
    const to = worker;
    if (!job) return;
    if (!to) return inPage(id);
    try {
      const lent = await lend(job.question);
      // Meanwhile the job may have been overtaken, or its worker ended.
      if (pending.has(id) && worker === to)
        to.postMessage({ id, slot: job.slot, question: job.question, request: job.request, lent });
    } catch {
      inPage(id);
    }
  }

  /** Ends the worker if it is still busy with something nobody waits for. */
  function restartIfBusy() {
    if (!worker || !pending.size) return;
    worker.terminate();
    worker = start();
    for (const id of pending.keys()) send(id);
  }

  /** @param {string} slot */
  function cancel(slot) {
    for (const [id, job] of pending) if (job.slot === slot) settle({ id, stale: true });
    worker?.postMessage({ cancel: slot });
  }

  return {
    /**
     * Resolves to the answer, or to null once a newer request of the same slot, or `cancel`, has overtaken it.
     * @template {string} Id @param {Id} question @param {unknown} request @param {{ slot?: string }} [options] @returns {Promise<AnswerTo<Id> | null>}
     */
    ask(question, request, { slot = question } = {}) {
      if (worker === undefined) worker = start();
      const overtakes = [...pending.values()].some((job) => job.slot === slot);
      cancel(slot);
      const id = ++lastId;
      return new Promise((resolve, reject) => {
        pending.set(id, {
          slot,
          question,
          request,
          resolve: /** @type {(answer: unknown) => void} */ (resolve),
          reject,
        });
        send(id);
        if (overtakes) setTimeout(() => pending.has(id) && restartIfBusy(), PATIENCE_MS);
      });
    },
    cancel,
    /** Whether jobs run off the main thread. */
    inWorker: () => Boolean(worker),
  };
}
