// @ts-check
/** For scripts that other sites name: their addresses stay, and they run what the server has now. */

import { versionAt } from "./version.js";

/** Written in at build time. */
const BUILT_WITH = "__VERSION__";

/**
 * Runs a script of the version that the server has now. Where it does not say, or does not have all of it yet, the version that this script was built with.
 * @param {string} script @param {URL} home where the page lies
 */
export async function runNewest(script, home) {
  const run = (/** @type {string} */ version) => import(new URL(`${version}/${script}`, home).href);
  const newest = (await versionAt(home)) ?? BUILT_WITH;
  return run(newest).catch((error) => {
    if (newest === BUILT_WITH) throw error;
    return run(BUILT_WITH);
  });
}
