// @ts-check
/** The test in tables: positions, every lap, and what all laps have in common. */

import { lines } from "../../parts/lines.js";
import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { inSentence } from "../shared/in-sentence.js";
import { area } from "./digits.js";
import { positionName, rowCounts, rowName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { DragTestAnswer as Answer, CommonError, TestRow } from "../../types/core.d.ts" */

const words = book("drag-test");

export function positionTable() {
  const part = lines({
    caption: words("positionsCaption"),
    headings: [words("position"), words("dragArea"), words("spread")],
  });
  return {
    ...part,
    /** @param {State} state @param {Answer} answer */
    update(state, { positions, laps: rows }) {
      part.update(
        positions.map(({ position, cda_m2 }) => ({
          name: words("positionOf", { name: positionName(state, position), rows: rowCounts(usedIn(rows, position)) }),
          value: area(cda_m2.value, cda_m2.sd, state.units),
          difference: cda_m2.sd === null ? "" : show.plusMinus("area", cda_m2.sd, state.units),
          soft: true,
        })),
      );
    },
  };
}

/** How many rows a position's drag area rests on. @param {readonly TestRow[]} rows @param {number} position */
function usedIn(rows, position) {
  const used = rows.filter((row) => row.position === position && !row.left_out);
  const of = (/** @type {TestRow["kind"]} */ kind) => used.filter((row) => row.kind === kind).length;
  return { laps: of("lap"), runs: of("run"), coastDowns: of("coast_down") };
}

export function planTable() {
  const grid = table({ caption: words("planChart") });
  return {
    ...grid,
    /** @param {Answer} answer */
    update({ columns: { runs, smallest_share } }) {
      grid.update({
        columns: [words("planRuns"), words("planShare")],
        rows: [...runs].map((count, at) => [show.number(count), show.percent(smallest_share[at], 1)]),
      });
    },
  };
}

export function lapTable() {
  const grid = table({ caption: words("lapsCaption") });
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer @param {readonly number[]} laps */
    update(state, { laps: rows }, laps) {
      const { units } = state;
      grid.update({
        columns: ["lap", "position", "speed", "power", "dragArea", "residual", "leverage", "leftOut"].map((key) =>
          words(/** @type {"lap"} */ (key)),
        ),
        rows: rows.map((row) => [
          rowName(row, laps),
          positionName(state, row.position),
          show.quantity("speed", row.speed_m_s, units, { digits: 1 }),
          row.power_w === null ? "" : show.quantity("power", row.power_w, units, { digits: 0 }),
          row.cda_m2 === null ? "" : show.number(row.cda_m2, { digits: 3 }),
          row.residual_w === null ? "" : show.quantity("power", row.residual_w, units, { digits: 1, signed: true }),
          row.leverage === null ? "" : show.percent(row.leverage),
          stateOf(row),
        ]),
      });
    },
  };
}

/** @param {TestRow} row */
function stateOf({ left_out, outlier }) {
  if (left_out) return words(`why.${left_out}`);
  return outlier ? words("liesOff") : "";
}

/** What no number of laps makes smaller. @param {Tools} tools */
export function commonTable(tools) {
  const grid = table({ caption: words("commonCaption") });
  return {
    ...grid,
    /** @param {Answer} answer */
    update({ common }) {
      grid.update({
        columns: [words("input"), words("movesArea")],
        rows: sorted(common).map(({ field, cda_share }) => [
          tools.label(field) || field,
          show.percent(Math.abs(cda_share), 1),
        ]),
      });
    },
  };
}

/** @param {readonly CommonError[]} common */
const sorted = (common) => common.toSorted((one, other) => Math.abs(other.cda_share) - Math.abs(one.cda_share));

/** The common error that does most, in words; null where there is none. @param {Tools} tools @param {Answer} answer */
export function mainError(tools, { common }) {
  const [first] = sorted(common);
  const label = first && tools.label(first.field);
  return label ? { input: inSentence(label), share: show.percent(Math.abs(first.cda_share), 1) } : null;
}
