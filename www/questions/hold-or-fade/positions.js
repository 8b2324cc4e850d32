// @ts-check
/** The two positions in the sentence: the one that is kept, how much lower the other is, and how that one is lost. */

import { choice } from "../../parts/choice.js";
import { amountOf, valueChanges } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";
import { lowerByOf } from "./lower-by.js";

/** @import { Tools } from "../index.js" */
/** @import { Position } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */

/** How far below the other a low position may lie; the core's own bound. */
const LOWER_BY_M2 = { min: 0, max: 0.2, step: 0.001 };
const LOST = /** @type {const} */ (["fade", "fade_test", "lapses", "held"]);

const words = book("hold-or-fade");

/**
 * How a position may be lost beside one that is kept: as far above it as the fields' own defaults are.
 * @param {Tools} tools @param {"fade" | "lapses"} how @param {Position} kept
 */
export function lostNear({ field }, how, kept) {
  const at = how === "fade" ? "positions.fade.tired_cda_m2" : "positions.lapses.cda_m2";
  const [lost, fresh] = [field(`scenario.${at}`), field("scenario.positions.cda_m2")];
  if (!lost || !fresh) return {};
  const value = Math.min(lost.max, Number((amountOf(kept.cda_m2) + lost.default - fresh.default).toFixed(6)));
  const lost_cda_m2 = { value, sd: lost.default_sd, source: "typical" };
  return how === "fade" ? { tired_cda_m2: lost_cda_m2 } : [{ cda_m2: lost_cda_m2 }];
}

/** @param {Position} position */
const lostBy = (position) =>
  position.fade ? "fade" : position.fade_test ? "fade_test" : position.lapses?.length ? "lapses" : "held";

