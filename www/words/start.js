// @ts-check
/** The texts for a page that cannot load its others: in every language, in the scripts themselves. */

import de from "./de/start.js";
import en from "./en/start.js";
import fr from "./fr/start.js";

/** @import { Language } from "./languages.js" */

/** Put together when it is called: where scripts are split, a bundler may order these books behind this one. @param {Language} language */
export const startWords = (language) => ({ en, de, fr })[language];
