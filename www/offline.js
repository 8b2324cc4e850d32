// @ts-check
/**
 * Service worker: keeps one whole version of the page on the device and serves that version only. A newer one is fetched whole into a
 * cache of its own and takes over once no page of the old one is open; until then nothing of it is served.
 */

const scope = /** @type {any} */ (globalThis);
/** Both are written in at build time. */
const VERSION = "__VERSION__";
const FILES = /** @type {string[]} */ (/** @type {unknown} */ ("__FILES__"));
/** The page as one file is there to take away; it is not kept twice. */
const ONE_FILE = "fasterby.html";
/** Pages beside the page. */
const OTHER_PAGES = [ONE_FILE, "embed/"];
const OURS = "fasterby ";
const CACHE = OURS + VERSION;

/** @param {string} file */
const address = (file) => new URL(file, scope.registration.scope).href;

async function install() {
  const cache = await caches.open(CACHE);
  try {
    await cache.addAll(FILES.map((file) => new Request(address(file), { cache: "reload" })));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function removeOld() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
}

/** @param {Request} request */
async function answer(request) {
  const cache = await caches.open(CACHE);
  const isPage = request.mode === "navigate" && !OTHER_PAGES.some((path) => request.url.startsWith(address(path)));
  const file = isPage ? address("index.html") : request.url;
  return (await cache.match(file, { ignoreSearch: true })) ?? fetch(request);
}

scope.addEventListener("install", (/** @type {any} */ event) => event.waitUntil(install()));
scope.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(removeOld()));
scope.addEventListener("fetch", (/** @type {any} */ event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(scope.registration.scope)) event.respondWith(answer(request));
});
