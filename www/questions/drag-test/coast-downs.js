// @ts-check
/** Coast-downs, typed in: how long it took from one speed to another without pedalling. No power meter is needed. */

import most from "fasterby-most";
import { book } from "../../words/index.js";
import { typedRows } from "./typed-rows.js";

/** @import { Tools } from "../index.js" */
/** @import { CoastDownForm } from "../../types/page.d.ts" */

const words = book("drag-test");
/** What a first coast-down begins from, m/s and s. */
const FIRST = { from_m_s: 12, to_m_s: 7, time_s: 26 };

/** @param {Tools} tools */
export function coastDownsEditor(tools) {
  const [speed, time] = [tools.field("with.speed_m_s"), tools.field("with.coast_down_time_s")];
  return typedRows(tools, {
    list: "coast_downs",
    first: /** @type {CoastDownForm} */ ({ position: 0, ...FIRST }),
    says: {
      add: words("addCoastDown"),
      removed: words("coastDownRemoved"),
      most: words("mostCoastDowns", { count: most.drag_rows }),
    },
    labels: (number) => ({
      position: words("positionOfCoastDown", { number }),
      used: words("usedOfCoastDown", { number }),
      remove: words("removeCoastDown", { number }),
      wind: words("windOfCoastDown", { number }),
      grade: words("gradeOfCoastDown", { number }),
    }),
    numbers(at, number) {
      const speedAt = (/** @type {"from_m_s" | "to_m_s"} */ name, /** @type {string} */ label) =>
        tools.number({ path: `${at}.${name}`, kind: "speed", min: speed?.min, max: speed?.max, label });
      const from = speedAt("from_m_s", words("coastDownFrom", { number }));
      const to = speedAt("to_m_s", words("coastDownTo", { number }));
      const took = tools.number({
        path: `${at}.time_s`,
        kind: "ratio",
        min: time?.min,
        max: time?.max,
        step: time?.step,
        label: words("coastDownTime", { number }),
      });
      return {
        numbers: [from, to, took],
        words: words.parts("coastDownRow", {
          number: String(number),
          from: from.element,
          to: to.element,
          time: took.element,
        }),
      };
    },
  });
}
