// @ts-check
/**
 * Measures the built page in Chromium, beside the bounds that it must reach: what the core takes to answer, and what an edit
 * takes until its answer is painted. Needs FASTERBY_ADDRESS (where the page is served) and CHROME; `cargo xtask bench` gives both.
 */

import { chromium } from "@playwright/test";
import { questions } from "./support/questions.js";

const address = process.env.FASTERBY_ADDRESS ?? "http://localhost:8000/";
const EDITS = 100;
/** Edits before the measured ones, while the browser still compiles. */
const WARM_UP = 40;
/** So many steps up, then as many down: every edit is a new number, and none leaves its range. */
const STEPS_ONE_WAY = 20;
const SLOWDOWN = 4;
/** For a page that does not come up at all. */
const PATIENCE_MS = 10_000;
const FRAME_MS = 1000 / 60;

/** The bounds of the design, in milliseconds. */
const BOUND_MS = {
  edit: 16,
  slow_edit: 50,
  even_effort: 2,
  draws_steady: 10,
  draws_along_a_course: 150,
  draws_of_six: 300,
  best_set: 300,
  reading: 1000,
  plan: 150,
  long_plan: 1000,
};

const even = { kind: "even" };
const drawn = { draws: 10_000, effort: { kind: "power", power_w: 250 } };

/** Rolling hills with a bearing that turns, in wind: invented. @param {number} segments @param {number} [length_m] */
function hills(segments, length_m = 40_000) {
  const points = Array.from({ length: segments + 1 }, (_, i) => ({
    distance_m: (length_m * i) / segments,
    elevation_m: 100 + 40 * Math.sin((60 * i) / segments),
    bearing_deg: (360 * i) / segments - 180,
  }));
  return { course: { kind: "profile", points }, conditions: { wind_speed_m_s: 4, wind_from_deg: 250 } };
}

/** Two positions, the lower of which fades, in wind: invented. */
const twoPositions = {
  positions: [
    { cda_m2: { value: 0.228, sd: 0.008 }, fade: {}, cp_factor: { value: 0.98, sd: 0.01 } },
    { cda_m2: { value: 0.242, sd: 0.008 } },
  ],
  riding_position: 1,
  power: { long_ride_loss_w: { value: 22, sd: 10, source: "typical" } },
  course: { out_and_back: true, bearing_deg: 90 },
  conditions: { wind_speed_m_s: { value: 3, sd: 1 }, wind_from_deg: 250 },
};

/** Six positions, two of which fade and one lapses, for the four usual events in wind: invented. */
const sixPositions = {
  riding_position: 1,
  positions: Array.from({ length: 6 }, (_, i) => ({
    cda_m2: { value: 0.25 - 0.004 * i, sd: 0.006 },
    cp_factor: { value: 1 - 0.01 * i, sd: 0.01 },
    ...(i > 3 ? { fade: {} } : {}),
    ...(i === 3 ? { lapses: [{ share: 0.1, cda_m2: 0.26 }] } : {}),
  })),
  course: twoPositions.course,
  conditions: twoPositions.conditions,
};
/** The page asks for its draws in so many lots. */
const LOTS = 4;

/** @param {string} field @param {number} value */
const share = (field, value) => ({ field, share: { value, sd: 0.3 * Math.abs(value) } });
/** @param {number} count @param {(i: number) => object[]} changes */
const several = (count, changes) => Array.from({ length: count }, (_, i) => changes(i));

/** Twenty changes of many kinds, two of which exclude each other, as natively: invented. */
const twentyCandidates = [
  ...several(9, (i) => [share("positions.cda_m2", -0.005 - 0.004 * i)]),
  ...several(3, (i) => [share("positions.cda_m2", -0.012 * (i + 1)), share("power.cp_w", -0.006 * (i + 1))]),
  ...several(3, (i) => [share("power.cp_w", 0.012 * (i + 1))]),
  ...several(2, (i) => [share("bike.rolling_coefficient", -0.06 * (i + 1))]),
  [share("bike.drivetrain_efficiency", 0.004)],
  [share("rider.total_mass_kg", -0.012)],
  [{ use_position: 0 }],
].map((changes, i) => ({
  changes,
  chance: 0.4 + 0.03 * i,
  money: 17 * ((7 * i) % 11),
  hours_once: 1.5 * ((5 * i) % 7),
  group: i === 3 || i === 5 ? "helmet" : "",
}));

