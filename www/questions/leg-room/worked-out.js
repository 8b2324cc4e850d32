// @ts-check
/** Why a fit does what it does to the hip, and how it is worked out. */

import { formula, fraction, power } from "../../parts/formula.js";
import { html } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import * as units from "../../units.js";
import { citations, paragraph, symbols } from "../shared/worked-out.js";
import { angle, crankAngle, words } from "./texts.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { LegRoomAnswer as Answer } from "../../types/core.d.ts" */

/** @param {State} state @param {Answer} answer */
export function why(state, { b }) {
  const cadence = state.with["leg-room"].b.cadence_rpm;
  return [
    paragraph(words("why.hip", { at: crankAngle(b.tightest_at_deg, state.units) })),
    paragraph(words("why.seat")),
    paragraph(words("why.speed", { cadence: units.quantity("cadence", amountOf(cadence), state.units) })),
  ];
}

/** @param {Tools} tools @param {State} state */
export function workedOut({ field }, state) {
  const typical = (/** @type {string} */ name) => field(`with.${name}`)?.default ?? NaN;
  return html(
    "div",
    {},
    paragraph(words("how.loop", { above: units.quantity("fit_length", typical("hip_above_saddle_m"), state.units) })),
    formula(
      words("how.formula"),
      [
        "τ",
        "−",
        "φ",
        ",",
        "cos",
        "∠",
        "=",
        fraction([power("E", "2"), "+", power("t", "2"), "−", power("L", "2")], ["2", "E", "t"]),
      ],
      { block: true },
    ),
    symbols([
      ["τ", words("how.τ")],
      ["φ", words("how.φ")],
      ["E", words("how.E")],
      ["t", words("how.t")],
      ["L", words("how.L")],
    ]),
    paragraph(
      words("how.frozen", {
        ankle: angle(typical("ankle_deg"), state.units, { digits: 0 }),
        pitch: angle(typical("foot_pitch_deg"), state.units, { digits: 0 }),
        swing: angle(typical("foot_swing_deg"), state.units, { digits: 0 }),
      }),
    ),
    paragraph(words("how.torso")),
    paragraph(words("how.rates")),
    paragraph(words("how.none")),
    citations(["drillis-1966", "bini-2011", "saddle-economy-2013", "martin-2007"]),
  );
}
