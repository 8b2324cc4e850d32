// @ts-check
/** Keeps what a test found in its positions, with when and how it was found, so that every question uses it. */

import most from "fasterby-most";
import { html, set } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { listOf } from "../shared/list.js";
import { area, kept as keptArea } from "./digits.js";
import { positionName } from "./names.js";
import { today } from "./today.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { DragTestAnswer as Answer, KeptDrag } from "../../types/core.d.ts" */
/** @import { Piece, Shell } from "../shared/shell.js" */

const words = book("drag-test");

/** @param {Tools} tools @param {Shell<Answer>} page @returns {Piece<Answer>} */
export function keepPart(tools, page) {
  const { store } = tools;
  const button = html("button", { type: "button", class: "use" }, words("keep"));
  const said = html("p", { class: "soft" });
  const day = html("input", { type: "date" });
  const ridden = html("label", { class: "soft" }, words("riddenOn"), " ", day);
  const element = html("div", { class: "keep" }, html("p", { class: "row-actions" }, button, ridden), said);
  day.addEventListener("change", () => store.set("with.drag-test.date", day.value || undefined));
  button.addEventListener("click", () => {
    const shown = page.shown();
    if (!shown) return;
    const date = shown.state.with["drag-test"].date ?? today();
    store.setAll(usable(shown.state, shown.answer).flatMap((kept) => changes(shown.state, shown.answer, kept, date)));
    tools.notify(words("keptNow"), { label: words("undo"), run: () => store.undo() });
  });
  return {
    element,
    draw({ state, answer }) {
      const kept = usable(state, answer);
      set(element, { hidden: kept.length === 0 });
      if (!kept.length) return;
      if (document.activeElement !== day) day.value = state.with["drag-test"].date ?? today();
      said.textContent = words("keepSays", {
        list: listOf(
          kept.map(({ position, cda_m2, sd_m2, tests }) =>
            words("keptAs", {
              count: tests,
              name: positionName(state, position),
              area: area(cda_m2, sd_m2, state.units),
              spread: spread(sd_m2, state),
            }),
          ),
        ),
      });
    },
  };
}

/** @param {number} sd_m2 @param {State} state */
const spread = (sd_m2, { units }) => area(sd_m2, sd_m2, units);

/** Those of positions that there are. @param {State} state @param {Answer} answer */
const usable = ({ scenario }, { kept }) => kept.filter(({ position }) => position < scenario.positions.length);

/** @param {State} state @param {Answer} answer @param {KeptDrag} kept @param {string} date @returns {[path: string, value: unknown][]} */
function changes({ scenario }, { laps }, { position, cda_m2, sd_m2, test }, date) {
  const at = `scenario.positions[${position}]`;
  const { drag_tests = [] } = scenario.positions[position];
  const kinds = new Set(laps.filter((row) => row.position === position && !row.left_out).map(({ kind }) => kind));
  const method =
    kinds.size > 1
      ? "mixed"
      : /** @type {const} */ ({ lap: "laps", run: "runs", coast_down: "coast_downs" })[[...kinds][0] ?? "lap"];
  const { temperature_c, wind_speed_m_s } = scenario.conditions;
  const added = {
    date,
    method,
    ...test,
    ...(temperature_c === undefined ? {} : { temperature_c: amountOf(temperature_c) }),
    wind_speed_m_s: amountOf(wind_speed_m_s),
  };
  const others = drag_tests.filter((one) => one.date !== date).slice(1 - most.drag_tests);
  return [
    [`${at}.cda_m2`, { value: keptArea(cda_m2), sd: keptArea(sd_m2), source: "measured" }],
    [`${at}.drag_tests`, [...others, added]],
  ];
}
