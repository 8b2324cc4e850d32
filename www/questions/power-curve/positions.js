// @ts-check
/** What each position costs in power, from efforts in each. */

import { html, say } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { positionName } from "./figures.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Figure, PowerCurveAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-curve");

export function positionTable() {
  const grid = table({ caption: "" });
  const note = html("p", { class: "takes" });
  const element = html("div", {}, grid.element, note);
  const others = (/** @type {Answer} */ { position, positions }) =>
    positions.filter((one) => one.position !== position && one.cp_change_w !== null);

  /** @param {Figure} figure @param {State} state */
  const change = ({ value, sd }, { units }) =>
    `${show.quantity("power", value, units, { digits: 0, signed: true })} ${show.plusMinus("power", sd, units)}`;

  return {
    element,
    destroy: grid.destroy,
    /** @param {State} state @param {Answer} answer */
    gist(state, answer) {
      const [first] = others(answer);
      return first?.cp_change_w
        ? words("positionsGist", {
            change: change(first.cp_change_w, state),
            position: positionName(state, first.position),
          })
        : words("positionsNone");
    },
    /** @param {State} state @param {Answer} answer */
    update(state, answer) {
      const rows = others(answer);
      const base = positionName(state, answer.position);
      grid.element.hidden = rows.length === 0;
      say(note, rows.length === 0 ? words("positionsNone") : words("positionsSay"));
      if (rows.length === 0) return;
      grid.update({
        caption: `${words("positionsCaption", { base })} ${rows.some(({ at }) => at.some(({ beyond }) => beyond)) ? `(${words("beyondEfforts")})` : ""}`,
        columns: [
          words("positionColumn"),
          words("cpChange"),
          ...(rows[0]?.at ?? []).map(({ time_s }) => show.quantity("duration", time_s, state.units, { digits: 0 })),
        ],
        rows: rows.map(({ position, basis, cp_change_w, at }) => [
          basis === "fitted"
            ? positionName(state, position)
            : `${positionName(state, position)} (${words("guessedW", { base })})`,
          cp_change_w ? change(cp_change_w, state) : "",
          ...at.map(({ change_w, beyond }) => (beyond ? `(${change(change_w, state)})` : change(change_w, state))),
        ]),
      });
    },
  };
}
