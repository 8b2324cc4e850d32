// @ts-check
/** The scenario as the page holds it: its defaults, its paths, and what fills it in. */

import { isObject } from "../parts/json.js";
import { book } from "../words/index.js";

/** @import { Known, Quantity as Uncertain } from "../types/core.d.ts" */
/** @import { Course, Event, Held, Json, JsonObject, Position, Scenario } from "../types/page.d.ts" */
/** @import { Field } from "../types/core.d.ts" */

/** What the core says of a scenario. @typedef {{ fields: readonly Field[], version: number, usualEvents: readonly Event[], usualMetricEvents: readonly Event[] }} ScenarioTables */

const say = book("page");

const FORBIDDEN = new Set(["__proto__", "constructor", "prototype"]);

/**
 * The parts of a path: `"scenario.positions[0].cda_m2"` is `["scenario", "positions", 0, "cda_m2"]`.
 * @param {string} path @returns {(string | number)[]}
 */
export function pathParts(path) {
  return path
    .split(/[.[\]]+/)
    .filter(Boolean)
    .map((part) => (/^\d+$/.test(part) ? Number(part) : part));
}

/** What stands at a path, or undefined. @template T what the caller knows to stand there @param {unknown} root @param {string} path @returns {T} */
export function getAt(root, path) {
  return /** @type {T} */ (pathParts(path).reduce(inside, root));
}

/** @param {unknown} at @param {string | number} part @returns {unknown} */
const inside = (at, part) =>
  at !== null && typeof at === "object" && Object.hasOwn(at, part)
    ? /** @type {Record<string | number, unknown>} */ (at)[part]
    : undefined;

/**
 * A copy of `root` with `value` at `path`; what is not on the path is shared with the original. `undefined` removes the key.
 * @template T @param {T} root @param {string} path @param {unknown} value @returns {T}
 */
export function setAt(root, path, value) {
  return /** @type {T} */ (setParts(root, pathParts(path), value));
}

/** @param {unknown} at @param {(string | number)[]} parts @param {unknown} value @returns {unknown} */
function setParts(at, [part, ...rest], value) {
  if (part === undefined) return value;
  if (FORBIDDEN.has(String(part))) throw new Error(`"${part}" cannot be a field.`);
  const copy = /** @type {Record<string | number, unknown>} */ (
    Array.isArray(at) ? [...at] : at && typeof at === "object" ? { ...at } : typeof part === "number" ? [] : {}
  );
  const inner = setParts(copy[part], rest, value);
  if (inner === undefined && !Array.isArray(copy)) delete copy[part];
  else copy[part] = inner;
  return copy;
}

/**
 * A new value for a number. A typical value that somebody changes is from then on their estimate.
 * @param {Held | undefined} held @param {string} path @param {number} si @returns {[path: string, value: unknown][]}
 */
export function valueChanges(held, path, si) {
  if (typeof held !== "object" || typeof held?.value !== "number") return [[path, si]];
  if (held.value === si) return [];
  return [[path, { ...held, value: si, source: held.source === "typical" ? "estimated" : held.source }]];
}

/**
 * The number itself, however it is held.
 * @template {Held | undefined} T @param {T} held @returns {T extends undefined ? undefined : number}
 */
export function amountOf(held) {
  return /** @type {T extends undefined ? undefined : number} */ (typeof held === "object" ? held.value : held);
}

/** Its standard deviation; 0 where it is bare. @param {Held | undefined} held */
export const sdOf = (held) => (typeof held === "object" ? (held?.sd ?? 0) : 0);

/** Whether two pieces of plain data are the same. @param {unknown} a @param {unknown} b @returns {boolean} */
export function same(a, b) {
  if (a === b) return true;
  if (!a || !b || typeof a !== "object" || typeof b !== "object" || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(
      (key) =>
        Object.hasOwn(b, key) &&
        same(/** @type {Record<string, unknown>} */ (a)[key], /** @type {Record<string, unknown>} */ (b)[key]),
    )
  );
}

/**
 * Parts of a position or an event that hold what stands elsewhere too, by the same fields.
 * @type {[RegExp, string][]}
 */
