// @ts-check
/** What the questions of the page are called. */

import { book } from "../../words/index.js";

const say = book("page");

/** In the rail. @param {string} id */
export const nameOf = (id) => named(`questions.${id}.name`);

/** The question itself. @param {string} id */
export const titleOf = (id) => named(`questions.${id}.title`);

/** @param {string} key */
const named = (key) => say.found(key, key);
