// @ts-check
/** What makes a sample unusable, as rules that a rider may change. */

import { html } from "../../parts/html.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */

const words = book("drag-test");
const AT = "with.drag-test.rules";
const RULES = /** @type {const} */ (["braking_m_s2", "accelerating_m_s2", "stopped_m_s", "bridged_s", "allowed_s"]);

/** @param {Tools} tools */
export function rulesPart(tools) {
  const numbers = RULES.map((rule) =>
    tools.number({
      path: `${AT}.${rule}`,
      value: (state) => state.with["drag-test"].rules?.[rule] ?? tools.field(`${AT}.${rule}`)?.default ?? null,
    }),
  );
  const element = html(
    "div",
    {},
    html("p", {}, words("rulesLead")),
    ...RULES.map((rule, at) => html("p", {}, ...words.parts(`rule.${rule}`, { number: numbers[at].element }))),
    ...numbers.map(({ note }) => note),
  );
  return {
    element,
    /** @param {State} state @param {CoreError | null} error */
    update: (state, error) => numbers.map((one) => one.update(state, error)).includes(true),
  };
}