const SAME_AS = [
  [/^events\.course\./, "course."],
  [/^conditions\.later\.(?=wind|temperature|pressure)/, "conditions."],
  [/^positions\.power\./, "power."],
  [/^positions\.equipment\.lapses\./, "positions.lapses."],
  [/^positions\.equipment\.yaw_table\./, "positions.yaw_table."],
  [/^positions\.equipment\.lateral_m_s2$/, "bike.lateral_m_s2"],
];

/** Parts of a question's own numbers that have fields of their own. */
const OWN_PARTS = new Set(["plan", "rules", "sit_up"]);

/**
 * The key in `fields()` of a path: `"scenario.positions[1].fade.begins_s.value"` is `"positions.fade.begins_s"`, and a question's own
 * `"with.finish-time.effort.power_w"` is `"with.power_w"`.
 * @param {string} path
 */
export function fieldKey(path) {
  const known = keys.get(path);
  if (known !== undefined) return known;
  const key = keyOf(path);
  keys.set(path, key);
  return key;
}

/** Those asked for before: each number that is drawn asks for its own. @type {Map<string, string>} */
const keys = new Map();

/** @param {string} path */
function keyOf(path) {
  const bare = path
    .replace(/^scenario\./, "")
    .replace(/\[\d+\]/g, "")
    .replace(/\.(value|sd|source)$/, "");
  const plain = SAME_AS.reduce((key, [part, same]) => key.replace(part, same), bare);
  if (!plain.startsWith("with.")) return plain;
  const [part, name] = plain.split(".").slice(-2);
  return OWN_PARTS.has(part) ? `with.${part}.${name}` : `with.${name}`;
}

/** One stands in for the other, so filling in both would contradict. */
const INSTEAD = {
  roughness_length_m: "shelter_factor",
  relative_humidity: "dew_point_c",
  distance_m: "duration_s",
};

/**
 * Fills scenarios in from the core's tables. Numbers that it takes at their typical value where they are left out are filled in, which changes
 * no answer; what it treats as absent (a peak power, a long-ride loss, a pressure) stays absent.
 * @param {ScenarioTables} tables
 * @param {readonly (JsonObject & { name: string })[]} [compared] positions that a new rider finds beside their own, because a question compares them; their names are keys of the book "page"
 */
