// @ts-check
/** What a question has to save, each with its buttons: its charts, its tables, the figures behind them, and the whole of it. */

import { html, say } from "../parts/html.js";
import { decimalMark } from "../parts/number-text.js";
import { book } from "../words/index.js";
import { columnTables, csvText, tableRows } from "./csv.js";
import { fileName, hand, questionText } from "./files.js";
import { png, svgText } from "./picture.js";

/** @import { Request } from "../questions/shared/request.js" */
/** @import { PositionChoice } from "../types/core.d.ts" */
/** @typedef {Parameters<typeof columnTables>[0]} Columns */
/** @import { Shown } from "./files.js" */

const words = book("save");

/** @typedef {{ kind: keyof typeof KINDS, name: string, file: string, element?: Element }} Item `name` is read, `file` is its part of the file's name */
/** @typedef {(shown: Shown, item: Item) => Promise<Blob> | Blob} Make */
/** @typedef {[label: string, ending: string, make: Make]} Button */

/** The buttons of each kind, in the order that they are listed. */
const KINDS = {
  charts: /** @type {Button[]} */ ([
    [
      "SVG",
      "svg",
      (_, item) => new Blob([svgText(/** @type {SVGSVGElement} */ (item.element))], { type: "image/svg+xml" }),
    ],
    ["PNG", "png", (_, item) => png(/** @type {SVGSVGElement} */ (item.element))],
  ]),
  tables: /** @type {Button[]} */ ([
    [
      "CSV",
      "csv",
      async (_, item) =>
        csv(await rowsOf(/** @type {HTMLTableElement} */ (item.element)), decimalMark() === "," ? ";" : ","),
    ],
  ]),
  columns: /** @type {Button[]} */ ([
    [
      "CSV",
      "csv",
      ({ answer, request }, item) => csv(tablesOf(answer, request).find(({ by }) => by === item.file)?.rows ?? []),
    ],
  ]),
  question: /** @type {Button[]} */ ([
    ["JSON", "json", (shown) => new Blob([questionText(shown)], { type: "application/json" })],
  ]),
};

const KIND_NAMES = /** @type {(keyof typeof KINDS)[]} */ (Object.keys(KINDS));
/** How long a table may take to fill once its fold is open. */
const MOST_MS = 5000;

/**
 * @param {HTMLElement} element takes the list
 * @param {HTMLElement} host where the question is
 * @param {() => Shown | null} current
 */
export function saveList(element, host, current) {
  const said = html("p", { class: "soft", role: "status" });
  const lists = html("div");
  element.append(lists, said);
  let listed = "";

  /** @param {Item} item @param {Button} button */
  function saveButton(item, [label, ending, make]) {
    const button = html(
      "button",
      { type: "button", "aria-label": words("saveAs", { name: item.name, kind: label }) },
      label,
    );
    button.addEventListener("click", async () => {
      const shown = current();
      if (!shown) return;
      try {
        const name = fileName(shown.question, item.file, ending, shown.title);
        hand(name, await make(shown, item));
        say(said, words("savedAs", { file: name }));
      } catch (error) {
        console.error(error);
        say(
          said,
          words("notSaved", {
            name: item.name,
            kind: label,
            why: error instanceof Error ? error.message : String(error),
          }),
        );
      }
    });
    return button;
  }

  return {
    update() {
      const shown = current();
      if (!shown) return;
      const items = itemsOf(host, shown);
      const next = items.map(({ kind, name }) => `${kind} ${name}`).join("\n");
      if (next === listed) return;
      listed = next;
      lists.replaceChildren(
        ...KIND_NAMES.flatMap((kind) => {
          const rows = items
            .filter((item) => item.kind === kind)
            .map((item) =>
              html(
                "li",
                {},
                html("span", {}, item.name),
                html("span", { class: "take-buttons" }, ...KINDS[kind].map((one) => saveButton(item, one))),
              ),
            );
          return rows.length ? [html("h3", {}, words(kind)), html("ul", {}, ...rows)] : [];
        }),
      );
    },
  };
}

/** @param {HTMLElement} host @param {Shown} shown @returns {Item[]} */
function itemsOf(host, { answer, request }) {
  const charts = Array.from(host.querySelectorAll("svg.chart")).filter(
    (chart) => chart.hasAttribute("viewBox") && !chart.closest("[hidden]"),
  );
  const tables = Array.from(host.querySelectorAll("table")).filter((table) => !table.closest("[hidden], .paper"));
  return [
    ...charts.map((chart) => {
      const name = chart.getAttribute("aria-label") ?? words("chart");
      return {
        kind: /** @type {const} */ ("charts"),
        name,
        file: chart.querySelector(".iso") ? "map" : name,
        element: chart,
      };
    }),
    ...tables.map((table) => {
      const name = nameOf(table);
      return { kind: /** @type {const} */ ("tables"), name, file: name, element: table };
    }),
    ...tablesOf(answer, request).map(({ by, rows }) => ({
      kind: /** @type {const} */ ("columns"),
      name: rows[0].join(", "),
      file: by,
    })),
    { kind: /** @type {const} */ ("question"), name: words("askedAndAnswered"), file: "" },
  ];
}

/** A fold that only says "As a table" is named by how its caption begins. @param {HTMLTableElement} table */
function nameOf(table) {
  const fold = /** @type {HTMLElement | null} */ (table.closest("[data-fold]"));
  const caption = table.caption?.textContent?.split(/[,.;]/)[0];
  return (
    (fold?.dataset.fold === "table" ? null : fold?.querySelector(".fold-name")?.textContent) ||
    caption ||
    words("table")
  );
}

/** @param {unknown} answer @param {Request} request */
function tablesOf(answer, request) {
  const { columns = {}, choices } = /** @type {{ columns?: Columns, choices?: PositionChoice[] }} */ (answer);
  return columnTables(columns, choicesOf(choices, request));
}

/** What the choices of an answer are called, each by another name. @param {readonly PositionChoice[] | undefined} choices @param {Request} request @returns {string[]} */
function choicesOf(choices, { scenario }) {
  if (!Array.isArray(choices)) return [];
  const names = choices.map(({ position, worn }) =>
    [scenario.positions[position]?.name, scenario.positions[position]?.equipment?.[worn ?? -1]?.name]
      .filter(Boolean)
      .join(", "),
  );
  return names.map((name, index) =>
    name && names.indexOf(name) === names.lastIndexOf(name) ? name : `${index + 1}${name ? ` ${name}` : ""}`,
  );
}

/** @param {readonly (readonly (string | number)[])[]} rows @param {"," | ";"} [separator] */
function csv(rows, separator) {
  return new Blob([csvText(rows, separator)], { type: "text/csv;charset=utf-8" });
}

/**
 * The rows of a table. One that is empty is worked out only while its fold is open.
 * @param {HTMLTableElement} table @returns {Promise<string[][]>}
 */
async function rowsOf(table) {
  const fold = table.closest("details");
  if (!isEmpty(table) || !fold) return tableRows(table);
  const wasOpen = fold.open;
  fold.open = true;
  try {
    await new Promise((resolve, reject) => {
      const observer = new MutationObserver(() => {
        if (isEmpty(table)) return;
        observer.disconnect();
        resolve(undefined);
      });
      observer.observe(table, { childList: true, subtree: true });
      setTimeout(() => reject(new Error(words("stillWorking"))), MOST_MS);
    });
    return tableRows(table);
  } finally {
    fold.open = wasOpen;
  }
}

/** @param {HTMLTableElement} table */
function isEmpty(table) {
  return !table.tBodies[0]?.rows.length;
}
