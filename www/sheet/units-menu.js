// @ts-check
/** The choice of units, language and decimal mark: what is read changes, what is stored does not. */

import { openDialog } from "../frame/dialog.js";
import { h } from "../frame/dom.js";
import { choiceWords, exampleNumber, UNIT_CHOICES } from "../units.js";
import { book, language } from "../words/index.js";
import { LANGUAGES } from "../words/languages.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Reading } from "../frame/reading.js" */

const say = book("sheet");
const words = book("page");

const MARKS = /** @type {const} */ ([
  [null, "usual"],
  [".", "point"],
  [",", "comma"],
]);

/** @param {Page} page @param {Reading} reading */
export function openUnits(page, reading) {
  const { store } = page;
  const { units } = store.get();
  const dialog = openDialog(
    words("unitsAndLanguage"),
    choice(
      say("language"),
      "language",
      Object.entries(LANGUAGES).map(([id, { name, tag }]) => ({
        name,
        lang: tag,
        value: id,
        checked: id === language(),
        choose: () => again("language", () => reading.speak(/** @type {keyof typeof LANGUAGES} */ (id))),
      })),
    ),
    ...UNIT_CHOICES.map(({ key, options }) =>
      choice(
        say(`units.${key}`),
        `units-${key}`,
        options.map((option) => ({
          name: choiceWords(key, option),
          value: option,
          checked: units[key] === option,
          choose: () => store.set(`units.${key}`, option),
        })),
      ),
    ),
    h("p", { class: "soft" }, say("unitsLead")),
    choice(
      say("decimalMark"),
      "decimal-mark",
      MARKS.map(([mark, name]) => ({
        name: say(`decimalMark.${name}`, { example: exampleNumber(mark) }),
        value: name,
        checked: mark === reading.mark(),
        choose: () => again("decimal-mark", () => reading.useMark(mark)),
      })),
    ),
    h("p", { class: "soft" }, say("decimalMarkHint")),
  );

  /** The page is made anew, and this with it; the hand stays where it was. @param {string} name @param {() => Promise<void>} change */
  async function again(name, change) {
    await change();
    if (!dialog.open) return;
    dialog.close();
    const next = openUnits(page, reading);
    /** @type {HTMLElement | null} */ (next.querySelector(`input[name="${name}"]:checked`))?.focus();
  }
  return dialog;
}

/**
 * @param {string} legend @param {string} name
 * @param {{ name: string, value: string, checked: boolean, choose: () => void, lang?: string }[]} options
 */
function choice(legend, name, options) {
  return h(
    "fieldset",
    { class: "choices" },
    h("legend", {}, legend),
    ...options.map((option) =>
      h(
        "label",
        { class: "check", lang: option.lang },
        h("input", { type: "radio", name, value: option.value, checked: option.checked, onchange: option.choose }),
        option.name,
      ),
    ),
  );
}
