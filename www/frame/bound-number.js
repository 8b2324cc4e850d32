// @ts-check
/** A number field tied to a path of the store: converts units, takes its range from the core, makes undo steps, shows the core's error about it. */

import { numberField } from "../parts/number.js";
import { readSum } from "../parts/number-text.js";
import { amountOf, valueChanges } from "../state/scenario.js";
import {
  compassDegrees,
  digitsFor,
  fromDisplay,
  otherUnits,
  spreadToDisplay,
  stepOf,
  toDisplay,
  unitOf,
} from "../units.js";
import { errorWords, isAbout, labelOf } from "./field-words.js";
import { kindOf } from "./kinds.js";

/** @import { Kind, Units } from "../units.js" */
/** @import { State, Store } from "../state/history.js" */
/** @import { Field } from "../types/core.d.ts" */
/** @import { CoreError } from "../core.js" */

/**
 * @typedef {object} BoundNumberOptions
 * @property {string | ((state: State) => string)} path where the number stands in the store, such as `scenario.rider.total_mass_kg`
 * @property {string} [label] for screen readers; the field's own name if left out
 * @property {Kind} [kind] what it measures, where the field's name does not tell
 * @property {"power"|"drag"|"hold"|"ground"|null} [meaning] its colour
 * @property {number} [min] in SI; the field's own range if left out
 * @property {number} [max]
 * @property {number} [step] in display units; the field's own step if left out
 * @property {number} [digits] decimals shown, always
 * @property {boolean} [signed] shows a plus
 * @property {boolean} [negative] shows the opposite: −0.1 reads "10 % less"
 * @property {boolean} [spread] false leaves the ± to a control of its own
 * @property {(si: number, state: State) => [path: string, value: unknown][]} [changes] what a new value changes, where it is more than the number itself
 * @property {(state: State) => number | null} [value] what it shows (SI), where it is not what stands at the path
 */
/** @typedef {ReturnType<typeof boundNumber>} BoundNumber */

/**
 * What reads words in place of a number: bearings by their letters, masses as a sum.
 * @param {Kind} kind @param {number} digits @param {Units} units
 */
function spelt(kind, digits, units) {
  const own = { unit: unitOf(kind, units).symbol, digits, otherUnits: otherUnits(kind, units) };
  if (kind === "mass") return (/** @type {string} */ text) => readSum(text, own);
  return kind === "angle" ? compassDegrees : undefined;
}

/** What is written in hours and minutes. @type {{ [kind in Kind]?: "time" | "time-of-day" }} */
const WRITTEN = { clock: "time", time_of_day: "time-of-day" };

/**
 * @param {{ store: Store, field: (path: string) => Field | undefined }} page
 * @param {BoundNumberOptions} options
 */
export function boundNumber({ store, field: fieldAt }, options) {
  const { meaning = null, signed = false, negative = false, spread = true } = options;
  const sign = negative ? -1 : 1;
  const pathIn = (/** @type {State} */ state) =>
    typeof options.path === "string" ? options.path : options.path(state);
  const kindAt = (/** @type {State} */ state) => options.kind ?? kindOf(pathIn(state));
  /** While somebody types, the decimals stay as they are; else the text would change under their hand. @type {number | null} */
  let typedDigits = null;

  const first = store.get();
  const control = numberField(
    {
      label: options.label ?? labelOf(pathIn(first)),
      path: pathIn(first),
      meaning,
      signed,
      kind: WRITTEN[kindAt(first)] ?? "number",
      onInput,
    },
    look(first),
  );

  /** Everything about the field that depends on the state. @param {State} state */
  function look(state) {
    const kind = kindAt(state);
    const unit = unitOf(kind, state.units);
    const field = fieldAt(pathIn(state));
    const held = store.at(pathIn(state));
    const si = options.value ? options.value(state) : amountOf(held);
    const shown = typeof si === "number" ? toDisplay(kind, sign * si, state.units) : NaN;
    const ends = [options.min ?? field?.min, options.max ?? field?.max].map((end) =>
      end === undefined ? undefined : toDisplay(kind, sign * end, state.units),
    );
    const [min, max] = negative ? ends.reverse() : ends;
    const digits =
      options.digits ?? typedDigits ?? (typeof si === "number" ? digitsFor(kind, si, state.units) : unit.digits);
    return {
      value: shown,
      sd: spread && held?.sd ? spreadToDisplay(kind, held.sd, state.units) : null,
      known: held?.sd ? held.source : null,
      unit: unit.symbol,
      unitWords: unit.name || undefined,
      otherUnits: otherUnits(kind, state.units),
      spelt: spelt(kind, digits, state.units),
      digits,
      step: options.step ?? stepOf(kind, field?.step, state.units),
      min,
      max,
    };
  }

  /** @param {number} shown @param {"typing"|"step"|"drag"|"commit"} phase */
  function onInput(shown, phase) {
    const state = store.get();
    const path = pathIn(state);
    typedDigits = phase === "typing" ? (typedDigits ?? look(state).digits) : null;
    const si = sign * fromDisplay(kindAt(state), shown, state.units);
    store.setAll(options.changes?.(si, state) ?? valueChanges(store.at(path), path, si), { merge: path });
    if (phase !== "commit") return;
    store.settle();
    control.update(look(store.get()));
  }

  return {
    element: control.element,
    input: control.input,
    note: control.note,
    focus: control.focus,
    /** @param {State} state @param {CoreError | null} [error] @returns {boolean} whether the error is about this number, and so shown here */
    update(state, error = null) {
      control.update(look(state));
      const about = isAbout(error, pathIn(state));
      control.wrong(error && about ? errorWords(error, state.units) : null);
      return about;
    },
  };
}
