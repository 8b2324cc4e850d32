// @ts-check
/** A point on a chart that can be dragged, or moved with the arrow keys: along, up and down, or both. */

import { set } from "./html.js";
import { keepStill } from "./keep-still.js";
import { px, svg } from "./svg.js";
/** @import { Meaning } from "./html.js" */
/** @import { Scale } from "./axes.js" */

/** @typedef {"step" | "drag" | "commit"} MovePhase */
/** @typedef {{ x: number, y: number }} Point In the chart's own units. */
/** @typedef {readonly [number, number]} Range */

/**
 * @typedef {object} HandleOptions
 * @property {string} label What moving it changes: "You on the map: left and right change power, up and down change drag area".
 * @property {readonly string[]} [moves] The paths of the numbers that it changes, for pages on which some are fixed.
 * @property {"x" | "y" | "xy"} [directions]
 * @property {Meaning | null} [meaning]
 * @property {"you" | "open"} [ring] The ring with a dot always means you; other points are open rings.
 * @property {(point: Point, phase: MovePhase) => void} onMove Given points in range only.
 */

/**
 * @typedef {object} HandleData
 * @property {number} x
 * @property {number} y
 * @property {string} [name] What moving it changes, where that depends on the data.
 * @property {string} spoken Both values in words: "260 watts at 0.242 square metres, 59:04".
 * @property {{ x?: number, y?: number }} step One press of an arrow key; a drag moves in the same steps.
 * @property {readonly [number, number]} [rangeX] Furthest it may go; the axis's ends when left out.
 * @property {readonly [number, number]} [rangeY]
 */

export const RING_PX = 9;
/** Half of the 44 px that a finger needs. */
export const REACH_PX = 22;
const MANY_STEPS = 10;

/**
 * @param {HandleOptions} options
 * @param {(event: PointerEvent) => { hold: (event: PointerEvent) => void } | undefined} [nearest] which of several that lie close together is meant
 */
