// @ts-check
/** The first script of the page. Its address stays, so it may be older or newer than the page: it starts the version that the page names, or says why that cannot be. */

import { showFailure } from "../frame/failure.js";
import { READING } from "../state/keys.js";
import { languageOf } from "../words/languages.js";
import { startWords } from "../words/start.js";
import { reloadAt, versionAt } from "./version.js";

const HOME = new URL("./", import.meta.url);
const named = document.documentElement.dataset.version;

function chosenLanguage() {
  try {
    return JSON.parse(localStorage.getItem(READING) ?? "null")?.language;
  } catch {
    return null;
  }
}

import(new URL(`${named}/app.js`, HOME).href).catch(async (error) => {
  console.error(error);
  const there = await versionAt(HOME);
  const words = startWords(languageOf([chosenLanguage(), ...navigator.languages]));
  const why = there === null ? words.unreachable : there === named ? words.incomplete : words.newer;
  showFailure({ title: words.title, lines: [why], reload: words.reload }, () => reloadAt(HOME));
});