/** Six efforts of one rider: invented. */
const efforts = [
  [60, 520],
  [180, 385],
  [300, 352],
  [720, 318],
  [1200, 306],
  [3600, 282],
].map(([duration_s, power_w]) => ({ duration_s, power_w }));

/** What the core is timed at; a bound where the design has one. @type {{ name: string, question: string, request: object, bound?: number, lots?: number }[]} */
const timed = [
  { name: "speed for watts", question: "speed-for-watts", request: { with: { power_w: 250 } } },
  {
    name: "finish time, best even effort",
    question: "finish-time",
    request: { with: { effort: even } },
    bound: BOUND_MS.even_effort,
  },
  { name: "power or drag, best even efforts", question: "power-or-drag", request: { with: { effort: even } } },
  {
    name: "hold or fade, best even efforts",
    question: "hold-or-fade",
    request: { scenario: twoPositions, with: { low: 0, steady: 1, effort: even } },
  },
  { name: "which position, six of them", question: "which-position", request: { scenario: sixPositions } },
  { name: "power curve, six efforts", question: "power-curve", request: { scenario: { efforts } } },
  { name: "leg room", question: "leg-room", request: {} },
  {
    name: "next gain, 20 candidates, 4 events",
    question: "next-gain",
    request: { scenario: twoPositions, with: { candidates: twentyCandidates } },
    bound: BOUND_MS.best_set,
  },
  {
    name: `10,000 draws of six positions, in ${LOTS} lots`,
    question: "which-position",
    request: { scenario: sixPositions, with: { part: "draws", draws: 10_000 / LOTS } },
    lots: LOTS,
    bound: BOUND_MS.draws_of_six,
  },
  {
    name: "10,000 draws of power or drag, steady",
    question: "power-or-drag",
    request: { scenario: { start: "rolling" }, with: drawn },
    bound: BOUND_MS.draws_steady,
  },
  {
    name: "10,000 draws of power or drag, 100 segments",
    question: "power-or-drag",
    request: { scenario: hills(100), with: drawn },
    bound: BOUND_MS.draws_along_a_course,
  },
  {
    name: "ride plan, 40 km at 100 m",
    question: "ride-plan",
    request: { scenario: hills(400) },
    bound: BOUND_MS.plan,
  },
  {
    name: "ride plan, 180 km at 100 m",
    question: "ride-plan",
    request: { scenario: { ...hills(1800, 180_000), power: { long_ride_loss_share: 0.09 } } },
    bound: BOUND_MS.long_plan,
  },
];

/** @param {string[]} extra arguments of Chromium */
function launch(extra) {
  return chromium.launch({
    executablePath: process.env.CHROME,
    args: [
      "--no-sandbox",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--no-first-run",
      ...extra,
    ],
  });
}

/** @param {number[]} sorted ascending @param {number} share */
const quantile = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];

/** @param {number} ms */
const shown = (ms) => (ms < 0.1 ? `${(ms * 1000).toFixed(1)} µs` : `${ms.toFixed(2)} ms`);

/** @param {number} ms @param {number} bound */
const beside = (ms, bound) => `${(ms / bound).toFixed(2)} of ${bound} ms${ms <= bound ? "" : ", OVER"}`;

const FIRST_COLUMN = 46;

/** A table that is printed row by row, each as soon as it is measured, with how far the measuring is. @param {string[]} headings @param {number} count */
function table(headings, count) {
  const widths = headings.map((heading, column) => (column ? Math.max(heading.length, 20) : FIRST_COLUMN));
  const line = (/** @type {string} */ at, /** @type {string[]} */ cells) =>
    console.log(
      at.padEnd(7) +
        cells
          .map((cell, column) => cell.padEnd(widths[column]))
          .join("  ")
          .trimEnd(),
    );
  let printed = 0;
  console.log();
  line("row", headings);
  return (/** @type {string[]} */ ...cells) => {
    printed += 1;
    line(`${printed}/${count}`, cells);
  };
}

/**
 * Runs in the page: median milliseconds of one call; without one, of a fixed loop of plain JavaScript as the measure of the machine.
 * @param {{ question: string, request: any, lots?: number } | null} call
 */
