// @ts-check
/** One input of the sheet: its value, its ±, how it is known, and what it rests on. */

import notes from "fasterby-notes";
import { citation } from "../citations.js";
import { boundNumber } from "../frame/bound-number.js";
import { h } from "../frame/dom.js";
import { labelOf, rangeWords, usualRangeWords } from "../frame/field-words.js";
import { kindOf } from "../frame/kinds.js";
import { uniqueId } from "../parts/html.js";
import { inReadersMark, numberText, readNumber } from "../parts/number-text.js";
import { plusMinus, quantity, spreadFromDisplay, spreadToDisplay, unitOf } from "../units.js";
import { book } from "../words/index.js";

/** @import { Page } from "../frame/page.js" */
/** @import { BoundNumberOptions } from "../frame/bound-number.js" */
/** @import { Field } from "../types/core.d.ts" */
/** @import { State } from "../state/history.js" */
/** @import { Units } from "../units.js" */
/** @import { CoreError } from "../core.js" */

/** @typedef {{ path: string, element: HTMLElement, update(state: State, error: CoreError | null): boolean, focus(): void }} Row */

const say = book("sheet");
const core = book("core");

const KNOWN = /** @type {const} */ (["typical", "estimated", "measured"]);

/**
 * @param {Page} page @param {string} path
 * @param {Partial<BoundNumberOptions> & { hint?: string, exact?: boolean }} [options] `exact` leaves the ± out
 * @returns {Row}
 */
export function numberRow(page, path, { hint, exact = false, ...options } = {}) {
  const label = options.label ?? labelOf(path);
  const number = boundNumber(page, { ...options, label, path, spread: false });
  const spread = exact || page.field(path)?.chosen ? null : spreadControls(page, path, label);
  const about = evidence(page, path);
  const name = h("span", { class: "row-label", onclick: () => number.focus() }, label);
  const element = h(
    "div",
    { class: "row" },
    name,
    h("span", { class: "row-controls" }, number.element, ...(spread?.elements ?? [])),
    number.note,
    spread?.note,
    hint && h("p", { class: "row-hint" }, hint),
    about?.element,
  );
  return {
    path,
    element,
    focus: number.focus,
    update(state, error) {
      spread?.update(state);
      about?.update(state);
      return number.update(state, error);
    },
  };
}

/** Nobody knows a standard deviation better than to three figures. */
const SPREAD_FIGURES = 3;
const MOST_DECIMALS = 12;

/** @param {Page} page @param {string} path @param {string} label */
function spreadControls({ store }, path, label) {
  const noteId = uniqueId("wrong");
  const note = h("p", { class: "wrong", id: noteId, hidden: true });
  const input = h("input", {
    inputmode: "decimal",
    autocomplete: "off",
    placeholder: say("exact"),
    "aria-label": say("spreadLabel", { label }),
    "aria-describedby": noteId,
    oninput: () => take(),
    onchange: () => {
      store.settle();
      show(store.get());
    },
  });
  const unit = h("span", { class: "unit", "aria-hidden": "true" });
  const known = h(
    "select",
    { "aria-label": say("knownLabel", { label }), onchange: () => store.set(`${path}.source`, known.value) },
    ...KNOWN.map((value) => h("option", { value }, say(`known.${value}`))),
  );

  function take() {
    const state = store.get();
    const held = store.at(path);
    const empty = input.value.trim() === "";
    const { value } = readNumber(input.value, { unit: unitOf(kindOf(path), state.units).symbol, digits: 6 });
    const wrong = !empty && !(value !== undefined && value >= 0);
    note.hidden = !wrong;
    note.textContent = wrong ? say("spreadWrong") : "";
    input.setAttribute("aria-invalid", String(wrong));
    if (wrong) return;
    const sd = empty ? 0 : spreadFromDisplay(kindOf(path), value ?? 0, state.units);
    const next =
      typeof held === "number"
        ? { value: held, sd, source: "estimated" }
        : { ...held, sd, ...(held.source === "typical" && { source: "estimated" }) };
    store.set(path, next, { merge: `${path}.sd` });
  }

  /** @param {State} state */
  function show(state) {
    const held = store.at(path);
    const kind = kindOf(path);
    const sd = held?.sd ?? 0;
    if (document.activeElement !== input) input.value = sd ? figures(spreadToDisplay(kind, sd, state.units)) : "";
    unit.textContent = unitOf(kind, state.units).symbol;
    known.hidden = typeof held !== "object";
    if (typeof held === "object" && known.value !== held.source) known.value = held.source;
  }

  return { elements: [h("span", { class: "row-spread" }, "±", input, unit), known], note, update: show };
}

/** What the input may be and what its default rests on, folded behind its usual range. @param {Page} page @param {string} path */
function evidence(page, path) {
  const field = page.field(path);
  if (!field) return null;
  const summary = h("summary", {});
  const words = h("p", {});
  const element = h("details", { class: "row-about" }, summary, words);
  /** @type {Units | undefined} */
  let shown;

  /** @param {State} state */
  function update({ units }) {
    if (!field || units === shown) return;
    shown = units;
    const anyIsUsual = field.usual_min === field.min && field.usual_max === field.max;
    summary.textContent = anyIsUsual
      ? say("about")
      : say("usually", { range: usualRangeWords(path, field.usual_min, field.usual_max, units) });
    words.textContent = say("accepted", {
      range: rangeWords(path, field.min, field.max, units),
      default: defaultWords(path, field, units),
      basis: basisWords(field),
      note: noteOf(field.key),
    });
  }

  return { element, update };
}

/** @param {string} path @param {Field} field @param {Units} units */
function defaultWords(path, field, units) {
  const kind = kindOf(path);
  return `${quantity(kind, field.default, units)}${field.default_sd ? ` ${plusMinus(kind, field.default_sd, units)}` : ""}`;
}

/** What the default of a field rests on, as the core notes it. @param {string} key */
const noteOf = (key) => inReadersMark(core.found(`note.${key}`, notes[key]));

/** @param {Field} field */
function basisWords(field) {
  const evidence = say.found(`evidence.${field.evidence}`);
  const cited = citation(field.source).replace(/\.$/, "");
  return evidence && cited ? say("basis", { evidence, citation: cited }) : evidence || cited;
}

/** @param {number} sd */
function figures(sd) {
  const rounded = Number(sd.toPrecision(SPREAD_FIGURES));
  return numberText(rounded, { digits: MOST_DECIMALS, atLeast: 0 });
}
