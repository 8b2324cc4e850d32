// @ts-check
/** Under what the language and the decimal mark are kept on the device: the first script reads it before the others are there. */

export const READING = "fasterby:reading";