function timeCore(call) {
  const core = /** @type {any} */ (globalThis).fasterby;
  const BATCHES = 11;
  const BATCH_MS = 20;

  /** @param {() => unknown} call */
  function medianOf(call) {
    const begun = performance.now();
    let batch = 0;
    while (batch === 0 || performance.now() - begun < BATCH_MS) {
      call();
      batch += 1;
    }
    const times = Array.from({ length: BATCHES }, () => {
      const start = performance.now();
      for (let i = 0; i < batch; i += 1) call();
      return (performance.now() - start) / batch;
    });
    return times.sort((a, b) => a - b)[Math.floor(BATCHES / 2)];
  }

  /** Asks once, or lot after lot. @param {{ question: string, request: any, lots?: number }} call */
  function answered({ question, request, lots = 1 }) {
    for (let lot = 0, so_far; lot < lots; lot += 1) {
      const answer = core.ask(question, so_far ? { ...request, with: { ...request.with, so_far } } : request);
      so_far = answer.drawn?.tally;
    }
  }

  let kept = 0;
  function squareRoots() {
    let sum = 0;
    for (let i = 1; i <= 10_000; i += 1) sum += Math.sqrt(i) / (1 + sum);
    kept += sum;
  }
  try {
    return { median: medianOf(call ? () => answered(call) : squareRoots), kept };
  } catch (error) {
    return { failed: String(/** @type {any} */ (error).message ?? error) };
  }
}

async function measureCore() {
  const browser = await launch([]);
  const page = await browser.newPage();
  // A question that fetches the module which answers everything.
  await page.goto(`${address}#hold-or-fade`);
  await page.locator("html[data-started]").waitFor();
  const reference = (await page.evaluate(timeCore, null)).median ?? Number.NaN;
  console.log(`The reference is a loop of 10,000 square roots and divisions in JavaScript: ${shown(reference)}.`);
  const row = table(["core in the browser, one answer", "median", "× reference", "share of bound"], timed.length);
  for (const { name, question, request, lots, bound } of timed) {
    const { median, failed } = await page.evaluate(timeCore, { question, request, lots });
    if (median === undefined) row(name, String(failed));
    else row(name, shown(median), (median / reference).toFixed(2), bound ? beside(median, bound) : "");
  }
  await browser.close();
}

/**
 * Runs in the page: `painted` will be the milliseconds from the next key to just after the frame in which the page has answered it.
 * @param {number} patience
 */
function awaitKey(patience) {
  const page = /** @type {any} */ (globalThis);
  page.painted = new Promise((resolve, reject) => {
    const pressed = () => {
      const begun = performance.now();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now() - begun);
        port2.postMessage(null);
      });
    };
    addEventListener("keydown", pressed, { capture: true, once: true });
    setTimeout(() => reject(new Error("A key was pressed and no frame followed.")), patience);
  });
}

/**
 * Steps the first number of a question's sentence up and down.
 * @param {import("@playwright/test").Browser} browser @param {string} question @param {number} slowdown
 * @returns {Promise<{ median: number, p95: number }>} milliseconds
 */
async function timeEdits(browser, question, slowdown) {
  const page = await browser.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  await page.goto(`${address}#${question}`);
  // The sentence can be edited before there is an answer, and would then be all that is drawn.
  await page.locator("html[data-started]").waitFor();
  // A first visit also stores the page for use without a network: its edits in these seconds would be measured with that.
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  // Held, and not looked for at each edit: a search by role works out the style of everything, which the next frame would pay for.
  const number = await page.getByRole("main").getByRole("spinbutton").first().elementHandle();
  if (!number) throw new Error(`${question} has no number.`);
  await number.focus();
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  const times = [];
  for (let edit = 0; edit < WARM_UP + EDITS; edit += 1) {
    await page.evaluate(awaitKey, PATIENCE_MS);
    const before = await number.inputValue();
    await page.keyboard.press(Math.floor(edit / STEPS_ONE_WAY) % 2 === 0 ? "ArrowUp" : "ArrowDown");
    const time = await page.evaluate(() => /** @type {any} */ (globalThis).painted);
    if ((await number.inputValue()) === before)
      throw new Error(`A step of ${question}'s first number changed nothing.`);
    if (edit >= WARM_UP) times.push(Number(time));
  }
  await page.close();
  times.sort((a, b) => a - b);
  return { median: quantile(times, 0.5), p95: quantile(times, 0.95) };
}

