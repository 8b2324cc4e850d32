// @ts-check
/** What makes up a whole, stacked from the bottom, over x. */

import { area } from "d3-shape";
import { book } from "../words/index.js";
import { html, set } from "./html.js";
import { textBox } from "./labels.js";
import { plot } from "./plot.js";
import { pool, px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Meaning } from "./html.js" */
/** @import { PlotOptions, PlotData, Canvas } from "./plot.js" */

/**
 * @typedef {object} Part
 * @property {string} name "air"
 * @property {ArrayLike<number>} ys Its own size, not the running sum. Negative ones are drawn as nothing.
 * @property {Meaning | null} [meaning]
 * @property {0 | 1 | 2} [shade] Sets apart parts of one meaning: a deeper tint.
 */

/**
 * @typedef {object} Stack
 * @property {ArrayLike<number>} xs
 * @property {readonly Part[]} parts From the bottom up.
 * @property {string} [whole] What the sum is called in the reading line: "in all".
 */
/** @typedef {PlotData & Stack} AreaData */

const words = book("page");

/** A part at least this thick carries its name inside. */
const ROOM_INSIDE_PX = 20;

/**
 * @param {Omit<PlotOptions, "height"> & { height?: (width_px: number) => number }} options
 */
export function areaChart(options) {
  const chart = plot(
    /** @type {PlotOptions} */ ({
      height: (/** @type {number} */ width) => Math.round(Math.min(420, Math.max(280, width * 0.62))),
      ...options,
    }),
    prepare,
  );
  return {
    ...chart,
    /** @param {AreaData} data */
    update(data) {
      const x = { ...options.x, ...data.x };
      const y = { ...options.y, ...data.y };
      chart.update({ read: (at) => readStack(at, data, x.read ?? x.format, y.read ?? y.format), ...data });
    },
  };
}

/**
 * The running sums: one row for the floor and one above each part.
 * @param {Stack} stack
 */
function sums({ xs, parts }) {
  const rows = [new Float64Array(xs.length)];
  for (const part of parts) {
    const below = rows[rows.length - 1];
    rows.push(below.map((sum, i) => sum + Math.max(0, part.ys[i])));
  }
  return rows;
}

/**
 * @param {{ under: SVGGElement, over: SVGGElement }} layers
 * @returns {(canvas: Canvas, data: AreaData) => void}
 */
function prepare({ under, over }) {
  const fills = svg("g");
  const tops = svg("g");
  const leads = svg("g");
  under.append(fills);
  over.append(tops, leads);
  const areas = pool(fills, "path");
  const edges = pool(tops, "path");
  const leaders = pool(leads, "path");

  return function draw(canvas, data) {
    const { xScale, yScale, room } = canvas;
    const rows = sums(data);
    const columns = Array.from(data.xs, (x, i) => /** @type {[number, number]} */ ([x, i]));
    const shapes = data.parts.map((part, index) => ({ part, low: rows[index], high: rows[index + 1] }));
    areas(shapes, (element, { part, low, high }) =>
      set(element, {
        class: `stacked ${part.meaning ?? ""} shade-${part.shade ?? 0}`,
        d: area()
          .x((_, i) => xScale(data.xs[i]))
          .y0((_, i) => yScale(low[i]))
          .y1((_, i) => yScale(high[i]))
          .digits(1)(columns),
      }),
    );
    const outline = Array.from(
      data.xs,
      (x, i) => /** @type {[number, number]} */ ([xScale(x), yScale(rows[rows.length - 1][i])]),
    );
    edges(outline.length ? [outline] : [], (element, points) =>
      set(element, { class: "curve", d: points.map(([x, y], i) => `${i ? "L" : "M"}${px(x)} ${px(y)}`).join("") }),
    );

    room.keepClearOfLine(outline);
    keepClearBelow(canvas, outline);
    canvas.writeHandles();
    const thin = shapes.filter((shape) => !labelInside(canvas, data.xs, shape));
    leaders(labelOutside(canvas, data.xs, thin, outline), (element, d) => set(element, { class: "leader", d }));
  };
}

/**
 * The words of a handle would rather not lie on the stack: their halo shows there.
 * @param {Canvas} canvas
 * @param {readonly (readonly [number, number])[]} outline
 */
function keepClearBelow({ frame, room }, outline) {
  for (let i = 1; i < outline.length; i += 1) {
    const [[x0, y0], [x1, y1]] = [outline[i - 1], outline[i]];
    const top = Math.max(y0, y1);
    room.keepClear({ x: x0, y: top, width: x1 - x0, height: Math.max(0, frame.bottom - top) }, 0.1);
  }
}

/** @typedef {{ part: Part, low: Float64Array, high: Float64Array }} Shape */

/**
 * @param {Canvas} canvas
 * @param {ArrayLike<number>} xs
 * @param {Shape} shape
 * @returns {boolean} Whether there was room.
 */
