// @ts-check
/** A recording is read in a worker of the built page, and nothing of it leaves the device. */

import { expect, test } from "./support/page.js";

const TABLE = "time_s,distance_m,power_w\n0,0,200\n1,10,\n2,20,220\n";

test("a file is read by the worker, and no request goes anywhere but for the module", async ({ page, baseURL }) => {
  await page.goto(String(baseURL));
  /** @type {string[]} */
  const asked = [];
  page.context().on("request", (request) => asked.push(`${request.method()} ${request.url()}`));
  const read = await page.evaluate(async (table) => {
    const version = document.documentElement.dataset.version;
    const module = await WebAssembly.compileStreaming(
      fetch(new URL(`${version}/wasm/recordings_bg.wasm`, location.href)),
    );
    /** What the worker answers at last. @param {Blob} file */
    async function answer(file) {
      const worker = new Worker(new URL(`${version}/recordings-worker.js`, location.href), { type: "module" });
      const { recording, error } = await new Promise((resolve, reject) => {
        worker.onerror = () => reject(new Error("the worker failed"));
        worker.onmessage = ({ data }) => "share" in data || resolve(data);
        worker.postMessage({ file, module });
      });
      worker.terminate();
      return recording ? { kind: recording.kind, distance_m: [...recording.columns.distance_m] } : error?.text;
    }
    const packed = await new Response(
      new Blob([table]).stream().pipeThrough(new CompressionStream("gzip")),
    ).arrayBuffer();
    const files = [[table], [packed], [packed.slice(0, -20)], [new ArrayBuffer(200_000_000)], []];
    const answers = [];
    for (const parts of files) answers.push(await answer(new File(parts, "ride")));
    return answers;
  }, TABLE);
  const whole = { kind: "csv", distance_m: [0, 10, 20] };
  expect(read).toEqual([whole, whole, "packing_broken", "too_large", "empty"]);
  expect(asked.length).toBeGreaterThan(0);
  // The page fetches more of its own meanwhile; every request is for a file of the build, and says nothing else.
  for (const request of asked) {
    expect(request.startsWith(`GET ${baseURL}`), request).toBe(true);
    expect(request).toMatch(/\/v-\w+\/(wasm\/)?[\w-]+\.(js|css|wasm)$/);
  }
});
