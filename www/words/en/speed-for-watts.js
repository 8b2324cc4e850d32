// @ts-check
/** What speed do these watts buy, where do they go, and what would the next ten buy? */

export default {
  wayRound: "Which way round",
  byPower: "Holding a power of",
  bySpeed: "Riding at a speed of",
  askSpeed:
    "{by} {amount} with a drag area of {cda} on a slope of {grade}, {day}: what speed does it buy, and where do the watts go?",
  askPower:
    "{by} {amount} with a drag area of {cda} on a slope of {grade}, {day}: what does it take, and where do the watts go?",
  slopeHere: "Slope of the road here",
  directionHere: "Direction of the road here",

  // What the pedals feed.
  air: "air",
  rolling: "tyres",
  climbing: "hill",
  bearings: "bearings",
  drivetrain: "drivetrain",

  // The answer.
  buys: "{power} buys",
  takes: "{speed} takes",
  spokenBuys: "{power} buys {speed}, plus or minus {spread}.",
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
  nextTen: "The next {ten} buy **{gain}**. One percent more power is {percent} more speed.",
  percentForPercent:
    "**Percent for percent.** One percent less drag area is {cda}, one percent thinner air {density}, one percent less mass {mass}, one percent less rolling resistance {rolling}.",
  percentFaster: "{percent} faster",
  percentSlower: "{percent} slower",
  airStandard: "**Today’s air.** {density}, as on a standard day at sea level.",
  airThinner: "**Today’s air.** {density}, {percent} thinner than a standard day at sea level.",
  airThicker: "**Today’s air.** {density}, {percent} thicker than a standard day at sea level.",
  windAgainst:
    "Of the forecast wind, {wind} reaches you: {head} against you, {cross} across. You feel {felt} of air, {yaw} off your nose.",
  windBehind:
    "Of the forecast wind, {wind} reaches you: {head} from behind, {cross} across. You feel {felt} of air, {yaw} off your nose.",
  noWind: "There is no wind.",
  caution:
    "Eyes on the road: a speed on this page is no reason to hold your head down in traffic, a crosswind or a descent. Event rules and the law of the road come first.",
  howLongHold: "How long can I hold it?",

  // Why.
  whyShare: "Air takes {share} of the load on the road; what goes into air grows with the cube of speed.",
  whyGiven:
    "Air takes {watts}, and the hill or the wind gives some of it back; what goes into air grows with the cube of speed.",
  whyCubeShare:
    "The power that goes into the air grows with the cube of the speed through it; tyres and hill grow with speed alone. Air takes {share} of the load on the road at {speed}, so each further watt buys less speed than the one before: that is the falling curve.",
  whyCubeGiven:
    "The power that goes into the air grows with the cube of the speed through it; tyres and hill grow with speed alone. Air takes {watts} at {speed}, and the hill or the wind gives some of it back. So each further watt buys less speed than the one before: that is the falling curve.",
  whyThird:
    "Were there nothing but air, one percent more power would buy a third of a percent of speed; on a steep climb, nearly a whole percent. Your own figure lies between.",

  // Charts.
  stackTitle: "Where the watts go at every speed",
  speedAxis: "speed, {unit}",
  powerAxis: "power at the pedals, {unit}",
  powerAxisGiven: "power, {unit}",
  speedHandle: "You: left and right change your speed, and the watts with it",
  readWatts: "Read the watts at a speed",
  gainTitle: "What the next ten watts buy at every power",
  gainAxis: "what {ten} more buy, {unit}",
  powerHandle: "You: left and right change your power",
  readGain: "Read what ten watts more buy at a power",
  inAll: "in all",
  stackDescription:
    "Watts at every speed up to {most}, stacked by where they go. At {speed} they are {power}, {share} of the load on the road being air.",
  stackSpoken: "{speed}, {power}",
  stackReading: "**{power}** at **{speed}**: {share} of the load on the road is air.",
  stackReadingGiven: "**{power}** at **{speed}**: the road and the wind give {given} besides.",
  gainDescription:
    "What ten more watts add to speed at every power up to {most}: it falls as power grows. At {power} it is {gain}.",
  gainSeries: "ten watts more buy",
  gainSpoken: "{power}: ten more buy {gain}",
  gainReading: "At {power} ten watts more buy **{gain}**.",

  // As a table.
  tableGist: "Watts by speed, and what ten more would add.",
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
  howGist: "The forces on the road, added up, times the speed.",
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
    "The speed for given watts is the one at which the two sides are equal; it is found by a root search. What ten watts more buy is the difference of two such speeds. A forecast’s wind is brought down to your height by the log law over the land you name. Each ± is first order: every uncertain number is moved by its own ± and the effects are added in squares.",
  howNot: "Not in it: gusts, the speed of traffic, and a road that is rougher here than there.",
};
