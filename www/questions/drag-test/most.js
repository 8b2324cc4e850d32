// @ts-check
/** The most of each that the core takes. */

export const MOST_RIDES = 60;
/** Laps, and runs. */
export const MOST_ROWS = 500;
/** Kept tests of one position. */
export const MOST_TESTS = 40;
