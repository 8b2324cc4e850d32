// @ts-check
/** Group of the sheet: the shapes the air may see, how long each is kept, what it costs, and which one is ridden. */

import { h } from "../frame/dom.js";
import { isObject } from "../parts/json.js";
import { keyedList } from "../parts/keyed-list.js";
import { amountOf } from "../state/scenario.js";
import { number, percent } from "../units.js";
import { book } from "../words/index.js";
import { dragTestsPart } from "./drag-tests.js";
import { equipmentPart, shapeOfPiece } from "./equipment.js";
import { findRow, updateRows } from "./groups.js";
import { lapsesPart } from "./lapses.js";
import { nameInput, numberRows, tickedPart } from "./list-parts.js";
import { numberRow } from "./number-row.js";
import { yawTable } from "./yaw-table.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */
/** @import { Held, Position } from "../types/page.d.ts" */
/** @import { State } from "../state/history.js" */

const say = book("sheet");
const ALL = "scenario.positions";
const POWER = ["cp_w", "w_prime_j", "peak_w", "long_ride_loss_share", "long_ride_loss_w", "long_ride_from_s"];

/** @param {Page} page @returns {Group} */
export function positions(page) {
  const { store, filler } = page;
  const list = h("div", {});
  const cards = keyedList(
    list,
    /** @returns {ReturnType<typeof positionCard>} */
    (index, before) => {
      const { scenario } = store.get();
      const card = positionCard(page, index, scenario.positions[index], {
        duplicate: () => duplicate(index),
        remove: scenario.positions.length > 1 ? () => remove(index) : null,
      });
      card.element.open = before?.element.open ?? (cards.rows().length > 0 || index === scenario.riding_position);
      return card;
    },
  );

  /** What decides which controls a position has; when it changes they are made anew. @param {Position} position */
  const structure = ({ fade, fade_test, lapses, power, yaw_table, speed_exponent, equipment = [] }) => [
    Boolean(fade),
    Boolean(fade_test),
    lapses?.length ?? 0,
    power ? Object.keys(power) : null,
    yaw_table?.length ?? -1,
    speed_exponent !== undefined,
    equipment.map(shapeOfPiece),
  ];

  /** @param {Partial<Position>} position */
  function add(position) {
    const all = store.get().scenario.positions;
    store.set(ALL, [...all, filler.position(position)]);
  }

  /** What names a position goes on naming the same one; an effort ridden in it is taken as ridden in the ridden one. @param {number} index */
  function remove(index) {
    const { scenario } = store.get();
    const moved = (/** @type {number} */ at) => (at === index ? 0 : at > index ? at - 1 : at);
    /** @type {[string, unknown][]} */
    const changes = [
      [ALL, scenario.positions.filter((_, at) => at !== index)],
      ["scenario.riding_position", moved(scenario.riding_position)],
    ];
    if (scenario.efforts) {
      changes.push([
        "scenario.efforts",
        scenario.efforts.map((effort) => {
          const { position, ...rest } = effort;
          return position === undefined || position === index ? rest : { ...rest, position: moved(position) };
        }),
      ]);
    }
    for (const { id, positionFields = [], movePositions } of page.questions) {
      const own = store.at(`with.${id}`);
      if (movePositions && isObject(own))
        changes.push([`with.${id}`, movePositions(own, (at) => (at === index ? null : moved(at)))]);
      for (const name of positionFields) {
        const at = store.at(`with.${id}.${name}`);
        if (typeof at === "number") changes.push([`with.${id}.${name}`, moved(at)]);
      }
    }
    store.setAll(changes);
  }

  /** @param {number} index */
  function duplicate(index) {
    const position = store.get().scenario.positions[index];
    // The tests were of the original.
    const { drag_tests: _, ...alike } = position;
    add({ ...alike, name: say("position.copy", { name: position.name }) });
  }

  return {
    title: say("group.positions"),
    covers: "positions riding_position",
    element: h(
      "div",
      {},
      list,
      h(
        "button",
        {
          type: "button",
          onclick: () => add({ name: say("position.numbered", { number: store.get().scenario.positions.length + 1 }) }),
        },
        say("position.add"),
      ),
      h("p", { class: "caution" }, say("position.caution")),
    ),
    update(state, error) {
      const all = state.scenario.positions;
      const keys = all.map((position, index) => JSON.stringify([index, all.length > 1, structure(position)]));
      return cards
        .update(keys)
        .map((card) => card.update(state, error))
        .some(Boolean);
    },
    row(path) {
      const index = Number(/positions\[(\d+)\]/.exec(path)?.[1] ?? store.get().scenario.riding_position);
      const card = cards.rows()[index];
      if (!card) return null;
      card.element.open = true;
      return card.row(path);
    },
  };
}

