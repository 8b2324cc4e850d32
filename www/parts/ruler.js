// @ts-check
/** A difference on a line from one choice, through level, to the other: thick bar one standard deviation, thin bar 19 in 20. */

import { book } from "../words/index.js";
import { glides } from "./glide.js";
import { html, say, set } from "./html.js";
import { markStrokes } from "./marks.js";
import { onWidth } from "./resize.js";
import { px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Meaning } from "./html.js" */
/** @import { MarkName } from "./marks.js" */

/** @typedef {{ low_95: number, high_95: number }} Range */
/** @typedef {{ words: string, mark: MarkName, meaning: Meaning }} Side */

/**
 * @typedef {object} RulerData
 * @property {Range & { value: number, sd: number }} difference Positive: the right-hand choice is ahead.
 * @property {Range} [range] What holds 19 in 20, where it was counted.
 * @property {(amount: number) => string} format An amount without its sign.
 * @property {string} spoken What the ruler shows, in a sentence.
 * @property {Side} [left]
 * @property {Side} [right]
 * @property {boolean} [ease] Whether the bar glides, after typing; never while dragging.
 */

const words = book("page");

const HEIGHT_PX = 76;
const LINE_Y_PX = 44;
/** The answer's column on a printed page is a little wider than this. */
const PRINTED_PX = 250;
/** A mark and the space around it, beside a name. */
const MARK_PX = 27;
const SECOND_LINE_PX = 16;
/** Half-lengths of the ruler, so that its scale stays put while the difference wanders. */
const SPANS = [2, 4, 10, 20, 40, 60, 120, 240, 600, 1200, 1800, 3600, 7200, 14400, 43200];

/** What a side's name takes with its mark. @param {Side} side */
const sideWidth = ({ words: name }) => textWidth(name, 14) + MARK_PX;

/**
 * @param {object} options
 * @param {Side} options.left
 * @param {Side} options.right
 */
export function ruler({ left, right }) {
  const sides = { left, right };
  const line = svg("path", { class: "ruler-line" });
  const zero = svg("path", { class: "ruler-zero" });
  const level = svg("text", { class: "level", y: 72, "text-anchor": "middle" }, words("ruler.level"));
  const ticks = [0, 1].map(() => ({
    stroke: svg("path", { class: "ruler-tick" }),
    text: svg("text", { class: "tick", y: 66, "text-anchor": "middle" }),
  }));
  const names = /** @type {const} */ (["left", "right"]).map((side) => ({
    side,
    icon: svg("g", { class: "mark-in" }),
    text: svg("text", { "text-anchor": side === "left" ? "start" : "end" }),
  }));
  const thin = svg("rect", { class: "spread-bar", height: 2, y: LINE_Y_PX - 1 });
  const thick = svg("rect", { class: "spread-bar", height: 8, y: LINE_Y_PX - 4 });
  const ring = svg("circle", { class: "ring", r: 7, cy: LINE_Y_PX, cx: 0 });
  const picture = svg(
    "svg",
    { class: "ruler", role: "img", height: HEIGHT_PX },
    ...names.flatMap((name) => [name.icon, name.text]),
    line,
    ...ticks.flatMap((tick) => [tick.stroke, tick.text]),
    zero,
    level,
    thin,
    thick,
    ring,
  );
  const element = html("div", { class: "ruler-box" }, picture);
  /** @type {RulerData | null} */
  let data = null;
  const mayGlide = glides();
  const size = onWidth(element, draw, PRINTED_PX);

  /** @param {number} width_px */
  function draw(width_px) {
    if (!data || width_px <= 0) return;
    const { difference, range = difference, format } = data;
    const { value, sd: one } = difference;
    const { low_95, high_95 } = range;
    const reach = Math.max(Math.abs(low_95), Math.abs(high_95), Math.abs(value) + one, 1e-9);
    const span = SPANS.find((half) => half >= reach) ?? reach;
    const middle = width_px / 2;
    const at = (/** @type {number} */ amount) => middle + Math.max(-1, Math.min(1, amount / span)) * (middle - 8);
    const ahead = value < 0 ? sides.left : sides.right;

    set(picture, {
      width: width_px,
      viewBox: `0 0 ${width_px} ${HEIGHT_PX}`,
      "aria-label": data.spoken,
      "data-ease": mayGlide(data.ease),
    });
    set(line, { d: `M0 ${LINE_Y_PX}H${width_px}` });
    set(zero, { d: `M${px(middle)} ${LINE_Y_PX - 16}v30` });
    set(level, { x: px(middle) });
    ticks.forEach((tick, index) => {
      const x = px(at((index ? span : -span) / 2));
      set(tick.stroke, { d: `M${x} ${LINE_Y_PX}v6` });
      set(tick.text, { x });
      say(tick.text, format(span / 2));
    });
    const beside = width_px - sideWidth(sides.left) - sideWidth(sides.right) >= 0;
    for (const { side, icon, text } of names) {
      const { words: name, mark, meaning } = sides[side];
      // Names too long to stand in one line stand in two.
      const down_px = side === "right" && !beside ? SECOND_LINE_PX : 0;
      if (icon.getAttribute("data-mark") !== mark) icon.replaceChildren(...markStrokes(mark));
      set(icon, {
        "data-mark": mark,
        class: `mark-in ${meaning}`,
        transform: `translate(${side === "left" ? 0 : px(width_px - 15)} ${1 + down_px})`,
      });
      set(text, { class: `end ${meaning}`, x: side === "left" ? 21 : px(width_px - 21), y: 14 + down_px });
      say(text, name);
    }
    for (const [bar, [low, high]] of /** @type {const} */ ([
      [thin, [low_95, high_95]],
      [thick, [value - one, value + one]],
    ])) {
      set(bar, { class: `spread-bar ${ahead.meaning}`, x: px(at(low)), width: px(at(high) - at(low)) });
    }
    set(ring, { transform: `translate(${px(at(value))} 0)` });
  }

  return {
    element,
    /** @param {RulerData} next */
    update(next) {
      data = next;
      if (next.left) sides.left = next.left;
      if (next.right) sides.right = next.right;
      draw(size.width());
    },
    destroy: size.destroy,
  };
}
