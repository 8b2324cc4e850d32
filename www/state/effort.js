// @ts-check
/** One ridden effort for all questions: what is changed in one of them holds in the others. */

import { same } from "./scenario.js";

/** @import { State } from "./history.js" */
/** @import { EffortForm, Held } from "../types/page.d.ts" */
/** What tells how hard, of a question's own numbers. @typedef {{ by?: string, power_w?: Held, effort?: EffortForm }} Own */

/** The question whose watts stand without an effort around them. */
const BY_SPEED = "speed-for-watts";

/**
 * The state with its effort shared: the even effort or the watts that changed in one question are put into every other one. A
 * finish time to aim at is a question's own. Where the first hard efforts come in and the effort is as it was to begin with, it
 * becomes the best even one.
 * @param {State} next @param {State} previous @param {(question: string) => Own} defaultsOf @returns {State}
 */
export function sharedEffort(next, previous, defaultsOf) {
  const changed = Object.keys(next.with).find(
    (id) => next.with[id] !== previous.with[id] && !same(ridden(next.with[id], id), ridden(previous.with[id], id)),
  );
  if (changed) return withEffort(next, ridden(next.with[changed], changed));
  const first = Boolean(next.scenario.efforts?.length) && !previous.scenario.efforts?.length;
  const untouched = Object.keys(next.with).every((id) => same(ridden(next.with[id], id), ridden(defaultsOf(id), id)));
  return first && untouched ? withEffort(next, { kind: "even" }) : next;
}

/** The effort of a question's own numbers; none for a finish time, or where nothing is ridden. @param {Own} details @param {string} id @returns {EffortForm | undefined} */
function ridden(details, id) {
  if (id === BY_SPEED) return details?.by === "power" ? { kind: "power", power_w: details.power_w } : undefined;
  return details?.effort?.kind === "time" ? undefined : details?.effort;
}

/** @param {State} state @param {EffortForm | undefined} effort @returns {State} */
function withEffort(state, effort) {
  if (!effort) return state;
  const shared = /** @type {[string, Own][]} */ (Object.entries(state.with)).map(([id, details]) => {
    if (!ridden(details, id) || same(ridden(details, id), effort)) return [id, details];
    if (id === BY_SPEED) return [id, effort.kind === "power" ? { ...details, power_w: effort.power_w } : details];
    return [id, { ...details, effort }];
  });
  return { ...state, with: /** @type {State["with"]} */ (Object.fromEntries(shared)) };
}