/** @param {Tools} tools @param {string} at where the question keeps its own part */
export function positionsSentence(tools, at) {
  const { store } = tools;
  const place = (/** @type {"low" | "steady"} */ which) => (/** @type {State} */ state) =>
    `scenario.positions[${state.with["hold-or-fade"][which]}]`;
  const [lowAt, keptAt] = [place("low"), place("steady")];
  const lowOf = (/** @type {State} */ state) => state.scenario.positions[state.with["hold-or-fade"].low];
  const keptOf = (/** @type {State} */ state) => state.scenario.positions[state.with["hold-or-fade"].steady];

  const kept = tools.number({
    path: (state) => `${keptAt(state)}.cda_m2`,
    meaning: "drag",
    label: words("keptLabel"),
    changes: (si, state) => [
      ...valueChanges(keptOf(state).cda_m2, `${keptAt(state)}.cda_m2`, si),
      ...lowTo(state, si - lowerByOf(keptOf(state), lowOf(state))),
      ...lostAlong(state, si - amountOf(keptOf(state).cda_m2)),
    ],
  });
  const lowerBy = tools.number({
    path: `${at}.lower_by_m2`,
    meaning: "drag",
    label: words("lowerByLabel"),
    ...LOWER_BY_M2,
    value: (state) => (lowOf(state) && keptOf(state) ? lowerByOf(keptOf(state), lowOf(state)) : null),
    changes: (si, state) => [
      ...valueChanges(store.at(`${at}.lower_by_m2`), `${at}.lower_by_m2`, si),
      ...lowTo(state, amountOf(keptOf(state).cda_m2) - si),
    ],
  });
  const part = (/** @type {string} */ name, /** @type {"hold" | null} */ meaning = "hold") =>
    tools.number({ path: (state) => `${lowAt(state)}.${name}`, meaning });
  const [begins, tired, complete, share, lapsed] = [
    "fade.begins_s",
    "fade.tired_cda_m2",
    "fade.complete_s",
    "lapses[0].share",
    "lapses[0].cda_m2",
  ].map((name) => part(name));
  const how = choice({
    label: words("howLabel"),
    options: LOST.map((value) => ({ value, name: words(value) })),
    meaning: "hold",
    onChange: changeHow,
  });
  const [keptPick, lowPick] = /** @type {const} */ (["steady", "low"]).map((which) =>
    choice({
      label: words(which === "low" ? "lowPick" : "keptPick"),
      options: [],
      onChange: (value) => store.set(`${at}.${which}`, Number(value)),
    }),
  );
  const keptName = clause(...words.parts("keptAt", { pick: keptPick }));
  const lowName = clause(...words.parts("lowIn", { pick: lowPick }));
  const [first, last, test] = ["fade_test.first_third_cda_m2", "fade_test.last_third_cda_m2", "fade_test.test_s"].map(
    (name) => part(name),
  );
  const begun = clause(...words.parts("fadingAt", { begins, tired, complete }));
  const tested = clause(...words.parts("fadingAsTested", { first, last, test }));
  const fading = clause(begun, tested);
  const lapsing = clause(...words.parts("lapsingFor", { share, cda: lapsed }));

  /** @param {State} state @param {number} cda_m2 @returns {[string, unknown][]} */
  function lowTo(state, cda_m2) {
    return valueChanges(lowOf(state).cda_m2, `${lowAt(state)}.cda_m2`, within(cda_m2));
  }

  /** A lost drag area that nobody has given yet is a guess beside the other two, and moves along. @param {State} state @param {number} by_m2 @returns {[string, unknown][]} */
  function lostAlong(state, by_m2) {
    return ["fade.tired_cda_m2", "lapses[0].cda_m2"].flatMap((name) => {
      const held = store.at(`${lowAt(state)}.${name}`);
      return held?.source === "typical"
        ? [
            /** @type {[string, unknown]} */ ([
              `${lowAt(state)}.${name}`,
              { ...held, value: within(held.value + by_m2) },
            ]),
          ]
        : [];
    });
  }

  /** @param {number} cda_m2 */
  function within(cda_m2) {
    const field = tools.field("scenario.positions[0].cda_m2");
    return Math.min(field?.max ?? cda_m2, Math.max(field?.min ?? cda_m2, Number(cda_m2.toFixed(6))));
  }

  /** @param {number} cda_m2 */
  function guess(cda_m2) {
    const spread = tools.field("scenario.positions[0].fade_test.first_third_cda_m2")?.default_sd ?? 0;
    return { value: Number(within(cda_m2).toFixed(3)), sd: spread, source: "typical" };
  }

  /** @param {string} wanted */
  function changeHow(wanted) {
    const state = store.get();
    const { fade: _fade, fade_test: _test, lapses: _lapses, ...rest } = lowOf(state);
    // Beside the drag area it has, a test begins by showing as much of a rise as is usual.
    const rise = () => ({
      first_third_cda_m2: guess(amountOf(rest.cda_m2)),
      last_third_cda_m2: guess(amountOf(rest.cda_m2) * 1.04),
    });
    const lost =
      wanted === "fade_test"
        ? rise()
        : wanted === "fade" || wanted === "lapses"
          ? lostNear(tools, wanted, keptOf(state))
          : null;
    store.set(lowAt(state), lost ? tools.newPosition({ ...rest, [wanted]: lost }) : rest);
  }

  return {
    fields: { keptName, kept, lowerBy, lowName, how, fading, lapsing },
    focusLowerBy() {
      lowerBy.focus();
      return true;
    },
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      const { positions } = state.scenario;
      const { low, steady } = state.with["hold-or-fade"];
      const options = positions.map((one, index) => ({
        value: String(index),
        name: one.name || words("numbered", { number: index + 1 }),
      }));
      keptPick.update({ options, value: String(steady) });
      lowPick.update({ options, value: String(low) });
      const choose =
        positions.length > 2 || (positions.length > 1 && (low === steady || !positions[low] || !positions[steady]));
      keptName.show(choose);
      lowName.show(choose);
      const lost = positions[low] ? lostBy(positions[low]) : "held";
      how.update({ value: lost });
      begun.show(lost === "fade");
      tested.show(lost === "fade_test");
      lapsing.show(Boolean(positions[low]?.lapses?.length));
      const fields = [
        kept,
        lowerBy,
        ...(lost === "fade" ? [begins, tired, complete] : lost === "fade_test" ? [first, last, test] : []),
        ...(positions[low]?.lapses?.length ? [share, lapsed] : []),
      ];
      return fields.map((field) => field.update(state, error)).includes(true);
    },
  };
}