export function scenarioFiller({ fields, version, usualEvents, usualMetricEvents }, compared = []) {
  const byKey = new Map(fields.map((field) => [field.key, field]));

  /** The names of a part's numbers that are there without being given. @param {string} group @param {Field["included"]} included */
  function namesIn(group, included) {
    const inside = fields.filter((field) => field.key.startsWith(`${group}.`) && field.included === included);
    return inside.map(({ key }) => key.slice(group.length + 1)).filter((name) => !name.includes("."));
  }

  /** @param {string} key @returns {number | Uncertain | undefined} */
  function fresh(key) {
    const field = byKey.get(key);
    if (!field) return undefined;
    return field.default_sd ? { value: field.default, sd: field.default_sd, source: "typical" } : field.default;
  }

  /** A plain number is exact; the page shows it beside the others as one with no spread. @param {string} key @param {Json} given @returns {Json} */
  function held(key, given) {
    if (typeof given !== "number")
      return isObject(given) && given.value !== undefined ? { sd: 0, source: "estimated", ...given } : given;
    return byKey.get(key)?.default_sd ? { value: given, sd: 0, source: "measured" } : given;
  }

  /** A part with what is always there filled in. @param {string} group @param {Json} [given] @returns {Json} */
  function part(group, given = {}) {
    return isObject(given) ? filledIn(group, given) : given;
  }

  /** @param {string} group @param {JsonObject} given @returns {JsonObject} */
  function filledIn(group, given) {
    const filled = { ...given };
    for (const [name, value] of Object.entries(given)) filled[name] = held(`${group}.${name}`, value);
    for (const name of namesIn(group, "always")) {
      const instead = /** @type {Record<string, string>} */ (INSTEAD)[name];
      if (filled[name] === undefined && !(instead && filled[instead] !== undefined))
        filled[name] = fresh(`${group}.${name}`);
      if (filled[name] === undefined) delete filled[name];
    }
    return filled;
  }

  /** @param {JsonObject} [given] */
  function position(given = {}) {
    const filled = filledIn("positions", { name: say("position.own"), ...given });
    if (filled.fade) filled.fade = part("positions.fade", filled.fade);
    if (filled.fade_test) filled.fade_test = part("positions.fade_test", filled.fade_test);
    if (filled.power) filled.power = part("power", filled.power);
    if (filled.lapses) filled.lapses = lapses(filled.lapses);
    if (Array.isArray(filled.equipment)) filled.equipment = filled.equipment.map(equipment);
    return /** @type {Position} */ (filled);
  }

  /** Kinds of lapse; the first version of the scenario had one, not in a list. @param {Json} given */
  function lapses(given) {
    return (Array.isArray(given) ? given : [given]).map((one) => part("positions.lapses", one));
  }

  /** @param {Json} given @returns {Json} */
  function equipment(given) {
    if (!isObject(given)) return given;
    const filled = filledIn("positions.equipment", given);
    if (filled.lapses) filled.lapses = lapses(filled.lapses);
    return filled;
  }

  /** @param {Json} given @returns {Json} */
  function efforts(given) {
    return Array.isArray(given) ? given.map((one) => part("efforts", one)) : given;
  }

  /** @param {Json} [given] @returns {Json} */
  function course(given = {}) {
    if (!isObject(given) || given.kind === "profile") return given;
    return filledIn("course", { kind: "simple", out_and_back: false, ...given });
  }

  /** @param {Json} given @returns {Json} */
  function event(given) {
    return isObject(given) && given.course ? { ...given, course: course(given.course) } : given;
  }

  return {
    field: (/** @type {string} */ path) => byKey.get(fieldKey(path)),
    fade: (/** @type {number} */ cda_m2) => ({
      ...filledIn("positions.fade", {}),
      tired_cda_m2: near("positions.cda_m2", cda_m2 * 1.1),
    }),
    fadeTest: (/** @type {number} */ cda_m2) => ({
      ...filledIn("positions.fade_test", {}),
      first_third_cda_m2: near("positions.fade_test.first_third_cda_m2", cda_m2),
      last_third_cda_m2: near("positions.fade_test.last_third_cda_m2", cda_m2 * 1.04),
    }),
    lapse: (/** @type {number} */ cda_m2) => ({
      ...filledIn("positions.lapses", {}),
      cda_m2: near("positions.cda_m2", cda_m2 * 1.15),
    }),
    power: () => filledIn("power", {}),
    part: (/** @type {string} */ group) => filledIn(group, {}),
    position,
    course,
    fresh,
    fill,
    defaults,
    metricDefaults,
    newFor,
  };

  /** A guess beside a number the rider has given: as unsure as a typical one. @param {string} key @param {number} value @returns {Uncertain} */
  function near(key, value) {
    return { value: Number(value.toFixed(3)), sd: byKey.get(key)?.default_sd ?? 0, source: "typical" };
  }

  /** What a new scenario has of a part beyond what is always there. @param {string} group */
  function newIn(group) {
    return Object.fromEntries(namesIn(group, "new").map((name) => [name, fresh(`${group}.${name}`)]));
  }

  /** What a new rider finds: beyond what the core needs, a road that comes back, the loss in long rides, the power meter's bias and a forecast's pressure. */
  function defaults() {
    return fill({
      positions: [{}, ...compared.map((one) => ({ ...one, name: nameFor(one.name) }))],
      course: { out_and_back: true },
      power: newIn("power"),
      bike: newIn("bike"),
      conditions: { ...newIn("conditions"), pressure_is: "sea_level" },
    });
  }

  /** The same for a rider who reads kilometres: over metric distances, the course over the one next to the usual. */
  function metricDefaults() {
    const usual = defaults();
    const apart = (/** @type {Event} */ event) => Math.abs(eventLengthM(event) - courseLengthM(usual.course));
    const [nearest] = [...usualMetricEvents].sort((a, b) => apart(a) - apart(b));
    return {
      ...usual,
      events: usualMetricEvents.map((one) => ({ ...one })),
      course: { ...usual.course, distance_m: eventLengthM(nearest) },
    };
  }

  /** What a new rider finds, over distances in the unit that they read. @param {{ distance: string }} units */
  function newFor({ distance }) {
    return distance === "km" ? metricDefaults() : defaults();
  }

  /**
   * A scenario with every part that the page shows, each uncertain number as `{ value, sd, source }`.
   * @param {JsonObject} given @returns {Scenario}
   */
  function fill(given) {
    const { fasterby: _, ...rest } = given;
    const { positions, efforts: tests } = given;
    const filled = {
      fasterby: version,
      title: "",
      ...rest,
      rider: part("rider", given.rider),
      bike: part("bike", given.bike),
      positions: (Array.isArray(positions) && positions.length ? positions : [{}]).map((one) =>
        position(isObject(one) ? one : {}),
      ),
      riding_position: given.riding_position ?? 0,
      power: part("power", given.power),
      ...(Array.isArray(tests) && tests.length ? { efforts: efforts(tests) } : {}),
      events: Array.isArray(given.events) ? given.events.map(event) : usualEvents.map((one) => ({ ...one })),
      course: course(given.course),
      conditions: {
        pressure_is: "sea_level",
        ...filledIn("conditions", isObject(given.conditions) ? given.conditions : {}),
      },
      start: given.start ?? "standing",
      ...(given.stops !== undefined && { stops: part("stops", given.stops) }),
      ...(given.feeding !== undefined && { feeding: part("feeding", given.feeding) }),
      model_error_share: held("model_error_share", given.model_error_share ?? fresh("model_error_share")),
    };
    return /** @type {Scenario} */ (/** @type {unknown} */ (filled));
  }
}

