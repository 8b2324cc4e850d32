// @ts-check
/** What every chart shares: a figure drawn for its real width, two axes, labels that find room, handles and a reading line. */

import { drawAxes } from "./axes.js";
import { glides } from "./glide.js";
import { handle, RING_PX } from "./handle.js";
import { html, say, set, uniqueId } from "./html.js";
import { labelRoom, textBox } from "./labels.js";
import { readingCursor } from "./reading-cursor.js";
import { onWidth } from "./resize.js";
import { pool, px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Words } from "./html.js" */
/** @import { Axis, Frame, Scale } from "./axes.js" */
/** @import { HandleOptions, HandleData } from "./handle.js" */
/** @import { Reading } from "./reading-cursor.js" */
/** @import { Box, Place } from "./labels.js" */

/**
 * @typedef {object} PlotOptions
 * @property {string} title The chart's accessible name.
 * @property {Axis} x
 * @property {Axis} y
 * @property {(width_px: number) => number} height
 * @property {Record<string, HandleOptions>} [handles] By a name of the caller's.
 * @property {string} [reader] The accessible name of the reading cursor; without it the chart is not read point by point.
 */

/**
 * @typedef {object} HandleWords
 * @property {string} [label] "you", or "you hold 63 %".
 * @property {string} [strong] A second, heavier line: "slower by 0:06".
 */

/**
 * @typedef {object} PlotData
 * @property {string} desc One sentence that says what the chart shows.
 * @property {Partial<Axis>} [x] Changes to the axis: usually its domain.
 * @property {Partial<Axis>} [y]
 * @property {Record<string, HandleData & HandleWords>} [handles] A handle without data is hidden.
 * @property {Words} [reading] The line below, while nothing is being read off.
 * @property {(x: number) => Reading} [read] What the chart says at x.
 * @property {string} [note] A few words at the top right.
 * @property {number} [leftMargin] The least left margin, to line up one chart under another.
 * @property {boolean} [ease] Whether lines glide to their place, after typing; never while dragging.
 */

/**
 * @typedef {object} Label
 * @property {string} text
 * @property {string} kind A class: "line-label drag".
 * @property {number} [size]
 * @property {number} [weight]
 * @property {"start" | "middle" | "end"} anchor
 * @property {number} x
 * @property {number} y
 * @property {number} [turn] Degrees about (x, y).
 */

/**
 * @typedef {object} Canvas What a chart draws with.
 * @property {Frame} frame
 * @property {Scale} xScale
 * @property {Scale} yScale
 * @property {Axis} x
 * @property {Axis} y
 * @property {number} size Text size in pixels.
 * @property {number} lineSize Size of labels on lines.
 * @property {ReturnType<typeof labelRoom>} room
 * @property {(label: Label) => void} write
 * @property {() => void} writeHandles Writes the words of every handle; call it when what they must avoid is known.
 */

/** Space between a handle's ring and its words. */
const GAP_PX = 6;
/** The words of a handle are this clear of lines, with their halo. */
const CLEAR_PX = 4;
/** Charts are lower on paper, so that a question fits on one page. */
const PRINTED_HEIGHT_SHARE = 0.72;

/**
 * @template {PlotData} Data
 * @param {PlotOptions} options
 * @param {(layers: { under: SVGGElement, over: SVGGElement }) => (canvas: Canvas, data: Data) => void} prepare
 *   Makes the chart's own elements once; what it returns draws them.
 */
