// @ts-check
/** Runs at constant speed, typed in: without a recording this is enough. */

import { html } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { book } from "../../words/index.js";
import { MOST_ROWS } from "./most.js";
import { positionPick } from "./position-pick.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { RunForm } from "../../types/page.d.ts" */

const words = book("drag-test");
const AT = "with.drag-test.runs";
/** What a first run begins from, m/s and W. */
const FIRST = { speed_m_s: 11, power_w: 230 };

/** @param {Tools} tools */
export function runsEditor(tools) {
  const { store } = tools;
  const list = html("ol", { class: "efforts" });
  const add = html("button", { type: "button" }, words("addRun"));
  const element = html("div", { "data-changes": AT }, list, html("p", { class: "row-actions" }, add));
  /** @type {string[]} */
  let names = [];
  const rows = keyedList(list, (index) => runRow(tools, index, names, () => remove(index)));
  const runs = () => /** @type {RunForm[]} */ (store.at(AT) ?? []);

  add.addEventListener("click", () => {
    const all = runs();
    if (all.length >= MOST_ROWS) return tools.notify(words("mostRuns", { count: MOST_ROWS }));
    store.set(AT, [...all, following(all, store.get().scenario.positions.length)]);
    requestAnimationFrame(() => rows.rows().at(-1)?.focus());
  });

  /** @param {number} index */
  function remove(index) {
    store.set(
      AT,
      runs().filter((_, at) => at !== index),
    );
    tools.notify(words("runRemoved"), { label: words("undo"), run: () => store.undo() });
    (rows.rows()[Math.min(index, runs().length - 1)] ?? { focus: () => add.focus() }).focus();
  }

  return {
    element,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} whether the error is shown here */
    update(state, error) {
      const { runs: all } = state.with["drag-test"];
      names = state.scenario.positions.map(({ name }) => name);
      list.hidden = all.length === 0;
      const shown = rows.update(all.map((_, index) => JSON.stringify([index, ...names])));
      return shown.map((row) => row.update(state, error)).includes(true);
    },
  };
}

/** The next run of a test: the same numbers, in the order A, B, B, A. @param {RunForm[]} runs @param {number} positions @returns {RunForm} */
function following(runs, positions) {
  const { excluded: _, ...last } = runs.at(-1) ?? { position: 0, ...FIRST };
  const turn = [0, 1, 1, 0][runs.length % 4];
  return { ...last, position: positions > 1 ? turn : 0 };
}

/** @param {Tools} tools @param {number} index @param {string[]} names @param {() => void} remove */
function runRow(tools, index, names, remove) {
  const at = `${AT}[${index}]`;
  const of = { number: index + 1 };
  const speed = tools.number({ path: `${at}.speed_m_s`, label: words("speedOf", of) });
  const power = tools.number({ path: `${at}.power_w`, meaning: "power", label: words("powerOf", of) });
  const wind = tools.number({
    path: `${at}.wind_head_m_s`,
    kind: "wind",
    label: words("windOf", of),
    value: (state) => state.with["drag-test"].runs[index]?.wind_head_m_s ?? 0,
  });
  const slope = tools.field("scenario.course.grade");
  const grade = tools.number({
    path: `${at}.grade`,
    kind: "grade",
    min: slope?.min,
    max: slope?.max,
    label: words("gradeOf", of),
    value: (state) => state.with["drag-test"].runs[index]?.grade ?? 0,
  });
  const position = positionPick(tools, { path: `${at}.position`, label: words("positionOfRun", of), names });
  const use = html("input", { type: "checkbox", "aria-label": words("usedOf", of) });
  use.addEventListener("change", () => tools.store.set(`${at}.excluded`, use.checked ? undefined : "rider"));
  const away = html("button", { type: "button", "aria-label": words("removeRun", of) }, words("remove"));
  away.addEventListener("click", remove);
  const numbers = [speed, power, wind, grade];
  const element = html(
    "li",
    {},
    html(
      "span",
      { class: "effort-numbers" },
      ...words.parts("runRow", { number: String(of.number), speed: speed.element, power: power.element }),
    ),
    html(
      "span",
      { class: "effort-facts" },
      ...words.parts("runFacts", { wind: wind.element, grade: grade.element }),
      position.element,
      html("label", { class: "check" }, use, words("used")),
    ),
    away,
    ...numbers.map(({ note }) => note),
  );
  return {
    element,
    focus: speed.focus,
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      const run = state.with["drag-test"].runs[index];
      if (!run) return false;
      position.update(run.position ?? 0);
      use.checked = run.excluded === undefined;
      return numbers.map((one) => one.update(state, error)).includes(true);
    },
  };
}
