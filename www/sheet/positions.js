// @ts-check
/** Group of the sheet: the shapes the air may see, how long each is kept, and which one is ridden. */

import { numberText, readNumber } from "../parts/number-text.js";
import { uniqueId } from "../parts/html.js";
import { h } from "../frame/dom.js";
import { number, percent } from "../units.js";
import { book } from "../words/index.js";
import { findRow, updateRows } from "./groups.js";
import { numberRow } from "./number-row.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Group } from "./groups.js" */
/** @import { Row } from "./number-row.js" */
/** @import { State } from "../state/history.js" */

/** @typedef {{ yaw_deg: number, ratio: number }} YawRow */

const say = book("sheet");

const ALL = "scenario.positions";
const YAW_START = [{ yaw_deg: 0, ratio: 1 }, { yaw_deg: 10, ratio: 1 }];

/** @param {Page} page @returns {Group} */
export function positions(page) {
  const { store, filler } = page;
  const list = h("div", {});
  /** @type {ReturnType<typeof positionCard>[]} */
  let cards = [];
  let built = "";

  /** What decides which controls there are; when it changes they are made anew. @param {any[]} all */
  function structure(all) {
    return JSON.stringify(all.map(({ fade, lapses, yaw_table, speed_exponent, reference_airspeed_m_s }) =>
      [Boolean(fade), lapses?.length ?? 0, yaw_table?.length ?? -1, speed_exponent !== undefined, reference_airspeed_m_s !== undefined]));
  }

  /** @param {any} position */
  function add(position) {
    const all = store.get().scenario.positions;
    store.set(ALL, [...all, filler.position(position)]);
  }

  /** @param {number} index */
  function remove(index) {
    const { scenario } = store.get();
    const moved = (/** @type {number} */ at) => (at === index ? 0 : at > index ? at - 1 : at);
    /** @type {[string, unknown][]} */
    const changes = [[ALL, scenario.positions.filter((/** @type {any} */ _, /** @type {number} */ at) => at !== index)], ["scenario.riding_position", moved(scenario.riding_position)]];
    for (const { id, positionFields = [] } of page.questions) {
      for (const name of positionFields) {
        const at = store.at(`with.${id}.${name}`);
        if (typeof at === "number") changes.push([`with.${id}.${name}`, moved(at)]);
      }
    }
    store.setAll(changes);
  }

  /** @param {State} state */
  function build({ scenario }) {
    const opened = cards.map((card) => card.element.open);
    cards = scenario.positions.map((/** @type {any} */ position, /** @type {number} */ index) => positionCard(page, index, position, {
      duplicate: () => add({ ...store.get().scenario.positions[index], name: say("position.copy", { name: store.get().scenario.positions[index].name }) }),
      remove: scenario.positions.length > 1 ? () => remove(index) : null,
    }));
    const openAtFirst = (/** @type {number} */ index) => (built ? true : index === scenario.riding_position);
    cards.forEach((card, index) => { card.element.open = opened[index] ?? openAtFirst(index); });
    list.replaceChildren(...cards.map((card) => card.element));
  }

  return {
    title: say("group.positions"),
    covers: "positions riding_position",
    element: h("div", {}, list,
      h("button", { type: "button", onclick: () => add({ name: say("position.numbered", { number: store.get().scenario.positions.length + 1 }) }) }, say("position.add")),
      h("p", { class: "caution" }, say("position.caution")),
    ),
    update(state, error) {
      const now = structure(state.scenario.positions);
      if (now !== built) {
        build(state);
        built = now;
      }
      return cards.map((card) => card.update(state, error)).some(Boolean);
    },
    row(path) {
      const index = Number(/positions\[(\d+)\]/.exec(path)?.[1] ?? store.get().scenario.riding_position);
      const card = cards[index];
      if (!card) return null;
      card.element.open = true;
      return card.row(path);
    },
  };
}

/**
 * @param {Page} page @param {number} index @param {any} position
 * @param {{ duplicate: () => void, remove: (() => void) | null }} actions
 */
