// @ts-check
/** A sentence begins with a capital letter, whatever word it begins with. */

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
