// @ts-check
/** The way of a ride as a plain line, with the lap that is chosen. */

import { html, set } from "../../parts/html.js";
import { svg } from "../../parts/svg.js";
import { book } from "../../words/index.js";

/** @import { Recording, Span } from "../../recordings/read.js" */

const words = book("drag-test");
const SIZE_PX = 200;
const EDGE_PX = 8;

export function outline() {
  const whole = svg("path", { class: "track-line" });
  const chosen = svg("path", { class: "track-lap" });
  const picture = svg(
    "svg",
    { class: "track", viewBox: `0 0 ${SIZE_PX} ${SIZE_PX}`, role: "img", "aria-label": words("outline") },
    whole,
    chosen,
  );
  const element = html("div", { class: "track-box" }, picture);
  return {
    element,
    /** @param {Recording} recording @param {Span | null} lap */
    update({ outline: { time_s, east_m, north_m } }, lap) {
      element.hidden = time_s.length < 2;
      if (element.hidden) return;
      const [left, right] = [Math.min(...east_m), Math.max(...east_m)];
      const [bottom, top] = [Math.min(...north_m), Math.max(...north_m)];
      const scale = (SIZE_PX - 2 * EDGE_PX) / Math.max(right - left, top - bottom, 1);
      const at = (/** @type {number} */ i) =>
        `${(EDGE_PX + (east_m[i] - left) * scale).toFixed(1)} ${(EDGE_PX + (top - north_m[i]) * scale).toFixed(1)}`;
      const line = (/** @type {number[]} */ points) => (points.length ? `M${points.map(at).join("L")}` : "");
      const all = [...time_s.keys()];
      set(whole, { d: line(all) });
      set(chosen, { d: lap ? line(all.filter((i) => time_s[i] >= lap.from_s && time_s[i] <= lap.to_s)) : "" });
    },
  };
}
