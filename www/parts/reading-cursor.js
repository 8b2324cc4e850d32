// @ts-check
/** A line over a chart that reads it: under the mouse or a finger, or moved with the arrow keys. */

import { pointerOn } from "./handle.js";
import { set } from "./html.js";
import { px, svg } from "./svg.js";

/** @import { Words } from "./html.js" */
/** @import { Frame, Scale } from "./axes.js" */

/** @typedef {{ words: Words, spoken: string, points?: readonly { y: number, meaning?: string | null }[] }} Reading */

const KEY_STEPS = 50;
const MANY_STEPS = 5;

/**
 * @param {object} options
 * @param {SVGSVGElement} options.picture
 * @param {string} options.label
 * @param {() => boolean} options.busy Whether something else is being dragged.
 * @param {(x: number) => Reading} options.read
 * @param {(words: Words | null) => void} options.say Shows a reading, or goes back to the resting one.
 * @param {(x: number | null) => void} options.moved Told where the rider reads.
 */
export function readingCursor({ picture, label, busy, read, say, moved }) {
  const target = svg("rect", { class: "reader", role: "slider", tabindex: 0, "aria-label": label });
  const stroke = svg("path", { class: "cursor" });
  const points = svg("g", { class: "cursor-points" });
  const element = svg("g", { class: "reading-cursor", "data-on": false }, target, stroke, points);
  /** @type {{ frame: Frame, xScale: Scale, yScale: Scale } | null} */
  let at = null;
  /** @type {number | null} */
  let x = null;

  function draw() {
    if (!at) return;
    const { frame, xScale, yScale } = at;
    set(element, { "data-on": x !== null });
    if (x === null) {
      set(stroke, { d: null });
      points.replaceChildren();
      return;
    }
    const reading = read(x);
    set(stroke, { d: `M${px(xScale(x))} ${frame.top}V${frame.bottom}` });
    points.replaceChildren(
      ...(reading.points ?? [])
        .filter((point) => Number.isFinite(point.y))
        .map((point) =>
          svg("circle", {
            class: point.meaning,
            r: 4,
            cx: px(xScale(/** @type {number} */ (x))),
            cy: px(yScale(point.y)),
          }),
        ),
    );
    set(target, { "aria-valuenow": x, "aria-valuetext": reading.spoken });
    say(reading.words);
  }

  /** @param {number | null} next */
  function showAt(next) {
    x = next;
    draw();
    if (next === null) say(null);
  }

  /** @param {number | null} next */
  function moveTo(next) {
    showAt(next);
    moved(next);
  }

  /** @param {PointerEvent} event */
  function follow(event) {
    if (!at) return;
    if (busy()) {
      if (x !== null) moveTo(null);
      return;
    }
    const { frame, xScale } = at;
    const point = pointerOn(picture, event);
    const inside = point.x >= frame.left && point.x <= frame.right && point.y >= frame.top && point.y <= frame.bottom;
    if (inside) moveTo(xScale.invert(point.x));
    else if (x !== null && !target.matches(":focus")) moveTo(null);
  }
  picture.addEventListener("pointermove", follow);
  picture.addEventListener("pointerdown", (event) => {
    if (event.pointerType !== "mouse") follow(event);
  });
  picture.addEventListener("pointerleave", (event) => {
    if (event.pointerType === "mouse" && x !== null && !target.matches(":focus")) moveTo(null);
  });
  // A mouse reads by hovering: its click should not leave the cursor behind.
  target.addEventListener("pointerdown", (event) => event.preventDefault());
  target.addEventListener("focus", () => {
    if (at && x === null) moveTo(at.xScale.invert((at.frame.left + at.frame.right) / 2));
  });
  target.addEventListener("blur", () => moveTo(null));
  target.addEventListener("keydown", (event) => {
    if (!at || event.ctrlKey || event.metaKey || event.altKey) return;
    const { frame, xScale } = at;
    const step = ((frame.right - frame.left) / KEY_STEPS) * (event.shiftKey ? MANY_STEPS : 1);
    /** @type {Record<string, number>} */
    const moves = {
      ArrowRight: step,
      ArrowUp: step,
      ArrowLeft: -step,
      ArrowDown: -step,
      PageUp: step * MANY_STEPS,
      PageDown: -step * MANY_STEPS,
      Home: -Infinity,
      End: Infinity,
    };
    if (!(event.key in moves)) return;
    event.preventDefault();
    const here = x === null ? (frame.left + frame.right) / 2 : xScale(x);
    moveTo(xScale.invert(Math.max(frame.left, Math.min(frame.right, here + moves[event.key]))));
  });

  return {
    element,
    /**
     * @param {Frame} frame
     * @param {Scale} xScale
     * @param {Scale} yScale
     */
    update(frame, xScale, yScale) {
      at = { frame, xScale, yScale };
      const [low, high] = xScale.domain();
      set(target, {
        x: frame.left,
        y: frame.top,
        width: Math.max(0, frame.right - frame.left),
        height: Math.max(0, frame.bottom - frame.top),
        "aria-valuemin": Math.min(low, high),
        "aria-valuemax": Math.max(low, high),
        "aria-valuenow": x ?? xScale.invert((frame.left + frame.right) / 2),
      });
      if (x !== null && (x < Math.min(low, high) || x > Math.max(low, high))) moveTo(null);
      else draw();
    },
    off: () => {
      if (x !== null) moveTo(null);
    },
    showAt,
  };
}
