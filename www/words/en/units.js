// @ts-check
/** Names of units, and the words that go with figures. */

export default {};
