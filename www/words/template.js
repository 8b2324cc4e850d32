// @ts-check
/** Texts with `{placeholders}`, `**bold**` runs, `[terms|key]` that explain themselves, and forms for one and for several. */

import { html } from "../parts/html.js";
import { isolated } from "../parts/isolate.js";
import { term } from "../parts/term.js";

/** A text, or its forms by the plural rule that `values.count` falls under; `other` is every other number. @typedef {string | { one: string, many?: string, other: string }} Template */

/** A term of the trade or of statistics: what the reader sees, and the key of its one sentence. */
const TERM = /\[([^|\]]+)\|(\w+)\]/;
const TERMS = new RegExp(TERM, "g");

/** Keeps what follows a term on the same line (U+2060). */
const WORD_JOINER = "\u2060";

/** @type {Map<string, Intl.PluralRules>} */
const rules = new Map();

/** @param {Template} template @param {Record<string, unknown>} values @param {string} tag */
function form(template, values, tag) {
  if (typeof template === "string") return template;
  let rule = rules.get(tag);
  if (!rule) {
    rule = new Intl.PluralRules(tag);
    rules.set(tag, rule);
  }
  const name = rule.select(Number(values.count));
  return (name === "one" || name === "many" ? template[name] : undefined) ?? template.other;
}

/**
 * The text with its placeholders filled; one without a value stays as it is, so that it is seen.
 * @param {Template} template @param {Record<string, string | number>} [values] @param {string} [tag] of the language, for its plurals
 */
export function fill(template, values = {}, tag = "en-GB") {
  return form(template, values, tag)
    .replaceAll(TERMS, "$1")
    .replaceAll(/\{(\w+)\}/g, (whole, name) => isolated(String(values[name] ?? whole)))
    .replaceAll("**", "");
}

/**
 * The same as a run of texts, elements and fields. What is not a text or a node cannot be bold.
 * @template {object} [T=never]
 * @param {Template} template @param {Record<string, string | number | T | (string | T)[]>} [values] @param {string} [tag]
 * @param {(key: string) => string} [meaning] of a term
 * @returns {(string | HTMLElement | T)[]}
 */
export function parts(template, values = {}, tag = "en-GB", meaning = () => "") {
  return form(template, values, tag)
    .split("**")
    .flatMap((run, index) => {
      const pieces = explained(run, values, meaning);
      return /** @type {(string | HTMLElement | T)[]} */ (
        index % 2 ? [html("b", {}, .../** @type {(string | Node)[]} */ (pieces))] : pieces
      );
    });
}

/** @template {object} T @param {string} run @param {Record<string, string | number | T | (string | T)[]>} values @param {(key: string) => string} meaning @returns {(string | T | HTMLElement)[]} */
function explained(run, values, meaning) {
  const pieces = run.split(TERM);
  return pieces.flatMap((piece, at) => {
    /** @type {(string | T | HTMLElement)[]} */
    const shown = at % 3 === 0 ? filled(piece, values) : [];
    if (at % 3 !== 1) return shown;
    const joined = /^[,.;:?!)]/.test(pieces[at + 2]) ? [WORD_JOINER] : [];
    return [term(piece, () => meaning(pieces[at + 1])), ...joined];
  });
}

/** @template {object} T @param {string} text @param {Record<string, string | number | T | (string | T)[]>} values @returns {(string | T)[]} */
function filled(text, values) {
  return text.split(/\{(\w+)\}/).flatMap((piece, at) => {
    if (at % 2 === 0) return piece ? [piece] : [];
    const value = values[piece] ?? `{${piece}}`;
    if (typeof value === "string") return [isolated(value)];
    if (Array.isArray(value)) return value.map((one) => (typeof one === "string" ? isolated(one) : one));
    return typeof value === "number" ? [String(value)] : /** @type {string | T | (string | T)[]} */ (value);
  });
}
