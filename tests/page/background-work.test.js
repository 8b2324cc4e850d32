// @ts-check
/** Work in the background: when it begins, what it asks, how it is stopped and resumed, and what begins it again. */

import assert from "node:assert/strict";
import { afterEach, beforeEach, mock, test } from "node:test";
import { backgroundWork } from "../../www/questions/shared/background-work.js";

const REST_MS = 200;

beforeEach(() => mock.timers.enable({ apis: ["setTimeout"] }));
afterEach(() => mock.timers.reset());

/** Lets what has been answered be taken up. */
async function settled() {
  for (let turn = 0; turn < 8; turn += 1) await Promise.resolve();
}

/** A worker whose answers are given by the test, as the page's own resolves what is cancelled to null. */
function fakeWorker() {
  /** @type {{ request: any, slot: string, resolve: (answer: any) => void, reject: (error: any) => void }[]} */
  const asked = [];
  let open = 0;
  return {
    asked,
    ask: (/** @type {string} */ _, /** @type {any} */ request, /** @type {{ slot?: string }} */ { slot = "" } = {}) =>
      new Promise((resolve, reject) => asked.push({ request, slot, resolve, reject })),
    cancel() {
      for (; open < asked.length; open += 1) asked[open].resolve(null);
    },
    /** @param {number} at @param {unknown} answer */
    async answer(at, answer) {
      asked[at].resolve(answer);
      await settled();
    },
  };
}

/** Work of so many chunks that counts to that number. */
function counting({ keepsLast = false, chunks = 3 } = {}) {
  const worker = fakeWorker();
  let changes = 0;
  const work = backgroundWork({
    worker,
    question: "which",
    slot: "which draws",
    restMs: () => REST_MS,
    keepsLast,
    chunk: (_, /** @type {number | null} */ value) => ({ so_far: value }),
    take: (/** @type {{ count: number }} */ { count }) => ({
      value: count,
      share: count / chunks,
      done: count >= chunks,
    }),
    onChange: () => {
      changes += 1;
    },
  });
  return { worker, work, changes: () => changes };
}

/** @param {object} [changed] of the scenario */
const request = (changed = {}) => ({ scenario: { title: "", rider: { mass: 80 }, ...changed }, with: { distance: 1 } });

test("it begins once the inputs rest, with the newest of them", async () => {
  const { worker, work } = counting();
  work.update(request());
  mock.timers.tick(REST_MS - 1);
  work.update(request({ rider: { mass: 81 } }));
  mock.timers.tick(REST_MS - 1);
  assert.equal(worker.asked.length, 0);
  assert.equal(work.state(), "waiting");
  mock.timers.tick(1);
  assert.equal(worker.asked.length, 1);
  assert.deepEqual(worker.asked[0].request.scenario.rider, { mass: 81 });
  assert.deepEqual(worker.asked[0].request.with, { distance: 1, so_far: null });
  assert.equal(worker.asked[0].slot, "which draws");
});

test("it runs a chunk at a time, each going on from the last, and tells how far it is", async () => {
  const { worker, work, changes } = counting();
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  assert.deepEqual([work.value(), work.share(), work.state(), changes()], [1, 1 / 3, "running", 1]);
  assert.equal(worker.asked[1].request.with.so_far, 1);
  await worker.answer(1, { count: 2 });
  await worker.answer(2, { count: 3 });
  assert.deepEqual([work.value(), work.state(), work.isBusy(), changes()], [3, "done", false, 3]);
  assert.equal(worker.asked.length, 3);
});

test("another title begins nothing again, before, during and after", async () => {
  const { worker, work } = counting();
  work.update(request());
  mock.timers.tick(REST_MS - 1);
  work.update(request({ title: "Sunday" }));
  mock.timers.tick(1);
  assert.equal(worker.asked.length, 1);
  work.update(request({ title: "Monday" }));
  for (const [at, count] of [1, 2, 3].entries()) await worker.answer(at, { count });
  work.update(request({ title: "Tuesday" }));
  mock.timers.tick(REST_MS);
  assert.deepEqual([work.value(), work.state(), worker.asked.length], [3, "done", 3]);
});

