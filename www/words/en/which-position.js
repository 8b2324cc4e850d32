// @ts-check
/** What "Which position for which distance?" says. */

export default /** @type {const} */ ({
  // The sentence.
  ask: "{far} of {course} {day}, which of my positions is fastest at the best even effort? I compare them with {reference} at a [drag area|cda] of {cda}. The areas come {known}.",
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
  claimLevel: "Over {distance}, {best} and {next} are equal on time",
  spoken: "Over {distance}, {best} is faster than {next} by {figure}, plus or minus {spread}",
  claimInTime: "In {time}, {best} gets further than {next} by",
  spokenInTime: "In {time}, {best} gets further than {next} by {figure}, plus or minus {spread}",
  covered: "In {time} you cover about {distance}.",
  fastestIn: "the fastest in {count} of\u00a0{all}\u00a0tries",
  fasterBeyond: "From {distance} ({spread}) on, {name} is faster than {other}.",
  fasterBelow: "Up to {distance} ({spread}), {name} is faster than {other}.",
  fasterBeyondWide:
    "From {distance} on, {name} is faster than {other}, as far as can be told. With numbers as unsure as these they may cross anywhere.",
  fasterBelowWide:
    "Up to {distance}, {name} is faster than {other}, as far as can be told. With numbers as unsure as these they may cross anywhere.",
  alwaysFaster: "All the way from {from} to {to}, {name} is faster than {other}: the two do not cross.",
  alwaysSlower: "All the way from {from} to {to}, {name} is slower than {other}: the two do not cross.",
  alwaysLevel: "{name} and {other} are equal on time.",

  // The chart.
  chartTitle: "How much faster each position is, against distance",
  chartX: "distance, {unit}",
  chartY: "faster by, share of the time",
  chartHandle: "Distance to read off: left and right change it",
  chartReader: "Read off the differences along the distance",
  chartDescription: {
    one: "Compared with {reference}: {list}. There is one crossing ({crossings}).",
    other: "Compared with {reference}: {list}. The number of crossings is {crossings}.",
  },
  levelIs: "as fast as {reference}",
  chartSpoken: "Over {distance} it is: {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "A position above the line is faster than {reference}, one below it slower. The tint is the ± of the curve in colour.",

  // Positions by events.
  tableCaption: "How much faster each position is, along the distance",
  tableDistance: "distance",
  tableGist: "The curves in seconds, from the shortest distance to the longest",
  eventsCaption: "Finish times at your events",
  eventReaches: "{event}, about {distance}",
  event: "event",
  comparedWith: "{name} (reference)",
  winsOf: "fastest in {count} of {all}",
  counting: "{draws} of {all} tries are counted.",
  stopped: "Counting stopped at {draws} of {all} tries.",
  countedAll: "All your numbers were varied in {draws} [tries|tries], the same for every position.",
  stop: "Stop",
  goOn: "Go on",

  // What a position may cost.
  costs: "How much power a position may take",
  costsCaption: "Watts of critical power that the position with less drag may take before it loses",
  pair: "position against the other",
  againstOther: "{one} against {other}",
  costsNow: "takes now",
  otherWay: "the other way round",
  nothingTies: "never equal",
  ofPower: "{share} of CP",
  mayCost:
    "**How much power it may take.** Over {over}, {one} may take {watts} from you ({share} of [critical power|cp]) before it loses to {other}.",
  published:
    "In one study, lower bars cut {riders} riders’ drag area by {cut} and took {cost} ± {spread} of their power. In another, a torso at 12° took {watts} ± {wattsSpread} from {others} riders.",
  lowerBars:
    "Bars lowered as in that study, with the drag that this saved, may take {watts} from you over {over} before they lose. Over the spread of its riders that is {low} to {high}.",
  lowerBarsGist: "Lower bars no longer help once they take {watts} over {over}.",
  costScaled:
    "The drag area of {one} is smaller by {cut}. Scaled to that in proportion, which is assumed, lower bars would take {cost} ± {spread} of power. Judging by that study, about {count} in {all} riders would lose less than {one} may take.",
  costTorso:
    "How much drag the lower torso saved is not published, so that cannot be scaled. If {one} brings your torso down to about 12°, about {count} in {all} riders would lose less than it may take.",
  costsMean:
    "The ± leaves out your own power loss in the position. To find it, ride the same two hard efforts in both positions, each when you are rested.",

  // What would settle it.
  worth: "What would settle it",
  worthMeans:
    "Suppose one thing were measured exactly before you choose, with all else as unsure as it is. You would sometimes choose another position. This is what that would save on average, over all your events together.",
  worthGist: "Knowing every number exactly would save {time} over your events on average.",
  worthLine: "{input}: {time}",
  worthBoth: "{one} and {other} in one test: {time}",
  wouldSettle:
    "**What would settle it.** If you knew {input} exactly, you would choose better and save {time} over your events, on average.",
  wouldSettleBoth:
    "**What would settle it.** Measure {one} and {other} in one test. If you knew exactly how far their CdA differs, you would choose better and save {time} over your events, on average.",
  howBoth: "ride both by turns in one session, over the same stretch, in calm air and away from traffic",
  settled:
    "**What would settle it.** Nothing that you could measure would change much: the choice is as clear as it gets, or the positions are as good as equal.",
  inputOf: "{input} ({name})",
  lookHow: "{link} ({how}).",
  lookOnly: "{link}.",
  look: "Look at it",

  // Cautions and method.
  caution:
    "**Head down, you cannot see.** Count on no more than the position that you can hold with your eyes on the road. Try new positions and wheels away from traffic, in calm air and in small steps; long front ends and deep wheels catch crosswinds. If anything hurts, ask a fitter or a clinician. Event rules and traffic law come before seconds.",
  howGist: "Every position on the same road, on the same day and in the same tries, so that what they share cancels",
  howRides:
    "Every position is ridden over every distance at the best even effort that its own power allows, from the start to the line. The course of your numbers is made shorter or longer for that. Equipment adds its drag area and mass, and brings its own [yaw|yaw] table, lapses and corner speed where it has them.",
  howTogether:
    "Drag areas from one test, or guessed for one rider, are wrong together, because they share the test’s error of scale. Then their errors are taken to go together almost fully, which is assumed, and a difference of positions is much surer than either drag area. A test of one of them alone then says little about which is faster; one test of both says most.",
  howCrossing:
    "Where two positions cross is solved for, not read off the curve. Its ± is that of the difference there, over how fast the difference grows with distance. Where two curves run nearly side by side, a small doubt moves the crossing far.",
  howCost:
    "What a position may take is solved for too: the critical power with which it is just equal on time, its [W′|wPrime] as it is. Published work found critical power lower in the time-trial position and W′ unchanged, so the loss grows with the length of the event. Riders who train in the position lost little. The published spread is as wide as its mean, so it is a range and not a forecast. Five or eleven riders tell a mean and a spread only roughly; the shares of riders allow for that (Student’s t).",
  howDraws:
    "For the counts, all numbers vary together within their ±, and every position is ridden with the same tries. Where it is known how the errors of critical power and W′ go together, they vary together.",
  howWorth:
    "What a measurement is worth is the mean gain from choosing after it, with all else as unsure as it is. A curve is fitted, over all tries, to what the measured error does to each position, and the best of the curves is averaged. A drag area is then known with the whole of its error, also the part that other positions share. One test of two positions tells their difference even where its scale is wrong. Gains too small to tell from chance count as nothing.",
  nowTakes: "As you have it, it takes {now}.",
  nowGives: "As you have it, it gives you {now} more.",
  nowNothing: "As you have it, it takes nothing.",
});
