// @ts-check
/** One or several curves over the same x, with bands of uncertainty, shaded differences, levels, marked points and handles. */

import { area, line } from "d3-shape";
import { book } from "../words/index.js";
import { html, set } from "./html.js";
import { textBox } from "./labels.js";
import { plot, writeAround } from "./plot.js";
import { pool, px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Meaning } from "./html.js" */
/** @import { PlotOptions, PlotData, Canvas } from "./plot.js" */
/** @import { Reading } from "./reading-cursor.js" */
/** @import { Box } from "./labels.js" */

const words = book("page");

/** Space between a dropped line and its words, and above its top. */
const BESIDE_PX = { side: 7, top: 12 };
/** Words beside or on their own line are this clear of others, so that it is plain which is theirs; and of each other. */
const APART_PX = { beside: 14, on: 5, words: 3 };
/** What being a row further from the foot, on the line or over its top, is disliked by. */
const DISLIKE = { row: 6, on: 20, over: 400 };
/** Crossing a dropped line is worse than crossing a curve: it would be taken for its name. */
const DROP_WEIGHT = 2;

/**
 * @typedef {object} Series
 * @property {string} name For the reading line: "the low position".
 * @property {ArrayLike<number>} xs
 * @property {ArrayLike<number>} ys
 * @property {ArrayLike<number>} [low] Lower edge of its band.
 * @property {ArrayLike<number>} [high]
 * @property {Meaning | null} [meaning] Ink when there is none.
 * @property {"solid" | "dashed" | "dotted"} [stroke]
 * @property {string} [label] On the line; left out where there is no room.
 * @property {string} [shortLabel] Used on a narrow chart.
 * @property {"start" | "middle" | "end" | number} [labelAt] Where along the line it would like to be; a number is an x.
 * @property {boolean} [unread] Left out of the reading line.
 */

/**
 * @typedef {object} Level A horizontal line across the chart.
 * @property {number} y
 * @property {string} [above] Words just above it, at the left.
 * @property {string} [below]
 * @property {string} [shortAbove] Used on a narrow chart.
 * @property {string} [shortBelow]
 * @property {boolean} [quiet] A thin grey line instead of an ink one.
 */

/**
 * @typedef {object} Shade The area between two curves.
 * @property {ArrayLike<number>} xs
 * @property {ArrayLike<number>} low
 * @property {ArrayLike<number>} high
 * @property {Meaning | null} meaning
 * @property {string} [label]
 * @property {string} [shortLabel]
 */

/**
 * @typedef {object} MarkedPoint
 * @property {number} x
 * @property {number} y
 * @property {string} [label]
 * @property {boolean} [drop] Whether a dashed line falls from it to the x axis; its label then stands beside that line, or over its top.
 * @property {number} [sdX] A capped whisker, one standard deviation either way.
 * @property {number} [sdY]
 * @property {Meaning | null} [meaning]
 * @property {"dot" | "ring" | "none"} [shape]
 */

/**
 * @typedef {object} Lines
 * @property {readonly Series[]} series
 * @property {readonly Level[]} [levels]
 * @property {readonly Shade[]} [shades]
 * @property {readonly MarkedPoint[]} [points]
 */
/** @typedef {PlotData & Lines} LineData */

/**
 * Keep the order of the series from one update to the next: a curve is then moved, not replaced.
 * @param {Omit<PlotOptions, "height"> & { height?: (width_px: number) => number }} options
 */
export function lineChart(options) {
  const chart = plot(/** @type {PlotOptions} */ ({ height: usualHeight, ...options }), prepare);
  return {
    ...chart,
    /** @param {LineData} data */
    update(data) {
      const x = { ...options.x, ...data.x };
      const y = { ...options.y, ...data.y };
      chart.update({ read: (at) => readSeries(at, data.series, x.read ?? x.format, y.read ?? y.format), ...data });
    },
  };
}

/** @param {number} width_px */
function usualHeight(width_px) {
  return Math.round(Math.min(400, Math.max(260, width_px * 0.58)));
}

/**
 * @param {{ under: SVGGElement, over: SVGGElement }} layers
 * @returns {(canvas: Canvas, data: LineData) => void}
 */
