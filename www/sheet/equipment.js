// @ts-check
/** What is worn or ridden with a position: helmets, wheels, suits, and which of them is in use. */

import most from "fasterby-most";
import { h } from "../frame/dom.js";
import { book } from "../words/index.js";
import { lapsesPart } from "./lapses.js";
import { nameInput, numberRows, tickedPart } from "./list-parts.js";
import { yawTable } from "./yaw-table.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Equipment, Position } from "../types/page.d.ts" */

const say = book("sheet");

/** @param {Page} page @param {string} at the position's path @param {Position} position @param {() => number} cda */
export function equipmentPart(page, at, position, cda) {
  const { store, filler } = page;
  const list = `${at}.equipment`;
  const pieces = (position.equipment ?? []).map((piece, index) => pieceCard(page, at, index, piece, cda));
  const worn = h("select", {
    "aria-label": say("worn"),
    onchange: () => store.set(`${at}.worn`, worn.value === "" ? undefined : Number(worn.value)),
  });

  function add() {
    const all = store.at(list) ?? [];
    store.set(list, [
      ...all,
      {
        name: "",
        cda_change_m2: filler.fresh("positions.equipment.cda_change_m2"),
        mass_change_kg: filler.fresh("positions.equipment.mass_change_kg"),
      },
    ]);
  }

  return {
    rows: pieces.flatMap(({ rows }) => rows),
    elements: [
      pieces.length > 0 && h("h4", { class: "part-name" }, say("equipment")),
      ...pieces.map(({ element }) => element),
      pieces.length > 0 && h("label", { class: "row" }, h("span", { class: "row-label" }, say("worn")), worn),
      pieces.length < most.equipment && h("button", { type: "button", onclick: add }, say("addEquipment")),
      pieces.length === 0 && h("p", { class: "row-hint" }, say("equipmentHint")),
    ],
    /** @param {Position} now */
    update(now) {
      const names = (now.equipment ?? []).map(
        ({ name }, index) => name || say("equipmentNumber", { number: index + 1 }),
      );
      worn.replaceChildren(
        ...["", ...names.keys()].map((value) =>
          h(
            "option",
            { value: String(value) },
            value === "" ? say("asMeasured") : names[/** @type {number} */ (value)],
          ),
        ),
      );
      worn.value = String(now.worn ?? "");
      for (const [index, piece] of pieces.entries()) piece.update(now.equipment?.[index]);
    },
  };
}

/** @param {Page} page @param {string} position the position's path @param {number} index @param {Equipment} piece @param {() => number} cda */
function pieceCard(page, position, index, piece, cda) {
  const { store, filler } = page;
  const list = `${position}.equipment`;
  const at = `${list}[${index}]`;
  const number = { number: index + 1 };
  const name = nameInput(page, `${at}.name`, say("equipmentName", number));
  const given = /** @type {const} */ (["cda_change_m2", "mass_change_kg"]).filter((key) => piece[key] !== undefined);
  const numbers = numberRows(page, at, given, "drag", say("equipmentNumber", number));
  const lapses = lapsesPart(page, `${at}.lapses`, piece.lapses, cda, say("equipmentLapses"));
  const corners = tickedPart(
    {
      label: say("equipmentCorners"),
      there: piece.lateral_m_s2 !== undefined,
      onChange: (on) => store.set(`${at}.lateral_m_s2`, on ? filler.fresh("bike.lateral_m_s2") : undefined),
    },
    () => numberRows(page, at, ["lateral_m_s2"], null, say("equipmentNumber", number)),
  );
  const yaw = yawTable(page, `${at}.yaw_table`, piece.yaw_table);

  /** What is worn must go on naming the same piece. */
  function remove() {
    const { worn } = store.at(position);
    const left = store.at(list).filter((/** @type {unknown} */ _, /** @type {number} */ one) => one !== index);
    const moved = worn === undefined || worn === index ? undefined : worn > index ? worn - 1 : worn;
    store.setAll([
      [list, left.length ? left : undefined],
      [`${position}.worn`, moved],
    ]);
  }

  return {
    rows: [...numbers.rows, ...lapses.rows, ...corners.rows],
    element: h(
      "div",
      { class: "piece" },
      h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), name.input),
      ...numbers.elements,
      ...lapses.elements,
      ...yaw.elements,
      ...corners.elements,
      h(
        "p",
        { class: "row-actions" },
        h("button", { type: "button", "aria-label": say("removeEquipment", number), onclick: remove }, say("remove")),
      ),
    ),
    /** @param {Equipment | undefined} now */
    update(now) {
      name.update();
      lapses.update();
      yaw.update(now?.yaw_table);
    },
  };
}

/** What decides which controls a piece has. @param {Equipment} piece */
export const shapeOfPiece = ({ cda_change_m2, mass_change_kg, lateral_m_s2, lapses, yaw_table }) => [
  cda_change_m2 !== undefined,
  mass_change_kg !== undefined,
  lateral_m_s2 !== undefined,
  lapses?.length ?? 0,
  yaw_table?.length ?? -1,
];
