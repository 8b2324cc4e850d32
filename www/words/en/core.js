// @ts-check
/** Sentences that come from the core, which speaks English: there is nothing to translate. */

export default {};
