// @ts-check
/** Firefox, and WebKit as GTK has it: not Safari, but its engine. */

import { spawn } from "node:child_process";
import { openFirefox } from "./marionette.js";
import { openBrowser } from "./webdriver.js";

/** A display that nobody sees: this WebKit has no mode without one. @returns {Promise<{ name: string, close: () => void }>} */
function openDisplay() {
  return new Promise((resolve, reject) => {
    const server = spawn(
      process.env.XVFB ?? "Xvfb",
      ["-displayfd", "1", "-screen", "0", "1280x1024x24", "-nolisten", "tcp"],
      { stdio: ["ignore", "pipe", "ignore"] },
    );
    server.once("error", reject).once("exit", () => reject(new Error("Xvfb ended before it had a display.")));
    server.stdout.once("data", (number) => resolve({ name: `:${String(number).trim()}`, close: () => server.kill() }));
  });
}

const firefox = () => openFirefox(process.env.FIREFOX ?? "firefox");

async function webkit() {
  const display = await openDisplay();
  try {
    const browser = await openBrowser({
      driver: process.env.WEBKIT_DRIVER ?? "WebKitWebDriver",
      capabilities: {},
      env: { DISPLAY: display.name },
    });
    return { ...browser, close: () => browser.close().finally(display.close) };
  } catch (error) {
    display.close();
    throw error;
  }
}

/** By the name of the project that tests it. @type {Record<string, typeof firefox>} */
export const engines = { firefox, webkit };
