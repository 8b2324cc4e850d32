// @ts-check
/** The map as a table: finish times for round powers and drag areas about the rider's own. */

import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { backgroundWork } from "../shared/background-work.js";
import { effortOf } from "../shared/effort.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
/** Between columns and between rows. */
const STEP = { power_w: 10, cda_m2: 0.01 };
/** The core's map has this many points for each column and row shown. */
const EVERY = 4;
const COLUMNS = 9;
const ROWS = 8;

/** @param {Tools} tools @param {"power-or-drag"} question */
export function timesTable({ worker }, question) {
  const grid = table({ caption: words("timesCaption"), thin: true });
  const trouble = html("p", { class: "soft", hidden: true }, words("timesTrouble"));
  /** @type {State | null} */
  let shown = null;
  const work = backgroundWork({
    worker,
    question,
    slot: `${question} table`,
    keepsLast: true,
    take: (/** @type {Answer} */ { columns }) => ({ value: columns, done: true }),
    onChange: write,
  });

  /** @param {State} state @param {Answer} answer */
  function requestFor(state, { base_power_w, base_cda_m2 }) {
    const low_w = Math.max(STEP.power_w, (Math.round(base_power_w / STEP.power_w) - (COLUMNS >> 1)) * STEP.power_w);
    const low_m2 = Math.max(0.1, Math.round(base_cda_m2 / STEP.cda_m2 - (ROWS >> 1)) * STEP.cda_m2);
    const details = state.with[question];
    return {
      scenario: state.scenario,
      with: {
        ...details,
        effort: effortOf(details.effort),
        map_power_w: [low_w, low_w + (COLUMNS - 1) * STEP.power_w],
        map_cda_m2: [low_m2, low_m2 + (ROWS - 1) * STEP.cda_m2],
      },
    };
  }

  function write() {
    trouble.hidden = work.state() !== "failed";
    const columns = work.value();
    if (!columns || !shown) return;
    const { power_w, cda_m2, time_s } = columns;
    const { units: read } = shown;
    const across = Array.from({ length: COLUMNS }, (_, n) => n * EVERY);
    const down = Array.from({ length: ROWS }, (_, n) => n * EVERY);
    grid.update({
      columns: ["CdA", ...across.map((column) => units.quantity("power", power_w[column], read, { digits: 0 }))],
      rows: down.map((row) => [
        units.quantity("area", cda_m2[row], read, { digits: 2 }),
        ...across.map((column) => units.time(time_s[row * power_w.length + column])),
      ]),
    });
  }

  return {
    element: html("div", {}, grid.element, trouble),
    /** @param {State | null} state null while nobody looks @param {Answer} answer */
    update(state, answer) {
      shown = state;
      if (state) return work.update(requestFor(state, answer));
      // Figures that nobody keeps up to date are not left standing.
      if (work.state() === "idle") return;
      grid.update({ columns: [], rows: [] });
      work.forget();
    },
    destroy() {
      work.destroy();
      grid.destroy();
    },
  };
}
