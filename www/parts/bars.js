// @ts-check
/** Named amounts as bars on one scale, with their figures: what makes up a whole, or what each thing is worth. */

import { html, say, set } from "./html.js";
/** @import { Meaning, Words } from "./html.js" */

/**
 * @typedef {object} Bar
 * @property {Words} name
 * @property {number} value Negative ones grow to the left of zero.
 * @property {number | null} [sd] A thin line, one standard deviation either way.
 * @property {string} text The figure as words: "221 W".
 * @property {string} [note] A softer second figure: "85 %".
 * @property {Meaning | null} [meaning]
 */

/**
 * @param {object} options
 * @param {string} options.caption
 * @param {readonly [string, string]} options.headings of its columns
 */
export function bars({ caption, headings }) {
  const body = html("tbody");
  const element = html(
    "table",
    { class: "bars" },
    html("caption", { class: "say" }, caption),
    html(
      "thead",
      { class: "say" },
      html("tr", {}, html("th", { scope: "col" }, headings[0]), html("th", { scope: "col" }, headings[1]), html("td")),
    ),
    body,
  );
  /** @type {{ row: HTMLElement, name: HTMLElement, figure: HTMLElement, bar: HTMLElement, whisker: HTMLElement }[]} */
  const made = [];

  function addRow() {
    const name = html("th", { scope: "row" });
    const figure = html("td", { class: "amount" });
    const bar = html("span", { class: "length" });
    const whisker = html("span", { class: "spread" });
    const row = html(
      "tr",
      {},
      name,
      figure,
      html("td", { class: "drawn", "aria-hidden": "true" }, html("span", { class: "track" }, bar, whisker)),
    );
    body.append(row);
    made.push({ row, name, figure, bar, whisker });
  }

  return {
    element,
    /** @param {readonly Bar[]} rows */
    update(rows) {
      while (made.length < rows.length) addRow();
      while (made.length > rows.length) made.pop()?.row.remove();
      const low = Math.min(0, ...rows.map((row) => row.value - (row.sd ?? 0)));
      const high = Math.max(0, ...rows.map((row) => row.value + (row.sd ?? 0)));
      const span = high - low || 1;
      const percent = (/** @type {number} */ amount) => `${(100 * amount) / span}%`;
      rows.forEach((row, index) => {
        const { name, figure, bar, whisker } = made[index];
        say(name, row.name);
        say(figure, row.note ? [row.text, " ", html("span", { class: "soft" }, row.note)] : row.text);
        set(bar, { class: `length ${row.meaning ?? ""}` });
        bar.style.left = percent(Math.min(0, row.value) - low);
        bar.style.width = percent(Math.abs(row.value));
        set(whisker, { hidden: !row.sd });
        whisker.style.left = percent(row.value - (row.sd ?? 0) - low);
        whisker.style.width = percent(2 * (row.sd ?? 0));
      });
    },
  };
}