export function handle({ label, moves = [], directions = "x", meaning = null, ring = "you", onMove }, nearest) {
  const element = svg(
    "g",
    {
      class: ["handle", meaning, ring].filter(Boolean).join(" "),
      role: "slider",
      tabindex: 0,
      "aria-label": label,
      "aria-orientation": directions === "y" ? "vertical" : "horizontal",
      "data-moves": moves.join(" "),
    },
    svg("circle", { class: "reach", r: REACH_PX }),
    svg("circle", { class: "ring", r: ring === "you" ? RING_PX : 7 }),
    ...(ring === "you" ? [svg("circle", { class: "dot", r: 3 })] : []),
  );
  const alongX = directions.includes("x");
  const alongY = directions.includes("y");

  /** @type {{ data: HandleData, xScale: Scale, yScale: Scale } | null} */
  let shown = null;
  /**
   * Where the drag began: the pointer in the window, the point, and the ends it had then, which stay until it is let go.
   * @type {{ pointer: number, clientX: number, clientY: number, from: Point, rangeX: Range, rangeY: Range, letGo: () => void } | null}
   */
  let held = null;

  const rangeX = () => held?.rangeX ?? shown?.data.rangeX ?? ends(shown?.xScale);
  const rangeY = () => held?.rangeY ?? shown?.data.rangeY ?? ends(shown?.yScale);

  /**
   * @param {Point} wanted
   * @param {MovePhase} phase
   */
  function move(wanted, phase) {
    if (!shown) return;
    const { data } = shown;
    const point = {
      x: alongX ? snap(wanted.x, data.step.x, rangeX()) : data.x,
      y: alongY ? snap(wanted.y, data.step.y, rangeY()) : data.y,
    };
    if (point.x === data.x && point.y === data.y) return;
    // Remembered at once: two key presses may come before the next frame.
    shown.data = { ...data, ...point };
    onMove(point, phase);
  }

  // Without this a finger would scroll the page: not every browser heeds `touch-action` within a picture.
  element.addEventListener("touchstart", (event) => event.preventDefault(), { passive: false });
  element.addEventListener("pointerdown", (event) => (nearest?.(event) ?? part).hold(event));
  /** Begins a drag. @param {PointerEvent} event */
  function hold(event) {
    if (!shown || event.button !== 0 || !event.isPrimary) return;
    event.preventDefault();
    element.focus({ preventScroll: true });
    element.setPointerCapture(event.pointerId);
    const { pointerId: pointer, clientX, clientY } = event;
    const figure = element.closest("figure");
    held = {
      pointer,
      clientX,
      clientY,
      from: { x: shown.data.x, y: shown.data.y },
      rangeX: rangeX(),
      rangeY: rangeY(),
      letGo: figure ? keepStill(figure) : () => {},
    };
    set(element, { "data-held": true });
  }
  element.addEventListener("pointermove", (event) => {
    if (!held || !shown || held.pointer !== event.pointerId) return;
    const { xScale, yScale } = shown;
    const { from, clientX, clientY } = held;
    move(
      {
        x: xScale.invert(xScale(from.x) + event.clientX - clientX),
        y: yScale.invert(yScale(from.y) + event.clientY - clientY),
      },
      "drag",
    );
  });
  function release() {
    if (!held || !shown) return;
    held.letGo();
    held = null;
    set(element, { "data-held": false });
    onMove({ x: shown.data.x, y: shown.data.y }, "commit");
  }
  for (const type of /** @type {const} */ (["pointerup", "pointercancel", "lostpointercapture"])) {
    element.addEventListener(type, (event) => {
      if (event.pointerId === held?.pointer) release();
    });
  }

  element.addEventListener("keydown", (event) => {
    if (!shown || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape" && held) {
      const { from } = held;
      move(from, "drag");
      release();
      return;
    }
    const wanted = keyTarget(event, shown.data);
    if (!wanted) return;
    event.preventDefault();
    move(wanted, "step");
  });
  element.addEventListener("keyup", (event) => {
    if (shown && /^(Arrow|Page|Home|End)/.test(event.key)) onMove({ x: shown.data.x, y: shown.data.y }, "commit");
  });

  /**
   * @param {KeyboardEvent} event
   * @param {HandleData} data
   * @returns {Point | null}
   */
  function keyTarget(event, data) {
    const many = event.shiftKey ? MANY_STEPS : 1;
    const stepX = data.step.x ?? 0;
    const stepY = data.step.y ?? 0;
    /** @type {Record<string, readonly [number, number]>} */
    const moves = {
      ArrowRight: [many, 0],
      ArrowLeft: [-many, 0],
      ArrowUp: [0, many],
      ArrowDown: [0, -many],
      PageUp: [0, MANY_STEPS],
      PageDown: [0, -MANY_STEPS],
    };
    if (event.key in moves) {
      let [across, up] = moves[event.key];
      // A handle with one direction answers to both pairs of arrows.
      if (!alongY) [across, up] = [across + up, 0];
      if (!alongX) [across, up] = [0, across + up];
      return { x: data.x + across * stepX, y: data.y + up * stepY };
    }
    if (directions === "xy" || (event.key !== "Home" && event.key !== "End")) return null;
    const end = event.key === "Home" ? 0 : 1;
    return { x: alongX ? rangeX()[end] : data.x, y: alongY ? rangeY()[end] : data.y };
  }

  const part = {
    element,
    hold,
    held: () => held !== null,
    /** How far its middle is from a pointer, across and up together, px; nothing is near one that is not shown. @param {PointerEvent} event */
    away({ clientX, clientY }) {
      if (element.hasAttribute("hidden")) return Infinity;
      const { x, y, width, height } = element.getBoundingClientRect();
      return Math.abs(clientX - x - width / 2) + Math.abs(clientY - y - height / 2);
    },
    /**
     * @param {HandleData} data
     * @param {Scale} xScale
     * @param {Scale} yScale
     */
    update(data, xScale, yScale) {
      shown = { data, xScale, yScale };
      const [from, to] = alongX ? rangeX() : rangeY();
      set(element, {
        transform: `translate(${px(xScale(data.x))} ${px(yScale(data.y))})`,
        "aria-label": data.name ?? label,
        "aria-valuenow": alongX ? data.x : data.y,
        "aria-valuemin": from,
        "aria-valuemax": to,
        "aria-valuetext": data.spoken,
      });
    },
  };
  return part;
}

/** @param {Scale | undefined} scale @returns {readonly [number, number]} */
function ends(scale) {
  const domain = scale?.domain() ?? [0, 1];
  return [Math.min(domain[0], domain[1]), Math.max(domain[0], domain[1])];
}

/**
 * @param {number} value
 * @param {number | undefined} step
 * @param {readonly [number, number]} range
 */
function snap(value, step, [low, high]) {
  const stepped = step ? Number((Math.round(value / step) * step).toPrecision(12)) : value;
  return Math.min(high, Math.max(low, stepped));
}

/**
 * @param {SVGElement} element
 * @param {PointerEvent} event
 */
export function pointerOn(element, event) {
  const box = (element.ownerSVGElement ?? element).getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
}
