// @ts-check
/** Rows of a test that are typed in one after the other: runs at constant speed, and coast-downs. */

import most from "fasterby-most";
import { html } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { book } from "../../words/index.js";
import { positionPick } from "./position-pick.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { BoundNumber } from "../../frame/bound-number.js" */
/** @import { Words } from "../../parts/html.js" */

/** @typedef {{ position?: number, excluded?: string, wind_head_m_s?: number, grade?: number }} TypedRow */

const words = book("drag-test");

/**
 * @template {TypedRow} Row
 * @param {Tools} tools
 * @param {object} options
 * @param {"runs" | "coast_downs"} options.list where they stand among the question's own
 * @param {Row} options.first what a first one begins from
 * @param {{ add: string, removed: string, most: string }} options.says
 * @param {(number: number) => { position: string, used: string, remove: string, wind: string, grade: string }} options.labels
 * @param {(at: string, number: number) => { numbers: BoundNumber[], words: Words }} options.numbers what each gives beyond wind and slope
 */
export function typedRows(tools, { list: name, first, says, labels, numbers }) {
  const { store } = tools;
  const at = `with.drag-test.${name}`;
  const list = html("ol", { class: "efforts" });
  const add = html("button", { type: "button" }, says.add);
  const element = html("div", { "data-changes": at }, list, html("p", { class: "row-actions" }, add));
  /** @type {string[]} */
  let names = [];
  const all = () => /** @type {Row[]} */ (store.at(at) ?? []);
  const rows = keyedList(list, (index) =>
    typedRow(tools, { at, index, names, labels: labels(index + 1), ...numbers(`${at}[${index}]`, index + 1) }, () =>
      remove(index),
    ),
  );

  add.addEventListener("click", () => {
    const before = all();
    if (before.length >= most.drag_rows) return tools.notify(says.most);
    store.set(at, [...before, following(before, first, store.get().scenario.positions.length)]);
    requestAnimationFrame(() => rows.rows().at(-1)?.focus());
  });

  /** @param {number} index */
  function remove(index) {
    store.set(
      at,
      all().filter((_, place) => place !== index),
    );
    tools.notify(says.removed, { label: words("undo"), run: () => store.undo() });
    (rows.rows()[Math.min(index, all().length - 1)] ?? { focus: () => add.focus() }).focus();
  }

  return {
    element,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} whether the error is shown here */
    update(state, error) {
      const shown = all();
      names = state.scenario.positions.map((position) => position.name);
      list.hidden = shown.length === 0;
      return rows
        .update(shown.map((_, index) => JSON.stringify([index, ...names])))
        .map((row, index) => row.update(state, shown[index], error))
        .includes(true);
    },
  };
}

/** The next row of a test: the same numbers, in the order A, B, B, A. @template {TypedRow} Row @param {Row[]} rows @param {Row} first @param {number} positions @returns {Row} */
function following(rows, first, positions) {
  const { excluded: _, ...last } = rows.at(-1) ?? first;
  const turn = [0, 1, 1, 0][rows.length % 4];
  return /** @type {Row} */ ({ ...last, position: positions > 1 ? turn : 0 });
}

/**
 * @param {Tools} tools
 * @param {{ at: string, index: number, names: string[], labels: { position: string, used: string, remove: string, wind: string, grade: string }, numbers: BoundNumber[], words: Words }} options
 * @param {() => void} remove
 */
function typedRow(tools, { at: list, index, names, labels, numbers: own, words: says }, remove) {
  const at = `${list}[${index}]`;
  const slope = tools.field("scenario.course.grade");
  const given = (/** @type {"wind_head_m_s" | "grade"} */ name) => () =>
    /** @type {TypedRow | undefined} */ (tools.store.at(at))?.[name] ?? 0;
  const wind = tools.number({
    path: `${at}.wind_head_m_s`,
    kind: "wind",
    label: labels.wind,
    value: given("wind_head_m_s"),
  });
  const grade = tools.number({
    path: `${at}.grade`,
    kind: "grade",
    min: slope?.min,
    max: slope?.max,
    label: labels.grade,
    value: given("grade"),
  });
  const position = positionPick(tools, { path: `${at}.position`, label: labels.position, names });
  const use = html("input", { type: "checkbox", "aria-label": labels.used });
  use.addEventListener("change", () => tools.store.set(`${at}.excluded`, use.checked ? undefined : "rider"));
  const away = html("button", { type: "button", "aria-label": labels.remove }, words("remove"));
  away.addEventListener("click", remove);
  const numbers = [...own, wind, grade];
  const element = html(
    "li",
    {},
    html("span", { class: "effort-numbers" }, ...[says].flat()),
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
    focus: own[0].focus,
    /** @param {State} state @param {TypedRow | undefined} row @param {CoreError | null} error */
    update(state, row, error) {
      if (!row) return false;
      position.update(row.position ?? 0);
      use.checked = row.excluded === undefined;
      return numbers.map((one) => one.update(state, error)).includes(true);
    },
  };
}
