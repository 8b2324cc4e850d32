// @ts-check
/** Which position a lap or a run was ridden in. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */

const words = book("drag-test");

/** @param {Tools} tools @param {{ path: string, label: string, names: readonly string[] }} options */
export function positionPick({ store }, { path, label, names }) {
  const select = html(
    "select",
    { "aria-label": label, "data-path": path },
    ...names.map((name, place) =>
      html("option", { value: String(place) }, name || words("positionNumber", { number: place + 1 })),
    ),
  );
  select.addEventListener("change", () => store.set(path, Number(select.value)));
  return {
    element: select,
    /** @param {number} position */
    update(position) {
      select.hidden = names.length < 2;
      select.value = String(position);
    },
  };
}
