// @ts-check
/** What is out of sight is drawn once what is looked at rests, one piece a frame, so that edits are painted soon. */

/** So long without an edit is a rest, ms. */
const REST_MS = 250;

/** Whether an element lies outside the window or in a closed fold. One that is hidden by itself may come into sight as it is drawn. @param {Element} element */
export function isOutOfSight(element) {
  const { top, bottom, height } = element.getBoundingClientRect();
  return height > 0 ? bottom <= 0 || top >= innerHeight : element.closest("details:not([open])") !== null;
}

/** A queue of draws. A newer one takes the place of what still waits; `host` says that something does. @param {Element} host */
export function drawLater(host) {
  /** @type {readonly (() => void)[]} */
  let waiting = [];
  let frame = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;

  function stop() {
    clearTimeout(resting);
    cancelAnimationFrame(frame);
  }

  /** @param {readonly (() => void)[]} draws */
  function wait(draws) {
    waiting = draws;
    host.toggleAttribute("data-behind", draws.length > 0);
  }

  function drawNext() {
    const [first, ...rest] = waiting;
    first?.();
    wait(rest);
    if (rest.length) frame = requestAnimationFrame(drawNext);
  }

  function drawAll() {
    stop();
    for (const draw of waiting) draw();
    wait([]);
  }
  // Paper shows all of it.
  addEventListener("beforeprint", drawAll);

  return {
    /** @param {readonly (() => void)[]} draws */
    put(draws) {
      stop();
      wait(draws);
      if (draws.length) resting = setTimeout(drawNext, REST_MS);
    },
    destroy() {
      stop();
      removeEventListener("beforeprint", drawAll);
    },
  };
}
