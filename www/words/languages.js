// @ts-check
/** The languages there are. */

/** What each calls itself, and its tag (BCP 47). */
export const LANGUAGES = /** @type {const} */ ({
  en: { name: "English", tag: "en-GB" },
  de: { name: "Deutsch", tag: "de" },
  fr: { name: "Français", tag: "fr" },
});
/** @typedef {keyof typeof LANGUAGES} Language */

/** The first language of these tags that there is: "de-AT" is German. @param {readonly (string | null | undefined)[]} tags @returns {Language} */
export function languageOf(tags) {
  const known = tags
    .map((tag) => (typeof tag === "string" ? tag : "").toLowerCase().split("-")[0])
    .find((name) => Object.hasOwn(LANGUAGES, name));
  return /** @type {Language} */ (known ?? "en");
}
