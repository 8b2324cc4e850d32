// @ts-check
/** A short mark of a text (32-bit FNV-1a): alike texts have the same one, others hardly ever. */

/** @param {string} text */
export function shortMark(text) {
  let mark = 0x811c9dc5;
  for (const character of text) mark = Math.imul(mark ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return (mark >>> 0).toString(36);
}
