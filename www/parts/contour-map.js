// @ts-check
/** A quantity over two others: lines of equal value, you as a ring to move, and what each change does as an arrow. */

import { contourLines } from "./contour-lines.js";
import { RING_PX } from "./handle.js";
import { set } from "./html.js";
import { plot, writeAround } from "./plot.js";
import { polyline, pool, px, svg } from "./svg.js";
import { textWidth } from "./text-size.js";

/** @import { Meaning } from "./html.js" */
/** @import { PlotOptions, PlotData, Canvas, Side } from "./plot.js" */
/** @import { HandleData, HandleOptions } from "./handle.js" */
/** @import { Grid } from "./contour-lines.js" */
/** @import { Place } from "./labels.js" */

/**
 * @typedef {object} Change
 * @property {{ x: number, y: number }} to
 * @property {string} words "10 % more power"
 * @property {string} [amount] "faster by 2:03"
 * @property {Meaning | null} meaning
 */

/**
 * @typedef {object} MapData
 * @property {Grid} grid Give the same `values` array while it has not changed: its lines are then kept.
 * @property {(value: number) => string} format What a line is called: "58:00".
 * @property {number} [lineStep] Between lines; otherwise a round one is chosen that gives at most eighteen.
 * @property {{ value: number, label: string, shortLabel?: string, rate?: string } | null} [own] The line through you, what it is
 *   called, and its local rate: "10 W for 0.011 m²".
 * @property {HandleData & { label?: string }} you
 * @property {readonly Change[]} [changes]
 * @property {{ sdX: number, sdY: number, correlation?: number } | null} [unsure] One standard deviation, as a dashed ellipse about you.
 */

/** @typedef {PlotData & MapData} ContourData */

const MOST_LINES = 18;
const CLOCK_STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200];
/** Lines nearer to your own than this share of a step would run into it. */
const TOO_NEAR_OWN = 0.25;
/** Shorter lines carry no label. */
const LEAST_LABELLED_PX = 110;
/** Labels stand about this far apart, measured across the lines. */
const LABEL_EVERY_PX = { wide: 26, small: 40 };
/** Labels of lines leave the ring this much air. */
const CLEAR_OF_YOU_PX = 52;
const ARROW_HEAD_PX = 10;

/**
 * @param {Omit<PlotOptions, "height" | "handles" | "reader"> & { height?: (width_px: number) => number, you: Omit<HandleOptions, "directions" | "ring"> }} options
 */
export function contourMap({ you, ...options }) {
  const chart = plot(
    {
      height: (width) => Math.round(Math.min(528, Math.max(320, width * (width < 500 ? 1.05 : 0.82)))),
      ...options,
      handles: { you: { ...you, directions: "xy" } },
    },
    prepare,
  );
  return {
    ...chart,
    /** @param {ContourData} data */
    update(data) {
      const { xs, ys } = data.grid;
      chart.update({
        ...data,
        x: { domain: [xs[0], xs[xs.length - 1]], ...data.x },
        y: { domain: [ys[0], ys[ys.length - 1]], ...data.y },
        // The ring's words are written with the arrows, which take their place first.
        handles: { you: { ...data.you, label: undefined } },
      });
    },
  };
}

/**
 * @param {{ under: SVGGElement, over: SVGGElement }} layers
 * @returns {(canvas: Canvas, data: ContourData) => void}
 */
function prepare({ under, over }) {
  const isoLayer = svg("g");
  const ownLayer = svg("g");
  under.append(isoLayer, ownLayer);
  const ellipse = svg("path", { class: "unsure" });
  const arrowLayer = svg("g");
  over.append(ellipse, arrowLayer);
  const isoPaths = pool(isoLayer, "path");
  const ownPaths = pool(ownLayer, "path");
  const arrows = pool(arrowLayer, "path");
  const trace = rememberLast(contourLines);
  const traceOwn = rememberLast(contourLines);

  return function draw(canvas, data) {
    const { xScale, yScale } = canvas;
    const toPixels = (/** @type {readonly (readonly [number, number])[]} */ line) =>
      line.map(([x, y]) => /** @type {const} */ ([xScale(x), yScale(y)]));
    const { levels, step } = levelsOf(data);
    const isos = trace(data.grid, levels).flatMap(({ level, lines }) =>
      lines.map((line) => ({ level, path: toPixels(line) })),
    );
    const owns = (data.own ? traceOwn(data.grid, [data.own.value]) : []).flatMap(({ lines }) => lines.map(toPixels));
    isoPaths(isos, (element, { path }) => set(element, { class: "iso", d: polyline(path) }));
    ownPaths(owns, (element, path) => set(element, { class: "own", d: polyline(path) }));
    set(ellipse, { d: data.unsure ? ellipsePath(canvas, data.you, data.unsure) : null });
    arrows(
      (data.changes ?? []).map((change) => ({ change, d: arrowPath(canvas, data.you, change.to) })),
      (element, { change, d }) => set(element, { class: `change ${change.meaning ?? ""}`, d }),
    );
    label(canvas, data, isos, owns, step);
  };
}

