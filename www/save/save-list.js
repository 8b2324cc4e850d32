// @ts-check
/** What a question has to save, each with its buttons: its charts, its tables, the figures behind them, and the whole of it. */

import { html, say } from "../parts/html.js";
import { columnTables, csvText, tableRows } from "./csv.js";
import { fileName, hand, questionText } from "./files.js";
import { png, svgText } from "./picture.js";

/** @import { Shown } from "./files.js" */

/** @typedef {{ kind: string, name: string, file: string, element?: Element }} Item `name` is read, `file` is its part of the file's name */
/** @typedef {(shown: Shown, item: Item) => Promise<Blob> | Blob} Make */

/** @type {Record<string, { title: string, note?: string, buttons: [label: string, ending: string, make: Make][] }>} */
const KINDS = {
  chart: {
    title: "Charts",
    buttons: [
      ["SVG", "svg", (_, item) => new Blob([svgText(/** @type {SVGSVGElement} */ (item.element))], { type: "image/svg+xml" })],
      ["PNG", "png", (_, item) => png(/** @type {SVGSVGElement} */ (item.element))],
    ],
  },
  table: {
    title: "Tables, as they are shown",
    buttons: [["CSV", "csv", async (_, item) => csv(await rowsOf(/** @type {HTMLTableElement} */ (item.element)))]],
  },
  columns: {
    title: "The figures behind the charts, in full and in SI units",
    buttons: [["CSV", "csv", ({ answer }, item) => csv(tablesOf(answer).find(({ by }) => by === item.file)?.rows ?? [])]],
  },
  question: {
    title: "The whole question",
    buttons: [["JSON", "json", (shown) => new Blob([questionText(shown)], { type: "application/json" })]],
  },
};

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

  /** @param {Item} item @param {[string, string, Make]} button */
  function saveButton(item, [label, ending, make]) {
    const button = html("button", { type: "button", "aria-label": `Save “${item.name}” as ${label}` }, label);
    button.addEventListener("click", async () => {
      const shown = current();
      if (!shown) return;
      try {
        const name = fileName(shown.question, item.file, ending);
        hand(name, await make(shown, item));
        say(said, `Saved as ${name}.`);
      } catch (error) {
        console.error(error);
        say(said, `“${item.name}” could not be saved as ${label}: ${error instanceof Error ? error.message : String(error)}`);
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
      lists.replaceChildren(...Object.entries(KINDS).flatMap(([kind, { title, buttons }]) => {
        const rows = items.filter((item) => item.kind === kind).map((item) => html("li", {}, html("span", {}, item.name), html("span", { class: "take-buttons" }, ...buttons.map((one) => saveButton(item, one)))));
        return rows.length ? [html("h3", {}, title), html("ul", {}, ...rows)] : [];
      }));
    },
  };
}

/** @param {HTMLElement} host @param {Shown} shown @returns {Item[]} */
function itemsOf(host, { answer }) {
  const charts = Array.from(host.querySelectorAll("svg.chart")).filter((chart) => chart.hasAttribute("viewBox") && !chart.closest("[hidden]"));
  const tables = Array.from(host.querySelectorAll("table")).filter((table) => !table.closest("[hidden], .paper"));
  return [
    ...charts.map((chart) => {
      const name = chart.getAttribute("aria-label") ?? "Chart";
      return { kind: "chart", name, file: chart.querySelector(".iso") ? "map" : name, element: chart };
    }),
    ...tables.map((table) => {
      const name = nameOf(table);
      return { kind: "table", name, file: name, element: table };
    }),
    ...tablesOf(answer).map(({ by, rows }) => ({ kind: "columns", name: rows[0].join(", "), file: by })),
    { kind: "question", name: "What was asked and what was answered", file: "" },
  ];
}

/** A fold that only says "As a table" is named by how its caption begins. @param {HTMLTableElement} table */
function nameOf(table) {
  const fold = /** @type {HTMLElement | null} */ (table.closest("[data-fold]"));
  const caption = table.caption?.textContent?.split(/[,.;]/)[0];
  return (fold?.dataset.fold === "table" ? null : fold?.querySelector(".fold-name")?.textContent) || caption || "Table";
}

/** @param {any} answer */
function tablesOf(answer) {
  return columnTables(answer.columns ?? {});
}

/** @param {readonly (readonly (string | number)[])[]} rows */
function csv(rows) {
  return new Blob([csvText(rows)], { type: "text/csv;charset=utf-8" });
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
      setTimeout(() => reject(new Error("it is still being worked out.")), MOST_MS);
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
