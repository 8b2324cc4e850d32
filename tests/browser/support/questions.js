// @ts-check
/** The questions of the page, and where the tests take hold of each. */

/** How a drag area is written in a sentence, in square metres. */
const DRAG_AREA = {
  name: "Drag area, CdA",
  typed: "0.25",
  kept: `"value":0.25`,
  outside: "9",
  range: "0.100 to 0.800 m²",
};

/** @type {[name: string, typed: string][]} */
const DAY = [
  ["Air temperature", "7.5"],
  ["Wind speed, as forecast", "12"],
];

/**
 * @typedef {object} Asked
 * @property {string} id
 * @property {string} title
 * @property {typeof DRAG_AREA} number one number of the sentence, something else to type and how it is then kept, and something outside its range
 * @property {[name: string, typed: string][]} also two more of its numbers
 * @property {string[]} handles the points of its charts that can be moved
 * @property {true} [still] its charts are read alone
 */

/** In the order of the page. @type {Asked[]} */
export const questions = [
  {
    id: "speed-for-watts",
    title: "What speed do my watts give?",
    number: DRAG_AREA,
    also: DAY,
    handles: ["You: left and right change your speed, and the watts with it", "You: left and right change your power"],
  },
  {
    id: "power-or-drag",
    title: "More power, or less drag?",
    number: DRAG_AREA,
    also: DAY,
    handles: ["You on the map"],
  },
  {
    id: "hold-or-fade",
    title: "Is a faster position worth it if I can’t hold it?",
    number: { ...DRAG_AREA, name: "Drag area of the position you keep" },
    also: [["How much less drag area the low position has", "0.021"]],
    handles: ["When the low position starts to slip", "When it is fully lost", "Share of the ride held"],
  },
  {
    id: "power-curve",
    title: "What can I hold, and for how long?",
    number: {
      name: "How long to hold it",
      typed: "25:00",
      kept: `"hold_s":1500`,
      outside: "100:00:00",
      range: "0:01 to 55:33:20",
    },
    also: [["More power by", "7"]],
    handles: ["The time asked about: left and right change it"],
  },
  {
    id: "drag-test",
    title: "What is my drag area, and is the new position faster?",
    number: {
      name: "Difference between the positions",
      typed: "3",
      kept: `"difference_share":0.03`,
      outside: "90",
      range: "0.10 to 50 %",
    },
    also: [["How well one run repeats", "2"]],
    handles: ["Runs in each position: left and right change the difference they show"],
  },
  {
    id: "next-gain",
    title: "What should I work on next?",
    number: { name: "Money to spend", typed: "260", kept: `"money":260`, outside: "2000000", range: "0 to 1000000" },
    also: [["Hours to spend every week, beyond what you do now", "1"]],
    handles: ["Your money", "Your hours a week"],
  },
  {
    id: "leg-room",
    title: "What does this fit do to my hip?",
    number: {
      name: "Saddle height, new set-up",
      typed: "718",
      kept: `"saddle_height_m":0.718`,
      outside: "2000",
      range: "400 to 1050 mm",
    },
    also: [
      ["Crank length, now", "172.5"],
      ["Drop from saddle to pads, new set-up", "135"],
    ],
    handles: [],
  },
  {
    id: "which-position",
    title: "Which position for which distance?",
    number: DRAG_AREA,
    also: DAY,
    handles: ["Distance to read off: left and right change it"],
  },
  {
    id: "finish-time",
    title: "How long will it take?",
    number: DRAG_AREA,
    also: DAY,
    handles: ["Your event: left and right change how far"],
  },
  {
    id: "ride-plan",
    title: "How should I spend my effort on this course?",
    number: DRAG_AREA,
    also: DAY,
    handles: [],
    still: true,
  },
];
