// @ts-check
/** The end of the story: what the reader changed goes into their own numbers, if and when they say so. */

import { html, say, strong } from "../parts/html.js";
import { listParts } from "../questions/shared/list.js";
import { nameOf, titleOf } from "../questions/shared/names.js";
import { shortPercent } from "../questions/shared/published.js";
import { valueChanges } from "../state/scenario.js";
import * as show from "../units.js";
import { book } from "../words/index.js";
import { BEGAN } from "./beginning.js";
import { numbersOf } from "./rider.js";

/** @import { Tools } from "../questions/index.js" */
/** @import { State } from "../state/history.js" */
/** @import { Name, Numbers } from "./beginning.js" */

const words = book("learn");
const page = book("page");
const QUESTION = "power-or-drag";
/** What that question has a place for. @type {readonly Name[]} */
const TAKEN_ALONG = ["power_w", "cda_m2", "power_change", "cda_change"];

/** What the page calls its own things. */
const called = () => ({ undo: page("undo"), yourNumbers: page("yourNumbers") });

/** @param {Tools} tools */
export function yourTurn(tools) {
  const { store } = tools;
  const told = html("p", { class: "also" });
  const along = html("button", { type: "button", class: "choose" }, words("askChanged"));
  const measure = html("button", { type: "button", class: "choose" }, words("askMeasure"));
  const asItIs = html("button", { type: "button", class: "choose" }, words("askOwn"));
  const element = html(
    "section",
    { class: "step", "aria-label": words("endTitle") },
    html("div", { class: "ask" }, html("h2", {}, words("endTitle"))),
    told,
    html("p", { class: "chooses no-print" }, along, asItIs, measure),
    html("p", { class: "takes" }, words("untouched", { ...called(), holdOrFade: nameOf("hold-or-fade") })),
  );
  along.addEventListener("click", () => {
    takeAlong(numbersOf(store.get()));
    tools.go(QUESTION);
    tools.notify(words("taken", called()));
  });
  asItIs.addEventListener("click", () => tools.go(QUESTION));
  measure.addEventListener("click", () => tools.go("drag-test"));

  /** @param {Numbers} numbers */
  const changed = (numbers) => TAKEN_ALONG.filter((name) => Math.abs(numbers[name] - BEGAN[name]) > 1e-9);

  /** One step of undo. @param {Numbers} numbers */
  function takeAlong(numbers) {
    const { scenario } = store.get();
    const cda = `scenario.positions[${scenario.riding_position}].cda_m2`;
    /** @type {Record<string, () => [string, unknown][]>} */
    const places = {
      power_w: () => [[`with.${QUESTION}.effort`, { kind: "power", power_w: numbers.power_w }]],
      cda_m2: () => valueChanges(store.at(cda), cda, numbers.cda_m2),
      power_change: () => [[`with.${QUESTION}.power_change`, numbers.power_change]],
      cda_change: () => [[`with.${QUESTION}.cda_change`, numbers.cda_change]],
    };
    store.setAll(changed(numbers).flatMap((name) => places[name]()));
    store.settle();
  }

  return {
    element,
    /** @param {State} state @param {Numbers} numbers */
    update({ units }, numbers) {
      const percent = (/** @type {number} */ share) => shortPercent(Math.abs(share));
      /** @type {Record<string, string>} */
      const changes = {
        power_w: show.quantity("power", numbers.power_w, units, { digits: 0 }),
        cda_m2: words("changedCda", { area: show.quantity("area", numbers.cda_m2, units) }),
        power_change: words("morePower", { percent: percent(numbers.power_change) }),
        cda_change: words("lessDrag", { percent: percent(numbers.cda_change) }),
      };
      const names = changed(numbers);
      along.hidden = names.length === 0;
      const question = titleOf(QUESTION);
      say(
        told,
        names.length
          ? words.parts("bringAlong", { list: listParts(names.map((name) => strong(changes[name]))), question })
          : words("notYou", { question }),
      );
    },
  };
}