/**
 * The defaults that links and patches of versions 1 and 2 of the scenario were made against: the loss in long rides was 22 W.
 * @param {JsonObject} defaults those of today @returns {JsonObject}
 */
export function olderDefaults({ power: todays, bike: todaysBike, ...rest }) {
  const { long_ride_loss_share: _, ...power } = isObject(todays) ? todays : {};
  const { power_meter_bias_share: __, ...bike } = isObject(todaysBike) ? todaysBike : {};
  return { ...rest, bike, power: { long_ride_loss_w: { value: 22, sd: 10, source: "typical" }, ...power } };
}

/** @param {string} key */
const nameFor = (key) => say.found(key, key);

/** What the core is told of a scenario to change its course: all of it where that goes by time, since then the rider tells how long it is. @param {Scenario} scenario */
export const aboutCourse = (scenario) =>
  scenario.course.duration_s === undefined ? { course: scenario.course } : { ...scenario, events: undefined };

/** The length of a course, whichever way it is given; no number where it goes by time, of which the answers tell how far that is. @param {Course} course @returns {number} metres */
export function courseLengthM({ kind, points = [], distance_m = NaN }) {
  if (kind === "profile") return points[points.length - 1].distance_m - points[0].distance_m;
  return amountOf(distance_m);
}

/** How far an event is: as long as the course that it has of its own, or as given; no number where it goes by time. @param {Event} event @returns {number} metres */
export function eventLengthM(event) {
  if (eventSeconds(event) !== undefined) return NaN;
  const { course, distance_m = NaN } = event;
  return course ? courseLengthM(course) : distance_m;
}

/** How long an event lasts that goes by time, s. @param {Event} event */
export const eventSeconds = ({ course, duration_s }) => duration_s ?? course?.duration_s;

/**
 * How many of the scenario's uncertain numbers are measured, estimated and typical.
 * @param {Scenario} scenario @param {number[]} [positions] those that count; the ridden one if left out
 * @returns {Record<Known, number>}
 */
export function countKnown(scenario, positions = [scenario.riding_position]) {
  const count = { measured: 0, estimated: 0, typical: 0 };
  const look = (/** @type {unknown} */ at) => {
    if (!at || typeof at !== "object") return;
    if ("value" in at && "source" in at && Object.hasOwn(count, String(at.source)))
      count[/** @type {Known} */ (at.source)] += 1;
    else Object.values(at).forEach(look);
  };
  look({ ...scenario, positions: positions.map((index) => scenario.positions[index]) });
  return count;
}
