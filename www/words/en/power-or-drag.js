// @ts-check
/** More power, or less drag? */

export default /** @type {const} */ ({
  ask: "{distance} of {course}, {effort} at a [CdA|cda] of {cda} {day}, which is worth more: {power} more power or {drag} less drag?",
  inFixedTime:
    "All times here are over the distance of {ride}. In that time, more power gets {power}, less drag {drag}.",
  morePowerBy: "More power by",
  lessDragBy: "Less drag by",

  // The answer.
  morePower: "more power",
  lessDrag: "less drag",
  powerIsFaster: "{power} is faster by",
  dragIsFaster: "{drag} is faster by",
  morePowerFirst: "More power",
  lessDragFirst: "Less drag",
  twoAreLevel: "The two are level",
  spokenPower: "More power is faster than less drag by {figure}, plus or minus {spread}",
  spokenDrag: "Less drag is faster than more power by {figure}, plus or minus {spread}",
  spokenLevel: "More power and less drag are level.",
  rulerPower:
    "From less drag on the left to more power on the right: more power is ahead by {figure}, give or take {spread}.",
  rulerDrag:
    "From less drag on the left to more power on the right: less drag is ahead by {figure}, give or take {spread}.",
  threeTimes: "The three finish times",
  asYouAre: "As you are",
  caution:
    "**Before you go lower:** see where you are going, and keep hard efforts and new positions for quiet roads. Event rules, traffic law and a fitter’s or doctor’s advice come before seconds.",

  // What one is worth in the other.
  onePercent: "One percent of CdA is worth {watts} to you.",
  onePercentAnd: "One percent of CdA is worth {watts} to you; {percent} is worth {more}.",
  airTakes: "Air takes {share} of your work;",
  airTakesAll: "Air takes more than your own work, and the hill gives the rest;",
  tiesAt: "on a flat road the two changes tie when it takes **{tie}**.",
  neverTies: "no share would make these two changes tie.",
  exchange: "What one is worth in the other",
  sameTime: "Each row is worth the same time",
  ratesHold:
    "These rates hold at your own point, at the same power all the way. They are true for small changes, and a little off for large ones.",
  change: "Change",
  areaOfCda: "{unit} of CdA",
  percentOfCda: "{percent} of CdA",
  ofCrr: "{amount} of [Crr|crr]",
  exchangeGist:
    "A watt is worth {area}. In watts, {smallArea} is worth {forArea}, a kilogram {forKilogram}, and {smallCrr} of rolling resistance {forCrr}.",

  // The map, and the map as a table.
  mapTitle: "Finish time for every power and drag area",
  mapX: "power, {unit}",
  mapY: "drag area CdA, {unit}",
  mapYou: "You on the map: left and right change power, up and down change drag area",
  evenTrade: "{time} all along this line",
  tradeRate: "{watts} for {area}",
  pointSpoken: "{power} at {drag}: {time}",
  powerChange: "{percent} more power",
  dragChange: "{percent} less drag",
  eachLine: "each line is one finish time",
  mapDescription:
    "Finish time falls to the right, with more power, and downwards, with less drag area. You stand at {power} and {drag}, {time}. {morePower} is {powerDiffers}; {lessDrag} is {dragDiffers}.",
  mapReading: "**{power}** and **{drag}** give **{time}**, at {speed}.",
  dragRingEven: "Drag the ring, or use the arrow keys: sideways moves your critical power.",
  dashedRing: "The dashed ring is how well your numbers are known.",
  timesCaption: "Finish time by power and drag area",
  timesGist: "Finish times for round powers and drag areas around yours",
  timesTrouble: "There is no round range of powers and drag areas about these.",

  // What each takes.
  takes: "What each takes",
  demands:
    "More power means training for {power} more. Less drag means finding {area} less, in your position or your kit.",
  takesGistClose: "The times are close; the effort is not.",
  takesGist: "Training on the one side, a smaller shape or better kit on the other, and what is published about both",
  takesLeadClose: "The times are close. What they ask of you is not:",
  takesLead: "What each asks of you:",
  heldFor: "today your curve gives you that for **{time}**",
  heldNot: "today your curve does not give you that at all",
  heldAlways: "today your curve already gives you that for as long as you like",
  powerTakes:
    "{lead} {percent} more is {watts}; {held}, and this ride would last {time}. In one study, four weeks of intervals made highly trained riders’ {trial} trials {low} to {high} better.",
  powerTakesLead: "More power takes training.",
  dragTakes: "{lead} In one study, lower bars cut five riders’ CdA by {cda} and their power by {power}.",
  dragTakesLead: "Less drag takes a smaller shape or better kit.",
  closeCall:
    "The times are close, so what counts most is which is easier for you to get. So position can be the better choice although the clock calls it nearly level.",
  oneFavoured: "One is faster here; what each asks of you still counts.",
  price:
    "If you already train, a tenth more power is a lot to ask; lower bars can be tried in an afternoon. But a shape is not fast if it takes as much power as it is worth, or if it is lost in the last miles. Measure your power in it before you decide.",
  ownCurve:
    "At {power} your power curve lasts {time}; at {more}, {held}. For a ride as long as yours it allows {sustainable}.",
  ownCurveLong:
    "At {power} your power curve lasts as long as this ride needs; at {more}, {held}. For a ride as long as yours it allows {sustainable}.",
  ownDrag:
    "On the other side, {percent} less drag is {lower} in place of {area}. It no longer helps once the new shape takes about **{price}** of your power.",
  trainedRiders:
    "**Trained riders:** four weeks of intervals made highly trained cyclists’ {trial} trials {low} to {high} better.",
  newRiders:
    "**New riders:** from memory, and not checked against a paper, they gain {low} to {high} in two months. If you are new, more power is the easier of the two for a while.",
  lowerBars: "**Lower bars:** five riders had {cda} less CdA and {power} less power.",
  torsoAngle:
    "**Torso angle:** at {angle}, eleven riders had {watts} less power at the anaerobic threshold, where a steady effort turns into a draining one. The low position won all the same.",
  takesCaution:
    "Hard training and maximal efforts want a healthy heart and rest between. A change of fit wants small steps and, if anything hurts, a fitter or a physiotherapist.",

  // Why, and how it is worked out.
  whyGistTie: "Air takes {share} of your work on this road. On a flat one the two changes tie when it takes {tie}.",
  whyGistNoTie: "Air takes {share} of your work on this road. No share would make these two changes tie.",
  whyGistDownTie:
    "Air takes more than your own work on this road, and the hill gives the rest. On a flat one the two changes tie when it takes {tie}.",
  whyGistDownNoTie:
    "Air takes more than your own work on this road, and the hill gives the rest. No share would make these two changes tie.",
  whyPower:
    "More power helps against everything that holds you back: {more} more for the air, the tyres, the bearings and the hill alike. Less drag helps against the air only, here {share} of your work. But there it helps more than it seems. With {less} less drag, the same watts push {cheaper} more air aside, because they now meet only {divisor} times the drag.",
  whyPowerDown:
    "More power helps against everything that holds you back: {more} more for the air, the tyres, the bearings and the hill alike. Less drag helps against the air only, which here takes more than your own work, and the hill gives the rest. But there it helps more than it seems. With {less} less drag, the same watts push {cheaper} more air aside, because they now meet only {divisor} times the drag.",
  whyBelow:
    "On a flat road in still air those two facts balance when air takes {tie} of the work. Where it takes less, more power is ahead; where it takes more, less drag is. You are below it.",
  whyAbove:
    "On a flat road in still air those two facts balance when air takes {tie} of the work. Where it takes less, more power is ahead; where it takes more, less drag is. You are above it.",
  whyNear:
    "On a flat road in still air those two facts balance when air takes {tie} of the work. Where it takes less, more power is ahead; where it takes more, less drag is. You are about level with it, and the start and the length of the ride then decide.",
  whyOther:
    "On a flat road in still air those two facts balance when air takes {tie} of the work. Where it takes less, more power is ahead; where it takes more, less drag is. On this ride it takes {share}, but hills, wind or the start turn it round.",
  whyNever: "With changes as unequal as these, the same one wins on every flat road.",
  whyShare:
    "Climbing, soft tyres and slow riding push the share down and favour power. Speed, smooth tyres and headwinds push it up and favour less drag. Try a hill, or a record speed, in the sentence above.",
  howGist: "The same ride with one number changed at a time, so that what all share cancels",
  howThreeRides:
    "The ride is worked out three times, as you are, with more power and with less drag, on the same road on the same day. What is uncertain in all three alike, the model’s own error included, cancels in the difference. That is why a difference of seconds can be surer than the finish time it stands beside.",
  formulaForces:
    "pedal power times drivetrain efficiency equals speed times the sum of air, rolling, climbing, bearing and inertial force",
  symbolPower: "pedal power, W, and the share of it that reaches the wheel",
  symbolSpeed: "speed over the ground and headwind, m/s",
  symbolDensity: "air density, kg/m³, from temperature, pressure and humidity",
  symbolCda: "drag area, m²",
  symbolAir: "speed of the air past the rider, m/s",
  symbolMass: "mass, and mass with the wheels’ share of turning, kg",
  symbolCrr: "rolling-resistance coefficient",
  symbolSlope: "slope of the road",
  symbolBearings: "drag of the bearings, N",
  howTie:
    "Without a [yaw|yaw] table, drag lies along the apparent wind. On a flat calm road, two lines give the share of air f at which both changes lead to one speed. In them, r is the ratio of the new speed to the old. The share of extra power is x, and the share of drag saved is y:",
  formulaPower: "f r cubed plus one minus f times r equals one plus x",
  formulaDrag: "one minus y times f r cubed plus one minus f times r equals one",
  howEven:
    "At a best even effort the whole power curve is raised. The even power that it allows for just the resulting time is then solved anew for each ride. The ± is one standard deviation. It comes first from how the difference moves with each of your numbers, then, once you stop changing numbers, from {draws} tries of them all.",
  dragLimit: "Your {percent} no longer helps once it takes about **{price}** of your power.",
  lastsFor: "it lasts **{time}**",
  lastsNot: "it does not last at all",
  lastsAlways: "it lasts as long as you like",
});
