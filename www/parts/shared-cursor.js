// @ts-check
/** One reading line for charts over the same x: what is read in one of them is read in all. */

/** @typedef {{ onRead: (told: (x: number | null) => void) => void, readAt: (x: number | null) => void }} Readable */

/** @param {readonly Readable[]} charts */
export function shareCursor(charts) {
  for (const chart of charts)
    chart.onRead((x) => {
      for (const other of charts) if (other !== chart) other.readAt(x);
    });
}
