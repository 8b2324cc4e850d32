// @ts-check
/** A server of a test's own, which it can stop, whose files it can change, and which behaves as hosts of static files do. */

import { createHash } from "node:crypto";
import { createServer } from "node:http";

/** @typedef {Map<string, { type: string, body: Buffer }>} Files by path, such as `v-1f/wasm/first_bg.wasm` */

/**
 * How a host of static files may behave.
 * @typedef {object} Habits
 * @property {boolean} [plainAddresses] sends `/index.html` on to `/`, and `/embed/frame.html` to `/embed/frame`
 * @property {boolean} [pageForMissing] gives the page, with 200, for a file that is not there
 * @property {boolean} [keptForAYear] tells browsers to keep everything for a year without asking
 */

const WORKER = "offline.js";
const VERSION = "version.json";
/** What keeps its address. */
const ENTRIES = [
  "index.html",
  "start.js",
  WORKER,
  VERSION,
  "manifest.webmanifest",
  "icon.svg",
  "icon-maskable.svg",
  "fasterby.html",
  "embed.js",
  "embed/v1.js",
  "embed/frame.html",
  "embed/frame.js",
  "frame-height.js",
];
const A_YEAR = "public, max-age=31536000, immutable";

/** The folder of a version's files. @param {Files} files @returns {string} */
export const folderOf = (files) => JSON.parse(text(files, VERSION)).version;

/** By address: they are fetched once. @type {Map<string, Promise<Files>>} */
const fetched = new Map();

/** All files of the page that is served at an address. @param {string} address @returns {Promise<Files>} */
export async function filesOf(address) {
  const files = fetched.get(address) ?? fetchedFrom(address);
  fetched.set(address, files);
  return new Map(await files);
}

/** @param {string} address @returns {Promise<Files>} */
async function fetchedFrom(address) {
  const files = new Map();
  const take = async (/** @type {string} */ path) => {
    const response = await fetch(new URL(path, address));
    if (!response.ok) throw new Error(`${path} gave ${response.status}.`);
    files.set(path, {
      type: response.headers.get("content-type") ?? "",
      body: Buffer.from(await response.arrayBuffer()),
    });
  };
  await Promise.all(ENTRIES.map(take));
  const folder = folderOf(files);
  await take(`${folder}/files.json`);
  await Promise.all(
    JSON.parse(text(files, `${folder}/files.json`)).map((/** @type {string} */ path) => take(`${folder}/${path}`)),
  );
  return files;
}

/** The same page as another version, whose markup, script and style each say which one they are. @param {Files} files @param {string} name @returns {Files} */
export function versionOf(files, name) {
  const [before, after] = [folderOf(files), `v-${name}`];
  /** @type {Files} */
  const next = new Map();
  for (const [path, { type, body }] of files) {
    const isEntry = ENTRIES.includes(path) && path !== "fasterby.html";
    next.set(path.replace(`${before}/`, `${after}/`), {
      type,
      body: isEntry ? Buffer.from(String(body).replaceAll(before, after)) : body,
    });
  }
  change(next, "index.html", (markup) => markup.replace("<html", `<html data-markup="${name}"`));
  change(next, `${after}/app.js`, (script) => `${script}\ndocument.documentElement.dataset.script = "${name}";`);
  change(next, `${after}/style.css`, (style) => `${style}\n:root { --style: ${name}; }`);
  change(next, `${after}/element.js`, (script) => `${script}\ndocument.documentElement.dataset.element = "${name}";`);
  change(next, WORKER, (worker) => {
    const list = /\{"\.\/":[^}]*\}/.exec(worker);
    const version = /(const VERSION = )"[^"]*"/;
    if (!list || !version.test(worker)) throw new Error(`${WORKER} has no version or names no files to keep.`);
    const hashed = Object.keys(JSON.parse(list[0])).map((path) => [
      path,
      hash(next, path === "./" ? "index.html" : path),
    ]);
    return worker.replace(version, `$1"${name}"`).replace(list[0], JSON.stringify(Object.fromEntries(hashed)));
  });
  return next;
}

/** The files without some of them. @param {Files} files @param {(path: string) => boolean} isLeftOut @returns {Files} */
export const without = (files, isLeftOut) => new Map([...files].filter(([path]) => !isLeftOut(path)));

/** Changes a text file in place. @param {Files} files @param {string} path @param {(content: string) => string} how */
export function change(files, path, how) {
  files.set(path, { type: files.get(path)?.type ?? "", body: Buffer.from(how(text(files, path))) });
}

/** @param {Files} files @param {string} path */
function text(files, path) {
  const file = files.get(path);
  if (!file) throw new Error(`There is no ${path}.`);
  return String(file.body);
}

/** @param {Files} files @param {string} path */
const hash = (files, path) =>
  `sha256-${createHash("sha256")
    .update(/** @type {{ body: Buffer }} */ (files.get(path)).body)
    .digest("base64")}`;

/** @param {Files} first @param {Habits} [habits] */
export async function serve(first, { plainAddresses = false, pageForMissing = false, keptForAYear = false } = {}) {
  let files = first;
  /** @param {string} path */
  function found(path) {
    const named = path === "" || path.endsWith("/") ? `${path}index.html` : path;
    const file = files.get(named) ?? (plainAddresses ? files.get(`${named}.html`) : undefined);
    return file ?? (pageForMissing ? files.get("index.html") : undefined);
  }
  const server = createServer(
    (
      /** @type {import("node:http").IncomingMessage} */ request,
      /** @type {import("node:http").ServerResponse} */ response,
    ) => {
      const { pathname, search } = new URL(request.url ?? "/", "http://localhost");
      if (plainAddresses && pathname.endsWith(".html")) {
        response.writeHead(301, {
          location: pathname.replace(/(?:\/index)?\.html$/, (end) => (end.startsWith("/index") ? "/" : "")) + search,
          "cache-control": keptForAYear ? A_YEAR : "no-cache",
        });
        return response.end();
      }
      const file = found(decodeURIComponent(pathname.slice(1)));
      response.writeHead(file ? 200 : 404, {
        "content-type": file?.type ?? "text/plain",
        "cache-control": keptForAYear ? A_YEAR : "no-cache",
        "access-control-allow-origin": "*",
        "x-content-type-options": "nosniff",
      });
      response.end(file?.body ?? "Not found");
    },
  );
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  const address = server.address();
  const port = typeof address === "object" ? address?.port : 0;
  return {
    address: `http://localhost:${port}/`,
    /** @param {Files} next */
    change(next) {
      files = next;
    },
    async stop() {
      const stopped = new Promise((resolve) => server.close(() => resolve(undefined)));
      server.closeAllConnections();
      await stopped;
    },
  };
}
