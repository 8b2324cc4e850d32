// @ts-check
/** Long work in pieces: what is ready is seen, and a press is heard, before the next piece begins. */

/** A page that nobody sees is not painted, and goes on all the same; so does one that a browser has stopped painting for a reason of its own. */
const AT_MOST_MS = 500;

/** Resolves once what is in the page now has been painted. @returns {Promise<void>} */
export function painted() {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, document.hidden ? 0 : AT_MOST_MS);
  });
}

/** @param {number} wait_ms */
export const pause = (wait_ms) => new Promise((resolve) => setTimeout(resolve, wait_ms));
