// @ts-check
/** The laps of a ride: from when to when, in which position, and whether they count. */

import { html, set } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { area } from "./digits.js";
import { positionPick } from "./position-pick.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { TestRow as Row } from "../../types/core.d.ts" */
/** @import { LapForm } from "../../types/page.d.ts" */
/** @typedef {{ lap: LapForm, at: number }} PlacedLap */

const words = book("drag-test");
const AT = "with.drag-test.laps";
/** Why a lap is left out, as the state has it. */
const REASONS = /** @type {const} */ (["traffic", "passed", "moved", "gust", "other"]);

/** @param {Tools} tools @param {{ choose: (at: number) => void, end_s: () => number, focus: () => void }} of `focus` goes on where no lap is left */
export function lapsEditor(tools, { choose, end_s, focus }) {
  const list = html("ol", { class: "efforts laps" });
  /** @type {{ names: string[], laps: PlacedLap[] }} */
  let shown = { names: [], laps: [] };
  const rows = keyedList(list, (index) => lapRow(tools, shown.laps[index].at, shown.names, { choose, end_s, removed }));

  /** @param {number} at */
  function removed(at) {
    const next = shown.laps.findIndex((lap) => lap.at >= at);
    (rows.rows()[next] ?? rows.rows().at(-1) ?? { focus }).focus();
  }
  return {
    element: list,
    /** @param {State} state @param {CoreError | null} error @param {PlacedLap[]} laps @param {number} chosen @param {ReadonlyMap<number, Row>} answered by their place in the list of all laps */
    update(state, error, laps, chosen, answered) {
      shown = { names: state.scenario.positions.map(({ name }) => name), laps };
      list.hidden = laps.length === 0;
      const made = rows.update(laps.map(({ at }) => JSON.stringify([at, ...shown.names])));
      return made.map((row) => row.update(state, error, chosen, answered)).includes(true);
    },
  };
}

/** @param {Tools} tools @param {number} at @param {readonly string[]} names @param {{ choose: (at: number) => void, end_s: () => number, removed: (at: number) => void }} of */
function lapRow(tools, at, names, { choose, end_s, removed }) {
  const { store } = tools;
  const path = `${AT}[${at}]`;
  const of = { number: at + 1 };
  const end = (/** @type {"from_s" | "to_s"} */ name) =>
    tools.number({
      path: `${path}.${name}`,
      kind: "clock",
      min: 0,
      max: end_s(),
      label: words(name === "from_s" ? "fromOf" : "toOf", of),
    });
  const [from, to] = [end("from_s"), end("to_s")];
  const position = positionPick(tools, { path: `${path}.position`, label: words("positionOfLap", of), names });
  const use = html(
    "select",
    { "aria-label": words("useOf", of) },
    html("option", { value: "" }, words("counts")),
    ...REASONS.map((reason) =>
      html("option", { value: reason }, words("outFor", { reason: words(`reason.${reason}`) })),
    ),
  );
  use.addEventListener("change", () => store.set(`${path}.excluded`, use.value || undefined));
  const closed = html("input", { type: "checkbox", "aria-label": words("closedOf", of) });
  closed.addEventListener("change", () => store.set(`${path}.closed`, closed.checked ? undefined : false));
  const look = html("button", { type: "button", "aria-pressed": "false" }, words("lapNumber", of));
  look.addEventListener("click", () => choose(at));
  const says = html("span", { class: "soft" });
  const away = html("button", { type: "button", "aria-label": words("removeLap", of) }, words("remove"));
  away.addEventListener("click", () => {
    store.set(
      AT,
      store.at(AT).filter((/** @type {unknown} */ _, /** @type {number} */ index) => index !== at),
    );
    tools.notify(words("lapRemoved"), { label: words("undo"), run: () => store.undo() });
    removed(at);
  });
  const element = html(
    "li",
    {},
    look,
    html("span", { class: "effort-numbers" }, ...words.parts("span", { from: from.element, to: to.element })),
    html(
      "span",
      { class: "effort-facts" },
      position.element,
      use,
      html("label", { class: "check" }, closed, words("closed")),
    ),
    says,
    away,
    from.note,
    to.note,
  );
  return {
    element,
    focus: () => look.focus(),
    /** @param {State} state @param {CoreError | null} error @param {number} chosen @param {ReadonlyMap<number, Row>} answered */
    update(state, error, chosen, answered) {
      const lap = state.with["drag-test"].laps[at];
      if (!lap) return false;
      position.update(lap.position ?? 0);
      closed.checked = lap.closed !== false;
      use.value = lap.excluded ?? "";
      if (use.value !== (lap.excluded ?? "")) use.value = "other";
      set(look, { "aria-pressed": String(at === chosen) });
      says.textContent = answerWords(answered.get(at), state);
      return [from.update(state, error), to.update(state, error)].includes(true);
    },
  };
}

/** @param {Row | undefined} row @param {State} state */
function answerWords(row, { units }) {
  if (!row) return "";
  if (row.left_out === "excluded") return "";
  if (row.left_out) return words(`why.${row.left_out}`);
  const speed = show.quantity("speed", row.speed_m_s, units, { digits: 1 });
  const power = show.quantity("power", row.power_w ?? 0, units, { digits: 0 });
  return row.cda_m2 === null
    ? words("lapRidden", { speed, power })
    : words("lapFound", { speed, power, area: area(row.cda_m2, null, units) });
}
