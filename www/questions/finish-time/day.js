// @ts-check
/** The day along the road: the head wind, the ways that the course leads, when to start, and what each error of the forecast costs. */

import { compass } from "../../parts/compass.js";
import { html, say, set } from "../../parts/html.js";
import { lineChart } from "../../parts/line-chart.js";
import { table } from "../../parts/table.js";
import { amountOf } from "../../state/scenario.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { listOf } from "../shared/list.js";
import { windEnds } from "./day-wind.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Kind } from "../../units.js" */
/** @import { Day, FinishTimeAnswer as Answer } from "../../types/core.d.ts" */
/** @import { MovePhase } from "../../parts/handle.js" */
/** @import { Shown } from "../shared/shell.js" */

const words = book("finish-time");
const unitWords = book("units");
const START = "scenario.conditions.later.start_at_s";
/** Starts are chosen by the quarter of an hour. */
const START_STEP_S = 900;
/** A way is named where at least this share of the course leads it. */
const LEAST_SHARE = 0.05;
/** Headings of four quarters, in sixteenths. */
const QUARTERS = [0, 4, 8, 12];

/** @param {Tools} tools */
export function dayAlongTheRoad({ store, label, field }) {
  const points = unitWords("compass").split(" ");
  const height = (/** @type {number} */ width) => Math.round(Math.min(240, Math.max(190, width * 0.32)));
  const unit = (/** @type {Kind} */ kind) => ({ unit: show.unitOf(kind, store.get().units).symbol });
  const number = (/** @type {number} */ value) => show.number(value);
  const wind = lineChart({
    title: words("windTitle"),
    height,
    x: { name: words("alongAxis", unit("distance")), format: number },
    y: { name: words("windAxis", unit("wind")), format: number },
    reader: words("readWind"),
  });
  const starts = lineChart({
    title: words("startTitle"),
    height,
    x: {
      name: words("startAxis"),
      kind: "clock",
      format: (at_s) => show.quantity("time_of_day", at_s, store.get().units),
    },
    y: { name: words("finishAxis"), kind: "clock", format: show.time },
    handles: {
      start: {
        label: words("startHandle"),
        moves: [START],
        directions: "x",
        onMove: ({ x }, /** @type {MovePhase} */ phase) => {
          if (phase === "commit") return store.settle();
          store.set(START, Math.round(x / START_STEP_S) * START_STEP_S, { merge: "start" });
        },
      },
    },
    reader: words("readStart"),
  });
  const ways = compass({ title: words("compassTitle") });
  const waysNote = html("p", {});
  const errors = table({ caption: words("errorsCaption") });
  const errorsNote = html("p", {}, words("errorsNote"));

  /** @param {State} state @param {Answer} answer @param {Day} day */
  function drawWind({ units }, answer, day) {
    const ends = windEnds(day);
    set(wind.element, { hidden: !ends });
    if (!ends) return;
    const blowing = (/** @type {number} */ m_s) => show.quantity("wind", m_s, units, { digits: 1 });
    const far = (/** @type {number} */ m) => show.toDisplay("distance", m, units);
    const ys = Float64Array.from(day.columns.along_head_wind_m_s, (m_s) => show.toDisplay("wind", m_s, units));
    const [low, high] = [ends.low, ends.high].map((m_s) => show.toDisplay("wind", m_s, units));
    const room = Math.max(1, 0.15 * (high - low));
    const told = words("windReading", { low: blowing(ends.low), high: blowing(ends.high) });
    wind.update({
      desc: told,
      x: {
        domain: [0, far(answer.distance_m.value)],
        read: (shown) => show.quantity("distance", show.fromDisplay("distance", shown, units), units, { digits: 1 }),
      },
      y: {
        domain: [Math.min(0, low) - room, Math.max(0, high) + room],
        read: (shown) => blowing(show.fromDisplay("wind", shown, units)),
      },
      series: [{ name: words("windSeries"), xs: Float64Array.from(answer.columns.along_m, far), ys }],
      levels: [{ y: 0, quiet: true, above: words("againstYou"), below: words("behindYou") }],
      reading: [told],
    });
  }

  /** @param {State} state @param {Answer} answer @param {Day} day */
  function drawStarts({ units, scenario }, answer, { columns }) {
    const xs = columns.start_at_s;
    set(starts.element, { hidden: xs.length < 2 });
    const { later } = scenario.conditions;
    if (!later || xs.length < 2) return;
    const clock = (/** @type {number} */ at_s) => show.quantity("time_of_day", at_s, units);
    const own = amountOf(later.start_at_s);
    const times = [...columns.start_time_s, answer.time_s.value];
    const room = Math.max(15, 0.2 * (Math.max(...times) - Math.min(...times)));
    const domain = /** @type {const} */ ([Math.min(own, xs[0]), Math.max(own, xs[xs.length - 1])]);
    const figure = show.time(answer.time_s.value);
    const told = words.parts("startReading", { at: clock(own), time: figure });
    starts.update({
      desc: words("startDescription", { at: clock(own), time: figure }),
      x: { domain, read: clock },
      y: { domain: [Math.min(...times) - room, Math.max(...times) + room], read: show.time },
      series: [{ name: words("startSeries"), xs, ys: columns.start_time_s }],
      handles: {
        start: {
          x: own,
          y: answer.time_s.value,
          label: clock(own),
          strong: figure,
          spoken: words("startDescription", { at: clock(own), time: figure }),
          step: { x: START_STEP_S },
          rangeX: domain,
        },
      },
      reading: told,
    });
  }

  /** @param {State} state @param {Day} day */
  function drawWays({ units, scenario: { conditions } }, { heading_shares: shares }) {
    for (const element of [ways.element, waysNote]) set(element, { hidden: !shares.length });
    if (!shares.length) return;
    const { later } = conditions;
    const strength = (/** @type {number} */ m_s) => show.quantity("wind", m_s, units, { digits: 0 });
    const clock = (/** @type {number} */ at_s) => show.quantity("time_of_day", at_s, units);
    const first = {
      speed_m_s: amountOf(conditions.wind_speed_m_s) ?? 0,
      from_deg: amountOf(conditions.wind_from_deg) ?? 0,
      at_s: later && amountOf(later.first_at_s),
    };
    const then = later && {
      speed_m_s: amountOf(later.wind_speed_m_s),
      from_deg: amountOf(later.wind_from_deg),
      at_s: amountOf(later.at_s),
    };
    const blowing = [first, ...(then ? [then] : [])].filter(({ speed_m_s }) => speed_m_s > 0);
    const named = blowing.map(({ speed_m_s, from_deg, at_s }) => ({
      from_deg,
      name: at_s === undefined ? "" : clock(at_s),
      told: words("windFromWay", { wind: strength(speed_m_s), from: `${Math.round(from_deg)}°` }),
    }));
    const most = shares
      .map((share, index) => ({ share, name: points[index] }))
      .filter(({ share }) => share >= LEAST_SHARE)
      .sort((a, b) => b.share - a.share)
      .map(({ share, name }) => words("wayShare", { way: name, share: show.percent(share) }));
    const winds = listOf(named.map(({ name, told }) => (name ? words("windAt", { at: name, wind: told }) : told)));
    const spoken = words(winds ? "compassSpoken" : "compassCalm", { ways: listOf(most), winds });
    ways.update({ shares, winds: named, letters: QUARTERS.map((index) => points[index]), spoken });
    say(waysNote, spoken);
  }

  /** @param {State} state @param {Day} day */
  function drawErrors({ units }, { forecast_errors: costs }) {
    set(errors.element, { hidden: !costs.length });
    set(errorsNote, { hidden: !costs.length });
    errors.update({
      columns: [words("forecastOf"), words("wrongBy"), words("movesTime")],
      rows: costs.map(({ field: path, error, costs_s }) => [
        label(path) || path,
        show.plusMinus(field(path)?.kind ?? "ratio", error, units),
        show.plusMinusTime(costs_s),
      ]),
    });
  }

  return {
    element: html(
      "div",
      { class: "the-day" },
      ways.element,
      waysNote,
      wind.element,
      starts.element,
      errors.element,
      errorsNote,
    ),
    /** @param {Shown<Answer>} shown */
    update({ state, answer }) {
      const { day } = answer;
      if (!day) return;
      drawWays(state, day);
      drawWind(state, answer, day);
      drawStarts(state, answer, day);
      drawErrors(state, day);
    },
    destroy() {
      for (const part of [wind, starts, errors]) part.destroy();
    },
  };
}
