// @ts-check
/** A short table of named results: a mark and a name, a figure, and how it differs. */

import { book } from "../words/index.js";
import { html, say, set } from "./html.js";
import { mark } from "./marks.js";

/** @import { Words } from "./html.js" */
/** @import { MarkName } from "./marks.js" */

const words = book("page");

/** @typedef {{ mark?: MarkName | null, name: Words, value: Words, difference?: Words, soft?: boolean }} Line */

/**
 * @param {object} options
 * @param {string} options.caption
 * @param {readonly [string, string, string]} [options.headings]
 */
export function lines({ caption, headings = [words("lines.ride"), words("lines.finish"), words("lines.difference")] }) {
  const body = html("tbody");
  const element = html(
    "table",
    { class: "lines" },
    html("caption", { class: "say" }, caption),
    html(
      "thead",
      { class: "say" },
      html("tr", {}, ...headings.map((heading) => (heading ? html("th", { scope: "col" }, heading) : html("td")))),
    ),
    body,
  );

  /** @type {{ row: HTMLTableRowElement, name: HTMLElement, icon: HTMLElement, value: HTMLElement, difference: HTMLElement, mark: string }[]} */
  const made = [];
  function addRow() {
    const icon = html("span", { class: "icon" });
    const name = html("span");
    const value = html("td");
    const difference = html("td");
    const row = html(
      "tr",
      {},
      html("th", { scope: "row" }, html("span", { class: "named" }, icon, name)),
      value,
      difference,
    );
    body.append(row);
    made.push({ row, name, icon, value, difference, mark: "" });
  }

  return {
    element,
    /** @param {readonly Line[]} rows */
    update(rows) {
      while (made.length < rows.length) addRow();
      while (made.length > rows.length) made.pop()?.row.remove();
      rows.forEach((line, index) => {
        const cells = made[index];
        if (cells.mark !== (line.mark ?? "")) {
          cells.mark = line.mark ?? "";
          cells.icon.replaceChildren(...(line.mark ? [mark(line.mark)] : []));
        }
        set(cells.icon, { hidden: !line.mark });
        say(cells.name, line.name);
        say(cells.value, line.value);
        say(cells.difference, line.difference ?? "");
        cells.difference.className = line.soft ? "soft" : "";
      });
    },
  };
}
