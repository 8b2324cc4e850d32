// @ts-check
/** A recording is read in a worker of the built page, and nothing of it leaves the device. */

import { expect, test } from "./support/page.js";

const TABLE = "time_s,distance_m,power_w\n0,0,200\n1,10,\n2,20,220\n";

test("a file is read by the worker, and no request goes anywhere but for the module", async ({ page, baseURL }) => {
  await page.goto(String(baseURL));
  /** @type {string[]} */
  const asked = [];
  page.context().on("request", (request) => asked.push(`${request.method()} ${new URL(request.url()).pathname}`));
  const read = await page.evaluate(async (table) => {
    const version = document.documentElement.dataset.version;
    const worker = new Worker(new URL(`${version}/recordings-worker.js`, location.href), { type: "module" });
    const answer = await new Promise((resolve, reject) => {
      worker.onerror = () => reject(new Error("the worker failed"));
      worker.onmessage = ({ data }) => "share" in data || resolve(data);
      worker.postMessage({ file: new File([table], "ride.csv") });
    });
    worker.terminate();
    return answer.recording && { kind: answer.recording.kind, distance_m: [...answer.recording.columns.distance_m] };
  }, TABLE);
  expect(read).toEqual({ kind: "csv", distance_m: [0, 10, 20] });
  for (const request of asked)
    expect(request).toMatch(/^GET .*\/(recordings-worker|part-\w+)\.js$|^GET .*\/recordings_bg\.wasm$/);
});
