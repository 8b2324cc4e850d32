// @ts-check
/** Names of units, and the words that go with figures. */

/** @satisfies {import("../books.d.ts").Texts<"units">} */
export default ({
});
