// @ts-check
/** What the attributes of a place say, made into a state of the store. All of it is somebody else's text: parsed as data, checked by the core. */

import { asCoreError, ask, prepareFor, ready } from "../core.js";
import { errorWords } from "../frame/field-words.js";
import { isObject, readJson } from "../parts/json.js";
import { requestOf } from "../questions/shared/request.js";
import { decode, LinkError, patched, questionOf } from "../state/address.js";
import { knownUnits, UNIT_CHOICES, usualUnits } from "../units.js";
import { book } from "../words/index.js";

/** @import { JsonObject, With } from "../types/page.d.ts" */
/** @import { Question } from "../questions/index.js" */
/** @import { State } from "../state/history.js" */
/** @import { scenarioFiller } from "../state/scenario.js" */

const words = book("embed");
/** A course of some thousand points fits. */
const MOST_CHARACTERS = 400_000;

/** What is said in place of a question that cannot be shown. */
export class GivenError extends Error {}

/**
 * @typedef {object} Attributes
 * @property {string | null} question
 * @property {string | null} scenario JSON, only what differs from the typical values
 * @property {string | null} with JSON, the question's own numbers
 * @property {string | null} state the text after the `#` of a shared link
 * @property {string | null} units such as `km C`
 * @property {string | null} lang
 */

/** The text of a link after its `#`. @param {Pick<Attributes, "state">} given */
const hashOf = ({ state }) => (state ?? "").trim().replace(/^.*#/, "");

/**
 * @param {Pick<Attributes, "question" | "state">} given
 * @param {Question[]} questions
 * @throws {GivenError} with a sentence for the reader
 */
export function questionGiven(given, questions) {
  const id = given.question?.trim() || questionOf(hashOf(given));
  const question = questions.find((one) => one.id === id);
  if (!question)
    throw new GivenError(
      words("noQuestion", { name: id.slice(0, 40), list: questions.map((one) => one.id).join(", ") }),
    );
  return question;
}

/**
 * @param {Attributes} given
 * @param {Question} question
 * @param {{ questions: Question[], filler: ReturnType<typeof scenarioFiller> }} page
 * @returns {Promise<State>}
 * @throws {GivenError} with a sentence for the reader
 */
export async function stateFrom(given, question, { questions, filler }) {
  const { id } = question;
  const hash = hashOf(given);
  const defaults = { scenario: filler.defaults(), with: () => question.defaults };
  const linked = hash.includes("/") ? await read(() => decode(hash, defaults)) : null;
  const base =
    linked?.question === id ? linked : { scenario: linked?.scenario ?? defaults.scenario, with: question.defaults };
  const changes = parsed("scenario", given.scenario);
  const course =
    isObject(changes.course) && changes.course.kind === "profile" ? { ...base.scenario, course: {} } : base.scenario;
  const scenario = patched(course, changes);
  const details = patched(base.with, parsed("with", given.with));

  const units = unitsFrom(given);
  /** @param {string} about @param {unknown} request */
  const check = (about, request) => {
    try {
      ask(about, request);
    } catch (thrown) {
      const error = asCoreError(thrown);
      if (error.kind !== "impossible") throw new GivenError(errorWords(error, units));
    }
  };
  // Weather that changes is known to the whole module alone.
  prepareFor(scenario);
  await ready(id);
  check("speed-for-watts", { scenario, with: {} });
  const filled = filler.fill(scenario);
  for (const name of question.positionFields ?? [])
    if (Number(details[name]) >= filled.positions.length) details[name] = 0;
  const state = {
    question: id,
    scenario: filled,
    with: /** @type {With} */ ({
      ...Object.fromEntries(questions.map((one) => [one.id, one.defaults])),
      [id]: details,
    }),
    units,
  };
  await read(() => check(id, requestOf(question, state)));
  return state;
}

/** The units named by their signs, the rest as is usual where the language is spoken. @param {Pick<Attributes, "units" | "lang">} given */
export function unitsFrom({ units, lang }) {
  const named = new Set((units ?? "").split(/[\s,]+/));
  const found = UNIT_CHOICES.flatMap(({ key, options }) =>
    options.filter((sign) => named.has(sign)).map((sign) => [key, sign]),
  );
  return knownUnits(Object.fromEntries(found), usualUnits(lang || navigator.language));
}

/** @param {string} name @param {string | null} text @returns {JsonObject} */
function parsed(name, text) {
  if (!text?.trim()) return {};
  if (text.length > MOST_CHARACTERS) throw new GivenError(words("tooLong", { name }));
  try {
    const value = readJson(text);
    if (isObject(value)) return value;
  } catch {
    // Said below.
  }
  throw new GivenError(words("notObject", { name }));
}

/** Whatever goes wrong inside is a sentence too. @template T @param {() => T | Promise<T>} reading */
async function read(reading) {
  try {
    return await reading();
  } catch (error) {
    if (error instanceof GivenError) throw error;
    throw new GivenError(error instanceof LinkError ? error.message : words("unreadable"));
  }
}
