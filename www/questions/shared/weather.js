// @ts-check
/** The day in a sentence: temperature and wind, and where the wind and the road lead once there is any. */

import { amountOf } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { clause } from "./clause.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { BoundNumber } from "../../frame/bound-number.js" */

const words = book("shared");
const AT = "scenario.conditions";

/**
 * "in 15 °C with 7 mph of wind from 250° on a road leading 90° by compass"
 * @param {Tools} tools @param {{ bearing?: BoundNumber | null }} [options] `bearing` is the question's own; the course's if left out, none if null
 */
export function weather(tools, { bearing } = {}) {
  const temperature = tools.number({ path: `${AT}.temperature_c` });
  const wind = tools.number({ path: `${AT}.wind_speed_m_s` });
  const from = tools.number({ path: `${AT}.wind_from_deg` });
  const heading = bearing === undefined ? tools.number({ path: "scenario.course.bearing_deg" }) : bearing;
  const way = clause(...(heading ? words.parts("way", { heading }) : []));
  const blowing = clause(" ", ...words.parts("windFrom", { from, way }));
  const field = clause(...words.parts("day", { temperature, wind }), blowing);
  const fields = [temperature, wind, from, ...(heading ? [heading] : [])];
  return {
    ...field,
    /** @param {State} state @param {import("../../core.js").CoreError | null} error @returns {boolean} whether the error is shown here */
    update(state, error) {
      const { conditions, course } = state.scenario;
      blowing.show(amountOf(conditions.wind_speed_m_s) !== 0 || blowing.element.matches(":focus-within"));
      const ownWay = bearing !== undefined || course.kind !== "profile";
      way.show(ownWay && heading !== null);
      return fields
        .filter((one) => one !== heading || ownWay)
        .map((one) => one.update(state, error))
        .includes(true);
    },
  };
}
