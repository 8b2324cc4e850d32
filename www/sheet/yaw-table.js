// @ts-check
/** A table of drag by yaw, of a position or of a piece of equipment. */

import { h } from "../frame/dom.js";
import { uniqueId } from "../parts/html.js";
import { readNumber } from "../parts/number-text.js";
import { number } from "../units.js";
import { book } from "../words/index.js";

/** @import { Page } from "../frame/page.js" */

/** @typedef {{ yaw_deg: number, ratio: number }} YawRow */

const say = book("sheet");
const YAW_START = [
  { yaw_deg: 0, ratio: 1 },
  { yaw_deg: 10, ratio: 1 },
];

/** @param {Page} page @param {string} path @param {YawRow[] | undefined} rows */
export function yawTable({ store }, path, rows) {
  const label = uniqueId("yaw");
  const box = h("input", {
    type: "checkbox",
    checked: rows !== undefined,
    onchange: () => store.set(path, box.checked ? YAW_START : undefined),
  });
  /** @param {number} row @param {"yaw_deg"|"ratio"} name @param {string} label */
  const cell = (row, name, label) => {
    const input = h("input", {
      inputmode: "decimal",
      autocomplete: "off",
      "aria-label": label,
      onchange: () => store.settle(),
      oninput: () => {
        const { value } = readNumber(input.value, { unit: "", digits: 3 });
        input.setAttribute("aria-invalid", String(value === undefined));
        if (value !== undefined) store.set(`${path}[${row}].${name}`, value, { merge: `${path}[${row}].${name}` });
      },
    });
    return input;
  };
  const inputs = (rows ?? []).map((_, row) => [
    cell(row, "yaw_deg", say("position.yawCell", { row: row + 1 })),
    cell(row, "ratio", say("position.ratioCell", { row: row + 1 })),
  ]);
  const table =
    rows &&
    h(
      "table",
      { class: "yaw", "aria-labelledby": label },
      h(
        "thead",
        {},
        h(
          "tr",
          {},
          h("th", { scope: "col" }, say("position.yawColumn")),
          h("th", { scope: "col" }, say("position.ratioColumn")),
          h("th", { scope: "col" }, h("span", { class: "say" }, say("remove"))),
        ),
      ),
      h(
        "tbody",
        {},
        ...inputs.map((pair, row) =>
          h(
            "tr",
            {},
            ...pair.map((input) => h("td", {}, input)),
            h(
              "td",
              {},
              inputs.length > 1 &&
                h(
                  "button",
                  {
                    type: "button",
                    "aria-label": say("position.removeRow", { row: row + 1 }),
                    onclick: () =>
                      store.set(
                        path,
                        store.at(path).filter((/** @type {YawRow} */ _, /** @type {number} */ at) => at !== row),
                      ),
                  },
                  say("remove"),
                ),
            ),
          ),
        ),
      ),
    );
  const more =
    rows &&
    h(
      "button",
      {
        type: "button",
        onclick: () =>
          store.set(path, [
            ...store.at(path),
            { yaw_deg: store.at(path).at(-1).yaw_deg + 5, ratio: store.at(path).at(-1).ratio },
          ]),
      },
      say("position.addRow"),
    );
  return {
    elements: [
      h("label", { class: "check", id: label }, box, say("position.yaw")),
      table,
      more,
      rows && h("p", { class: "row-hint" }, ...say.parts("position.yawHint")),
    ],
    /** @param {YawRow[] | undefined} now */
    update(now) {
      now?.forEach((row, at) => {
        const [yaw, ratio] = inputs[at] ?? [];
        if (yaw && document.activeElement !== yaw) yaw.value = number(row.yaw_deg, { digits: 3, atLeast: 0 });
        if (ratio && document.activeElement !== ratio) ratio.value = number(row.ratio, { digits: 3, atLeast: 0 });
      });
    },
  };
}
