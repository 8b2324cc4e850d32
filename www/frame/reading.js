// @ts-check
/** How the page is read on this device: its language and its decimal mark. Neither is part of a rider's numbers, so neither is undone or shared. */

import { writeWithMark } from "../parts/number-text.js";
import { book, language, languageTag, speak } from "../words/index.js";
import { LANGUAGES, languageOf } from "../words/languages.js";
import { whyLost } from "./failed.js";
import { keepLanguage } from "./offline-copy.js";

/** @import { DecimalMark } from "../parts/number-text.js" */
/** @import { deviceStorage } from "../state/storage.js" */
/** @import { Language } from "../words/languages.js" */
/** @import { Notify } from "./notice.js" */
/** @typedef {Awaited<ReturnType<typeof openReading>>} Reading */

const say = book("page");

/**
 * Takes up the reading that was kept on the device; without one the language is the first of the browser's that there is.
 * @param {ReturnType<typeof deviceStorage>} storage
 */
export async function openReading(storage) {
  const kept = storage.reading();
  /** @type {DecimalMark | null} */
  let mark = kept?.decimal_mark === "." || kept?.decimal_mark === "," ? kept.decimal_mark : null;
  /** @type {{ remake: () => Promise<void>, notify: Notify }} */
  let page = { remake: async () => {}, notify: () => {} };
  writeWithMark(mark);
  await speak(languageOf([kept?.language, ...navigator.languages]));
  keepLanguage(language());
  document.documentElement.lang = languageTag();

  /** @param {boolean} languageChosen */
  function keep(languageChosen) {
    storage.keepReading({ ...(languageChosen && { language: language() }), ...(mark && { decimal_mark: mark }) });
  }

  return {
    /** Gives it the page to make anew. @param {typeof page} given */
    follow(given) {
      page = given;
    },
    mark: () => mark,
    /** @param {Language} wanted */
    async speak(wanted) {
      try {
        await speak(wanted);
      } catch {
        const { message, action } = await whyLost(say("languageLost"));
        return page.notify(message, action);
      }
      document.documentElement.lang = languageTag();
      keepLanguage(wanted);
      keep(true);
      await page.remake();
    },
    /** @param {DecimalMark | null} wanted null is the mark of the language */
    async useMark(wanted) {
      mark = wanted;
      writeWithMark(mark);
      keep(Object.hasOwn(LANGUAGES, storage.reading()?.language ?? ""));
      await page.remake();
    },
  };
}
