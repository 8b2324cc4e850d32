// @ts-check
/** How should I spend my effort on this course? */

export default /** @type {const} */ ({
  ask: "{distance} of {course} with a [critical power|cp] of {cp}, [W′|wPrime] of {wPrime} and a [drag area|cda] of {cda}, {day}: how do I spend my effort?",

  // The answer.
  takes: "{distance} ridden to this plan takes",
  ahead: "{differs} than riding evenly at {power}",
  asFast: "as fast as riding evenly at {power}",
  spoken: "{distance} ridden to this plan takes {figure}, plus or minus {spread}: {compared}.",
  planCaption: "The plan: from each place this power, until the next",
  from: "From, {unit}",
  place: "What you see there",
  power: "Power, {unit}",
  "landmark.start": "the start",
  "landmark.climb": "a climb begins, {grade}",
  "landmark.descent": "a descent begins, {grade}",
  "landmark.level": "the road levels out",
  "landmark.turn": "the road turns",
  "landmark.distance": "nothing: go by the distance",
  upTo: "up to {power}",
  stops: {
    one: "One stop takes {cost} of that, with starting again. The plan is for the road between the stops; the rest at a stop is not credited.",
    other:
      "{count} stops take {cost} of that, with starting again. The plan is for the road between the stops; the rest at a stop is not credited.",
  },
  best: "The fastest plan that W′ allows changes its power all the time and takes {time}. With these {count} powers you are {differs}.",
  bestOne:
    "The fastest plan that W′ allows changes its power all the time and takes {time}. With this one power you are {differs}.",
  tooCoarse:
    "In steps of {round} no plan is as fast as that even effort. Smaller steps make it faster: set them under “{limits}”.",
  runOut:
    "If your critical power and W′ differ from your numbers within their ±, W′ runs out before the line in {share} of 100 cases.",
  runOutRarely: "Even if critical power and W′ are off by their ±, W′ nearly always lasts to the line.",
  testCp: "Test your critical power before you trust a plan",

  // If it goes otherwise.
  otherwise: "If it goes otherwise",
  whatIf: "What if",
  thenHeading: "Then",
  tooHard: "You ride the first ten minutes {share} too hard",
  cpLower: "Your critical power is {share} lower than you believe",
  thenLasts: "{differs}; W′ lasts",
  thenRunsOut: "{differs}; W′ runs out after {distance}",
  thenEven: "An even effort at your real level would take {time}.",
  effortOnly:
    "**A plan is about effort, never about speed.** On descents and in bends ride as slowly as the road, the traffic and your eyes ask; a power there is an upper limit. Event rules and the law of the road come first. To the line this is a maximal effort: if you are unwell or unused to it, ask a doctor first.",

  // Charts.
  along: "along the ride, {unit}",
  powerTitle: "Power along the ride",
  powerAxis: "power, {unit}",
  readPower: "Read the power along the ride",
  planSeries: "plan",
  fastestSeries: "fastest",
  evenLevel: "even {power}",
  powerDescription: "Power along the ride is between {low} and {high} in the plan. An even effort is {even}.",
  powerReading: "The plan asks for {low} to {high}; an even effort is **{even}**.",
  reserveTitle: "W′ left along the ride",
  reserveAxis: "W′ left, {unit}",
  readReserve: "Read the W′ left along the ride",
  reserveDescription: "The chart shows W′ left along the ride. On the plan it falls to {plan} at the least.",
  reserveReading: "On the plan W′ falls to **{plan}** at the least.",
  aheadTitle: "How far the fastest plan is ahead of an even effort",
  aheadAxis: "ahead, seconds",
  readAhead: "Read how far ahead",
  aheadSeries: "ahead",
  aheadDescription: "The fastest plan against an even effort, along the ride; at the line it is {differs}.",
  aheadReading: "At the line, against an even effort, the fastest plan is **{differs}**.",
  seconds: "{seconds} s",
  speedTitle: "Speed of the fastest plan along the ride",
  speedAxis: "speed, {unit}",
  readSpeed: "Read the speed along the ride",
  speedSeries: "speed",
  speedDescription: "Speed of the fastest plan along the ride, without descents: {most} at the most.",
  speedReading: "Where the road falls more than {grade}, no speed is shown: a plan says nothing of it.",
  gradeTitle: "Gradient along the ride",
  gradeAxis: "gradient",
  readGrade: "Read the gradient along the ride",
  gradeSeries: "gradient",
  gradeDescription: "The gradient along the ride lies between {low} and {high}.",
  gradeReading: "The gradient lies between {low} and {high}.",

  // A plan that allows for the ± of the numbers.
  careful: "A plan that allows for the ± of your numbers",
  carefulGist: "{better} on average; {differs} if your numbers are right",
  carefulSame: "The same plan is the best one for it",
  carefulLead:
    "This plan is the fastest on average over riders whose critical power and W′ differ from yours within their ±. They take {mean} on average; to the plan above they take {before}. W′ runs out before the line for {share} of 100, against {shareBefore}.",

  // What a plan may ask.
  limits: "What the plan may ask of you",
  limitsGist: "How many powers, their limits and rounding, and how W′ comes back",
  between: "The number of powers is at most {targets}; each lies between {least} and {greatest}, in steps of {round}.",
  recovery: "How W′ comes back",
  comesBack: "Below critical power W′ comes back {form}.",
  differential: "more slowly the fuller it is",
  linear: "watt for watt",
  none: "not at all",
  recoveryNote:
    "Nobody knows which form fits you. On this plan W′ falls to {differential} at the least by the first form, to {linear} by the second and to {none} by the third.",

  // Sitting up.
  sitUp: "Sitting up on steep climbs",
  sitUpNot: "You stay low all the way. Is sitting up faster?",
  sitUpWanted: "I sit up on steep climbs",
  sitUpWhere:
    "Where the road climbs {grade} or more for 200 m, I sit up. My [drag area|cda] is {cda} there, and my [critical power|cp] is higher by {gain}.",
  sitUpPays: "In calm air and at {power}, sitting up is faster from about {grade} on.",
  sitUpNowhere: "No climb here is as steep and as long as that: you stay low all the way.",
  sitUpUntil: "sit up until {distance}",
  sitUpDoes: {
    one: "Sitting up on one climb, you are {differs}, plus or minus {spread}.",
    other: "Sitting up on {count} climbs, you are {differs}, plus or minus {spread}.",
  },

  // The strip.
  strip: "A strip for the bars",
  stripGist: "Open it before you print, then cut it out",

  // How, and the table.
  howGist: "Every hundred metres of road may have its own power; W′ may never run out",
  howFastest:
    "The road is cut into pieces of about a hundred metres, each with a power of its own. The powers that give the least time are searched for. W′ never falls below zero nor rises above its full amount. Bends are ridden as slowly as they must be.",
  howSimple:
    "Then the road is cut where it changes: where it climbs, falls, levels out or turns, or at a round distance. A few of these places are kept so that the plan loses the least, and their powers are rounded so that W′ lasts.",
  howCareful:
    "The careful plan starts from that one. Its powers move by steps as long as riders who differ from your numbers gain time on average, and no more of them run out.",
  howAfter:
    "Once W′ has run out, a rider is taken to hold {share} of critical power from there to the line. That share comes from one short all-out test; that it holds to the line is assumed.",
  tableGist: "Power, speed and W′ along the ride",
  tableCaption: "The plan and the fastest plan along the ride",
  gradient: "Gradient",
  planPower: "Plan, {unit}",
  fastestPower: "Fastest, {unit}",
  planReserve: "W′ left on the plan, {unit}",
  aheadIn: "Fastest ahead of even, s",
});
