// @ts-check
/** How wide words come out, so that labels can be placed before they are drawn. */

/** @type {CanvasRenderingContext2D | null | undefined} */
let pen;
let face = "";
/** @type {Map<string, number>} */
const known = new Map();
const MOST_KNOWN = 2000;
/** Digits keep one width on the page; used where no canvas can measure. */
const USUAL_EM = 0.56;

/** Measures in another typeface than the document's. @param {string} family */
export function measureIn(family) {
  if (family === face) return;
  face = family;
  known.clear();
}

/**
 * @param {string} text
 * @param {number} size_px
 * @param {number} [weight]
 */
export function textWidth(text, size_px, weight = 400) {
  // Tabular figures are all as wide as a zero, whatever the face does by default.
  const shape = text.replace(/\d/g, "0");
  const key = `${weight} ${size_px} ${shape}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  if (pen === undefined) {
    pen = document.createElement("canvas").getContext("2d");
    face ||= getComputedStyle(document.documentElement).fontFamily;
  }
  let width_px = text.length * size_px * USUAL_EM;
  if (pen) {
    pen.font = `${weight} ${size_px}px ${face}`;
    width_px = pen.measureText(shape).width;
  }
  if (known.size > MOST_KNOWN) known.clear();
  known.set(key, width_px);
  return width_px;
}
