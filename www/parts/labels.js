// @ts-check
/** Finding room for labels: each takes the best of its possible places, given what is already drawn. */

/** @typedef {{ x: number, y: number, width: number, height: number }} Box In pixels, from the top left corner. */
/** @typedef {{ boxes: readonly Box[], dislike?: number }} Place A label may need several boxes, when it is turned. */

/** Beyond the edge is worse than on top of anything. */
const OUTSIDE = 40;
const LINE_STEP_PX = 6;

/**
 * @param {Box} bounds
 */
export function labelRoom(bounds) {
  /** @type {(Box & { weight: number })[]} */
  const taken = [];

  /** @param {Box} box @param {number} enough At which the rest need not be counted. */
  function cost(box, enough) {
    let sum = (box.width * box.height - overlap(box, bounds)) * OUTSIDE;
    for (const other of taken) {
      if (sum >= enough) break;
      sum += overlap(box, other) * other.weight;
    }
    return sum;
  }

  return {
    /**
     * Keeps labels off a box. Weight 1 is a label or a handle; a line they may touch at need weighs less.
     * @param {Box} box
     * @param {number} [weight]
     */
    keepClear(box, weight = 1) {
      taken.push({ ...box, weight });
    },
    /**
     * @param {readonly (readonly [number, number])[]} points
     * @param {number} [weight]
     */
    keepClearOfLine(points, weight = 0.5) {
      for (let i = 1; i < points.length; i += 1) {
        const [x0, y0] = points[i - 1];
        const [x1, y1] = points[i];
        const pieces = Math.min(200, Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / LINE_STEP_PX)));
        for (let piece = 0; piece < pieces; piece += 1) {
          const share = (piece + 0.5) / pieces;
          taken.push({ x: x0 + (x1 - x0) * share - 3, y: y0 + (y1 - y0) * share - 3, width: 6, height: 6, weight });
        }
      }
    },
    /**
     * Takes the best place and returns its index, or -1 if every place costs more than `limit` (in pixels of overlap).
     * @param {readonly Place[]} places In order of liking.
     * @param {number} [limit]
     */
    take(places, limit = Infinity) {
      let best = -1;
      let least = limit;
      // The best liked first: what is liked less than the best sum so far is not looked at.
      const inOrder = places
        .map(({ boxes, dislike }, index) => ({ index, boxes, dislike: dislike ?? index * 2 }))
        .sort((a, b) => a.dislike - b.dislike);
      for (const { index, boxes, dislike } of inOrder) {
        if (dislike >= least) break;
        const sum = boxes.reduce((so, box) => (so < least ? so + cost(box, least - so) : so), dislike);
        if (sum < least) [least, best] = [sum, index];
      }
      if (best >= 0) for (const box of places[best].boxes) taken.push({ ...box, weight: 1 });
      return best;
    },
  };
}

/**
 * @param {Box} a
 * @param {Box} b
 */
function overlap(a, b) {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0 && down > 0 ? across * down : 0;
}

/**
 * The box of a line of text on its baseline.
 * @param {number} x
 * @param {number} baseline
 * @param {number} width
 * @param {"start" | "middle" | "end"} anchor
 * @param {number} size
 * @returns {Box}
 */
export function textBox(x, baseline, width, anchor, size) {
  const left = anchor === "start" ? x : anchor === "middle" ? x - width / 2 : x - width;
  return { x: left, y: baseline - size * 0.85, width, height: size * 1.15 };
}