function prepare({ under, over }) {
  const groups = Array.from({ length: 8 }, () => svg("g"));
  under.append(groups[0], groups[1]);
  over.append(...groups.slice(2));
  const shades = pool(groups[0], "path");
  const bands = pool(groups[1], "path");
  const levels = pool(groups[2], "path");
  const curves = pool(groups[3], "path");
  const drops = pool(groups[4], "path");
  const whiskers = pool(groups[5], "path");
  const dots = pool(groups[6], "circle");
  const leaders = pool(groups[7], "path");

  return function draw(canvas, data) {
    const { frame, xScale, yScale } = canvas;
    const points = data.points ?? [];
    shades(data.shades ?? [], (element, shade) =>
      set(element, { class: `tint ${shade.meaning ?? ""}`, d: bandPath(canvas, shade.xs, shade.low, shade.high) }),
    );
    bands(
      data.series.filter((one) => one.low && one.high),
      (element, one) =>
        set(element, {
          class: `tint ${one.meaning ?? ""}`,
          d: bandPath(canvas, one.xs, one.low ?? [], one.high ?? []),
        }),
    );
    levels(data.levels ?? [], (element, level) =>
      set(element, {
        class: level.quiet ? "level-line quiet" : "level-line",
        d: `M${frame.left} ${px(yScale(level.y))}H${frame.right}`,
      }),
    );
    curves(data.series, (element, one) =>
      set(element, {
        class: `curve ${one.meaning ?? ""} ${one.stroke ?? "solid"}`,
        d: linePath(canvas, one.xs, one.ys),
      }),
    );
    drops(
      points.filter((point) => point.drop),
      (element, point) =>
        set(element, { class: "drop", d: `M${px(xScale(point.x))} ${px(yScale(point.y))}V${frame.bottom}` }),
    );
    whiskers(
      points.filter((point) => point.sdX || point.sdY),
      (element, point) => set(element, { class: `whisker ${point.meaning ?? ""}`, d: whiskerPath(canvas, point) }),
    );
    dots(
      points.filter((point) => (point.shape ?? "dot") !== "none"),
      (element, point) =>
        set(element, {
          class: `point ${point.shape ?? "dot"} ${point.meaning ?? ""}`,
          r: point.shape === "ring" ? 5.5 : 4,
          cx: px(xScale(point.x)),
          cy: px(yScale(point.y)),
        }),
    );

    leaders(label(canvas, data), (element, d) => set(element, { class: "leader", d }));
  };
}

/**
 * @param {Canvas} canvas
 * @param {LineData} data
 * @returns {string[]} The lines from labels to what they name.
 */
function label(canvas, data) {
  const { frame, xScale, yScale, room } = canvas;
  const points = data.points ?? [];
  const paths = data.series.map((one) => pixels(canvas, one));
  for (const path of paths) room.keepClearOfLine(path, 1);
  for (const level of data.levels ?? [])
    room.keepClearOfLine([
      [frame.left, yScale(level.y)],
      [frame.right, yScale(level.y)],
    ]);
  for (const point of points) {
    room.keepClear({ x: xScale(point.x) - 6, y: yScale(point.y) - 6, width: 12, height: 12 });
    if (point.drop)
      room.keepClearOfLine(
        [
          [xScale(point.x), yScale(point.y)],
          [xScale(point.x), frame.bottom],
        ],
        DROP_WEIGHT,
      );
  }

  canvas.writeHandles();
  for (const point of points) {
    if (!point.label || point.drop) continue;
    writeAround(canvas, {
      x: xScale(point.x),
      y: yScale(point.y),
      label: point.label,
      kind: `point-label ${point.meaning ?? ""}`,
      gap: 10,
      labelWeight: 400,
    });
  }
  const leaders = labelDrops(
    canvas,
    points.filter(({ drop }) => drop),
  );
  for (const level of data.levels ?? []) labelLevel(canvas, level);
  const shades = (data.shades ?? []).map((shade) => ({ shade, path: shadePixels(canvas, shade) }));
  for (const { shade, path } of shades) labelShade(canvas, shade, path);
  for (const { path } of shades) keepClearOfShade(canvas, path);
  for (const [index, one] of data.series.entries()) labelCurve(canvas, one, paths[index]);
  return leaders;
}

/**
 * Names lines that fall to the axis: each beside or on its own, never across another's, or over its top with a line up to it. A name
 * without such a place is left out.
 * @param {Canvas} canvas
 * @param {readonly MarkedPoint[]} points
 * @returns {string[]} The lines up to names over the top.
 */
