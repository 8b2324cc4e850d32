// @ts-check
/** The texts of the page in the language that is spoken: books of templates, one folder a language, fetched when they are opened. */

import { LANGUAGES } from "./languages.js";
import { fill, parts } from "./template.js";

/** @import { Books, Rest } from "./books.d.ts" */
/** @import { Language } from "./languages.js" */
/** @import { Template } from "./template.js" */
/** @import { Field } from "../parts/sentence.js" */

/**
 * @template {keyof Books} Name
 * @typedef {{
 *   <Key extends keyof Books[Name] & string>(key: Key, ...rest: Rest<Books[Name][Key], string | number | Node | readonly (string | Node)[]>): (string | Node)[],
 *   <F extends Field, Key extends keyof Books[Name] & string>(key: Key, ...rest: Rest<Books[Name][Key], string | number | F>): (string | F)[],
 * }} Parts
 */

/** @type {Language} */
let spoken = "en";
/** @type {Map<string, Record<string, Template>>} */
let shelf = new Map();

/** The language that is spoken now. */
export const language = () => spoken;

/** Its tag (BCP 47), for the attribute `lang` and for its plurals. */
export const languageTag = () => LANGUAGES[spoken].tag;

/** The tag by which numbers and dates are written: as in the reader's own country, where its language is spoken. */
export const regionTag = () => tagOf(spoken) ?? languageTag();

/** Asked for once: every number that is written needs them, and a browser takes its time. @type {readonly string[] | undefined} */
let readersTags;

/** The reader's own tag of a language, such as de-CH. @param {Language} wanted */
function tagOf(wanted) {
  readersTags ??= navigator.languages;
  return readersTags?.find((tag) => tag.toLowerCase().split("-")[0] === wanted);
}

/**
 * Speaks a language from now on. The books open so far are there in it before anything changes; what is on the page is the caller's to redraw.
 * @param {Language} wanted @throws where they cannot be fetched; the language is then as it was
 */
export async function speak(wanted) {
  /** @type {typeof shelf} */
  const translated = new Map();
  // Others may be opened meanwhile.
  for (
    let missing = [...shelf.keys()];
    missing.length;
    missing = [...shelf.keys()].filter((name) => !translated.has(name))
  ) {
    await Promise.all(missing.map(async (name) => translated.set(name, await fetchBook(wanted, name))));
  }
  shelf = translated;
  spoken = wanted;
}

/** Whether a book can be read from. @param {string} name */
export const isOpen = (name) => shelf.has(name);

/** Fetches a book in the language that is spoken; once is enough. @param {string} name */
export async function open(name) {
  while (!shelf.has(name)) {
    const wanted = spoken;
    const texts = await fetchBook(wanted, name);
    // Another language may be spoken by now.
    if (wanted === spoken) shelf.set(name, texts);
  }
}

/** @param {Language} wanted @param {string} name @returns {Promise<Record<string, Template>>} */
async function fetchBook(wanted, name) {
  // The build makes a part of its own of each file that this can mean.
  return typeset((await import(`./${wanted}/${name}.js`)).default, wanted);
}

/** Spaces that do not break: before units, and in French before double signs and inside quotes. The books are written with plain ones, and in German with ß, which Switzerland and Liechtenstein write as ss. @param {Record<string, Template>} texts @param {Language} wanted @returns {Record<string, Template>} */
function typeset(texts, wanted) {
  const units = (/** @type {string} */ text) =>
    text
      .replace(/([\d}]) %/g, "$1\u202f%")
      .replace(/([\d}]) (?=(?:°C|km|kJ|kg|hPa|mm|min|m|s|W|h)(?![\p{L}\p{N}’]))/gu, "$1\u00a0");
  const french = (/** @type {string} */ text) =>
    text
      .replace(/ ([;!?])/g, "\u202f$1")
      .replace(/ ([:»])/g, "\u00a0$1")
      .replace(/« /g, "«\u00a0");
  const swiss = (/** @type {string} */ text) => text.replaceAll("ß", "ss");
  const own = wanted === "fr" ? french : /^de-(?:ch|li)\b/i.test(tagOf(wanted) ?? "") ? swiss : String;
  const set = (/** @type {string} */ text) => own(units(text));
  return JSON.parse(JSON.stringify(texts), (_, value) => (typeof value === "string" ? set(value) : value));
}

/** What a term means, in one sentence. @param {string} key */
const meaningOf = (key) => String(shelf.get("page")?.[`term.${key}`] ?? "");

/** The keys of an open book in the language that is spoken. @param {string} name */
export const keysOf = (name) => Object.keys(shelf.get(name) ?? {});

/**
 * A book to read from, once it is open. It reads in the language that is spoken when it is called, so nothing that it says may be kept.
 * @template {keyof Books} Name
 * @param {Name} name
 */
export function book(name) {
  /** @param {string} key @returns {Template} */
  const template = (key) => shelf.get(name)?.[key] ?? key;

  /**
   * The text at a key with its `{placeholders}` filled.
   * @template {keyof Books[Name] & string} Key
   * @param {Key} key @param {Rest<Books[Name][Key], string | number>} rest
   */
  const say = (key, ...rest) => fill(template(key), rest[0], languageTag());
  /** The text at a key as a run of texts and elements, or of texts and fields: placeholders may be any of them. `**bold**` becomes an element, but not beside fields. @type {Parts<Name>} */
  say.parts = /** @type {Parts<Name>} */ (
    /** @type {unknown} */ (
      (/** @type {string} */ key, /** @type {Parameters<typeof parts>[1]} */ values) =>
        parts(template(key), values, languageTag(), meaningOf)
    )
  );
  /** Whether there is a text at a key. @param {string} key */
  say.has = (key) => Object.hasOwn(shelf.get(name) ?? {}, key);
  /** The text at a key that is put together as the page runs, without placeholders; another text where there is none. @param {string} key @param {string} [otherwise] */
  say.found = (key, otherwise = "") => (say.has(key) ? fill(template(key), {}, languageTag()) : otherwise);
  return say;
}
