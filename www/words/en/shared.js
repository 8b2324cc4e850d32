// @ts-check
/** What several questions say. */

export default /** @type {const} */ ({
  // Where the pieces of a question stand.
  answer: "Answer",
  charts: "Charts",
  data: "What you give",
  whatItMeans: "What it means",

  // The sentence: how far.
  howFar: "How far",
  over: "Over {distance}",
  overOwn: "Over a distance of",
  within: "In {time}",
  withinOwn: "In a time of",
  hours: { one: "one hour", other: "{count} hours" },
  hoursAlone: { one: "{count} hour", other: "{count} hours" },
  reached: "{time} (about {distance})",
  further: "{distance} further",
  lessFar: "{distance} less far",

  // The sentence: the road.
  kindOfCourse: "Kind of course",
  outAndBack: "flat out-and-back road",
  oneWay: "flat one-way road",
  hill: "steady hill",
  surveyed: "your surveyed course",
  rising: "rising {grade}",

  // The sentence: how hard.
  howHard: "How hard",
  even: "at my best even effort",
  holding: "holding",
  finishIn: "to finish in",
  fromCurve: "from {cp} of [critical power|cp] and {wPrime} of [W′|wPrime]",

  // The sentence: the day.
  day: "in {temperature} with {wind} of wind",
  windFrom: "from {from} {way} by compass",
  way: "on a road leading {heading}",

  // Differences and how sure they are.
  fasterBy: "faster by {figure}",
  slowerBy: "slower by {figure}",
  level: "level",
  certain: "all but certain",
  veryLikely: "very likely",
  likely: "likely",
  ofDraws: "{sure}: in {count} of\u00a0{all}\u00a0tries",
  overCount: "over {count}",
  tooCloseFaster: "too close to call: faster in\u00a0{count} of\u00a0{all}\u00a0tries",
  tooCloseSlower: "too close to call: slower in\u00a0{count} of\u00a0{all}\u00a0tries",
  nineteenInTwenty: "19\u00a0in\u00a020: {low}\u00a0to\u00a0{high}",
  spoken: "{claim}.",
  spokenSure: "{claim}; {odds}.",

  // What would make an answer surer.
  surerTime: "**To be surer:** {portion} of the {all} in the time comes from {input} ({known}).",
  surerDifference: "**To be surer:** {portion} of the {all} in the difference comes from {input} ({known}).",
  surerDistance: "**To be surer:** {portion} of the {all} in the distance comes from {input} ({known}).",
  surerSpeed: "**To be surer:** {portion} of the {all} in the speed comes from {input} ({known}).",
  surerPower: "**To be surer:** {portion} of the {all} in the power comes from {input} ({known}).",
  surerHip: "**To be surer:** {portion} of the {all} in the change of your hip comes from {input} ({known}).",
  surerHow: "{link} ({how}). If it were known exactly, {all} would become {left}.",
  surerNoHow: "{link}. If it were known exactly, {all} would become {left}.",
  surerNext: "The next largest part comes from {input}.",
  giveOwn: "Give your own",
  measureIt: "Measure it here",
  lookAtIt: "Look at it",
  nearlyAll: "nearly all",
  most: "most",
  aboutHalf: "about half",
  aboutThird: "about a third",
  largestPart: "the largest part",
  typical: "still a typical value",
  estimated: "your estimate",
  measured: "already measured",
  howCda: "ride test laps in the position on a calm day, or have it measured",
  howTiredCda: "film the last miles of a hard ride, then ride test laps in that shape",
  howFade: "film a hard ride of this length from the side of the road",
  howLapses: "count the seconds out of position on a film of a hard ride",
  howLowerBy: "ride laps in both positions by turns, in one test on one calm day",
  howTape: "use a tape from joint to joint, with somebody to hold its other end",
  howCurve: "ride two or more hard efforts of different lengths, each when you are rested",
  howLongRide: "enter your best power over an hour or more",
  howRolling: "test how your tyres roll, at your pressure, on your road",
  howMeter: "use a second power meter, or check with hung weights",
  howDrivetrain: "use a clean chain and its published loss",
  howMass: "weigh rider, bicycle and kit together",
  howTemperature: "put a thermometer in the shade at the course",
  howPressure: "use a barometer on the spot",
  howWind: "hold a wind meter at your own height by the road",
  howWindFrom: "look at a wind vane, or a flag, by the road",
  howRoughness: "hold a wind meter at your own height, and compare it with the forecast",

  // Warnings, and what is folded away.
  mind: "**Note.** {warning}",
  why: "Why?",
  howWorkedOut: "How it is worked out",
  asTable: "As a table",
  sources: "Sources",
  readAbstract: "Its abstract or opening pages were read.",
  readSecondHand: "It was read as other texts quote it.",
  readFromMemory: "It is cited from memory: what is used of it was not looked up again.",

  // Taking a question elsewhere.
  take: "Take it with you",
  takeGist: "Pictures, tables and every figure as files, made on this device",
  site: "Put this on your site",
  siteGist: "Two lines that show this question with these numbers",
  notLoaded: "This part of the page could not be loaded. Check the connection, close this and open it again.",

  // Charts.
  dragRing: "Drag the ring, or use the arrow keys.",
  you: "you",
  aboutFaster: "too close to call: faster about {count}\u00a0times in\u00a0{all}",
  aboutSlower: "too close to call: slower about {count}\u00a0times in\u00a0{all}",
  readOn: "Read on",
  readLess: "Show one line",
});
