// @ts-check
/** Runs at constant speed, typed in: without a recording this is enough. */

import most from "fasterby-most";
import { book } from "../../words/index.js";
import { typedRows } from "./typed-rows.js";

/** @import { Tools } from "../index.js" */
/** @import { RunForm } from "../../types/page.d.ts" */

const words = book("drag-test");
/** What a first run begins from, m/s and W. */
const FIRST = { speed_m_s: 11, power_w: 230 };

/** @param {Tools} tools */
export function runsEditor(tools) {
  return typedRows(tools, {
    list: "runs",
    first: /** @type {RunForm} */ ({ position: 0, ...FIRST }),
    says: { add: words("addRun"), removed: words("runRemoved"), most: words("mostRuns", { count: most.drag_rows }) },
    labels: (number) => ({
      position: words("positionOfRun", { number }),
      used: words("usedOf", { number }),
      remove: words("removeRun", { number }),
      wind: words("windOf", { number }),
      grade: words("gradeOf", { number }),
    }),
    numbers(at, number) {
      const speed = tools.number({ path: `${at}.speed_m_s`, label: words("speedOf", { number }) });
      const power = tools.number({ path: `${at}.power_w`, meaning: "power", label: words("powerOf", { number }) });
      return {
        numbers: [speed, power],
        words: words.parts("runRow", { number: String(number), speed: speed.element, power: power.element }),
      };
    },
  });
}
