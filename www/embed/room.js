// @ts-check
/** How much room a question takes, so that the host page does not move when it arrives. */

/** Least widths; within each, a question is about as high as in the next figure. */
const WIDTHS_PX = [0, 320, 350, 380, 420, 480, 560, 640, 760, 830, 1152];

/** Heights as measured, folds closed, with a little to spare for other words and typefaces. @type {Record<string, number[]>} */
const HEIGHTS_PX = {
  "speed-for-watts": [3080, 2960, 2760, 2720, 2560, 2340, 2340, 2400, 1900, 1840, 1700],
  "power-or-drag": [3260, 3140, 2960, 2800, 2640, 2620, 2440, 2420, 1840, 1780, 1500],
  "hold-or-fade": [3260, 3100, 2980, 2800, 2560, 2420, 2280, 2280, 1660, 1660, 1460],
  // With no efforts, and a few more lines for two or three.
  "power-curve": [2760, 2660, 2540, 2420, 2280, 2160, 2100, 2020, 1760, 1760, 1580],
  "which-position": [3720, 3500, 3340, 3120, 2880, 2640, 2560, 2540, 1900, 1760, 1800],
  "leg-room": [5820, 5460, 5060, 4740, 4520, 4140, 4020, 4000, 2840, 2800, 2420],
  "next-gain": [3900, 3820, 3700, 3540, 3420, 3100, 3000, 3060, 2080, 2060, 1960],
  "finish-time": [3900, 3780, 3600, 3480, 3380, 3160, 3080, 3160, 2160, 2160, 1940],
};

/** How much more other languages take, as measured; English is what the heights are for. @type {Record<string, number>} */
const LONGER = { de: 1.15, fr: 1.15 };

/** The rules that keep the room; a question nobody knows needs none. @param {string} question @param {string} language */
export function roomFor(question, language) {
  if (!Object.hasOwn(HEIGHTS_PX, question)) return "";
  const longer = LONGER[language] ?? 1;
  return HEIGHTS_PX[question]
    .map(
      (height_px, index) =>
        `@container (min-width: ${WIDTHS_PX[index]}px) { .room { min-height: ${Math.round(height_px * longer)}px; } }`,
    )
    .join("\n");
}
