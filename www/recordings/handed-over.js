// @ts-check
/** Ride files that the device hands over: opened with the installed page, or shared to it. */

/** @typedef {{ files?: { getFile(): Promise<File> }[] }} Launch */
/** @typedef {{ setConsumer(take: (launch: Launch) => void): void }} LaunchQueue */

/** Where `offline.js` puts what is shared. */
const SHARED = "fasterby-shared";

/** Calls `take` with what was handed over, now and while the page is open. @param {(files: Blob[]) => Promise<boolean>} take tells once they are read, or are not wanted any more */
export function takeHandedOver(take) {
  const { launchQueue } = /** @type {{ launchQueue?: LaunchQueue }} */ (/** @type {unknown} */ (globalThis));
  launchQueue?.setConsumer(async ({ files = [] }) => {
    if (files.length) take(await Promise.all(files.map((file) => file.getFile())));
  });
  takeShared(take);
}

/** What was shared is taken once, and kept until it is read: a page that is left meanwhile reads it when it is opened again. @param {(files: Blob[]) => Promise<boolean>} take */
async function takeShared(take) {
  try {
    if (!(await caches.has(SHARED))) return;
    const cache = await caches.open(SHARED);
    const keys = await cache.keys();
    const responses = await Promise.all(keys.map((key) => cache.match(key)));
    const files = await Promise.all(responses.flatMap((response) => (response ? [response.blob()] : [])));
    if (files.length && !(await take(files))) return;
    await Promise.all(keys.map((key) => cache.delete(key)));
    if ((await cache.keys()).length === 0) await caches.delete(SHARED);
  } catch {
    // Where nothing may be put aside, nothing was.
  }
}
