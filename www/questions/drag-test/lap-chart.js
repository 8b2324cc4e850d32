// @ts-check
/** The drag area that each lap alone would give, beside that of its position: what scatters, drifts and lies off shows. */

import { lineChart } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";
import { area } from "./digits.js";
import { positionName, rowName } from "./names.js";

/** @import { Shown } from "../shared/shell.js" */
/** @import { DragTestAnswer as Answer, TestRow } from "../../types/core.d.ts" */

const words = book("drag-test");
/** Room beside the first and last lap. */
const BESIDE = 0.6;
const STROKES = /** @type {const} */ (["solid", "dashed", "dotted"]);

export function lapChart() {
  const chart = lineChart({
    title: words("lapChart"),
    x: { name: words("lapAxis"), format: (x) => (Number.isInteger(x) ? show.number(x) : "") },
    y: { name: words("areaAxis"), format: (y) => show.number(y, { digits: 3 }) },
    reader: words("lapReader"),
  });
  return {
    element: chart.element,
    destroy: chart.destroy,
    /** @param {Shown<Answer>} shown @param {readonly number[]} laps where each lap of the answer stands in the list of laps */
    update({ state, answer, settled }, laps) {
      const { units } = state;
      const rows = answer.laps.flatMap((row, at) => (row.cda_m2 === null ? [] : [{ row, x: at + 1, y: row.cda_m2 }]));
      chart.element.hidden = rows.length < 2;
      if (chart.element.hidden) return;
      const ends = [1 - BESIDE, answer.laps.length + BESIDE];
      const lowest = answer.positions.reduce((low, one) => (one.cda_m2.value < low.cda_m2.value ? one : low));
      const series = answer.positions.map(({ position, cda_m2 }, place) => {
        const level = (/** @type {number} */ y) => [y, y];
        const band =
          cda_m2.low_95 === null || cda_m2.high_95 === null
            ? {}
            : { low: level(cda_m2.low_95), high: level(cda_m2.high_95) };
        const name = positionName(state, position);
        return {
          name,
          xs: ends,
          ys: level(cda_m2.value),
          ...band,
          label: name,
          labelAt: /** @type {const} */ ("end"),
          meaning: position === lowest.position ? /** @type {const} */ ("drag") : null,
          stroke: STROKES[place % STROKES.length],
        };
      });
      const all = [
        ...rows.map(({ y }) => y),
        ...series.flatMap(({ ys, low, high }) => [ys, low ?? [], high ?? []].flat()),
      ];
      const [least, most] = [Math.min(...all), Math.max(...all)];
      const room = (most - least || 0.01) * 0.1;
      const wording = (/** @type {TestRow} */ row) => {
        const values = {
          name: rowName(row, laps),
          position: positionName(state, row.position),
          area: area(row.cda_m2 ?? 0, null, units),
          watts: show.quantity("power", Math.abs(row.residual_w ?? 0), units, { digits: 1 }),
        };
        return words((row.residual_w ?? 0) < 0 ? "lapSaysLess" : "lapSaysMore", values);
      };
      chart.update({
        ease: settled,
        desc: words("lapDescription", {
          count: rows.length,
          low: area(least, null, units),
          high: area(most, null, units),
        }),
        x: { domain: [ends[0], ends[1]] },
        y: { domain: [least - room, most + room] },
        series,
        points: rows.map(({ row, x, y }) => ({
          x,
          y,
          label: row.outlier ? rowName(row, laps) : undefined,
          shape: row.outlier ? /** @type {const} */ ("ring") : /** @type {const} */ ("dot"),
          meaning: row.position === lowest.position ? /** @type {const} */ ("drag") : null,
        })),
        read(x) {
          const near = rows.reduce((best, one) => (Math.abs(one.x - x) < Math.abs(best.x - x) ? one : best));
          return { spoken: wording(near.row), words: wording(near.row), points: [{ y: near.y, meaning: null }] };
        },
        reading: [words("lapReading"), " ", onScreen(words("lapReadOff"))],
      });
    },
  };
}
