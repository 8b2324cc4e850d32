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
/** Words are measured in one size and stand for the others: a browser takes its time over each size that it meets. */
const MEASURED_PX = 16;

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
  return size_px * widthEm(text.replace(/\d/g, "0"), weight);
}

/** @param {string} text @param {number} weight */
function widthEm(text, weight) {
  const key = `${weight} ${text}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  if (pen === undefined) {
    pen = document.createElement("canvas").getContext("2d");
    face ||= getComputedStyle(document.documentElement).fontFamily;
  }
  let width_em = text.length * USUAL_EM;
  if (pen) {
    pen.font = `${weight} ${MEASURED_PX}px ${face}`;
    width_em = pen.measureText(text).width / MEASURED_PX;
  }
  if (known.size > MOST_KNOWN) known.clear();
  known.set(key, width_em);
  return width_em;
}