/** @typedef {readonly (readonly [number, number])[]} Path In pixels. */

/**
 * The last lines are kept while the grid and the levels are the same: a drag moves the ring, not the map.
 * @param {typeof contourLines} trace
 * @returns {typeof contourLines}
 */
function rememberLast(trace) {
  /** @type {Grid | null} */
  let grid = null;
  let key = "";
  /** @type {ReturnType<typeof contourLines>} */
  let lines = [];
  return (nextGrid, levels) => {
    const nextKey = levels.join();
    if (grid?.values !== nextGrid.values || grid.xs !== nextGrid.xs || grid.ys !== nextGrid.ys || key !== nextKey) {
      lines = trace(nextGrid, levels);
      grid = nextGrid;
      key = nextKey;
    }
    return lines;
  };
}

/** @param {MapData} data */
function levelsOf({ grid, lineStep, own }) {
  let low = Infinity;
  let high = -Infinity;
  for (const value of grid.values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(high > low)) return { levels: [], step: 1 };
  const step = lineStep ?? CLOCK_STEPS.find((one) => (high - low) / one <= MOST_LINES) ?? (high - low) / MOST_LINES;
  const levels = [];
  for (let n = Math.ceil(low / step); n * step < high; n += 1) {
    if (!own || Math.abs(n * step - own.value) > step * TOO_NEAR_OWN) levels.push(n * step);
  }
  return { levels, step };
}

/**
 * @param {Canvas} canvas
 * @param {{ x: number, y: number }} from
 * @param {{ x: number, y: number }} to
 */
function arrowEnds({ xScale, yScale, frame }, from, to) {
  const x0 = xScale(from.x);
  const y0 = yScale(from.y);
  const x1 = Math.max(frame.left, Math.min(frame.right, xScale(to.x)));
  const y1 = Math.max(frame.top, Math.min(frame.bottom, yScale(to.y)));
  const beyond = Math.abs(x1 - xScale(to.x)) > 1 || Math.abs(y1 - yScale(to.y)) > 1;
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [dx, dy] = length > 0 ? [(x1 - x0) / length, (y1 - y0) / length] : [1, 0];
  const start = RING_PX + 3;
  return { x0: x0 + dx * start, y0: y0 + dy * start, x1, y1, dx, dy, beyond, drawn: length - start };
}

/**
 * @param {Canvas} canvas
 * @param {{ x: number, y: number }} from
 * @param {{ x: number, y: number }} to
 */
function arrowPath(canvas, from, to) {
  const { x0, y0, x1, y1, dx, dy, beyond, drawn } = arrowEnds(canvas, from, to);
  if (drawn < 2) return null;
  // What ends off the map has no head on it: the line only runs to the edge.
  if (beyond) return `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}`;
  const head = Math.min(ARROW_HEAD_PX, drawn);
  const [wx, wy] = [-dy * head * 0.65, dx * head * 0.65];
  const [bx, by] = [x1 - dx * head, y1 - dy * head];
  return `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}M${px(bx + wx)} ${px(by + wy)}L${px(x1)} ${px(y1)}L${px(bx - wx)} ${px(by - wy)}`;
}

/**
 * The one-standard-deviation ellipse, from the matrix square root (Cholesky factor) of the covariance.
 * @param {Canvas} canvas
 * @param {{ x: number, y: number }} centre
 * @param {{ sdX: number, sdY: number, correlation?: number }} unsure
 */
function ellipsePath({ xScale, yScale }, centre, { sdX, sdY, correlation = 0 }) {
  const across = Math.sqrt(Math.max(0, 1 - correlation * correlation));
  const points = Array.from({ length: 48 }, (_, n) => {
    const [c, s] = [Math.cos((n * Math.PI) / 24), Math.sin((n * Math.PI) / 24)];
    return /** @type {const} */ ([xScale(centre.x + sdX * c), yScale(centre.y + sdY * (correlation * c + across * s))]);
  });
  return `${polyline(points)}Z`;
}

