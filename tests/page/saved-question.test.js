// @ts-check
/** A question as a file: what was asked and answered, without any recording. */

import assert from "node:assert/strict";
import { test } from "node:test";
import { questionText } from "../../www/save/files.js";

/** @typedef {Parameters<typeof questionText>[0]} Shown */

test("a recording and its laps stay out of the request that is saved, and columns of an answer are lists", () => {
  const shown = /** @type {Shown} */ (
    /** @type {unknown} */ ({
      question: "drag-test",
      own: { rides: ["mark"], laps: [{ from_s: 0, to_s: 100 }] },
      request: {
        scenario: {},
        with: {
          rolling: "hold",
          laps: [{ from_s: 0, to_s: 100 }],
          recordings: [{ columns: { time_s: Float64Array.of(7) } }],
        },
      },
      answer: { columns: { runs: Float64Array.of(2, 3) } },
    })
  );
  const saved = JSON.parse(questionText(shown));
  assert.deepEqual(saved.request, { scenario: {}, with: { rolling: "hold" } });
  assert.deepEqual(saved.own, shown.own);
  assert.deepEqual(saved.answer.columns.runs, [2, 3]);
});

test("the request of any other question is saved whole", () => {
  const request = { scenario: {}, with: { power_change: 0.1 } };
  const shown = /** @type {Shown} */ (
    /** @type {unknown} */ ({ question: "power-or-drag", own: {}, request, answer: {} })
  );
  assert.deepEqual(JSON.parse(questionText(shown)).request, request);
});
