// @ts-check
/** Firefox steered through Marionette, the protocol that is built into it: no driver has to be compiled. */

import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { eventually } from "./webdriver.js";

/** @import { Browser } from "./webdriver.js" */

/** How the standard names an element in JSON. */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
/** A port that nothing uses, which Firefox chooses and writes into its profile. */
const PREFERENCES = 'user_pref("marionette.port", 0);\n';
const PORT_FILE = "MarionetteActivePort";
/** What the first number of a message says it is. */
const [COMMAND, ANSWER] = [0, 1];

/** Firefox with a profile of its own. @param {string} program @returns {Promise<Browser>} */
export async function openFirefox(program) {
  const profile = await mkdtemp(join(tmpdir(), "fasterby-firefox-"));
  await writeFile(join(profile, "user.js"), PREFERENCES);
  const firefox = spawn(program, ["--marionette", "--headless", "--no-remote", "--profile", profile], {
    stdio: "ignore",
  });
  const ended = new Promise((resolve) => firefox.once("exit", resolve).once("error", resolve));
  async function end() {
    firefox.kill();
    await ended;
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }

  try {
    const send = await connected(await portOf(profile, firefox));
    await send("WebDriver:NewSession", {});
    return {
      go: (url) => send("WebDriver:Navigate", { url }),
      evaluate: async (script, ...values) =>
        (await send("WebDriver:ExecuteScript", { script: `return (${script})(...arguments)`, args: values })).value,
      async type(selector, text) {
        const { value } = await send("WebDriver:FindElement", { using: "css selector", value: selector });
        await send("WebDriver:ElementSendKeys", { id: value[ELEMENT], text });
      },
      async close() {
        await send("Marionette:Quit", { flags: ["eForceQuit"] }).catch(() => undefined);
        await end();
      },
    };
  } catch (error) {
    await end();
    throw error;
  }
}

/** @param {string} profile @param {import("node:child_process").ChildProcess} firefox */
async function portOf(profile, firefox) {
  let failed = "";
  firefox.once("error", (error) => {
    failed = error.message;
  });
  let port = 0;
  await eventually(async () => {
    if (failed) throw new Error(`Firefox could not be started: ${failed}`);
    port = Number(await readFile(join(profile, PORT_FILE), "utf8").catch(() => "0"));
    return port > 0;
  }, "Firefox listening");
  return port;
}

/**
 * Sends commands over a connection: each message is the length of its JSON in bytes, a colon, and the JSON.
 * @param {number} port
 */
async function connected(port) {
  const socket = connect(port, "127.0.0.1");
  /** @type {Map<number, { resolve: (result: any) => void, reject: (error: Error) => void }>} */
  const waiting = new Map();
  const greeted = new Promise((resolve, reject) => {
    const refuseAll = () => {
      for (const asked of [{ reject }, ...waiting.values()]) asked.reject(new Error("Firefox closed the connection."));
    };
    socket.on("close", refuseAll).on("error", refuseAll);
    readMessages(socket, (message) => {
      if (!Array.isArray(message)) return resolve(undefined);
      const [kind, number, error, result] = message;
      const asked = waiting.get(number);
      if (kind !== ANSWER || !asked) return;
      waiting.delete(number);
      if (error) asked.reject(new Error(`${error.error}: ${error.message}`));
      else asked.resolve(result);
    });
  });
  await greeted;

  let last = 0;
  return (/** @type {string} */ name, /** @type {object} */ values) =>
    /** @type {Promise<any>} */ (
      new Promise((resolve, reject) => {
        last += 1;
        waiting.set(last, { resolve, reject });
        const text = JSON.stringify([COMMAND, last, name, values]);
        socket.write(`${Buffer.byteLength(text)}:${text}`);
      })
    );
}

/** @param {import("node:net").Socket} socket @param {(message: any) => void} take */
function readMessages(socket, take) {
  let held = Buffer.alloc(0);
  socket.on("data", (piece) => {
    held = Buffer.concat([held, piece]);
    for (let colon = held.indexOf(":"); colon > 0; colon = held.indexOf(":")) {
      const end = colon + 1 + Number(held.subarray(0, colon).toString());
      if (held.length < end) return;
      take(JSON.parse(held.subarray(colon + 1, end).toString()));
      held = held.subarray(end);
    }
  });
}