/**
 * @param {Page} page @param {number} index @param {Position} position
 * @param {{ duplicate: () => void, remove: (() => void) | null }} actions
 */
function positionCard(page, index, position, { duplicate, remove }) {
  const { store, filler } = page;
  const at = `${ALL}[${index}]`;
  const title = h("span", { class: "fold-name" });
  const ridden = h("span", { class: "soft" });
  const name = nameInput(page, `${at}.name`, say("position.name"));
  const ride = h("input", {
    type: "radio",
    name: "riding-position",
    value: index,
    onchange: () => store.set("scenario.riding_position", index),
  });

  const drag = numberRow(page, `${at}.cda_m2`, { meaning: "drag" });
  const { power: ownPower } = position;
  const power = ownPower
    ? numberRows(
        page,
        `${at}.power`,
        POWER.filter((key) => key in ownPower),
        "power",
        say("inPosition"),
      )
    : { rows: [], elements: [] };
  const factors = position.power
    ? []
    : [
        numberRow(page, `${at}.cp_factor`, {
          meaning: "power",
          hint: say("position.cpHint", { factor: number(0.97, { digits: 2 }), share: percent(0.03) }),
        }),
        numberRow(page, `${at}.w_prime_factor`, { meaning: "power" }),
      ];
  const own = tickedPart(
    {
      label: say("ownPower"),
      there: Boolean(position.power),
      onChange: (on) =>
        store.set(`${at}.power`, on ? { ...store.get().scenario.power, cp_w_prime_correlation: undefined } : undefined),
    },
    () => ({ rows: power.rows, elements: [...power.elements, h("p", { class: "caution" }, say("testsCaution"))] }),
  );
  const fade = tickedPart(
    {
      label: say("position.fades"),
      there: Boolean(position.fade),
      onChange: (on) =>
        store.setAll([
          [`${at}.fade`, on ? filler.fade(cda()) : undefined],
          [`${at}.fade_test`, undefined],
        ]),
    },
    () => numberRows(page, `${at}.fade`, ["begins_s", "complete_s", "tired_cda_m2"], "hold"),
  );
  const filmed = tickedPart(
    {
      label: say("fadeTested"),
      there: Boolean(position.fade_test),
      onChange: (on) =>
        store.setAll([
          [`${at}.fade_test`, on ? filler.fadeTest(cda()) : undefined],
          [`${at}.fade`, undefined],
        ]),
    },
    () => {
      const { rows, elements } = numberRows(
        page,
        `${at}.fade_test`,
        ["first_third_cda_m2", "last_third_cda_m2", "test_s"],
        "hold",
      );
      return { rows, elements: [...elements, h("p", { class: "row-hint" }, say("fadeTestHint"))] };
    },
  );
  const lapses = lapsesPart(page, `${at}.lapses`, position.lapses, cda, say("position.lapses"));
  const speed = tickedPart(
    {
      label: say("position.speed"),
      there: position.speed_exponent !== undefined,
      onChange: (on) => store.set(`${at}.speed_exponent`, on ? filler.fresh("positions.speed_exponent") : undefined),
    },
    () => numberRows(page, at, ["speed_exponent"], "drag"),
  );
  const yaw = yawTable(page, `${at}.yaw_table`, position.yaw_table);
  const equipment = equipmentPart(page, at, position, cda);
  const tests = dragTestsPart(page, at);
  const rows = [drag, ...factors, ...[own, fade, filmed, lapses, speed, equipment].flatMap((part) => part.rows)];

  function cda() {
    return amountOf(/** @type {Held} */ (store.at(`${at}.cda_m2`)));
  }

  const element = h(
    "details",
    { class: "position" },
    h("summary", {}, title, ridden),
    h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), name.input),
    h("label", { class: "check" }, ride, say("position.rideThis")),
    drag.element,
    tests.element,
    ...factors.map((one) => one.element),
    ...own.elements,
    ...fade.elements,
    ...filmed.elements,
    ...lapses.elements,
    ...yaw.elements,
    ...speed.elements,
    ...equipment.elements,
    h(
      "p",
      { class: "row-actions" },
      h("button", { type: "button", onclick: duplicate }, say("position.duplicate")),
      remove && h("button", { type: "button", onclick: remove }, say("remove")),
    ),
  );

  return {
    element,
    row: (/** @type {string} */ path) => findRow(rows, path) ?? drag,
    /** @param {State} state @param {import("../core.js").CoreError | null} error */
    update(state, error) {
      const now = state.scenario.positions[index];
      title.textContent = now.name || say("position.numbered", { number: index + 1 });
      ridden.textContent = state.scenario.riding_position === index ? say("position.ridden") : "";
      name.update();
      tests.update(state);
      lapses.update();
      equipment.update(now);
      ride.checked = state.scenario.riding_position === index;
      yaw.update(now.yaw_table);
      return updateRows(rows, state, error);
    },
  };
}
