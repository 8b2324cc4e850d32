// @ts-check
/** The two charts of "hold or fade": drag area over the ride, and the difference against the share of the ride that is held. */

import { lineChart, valueAt } from "../../parts/line-chart.js";
import { amountOf, sdOf, valueChanges } from "../../state/scenario.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";

/** @import { Tools } from "../index.js" */
/** @import { Held } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */
/** @import { Shade } from "../../parts/line-chart.js" */
/** @import { MovePhase, Point } from "../../parts/handle.js" */
/** @import { HoldOrFadeAnswer as Answer } from "../../types/core.d.ts" */

const words = book("hold-or-fade");
const shared = book("shared");

/** One press of an arrow key. */
const STEP = { time_s: 60, cda_m2: 0.001, share: 0.01 };
/** A loss that is complete within this share of the ride's time is still on the chart. */
const BEYOND_FINISH = 1.15;
/** Room above and below the curves, as a share of their height. */
const AIR = 0.22;
/** Drag areas closer than this would fill the chart with nothing. */
const LEAST_HEIGHT_M2 = 0.02;
/** The beginning of a loss is found to this, s. */
const FOUND_S = 0.1;
/** Less than this was neither gained nor given back, s. */
const LEAST_LABELLED_S = 1;

/** @param {Tools} tools @param {string} at where the question keeps its own part */
export function dragOverRide(tools, at) {
  const { store } = tools;
  const area = (/** @type {number} */ cda_m2) => units.quantity("area", cda_m2, store.get().units);
  const bare = (/** @type {number} */ cda_m2) => units.number(cda_m2, { digits: 3 });
  const chart = lineChart({
    title: words("overRideTitle"),
    x: {
      name: words("timeRidden"),
      kind: "clock",
      format: (time_s) => units.number(units.toDisplay("duration", time_s, store.get().units)),
      read: units.time,
    },
    y: {
      name: words("dragAxis"),
      meaning: "drag",
      format: (cda_m2) => units.number(cda_m2, { digits: 2 }),
      read: area,
    },
    height: (width_px) => Math.round(Math.min(270, Math.max(230, width_px * 0.42))),
    handles: {
      begins: {
        label: words("beginsHandle"),
        moves: ["scenario.positions[0].fade.begins_s"],
        directions: "x",
        meaning: "hold",
        ring: "open",
        onMove: (point, phase) => move(phase, point, ["begins_s"]),
      },
      lost: {
        label: words("lostHandle"),
        moves: ["scenario.positions[0].fade.complete_s"],
        directions: "xy",
        meaning: "hold",
        ring: "open",
        onMove: (point, phase) => move(phase, point, ["complete_s", "tired_cda_m2"]),
      },
    },
    reader: words("overRideReader"),
  });

  /** @param {MovePhase} phase @param {Point} point @param {string[]} names */
  function move(phase, { x, y }, names) {
    const fade = `scenario.positions[${store.at(`${at}.low`)}].fade`;
    const given = /** @type {Record<string, number>} */ ({ begins_s: x, complete_s: x, tired_cda_m2: y });
    store.setAll(
      names.flatMap((name) => valueChanges(store.at(`${fade}.${name}`), `${fade}.${name}`, given[name])),
      { merge: `${fade} ${names[0]}` },
    );
    if (phase === "commit") store.settle();
  }

  /** @param {State} state @param {Answer} answer @param {{ gained_s: number, given_back_s: number, settled: boolean }} told */
  function update(
    state,
    { columns, low_cda_m2, steady_mean_cda_m2, low_held_time_s, passes_s },
    { gained_s, given_back_s, settled },
  ) {
    const { time_s: xs, low_cda_m2: low, steady_cda_m2: kept } = columns;
    const finish_s = xs[xs.length - 1];
    const fade = state.scenario.positions[state.with["hold-or-fade"].low].fade;
    const [begins_s, complete_s, tired_m2] = [fade?.begins_s, fade?.complete_s, fade?.tired_cda_m2].map((held) =>
      amountOf(held ?? NaN),
    );
    const onChart = fade && complete_s <= finish_s * BEYOND_FINISH;
    const last_s = onChart ? Math.max(finish_s, complete_s) : finish_s;
    const tired = area(tired_m2 ?? low[low.length - 1]);
    chart.update({
      desc: fade
        ? words("overRideFades", {
            kept: area(steady_mean_cda_m2),
            low: area(low_cda_m2),
            begins: units.time(begins_s),
            tired,
            complete: units.time(complete_s),
          })
        : words("overRideHeld", { kept: area(steady_mean_cda_m2), low: area(low_cda_m2) }),
      x: { domain: [0, last_s] },
      y: { domain: around([...low, ...kept, low_cda_m2, ...(onChart ? [tired_m2] : [])]) },
      series: [
        {
          name: words("keptLine"),
          xs,
          ys: kept,
          meaning: "drag",
          label: words("keptLineLabel", { area: bare(kept[0]) }),
          shortLabel: words("keptLineShort", { area: bare(kept[0]) }),
          labelAt: "start",
        },
        {
          name: words("lowLine"),
          xs,
          ys: low,
          meaning: "hold",
          label: words("lowLine"),
          shortLabel: words("lowLineShort"),
          labelAt: "start",
        },
        ...(fade && begins_s < finish_s
          ? [
              {
                name: words("ifHeld"),
                xs: [begins_s, finish_s],
                ys: [low_cda_m2, low_cda_m2],
                meaning: /** @type {const} */ ("hold"),
                stroke: /** @type {const} */ ("dotted"),
                label: words("ifHeldTime", { time: units.time(low_held_time_s.value) }),
                shortLabel: words("ifHeldShort"),
                unread: true,
              },
            ]
          : []),
      ],
      shades: shades(columns, passes_s, gained_s, given_back_s),
      points:
        fade && begins_s < finish_s && sdOf(fade.begins_s) > 0
          ? [{ x: begins_s, y: low_cda_m2, sdX: sdOf(fade.begins_s), meaning: "hold", shape: "none" }]
          : [],
      handles: fade
        ? {
            ...(begins_s <= last_s && {
              begins: {
                x: begins_s,
                y: low_cda_m2,
                spoken: words("startsAt", { time: units.time(begins_s) }),
                step: { x: STEP.time_s },
                rangeX: [0, Math.min(complete_s, last_s)],
              },
            }),
            ...(onChart && {
              lost: {
                x: complete_s,
                y: tired_m2,
                label: words("lostArea", { area: bare(tired_m2) }),
                spoken: words("areaBy", { area: tired, time: units.time(complete_s) }),
                step: { x: STEP.time_s, y: STEP.cda_m2 },
                rangeX: [begins_s, last_s],
              },
            }),
          }
        : {},
      reading: fade ? onScreen(words("dragRings")) : words("meanShown"),
      ease: settled,
    });
  }

  /**
   * The area between the two while the low one is the lower, and after.
   * @param {Answer["columns"]} columns @param {number | null} passes_s @param {number} gained_s @param {number} given_back_s @returns {Shade[]}
   */
  function shades({ time_s, low_cda_m2: low, steady_cda_m2: kept }, passes_s, gained_s, given_back_s) {
    const tie_s = passes_s ?? (low[low.length - 1] <= kept[kept.length - 1] ? Infinity : -Infinity);
    const meeting =
      passes_s === null
        ? []
        : [
            {
              x: passes_s,
              low: valueAt({ name: "", xs: time_s, ys: kept }, passes_s),
              kept: valueAt({ name: "", xs: time_s, ys: kept }, passes_s),
            },
          ];
    const all = Array.from(time_s, (x, i) => ({ x, low: low[i], kept: kept[i] }));
    const before = [...all.filter(({ x }) => x < tie_s), ...meeting];
    const after = [...meeting, ...all.filter(({ x }) => x > tie_s)];
    return [
      shade(
        before,
        "drag",
        gained_s >= LEAST_LABELLED_S
          ? [words("gained", { time: units.time(gained_s) }), words("gained", { time: units.time(gained_s) })]
          : undefined,
      ),
      shade(
        after,
        "hold",
        given_back_s >= LEAST_LABELLED_S
          ? [
              words("givenBack", { time: units.time(given_back_s) }),
              words("givenBackShort", { time: units.time(given_back_s) }),
            ]
          : undefined,
      ),
    ].filter(({ xs }) => xs.length > 1);
  }

  return { element: chart.element, update, destroy: chart.destroy };
}

