// @ts-check
/** The rider's hard efforts: a list to edit, fields to add one, and a box to paste several. */

import most from "fasterby-most";
import { html, say, set, uniqueId } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { readNumber, readTime } from "../../parts/number-text.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { readEfforts } from "./efforts-text.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Effort, Problem } from "./efforts-text.js" */

const words = book("power-curve");
const ALL = "scenario.efforts";
/** What a newcomer's two efforts could be. */
const FIRST_TIMES = ["4:00", "20:00"];

/** @param {Tools} tools */
export function effortsEditor(tools) {
  const { store } = tools;
  const begin = html("p", { class: "begin" });
  const list = html("ol", { class: "efforts" });
  const adding = addForm([[words("newTime"), words("newPower")]], words("add"), add);
  const first = addForm(
    [
      [words("firstTime"), words("firstPower")],
      [words("secondTime"), words("secondPower")],
    ],
    words("draw"),
    add,
    FIRST_TIMES,
  );
  const paste = pasteBox(tools, add);
  const element = html(
    "section",
    { class: "efforts-box", "aria-label": words("yours"), "data-changes": ALL },
    html("h2", {}, words("yours")),
    begin,
    list,
    first.element,
    adding.element,
    paste.element,
  );
  say(begin, words.parts("begin"));
  /** @type {string[]} */
  let names = [];
  const rows = keyedList(list, (index) => effortRow(tools, index, names, () => remove(index)));

  /** @param {Effort[]} more @returns {string | null} what is wrong */
  function add(more) {
    const efforts = store.at(ALL) ?? [];
    if (efforts.length + more.length > most.efforts) return words("mostEfforts", { count: most.efforts });
    store.set(ALL, [
      ...efforts,
      ...more.map((one) => ({ ...one, power_w: { value: one.power_w, sd: 0, source: "measured" } })),
    ]);
    return null;
  }

  /** @param {number} index */
  function remove(index) {
    const left = store.at(ALL).filter((/** @type {unknown} */ _, /** @type {number} */ at) => at !== index);
    store.set(ALL, left.length ? left : undefined);
    tools.notify(words("removed"), { label: words("undo"), run: () => store.undo() });
    const next = rows.rows()[Math.min(index, left.length - 1)];
    if (next) next.focus();
    else first.focus();
  }

  return {
    element,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} whether the error is shown here */
    update(state, error) {
      const efforts = state.scenario.efforts ?? [];
      names = state.scenario.positions.map(({ name }) => name);
      const shown = rows.update(efforts.map((_, index) => JSON.stringify([index, ...names])));
      const none = efforts.length === 0;
      begin.hidden = !none;
      list.hidden = none;
      first.element.hidden = !none;
      adding.element.hidden = none;
      return shown.map((row) => row.update(state, error)).includes(true);
    },
  };
}

/** @param {Tools} tools @param {number} index @param {string[]} names of the positions @param {() => void} remove */
function effortRow({ store, number }, index, names, remove) {
  const at = `${ALL}[${index}]`;
  const of = { number: index + 1 };
  const time = number({ path: `${at}.duration_s`, kind: "clock", label: words("timeOf", of) });
  const power = number({ path: `${at}.power_w`, meaning: "power", label: words("powerOf", of) });
  const options = (/** @type {[string, string][]} */ all) =>
    all.map(([value, name]) => html("option", { value }, name));
  const position = html(
    "select",
    { "aria-label": words("positionOf", of) },
    ...options([
      ["", words("asRidden")],
      ...names.map(
        (name, place) =>
          /** @type {[string, string]} */ ([String(place), name || words("position", { number: place + 1 })]),
      ),
    ]),
  );
  const date = html("input", { type: "date", "aria-label": words("dateOf", of) });
  const place = html(
    "select",
    { "aria-label": words("placeOf", of) },
    ...options([
      ["", words("notSaid")],
      ["in", words("indoors")],
      ["out", words("outdoors")],
    ]),
  );
  const away = html("button", { type: "button", "aria-label": words("removeOf", of) }, words("remove"));
  position.addEventListener("change", () =>
    store.set(`${at}.position`, position.value === "" ? undefined : Number(position.value)),
  );
  date.addEventListener("change", () => store.set(`${at}.date`, date.value || undefined));
  place.addEventListener("change", () =>
    store.set(`${at}.indoors`, place.value === "" ? undefined : place.value === "in"),
  );
  away.addEventListener("click", remove);
  position.hidden = names.length < 2;
  const element = html(
    "li",
    {},
    html("span", { class: "effort-numbers" }, time.element, power.element),
    html("span", { class: "effort-facts" }, position, date, place),
    away,
    time.note,
    power.note,
  );

  return {
    element,
    focus: time.focus,
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      const effort = state.scenario.efforts?.[index];
      if (!effort) return false;
      position.value = effort.position === undefined ? "" : String(effort.position);
      if (document.activeElement !== date) date.value = effort.date ?? "";
      place.value = effort.indoors === undefined ? "" : effort.indoors ? "in" : "out";
      return [time.update(state, error), power.update(state, error)].includes(true);
    },
  };
}