function labelDrops(canvas, points) {
  const { frame, xScale, yScale, room, size } = canvas;
  const lines = points.map((point) => ({ x: xScale(point.x), top: yScale(point.y) }));
  /** @type {Box[]} */
  const written = [];
  const leaders = [];
  for (const [index, { label, meaning }] of points.entries()) {
    if (!label) continue;
    const { x, top } = lines[index];
    const width = textWidth(label, size);
    const row = size * 1.15 + APART_PX.words;
    // In the middle of its line, unless the picture ends there.
    const middle = Math.min(Math.max(x, frame.left + 1 + width / 2), frame.width - width / 2);
    const rows = Math.max(1, Math.floor((frame.bottom - 10 - Math.max(frame.top + size, top)) / row) + 1);
    const beside = Array.from({ length: rows }, (_, n) => frame.bottom - 10 - n * row).flatMap((y, n) => [
      {
        x: x + BESIDE_PX.side,
        y,
        anchor: /** @type {const} */ ("start"),
        dislike: n * DISLIKE.row,
        apart: APART_PX.beside,
        over: false,
      },
      {
        x: x - BESIDE_PX.side,
        y,
        anchor: /** @type {const} */ ("end"),
        dislike: n * DISLIKE.row + 1,
        apart: APART_PX.beside,
        over: false,
      },
      {
        x: middle,
        y,
        anchor: /** @type {const} */ ("middle"),
        dislike: n * DISLIKE.row + DISLIKE.on,
        apart: APART_PX.on,
        over: false,
      },
    ]);
    const above = [0, 1, 2, 3].map((n) => ({
      x: middle,
      y: top - BESIDE_PX.top - n * row,
      anchor: /** @type {const} */ ("middle"),
      dislike: DISLIKE.over + n * DISLIKE.row,
      apart: APART_PX.on,
      over: true,
    }));
    const places = [...beside, ...above]
      .map((place) => ({ ...place, box: textBox(place.x, place.y, width, place.anchor, size) }))
      .filter(
        ({ box, apart }) =>
          box.x > frame.left &&
          box.x + box.width <= frame.width + 0.5 &&
          box.y > 0 &&
          !lines.some(
            (other) =>
              Math.abs(other.x - x) > 1 &&
              other.x > box.x - apart &&
              other.x < box.x + box.width + apart &&
              other.top < box.y + box.height,
          ) &&
          !written.some((other) => overlaps(box, other)),
      );
    const best = room.take(places.map(({ box, dislike }) => ({ boxes: [box], dislike })));
    if (best < 0) continue;
    const { box, over, x: at, y, anchor } = places[best];
    written.push(box);
    canvas.write({ text: label, kind: `point-label drop-label ${meaning ?? ""}`, x: at, y, anchor });
    if (over) leaders.push(`M${px(x)} ${px(top)}V${px(box.y + box.height)}`);
  }
  return leaders;
}

/** @param {Box} a @param {Box} b */
function overlaps(a, b) {
  return (
    Math.min(a.x + a.width, b.x + b.width) > Math.max(a.x, b.x) - APART_PX.words &&
    Math.min(a.y + a.height, b.y + b.height) > Math.max(a.y, b.y)
  );
}

/**
 * @param {Canvas} canvas
 * @param {Level} level
 */
function labelLevel({ frame, yScale, room, lineSize, write }, level) {
  const above = (frame.small ? level.shortAbove : undefined) ?? level.above;
  const below = (frame.small ? level.shortBelow : undefined) ?? level.below;
  for (const [text, dy] of /** @type {const} */ ([
    [above, -7],
    [below, lineSize + 5],
  ])) {
    if (!text) continue;
    const width = textWidth(text, lineSize);
    const y = yScale(level.y) + dy;
    const last = frame.right - width - 4;
    const xs = Array.from({ length: 9 }, (_, n) => frame.left + 8 + ((last - frame.left - 8) * n) / 8);
    const best = room.take(
      xs.map((x, n) => ({ dislike: n * 3, boxes: [textBox(x, y, width, "start", lineSize)] })),
      60,
    );
    if (best >= 0) write({ text, kind: "side-label", size: lineSize, anchor: "start", x: xs[best], y });
  }
}

/**
 * A curve's label goes just above or below it, where it lies most clear of everything else.
 * @param {Canvas} canvas
 * @param {Series} one
 * @param {readonly (readonly [number, number])[]} path
 */
