// @ts-check
/** How much room a question takes, so that the host page does not move when it arrives. */

/** Least widths; within each, a question is about as high as in the next figure. */
const WIDTHS_PX = [0, 320, 350, 380, 420, 480, 560, 640, 760, 830, 1152];

/** Heights as measured, folds closed, with a little to spare for other words and typefaces. @type {Record<string, number[]>} */
const HEIGHTS_PX = {
  "speed-for-watts": [3100, 2960, 2760, 2700, 2560, 2300, 2300, 2400, 1880, 1820, 1660],
  "power-or-drag": [3220, 3020, 2860, 2760, 2600, 2540, 2400, 2360, 1760, 1680, 1480],
  "hold-or-fade": [3400, 3100, 2860, 2720, 2520, 2360, 2200, 2200, 1620, 1560, 1400],
  // With no efforts, and a few more lines for two or three.
  "power-curve": [2760, 2660, 2540, 2420, 2280, 2160, 2100, 2020, 1640, 1640, 1580],
  "which-position": [3900, 3720, 3430, 3200, 2960, 2680, 2690, 2580, 1940, 1890, 1770],
  "leg-room": [5820, 5560, 5390, 4950, 4630, 4210, 4110, 4080, 2780, 2780, 2400],
  "next-gain": [4240, 4050, 3780, 3690, 3580, 3330, 3150, 3190, 2380, 2380, 2010],
  "finish-time": [3980, 3840, 3610, 3530, 3390, 3180, 3080, 3170, 2200, 2200, 1960],
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
