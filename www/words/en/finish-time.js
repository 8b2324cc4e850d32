// @ts-check
/** How long will it take, how far in a fixed time, or what watts does a time take? */

export default /** @type {const} */ ({
  askTime: "{distance} of {course} {effort} with a [drag area|cda] of {cda}, {day}: how long will it take?",
  askFar: "{distance} of {course} {effort} with a [drag area|cda] of {cda}, {day}: how far will I get?",
  askPower: "{distance} of {course} {effort} with a [drag area|cda] of {cda}, {day}: what power does it take?",

  // The answer.
  bestEvenEffort: "best even effort",
  evenTakes: "{distance} at your {effort} takes",
  wattsTake: "{distance} at {power} takes",
  evenCovers: "In {time} at your {effort} you cover",
  wattsCover: "In {time} at {power} you cover",
  timeTakes: "{distance} in {time} takes",
  spokenEvenTakes: "{distance} at your best even effort takes {figure}, plus or minus {spread}.",
  spokenWattsTake: "{distance} at {power} takes {figure}, plus or minus {spread}.",
  spokenEvenCovers: "In {time} at your best even effort you cover {figure} {unit}, plus or minus {spread}.",
  spokenWattsCover: "In {time} at {power} you cover {figure} {unit}, plus or minus {spread}.",
  spokenTimeTakes: "{distance} in {time} takes {figure}, plus or minus {spread}.",

  rideInFigures: "The ride in figures",
  figure: "Figure",
  value: "Value",
  spread: "Give or take",
  power: "Power",
  averageSpeed: "Average speed",
  workAtPedals: "Work at the pedals",
  wPrimeAtLine: "[W′|wPrime] at the line",
  wPrimeLeftAtLine: "[W′|wPrime] left at the line",
  short: "short",
  tooMuch: "Your power curve allows {power} for that long: this is **{gap} too much**.",
  justThis: "Your power curve allows {power} for that long: exactly this.",
  inHand: "Your power curve allows {power} for that long: you keep {gap} in hand.",
  haveTarget: "I have a target time",
  chanceOfBeating: "The chance of {target} or faster is {chance}.",
  chanceAbout: "about {count} in {all}",
  chanceUnder: "less than 1 in 100",
  chanceOver: "over 99 in 100",
  caution:
    "A best effort to the line is a maximal effort: if you are unwell or unused to it, ask a doctor first. Traffic, other riders, event rules and the law of the road come before any time on this page.",

  // How well it is known.
  whereFrom: "Where the plus or minus comes from",
  from: "From",
  plusOrMinus: "Plus or minus",
  fromNumbers: "What your numbers leave open",
  fromModel: "The model’s own error",
  together: "Together",
  absolute:
    "**A time or a distance by itself** carries the model’s own error, {error} of a time; two rides that are compared share most of it.",
  differenceSurer:
    "**A difference is surer than a time.** The two parts of the ± add in squares. Two rides on one day and course share nearly all of this doubt, so it cancels. A saving of half a minute can be sure while the time itself is not.",

  // The day, and W′.
  theDay: "**The day.** The air weighs {density}.",
  standardAir: "In standard air at sea level the same watts would be {differs}.",
  noWind: "There is no wind.",
  windReaches:
    "Of the forecast wind, {wind} reaches you. The same ride in still air, at these watts, would be {differs}.",
  standardAirFar: "Over the same distance, in standard air at sea level the same watts would be {differs}.",
  windLeftOut: "The wind is left out.",
  windReachesFar:
    "Of the forecast wind, {wind} reaches you. The same distance in still air, at these watts, would be {differs}.",
  meanArea: "Your drag area averages {area} over the ride.",
  wPrimeOut: "**W′ runs out.** The ride asks for {work} more than you have, whichever way W′ comes back.",
  wPrimeLeft:
    "**What is left of W′** at the line is {usual}, whichever way it comes back. On this ride you are hardly ever below the power at which it would come back.",
  wPrimeLong:
    "**What is left of W′** at the line is {usual}. On so long a ride W′ drains not only above CP, but above the power that the ride’s length allows, less its share of W′. So an even ride drains it evenly, and none comes back.",
  wPrimeForms:
    "**What is left of W′** at the line depends on how it comes back. It is {usual} if W′ comes back ever more slowly as it fills, the form used here. It is {none} if nothing comes back, and {linear} if all of it does, watt for watt. Below zero the ride asks for more than you have. Nobody knows which form fits you: the range between them is doubt too.",
  wPrimeLeast: "On the way it falls to {least}: you use more than you have.",

  // Why.
  whyShare: "Air takes {share} of the work on the road.",
  whyGiven: "The hill or the wind does some of the work.",
  whereWork: "Where the {work} at the pedals go: {list}.",
  air: "{share} into the air",
  rolling: "{share} into the tyres",
  climbing: "{share} into height",
  drivetrain: "{share} into the drivetrain",
  bearings: "{share} into the bearings",
  braking: "{share} into the brakes",
  kinetic: "{share} into the speed you cross the line with",
  whyLonger:
    "The longer the ride, the less power can be held, so time grows a little faster than distance. Your best even effort is the one power that your curve allows for exactly as long as the ride lasts.",

  // Tables.
  splits: "Splits",
  splitsGist: { one: "One split, at {last}", other: "{count} splits, the last at {last}" },
  splitsCaption: "Each time is since the start, each speed the mean since the split before",
  at: "At, {unit}",
  distanceIn: "Distance, {unit}",
  time: "Time",
  speedIn: "Speed, {unit}",
  powerIn: "Power, {unit}",
  wPrimeIn: "W′ left, {unit}",
  curveCaption: "Your best even effort over other distances, on a course of this kind in this air",
  curveGist: "Time and power against distance",

  // Charts.
  roadTitle: "The road’s profile",
  heightAxis: "height, {unit}",
  readHeight: "Read the height along the ride",
  roadSeries: "height",
  roadReading: "The road lies between {low} and {high}.",
  timeTitle: "Average speed of the best even effort at every distance",
  distanceAxis: "distance, {unit}",
  paceAxis: "average speed, {unit}",
  eventHandle: "Your event: left and right change how far",
  readTime: "Read the average speed at a distance",
  powerTitle: "Power you can sustain over every distance",
  powerAxis: "power you can sustain, {unit}",
  readPower: "Read the power at a distance",
  speedTitle: "Speed along the ride",
  alongAxis: "along the ride, {unit}",
  speedAxis: "speed, {unit}",
  readSpeed: "Read the speed along the ride",
  reserveTitle: "W′ left along the ride",
  reserveAxis: "W′ left, {unit}",
  readReserve: "Read the W′ left along the ride",
  youAtTheseWatts: "you, at these watts",
  youFigure: "you, {figure}",
  pointSpoken: "{distance}, {time}, {power}",
  timeDescription: "Average speed falls as the distance grows. Your event is {distance} and takes {time}.",
  effortSeries: "best even effort",
  timeReading: "**{distance}** takes **{time}**.",
  powerDescription: "The power that can be sustained falls as the distance grows. Over {distance} you ride at {power}.",
  powerSeries: "you can sustain",
  powerReading: "Your curve allows {power} for {time}.",
  speedDescription: "Speed along the ride is {speed} on average.",
  speedSeries: "speed",
  onAverage: "on average {speed}",
  speedReading: "The average is **{speed}**.",
  reserveDescription: "W′ left along the ride goes from {start} to {end} at the line.",
  reserveSeries: "W′ left",
  moreThanYouHave: "more than you have",
  reserveShort: "At the line you are {work} short.",
  reserveLeft: "At the line {work} is left.",

  // How it is worked out.
  howGist: "Step by step along the road, from the start to the line",
  howStepped:
    "The ride is stepped along the road: at each step what the pedals give, less air, tyres, hill and bearings, changes the speed.",
  formulaMotion: "m v times the rate of v equals eta P minus F v",
  howEven:
    "The best even effort is the constant power that your curve allows for exactly as long as the ride then takes. Power and time fix each other; the pair is solved for.",
  formulaCurve: "P of t equals CP plus W prime over t, less A times the natural logarithm of t over T beyond T",
  howBalance: "Above the threshold W′ is spent, joule for joule. Below it W′ comes back, more slowly the fuller it is:",
  formulaBalance:
    "the rate of W prime balance equals the threshold minus P, times one minus W prime balance over W prime",
  formulaDoubt:
    "the variance of the time is the sum of the squares of each input’s effect on it, plus the square of the model’s own error",
  inputMark: "input",
  modelMark: "model",
  balanceMark: "bal",
  symbolPower: "power at the pedals; critical power; the work that can be done above it",
  symbolLong:
    "what long rides lose, and from when; left out before T, or where no long-ride loss is given. A peak power, where given, bends the curve for short rides",
  symbolMotion: "mass with what the turning wheels add, speed, time, the forces on the road, drivetrain efficiency",
  symbolBalance: "W′ left at that moment; two other forms bound it: nothing comes back, or all does, watt for watt",
  symbolDoubt: "one standard deviation; each uncertain number is moved by its own to see what it does to the time",
  howModel:
    "The model’s own error stands apart. Published models of time trials missed real road times by three to four percent on average, and single times by more. Part of that came from their inputs, which count by themselves here. So three percent is assumed until your own past results say otherwise. It is much the same in two rides compared on one day, so it cancels in a difference.",
  howNot:
    "Gusts, traffic, junctions, nerves, food and sleep are left out. For half a day or more the power curve is a guess.",
});
