// @ts-check
/** The map as a table: finish times for round powers and drag areas about the rider's own. */

import { html } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import { same } from "../../state/scenario.js";
import { book } from "../../words/index.js";
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

/** @param {Tools} tools @param {string} question */
export function timesTable(tools, question) {
  const { units } = tools;
  const grid = table({ caption: words("timesCaption"), thin: true });
  const trouble = html("p", { class: "soft", hidden: true }, words("timesTrouble"));
  const element = html("div", {}, grid.element, trouble);
  /** @type {any} */
  let asked = null;

  /** @param {State} state @param {Answer} answer */
  async function show(state, answer) {
    const low_w = Math.max(
      STEP.power_w,
      (Math.round(answer.base_power_w / STEP.power_w) - (COLUMNS >> 1)) * STEP.power_w,
    );
    const low_m2 = Math.max(0.1, Math.round(answer.base_cda_m2 / STEP.cda_m2 - (ROWS >> 1)) * STEP.cda_m2);
    const { map_power_w: _power, map_cda_m2: _cda, ...details } = state.with[question];
    const request = {
      scenario: state.scenario,
      with: {
        ...details,
        effort: effortOf(details.effort),
        map_power_w: [low_w, low_w + (COLUMNS - 1) * STEP.power_w],
        map_cda_m2: [low_m2, low_m2 + (ROWS - 1) * STEP.cda_m2],
      },
    };
    if (same(request, asked)) return;
    asked = request;
    try {
      const other = await tools.worker.ask(question, request, { slot: `${question} table` });
      if (!other || request !== asked) return;
      write(state, other.columns);
      trouble.hidden = true;
    } catch {
      trouble.hidden = false;
    }
  }

  /** @param {State} state @param {Answer["columns"]} columns */
  function write(state, { power_w, cda_m2, time_s }) {
    const across = Array.from({ length: COLUMNS }, (_, n) => n * EVERY);
    const down = Array.from({ length: ROWS }, (_, n) => n * EVERY);
    grid.update({
      columns: ["CdA", ...across.map((column) => units.quantity("power", power_w[column], state.units, { digits: 0 }))],
      rows: down.map((row) => [
        units.quantity("area", cda_m2[row], state.units, { digits: 2 }),
        ...across.map((column) => units.time(time_s[row * power_w.length + column])),
      ]),
    });
  }

  return {
    element,
    /** @param {State | null} state null while nobody looks @param {Answer} answer */
    update(state, answer) {
      if (state) return void show(state, answer);
      // Figures that nobody keeps up to date are not left standing.
      if (asked) grid.update({ columns: [], rows: [] });
      asked = null;
    },
    destroy: grid.destroy,
  };
}