/**
 * Fields for some efforts; those without a power are left out.
 * @param {[time: string, power: string][]} labels @param {string} button @param {(efforts: Effort[]) => string | null} add @param {string[]} [times]
 */
function addForm(labels, button, add, times = []) {
  const noteId = uniqueId("wrong");
  const note = html("p", { class: "wrong", id: noteId, role: "alert", hidden: true });
  const pairs = labels.map(([timeLabel, powerLabel], index) => {
    const time = html("input", {
      type: "text",
      inputmode: "text",
      autocomplete: "off",
      "aria-label": timeLabel,
      "aria-describedby": noteId,
      value: times[index] ?? null,
      placeholder: "20:00",
    });
    const power = html("input", {
      type: "text",
      inputmode: "decimal",
      autocomplete: "off",
      "aria-label": powerLabel,
      "aria-describedby": noteId,
    });
    return {
      time,
      power,
      element: html(
        "span",
        { class: "pair" },
        time,
        html("span", { "aria-hidden": "true" }, ": "),
        power,
        html("span", { "aria-hidden": "true" }, " W"),
      ),
    };
  });
  const element = html(
    "form",
    { class: "add-effort", novalidate: true },
    ...pairs.map((pair) => pair.element),
    html("button", { type: "submit" }, button),
    note,
  );

  element.addEventListener("submit", (event) => {
    event.preventDefault();
    const read = pairs
      .filter(({ power }) => power.value.trim() !== "" || pairs.length === 1)
      .map(({ time, power }) => ({
        time,
        power,
        duration_s: readTime(time.value).value,
        power_w: readNumber(power.value, { unit: "W", digits: 1 }).value,
      }));
    for (const { time, power } of pairs) for (const input of [time, power]) set(input, { "aria-invalid": null });
    for (const { time, power, duration_s, power_w } of read) {
      if (!duration_s) set(time, { "aria-invalid": "true" });
      if (!power_w) set(power, { "aria-invalid": "true" });
    }
    const efforts = read.flatMap(({ duration_s, power_w }) => (duration_s && power_w ? [{ duration_s, power_w }] : []));
    const wrong = read.length === 0 || efforts.length < read.length ? words("fillOne") : add(efforts);
    note.hidden = wrong === null;
    say(note, wrong === null ? "" : [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, wrong)]);
    if (wrong !== null) return;
    for (const [index, { time, power }] of pairs.entries()) [time.value, power.value] = [times[index] ?? "", ""];
  });

  return { element, focus: () => pairs[0].time.focus() };
}

/** @param {Tools} tools @param {(efforts: Effort[]) => string | null} add */
function pasteBox({ store, field, notify }, add) {
  const ids = { hint: uniqueId("hint"), wrong: uniqueId("wrong") };
  const hint = html("p", { class: "hint", id: ids.hint }, words("pasteHint"));
  const text = html("textarea", {
    rows: 5,
    spellcheck: "false",
    "aria-label": words("pasteLabel"),
    "aria-describedby": `${ids.hint} ${ids.wrong}`,
  });
  const wrong = html("div", { class: "wrongs", id: ids.wrong, role: "alert" });
  const button = html("button", { type: "button" }, words("addPasted"));
  const element = html("details", { class: "paste" }, html("summary", {}, words("paste")), hint, text, wrong, button);

  /** @param {string[]} sentences */
  function complain(sentences) {
    set(text, { "aria-invalid": sentences.length ? "true" : null });
    wrong.replaceChildren(
      ...sentences.map((sentence) =>
        html("p", { class: "wrong" }, html("b", { "aria-hidden": "true" }, "!"), html("span", {}, sentence)),
      ),
    );
  }

  button.addEventListener("click", () => {
    const { scenario } = store.get();
    const ends = (/** @type {string} */ name) => ({
      min: field(`${ALL}[0].${name}`)?.min ?? 0,
      max: field(`${ALL}[0].${name}`)?.max ?? Infinity,
    });
    const allowed = {
      positions: scenario.positions.map((one) => one.name),
      duration_s: ends("duration_s"),
      power_w: ends("power_w"),
    };
    const read = readEfforts(text.value, allowed);
    if ("problems" in read)
      return complain([...read.problems.map((one) => problemWords(one, allowed)), words("asItWas")]);
    if (read.efforts.length === 0) return complain([words("nothingPasted")]);
    const refused = add(read.efforts);
    complain(refused === null ? [] : [refused, words("asItWas")]);
    if (refused !== null) return;
    text.value = "";
    notify(words("added", { count: read.efforts.length }));
  });

  /** @param {Problem} problem @param {import("./efforts-text.js").Allowed} allowed */
  function problemWords({ line, wrong, text }, { duration_s, power_w }) {
    const watts = (/** @type {number} */ value) => units.quantity("power", value, store.get().units, { digits: 0 });
    const range =
      wrong === "timeRange"
        ? `${units.time(duration_s.min)}–${units.time(duration_s.max)}`
        : `${watts(power_w.min)}–${watts(power_w.max)}`;
    return words(wrong, { line, text, range });
  }

  return { element };
}