async function measureEdits() {
  // Without the display's beat, what is left is the page's own work.
  const freely = await launch(["--disable-frame-rate-limit", "--disable-gpu-vsync"]);
  const atSixtyHertz = await launch([]);
  const slowly = `${SLOWDOWN}× slower`;
  const row = table(
    [
      "edit to painted",
      "median",
      "p95",
      "share of bound",
      `${slowly}: median`,
      "p95",
      "share of bound",
      "at 60 Hz, p95",
    ],
    questions.length,
  );
  for (const { id: question } of questions) {
    try {
      const plain = await timeEdits(freely, question, 1);
      const slow = await timeEdits(freely, question, SLOWDOWN);
      const seen = await timeEdits(atSixtyHertz, question, 1);
      row(
        question,
        shown(plain.median),
        shown(plain.p95),
        beside(plain.p95, BOUND_MS.edit),
        shown(slow.median),
        shown(slow.p95),
        beside(slow.p95, BOUND_MS.slow_edit),
        `${(seen.p95 / FRAME_MS).toFixed(2)} frames`,
      );
    } catch (error) {
      row(question, `could not be measured: ${String(/** @type {any} */ (error).message).split("\n")[0]}`);
    }
  }
  await Promise.all([freely.close(), atSixtyHertz.close()]);
}

/**
 * Runs in the page: milliseconds between frames until the draws are counted.
 * @param {number} patience
 */
function framesUntilCounted(patience) {
  return new Promise((resolve, reject) => {
    /** @type {number[]} */
    const frames = [];
    let before = performance.now();
    const given = before + patience;
    const frame = () => {
      const now = performance.now();
      frames.push(now - before);
      before = now;
      if (now > given) reject(new Error("The draws were not counted in time."));
      else if (document.querySelector("#host")?.textContent?.includes("varied in")) resolve(frames);
      else requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
}

/** How evenly the page draws while the draws of six positions are counted beside it. */
async function measureFrames() {
  const browser = await launch([]);
  const page = await browser.newPage();
  await page.goto(
    `${address}#which-position/1j.${Buffer.from(JSON.stringify({ s: sixPositions })).toString("base64url")}`,
  );
  await page.getByText("varied in").waitFor();
  const number = page.getByRole("main").getByRole("spinbutton", { name: "Drag area, CdA" }).first();
  const frames = [];
  for (const key of ["ArrowUp", "ArrowDown", "ArrowUp", "ArrowDown", "ArrowUp"]) {
    await number.press(key);
    await page.getByText("tries are counted").waitFor();
    frames.push(.../** @type {number[]} */ (await page.evaluate(framesUntilCounted, PATIENCE_MS)));
  }
  await browser.close();
  frames.sort((a, b) => a - b);
  const p95 = quantile(frames, 0.95);
  table(["frames while draws are counted", "median", "p95", "longest", "p95, share of a frame"], 1)(
    `${frames.length} frames`,
    shown(quantile(frames, 0.5)),
    shown(p95),
    shown(frames[frames.length - 1]),
    (p95 / FRAME_MS).toFixed(2),
  );
}

/** Runs in the page: milliseconds from a file to its columns, the worker's start and its module included. @returns {Promise<number>} */
async function readingTime() {
  const input = /** @type {HTMLInputElement} */ (document.querySelector("#ride"));
  const version = document.documentElement.dataset.version;
  const begun = performance.now();
  const at = (/** @type {string} */ file) => new URL(`${version}/${file}`, location.href);
  const worker = new Worker(at("recordings-worker.js"), { type: "module" });
  const module = await WebAssembly.compileStreaming(fetch(at("wasm/recordings_bg.wasm")));
  await new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => {
      if (data.recording) resolve(data.recording);
      else if (!("share" in data)) reject(new Error(JSON.stringify(data)));
    };
    worker.postMessage({ file: input.files?.[0], module });
  });
  worker.terminate();
  return performance.now() - begun;
}

/** Rides of 100,000 records, which the native measurements left. */
async function measureReading() {
  const browser = await launch([]);
  const page = await browser.newPage();
  await page.goto(address);
  await page.evaluate(() =>
    document.body.append(Object.assign(document.createElement("input"), { id: "ride", type: "file" })),
  );
  const kinds = ["fit", "gpx", "tcx", "csv"];
  const row = table(["100,000 records read", "first", "median of 3", "share of bound"], kinds.length);
  for (const kind of kinds) {
    await page.setInputFiles("#ride", `${process.env.FASTERBY_RIDES ?? "target/xtask/made-rides"}/ride.${kind}`);
    const cold = await page.evaluate(readingTime);
    const times = [];
    for (let time = 0; time < 3; time += 1) times.push(await page.evaluate(readingTime));
    times.sort((a, b) => a - b);
    row(kind, shown(cold), shown(times[1]), beside(times[1], BOUND_MS.reading));
  }
  await browser.close();
}

await measureCore();
await measureReading();
await measureFrames();
await measureEdits();
