// @ts-check
/** A table of numbers. A wide one shows every other column on a phone; one that is wider still scrolls inside itself. */

import { html, say, set } from "./html.js";
/** @import { Words } from "./html.js" */

/**
 * @param {object} options
 * @param {string} options.caption
 * @param {boolean} [options.thin] Whether a narrow page may leave out every other column of figures.
 * @param {boolean} [options.lined] Whether cells hold several lines.
 */
export function table({ caption, thin = false, lined = false }) {
  const words = html("caption", {}, caption);
  const head = html("thead");
  const body = html("tbody");
  const grid = html(
    "table",
    { class: ["grid", thin && "thin", lined && "lined"].filter(Boolean).join(" ") },
    words,
    head,
    body,
  );
  const element = html("div", { class: "table-region" }, grid);
  // Only a table that scrolls needs to be reached by the keyboard.
  const observer = new ResizeObserver(() => {
    const scrolls = element.scrollWidth > element.clientWidth + 1;
    set(element, {
      tabindex: scrolls ? 0 : null,
      role: scrolls ? "region" : null,
      "aria-label": scrolls ? words.textContent : null,
    });
  });
  observer.observe(element);
  let shape = "";

  return {
    element,
    /** @param {{ caption?: string, columns: readonly string[], rows: readonly (readonly Words[])[] }} next
     *  The first column names the rows. */
    update(next) {
      if (next.caption !== undefined) say(words, next.caption);
      const nextShape = `${next.columns.length} ${next.rows.length}`;
      if (shape !== nextShape) {
        shape = nextShape;
        head.replaceChildren(html("tr", {}, ...next.columns.map(() => html("th", { scope: "col" }))));
        body.replaceChildren(
          ...next.rows.map(() =>
            html(
              "tr",
              {},
              ...next.columns.map((_, column) => (column === 0 ? html("th", { scope: "row" }) : html("td"))),
            ),
          ),
        );
      }
      for (const [column, name] of next.columns.entries()) say(head.rows[0].cells[column], name);
      for (const [index, row] of next.rows.entries()) {
        for (const [column, cell] of row.entries()) say(body.rows[index].cells[column], cell);
      }
    },
    destroy() {
      observer.disconnect();
    },
  };
}
