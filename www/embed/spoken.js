// @ts-check
/** The language of the places on a page: one script speaks one, that of the place that came first. */

import { open, speak } from "../words/index.js";

/** @import { Language } from "../words/languages.js" */

/** The places that are shown or being loaded. @type {Set<Element>} */
const places = new Set();
/** @type {Promise<void>} */
let spoken = Promise.resolve();

/** Speaks the language of a place, unless others are there already. @param {Element} place @param {Language} language */
export function speakFor(place, language) {
  const isAlone = [...places].every((other) => other === place);
  places.add(place);
  if (isAlone) spoken = speak(language);
  return spoken.then(() => open("embed"));
}

/** A place that was taken away keeps no language any more. @param {Element} place */
export function leave(place) {
  places.delete(place);
}