function labelCurve(canvas, one, path) {
  const { frame, xScale, room, size } = canvas;
  const text = (frame.small ? one.shortLabel : undefined) ?? one.label;
  if (!text || path.length < 2) return;
  const width = textWidth(text, size);
  const from = Math.max(frame.left, Math.min(path[0][0], path[path.length - 1][0])) + 8 + width / 2;
  const to = Math.min(frame.right, Math.max(path[0][0], path[path.length - 1][0])) - 2 - width / 2;
  if (to < from) return;
  const wish = one.labelAt ?? "end";
  const liked =
    typeof wish === "number" ? xScale(wish) : wish === "start" ? from : wish === "end" ? to : (from + to) / 2;
  const centres = Array.from({ length: 13 }, (_, n) => from + ((to - from) * n) / 12).concat(
    Math.max(from, Math.min(to, liked)),
  );
  const places = centres.flatMap((x) => {
    const ys = [x - width / 2, x, x + width / 2].map((at) => heightAt(path, at)).filter(Number.isFinite);
    for (const [at, y] of path) if (at >= x - width / 2 - 1 && at <= x + width / 2 + 1) ys.push(y);
    const dislike = Math.abs(x - liked) / 6;
    return [
      { x, y: Math.min(...ys) - 8, dislike },
      { x, y: Math.max(...ys) + size + 5, dislike: dislike + 6 },
    ];
  });
  const best = room.take(
    places.map((place) => ({ dislike: place.dislike, boxes: [textBox(place.x, place.y, width, "middle", size)] })),
    300,
  );
  if (best >= 0)
    canvas.write({
      text,
      kind: `line-label ${one.meaning ?? ""}`,
      x: places[best].x,
      y: places[best].y,
      anchor: "middle",
    });
}

/**
 * A shade's label goes inside it, where the shade is thick under the whole of the words.
 * @param {Canvas} canvas
 * @param {Shade} shade
 * @param {ShadePath} path
 */
function labelShade(canvas, shade, path) {
  const { frame, room, size } = canvas;
  const text = (frame.small ? shade.shortLabel : undefined) ?? shade.label;
  if (!text || path.upper.length < 2) return;
  const width = textWidth(text, size, 600);
  const from = path.upper[0][0] + width / 2 + 4;
  const to = path.upper[path.upper.length - 1][0] - width / 2 - 4;
  const places = [];
  for (let n = 0; n <= 20 && to >= from; n += 1) {
    const x = from + ((to - from) * n) / 20;
    const under = [-0.5, 0, 0.5].map((share) => x + share * width);
    const ceiling = Math.max(...under.map((at) => heightAt(path.upper, at)));
    const floor = Math.min(...under.map((at) => heightAt(path.lower, at)));
    if (floor - ceiling < size + 4) continue;
    places.push({
      x,
      y: (ceiling + floor) / 2 + size * 0.35,
      dislike: Math.abs(n - 10) * 3 - Math.min(60, floor - ceiling),
    });
  }
  const best = room.take(
    places.map((place) => ({ dislike: place.dislike + 60, boxes: [textBox(place.x, place.y, width, "middle", size)] })),
    600,
  );
  if (best >= 0)
    canvas.write({ text, kind: "area-label", weight: 600, anchor: "middle", x: places[best].x, y: places[best].y });
}

/** @typedef {{ upper: [number, number][], lower: [number, number][] }} ShadePath */

/**
 * @param {Canvas} canvas
 * @param {Shade} shade
 * @returns {ShadePath}
 */
function shadePixels({ xScale, yScale }, { xs, low, high }) {
  const sides = [low, high].map((ys) =>
    Array.from(xs, (x, i) => /** @type {[number, number]} */ ([xScale(x), yScale(ys[i])])),
  );
  const [lower, upper] =
    yScale(low[0]) + yScale(low[xs.length - 1]) >= yScale(high[0]) + yScale(high[xs.length - 1])
      ? sides
      : [sides[1], sides[0]];
  return { upper, lower };
}

/**
 * Labels of lines would rather not lie on a tint: their halo shows there.
 * @param {Canvas} canvas
 * @param {ShadePath} path
 */
