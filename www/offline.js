// @ts-check
/**
 * Service worker: keeps one whole version of the page on the device, with the texts of the languages that its reader reads, and serves that
 * version only. A newer one is fetched whole into a
 * cache of its own and takes over once no page of the old one is open; until then nothing of it is served. Whatever else lies in its
 * scope, such as other pages of the same site, is left to the network. A ride file that another program shares is put where the page
 * finds it; it goes nowhere else.
 */

/** What a service worker has that a page has not. @typedef {{ registration: { scope: string }, clients: { claim(): Promise<void> }, addEventListener(name: string, listen: (event: Arrival) => void): void }} WorkerScope */
/** @typedef {{ request: Request, data: unknown, waitUntil(done: Promise<unknown>): void, respondWith(response: Promise<Response>): void }} Arrival */

const scope = /** @type {WorkerScope} */ (/** @type {unknown} */ (globalThis));
/** These are written in at build time. */
const VERSION = "__VERSION__";
/** By address from the scope, the hash that each must have. */
const FILES = /** @type {Record<string, string>} */ (/** @type {unknown} */ ("__FILES__"));
/** By language, the files with its texts, likewise. */
const TEXTS = /** @type {Record<string, Record<string, string>>} */ (/** @type {unknown} */ ("__TEXTS__"));
/** Headers about how a file was sent, which say nothing of it once it is here. */
const ON_THE_WAY = ["content-encoding", "content-length", "vary"];
const OURS = "fasterby ";
const CACHE = OURS + VERSION;

/** @param {string} file */
const address = (file) => new URL(file, scope.registration.scope).href;

const PAGE = address("./");
const PAGE_TOO = address("index.html");
/** Where the device hands over files, as the manifest says; no file is there. */
const SHARED = address("shared");
/** An empty entry here says that a language is kept. */
const LANGUAGES = address("languages/");
const KEPT = new Set([FILES, ...Object.values(TEXTS)].flatMap((files) => Object.keys(files).map(address)));

/**
 * What the browser has already will do if it is right: a host may give something else for a missing file, or have a browser keep an
 * older one for long.
 * @param {string} file @param {string} integrity
 */
async function fetchRight(file, integrity) {
  const fetched = (/** @type {RequestCache} */ cache) => fetch(address(file), { cache, integrity });
  const response = await fetched("default").catch(() => fetched("reload"));
  // One that was redirected may not answer for a page, so a fresh one is kept.
  const headers = new Headers(response.headers);
  for (const name of ON_THE_WAY) headers.delete(name);
  return new Response(await response.blob(), { headers });
}

/** The languages that any version keeps here, and the first of the browser's that there is. */
async function languagesRead() {
  const read = new Set([navigator.languages.map((tag) => tag.slice(0, 2).toLowerCase()).find(isLanguage) ?? "en"]);
  for (const name of (await caches.keys()).filter((name) => name.startsWith(OURS)))
    for (const { url } of await (await caches.open(name)).keys())
      if (url.startsWith(LANGUAGES)) read.add(url.slice(LANGUAGES.length));
  return [...read].filter(isLanguage);
}

/** @param {unknown} language @returns {language is string} */
const isLanguage = (language) => typeof language === "string" && Object.hasOwn(TEXTS, language);

/** @param {Record<string, string>} files */
async function keep(files) {
  const cache = await caches.open(CACHE);
  await Promise.all(
    Object.entries(files).map(async ([file, integrity]) => cache.put(address(file), await fetchRight(file, integrity))),
  );
}

/** Keeps the texts of a language, if they are not kept. @param {string} language */
async function keepLanguage(language) {
  const cache = await caches.open(CACHE);
  if (await cache.match(LANGUAGES + language)) return;
  await keep(TEXTS[language]);
  await cache.put(LANGUAGES + language, new Response());
}

async function install() {
  try {
    await Promise.all([keep(FILES), ...(await languagesRead()).map(keepLanguage)]);
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
  // A page that was opened before anything was kept finds its later parts here too.
  await scope.clients.claim();
}

/** Which of the kept files answers a request. @param {Request} request */
function keptFor({ method, mode, url }) {
  const [file] = url.split(/[?#]/);
  if (method !== "GET") return null;
  if (mode === "navigate") return file === PAGE || file === PAGE_TOO ? PAGE : null;
  return KEPT.has(file) ? file : null;
}

/** Puts shared files aside, and opens the question that reads them. @param {Request} request */
async function takeShared(request) {
  const files = (await request.formData()).getAll("ride");
  const cache = await caches.open("fasterby-shared");
  await Promise.all(files.map((file, place) => cache.put(address(`shared/${place}`), new Response(file))));
  return Response.redirect(`${PAGE}#drag-test`, 303);
}

/** @param {string} file @param {Request} request */
async function answer(file, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(file)) ?? fetch(request);
}

scope.addEventListener("install", (event) => event.waitUntil(install()));
scope.addEventListener("activate", (event) => event.waitUntil(activate()));
// The page says which language is read; where its texts cannot be fetched now, they are with the next version or visit.
scope.addEventListener("message", (event) => {
  const { language } = /** @type {{ language?: unknown }} */ (event.data);
  if (isLanguage(language)) event.waitUntil(keepLanguage(language).catch(() => undefined));
});
scope.addEventListener("fetch", (event) => {
  if (event.request.method === "POST" && event.request.url === SHARED)
    return event.respondWith(takeShared(event.request));
  const file = keptFor(event.request);
  if (file) event.respondWith(answer(file, event.request));
});
