// @ts-check
/** At what distance the answer is read, at the head of the sentence: a distance, or as far as the rider gets in a time. */

import { choice } from "../../parts/choice.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";
import { USUAL_TIMES } from "../shared/distance-names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */

const words = book("which-position");
const shared = book("shared");
const AT = "with.which-position";
const TIME = `${AT}.for_time_s`;

/** @param {Tools} tools */
export function farField(tools) {
  const { store } = tools;
  const bounds = tools.field("scenario.events[0].distance_m");
  const distance = tools.number({
    path: `${AT}.distance_m`,
    label: words("distance"),
    kind: "distance",
    min: bounds?.min,
    max: bounds?.max,
    step: 1,
  });
  const time = tools.number({ path: TIME, kind: "clock", step: 60 });
  const pick = choice({
    label: shared("howFar"),
    options: [
      { value: "distance", name: shared("overOwn") },
      { value: "time", name: shared("withinOwn") },
    ],
    onChange: (value) => store.set(TIME, value === "time" ? USUAL_TIMES[1] : undefined),
  });
  const overDistance = clause(" ", distance);
  const inTime = clause(" ", time);
  const whole = clause(pick, overDistance, inTime);
  return {
    ...whole,
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      const goesByTime = store.at(TIME) !== undefined;
      pick.update({ value: goesByTime ? "time" : "distance" });
      overDistance.show(!goesByTime);
      inTime.show(goesByTime);
      return goesByTime ? time.update(state, error) : distance.update(state, error);
    },
  };
}