/**
 * @param {Canvas} canvas
 * @param {ContourData} data
 * @param {readonly { level: number, path: Path }[]} isos
 * @param {readonly Path[]} owns
 * @param {number} step
 */
function label(canvas, data, isos, owns, step) {
  const { frame, xScale, yScale, room, lineSize } = canvas;
  const changes = (data.changes ?? []).map((change) => ({ change, ends: arrowEnds(canvas, data.you, change.to) }));
  for (const { ends } of changes)
    if (ends.drawn > 2)
      room.keepClearOfLine(
        [
          [ends.x0, ends.y0],
          [ends.x1, ends.y1],
        ],
        1.5,
      );
  for (const path of owns) room.keepClearOfLine(path, 0.25);
  if (data.unsure) {
    const rx = Math.abs(xScale(data.you.x + data.unsure.sdX) - xScale(data.you.x));
    const ry = Math.abs(yScale(data.you.y + data.unsure.sdY) - yScale(data.you.y));
    room.keepClear({ x: xScale(data.you.x) - rx, y: yScale(data.you.y) - ry, width: 2 * rx, height: 2 * ry }, 0.25);
  }
  for (const { change, ends } of changes) {
    writeAround(canvas, {
      x: ends.x1,
      y: ends.y1,
      label: change.words,
      strong: change.amount,
      gap: 10,
      labelWeight: 400,
      kind: `change-label ${change.meaning ?? ""}`,
      sides: Math.abs(ends.dx) > Math.abs(ends.dy) ? sidesAlong(Math.sign(ends.dx)) : sidesAcross(Math.sign(ends.dy)),
    });
  }
  if (data.you.label)
    writeAround(canvas, { x: xScale(data.you.x), y: yScale(data.you.y), label: data.you.label, kind: "you-label" });

  const own = longest(owns);
  if (own && data.own) {
    const halves = splitAt(own, xScale(data.you.x), yScale(data.you.y));
    const lower =
      halves[0].length > 1 && halves[0][0][1] > halves[1][halves[1].length - 1][1] ? halves : [halves[1], halves[0]];
    const words = (frame.small && data.own.shortLabel) || data.own.label;
    const written =
      writeAlong(canvas, lower[0], words, "own-label", { centred: true, aside: true, limit: 260 }) ||
      writeAlong(canvas, lower[1], words, "own-label", { centred: true, aside: true, limit: 260 });
    if (written && data.own.rate)
      writeAlong(canvas, lower[1], data.own.rate, "own-label", { centred: true, aside: true, limit: 160 });
  }

  const reach = Math.hypot(frame.right - frame.left, frame.bottom - frame.top);
  const every = Math.max(1, Math.ceil((isos.length * LABEL_EVERY_PX[frame.small ? "small" : "wide"]) / reach));
  room.keepClear({
    x: xScale(data.you.x) - CLEAR_OF_YOU_PX,
    y: yScale(data.you.y) - CLEAR_OF_YOU_PX,
    width: 2 * CLEAR_OF_YOU_PX,
    height: 2 * CLEAR_OF_YOU_PX,
  });
  for (const { level, path } of isos) {
    const ordinal = Math.round(level / step);
    if (ordinal % every !== 0 || pathLength(path) < LEAST_LABELLED_PX) continue;
    writeAlong(canvas, path, data.format(level), "iso-label", {
      centred: false,
      aside: false,
      limit: 60,
      size: lineSize,
    });
  }
}

/** @param {number} way @returns {readonly Side[]} */
function sidesAlong(way) {
  return [
    { across: way, up: 0 },
    { across: 0, up: 1.2 },
    { across: 0, up: -1.4 },
    { across: -0.2 * way, up: 1.2 },
    { across: -way, up: 1.2 },
  ];
}

/** @param {number} way Positive is down. @returns {readonly Side[]} */
function sidesAcross(way) {
  return [
    { across: 0, up: -way },
    { across: 1, up: 0 },
    { across: -1, up: 0 },
    { across: 1, up: way },
    { across: -1, up: way },
  ];
}

/**
 * Writes words along a line, upright, where the line is straight enough and there is room.
 * @param {Canvas} canvas
 * @param {Path} path
 * @param {string} text
 * @param {string} kind
 * @param {{ centred: boolean, aside: boolean, limit: number, size?: number }} how
 *   `centred` likes the middle best, otherwise the upper end; `aside` writes beside the line rather than on it.
 */
