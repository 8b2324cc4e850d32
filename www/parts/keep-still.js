// @ts-check
/** Keeps what is being dragged where it is in the window, whatever comes and goes around it. */

/** Moves smaller than this are rounding: a page scrolls by whole pixels of the screen. */
const LEAST_PX = 0.5;
/** What follows a drag late, such as an answer from the worker, comes within this time. */
const SETTLING_MS = 800;
/** What ends the wait for it: the next thing that somebody does. */
const NEXT_THINGS = ["pointerdown", "wheel", "keydown"];

/** What is still settling; the next drag begins where this one has ended. @type {(() => void) | null} */
let finishLast = null;

/**
 * Scrolls along with everything that grows or shrinks above `frame`. What scrolling cannot undo, since the page ends there or a line of
 * text has broken elsewhere, is undone by shifting `held` itself until the drag has settled.
 * @param {HTMLElement} held What is under the hand.
 * @param {Element} [frame] What it stands in and scrolls with.
 * @returns {() => void} Call it when the hand lets go.
 */
export function keepStill(held, frame = held) {
  finishLast?.();
  const root = held.getRootNode();
  const scroller = scrollerOf(held);
  const { overflowAnchor } = scroller.style;
  const frameTop_px = frame.getBoundingClientRect().top;
  const { left: left_px, top: top_px } = held.getBoundingClientRect();
  let [across_px, down_px] = [0, 0];

  function hold() {
    const moved_px = frame.getBoundingClientRect().top - (frame === held ? down_px : 0) - frameTop_px;
    if (Math.abs(moved_px) > LEAST_PX) scroller.scrollBy({ top: moved_px, behavior: "instant" });
    const now = held.getBoundingClientRect();
    const [right_px, lower_px] = [now.left - across_px - left_px, now.top - down_px - top_px];
    if (Math.hypot(right_px + across_px, lower_px + down_px) <= LEAST_PX) return;
    [across_px, down_px] = [-right_px, -lower_px];
    held.style.transform = `translate(${across_px}px, ${down_px}px)`;
    // Its own change is nothing to hear of again.
    observer.takeRecords();
  }

  // The browser's own anchoring would undo the same moves a second time.
  scroller.style.overflowAnchor = "none";
  // Told of a redraw before it is painted.
  const observer = new MutationObserver(hold);
  observer.observe(root, { subtree: true, childList: true, characterData: true, attributes: true });

  function finish() {
    finishLast = null;
    clearTimeout(waiting);
    for (const type of NEXT_THINGS) removeEventListener(type, finish, { capture: true });
    observer.disconnect();
    held.style.transform = "";
    scroller.style.overflowAnchor = overflowAnchor;
  }

  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;
  finishLast = finish;
  return () => {
    if (finishLast !== finish) return;
    waiting = setTimeout(finish, SETTLING_MS);
    for (const type of NEXT_THINGS) addEventListener(type, finish, { capture: true });
  };
}

/** The nearest element around that scrolls up and down, or the page. @param {Element} element @returns {HTMLElement} */
function scrollerOf(element) {
  for (let around = element.parentElement; around; around = around.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(around).overflowY) && around.scrollHeight > around.clientHeight)
      return around;
  }
  return /** @type {HTMLElement} */ (document.scrollingElement ?? document.documentElement);
}
