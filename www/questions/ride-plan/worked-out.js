// @ts-check
/** How a plan of effort is worked out. */

import { html } from "../../parts/html.js";
import { percent } from "../../units.js";
import { book } from "../../words/index.js";
import { citations, paragraph } from "../shared/worked-out.js";

/** @import { Tools } from "../index.js" */

const words = book("ride-plan");

/** @param {Tools} tools */
export function workedOut({ field }) {
  return html(
    "div",
    { class: "passage" },
    paragraph(words("howFastest")),
    paragraph(words("howSimple")),
    paragraph(words("howCareful")),
    paragraph(words("howAfter", { share: percent(field("with.after_running_out_share")?.default ?? 0) })),
    citations(["skiba-2015", "dynamic-parameter"]),
  );
}