export function plot(options, prepare) {
  const descId = uniqueId("desc");
  const clipId = uniqueId("clip");
  const desc = svg("desc", { id: descId });
  const clip = svg("rect");
  const under = svg("g", { "clip-path": `url(#${clipId})` });
  const axisLayer = svg("g");
  const over = svg("g", { "clip-path": `url(#${clipId})` });
  const words = svg("g", { class: "words" });
  const handleLayer = svg("g");
  const picture = svg(
    "svg",
    { class: "chart", role: "group", "aria-label": options.title, "aria-describedby": descId },
    desc,
    svg("defs", {}, svg("clipPath", { id: clipId }, clip)),
    under,
    axisLayer,
    over,
    words,
  );
  const reading = html("figcaption", { class: "reading" });
  const element = html("figure", { class: "chart-figure" }, picture, reading);

  const axes = drawAxes(axisLayer);
  const drawContents = prepare({ under, over });
  const drawWords = pool(words, "text");
  /** @type {{ id: string, options: HandleOptions, part: ReturnType<typeof handle> }[]} */
  const handles = Object.entries(options.handles ?? {}).map(([id, one]) => ({
    id,
    options: one,
    part: handle(one, nearest),
  }));
  /** Where handles lie close together, their reaches overlap; of two in one place the upper one. @param {PointerEvent} event */
  function nearest(event) {
    const parts = handles.map(({ part }) => part);
    return parts.reduce((best, part) => (part.away(event) <= best.away(event) ? part : best));
  }
  const dragging = () => handles.some(({ part }) => part.held());
  /** @type {((x: number | null) => void) | undefined} */
  let told;
  const cursor =
    options.reader === undefined
      ? null
      : readingCursor({
          picture,
          label: options.reader,
          busy: dragging,
          read: (x) => data?.read?.(x) ?? { words: "", spoken: "" },
          say: (content) => say(reading, content ?? data?.reading ?? ""),
          moved: (x) => told?.(x),
        });
  if (cursor) picture.append(cursor.element);
  handleLayer.append(...handles.map(({ part }) => part.element));
  picture.append(handleLayer);

  const mayGlide = glides();
  /** @type {Data | null} */
  let data = null;
  /** @type {{ x: readonly [number, number], y: readonly [number, number] } | null} */
  let domains = null;
  const size = onWidth(element, draw);

  /** @param {number} width */
  function draw(width) {
    if (!data || width <= 0) return;
    const x = { ...options.x, ...data.x };
    const y = { ...options.y, ...data.y };
    // While a handle is held the axes stand still, or the chart would slide from under the hand.
    if (!domains || !dragging()) domains = { x: x.domain ?? [0, 1], y: y.domain ?? [0, 1] };
    const height = Math.round(options.height(width) * (size.printing() ? PRINTED_HEIGHT_SHARE : 1));
    set(picture, { width, height, viewBox: `0 0 ${width} ${height}`, "data-ease": mayGlide(data.ease) && !dragging() });
    const drawn = axes({
      width,
      height,
      x,
      y,
      xDomain: domains.x,
      yDomain: domains.y,
      note: data.note,
      least: data.leftMargin,
    });
    const { frame, xScale, yScale } = drawn;
    set(clip, {
      x: frame.left,
      y: frame.top - 4,
      width: Math.max(0, frame.right - frame.left),
      height: Math.max(0, frame.bottom - frame.top + 4),
    });
    set(picture, { "data-small": frame.small });
    reading.style.setProperty("--plot-left", `${frame.left}px`);

    /** @type {Label[]} */
    const labels = [];
    const room = labelRoom({
      x: frame.left + 4,
      y: frame.top - 4,
      width: width - frame.left - 4,
      height: frame.bottom - frame.top + 1,
    });
    /** @type {Canvas} */
    const canvas = {
      frame,
      xScale,
      yScale,
      x,
      y,
      room,
      size: frame.small ? 13 : 14,
      lineSize: frame.small ? 12 : 13,
      write: (label) => labels.push(label),
      writeHandles() {
        for (const {
          id,
          options: { ring = "you", meaning = null },
        } of handles) {
          const at = data?.handles?.[id];
          const own = ring === "you";
          if (at)
            writeAround(canvas, {
              x: xScale(at.x),
              y: yScale(at.y),
              label: at.label,
              strong: at.strong,
              kind: own ? "you-label" : `line-label ${meaning ?? ""}`,
              labelWeight: own ? 600 : 400,
              clear: CLEAR_PX,
            });
        }
      },
    };
    for (const { id, part } of handles) {
      const at = data.handles?.[id];
      set(part.element, { hidden: !at });
      if (!at) continue;
      part.update(at, xScale, yScale);
      const reach = RING_PX + 3;
      room.keepClear({ x: xScale(at.x) - reach, y: yScale(at.y) - reach, width: reach * 2, height: reach * 2 }, 2);
    }
    drawContents(canvas, data);
    drawWords(labels, (text, label) => {
      set(text, {
        class: `${label.kind} halo`,
        x: px(label.x),
        y: px(label.y),
        "text-anchor": label.anchor,
        "font-size": label.size ?? canvas.size,
        "font-weight": label.weight ?? null,
        transform: label.turn ? `rotate(${px(label.turn)} ${px(label.x)} ${px(label.y)})` : null,
      });
      say(text, label.text);
    });
    cursor?.update(frame, xScale, yScale);
  }

  return {
    element,
    /** @param {Data} next */
    update(next) {
      data = next;
      say(desc, next.desc);
      draw(size.width());
      if (!cursor || cursor.element.getAttribute("data-on") === null) say(reading, next.reading ?? "");
      set(reading, { hidden: !next.reading && !cursor });
    },
    /** Whom the chart tells where the rider reads it. @param {(x: number | null) => void} whom */
    onRead(whom) {
      told = whom;
    },
    /** Reads it there, without telling. @param {number | null} x */
    readAt: (x) => cursor?.showAt(x),
    destroy: size.destroy,
  };
}

