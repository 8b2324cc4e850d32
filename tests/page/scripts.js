// @ts-check
/** The page's own scripts as files, for tests of how they are written. */

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../www/", import.meta.url));

/** Their paths from `www`. */
export const scripts = readdirSync(ROOT, { recursive: true, encoding: "utf8" }).filter(
  (name) => name.endsWith(".js") && !name.split("/").includes("node_modules"),
);

/** @param {string} script */
export const sourceOf = (script) => readFileSync(join(ROOT, script), "utf8");
