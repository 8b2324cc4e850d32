// @ts-check
/** The version that the server has now, and the way to it past whatever a browser or a host has kept. */

/** The name of a version's folder. */
const NAME = /^v-[0-9a-z]+$/;
const PATIENCE_MS = 5000;

/** Null where the server does not say. @param {URL} home where the page lies @returns {Promise<string | null>} */
export async function versionAt(home) {
  try {
    const response = await fetch(new URL("version.json", home), {
      cache: "no-store",
      credentials: "omit",
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    const { version } = await response.json();
    return NAME.test(version) ? version : null;
  } catch {
    return null;
  }
}

/** Opens the page anew. What a browser may have kept of an unfinished upload is fetched again first. @param {URL} home */
export async function reloadAt(home) {
  const version = await versionAt(home);
  const anew = (/** @type {string} */ file) => fetch(new URL(file, home), { cache: "reload" });
  try {
    const files = version ? await (await anew(`${version}/files.json`)).json() : [];
    await Promise.allSettled(
      [location.href, "start.js", ...files.map((/** @type {string} */ file) => `${version}/${file}`)].map(anew),
    );
  } catch {
    // Then the page is opened as it is.
  }
  location.reload();
}
