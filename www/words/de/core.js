// @ts-check
/** What the core says, by its English sentence. */

/** @satisfies {import("../books.d.ts").Texts<"core">} */
export default ({
});
