// @ts-check
/** One turn of the crank: both riders from the side, and what hip and thigh do, all at the same crank angle. */

import { html, say, strong } from "../../parts/html.js";
import { legFigure } from "../../parts/leg-figure.js";
import { lineChart } from "../../parts/line-chart.js";
import { turner } from "../../parts/turner.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";
import { angle, crankAngle, turning, words } from "./texts.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { LegRoomAnswer as Answer, LegRoomColumns as Columns, SetUpAnswer } from "../../types/core.d.ts" */

const shared = book("shared");
const LEFT_PX = 52;
/** The curves are drawn at every third degree, some five pixels apart. */
const DRAWN_DEG = 3;
const QUARTERS_DEG = [0, 90, 180, 270, 360];

export function turnViews() {
  /** Where the crank is; follows the tightest place until somebody turns it. @type {number | null} */
  let turned_deg = null;
  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;

  const figure = legFigure({
    title: words("figure.title"),
    looks: [
      { meaning: "ground", stroke: "dashed" },
      { meaning: "hold", stroke: "solid" },
    ],
  });
  const reading = html("p", { class: "figure-reading no-print" });
  const slider = turner({
    label: words("figure.slider"),
    play: words("figure.play"),
    pause: words("figure.pause"),
    spoken: (deg) => (shown ? words("figure.sliderValue", { angle: crankAngle(deg, shown.state.units) }) : String(deg)),
    jumps: [
      { name: words("figure.tightest"), to: () => shown && Math.round(shown.answer.b.tightest_at_deg) },
      { name: words("figure.straightest"), to: () => shown && Math.round(shown.answer.b.straightest_at_deg) },
    ],
    onTurn(deg, phase) {
      if (placing) return;
      turned_deg = deg;
      drawFigure();
      // The charts are heavier than the figure, and follow when the crank rests.
      if (phase === "settled") drawCharts(false);
    },
  });
  const view = html(
    "figure",
    { class: "leg-view", "aria-label": words("figure.title") },
    figure.element,
    reading,
    slider.element,
  );
  let placing = false;

  const format = (/** @type {number} */ v) => units.number(v, { digits: 0 });
  const x = {
    name: "",
    format: (/** @type {number} */ v) => `${format(v)}°`,
    domain: /** @type {const} */ ([0, 360]),
    ticks: QUARTERS_DEG,
    read: (/** @type {number} */ v) => `${format(v)}°`,
  };
  const handles = {
    you: {
      label: words("chart.handle"),
      directions: /** @type {const} */ ("x"),
      onMove: (/** @type {{ x: number }} */ to) => turnTo(to.x),
    },
  };
  const hip = lineChart({
    title: words("chart.hipTitle"),
    height: (width) => Math.round(Math.min(260, Math.max(200, width * 0.42))),
    x,
    y: { name: "", meaning: "hold", format },
    reader: words("chart.hipReader"),
    handles,
  });
  const thigh = lineChart({
    title: words("chart.thighTitle"),
    height: (width) => Math.round(Math.min(240, Math.max(190, width * 0.38))),
    x,
    y: { name: "", format },
    reader: words("chart.thighReader"),
  });

  /** @param {number} deg */
  function turnTo(deg) {
    slider.stop();
    slider.place(Math.round(deg) % 360);
  }

  /** @param {Answer} answer */
  const placeOf = (answer) => turned_deg ?? Math.round(answer.b.tightest_at_deg);

  function drawFigure() {
    if (!shown) return;
    const {
      state: { units: shownUnits },
      answer,
    } = shown;
    const at = placeOf(answer);
    const text = (/** @type {keyof Columns} */ column) => angle(answer.columns[column][at], shownUnits);
    const said = {
      angle: crankAngle(at, shownUnits),
      hip_a: text("a_hip_deg"),
      hip_b: text("b_hip_deg"),
      knee_a: text("a_knee_deg"),
      knee_b: text("b_knee_deg"),
    };
    figure.update({
      poses: [
        { ...poseOf(answer, "a", at), name: words("figure.now"), angle: said.hip_a },
        { ...poseOf(answer, "b", at), name: words("figure.new"), angle: said.hip_b },
      ],
      spoken: words("figure.spoken", said),
    });
    say(reading, words.parts("figure.reading", said));
  }

  /** @param {boolean} ease */
  function drawCharts(ease) {
    if (!shown) return;
    const {
      state: { units: shownUnits },
      answer,
    } = shown;
    const { a, b, columns } = answer;
    const at = placeOf(answer);
    const read = (/** @type {number} */ v) => angle(v, shownUnits);
    const axis = { name: words("chart.crank") };
    const xs = drawn(columns.crank_deg);
    const both = (/** @type {"hip_deg" | "thigh_deg_s"} */ of) => [
      {
        name: words("chart.now"),
        xs,
        ys: drawn(columns[`a_${of}`]),
        meaning: /** @type {const} */ ("ground"),
        stroke: /** @type {const} */ ("dashed"),
        label: words("chart.now"),
        labelAt: /** @type {const} */ ("start"),
      },
      {
        name: words("chart.new"),
        xs,
        ys: drawn(columns[`b_${of}`]),
        meaning: /** @type {const} */ ("hold"),
        label: words("chart.new"),
        labelAt: /** @type {const} */ ("end"),
      },
    ];
    const hipHere = columns.b_hip_deg[at];
    hip.update({
      leftMargin: LEFT_PX,
      ease,
      desc: words("chart.hipDesc", {
        at_a: crankAngle(a.tightest_at_deg, shownUnits),
        hip_a: read(a.tightest_hip_deg.value),
        at_b: crankAngle(b.tightest_at_deg, shownUnits),
        hip_b: read(b.tightest_hip_deg.value),
      }),
      x: axis,
      y: { name: `${words("chart.hip")}, °`, domain: domainOf([columns.a_hip_deg, columns.b_hip_deg], 10), read },
      series: both("hip_deg"),
      handles: {
        you: {
          x: at,
          y: hipHere,
          strong: read(hipHere),
          spoken: words("figure.sliderValue", { angle: crankAngle(at, shownUnits) }),
          step: { x: 1 },
          rangeX: [0, 359],
        },
      },
      reading: [
        strong(crankAngle(at, shownUnits)),
        ": ",
        words("chart.now"),
        " ",
        strong(read(columns.a_hip_deg[at])),
        ", ",
        words("chart.new"),
        " ",
        strong(read(hipHere), "hold"),
        ". ",
        onScreen(shared("dragRing")),
      ],
    });
    const readSpeed = (/** @type {number} */ v) => turning(v, shownUnits, { signed: true });
    thigh.update({
      leftMargin: LEFT_PX,
      ease,
      desc: words("chart.thighDesc", {
        at_a: crankAngle(a.fastest_at_deg, shownUnits),
        thigh_a: turning(a.fastest_thigh_deg_s.value, shownUnits),
        at_b: crankAngle(b.fastest_at_deg, shownUnits),
        thigh_b: turning(b.fastest_thigh_deg_s.value, shownUnits),
      }),
      x: axis,
      y: {
        name: `${words("chart.thigh")}, °/s`,
        domain: domainOf([columns.a_thigh_deg_s, columns.b_thigh_deg_s], 100),
        read: readSpeed,
      },
      series: both("thigh_deg_s"),
      levels: [{ y: 0, quiet: true }],
      points: [
        { x: at, y: columns.b_thigh_deg_s[at], meaning: "hold" },
        { x: at, y: columns.a_thigh_deg_s[at], meaning: "ground", shape: "ring" },
      ],
      reading: [
        strong(crankAngle(at, shownUnits)),
        ": ",
        words("chart.now"),
        " ",
        strong(readSpeed(columns.a_thigh_deg_s[at])),
        ", ",
        words("chart.new"),
        " ",
        strong(readSpeed(columns.b_thigh_deg_s[at]), "hold"),
        ".",
      ],
    });
  }

  return {
    elements: [view, hip.element, thigh.element],
    /** @param {State} state @param {Answer} answer @param {boolean} settled */
    update(state, answer, settled) {
      shown = { state, answer };
      if (turned_deg === null) {
        placing = true;
        slider.place(placeOf(answer));
        placing = false;
      }
      drawFigure();
      drawCharts(settled);
    },
    destroy() {
      slider.destroy();
      figure.destroy();
      hip.destroy();
      thigh.destroy();
    },
  };
}

/** @param {Answer} answer @param {"a" | "b"} side @param {number} at */
function poseOf({ columns, ...sides }, side, at) {
  const { hip, shoulder, pads, saddle } = /** @type {SetUpAnswer} */ (sides[side]);
  const joint = (/** @type {"knee" | "ankle" | "pedal"} */ name) => ({
    x_m: columns[`${side}_${name}_x_m`][at],
    y_m: columns[`${side}_${name}_y_m`][at],
  });
  return { hip, shoulder, pads, saddle, knee: joint("knee"), ankle: joint("ankle"), pedal: joint("pedal") };
}

/** Round ends around all of some columns. @param {ArrayLike<number>[]} columns @param {number} step @returns {[number, number]} */
function domainOf(columns, step) {
  const all = columns.flatMap((column) => Array.from(column));
  return [Math.floor(Math.min(...all) / step) * step, Math.ceil(Math.max(...all) / step) * step];
}

/** @param {Float64Array} column of every degree */
const drawn = (column) => column.filter((_, degree) => degree % DRAWN_DEG === 0);