/** @param {{ x: number, low: number, kept: number }[]} points @param {"drag" | "hold"} meaning @param {[label: string, shortLabel: string]} [labels] @returns {Shade} */
function shade(points, meaning, labels) {
  return {
    xs: points.map(({ x }) => x),
    low: points.map(({ low, kept }) => Math.min(low, kept)),
    high: points.map(({ low, kept }) => Math.max(low, kept)),
    meaning,
    ...(labels && { label: labels[0], shortLabel: labels[1] }),
  };
}

/** A range that leaves some air about the values. @param {number[]} values @returns {[number, number]} */
function around(values) {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const air = Math.max((high - low) * AIR, LEAST_HEIGHT_M2 / 4);
  return [low - air, high + air];
}

/** @param {Tools} tools @param {string} at @param {() => { state: State, answer: Answer } | null} shown */
export function differenceByShare(tools, at, shown) {
  const { store } = tools;
  const amount = (/** @type {number} */ seconds) =>
    Math.round(seconds) === 0 ? shared("level") : units.time(Math.abs(seconds));
  const chart = lineChart({
    title: words("byShareTitle"),
    x: {
      name: words("shareAxis"),
      meaning: "hold",
      format: (share) => units.number(share * 100),
      read: (share) => units.percent(share),
    },
    y: {
      name: words("differenceAxis"),
      kind: "clock",
      format: amount,
      read: (seconds) => units.difference(seconds).words,
    },
    height: (width_px) => Math.round(Math.min(300, Math.max(250, width_px * 0.46))),
    handles: {
      you: {
        label: words("shareHandle"),
        moves: ["scenario.positions[0].fade.begins_s"],
        directions: "x",
        meaning: "hold",
        onMove: move,
      },
    },
    reader: words("byShareReader"),
  });

  /** Holding it for longer moves the whole loss later; with lapses alone it makes them rarer. @param {Point} point @param {MovePhase} phase */
  function move({ x }, phase) {
    const now = shown();
    const low = `scenario.positions[${store.at(`${at}.low`)}]`;
    if (phase === "commit") store.settle();
    if (!now || phase === "commit" || now.answer.held_share === null) return;
    const {
      held_share,
      columns: { time_s },
    } = now.answer;
    // From the position as it was answered: the store may be a move ahead.
    const { fade, lapses } = now.state.scenario.positions[now.state.with["hold-or-fade"].low];
    /** @type {[string, unknown][]} */
    let changes = [];
    if (fade) {
      const { heldFor, beginsFor, aside } = lossOver(fade, time_s[time_s.length - 1], held_share);
      const begins_s = Math.max(0, Math.round(beginsFor(Math.max(heldFor(0), x - aside)) / STEP.time_s) * STEP.time_s);
      const complete_s = begins_s + amountOf(fade.complete_s) - amountOf(fade.begins_s);
      changes = [
        ...valueChanges(fade.begins_s, `${low}.fade.begins_s`, begins_s),
        ...valueChanges(fade.complete_s, `${low}.fade.complete_s`, complete_s),
      ];
    } else if (lapses?.length)
      changes = valueChanges(lapses[0].share, `${low}.lapses[0].share`, Number((1 - x).toFixed(4)));
    store.setAll(changes, { merge: `${low} share` });
  }

  /** What can be held by moving the loss: none of it is before the start. @param {State} state @param {Answer} answer @returns {[number, number]} */
  function rangeOf(
    {
      scenario,
      with: {
        "hold-or-fade": { low },
      },
    },
    { held_share, columns: { time_s } },
  ) {
    const { fade } = scenario.positions[low];
    if (!fade) return [0, 1];
    const { heldFor, aside } = lossOver(fade, time_s[time_s.length - 1], held_share ?? 0);
    return [Math.max(0, heldFor(0) + aside), Math.min(1, 1 + aside)];
  }

  /** @param {State} state @param {Answer} answer @param {{ whole_s: number, settled: boolean }} told */
  function update(state, answer, { whole_s, settled }) {
    const { columns, held_share, held_difference_s, break_even, difference_s } = answer;
    const { share: xs, difference_s: ys, difference_sd_s: sds } = columns;
    chart.element.hidden = xs.length === 0;
    if (xs.length === 0) return;
    const low = Array.from(ys, (y, i) => y - sds[i]);
    const high = Array.from(ys, (y, i) => y + sds[i]);
    const [least, most] = [Math.min(0, ...low), Math.max(0, ...high)];
    const air = (most - least) * 0.08;
    const tie = break_even.held_share;
    const you =
      held_share === null
        ? null
        : { share: units.percent(held_share), difference: units.difference(whole_s || difference_s.value).words };
    chart.update({
      desc: tie === null ? words("noTie") : words("tieAt", { share: units.percent(tie) }),
      x: { domain: [0, 1] },
      y: { domain: [least - air, most + air] },
      series: [
        {
          name: words("lowIs"),
          xs,
          ys,
          low,
          high,
          meaning: "hold",
          label: words("heldToEnd", { difference: units.difference(Math.round(held_difference_s.value)).words }),
          shortLabel: words("heldToEndShort", {
            difference: units.difference(Math.round(held_difference_s.value)).short,
          }),
        },
      ],
      levels: [
        {
          y: 0,
          above: words("lowFaster"),
          below: words("lowSlower"),
          shortAbove: "",
          shortBelow: words("slowerBelow"),
        },
      ],
      points:
        tie === null ? [] : [{ x: tie, y: 0, drop: true, label: words("levelMark", { share: units.percent(tie) }) }],
      handles:
        you === null || held_share === null
          ? {}
          : {
              you: {
                x: held_share,
                y: difference_s.value,
                label: words("youHold", { share: you.share }),
                strong: you.difference,
                spoken: `${you.share}, ${you.difference}`,
                step: { x: STEP.share },
                rangeX: rangeOf(state, answer),
              },
            },
      reading:
        you === null
          ? ""
          : tie === null
            ? words.parts("holdReadingNone", { held: you.share })
            : words.parts("holdReading", { held: you.share, share: units.percent(tie) }),
      ease: settled,
    });
  }

  return { element: chart.element, update, destroy: chart.destroy };
}

/**
 * The share that is held of a ride for a loss that begins at a time and grows evenly, and the other way round. `aside` is what the share
 * differs by for other reasons, such as lapses.
 * @param {{ begins_s: Held, complete_s: Held }} fade @param {number} finish_s @param {number} held_share
 */
function lossOver({ begins_s, complete_s }, finish_s, held_share) {
  const grows_s = amountOf(complete_s) - amountOf(begins_s);
  /** @param {number} from_s */
  const lost_s = (from_s) => {
    const left_s = Math.max(0, finish_s - from_s);
    return left_s >= grows_s ? left_s - grows_s / 2 : (left_s * left_s) / (2 * grows_s || 1);
  };
  const heldFor = (/** @type {number} */ from_s) => 1 - lost_s(from_s) / finish_s;
  return {
    heldFor,
    /** Found by halving, since more is held the later the loss begins. @param {number} share */
    beginsFor(share) {
      let [early_s, late_s] = [0, finish_s];
      while (late_s - early_s > FOUND_S) {
        const middle_s = (early_s + late_s) / 2;
        if (heldFor(middle_s) < share) early_s = middle_s;
        else late_s = middle_s;
      }
      return late_s;
    },
    aside: held_share - heldFor(amountOf(begins_s)),
  };
}
