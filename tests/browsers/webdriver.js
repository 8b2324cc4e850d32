// @ts-check
/** A browser steered through its WebDriver (W3C), as far as the tests need it. */

import { spawn } from "node:child_process";
import { createServer } from "node:net";

/** How the standard names an element in JSON. */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
/** For a driver or a browser that does not come up at all. */
const PATIENCE_MS = 60_000;
const POLL_MS = 100;

/** @typedef {Awaited<ReturnType<typeof openBrowser>>} Browser */

/** A port that nothing uses now. @returns {Promise<number>} */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer()
      .once("error", reject)
      .listen(0, "127.0.0.1", () => {
        const { port } = /** @type {import("node:net").AddressInfo} */ (server.address());
        server.close(() => resolve(port));
      });
  });
}

/** Asks again until the answer is yes. @param {() => Promise<boolean>} question @param {string} what */
export async function eventually(question, what) {
  for (const until = Date.now() + PATIENCE_MS; Date.now() < until; ) {
    if (await question()) return;
    await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
  throw new Error(`${what} did not happen within ${PATIENCE_MS / 1000} s.`);
}

/**
 * Starts a driver and through it a browser.
 * @param {{ driver: string, args?: (port: number) => string[], capabilities: object, env?: Record<string, string> }} engine
 */
export async function openBrowser({ driver, args = (port) => [`--port=${port}`], capabilities, env = {} }) {
  const port = await freePort();
  const program = spawn(driver, args(port), { stdio: "ignore", env: { ...process.env, ...env } });
  const ended = new Promise((resolve) => program.once("exit", resolve));
  let failed = "";
  program.once("error", (error) => {
    failed = error.message;
  });

  /** @param {string} method @param {string} path @param {object} [body] */
  async function send(method, path, body) {
    const response = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body && { body: JSON.stringify(body), headers: { "content-type": "application/json" } }),
    });
    const { value } = /** @type {{ value: any }} */ (await response.json());
    if (!response.ok) throw new Error(`${value?.error}: ${value?.message}`);
    return value;
  }

  try {
    await eventually(async () => {
      if (failed) throw new Error(`${driver} could not be started: ${failed}`);
      return send("GET", "/status").then(
        () => true,
        () => false,
      );
    }, `An answer of ${driver}`);
    const { sessionId } = await send("POST", "/session", { capabilities: { alwaysMatch: capabilities } });
    const session = `/session/${sessionId}`;
    const run = (/** @type {string} */ script, /** @type {unknown[]} */ values) =>
      send("POST", `${session}/execute/sync`, { script, args: values });

    return {
      /** @param {string} url */
      go: (url) => send("POST", `${session}/url`, { url }),
      /**
       * Runs a function in the page with values that JSON can carry.
       * @template {any[]} Values @template T
       * @param {(...values: Values) => T} script @param {Values} values @returns {Promise<Awaited<T>>}
       */
      evaluate: (script, ...values) => run(`return (${script})(...arguments)`, values),
      /** Types into an element as a keyboard does. @param {string} selector @param {string} text */
      async type(selector, text) {
        const element = await send("POST", `${session}/element`, { using: "css selector", value: selector });
        await send("POST", `${session}/element/${element[ELEMENT]}/value`, { text });
      },
      async close() {
        await send("DELETE", session).catch(() => undefined);
        program.kill();
        await ended;
      },
    };
  } catch (error) {
    program.kill();
    throw error;
  }
}
