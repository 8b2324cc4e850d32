// @ts-check
/** One recorded ride: what was read of it, its picture, its laps, and what gives it laps. */

import most from "fasterby-most";
import { html, say, set } from "../../parts/html.js";
import { rideOf } from "../../recordings/asked-laps.js";
import { heldRecording } from "../../recordings/held.js";
import { noteWords } from "../../recordings/said.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { lapsEditor } from "./laps.js";
import { outline } from "./outline.js";
import { patternPick } from "./pattern.js";
import { rideChart } from "./ride-chart.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Recording, Span } from "../../recordings/read.js" */
/** @import { TestRow as Row } from "../../types/core.d.ts" */
/** @import { LapForm } from "../../types/page.d.ts" */

const words = book("drag-test");
const AT = "with.drag-test.laps";
/** A lap that is added by hand begins as long as this, s. */
const NEW_LAP_S = 180;
/** A gap shorter than this is none to put a lap in, s. */
const LEAST_ROOM_S = 10;

/** @param {Tools} tools @param {number} ride its place among the rides @param {() => void} remove */
export function rideBox(tools, ride, remove) {
  const { store } = tools;
  let chosen = -1;
  /** What its notes say. */
  let noted = "";
  /** @type {() => void} */
  let redraw = () => {};
  const title = html("h3");
  const notes = html("ul", { class: "soft ride-notes" });
  const missing = html("p", { class: "takes" }, words("notOpen"));
  const chart = rideChart(tools, ride);
  const way = outline();
  const laps = lapsEditor(tools, {
    choose(at) {
      chosen = chosen === at ? -1 : at;
      redraw();
    },
    end_s: () => recording()?.columns.time_s.at(-1) ?? 0,
    focus: () => byHand.focus(),
  });
  const byRounds = html("button", { type: "button" });
  const byButton = html("button", { type: "button" });
  const byHand = html("button", { type: "button" }, words("addLap"));
  const pattern = patternPick(tools, ownLaps);
  const away = html("button", { type: "button" }, words("removeRide"));
  const actions = html("p", { class: "row-actions" }, byRounds, byButton, byHand, away);
  const picture = html("div", { class: "ride-picture" }, chart.element, way.element);
  const element = html(
    "section",
    { class: "ride", "aria-label": words("ride", { number: ride + 1 }) },
    title,
    notes,
    missing,
    picture,
    actions,
    pattern.element,
    laps.element,
  );

  /** @returns {Recording | undefined} */
  const recording = () => heldRecording(store.get().with["drag-test"].rides[ride]);
  const all = () => /** @type {LapForm[]} */ (store.at(AT) ?? []);

  function ownLaps() {
    return all()
      .map((lap, at) => ({ lap, at }))
      .filter(({ lap }) => rideOf(lap) === ride);
  }

  /** In place of the laps that the ride has. @param {readonly Span[]} spans */
  function replace(spans) {
    const had = ownLaps().length;
    const others = all().filter((lap) => rideOf(lap) !== ride);
    store.set(AT, [...others, ...spans.slice(0, most.drag_rows - others.length).map((span) => lapOf(span, ride))]);
    if (had) tools.notify(words("lapsReplaced"), { label: words("undo"), run: () => store.undo() });
  }

  function add() {
    const room = freeSpan(
      ownLaps().map(({ lap }) => lap),
      recording()?.columns.time_s.at(-1) ?? 0,
    );
    if (!room || all().length >= most.drag_rows) return tools.notify(words("noRoom"));
    store.set(AT, [...all(), lapOf(room, ride)]);
    chosen = all().length - 1;
    redraw();
  }

  byRounds.addEventListener("click", () => replace(recording()?.rounds ?? []));
  byButton.addEventListener("click", () => replace(recording()?.laps ?? []));
  byHand.addEventListener("click", add);
  away.addEventListener("click", remove);

  return {
    element,
    destroy: chart.destroy,
    /** @param {State} state @param {CoreError | null} error @param {ReadonlyMap<number, Row>} answered */
    update(state, error, answered) {
      redraw = () => draw(state, error, answered);
      return draw(state, error, answered);
    },
  };

  /** @param {State} state @param {CoreError | null} error @param {ReadonlyMap<number, Row>} answered */
  function draw(state, error, answered) {
    const read = recording();
    const own = ownLaps();
    if (!own.some(({ at }) => at === chosen)) chosen = -1;
    set(missing, { hidden: Boolean(read) });
    for (const part of [picture, notes, actions, pattern.element]) set(part, { hidden: !read });
    title.textContent = read ? summaryWords(read, ride, state) : words("ride", { number: ride + 1 });
    if (!read) {
      laps.element.hidden = true;
      return false;
    }
    const sentences = read.notes.map((note) => noteWords(note, state.units));
    if (sentences.join("\n") !== noted) notes.replaceChildren(...sentences.map((sentence) => html("li", {}, sentence)));
    noted = sentences.join("\n");
    say(byRounds, words("byRounds", { count: read.rounds.length }));
    say(byButton, words("byButton", { count: read.laps.length }));
    set(byRounds, { hidden: read.rounds.length === 0 });
    set(byButton, { hidden: read.laps.length < 2 });
    pattern.update(state, own.length);
    chart.update(state, read, own, chosen);
    way.update(read, own.find(({ at }) => at === chosen)?.lap ?? null);
    return laps.update(state, error, own, chosen, answered);
  }
}

/** The first stretch of a ride that no lap has, at most as long as a new lap; null where there is none. @param {readonly Span[]} laps @param {number} end_s @returns {Span | null} */
function freeSpan(laps, end_s) {
  const inOrder = laps.toSorted((one, other) => one.from_s - other.from_s);
  let from_s = 0;
  for (const { from_s: next_s, to_s } of [...inOrder, { from_s: end_s, to_s: end_s }]) {
    if (next_s - from_s >= LEAST_ROOM_S) return { from_s, to_s: Math.min(next_s, from_s + NEW_LAP_S) };
    from_s = Math.max(from_s, to_s);
  }
  return null;
}

/** @param {Span} span @param {number} ride @returns {LapForm} */
export const lapOf = ({ from_s, to_s }, ride) => ({ recording: ride, from_s, to_s, position: 0 });

/** "Ride 1: 1:02:03, 32 km, 245 W". @param {Recording} recording @param {number} ride @param {State} state */
function summaryWords({ summary }, ride, { units }) {
  const { elapsed_s, distance_m, mean_power_w } = summary;
  const figures = [
    elapsed_s === null ? "" : show.time(elapsed_s),
    distance_m === null ? "" : show.quantity("distance", distance_m, units, { digits: 1 }),
    mean_power_w === null ? "" : show.quantity("power", mean_power_w, units, { digits: 0 }),
  ];
  return words("rideSummary", { number: ride + 1, list: figures.filter(Boolean).join(", ") });
}
