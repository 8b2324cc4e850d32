// @ts-check
/** The rider of the story: a typical one, on a flat road in still air, with the numbers that the reader has changed. Asks the core about them. */

import { ask, fields } from "../core.js";
import { LOWER_BARS } from "../questions/shared/published.js";
import { BEGAN, ID } from "./beginning.js";

/** @import { FinishTimeAnswer, HoldOrFadeAnswer, NextGainAnswer, PowerOrDragAnswer, RidePlanAnswer, SpeedForWattsAnswer } from "../types/core.d.ts" */
/** @import { Name, Numbers } from "./beginning.js" */
/** @import { Answers } from "../types/page.d.ts" */
/** @import { State } from "../state/history.js" */
/** @import { Tools } from "../questions/index.js" */

/** What each may be, in SI: narrow enough that every ride of the story can be ridden and stays on its chart. @type {Record<Name, readonly [min: number, max: number]>} */
export const RANGES = {
  speed_m_s: [2, 16],
  power_w: [80, 450],
  cda_m2: [0.16, 0.45],
  power_change: [0.01, 0.25],
  cda_change: [-0.25, -0.01],
  begins_s: [0, 5400],
  grade: [-0.02, 0.1],
  headwind_m_s: [0, 8],
  climb_grade: [0, 0.06],
  budget: [0, 400],
};

/** A tired rider sits up beyond the position that could have been kept, and takes this long to get there. Assumed: no published figure was found. */
const TIRED_OVER_KEPT = 1.1;
const FADING_S = 1500;

/** Answers that are kept, so that a step whose numbers stay costs nothing. */
const MOST_KEPT = 200;
/** @type {Map<string, unknown>} */
const kept = new Map();

/** The story's numbers; what an address holds outside a range is brought back into it. @param {State} state @returns {Numbers} */
export function numbersOf(state) {
  const held = state.with[ID] ?? {};
  return /** @type {Numbers} */ (
    Object.fromEntries(
      Object.entries(RANGES).map(([name, [min, max]]) => {
        const value = held[name];
        return [name, Number.isFinite(value) ? Math.min(max, Math.max(min, value)) : BEGAN[/** @type {Name} */ (name)]];
      }),
    )
  );
}

/** @template {keyof Answers} Id @param {Id} question @param {object} request @returns {Answers[Id]} */
function answerTo(question, request) {
  const key = `${question} ${JSON.stringify(request)}`;
  const known = kept.get(key);
  if (known) return /** @type {Answers[Id]} */ (known);
  if (isAhead) throw new NotYet(key, question, request);
  return keep(key, /** @type {Answers[Id]} */ (ask(question, request)));
}

/** @template Answer @param {string} key @param {Answer} answer */
function keep(key, answer) {
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, answer);
  return answer;
}

/** Whether answers that are not there are to be worked out beside the page. */
let isAhead = false;

/** What is to be worked out before. */
class NotYet extends Error {
  /** @param {string} key @param {keyof Answers} question @param {object} request */
  constructor(key, question, request) {
    super(question);
    this.key = key;
    this.question = question;
    this.request = request;
  }
}

/**
 * Has the worker work out what takes long, so that drawing the steps that are out of sight holds nothing up. What it cannot do, the steps ask
 * for themselves.
 * @param {Numbers} numbers @param {Tools["worker"]} worker
 */
export async function askAhead(numbers, worker) {
  const wanted = [bestEfforts, bothChanges, mirrored, lowAgainstKept, whichFirst];
  await workedOut(
    wanted.map((one) => () => one(numbers)),
    worker,
    "story",
  );
}

/**
 * Has the worker work out what a step draws, and draws it then; at once where all of it is known.
 * @param {readonly (() => void)[]} wanted @param {Tools["worker"]} worker @param {string} slot @param {() => void} draw
 */
export function prepared(wanted, worker, slot, draw) {
  if (wanted.every((one) => !missingOf(one))) draw();
  else workedOut(wanted, worker, slot).then((isDone) => isDone && draw());
}

/**
 * Whether the worker has worked it all out: a newer request of the same slot may overtake it.
 * @param {readonly (() => void)[]} wanted @param {Tools["worker"]} worker @param {string} slot
 */
async function workedOut(wanted, worker, slot) {
  for (const one of wanted) {
    for (let missing = missingOf(one); missing; missing = missingOf(one)) {
      const answer = await worker.ask(missing.question, missing.request, { slot }).catch(() => null);
      if (!answer) return false;
      keep(missing.key, answer);
    }
  }
  return true;
}

/** The first answer that is not there yet. @param {() => unknown} work */
function missingOf(work) {
  isAhead = true;
  try {
    work();
    return null;
  } catch (thrown) {
    return thrown instanceof NotYet ? thrown : null;
  } finally {
    isAhead = false;
  }
}

/** @param {number} cda_m2 */
function rider(cda_m2) {
  // The loss in long rides at its typical value: left out, the core takes it as absent.
  const loss = fields().find(({ key }) => key === "power.long_ride_loss_share");
  return { positions: [{ cda_m2 }], power: { long_ride_loss_share: loss?.default } };
}

/** At a speed on the flat. @param {number} cda_m2 @param {number} speed_m_s @returns {SpeedForWattsAnswer} */
export const atSpeed = (cda_m2, speed_m_s) =>
  answerTo("speed-for-watts", { scenario: rider(cda_m2), with: { speed_m_s } });