function writeAlong(canvas, path, text, kind, { centred, aside, limit, size = canvas.lineSize }) {
  const length = pathLength(path);
  const width = textWidth(text, size);
  if (length < width + 24) return false;
  const pointAlong = walk(path[0][1] <= path[path.length - 1][1] ? path : [...path].reverse());
  const [first, last] = [width / 2 + 14, length - width / 2 - 10];
  const wanted = centred ? length / 2 : Math.min(width / 2 + 26, last);
  const spots = [];
  for (let at = first; at <= last; at += 18) {
    const [x0, y0] = pointAlong(at - width / 2);
    const [x1, y1] = pointAlong(at + width / 2);
    const [mx, my] = pointAlong(at);
    const bulge = Math.hypot(mx - (x0 + x1) / 2, my - (y0 + y1) / 2);
    if (bulge > 4) continue;
    const angle = Math.atan2(y1 - y0, x1 - x0);
    const turn = Math.abs(angle) > Math.PI / 2 ? angle - Math.sign(angle) * Math.PI : angle;
    for (const side of aside ? [-1, 1] : [0]) {
      // On the line, the baseline drops by a third of the size so that the line meets the middle of the digits.
      const off = side < 0 ? -6 : side > 0 ? size + 3 : size * 0.34;
      spots.push({
        x: (x0 + x1) / 2 - Math.sin(turn) * off,
        y: (y0 + y1) / 2 + Math.cos(turn) * off,
        turn,
        dislike: Math.abs(at - wanted) / 12 + (side > 0 ? 8 : 0),
      });
    }
  }
  const best = canvas.room.take(
    spots.map((spot) => turnedPlace(spot, width, size)),
    limit,
  );
  if (best < 0) return false;
  const { x, y, turn } = spots[best];
  canvas.write({ text, kind, size, anchor: "middle", x, y, turn: (turn * 180) / Math.PI });
  return true;
}

/**
 * Turned words, covered by square boxes along their baseline.
 * @param {{ x: number, y: number, turn: number, dislike: number }} spot
 * @param {number} width
 * @param {number} size
 * @returns {Place}
 */
function turnedPlace({ x, y, turn, dislike }, width, size) {
  const count = Math.max(2, Math.ceil(width / (size * 1.2)));
  const [cx, cy] = [x + Math.sin(turn) * size * 0.34, y - Math.cos(turn) * size * 0.34];
  const boxes = Array.from({ length: count }, (_, n) => {
    const along = ((n + 0.5) / count - 0.5) * width;
    return {
      x: cx + Math.cos(turn) * along - size * 0.5,
      y: cy + Math.sin(turn) * along - size * 0.5,
      width: size,
      height: size,
    };
  });
  return { boxes, dislike };
}

/** @param {Path} path */
function pathLength(path) {
  let length = 0;
  for (let i = 1; i < path.length; i += 1)
    length += Math.hypot(path[i][0] - path[i - 1][0], path[i][1] - path[i - 1][1]);
  return length;
}

/**
 * Points by their distance from the start, quickest when asked for in about the order of the line.
 * @param {Path} path
 * @returns {(distance: number) => readonly [number, number]}
 */
function walk(path) {
  const travelled = [0];
  for (let i = 1; i < path.length; i += 1)
    travelled.push(travelled[i - 1] + Math.hypot(path[i][0] - path[i - 1][0], path[i][1] - path[i - 1][1]));
  let at = 1;
  return (distance) => {
    while (at > 1 && travelled[at - 1] > distance) at -= 1;
    while (at < path.length - 1 && travelled[at] < distance) at += 1;
    const [x0, y0] = path[at - 1];
    const [x1, y1] = path[at];
    const share = (distance - travelled[at - 1]) / (travelled[at] - travelled[at - 1] || 1);
    return [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share];
  };
}

/** @param {readonly Path[]} paths */
function longest(paths) {
  return paths.reduce(
    (/** @type {Path | null} */ best, path) => (best === null || pathLength(path) > pathLength(best) ? path : best),
    null,
  );
}

/**
 * The line before and after the point on it nearest to (x, y).
 * @param {Path} path
 * @param {number} x
 * @param {number} y
 * @returns {[Path, Path]}
 */
function splitAt(path, x, y) {
  let nearest = 0;
  path.forEach(([px0, py0], index) => {
    const [bx, by] = path[nearest];
    if (Math.hypot(px0 - x, py0 - y) < Math.hypot(bx - x, by - y)) nearest = index;
  });
  return [path.slice(0, nearest + 1), path.slice(nearest)];
}
