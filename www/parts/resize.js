// @ts-check
/** Drawing for the real width, on screen and on paper. */

/** The width of a chart on a printed page, set out in print.css. */
const PRINTED_CHART_PX = 340;

/**
 * Calls `draw` with the element's width in pixels when it changes, and once more for paper, where no resize is reported.
 * @param {HTMLElement} element
 * @param {(width_px: number) => void} draw
 * @param {number} [printed_px] The width to draw for on paper.
 * @returns {{ width(): number, printing(): boolean, destroy(): void }}
 */
export function onWidth(element, draw, printed_px = PRINTED_CHART_PX) {
  let width_px = 0;
  let printing = false;
  /** @param {number} next_px */
  const use = (next_px) => {
    if (next_px <= 0 || next_px === width_px) return;
    width_px = next_px;
    draw(width_px);
  };
  const observer = new ResizeObserver((entries) => {
    if (!printing) use(Math.floor(entries[entries.length - 1].contentRect.width));
  });
  const before = () => {
    printing = true;
    use(Math.min(width_px, printed_px));
  };
  const after = () => {
    printing = false;
    use(Math.floor(element.clientWidth));
  };
  observer.observe(element);
  window.addEventListener("beforeprint", before);
  window.addEventListener("afterprint", after);
  return {
    width: () => width_px,
    printing: () => printing,
    destroy() {
      observer.disconnect();
      window.removeEventListener("beforeprint", before);
      window.removeEventListener("afterprint", after);
    },
  };
}
