// @ts-check
/** How a position is left, kind by kind: head down, sitting up for a junction, reaching for a bottle. */

import most from "fasterby-most";
import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { nameInput, numberRows, removeButton, tickedPart } from "./list-parts.js";

/** @import { Page } from "../frame/page.js" */

const say = book("sheet");

/** @param {Page} page @param {string} path the list's @param {readonly unknown[] | undefined} kinds @param {() => number} cda @param {string} label */
export function lapsesPart(page, path, kinds, cda, label) {
  const { store, filler } = page;
  /** @type {ReturnType<typeof nameInput>[]} */
  const names = [];
  const part = tickedPart(
    { label, there: Boolean(kinds?.length), onChange: (on) => store.set(path, on ? [filler.lapse(cda())] : undefined) },
    () => {
      const several = (kinds ?? []).length > 1;
      const parts = (kinds ?? []).map((_, kind) => {
        const number = { number: kind + 1 };
        const name = nameInput(page, `${path}[${kind}].name`, say("lapseName", number));
        names.push(name);
        const numbers = numberRows(
          page,
          `${path}[${kind}]`,
          ["share", "cda_m2"],
          "hold",
          several ? say("lapseNumber", number) : undefined,
        );
        return {
          rows: numbers.rows,
          elements: [
            several && h("label", { class: "row" }, h("span", { class: "row-label" }, say("lapseWhat")), name.input),
            ...numbers.elements,
            several &&
              h(
                "p",
                { class: "row-actions" },
                removeButton(page, path, kind, say("remove"), say("removeLapse", number)),
              ),
          ],
        };
      });
      const more =
        parts.length < most.lapses &&
        h(
          "button",
          {
            type: "button",
            onclick: () =>
              store.set(path, [
                ...store.at(path),
                { ...filler.lapse(cda()), share: { value: 0.01, sd: 0.01, source: "typical" } },
              ]),
          },
          say("addLapse"),
        );
      return {
        rows: parts.flatMap(({ rows }) => rows),
        elements: [...parts.flatMap(({ elements }) => elements), more],
      };
    },
  );
  return {
    ...part,
    update() {
      for (const name of names) name.update();
    },
  };
}
