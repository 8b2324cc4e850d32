// @ts-check
/** What "Which position for which distance?" says. */

export default {
  // The sentence.
  ask: "On a {course} {day}, each at the best even effort, and with drag areas {known}: which of my positions is fastest over {distance}, and how do they compare with {reference} at {cda}?",
  distance: "Distance to read off",
  reference: "The position that the others are compared with",
  knownHow: "How the drag areas are known",
  knownTogether: "from one test or one guess",
  knownApart: "from separate tests",
  needTwo: "Two positions or more are needed for this.",
  addPosition: "Add a position",
  editPositions: "Change positions",
  editEvents: "Change events",
  positionNumber: "position {number}",
  equipmentNumber: "equipment {number}",
  wearing: "{position} with {equipment}",

  // The answer.
  claim: "Over {distance}, {best} is faster than {next} by",
  claimLevel: "Over {distance}, {best} and {next} are level",
  spoken: "Over {distance}, {best} is faster than {next} by {figure}, plus or minus {spread}",
  fastestIn: "the fastest in {count} of\u00a0{all}\u00a0draws",
  fasterBeyond: "From {distance} ({spread}) on, {name} is faster than {other}.",
  fasterBelow: "Up to {distance} ({spread}), {name} is faster than {other}.",
  fasterBeyondWide:
    "From {distance} on, {name} is faster than {other}, as far as can be told: with numbers as unsure as these they may cross anywhere.",
  fasterBelowWide:
    "Up to {distance}, {name} is faster than {other}, as far as can be told: with numbers as unsure as these they may cross anywhere.",
  alwaysFaster: "All the way from {from} to {to}, {name} is faster than {other}: they do not cross.",
  alwaysSlower: "All the way from {from} to {to}, {name} is slower than {other}: they do not cross.",
  alwaysLevel: "{name} and {other} are level.",

  // The chart.
  chartTitle: "How much faster each position is, against distance",
  chartX: "distance, {unit}",
  chartY: "faster by, share of the time",
  chartHandle: "Distance to read off: left and right change it",
  chartReader: "Read off the differences along the distance",
  chartDescription: {
    one: "Compared with {reference}: {list}. Crossings: {crossings}.",
    other: "Compared with {reference}: {list}. Crossings: {crossings}.",
  },
  levelIs: "as fast as {reference}",
  chartSpoken: "Over {distance}: {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "Above the line is faster than {reference}, below it slower. The tint is one standard deviation of the curve in colour.",

  // Positions by events.
  tableCaption: "How much faster each position is, along the distance",
  tableDistance: "distance",
  tableGist: "The curves in seconds, from the shortest distance to the longest.",
  eventsCaption: "Finish times at your events",
  event: "event",
  comparedWith: "{name}, compared with",
  winsOf: "first in {count} of {all}",
  counting: "Counting draws: {draws} of {all}.",
  stopped: "Stopped at {draws} of {all} draws.",
  countedAll: "Counted in {draws} draws of all your numbers, the same for every position.",
  stop: "Stop",
  goOn: "Go on",

  // What a position may cost.
  costs: "What a position may cost",
  costsCaption: "Watts of critical power that the position with less drag may cost before it loses",
  pair: "position against the other",
  againstOther: "{one} against {other}",
  costsNow: "costs now",
  otherWay: "the other way round",
  nothingTies: "never level",
  ofPower: "{share} of CP",
  mayCost:
    "**What it may cost.** Over {over}, {one} may cost you {watts} ({share} of critical power) before it loses to {other}; as you have it, it costs {now}.",
  published:
    "Published: lower bars cut {riders} riders’ drag area by {cut} and cost them {cost} ± {spread} of their power; a torso at 12° cost {others} riders {watts} ± {wattsSpread}.",
  lowerBars:
    "Bars lowered as in the published test, with the drag that this saved, may cost you {watts} over {over} before they lose, and {low} to {high} over the spread of its riders.",
  lowerBarsGist: "Lower bars stop paying once they cost {watts} over {over}.",
  costScaled:
    "Scaled from that cut to the {cut} by which {one} is smaller, in proportion, which is assumed, lower bars would cost {cost} ± {spread} of power: of further riders like those, {count} in {all} would pay less than {one} may cost.",
  costTorso:
    "How much drag the lower torso saved is not published, so that cannot be scaled. If {one} brings your torso down to about 12°, {count} in {all} further riders like those would pay less than it may cost.",
  costsMean:
    "The ± leaves out what the position costs you, which is what you would compare it with: ride the same two hard efforts in both positions, well rested.",

  // What would settle it.
  worth: "What would settle it",
  worthMeans:
    "If one thing were measured exactly before you choose, with all else as unsure as it is, you would sometimes choose another position. This is what that would save on average, over all your events together.",
  worthGist: "Knowing every number exactly would save {time} over your events on average.",
  worthLine: "{input}: {time}",
  worthBoth: "{one} and {other} in one test: {time}",
  wouldSettle:
    "**What would settle it.** Knowing {input} exactly would save you {time} over your events on average, by choosing better.",
  wouldSettleBoth:
    "**What would settle it.** Measure {one} and {other} in one test: knowing exactly how far their CdA differs would save you {time} over your events on average, by choosing better.",
  howBoth: "ride both by turns in one session, over the same stretch, in calm air and away from traffic",
  settled:
    "**What would settle it.** Nothing that you could measure would change much: the choice is as clear as it gets, or the positions are as good as level.",
  inputOf: "{input} ({name})",
  lookHow: "{link}: {how}.",
  lookOnly: "{link}.",
  look: "Look at it",

  // Cautions and method.
  caution:
    "**Head down, you cannot see.** Count on no more than the position that you can hold with your eyes on the road. Try new positions and wheels away from traffic, in calm air and in small steps; long front ends and deep wheels catch crosswinds. If anything hurts, ask a fitter or a clinician. Event rules and traffic law come before seconds.",
  howGist: "Every position on the same road, day and draws, so what is common cancels.",
  howRides:
    "Every position is ridden over every distance at the best even effort that its own power allows, from the start to the line, on the course of your scenario made shorter or longer. Equipment adds its drag area and mass, and brings its own yaw table, lapses and corner speed where it has them.",
  howTogether:
    "Drag areas from one test, or guessed for one rider, are wrong together: the test’s error of scale is common to them. Then their errors are taken to correlate at 0.95, which is assumed, and a difference of positions is much surer than either drag area. A test of one of them alone then says little about which is faster; one test of both says most.",
  howCrossing:
    "Where two positions cross is solved for, not read off the curve. Its ± is that of the difference there, over how fast the difference grows with distance: where two curves run nearly side by side, a small doubt moves the crossing far.",
  howCost:
    "What a position may cost is solved for too: the critical power with which it is just level, its W′ as it is. Published work found critical power lower in the time-trial position and W′ unchanged, so the cost grows with the length of the event; riders who train in the position lost little. The published spread is as wide as its mean, so it is a range and not a forecast. The shares of riders come from Student’s t, since five or eleven riders tell a mean and a spread only roughly.",
  howDraws:
    "For the counts, all numbers are drawn together from their ±, and every position is ridden with the same draws; critical power and W′ are drawn with their correlation where it is known.",
  howWorth:
    "What a measurement is worth is the mean gain from choosing after it, with all else as unsure as it is: a curve is fitted, over all draws, to what the measured error does to each position, and the best of the curves is averaged. A drag area is then known with the whole of its error, also the part that other positions share; a difference is what one test of two positions tells even where its scale is wrong. Terms within three standard errors count as nothing.",
};
