/** The hashes of the modules that these scripts were built with. */
export const first: string;
export const whole: string;
export const recordings: string;