/** Holding watts on the flat, or on a slope into a wind at the rider's own height. @param {Numbers} numbers @param {number} [grade] @param {number} [headwind_m_s] @returns {SpeedForWattsAnswer} */
export function atPower({ cda_m2, power_w }, grade = 0, headwind_m_s = 0) {
  const conditions = { wind_speed_m_s: headwind_m_s, wind_from_deg: 0, shelter_factor: 1 };
  return answerTo("speed-for-watts", {
    scenario: { ...rider(cda_m2), conditions },
    with: { power_w, grade, bearing_deg: 0 },
  });
}

/** Best even efforts over many distances: the power–duration curve. @param {Numbers} numbers @returns {FinishTimeAnswer} */
export const bestEfforts = ({ cda_m2 }) =>
  answerTo("finish-time", { scenario: rider(cda_m2), with: { effort: { kind: "even" } } });

/** Both changes over the usual distance. @param {Numbers} numbers @param {number} [cda_change] @returns {PowerOrDragAnswer} */
export function bothChanges({ cda_m2, power_w, power_change, ...rest }, cda_change = rest.cda_change) {
  return answerTo("power-or-drag", {
    scenario: rider(cda_m2),
    with: { power_change, cda_change, effort: { kind: "power", power_w } },
  });
}

/** The change of drag that undoes a change of power: times 1.1 is mirrored by divided by 1.1. @param {Numbers} numbers */
export const mirrorOf = ({ power_change }) => 1 / (1 + power_change) - 1;

/** The change of power against the drag that mirrors it. @param {Numbers} numbers */
export const mirrored = (numbers) => bothChanges(numbers, mirrorOf(numbers));

/** The means of what lower bars did to five riders (Polanco et al. 2020). @param {Numbers} numbers @returns {Numbers} */
export const withLowerBars = (numbers) => ({
  ...numbers,
  cda_m2: numbers.cda_m2 * (1 - LOWER_BARS.cda.mean),
  power_w: numbers.power_w * (1 - LOWER_BARS.power.mean),
});

/** How the lower position goes. @param {Numbers} numbers */
export const fadeOf = ({ cda_m2, begins_s }) => ({
  tired_cda_m2: Number((cda_m2 * TIRED_OVER_KEPT).toFixed(3)),
  begins_s,
  complete_s: begins_s + FADING_S,
});

/** The lower position, lost on the way, against the one that can be kept. @param {Numbers} numbers @returns {HoldOrFadeAnswer} */
export function lowAgainstKept(numbers) {
  const { cda_m2, cda_change, power_w } = numbers;
  const low = { name: "low", cda_m2: Number((cda_m2 * (1 + cda_change)).toFixed(4)), fade: fadeOf(numbers) };
  return answerTo("hold-or-fade", {
    scenario: { ...rider(cda_m2), positions: [low, { name: "kept", cda_m2 }] },
    with: { low: 0, steady: 1, effort: { kind: "power", power_w } },
  });
}

/** A road to push on, m: level, a climb, the same way down, level. Invented. */
const LEVEL_M = 2500;
const CLIMB_M = 1500;
export const ROAD = { length_m: 2 * (LEVEL_M + CLIMB_M) };
/** As many powers as the road has parts. */
const POWERS = 4;

/** The fastest plan over a climb, and one of a few powers. @param {Numbers} numbers @returns {RidePlanAnswer} */
export function planOf({ cda_m2, climb_grade }) {
  const at = (/** @type {number} */ distance_m, elevation_m = 0) => ({ distance_m, elevation_m, bearing_deg: 0 });
  const points = [at(0), at(LEVEL_M), at(LEVEL_M + CLIMB_M, climb_grade * CLIMB_M), at(LEVEL_M + 2 * CLIMB_M)];
  return answerTo("ride-plan", {
    scenario: {
      ...rider(cda_m2),
      course: { kind: "profile", points: [...points, at(ROAD.length_m)] },
      conditions: { wind_speed_m_s: 0 },
    },
    with: { targets: POWERS, riders: 0 },
  });
}

/** Three of the usual changes, by the core's own keys, with what each costs here: assumed. */
export const THREE = /** @type {const} */ ([
  { key: "front-lower", name: "threeFront", money: 100 },
  { key: "clothing", name: "threeSuit", money: 150 },
  { key: "tyres", name: "threeTyres", money: 90 },
]);
const MILES_25_M = 40_233.6;
/** More hours than the three take together: here money alone is short. */
const HOURS_A_WEEK = 10;

/** Which of the three come first for the budget. @param {Numbers} numbers @returns {NextGainAnswer} */
export function whichFirst({ cda_m2, budget }) {
  const scenario = { ...rider(cda_m2), events: [{ name: "", distance_m: MILES_25_M }] };
  const usual = answerTo("next-gain", { scenario, with: { part: "each" } });
  const candidates = THREE.flatMap(({ key, money }) =>
    usual.candidates.filter(({ candidate }) => candidate.key === key).map(({ candidate }) => ({ ...candidate, money })),
  );
  return answerTo("next-gain", { scenario, with: { candidates, money: budget, hours_per_week: HOURS_A_WEEK } });
}
