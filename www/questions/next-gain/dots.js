// @ts-check
/** Every candidate on one scale of seconds saved: a dot for what it saves on average, a ring if it works, a line for how sure that is. */

import { makeScale, ticksOf } from "../../parts/axes.js";
import { html, set, uniqueId } from "../../parts/html.js";
import { onWidth } from "../../parts/resize.js";
import { pool, px, svg } from "../../parts/svg.js";
import { textWidth } from "../../parts/text-size.js";

/** @import { Meaning } from "../../parts/html.js" */

/**
 * @typedef {object} Dot
 * @property {string} name
 * @property {number} average On the scale.
 * @property {number} works If it works.
 * @property {number} sd Of that.
 * @property {string} figure "5:05"
 * @property {Meaning} meaning
 * @property {boolean} chosen Whether it is in the best set.
 */

const ROW_PX = 46;
const PRINTED_ROW_PX = 17;
/** Drawn wider than it is printed, so that names stand whole; their share of that width, and room for the figures there. */
const PRINTED_PX = 460;
const PRINTED_NAMES = 0.6;
const PRINTED_FIGURE_PX = 46;
const FOOT_PX = 50;
const MOST_TICKS = 6;
const TEXT_PX = 14;
/** Room for a figure such as 1:02:03. */
const FIGURE_PX = 84;

/** @param {{ title: string, legend: Node }} options */
export function dotPlot({ title, legend }) {
  const descId = uniqueId("desc");
  const desc = svg("desc", { id: descId });
  const [frame, spans, rings, dots, words] = Array.from({ length: 5 }, () => svg("g"));
  const axis = svg("path", { class: "axis-line" });
  const zero = svg("path", { class: "level-line" });
  frame.append(axis, zero);
  const picture = svg(
    "svg",
    { class: "chart", role: "img", "aria-label": title, "aria-describedby": descId },
    desc,
    frame,
    spans,
    rings,
    dots,
    words,
  );
  const element = html("figure", { class: "chart-figure" }, picture, html("figcaption", { class: "reading" }, legend));
  const drawSpans = pool(spans, "path");
  const drawRings = pool(rings, "circle");
  const drawDots = pool(dots, "circle");
  const drawWords = pool(words, "text");
  /** @type {{ dots: readonly Dot[], axisName: string, format: (value: number) => string } | null} */
  let shown = null;
  const size = onWidth(element, draw, PRINTED_PX);

  /** @param {number} width */
  function draw(width) {
    if (!shown || width <= 0) return;
    const { dots: list, axisName, format } = shown;
    const printed = size.printing();
    const row_px = printed ? PRINTED_ROW_PX : ROW_PX;
    // On paper the names stand beside their dots, elsewhere above them.
    const [left, right] = printed ? [width * PRINTED_NAMES, width - PRINTED_FIGURE_PX] : [6, width - 6];
    const height = list.length * row_px + FOOT_PX;
    const low = Math.min(0, ...list.map((dot) => Math.min(dot.average, dot.works - dot.sd)));
    const high = Math.max(1, ...list.map((dot) => Math.max(dot.average, dot.works + dot.sd)));
    const air = (high - low) * 0.02;
    /** @type {[number, number]} */
    const domain = [low - (low < 0 ? air : 0), high + air];
    const axisOf = /** @type {const} */ ({ name: axisName, kind: "clock", format });
    const x = makeScale(axisOf, domain, [left, right]);
    const bottom = height - FOOT_PX + 4;
    const lineOf = (/** @type {number} */ row) => (row + 1) * row_px - (printed ? 6 : 10);
    const wordsOf = (/** @type {number} */ y) => y + (printed ? 4 : -14);
    const room_px = printed ? left - 10 : width - FIGURE_PX;
    set(picture, { width, height, viewBox: `0 0 ${width} ${height}` });
    const ticks = ticksOf(axisOf, domain, Math.min(MOST_TICKS, Math.floor((right - left) / 70)));
    set(axis, {
      d: `M${px(left)} ${bottom}H${px(right)}${ticks.map((tick) => `M${px(x(tick))} ${bottom}v5`).join("")}`,
    });
    const rows = list.map((dot, row) => ({ ...dot, y: lineOf(row) }));
    // Beside the dots only, clear of the names between them.
    const beside_px = printed ? PRINTED_ROW_PX / 2 : 10;
    set(zero, { d: rows.map(({ y }) => `M${px(x(0))} ${y - beside_px}v${2 * beside_px}`).join("") });
    drawSpans(rows, (line, { works, sd, y, meaning }) =>
      set(line, { class: `whisker ${meaning}`, d: `M${px(x(works - sd))} ${y}H${px(x(works + sd))}` }),
    );
    drawRings(rows, (ring, { works, y, meaning }) =>
      set(ring, { class: `point ring ${meaning}`, cx: px(x(works)), cy: y, r: 4.5 }),
    );
    drawDots(rows, (dot, { average, y, meaning }) =>
      set(dot, { class: `point ${meaning}`, cx: px(x(average)), cy: y, r: 5.5 }),
    );
    const figureOf = (/** @type {Dot & { y: number }} */ { figure, y, chosen }) => ({
      text: figure,
      x: width - 6,
      y: wordsOf(y),
      anchor: "end",
      weight: chosen ? 600 : 400,
      soft: !chosen,
    });
    const nameOf = (/** @type {Dot & { y: number }} */ { name, y, chosen }) => ({
      text: fitted(`${chosen ? "✓ " : ""}${name}`, room_px, chosen ? 600 : 400),
      x: printed ? 0 : 6,
      y: wordsOf(y),
      anchor: "start",
      weight: chosen ? 600 : 400,
      soft: !chosen,
    });
    drawWords(
      [
        ...rows.map(nameOf),
        ...rows.map(figureOf),
        ...ticks.map((tick) => ({
          text: format(tick),
          x: x(tick),
          y: bottom + 20,
          anchor: "middle",
          weight: 400,
          soft: true,
        })),
        { text: axisName, x: width - 6, y: height - 6, anchor: "end", weight: 400, soft: true },
      ],
      (text, { text: content, x: at, y, anchor, weight, soft }) => {
        set(text, {
          class: soft ? "tick halo" : "halo",
          x: px(at),
          y: px(y),
          "text-anchor": anchor,
          "font-weight": weight,
        });
        if (text.textContent !== content) text.textContent = content;
      },
    );
  }

  return {
    element,
    /** @param {{ dots: readonly Dot[], axisName: string, format: (value: number) => string, desc: string }} next */
    update(next) {
      shown = next;
      if (desc.textContent !== next.desc) desc.textContent = next.desc;
      draw(size.width());
    },
    destroy: size.destroy,
  };
}

/** A name with its end left out where there is no room. @param {string} text @param {number} room_px @param {number} weight */
function fitted(text, room_px, weight) {
  let end = text.length;
  while (end > 1 && textWidth(shortened(text, end), TEXT_PX, weight) > room_px) end -= 1;
  return shortened(text, end);
}

/** @param {string} text @param {number} end */
const shortened = (text, end) => (end < text.length ? `${text.slice(0, end).trimEnd()}…` : text);