/**
 * Writes one or two lines of words at the best place around a point.
 * @param {Canvas} canvas
 * @param {object} words
 * @param {number} words.x In pixels.
 * @param {number} words.y
 * @param {string} [words.label]
 * @param {string} [words.strong]
 * @param {string} words.kind Class of the words; the strong line gets " strong" added.
 * @param {number} [words.gap]
 * @param {readonly Side[]} [words.sides] In order of liking.
 * @param {number} [words.labelWeight]
 * @param {number} [words.limit]
 * @param {number} [words.clear] Room about them that would rather be clear too.
 * @returns {boolean} Whether there was room.
 */
export function writeAround(
  canvas,
  { x, y, label, strong, kind, gap = RING_PX + GAP_PX, sides = AROUND, labelWeight, limit, clear = 0 },
) {
  const strongSize = canvas.size + 2;
  const lines = [
    ...(label ? [{ text: label, size: canvas.size, weight: labelWeight ?? (strong ? 400 : 600), kind }] : []),
    ...(strong ? [{ text: strong, size: strongSize, weight: 600, kind: `${kind} strong` }] : []),
  ];
  if (lines.length === 0) return true;
  const widths = lines.map((line) => textWidth(line.text, line.size, line.weight));
  const height = lines.length * strongSize * 1.15;
  const places = sides.map((side, index) => {
    const anchor =
      side.across < 0
        ? /** @type {const} */ ("end")
        : side.across > 0
          ? /** @type {const} */ ("start")
          : /** @type {const} */ ("middle");
    const left = x + side.across * gap;
    const topEdge = side.up > 0 ? y - gap * side.up - height : side.up < 0 ? y - gap * side.up : y - height / 2;
    return { anchor, left, topEdge, dislike: index * 4 };
  });
  const shifts = [0, -24, 24, -56, 56];
  const tried = places.flatMap((place) =>
    (place.anchor === "middle" ? shifts : [0]).map((shift) => ({
      ...place,
      left: place.left + shift,
      dislike: place.dislike + Math.abs(shift) / 8,
    })),
  );
  const best = canvas.room.take(
    tried.map((place) => ({
      dislike: place.dislike,
      boxes: lines.map((line, index) =>
        withMargin(
          textBox(
            place.left,
            place.topEdge + (index + 0.82) * strongSize * 1.15,
            widths[index],
            place.anchor,
            line.size,
          ),
          clear,
        ),
      ),
    })),
    limit,
  );
  if (best < 0) return false;
  const place = tried[best];
  for (const [index, line] of lines.entries()) {
    canvas.write({
      text: line.text,
      kind: line.kind,
      size: line.size,
      weight: line.weight,
      anchor: place.anchor,
      x: place.left,
      y: place.topEdge + (index + 0.82) * strongSize * 1.15,
    });
  }
  return true;
}

/** @param {Box} box @param {number} margin @returns {Box} */
function withMargin({ x, y, width, height }, margin) {
  return { x: x - margin, y: y - margin, width: width + 2 * margin, height: height + 2 * margin };
}

/** @typedef {{ across: number, up: number }} Side */
/** @type {readonly Side[]} */
export const AROUND = [
  { across: -0.8, up: 0.8 },
  { across: 0.8, up: 0.8 },
  { across: -0.8, up: -0.8 },
  { across: 0.8, up: -0.8 },
  { across: 0, up: 1.2 },
  { across: 0, up: -1.2 },
  { across: 1.2, up: 0 },
  { across: -1.2, up: 0 },
  { across: -0.8, up: 2.2 },
  { across: 0.8, up: 2.2 },
  { across: -0.8, up: -2.2 },
  { across: 0.8, up: -2.2 },
  { across: 0, up: 3 },
  { across: 0, up: 5 },
  { across: 0.8, up: -3.2 },
  { across: -0.8, up: -3.2 },
];
