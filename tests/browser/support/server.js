// @ts-check
/** A server of a test's own, which it can stop, and whose files it can change. */

import { createServer } from "node:http";

/** @typedef {Map<string, { type: string, body: Buffer }>} Files by path, such as `wasm/first_bg.wasm` */

const WORKER = "offline.js";

/** All files of the page that is served at an address. @param {string} address @returns {Promise<Files>} */
export async function filesOf(address) {
  const source = await (await fetch(new URL(WORKER, address))).text();
  const list = /\[\s*"[^\]]*\]/.exec(source);
  if (!list) throw new Error(`${WORKER} names no files to keep.`);
  const files = new Map();
  for (const path of [...JSON.parse(list[0]), WORKER]) {
    const response = await fetch(new URL(path, address));
    if (!response.ok) throw new Error(`${path} gave ${response.status}.`);
    files.set(path, { type: response.headers.get("content-type") ?? "", body: Buffer.from(await response.arrayBuffer()) });
  }
  return files;
}

/** The same page as another version, whose markup, script and style each say which one they are. @param {Files} files @param {string} name @returns {Files} */
export function versionOf(files, name) {
  const worker = text(files, WORKER);
  const version = /(const VERSION = )"[^"]*"/;
  if (!version.test(worker)) throw new Error(`${WORKER} has no version.`);
  return new Map([
    ...files,
    changed(files, WORKER, worker.replace(version, `$1"${name}"`)),
    changed(files, "index.html", text(files, "index.html").replace("<html", `<html data-markup="${name}"`)),
    changed(files, "app.js", `${text(files, "app.js")}\ndocument.documentElement.dataset.script = "${name}";`),
    changed(files, "style.css", `${text(files, "style.css")}\n:root { --style: ${name}; }`),
  ]);
}

/** @param {Files} files @param {string} path */
function text(files, path) {
  return String(files.get(path)?.body);
}

/** @param {Files} files @param {string} path @param {string} content @returns {[string, { type: string, body: Buffer }]} */
function changed(files, path, content) {
  return [path, { type: files.get(path)?.type ?? "", body: Buffer.from(content) }];
}

/** @param {Files} first */
export async function serve(first) {
  let files = first;
  const server = createServer((/** @type {import("node:http").IncomingMessage} */ request, /** @type {import("node:http").ServerResponse} */ response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname.slice(1) || "index.html";
    const file = files.get(path);
    response.writeHead(file ? 200 : 404, { "content-type": file?.type ?? "text/plain", "cache-control": "no-cache" });
    response.end(file?.body ?? "");
  });
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
