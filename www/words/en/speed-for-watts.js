// @ts-check
/** What speed do these watts buy, where do they go, and what would the next ten buy? */

export default /** @type {const} */ ({
  wayRound: "Which way round",
  byPower: "Holding a power of",
  bySpeed: "Riding at a speed of",
  askSpeed:
    "{by} {amount} with a [drag area|cda] of {cda} on a slope of {grade}, {day}: what speed does it give, and where do the watts go?",
  askPower:
    "{by} {amount} with a [drag area|cda] of {cda} on a slope of {grade}, {day}: what power does it take, and where do the watts go?",
  slopeHere: "Slope of the road here",
  directionHere: "Direction of the road here",

  // What the pedals feed.
  air: "air",
  rolling: "tyres",
  climbing: "hill",
  bearings: "bearings",
  drivetrain: "drivetrain",

  // The answer.
  buys: "{power} gives",
  takes: "{speed} takes",
  spokenBuys: "{power} gives {speed}, plus or minus {spread}.",
  spokenTakes: "{speed} takes {power}, plus or minus {spread}.",
  whereWattsGo: "Where the watts go",
  into: "Into",
  power: "Power",
  otherAir: "The same watts in other air, and ten more",
  ride: "Ride",
  speed: "Speed",
  difference: "Difference",
  today: "Today",
  atThisSpeed: "At this speed",
  tenMore: "{ten} more",
  inStillAir: "In still air",
  inStandardAir: "In standard air",

  // Notes.
  nextTen: "The next {ten} add **{gain}**. One percent more power is {percent} more speed.",
  percentForPercent:
    "**One percent of each.** One percent less drag area makes you {cda}, and one percent thinner air {density}. One percent less mass makes you {mass}, and one percent less [rolling resistance|crr] {rolling}.",
  percentFaster: "{percent} faster",
  percentSlower: "{percent} slower",
  airStandard: "**Today’s air** weighs {density}, as on a standard day at sea level.",
  airThinner: "**Today’s air** weighs {density}; it is {percent} thinner than on a standard day at sea level.",
  airThicker: "**Today’s air** weighs {density}; it is {percent} thicker than on a standard day at sea level.",
  windAgainst:
    "Of the forecast wind, {wind} reaches you: {head} against you, {cross} across. You feel {felt} of air at a [yaw angle|yaw] of {yaw}.",
  windBehind:
    "Of the forecast wind, {wind} reaches you: {head} from behind, {cross} across. You feel {felt} of air at a [yaw angle|yaw] of {yaw}.",
  noWind: "There is no wind.",
  caution:
    "Keep your eyes on the road. No speed on this page is a reason to hold your head down in traffic, a crosswind or a descent. Event rules and the law of the road come first.",
  howLongHold: "How long can I hold this power?",

  // Why.
  whyShare: "Air makes up {share} of the load on the road; the power into air grows with the cube of speed.",
  whyGiven:
    "Air takes {watts}, and the hill or the wind gives some of it back; the power into air grows with the cube of speed.",
  whyCubeShare:
    "In still air, power into the air grows with the cube of speed; what tyres and hill take grows only in step with it. At {speed}, air makes up {share} of the load on the road. So each further watt gives less speed than the one before: that is the falling curve.",
  whyCubeGiven:
    "In still air, power into the air grows with the cube of speed; what tyres and hill take grows only in step with it. At {speed}, air takes {watts}, and the hill or the wind gives some of it back. So each further watt gives less speed than the one before: that is the falling curve.",
  whyThird:
    "If there were only air, one percent more power would give a third of a percent more speed. On a steep climb it gives nearly a whole percent. Your own figure lies between.",

  // Charts.
  stackTitle: "Where the watts go at every speed",
  speedAxis: "speed, {unit}",
  powerAxis: "power at the pedals, {unit}",
  powerAxisGiven: "power, {unit}",
  speedHandle: "You: left and right change your speed, and the watts with it",
  readWatts: "Read the watts at a speed",
  gainTitle: "What the next ten watts add at every power",
  gainAxis: "what {ten} more add, {unit}",
  powerHandle: "You: left and right change your power",
  readGain: "Read what ten watts more add at a power",
  inAll: "in all",
  stackDescription:
    "Watts at every speed up to {most}, stacked by where they go. At {speed} they are {power}, {share} of the load on the road being air.",
  stackSpoken: "{speed}, {power}",
  stackReading: "**{power}** at **{speed}**: {share} of the load on the road is air.",
  stackReadingGiven: "**{power}** at **{speed}**: the road and the wind give {given} besides.",
  gainDescription:
    "What ten more watts add to speed at every power up to {most}: it falls as power grows. At {power} it is {gain}.",
  gainSeries: "ten watts more add",
  gainSpoken: "{power}: ten more add {gain}",
  gainReading: "At {power}, ten watts more add **{gain}**.",

  // As a table.
  tableGist: "Watts by speed, and what ten more would add",
  tableCaption: "Power at the pedals by speed and where it goes, in watts; and what ten more would add, in {unit}.",
  speedIn: "Speed, {unit}",
  powerIn: "Power, {unit}",
  airIn: "Air, {unit}",
  rollingIn: "Tyres, {unit}",
  climbingIn: "Hill, {unit}",
  bearingsIn: "Bearings, {unit}",
  drivetrainIn: "Drivetrain, {unit}",
  tenMoreIn: "{ten} more, {unit}",

  // How it is worked out.
  howGist: "The forces on the road, added up, times the speed",
  howSteady: "At a steady speed the power that reaches the road equals the forces on it times the speed:",
  formulaPower: "eta times P equals v times the sum of air, rolling, hill and bearing forces",
  formulaAir: "the air force is one half rho times drag area times apparent wind times the sum of v and headwind",
  formulaWind: "the apparent wind is the root of the square of v plus h, plus the square of c",
  formulaTyres: "the tyre force is Crr m g cos theta, and the hill force m g sin theta",
  symbolPower: "power at the pedals, and the share of it that reaches the road",
  symbolSpeed: "speed over the ground; headwind and crosswind at rider height",
  symbolDensity: "density of the air, from temperature, pressure and humidity (CIPM-2007)",
  symbolCda: "drag area; without a table by yaw, drag lies along the apparent wind",
  symbolRolling: "rolling-resistance coefficient, mass of rider and bicycle, gravity, slope",
  symbolBearings: "a constant force and one that grows with speed",
  howFound:
    "The speed for given watts is the one at which the two sides are equal; it is found by a root search. What ten watts more add is the difference of two such speeds. A forecast’s wind is brought down to your height by the log law over the land you name. For each ±, every uncertain number is moved by its own ± and the effects are added in squares.",
  howNot: "Gusts, the speed of traffic, and a road that is rougher here than there are left out.",
});
