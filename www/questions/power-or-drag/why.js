// @ts-check
/** Why more power or less drag leads: the share of the air, and where both are worth the same. */

import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { shortPercent } from "../shared/published.js";
import { paragraph } from "../shared/worked-out.js";

/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
/** Within this share of the tie the shape of the ride decides, and the air's share does not say which change leads. */
const NEAR = 0.02;

/** @param {Answer} answer */
export function whyGist({ aero_share, tie_aero_share }) {
  const values = { share: units.percent(aero_share), tie: tie_aero_share ? units.percent(tie_aero_share) : "" };
  // Down a hill the air takes more than the rider gives.
  if (aero_share <= 1) return words(tie_aero_share ? "whyGistTie" : "whyGistNoTie", values);
  return words(tie_aero_share ? "whyGistDownTie" : "whyGistDownNoTie", values);
}

/** @param {Answer} answer @param {number} power_change @param {number} cda_change */
export function why({ aero_share, tie_aero_share, more_power_saves_s, less_drag_saves_s }, power_change, cda_change) {
  const below = aero_share < (tie_aero_share ?? 0);
  const powerLeads = more_power_saves_s.value > less_drag_saves_s.value;
  const near = Math.abs(aero_share - (tie_aero_share ?? 0)) < NEAR;
  const where = near ? "whyNear" : below !== powerLeads ? "whyOther" : below ? "whyBelow" : "whyAbove";
  return [
    paragraph(
      words(aero_share <= 1 ? "whyPower" : "whyPowerDown", {
        more: shortPercent(power_change),
        share: units.percent(aero_share),
        less: shortPercent(-cda_change),
        cheaper: units.percent(1 / (1 + cda_change) - 1),
        divisor: units.number(1 + cda_change, { digits: 2 }),
      }),
    ),
    paragraph(
      tie_aero_share
        ? words(where, { tie: units.percent(tie_aero_share, 1), share: units.percent(aero_share) })
        : words("whyNever"),
    ),
    paragraph(words("whyShare")),
  ];
}
