// @ts-check
/** Which way a road leads, as the share of its length by sectors of the compass, and where winds come from. */

import { html, set, uniqueId } from "./html.js";
import { pool, px, svg } from "./svg.js";

/**
 * @typedef {object} CompassData
 * @property {readonly number[]} shares by sectors of the same width, clockwise, the first with its middle at north
 * @property {readonly { from_deg: number, name: string }[]} winds
 * @property {readonly string[]} letters of north, east, south and west
 * @property {string} spoken
 */

const SIZE_PX = { wide: 340, high: 300 };
const RADIUS_PX = 72;
const LETTERS_PX = 84;
/** How far from the middle an arrow begins and ends, and its name stands. */
const ARROW_PX = { begins: 128, ends: 98, name: 138 };
/** Half the width and the length of an arrow's head. */
const HEAD = { deg: 4, px: 9 };
/** Nearer than this to the middle a name stands above or below its arrow. */
const BESIDE_PX = 30;
/** How much of its sector a petal fills, to either side. */
const HALF_PETAL = 0.42;

/** A place at a bearing from the middle, for a path. @param {number} deg @param {number} from_px */
function at(deg, from_px) {
  const turn = (deg * Math.PI) / 180;
  return `${px(from_px * Math.sin(turn))} ${px(-from_px * Math.cos(turn))}`;
}

/** @param {number} deg @param {number} from_px */
function placed(deg, from_px) {
  const [x, y] = at(deg, from_px).split(" ");
  return { x, y };
}

/** @param {{ title: string }} options */
export function compass({ title }) {
  const descId = uniqueId("desc");
  const desc = svg("desc", { id: descId });
  const [petals, letters, arrows, names] = ["petals", "letters", "arrows", "names"].map((name) =>
    svg("g", { class: name }),
  );
  const picture = svg(
    "svg",
    {
      class: "chart compass",
      role: "img",
      viewBox: `${-SIZE_PX.wide / 2} ${-SIZE_PX.high / 2} ${SIZE_PX.wide} ${SIZE_PX.high}`,
      "aria-label": title,
      "aria-describedby": descId,
    },
    desc,
    svg("circle", { class: "frame-line", r: RADIUS_PX }),
    petals,
    letters,
    arrows,
    names,
  );
  const draw = {
    petals: pool(petals, "path"),
    letters: pool(letters, "text"),
    arrows: pool(arrows, "path"),
    names: pool(names, "text"),
  };

  return {
    element: html("div", { class: "figure-box" }, picture),
    /** @param {CompassData} data */
    update({ shares, winds, letters: four, spoken }) {
      desc.textContent = spoken;
      const sector_deg = 360 / shares.length;
      const largest = Math.max(...shares);
      const sectors = shares.map((share, index) => ({ share, deg: index * sector_deg }));
      draw.petals(sectors, (path, { share, deg }) => {
        // By the root, so that areas compare; the largest reaches the rim.
        const far = RADIUS_PX * Math.sqrt(share / largest);
        const [left, right] = [deg - HALF_PETAL * sector_deg, deg + HALF_PETAL * sector_deg];
        set(path, { d: share > 0 ? `M0 0L${at(left, far)}A${px(far)} ${px(far)} 0 0 1 ${at(right, far)}Z` : "" });
      });
      const quarters = four.map((letter, index) => ({ letter, deg: 90 * index }));
      draw.letters(quarters, (text, { letter, deg }) => {
        text.textContent = letter;
        set(text, placed(deg, LETTERS_PX));
      });
      const { begins, ends } = ARROW_PX;
      draw.arrows(winds, (path, { from_deg }) => {
        const [left, right] = [from_deg - HEAD.deg, from_deg + HEAD.deg].map((deg) => at(deg, ends + HEAD.px));
        set(path, { d: `M${at(from_deg, begins)}L${at(from_deg, ends)}M${left}L${at(from_deg, ends)}L${right}` });
      });
      draw.names(winds, (text, { from_deg, name }) => {
        text.textContent = name;
        const { x, y } = placed(from_deg, ARROW_PX.name);
        // Away from its arrow.
        const anchor = Math.abs(Number(x)) < BESIDE_PX ? "middle" : Number(x) < 0 ? "end" : "start";
        set(text, { x, y, "text-anchor": anchor });
      });
    },
  };
}
