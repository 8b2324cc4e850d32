// @ts-check
/** The page's scripts import each other without cycles, lazy imports included, and no part of the page imports one that is built on it. */

import assert from "node:assert/strict";
import { dirname, join, normalize } from "node:path";
import { test } from "node:test";
import { scripts, sourceOf } from "./scripts.js";

/** What an import by another name than a path leads to, of the page's own scripts. @type {Record<string, readonly string[]>} */
const BY_NAME = {
  "#delivery": ["delivery/site.js", "delivery/one-file.js"],
  "#recordings": ["delivery/site-recordings.js", "delivery/one-file-recordings.js"],
};
/** Scripts that the build or the core's compiler writes, and packages. */
const ELSEWHERE = /^(fasterby-|d3-|uqr$)/;
/** What each folder leaves alone: those are built on it. @type {Record<string, readonly string[]>} */
const ABOVE = {
  parts: ["state", "frame", "questions", "learn", "sheet", "embed"],
  state: ["frame", "questions", "learn", "sheet", "embed"],
  questions: ["frame", "sheet", "embed", "save"],
  learn: ["frame", "sheet", "embed", "save"],
  frame: ["sheet", "embed", "save"],
};

/** @typedef {ReadonlyMap<string, readonly string[]>} Graph which scripts each script imports */

/** The specifiers of static imports, re-exports and lazy imports in a script. @param {string} source */
function specifiers(source) {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");
  return [...code.matchAll(/\b(?:from\s+|import\s+|import\(\s*)"([^"]+)"/g)].map(([, specifier]) => specifier);
}

/** @param {string} script @returns {string[]} */
function importsOf(script) {
  return specifiers(sourceOf(script)).flatMap((specifier) => {
    if (BY_NAME[specifier]) return BY_NAME[specifier];
    if (ELSEWHERE.test(specifier)) return [];
    const path = normalize(join(dirname(script), specifier));
    // What the build writes is not there in a fresh checkout.
    if (!scripts.includes(path)) assert.match(specifier, /^\.\.?\//, `${script} imports ${specifier}`);
    return scripts.includes(path) ? [path] : [];
  });
}

/** The first cycle that is found, as the scripts along it; null where there is none. @param {Graph} graph */
function cycleIn(graph) {
  /** @type {Set<string>} */
  const done = new Set();
  /** @param {string} script @param {readonly string[]} path @returns {string[] | null} */
  function from(script, path) {
    if (path.includes(script)) return [...path.slice(path.indexOf(script)), script];
    if (done.has(script)) return null;
    for (const next of graph.get(script) ?? []) {
      const cycle = from(next, [...path, script]);
      if (cycle) return cycle;
    }
    done.add(script);
    return null;
  }
  for (const script of graph.keys()) {
    const cycle = from(script, []);
    if (cycle) return cycle;
  }
  return null;
}

/** @type {Graph} */
const graph = new Map(scripts.map((script) => [script, importsOf(script)]));

test("static and lazy imports are both followed", () => {
  const source =
    'import { a } from "./a.js";\nexport * from "./b.js";\nimport "./c.js";\nconst d = () => import("./d.js");';
  assert.deepEqual(specifiers(source), ["./a.js", "./b.js", "./c.js", "./d.js"]);
  assert.deepEqual(specifiers('// import("./e.js")\n/** @import { F } from "./f.js" */'), []);
  assert.ok(graph.get("questions/power-or-drag.js")?.includes("questions/power-or-drag/view.js"));
  assert.ok(graph.get("core.js")?.includes("delivery/one-file.js"));
});

test("a cycle is found and named", () => {
  const round = cycleIn(
    new Map([
      ["a", ["b"]],
      ["b", ["c", "d"]],
      ["c", []],
      ["d", ["b"]],
    ]),
  );
  assert.deepEqual(round, ["b", "d", "b"]);
  assert.equal(
    cycleIn(
      new Map([
        ["a", ["b", "c"]],
        ["b", ["c"]],
        ["c", []],
      ]),
    ),
    null,
  );
});

test("no script imports itself, by whatever way round", () => {
  const cycle = cycleIn(graph);
  assert.equal(cycle, null, cycle?.join(" → "));
});

test("no folder imports one that is built on it", () => {
  const upward = [...graph].flatMap(([script, imported]) => {
    const above = ABOVE[script.split("/")[0]] ?? [];
    return imported.filter((other) => above.includes(other.split("/")[0])).map((other) => `${script} → ${other}`);
  });
  assert.deepEqual(upward, []);
});
