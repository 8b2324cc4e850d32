// @ts-check
/** Ride files that the device hands over: opened with the installed page, or shared to it. */

/** @typedef {{ files?: { getFile(): Promise<File> }[] }} Launch */
/** @typedef {{ setConsumer(take: (launch: Launch) => void): void }} LaunchQueue */

/** Where `offline.js` puts what is shared. */
const SHARED = "fasterby-shared";

/** Calls `take` with what was handed over, now and while the page is open. @param {(files: Blob[]) => void} take */
export function takeHandedOver(take) {
  const { launchQueue } = /** @type {{ launchQueue?: LaunchQueue }} */ (/** @type {unknown} */ (globalThis));
  launchQueue?.setConsumer(async ({ files = [] }) => {
    if (files.length) take(await Promise.all(files.map((file) => file.getFile())));
  });
  takeShared(take);
}

/** What was shared is taken once. @param {(files: Blob[]) => void} take */
async function takeShared(take) {
  try {
    if (!(await caches.has(SHARED))) return;
    const cache = await caches.open(SHARED);
    const responses = await Promise.all((await cache.keys()).map((key) => cache.match(key)));
    await caches.delete(SHARED);
    const files = await Promise.all(responses.flatMap((response) => (response ? [response.blob()] : [])));
    if (files.length) take(files);
  } catch {
    // Where nothing may be put aside, nothing was.
  }
}
