// @ts-check
/** Whether what is drawn may glide to its place: not while one change follows another, as with a key that repeats, when it would never arrive. */

/** Longer than a key's repeat and than a quick glide. */
const CALM_MS = 250;

/** A piece's own memory of when it last changed. @returns {(wanted: boolean | undefined) => boolean} */
export function glides() {
  let last_ms = -Infinity;
  return (wanted) => {
    const now_ms = performance.now();
    const calm = now_ms - last_ms > CALM_MS;
    last_ms = now_ms;
    return wanted === true && calm;
  };
}