test("other inputs end what runs, and its late answer counts for nothing", async () => {
  const { worker, work, changes } = counting();
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  work.update(request({ rider: { mass: 90 } }));
  assert.deepEqual([work.value(), work.share(), work.state()], [null, 0, "waiting"]);
  await worker.answer(1, { count: 2 });
  assert.deepEqual([work.value(), changes()], [null, 1]);
  mock.timers.tick(REST_MS);
  assert.deepEqual(worker.asked[2].request.with.so_far, null);
});

test("it stops, stays stopped while only the title changes, and resumes from what is there", async () => {
  const { worker, work, changes } = counting();
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  work.stop();
  await settled();
  assert.deepEqual([work.state(), work.value(), changes()], ["stopped", 1, 2]);
  work.update(request({ title: "Sunday" }));
  mock.timers.tick(10 * REST_MS);
  assert.deepEqual([work.state(), worker.asked.length], ["stopped", 2]);
  work.resume();
  assert.equal(work.state(), "running");
  assert.equal(worker.asked[2].request.with.so_far, 1);
  await worker.answer(2, { count: 3 });
  assert.deepEqual([work.state(), work.value()], ["done", 3]);
});

test("stopped and resumed in one go, it runs once", async () => {
  const { worker, work } = counting();
  work.update(request());
  mock.timers.tick(REST_MS);
  work.stop();
  work.resume();
  await settled();
  assert.deepEqual([work.state(), worker.asked.length], ["running", 2]);
  await worker.answer(1, { count: 3 });
  assert.deepEqual([work.state(), worker.asked.length], ["done", 2]);
});

test("it can be stopped before it begins, and other inputs begin it again", async () => {
  const { worker, work } = counting();
  work.update(request());
  work.stop();
  mock.timers.tick(REST_MS);
  assert.equal(worker.asked.length, 0);
  work.update(request({ rider: { mass: 90 } }));
  mock.timers.tick(REST_MS);
  assert.deepEqual([work.state(), worker.asked.length], ["running", 1]);
});

test("what is refused ends it, and leaves what was counted", async () => {
  const { worker, work } = counting();
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  worker.asked[1].reject({ kind: "impossible" });
  await settled();
  assert.deepEqual([work.state(), work.value(), work.isBusy()], ["failed", 1, false]);
});

test("a last value that is kept stands until the next one, and falls with a refusal", async () => {
  const { worker, work } = counting({ keepsLast: true, chunks: 1 });
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  work.update(request({ rider: { mass: 90 } }));
  assert.equal(work.value(), 1);
  mock.timers.tick(REST_MS);
  worker.asked[1].reject({ kind: "impossible" });
  await settled();
  assert.deepEqual([work.value(), work.state()], [null, "failed"]);
});

test("forgotten, it begins again with the same inputs", async () => {
  const { worker, work } = counting({ chunks: 1 });
  work.update(request());
  mock.timers.tick(REST_MS);
  await worker.answer(0, { count: 1 });
  work.forget();
  assert.deepEqual([work.value(), work.state()], [null, "idle"]);
  work.update(request());
  mock.timers.tick(REST_MS);
  assert.equal(worker.asked.length, 2);
});

test("once it is disposed of, nothing is asked and nothing changes", async () => {
  const { worker, work, changes } = counting();
  work.update(request());
  work.destroy();
  mock.timers.tick(10 * REST_MS);
  assert.equal(worker.asked.length, 0);
  const other = counting();
  other.work.update(request());
  mock.timers.tick(REST_MS);
  other.work.destroy();
  await other.worker.answer(0, { count: 1 });
  assert.deepEqual([other.work.value(), changes() + other.changes()], [null, 0]);
});
