// @ts-check
/** The small drawings that go with a colour, so that colour never speaks alone: each is the movement on its own chart. */

import { svg } from "./svg.js";

/** @typedef {"power" | "drag" | "hold" | "ground" | "you"} MarkName */

/** @type {Record<Exclude<MarkName, "you">, string>} */
const STROKES = {
  power: "M1 8H14M9 3l5 5-5 5",
  drag: "M8 1V14M3 9l5 5 5-5",
  hold: "M1 12h7l6-8",
  ground: "M1 13h13V4z",
};

/**
 * @param {MarkName} name
 * @returns {SVGSVGElement}
 */
export function mark(name) {
  const frame = svg("svg", { class: `mark ${name}`, viewBox: "0 0 16 16", "aria-hidden": "true" });
  frame.append(...markStrokes(name));
  return frame;
}

/**
 * The drawing alone, in a 16 by 16 box, for use inside a larger picture.
 * @param {MarkName} name
 * @returns {SVGElement[]}
 */
export function markStrokes(name) {
  if (name === "you") {
    return [svg("circle", { cx: 8, cy: 8, r: 5.5 }), svg("circle", { class: "dot", cx: 8, cy: 8, r: 2 })];
  }
  return [svg("path", { d: STROKES[name] })];
}
