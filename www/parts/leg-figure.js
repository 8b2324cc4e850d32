// @ts-check
/** A rider's leg, torso and arm on saddle, crank and pads, from the side and to scale; several over one another. */

import { html, set, uniqueId } from "./html.js";
import { onWidth } from "./resize.js";
import { px, svg } from "./svg.js";

/** @import { Meaning } from "./html.js" */

/** @typedef {{ x_m: number, y_m: number }} Place The crank's axle is at 0, 0; x is forward and y is up. */

/**
 * @typedef {object} Pose Where everything is at one crank angle.
 * @property {Place} hip
 * @property {Place} knee
 * @property {Place} ankle
 * @property {Place} pedal
 * @property {Place} shoulder
 * @property {Place} pads
 * @property {Place} saddle
 * @property {string} name On the drawing.
 * @property {string} angle Of the hip, written in its arc.
 */

/** @typedef {{ poses: readonly Pose[], spoken: string }} FigureData */

/** Drawn sizes that are no measurements of anybody, m. */
const HEAD_RADIUS_M = 0.1;
const NECK_M = 0.17;
const HAND_M = 0.28;
const SADDLE_HALF_M = 0.12;
const ARC_M = 0.17;
/** Room around the drawing, m. */
const MARGIN_M = 0.06;
const MOST_HEIGHT_PX = 460;

/**
 * @param {object} options
 * @param {string} options.title
 * @param {readonly { meaning: Meaning | null, stroke: "solid" | "dashed" }[]} options.looks One for each pose, the last on top.
 */
export function legFigure({ title, looks }) {
  const descId = uniqueId("desc");
  const desc = svg("desc", { id: descId });
  const ground = svg("path", { class: "frame-line" });
  const riders = looks.map(({ meaning, stroke }) => {
    const part = (/** @type {string} */ kind) => svg("path", { class: kind });
    const strokes = {
      saddle: part("seat"),
      circle: part("pedal-path"),
      crank: part("crank"),
      torso: part("limb thin"),
      arm: part("limb thin"),
      leg: part("limb"),
      arc: part("arc"),
    };
    const head = svg("circle", { class: "head" });
    const joints = [0, 1, 2, 3, 4].map(() => svg("circle", { class: "joint" }));
    const angle = svg("text", { class: "halo angle" });
    const element = svg(
      "g",
      { class: `rider ${meaning ?? ""} ${stroke}` },
      ...Object.values(strokes),
      head,
      ...joints,
      angle,
    );
    return { element, strokes, head, joints, angle };
  });
  const axle = svg("circle", { class: "axle", r: 3 });
  const picture = svg(
    "svg",
    { class: "chart leg-figure", role: "img", "aria-label": title, "aria-describedby": descId },
    desc,
    ground,
    ...riders.map(({ element }) => element),
    axle,
  );
  const element = html("div", { class: "figure-box" }, picture);
  /** @type {FigureData | null} */
  let data = null;
  const size = onWidth(element, draw);

  /** @param {number} width_px */
  function draw(width_px) {
    if (!data || width_px <= 0) return;
    const box = extent(data.poses);
    const scale = Math.min(width_px / (box.right - box.left), MOST_HEIGHT_PX / (box.top - box.bottom));
    const left = (width_px - scale * (box.right - box.left)) / 2;
    const x = (/** @type {number} */ x_m) => left + scale * (x_m - box.left);
    const y = (/** @type {number} */ y_m) => scale * (box.top - y_m);
    const path = (/** @type {Place[]} */ ...places) =>
      places.map((place, index) => `${index ? "L" : "M"}${px(x(place.x_m))} ${px(y(place.y_m))}`).join("");
    const height_px = scale * (box.top - box.bottom);
    set(picture, { width: width_px, height: px(height_px), viewBox: `0 0 ${width_px} ${px(height_px)}` });
    set(axle, { cx: px(x(0)), cy: px(y(0)) });
    set(ground, { d: path({ x_m: 0, y_m: 0 }, data.poses[data.poses.length - 1].hip) });

    data.poses.forEach((pose, index) => {
      const { strokes, head, joints, angle } = riders[index];
      const { hip, knee, ankle, pedal, shoulder, pads, saddle } = pose;
      const crank_px = scale * Math.hypot(pedal.x_m, pedal.y_m);
      const along = direction(hip, shoulder);
      const across = direction({ x_m: 0, y_m: 0 }, hip);
      const behind = { x_m: saddle.x_m - SADDLE_HALF_M, y_m: saddle.y_m };
      set(strokes.saddle, {
        d:
          path(behind, { x_m: saddle.x_m + SADDLE_HALF_M, y_m: saddle.y_m }) +
          path(saddle, { x_m: saddle.x_m - 0.1 * across.x, y_m: saddle.y_m - 0.1 * across.y }),
      });
      set(strokes.circle, {
        d: `M${px(x(0) - crank_px)} ${px(y(0))}a${px(crank_px)} ${px(crank_px)} 0 1 0 ${px(2 * crank_px)} 0a${px(crank_px)} ${px(crank_px)} 0 1 0 ${px(-2 * crank_px)} 0`,
      });
      set(strokes.crank, { d: path({ x_m: 0, y_m: 0 }, pedal) });
      set(strokes.leg, { d: path(hip, knee, ankle, pedal) });
      set(strokes.torso, { d: path(hip, shoulder) });
      set(strokes.arm, { d: path(shoulder, pads, { x_m: pads.x_m + HAND_M, y_m: pads.y_m }) });
      set(strokes.arc, { d: arc(hip, shoulder, knee, ARC_M, x, y, scale) });
      set(head, {
        cx: px(x(shoulder.x_m + NECK_M * along.x)),
        cy: px(y(shoulder.y_m + NECK_M * along.y + 0.04)),
        r: px(scale * HEAD_RADIUS_M),
      });
      [hip, knee, ankle, pedal, shoulder].forEach((place, at) => {
        set(joints[at], { cx: px(x(place.x_m)), cy: px(y(place.y_m)), r: 4 });
      });
      const between = bisector(hip, shoulder, knee);
      // The angles of several poses stand under one another, the last nearest to its arc.
      const below = 18 * (data?.poses.length ? data.poses.length - 1 - index : 0);
      set(angle, {
        x: px(x(hip.x_m + (ARC_M + 0.03) * between.x)),
        y: px(y(hip.y_m + (ARC_M + 0.03) * between.y) + 5 + below),
        "text-anchor": "start",
      });
      const words = `${pose.name} ${pose.angle}`;
      if (angle.textContent !== words) angle.textContent = words;
    });
  }

  return {
    element,
    /** @param {FigureData} next */
    update(next) {
      data = next;
      if (desc.textContent !== next.spoken) desc.textContent = next.spoken;
      draw(size.width());
    },
    destroy: size.destroy,
  };
}