function labelInside(canvas, xs, { part, low, high }) {
  const { frame, xScale, yScale, room, size } = canvas;
  const width = textWidth(part.name, size, 600);
  const places = [];
  for (let i = 0; i < xs.length; i += 1) {
    const x = xScale(xs[i]);
    const [from, to] = spanOf(xs, xScale, x, width / 2 + 4);
    if (x - width / 2 < frame.left + 6 || x + width / 2 > frame.right - 4) continue;
    let ceiling = -Infinity;
    let floor = Infinity;
    for (let k = from; k <= to; k += 1) {
      ceiling = Math.max(ceiling, yScale(high[k]));
      floor = Math.min(floor, yScale(low[k]));
    }
    const thick = floor - ceiling;
    if (thick >= ROOM_INSIDE_PX)
      places.push({
        x,
        y: (ceiling + floor) / 2 + size * 0.35,
        dislike: 60 - Math.min(60, thick) + Math.abs(x - (frame.left * 0.3 + frame.right * 0.7)) / 20,
      });
  }
  const best = room.take(
    places.map((place) => ({ dislike: place.dislike, boxes: [textBox(place.x, place.y, width, "middle", size)] })),
    700,
  );
  if (best < 0) return false;
  canvas.write({
    text: part.name,
    kind: "area-label inside",
    weight: 600,
    anchor: "middle",
    x: places[best].x,
    y: places[best].y,
  });
  return true;
}

/**
 * Names of thin parts stand in the clear above the stack, each with a line to its part.
 * @param {Canvas} canvas
 * @param {ArrayLike<number>} xs
 * @param {readonly Shape[]} shapes
 * @param {readonly (readonly [number, number])[]} outline
 * @returns {string[]} The lines to draw.
 */
function labelOutside(canvas, xs, shapes, outline) {
  const { frame, xScale, yScale, room, size } = canvas;
  const leaders = [];
  for (const { part, low, high } of [...shapes].reverse()) {
    if (!Array.from(part.ys).some((y) => y > 0)) continue;
    const width = textWidth(part.name, size);
    const places = [];
    for (let i = 0; i < xs.length; i += 1) {
      const x = xScale(xs[i]);
      for (const rise of [16, 36, 56, 76, 96]) {
        const y = outline[i][1] - rise;
        const [from, to] = spanOf(xs, xScale, x + width / 2, width / 2 + 2);
        let roof = Infinity;
        for (let k = from; k <= to; k += 1) roof = Math.min(roof, outline[k][1]);
        if (y > frame.top + size && y < roof - 4) {
          const foot = (yScale(low[i]) + yScale(high[i])) / 2;
          places.push({
            x,
            y,
            foot,
            dislike: rise / 3 + Math.abs(x - (frame.left + (frame.right - frame.left) * 0.45)) / 10,
          });
        }
      }
    }
    const best = room.take(
      places.map((place) => ({
        dislike: place.dislike,
        boxes: [
          textBox(place.x + 4, place.y, width + 8, "start", size),
          { x: place.x - 8, y: place.y - size * 0.7, width: 16, height: outlineGap(place, size) },
        ],
      })),
      120,
    );
    if (best < 0) continue;
    const place = places[best];
    canvas.write({ text: part.name, kind: "area-label outside", anchor: "start", x: place.x + 6, y: place.y });
    leaders.push(`M${px(place.x)} ${px(place.y - size * 0.7)}V${px(place.foot)}m-2.5 0h5`);
  }
  return leaders;
}

/**
 * How much of a leader stands in the clear; its foot may cross the outline.
 * @param {{ y: number, foot: number }} place
 * @param {number} size
 */
function outlineGap({ y, foot }, size) {
  return Math.max(1, foot - y + size * 0.7 - 8);
}

/**
 * The indices whose x lie within `reach` pixels of `centre`.
 * @param {ArrayLike<number>} xs
 * @param {(x: number) => number} xScale
 * @param {number} centre
 * @param {number} reach
 */
function spanOf(xs, xScale, centre, reach) {
  let from = 0;
  let to = xs.length - 1;
  while (from < to && xScale(xs[from + 1]) < centre - reach) from += 1;
  while (to > from && xScale(xs[to - 1]) > centre + reach) to -= 1;
  return [from, to];
}

/**
 * @param {number} at
 * @param {AreaData} data
 * @param {(x: number) => string} formatX
 * @param {(y: number) => string} formatY
 */
function readStack(at, { xs, parts, whole = words("chart.whole") }, formatX, formatY) {
  let i = 1;
  while (i < xs.length - 1 && xs[i] < at) i += 1;
  const share = Math.max(0, Math.min(1, (at - xs[i - 1]) / (xs[i] - xs[i - 1])));
  const values = parts.map((part) => ({ part, y: part.ys[i - 1] + (part.ys[i] - part.ys[i - 1]) * share }));
  const sum = values.reduce((total, { y }) => total + Math.max(0, y), 0);
  const told = [...values].sort((a, b) => b.y - a.y).filter(({ y }) => y > 0);
  return {
    spoken: words("chart.readWhole", {
      x: formatX(at),
      sum: formatY(sum),
      whole,
      parts: told.map(({ part, y }) => `${part.name} ${formatY(y)}`).join(", "),
    }),
    words: words.parts("chart.readWhole", {
      x: html("b", {}, formatX(at)),
      sum: html("b", {}, formatY(sum)),
      whole,
      parts: told.flatMap(({ part, y }, index) => [
        `${index ? ", " : ""}${part.name} `,
        html("b", { class: part.meaning }, formatY(y)),
      ]),
    }),
    points: [{ y: sum, meaning: null }],
  };
}