function positionCard(page, index, position, { duplicate, remove }) {
  const { store, filler } = page;
  const at = `${ALL}[${index}]`;
  const title = h("span", { class: "fold-name" });
  const ridden = h("span", { class: "soft" });
  const name = h("input", { type: "text", maxlength: 80, "aria-label": say("position.name"), onchange: () => store.settle(), oninput: () => store.set(`${at}.name`, name.value, { merge: `${at}.name` }) });
  const ride = h("input", { type: "radio", name: "riding-position", value: index, onchange: () => store.set("scenario.riding_position", index) });

  /** @param {string} key @param {"drag"|"hold"|"power"|null} meaning @param {string} [hint] */
  const row = (key, meaning, hint) => numberRow(page, `${at}.${key}`, { meaning, ...(hint && { hint }) });
  const always = [
    row("cda_m2", "drag"),
    row("cp_factor", "power", say("position.cp_hint", { factor: number(0.97, { digits: 2 }), share: percent(0.03) })),
    row("w_prime_factor", "power"),
  ];
  const fade = part(say("position.fades"), "fade", () => filler.fade(cda()), ["begins_s", "complete_s", "tired_cda_m2"].map((key) => `fade.${key}`), "hold");
  const lapses = part(say("position.lapses"), "lapses", () => [filler.lapse(cda())],
    (position.lapses ?? []).flatMap((/** @type {unknown} */ _, /** @type {number} */ kind) => ["share", "cda_m2"].map((key) => `lapses[${kind}].${key}`)), "hold");
  const speed = part(say("position.speed"), "speed_exponent", () => filler.fresh("positions.speed_exponent"), ["speed_exponent"], "drag");
  const yaw = yawTable(page, `${at}.yaw_table`, position.yaw_table);
  const rows = [...always, ...fade.rows, ...lapses.rows, ...speed.rows];

  function cda() {
    const held = store.at(`${at}.cda_m2`);
    return held?.value ?? held;
  }

  /** @param {string} label @param {string} key @param {() => unknown} fresh @param {string[]} names @param {"drag"|"hold"} meaning */
  function part(label, key, fresh, names, meaning) {
    const there = position[key] !== undefined;
    const box = h("input", { type: "checkbox", checked: there, onchange: () => store.set(`${at}.${key}`, box.checked ? fresh() : undefined) });
    /** @type {Row[]} */
    const rows = there ? names.map((name) => row(name, meaning)) : [];
    return { rows, elements: [h("label", { class: "check" }, box, label), ...rows.map((one) => one.element)] };
  }

  const element = h("details", { class: "position" },
    h("summary", {}, title, ridden),
    h("label", { class: "row" }, h("span", { class: "row-label" }, say("name")), name),
    h("label", { class: "check" }, ride, say("position.ride_this")),
    ...always.map((one) => one.element), ...fade.elements, ...lapses.elements, ...yaw.elements, ...speed.elements,
    h("p", { class: "row-actions" },
      h("button", { type: "button", onclick: duplicate }, say("position.duplicate")),
      remove && h("button", { type: "button", onclick: remove }, say("remove"))),
  );

  return {
    element,
    row: (/** @type {string} */ path) => findRow(rows, path) ?? always[0],
    /** @param {State} state @param {import("../core.js").CoreError | null} error */
    update(state, error) {
      const now = state.scenario.positions[index];
      title.textContent = now.name || say("position.numbered", { number: index + 1 });
      ridden.textContent = state.scenario.riding_position === index ? say("position.ridden") : "";
      if (document.activeElement !== name) name.value = now.name ?? "";
      ride.checked = state.scenario.riding_position === index;
      yaw.update(now.yaw_table);
      return updateRows(rows, state, error);
    },
  };
}

/** @param {Page} page @param {string} path @param {YawRow[] | undefined} rows */
function yawTable({ store }, path, rows) {
  const label = uniqueId("yaw");
  const box = h("input", { type: "checkbox", checked: rows !== undefined, onchange: () => store.set(path, box.checked ? YAW_START : undefined) });
  /** @param {number} row @param {"yaw_deg"|"ratio"} name @param {string} label */
  const cell = (row, name, label) => {
    const input = h("input", {
      inputmode: "decimal", autocomplete: "off", "aria-label": label, onchange: () => store.settle(),
      oninput: () => {
        const { value } = readNumber(input.value, { unit: "", digits: 3 });
        input.setAttribute("aria-invalid", String(value === undefined));
        if (value !== undefined) store.set(`${path}[${row}].${name}`, value, { merge: `${path}[${row}].${name}` });
      },
    });
    return input;
  };
  const inputs = (rows ?? []).map((_, row) => [cell(row, "yaw_deg", say("position.yaw_cell", { row: row + 1 })), cell(row, "ratio", say("position.ratio_cell", { row: row + 1 }))]);
  const table = rows && h("table", { class: "yaw", "aria-labelledby": label },
    h("thead", {}, h("tr", {}, h("th", { scope: "col" }, say("position.yaw_column")), h("th", { scope: "col" }, say("position.ratio_column")), h("th", { scope: "col" }, h("span", { class: "say" }, say("remove"))))),
    h("tbody", {}, ...inputs.map((pair, row) => h("tr", {}, ...pair.map((input) => h("td", {}, input)),
      h("td", {}, inputs.length > 1 && h("button", { type: "button", "aria-label": say("position.remove_row", { row: row + 1 }), onclick: () => store.set(path, store.at(path).filter((/** @type {YawRow} */ _, /** @type {number} */ at) => at !== row)) }, say("remove")))))));
  const more = rows && h("button", { type: "button", onclick: () => store.set(path, [...store.at(path), { yaw_deg: store.at(path).at(-1).yaw_deg + 5, ratio: store.at(path).at(-1).ratio }]) }, say("position.add_row"));
  return {
    elements: [h("label", { class: "check", id: label }, box, say("position.yaw")), table, more,
      rows && h("p", { class: "row-hint" }, say("position.yaw_hint"))],
    /** @param {YawRow[] | undefined} now */
    update(now) {
      now?.forEach((row, at) => {
        const [yaw, ratio] = inputs[at] ?? [];
        if (yaw && document.activeElement !== yaw) yaw.value = plain(row.yaw_deg);
        if (ratio && document.activeElement !== ratio) ratio.value = plain(row.ratio);
      });
    },
  };
}

/** All the decimals that were given. @param {number} value */
const plain = (value) => numberText(value, { digits: 6, atLeast: 0 });