/** What every pose needs over the whole turn, so that the drawing stands still while the crank turns. @param {readonly Pose[]} poses */
function extent(poses) {
  const cranks = poses.map(({ pedal }) => Math.hypot(pedal.x_m, pedal.y_m));
  const thighs = poses.map(({ hip, knee }) => hip.x_m + Math.hypot(knee.x_m - hip.x_m, knee.y_m - hip.y_m));
  const xs = poses.flatMap(({ hip, saddle, shoulder, pads }) => [
    hip.x_m,
    saddle.x_m - SADDLE_HALF_M,
    shoulder.x_m + NECK_M + HEAD_RADIUS_M,
    pads.x_m + HAND_M,
  ]);
  const ys = poses.flatMap(({ hip, shoulder, pads }) => [hip.y_m, pads.y_m, shoulder.y_m + NECK_M + HEAD_RADIUS_M / 2]);
  return {
    left: Math.min(...xs, ...cranks.map((crank) => -crank)) - MARGIN_M,
    right: Math.max(...xs, ...thighs, ...cranks) + MARGIN_M,
    bottom: Math.min(...cranks.map((crank) => -crank)) - MARGIN_M,
    top: Math.max(...ys) + MARGIN_M,
  };
}

/** @param {Place} from @param {Place} to */
function direction(from, to) {
  const length = Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m) || 1;
  return { x: (to.x_m - from.x_m) / length, y: (to.y_m - from.y_m) / length };
}

/** @param {Place} at @param {Place} one @param {Place} other */
function bisector(at, one, other) {
  const [a, b] = [direction(at, one), direction(at, other)];
  const length = Math.hypot(a.x + b.x, a.y + b.y) || 1;
  return { x: (a.x + b.x) / length, y: (a.y + b.y) / length };
}

/**
 * An arc about a joint from one limb to another.
 * @param {Place} at @param {Place} one @param {Place} other @param {number} radius_m
 * @param {(x_m: number) => number} x @param {(y_m: number) => number} y @param {number} scale
 */
function arc(at, one, other, radius_m, x, y, scale) {
  const [from, to] = [direction(at, one), direction(at, other)];
  const radius = px(scale * radius_m);
  return `M${px(x(at.x_m + radius_m * from.x))} ${px(y(at.y_m + radius_m * from.y))}A${radius} ${radius} 0 0 1 ${px(x(at.x_m + radius_m * to.x))} ${px(y(at.y_m + radius_m * to.y))}`;
}
