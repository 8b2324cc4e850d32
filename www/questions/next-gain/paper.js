// @ts-check
/** What went in, on paper: every change of the list with its size, chance and cost, and how often each event is ridden. */

import { html } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import { plusMinus, quantity } from "../../units.js";
import { book } from "../../words/index.js";
import { eventWords } from "../shared/distance-names.js";
import { kindOf, nameOf, takesOf } from "./candidates.js";

/** @import { State } from "../../state/history.js" */
/** @import { Units } from "../../units.js" */
/** @import { Candidate, Change } from "../../types/core.d.ts" */

const words = book("next-gain");
const ID = "next-gain";

/** Seen on paper alone, where the lists below are folded away. @param {() => { state: State, candidates: readonly Candidate[] } | null} shown */
export function listsOnPaper(shown) {
  const element = html("section", { class: "only-print", "aria-label": words("list") });
  const fill = () => {
    const now = shown();
    if (now) element.replaceChildren(...inputsOf(now.state, now.candidates));
  };
  addEventListener("beforeprint", fill);
  return { element, destroy: () => removeEventListener("beforeprint", fill) };
}

/** @param {State} state @param {readonly Candidate[]} candidates */
function inputsOf({ scenario, units, with: { [ID]: own } }, candidates) {
  const events = scenario.events.map((event, at) =>
    words("eventOnPaper", {
      event: eventWords(event, units),
      times: own.times_ridden[at] ?? 1,
    }),
  );
  return [
    html("h2", {}, words("list")),
    html(
      "ul",
      {},
      ...candidates.map((one, c) =>
        html(
          "li",
          {},
          ...words.parts("changeOnPaper", {
            name: nameOf(one, c),
            sizes: one.changes.map((change) => sizeOf(change, scenario, units)).join(", "),
            takes: takesOf(one, own.currency ?? ""),
          }),
        ),
      ),
    ),
    html("p", {}, ...words.parts("eventsOnPaper", { events: events.join(", ") })),
  ];
}

/** What a change moves, and by how much. @param {Change} change @param {State["scenario"]} scenario @param {Units} units */
function sizeOf(change, { positions }, units) {
  const { use_position } = change;
  if (use_position !== undefined)
    return words("ridePosition", {
      name: positions[use_position]?.name || words("positionNumber", { number: use_position + 1 }),
    });
  const known = kindOf(change);
  const kind = change.share === undefined ? (known?.kind ?? "ratio") : "share";
  const amount = change.share ?? change.by;
  const sd = typeof amount === "object" ? (amount?.sd ?? 0) : 0;
  const size = quantity(kind, amountOf(amount) ?? 0, units, { signed: true });
  return words("sizeOnPaper", {
    what: known
      ? words(/** @type {`kinds.${"mass"}`} */ (`kinds.${known.id}`))
      : words("other", { field: change.field ?? "" }),
    size: sd ? `${size} ${plusMinus(kind, sd, units)}` : size,
  });
}