function keepClearOfShade({ room }, { upper, lower }) {
  if (upper.length < 2) return;
  const left = upper[0][0];
  const step = (upper[upper.length - 1][0] - left) / 16;
  for (let n = 0; n < 16; n += 1) {
    const x = left + n * step;
    const y = heightAt(upper, x + step / 2);
    room.keepClear({ x, y, width: step, height: Math.max(0, heightAt(lower, x + step / 2) - y) }, 0.15);
  }
}

/**
 * @param {Canvas} canvas
 * @param {Series} one
 */
function pixels({ xScale, yScale }, one) {
  /** @type {[number, number][]} */
  const path = [];
  for (let i = 0; i < one.xs.length; i += 1) {
    if (Number.isFinite(one.ys[i])) path.push([xScale(one.xs[i]), yScale(one.ys[i])]);
  }
  return path;
}

/**
 * @param {readonly (readonly [number, number])[]} path
 * @param {number} x
 */
function heightAt(path, x) {
  for (let i = 1; i < path.length; i += 1) {
    // Most points are passed by: two numbers of each are looked at, no more.
    if (x < path[i - 1][0] || x > path[i][0]) continue;
    const [x0, y0] = path[i - 1];
    const [x1, y1] = path[i];
    return x1 === x0 ? y0 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return NaN;
}

/**
 * @param {Canvas} canvas
 * @param {ArrayLike<number>} xs
 * @param {ArrayLike<number>} ys
 */
function linePath({ xScale, yScale }, xs, ys) {
  return line()
    .defined((_, i) => Number.isFinite(ys[i]))
    .x((_, i) => xScale(xs[i]))
    .y((_, i) => yScale(ys[i]))
    .digits(1)(indices(xs));
}

/**
 * @param {Canvas} canvas
 * @param {ArrayLike<number>} xs
 * @param {ArrayLike<number>} low
 * @param {ArrayLike<number>} high
 */
function bandPath({ xScale, yScale }, xs, low, high) {
  return area()
    .defined((_, i) => Number.isFinite(low[i]) && Number.isFinite(high[i]))
    .x((_, i) => xScale(xs[i]))
    .y0((_, i) => yScale(low[i]))
    .y1((_, i) => yScale(high[i]))
    .digits(1)(indices(xs));
}

/**
 * d3 wants one datum a point; ours are in columns and looked up by index.
 * @param {ArrayLike<number>} xs
 * @returns {[number, number][]}
 */
function indices(xs) {
  return Array.from(xs, (x, i) => [x, i]);
}

/**
 * @param {Canvas} canvas
 * @param {MarkedPoint} point
 */
function whiskerPath({ xScale, yScale }, { x, y, sdX, sdY }) {
  const across = sdX ? `M${px(xScale(x - sdX))} ${px(yScale(y) - 5)}v10m0 -5H${px(xScale(x + sdX))}m0 -5v10` : "";
  const up = sdY ? `M${px(xScale(x) - 5)} ${px(yScale(y - sdY))}h10m-5 0V${px(yScale(y + sdY))}m-5 0h10` : "";
  return across + up;
}

/**
 * @param {number} at
 * @param {readonly Series[]} series
 * @param {(x: number) => string} formatX
 * @param {(y: number) => string} formatY
 * @returns {Reading}
 */
function readSeries(at, series, formatX, formatY) {
  const values = series
    .filter((one) => !one.unread)
    .map((one) => ({ one, y: valueAt(one, at) }))
    .filter(({ y }) => Number.isFinite(y));
  return {
    spoken: words("chart.read", {
      x: formatX(at),
      parts: values.map(({ one, y }) => `${one.name} ${formatY(y)}`).join(", "),
    }),
    words: words.parts("chart.read", {
      x: html("b", {}, formatX(at)),
      parts: values.flatMap(({ one, y }, index) => [
        index ? `, ${one.name} ` : `${one.name} `,
        html("b", { class: one.meaning }, formatY(y)),
      ]),
    }),
    points: values.map(({ one, y }) => ({ y, meaning: one.meaning })),
  };
}

/**
 * @param {Series} one
 * @param {number} x
 */
export function valueAt({ xs, ys }, x) {
  for (let i = 1; i < xs.length; i += 1) {
    if (x >= xs[i - 1] && x <= xs[i])
      return xs[i] === xs[i - 1] ? ys[i] : ys[i - 1] + ((ys[i] - ys[i - 1]) * (x - xs[i - 1])) / (xs[i] - xs[i - 1]);
  }
  return NaN;
}
