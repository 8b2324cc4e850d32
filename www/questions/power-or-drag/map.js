// @ts-check
/** The map of finish times over power and drag area, with the rider as a ring to move and both changes as arrows. */

import { contourMap } from "../../parts/contour-map.js";
import { amountOf, sdOf, valueChanges } from "../../state/scenario.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
const shared = book("shared");
/** Watts and square metres of one press of an arrow key. */
const STEP = { x: 1, y: 0.001 };
/** The even trade is told for this many watts. */
const TRADE_W = 10;

/**
 * @param {Tools} tools @param {string} at where the question keeps its own part
 * @param {() => Answer | null} latest
 */
export function tradeMap(tools, at, latest) {
  const { store } = tools;
  const watts = (/** @type {number} */ power_w, digits = 0) =>
    units.quantity("power", power_w, store.get().units, { digits });
  const area = (/** @type {number} */ cda_m2) => units.quantity("area", cda_m2, store.get().units);
  const map = contourMap({
    title: words("mapTitle"),
    x: {
      name: words("mapX", { unit: units.unitOf("power", store.get().units).symbol }),
      meaning: "power",
      format: (power_w) => units.number(power_w),
      read: watts,
    },
    y: {
      name: words("mapY", { unit: units.unitOf("area", store.get().units).symbol }),
      meaning: "drag",
      format: (cda_m2) => units.number(cda_m2, { digits: 2 }),
      read: area,
    },
    you: {
      label: words("mapYou"),
      moves: [`${at}.effort.power_w`, "scenario.power.cp_w", "scenario.positions[0].cda_m2"],
      onMove: move,
    },
  });

  /** @param {{ x: number, y: number }} point @param {"step" | "drag" | "commit"} phase */
  function move({ x, y }, phase) {
    const answer = latest();
    if (!answer) return;
    const { columns, base_power_w, base_cda_m2 } = answer;
    const { scenario } = store.get();
    const effort = store.at(`${at}.effort`);
    const cda = `scenario.positions[${scenario.riding_position}].cda_m2`;
    /** @type {[string, unknown][]} */
    const changes = [];
    if (Math.abs(y - base_cda_m2) > 1e-9) changes.push(...valueChanges(store.at(cda), cda, y));
    if (effort.kind === "power") changes.push(...valueChanges(effort.power_w, `${at}.effort.power_w`, x));
    else if (phase !== "commit")
      changes.push(
        ...valueChanges(
          scenario.power.cp_w,
          "scenario.power.cp_w",
          Math.max(30, Math.round(amountOf(scenario.power.cp_w) + x - base_power_w)),
        ),
      );
    // The map stands still under the hand, and settles round the rider on release.
    const still = phase !== "commit";
    changes.push(
      [`${at}.map_power_w`, still ? ends(columns.power_w) : undefined],
      [`${at}.map_cda_m2`, still ? ends(columns.cda_m2) : undefined],
    );
    store.setAll(changes, { merge: `${at}.map` });
    if (!still) store.settle();
  }

  /**
   * @param {State} state @param {Answer} answer
   * @param {{ saved: { first_s: number, second_s: number }, settled: boolean, morePower: string, lessDrag: string }} told
   */
  function update(state, answer, { saved, settled, morePower, lessDrag }) {
    const { columns, exchange, base_power_w: x, base_cda_m2: y, base_time_s } = answer;
    const time = units.time(base_time_s.value);
    const [power, drag] = [watts(x), area(y)];
    const even = state.with["power-or-drag"].effort.kind === "even";
    const power_sd = sdOf(state.with["power-or-drag"].effort.power_w);
    const cda_sd = sdOf(state.scenario.positions[state.scenario.riding_position].cda_m2);
    const [powerDiffers, dragDiffers] = [units.differenceWords(saved.first_s), units.differenceWords(saved.second_s)];
    const unsure = power_sd > 0 && cda_sd > 0;
    map.update({
      grid: { xs: columns.power_w, ys: columns.cda_m2, values: columns.time_s },
      format: units.time,
      own: {
        value: base_time_s.value,
        label: words("evenTrade", { time }),
        shortLabel: time,
        rate: words("tradeRate", { watts: watts(TRADE_W), area: area(TRADE_W * exchange.m2_per_w) }),
      },
      you: { x, y, label: shared("you"), spoken: words("pointSpoken", { power, drag, time }), step: STEP },
      changes: [
        { to: { x: answer.more_power_w, y }, words: morePower, amount: powerDiffers, meaning: "power" },
        {
          to: { x: answer.less_drag_power_w, y: answer.less_drag_cda_m2 },
          words: lessDrag,
          amount: dragDiffers,
          meaning: "drag",
        },
      ],
      unsure: unsure ? { sdX: power_sd, sdY: cda_sd } : null,
      note: words("eachLine"),
      desc: words("mapDescription", { power, drag, time, morePower, powerDiffers, lessDrag, dragDiffers }),
      reading: [
        ...words.parts("mapReading", {
          power,
          drag,
          time,
          speed: units.quantity("speed", answer.base_speed_m_s, state.units, { digits: 1 }),
        }),
        " ",
        onScreen(even ? words("dragRingEven") : shared("dragRing")),
        ...(unsure ? [" ", words("dashedRing")] : []),
      ],
      ease: settled,
    });
  }

  return { element: map.element, update, destroy: map.destroy };
}

/** @param {Float64Array} column @returns {[number, number]} */
function ends(column) {
  return [column[0], column[column.length - 1]];
}
