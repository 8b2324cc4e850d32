// @ts-check
/** The guided story for newcomers. */

export default /** @type {const} */ ({
  lead: "You may have heard that it is. Here are eight things to try, each with a number or two to change, and a rider who does not mind. They and their bicycle are typical, {mass} in all, on a flat road in still air until you say otherwise. A number changed in one step holds in all of them, and every figure is worked out as you go.",
  coda: "The story leaves the page’s own typical numbers alone. Mass, tyres, bearings and critical power are from memory, the others published or assumed, as it says beside each under {yourNumbers}.",
  tryIt: "**Try it.** {what}",
  youChanged: "**What you changed.**",

  // What several steps say.
  powerAxis: "power, {unit}",
  areaAxis: "drag area CdA, {unit}",
  speedAxis: "speed, {unit}",
  pedalsAxis: "power at the pedals, {unit}",
  morePowerBy: "More power by",
  lessDragBy: "Less drag by",
  morePower: "{percent} more power",
  lessDrag: "{percent} less drag",

  // 1.
  wallTitle: "1. What the air takes",
  wallAsk: "A rider goes along a flat road at {speed}, in still air. What does it take to push that air aside?",
  wallSpeed: "Speed in still air",
  wallTry:
    "Put the ring at a stroll, then at racing speed, or type a speed above: watch how late the curve turns, and how steeply.",
  wallSays:
    "At **{speed}** the air takes {watts}. At twice that speed it would take {twice}, {times} times as much; and just a tenth more speed takes {tenth} more. The push of the air grows with the square of speed, and you meet it that much faster as well. So power grows with the cube.",
  wallSince: "You went from {began} to {speed}: what the air takes went from {beganWatts} to {watts}.",
  wallChart: "Power that goes into the air at every speed",
  wallAxis: "power into the air, {unit}",
  wallHandle: "The rider’s speed: left and right change it",
  wallRead: "Read the power into the air at a speed",
  wallDescription: "The power that goes into the air bends upwards ever more steeply. At {speed} it is {watts}.",
  wallSeries: "the air takes",
  wallSpoken: "{speed}: the air takes {watts}",
  wallReading: "At **{speed}** the air takes {watts}.",

  // 2.
  wattsTitle: "2. Where the watts go",
  wattsAsk: "A rider holds {power} with a [drag area|cda] of {drag}: how fast is that, and where do the watts go?",
  wattsPower: "Power at the pedals",
  wattsDrag: "Drag area, CdA",
  wattsTry:
    "Give the rider more watts and see which layer takes them. Then try the drag area of someone sitting up, {area}.",
  wattsSays:
    "{power} gives **{speed}**. Of those watts {air} go into the air, {tyres} into the tyres, {bearings} into bearings and {drivetrain} into the drivetrain. Air is {share} of the load on the road, and more of it the faster the rider goes: the next {ten} add only {gain}. Less drag area makes the thick layer thinner. More power only moves you further up it.",
  wattsSince: "The rider went {began}, with {beganWatts} and {beganArea}; yours goes {speed}.",
  wattsChart: "Where the rider’s watts go at every speed",
  wattsHandle: "The rider: left and right change the watts, and the speed with them",
  wattsRead: "Read where the watts go at a speed",
  wattsDescription:
    "Power at the pedals by speed, stacked: air on the bottom, then tyres, bearings and drivetrain. At {speed} it is {power}.",
  air: "air",
  rolling: "tyres",
  bearings: "bearings",
  drivetrain: "drivetrain",
  inAll: "in all",
  wattsSpoken: "{power} gives {speed}",
  wattsReading: "At **{speed}** it takes {power} in all, {air} of it for the air.",

  // 3.
  longTitle: "3. Ten percent more, for how long?",
  longAsk: "The rider can hold {power} for a while. And {more} more?",
  longPower: "Power to hold",
  longTry:
    "Move the ring along the curve. Where it is steep, a little more power takes away little time; where it is flat, it takes away most of it. Each equal step along the foot of the chart makes the time the same number of times longer.",
  longSays: "This rider’s curve gives {power} {held} and {percent} more, {more}, {moreHeld}.",
  longShare: "That is {share} of the time.",
  longNoSwitch:
    "So nobody simply chooses “ten percent more power”: for the same distance it takes another curve, and that takes training. In one study, four weeks of intervals made highly trained riders’ {trial} trials {low} to {high} better.",
  notAtAll: "not at all",
  longerThanRaces: "for longer than anyone races",
  heldFor: "for **{time}**",
  longSince: "The rider began with {began} {beganHeld}; yours has {watts}, {held}.",
  longTypical:
    "The curve is a typical one, not yours: **{cp} of [critical power|cp]** is from memory, **{wPrime} of [W′|wPrime]** stands near the mean of published tests. Beyond half an hour it also falls as one trained group’s did. It is for riders who are rested, cool and fed.",
  longCaution:
    "Finding your own curve takes maximal efforts. They are for healthy, regularly active riders; if in doubt ask a doctor first, and test away from traffic.",
  longChart: "Power the rider can hold for every length of time",
  longAxis: "time held",
  longHandle: "Time held: left and right change it, and the power with it",
  longRead: "Read the power for a length of time",
  longDescription:
    "The power that can be held falls as the effort gets longer, steeply at first. {power} can be held for {time}.",
  longDescriptionBeyond:
    "The power that can be held falls as the effort gets longer, steeply at first. {power} can be held beyond this chart.",
  longSeries: "the rider can hold",
  longMorePoint: "{percent} more, {time}",
  longSpoken: "{power} for {time}",
  longReading: "The rider holds {power} for **{time}**.",
  minutes: "{count} min",
  hours: "{count} h",

  // 4.
  tenTitle: "4. Ten against ten",
  tenAsk: "Which is worth more, {more} more power or {less} less drag?",
  tenTry:
    "Drag the ring to a stronger, then to a weaker rider, and see which arrow crosses more lines. Or try {percent} less drag against {percent} more power.",
  tenSays: "Over {distance} the rider takes {time}. More power is {power}, less drag {drag}: {ahead}.",
  tenTooMuch:
    "**More than this rider can hold:** for {time} the curve of step 3 allows {sustainable}, not {power}. The times show what the two changes would be worth to someone who holds it.",
  tenTie: "On a flat, calm road these two changes tie when air takes **{tie}** of the work; here it takes {share}.",
  tenNoTie: "No share of air would make these two changes tie.",
  tenMirror:
    "Taking off is a bigger step than adding: the step that matches {percent} more is {mirror} less. Against that, more power is {differs}.",
  powerAhead: "more power ahead by {figure}",
  dragAhead: "less drag ahead by {figure}",
  twoLevel: "the two level",
  tenSince:
    "At the start it was: {began}, and {beganShare} of the work for the air. Now it is: {ahead}, and {share} for the air.",
  tenDoesIt:
    "**So is position worth more than power?** By the clock, ten percent of either is worth much the same on a flat road. The two differ in what they take. A tenth more power takes training. A tenth less drag may take only lower bars, and some of your power.",
  tenLower:
    "In one study, lower bars cut five riders’ CdA by {cda}, and their power by {power}. Both averages at once would take the rider of this story from **{speed}** to **{lower}**.",
  tenTorso:
    "In eleven others a low torso took {watts} at the anaerobic threshold, where a steady effort turns into a draining one. The low position won all the same. Riders differ by as much as these averages, so only a test of your own tells.",
  tenCaution:
    "A head held low does not see the road. Try positions away from traffic and in small steps; ask a fitter or clinician about anything that hurts. Event rules and the law of the road come first.",
  tenChart: "The rider’s finish time for every power and drag area",
  tenHandle: "The rider on the map: left and right change power, up and down change drag area",
  theRider: "the rider",
  pointSpoken: "{power} at {drag}: {time}",
  eachLine: "each line is one finish time",
  tenDescription:
    "Finish time falls to the right, with more power, and downwards, with less drag area. The rider stands at {power} and {drag}, {time}.",
  tenReading: "{power} and {drag} give **{time}**.",

  // 5.
  lostTitle: "5. A position that is lost at the end",
  lostAsk:
    "The rider takes a position with {less} less drag, holds it for {begins}, then tires and loses it. Was it worth it?",
  lostBegins: "When the low position starts to slip",
  lostLess: "How much less drag the low position has",
  lostTry:
    "Find the moment at which the two are equal: a minute earlier the low position loses, a minute later it wins.",
  lostSays:
    "Starting at {low} and ending at up to {tired}, the low position is {differs} {spread} against {kept} kept all the way. Held to the end it would be {held}.",
  lostTie: "The two are equal if it starts to slip after {time} of riding.",
  lostNoTie: "There is no moment at which the two are equal.",
  lostMoral: "The fastest shape is not the lowest one, but the lowest you can still hold near the line.",
  lostSince: "At the start the low position was {began}; now it is {differs}.",
  lostAssumed:
    "No published figure was found for how drag creeps up as riders tire. That the position slips over twenty-five minutes, to a tenth more than the one they could have kept, is **assumed** here. When you ask about your own ride, you say how yours slips. The [±|sd] says how sure the difference is.",
  lostChart: "The rider’s drag area over the ride",
  lostAxis: "time ridden, {unit}",
  lostHandle: "When the low position starts to slip: left and right change it",
  lostRead: "Read both drag areas over the ride",
  lostDescription:
    "The position that is kept stays at {kept}. The low one starts at {low} and starts to slip after {time} of riding.",
  keptSeries: "the position kept",
  lowSeries: "the low one",
  levelAt: "equal at {time}",
  lostSpoken: "starts to slip after {time}: {differs}",
  lostReading: "It starts to slip after {time} of riding: **{differs}**.",

  // 6.
  windTitle: "6. Uphill and into the wind",
  windAsk: "On a slope of {grade} into {wind} of wind, what is one percent of power or drag worth?",
  windSlope: "Slope of the road",
  windAgainst: "Wind against the rider",
  windTry: "Go up a climb of {climb}, then down a gentle slope. Then come back to the flat and let the wind blow.",
  windSays: "At {speed}, one percent more power is {power}, one percent less drag area {drag}: {ratio} times as much.",
  moreSpeed: "{percent} more speed",
  windDragWins:
    "Less drag is worth more: the slope gives back what the tyres take, and only the air is left to ride against.",
  windNear: "Most of the load is air, so the two are near each other.",
  windPowerWins:
    "A good part of the load here is height or tyres, and a lower shape spares none of that: power is worth more.",
  windStill: "In still air it would be {power} and {drag}.",
  windMoral: "Drag area counts most where the road is flat or falls, power most where it rises.",
  windSince:
    "On the flat in still air it was {beganPower} for power and {beganDrag} for drag; here it is {power} and {drag}.",
  windCaution:
    "Downhill the sums favour a low shape; the road may not. Descents, bends, traffic and gusts set the position and the speed there, not a chart.",
  windChart: "What one percent of power or of drag area is worth on every slope",
  slopeAxis: "slope, {unit}",
  worthAxis: "what one percent is worth, {unit} of speed",
  windHandle: "The slope: left and right change it",
  windRead: "Read what one percent is worth on a slope",
  windDescription:
    "One percent more power is worth more the steeper the road; one percent less drag is worth less. At {slope} they are {power} and {drag}.",
  powerSeries: "more power",
  dragSeries: "less drag",
  windSpoken: "{slope}: power {power}, drag {drag}",
  windReading: "At {slope}: {power} for power, {drag} for drag.",

  // 7.
  pushTitle: "7. Where to push",
  pushAsk: "A level road has a climb of {grade} in the middle, and the same way down. Where should the rider push?",
  pushGrade: "Slope of the climb",
  pushTry: "Make the climb steeper, then nearly flat: see how much there is to gain.",
  pushEven: "Over {distance}, holding {power} all the way takes **{time}**.",
  pushPlan:
    "A plan to ride: {cues}. It is **{faster}**, {lost} short of the fastest plan there is, and leaves the rider no more tired.",
  pushCueStart: "{power} from the start",
  pushCue: "{power} from {distance}",
  pushFlat: "On a road this flat the even effort is the plan.",
  pushMoral:
    "Push where the road is slow and ease where it is fast. At low speed the air takes less of each watt, so each saves more time.",
  pushSince: "At the start the plan was {began}; now it is {now}.",
  pushAssumed:
    "Pushing spends [W′|wPrime], and easing brings it back as one published model says; riders differ. Road and rider are invented.",
  pushCaution:
    "A plan is about effort, never about speed downhill or in a bend: there, traffic, the road and what you can see decide.",
  pushChart: "What a plan gains over an even effort on every climb",
  pushAxis: "slope of the climb, {unit}",
  pushGainAxis: "faster by, s",
  pushHandle: "The climb: left and right change how steep it is",
  pushRead: "Read what a plan gains on a climb",
  pushDescription: "The steeper the climb, the more a plan gains over an even effort. At {slope} it is {faster}.",
  pushSeries: "a plan of four powers",
  pushFastest: "the fastest plan",
  pushSpoken: "{slope}: {faster}",
  pushReading: "On a climb of {slope} the plan is {faster}.",

  // 8.
  threeTitle: "8. Three changes, one budget",
  threeAsk:
    "With {budget} to spend, and lower bars set by a fitter at 100, a close-fitting suit at 150 and faster tyres at 90: which first?",
  threeBudget: "Money to spend",
  threeTry: "Spend {budget}, then less and less, and see what goes first.",
  threeSays: "Over {distance} the best is {names}: {figure}, counting the chance that each works.",
  threeNothing: "Over {distance} this budget is enough for none of the three.",
  threeMost: "The most by itself, counting the chance that it works, comes from {first}: {average}.",
  threeMoral:
    "What comes first is not what saves most when it works. It is what saves most **for what it takes**, counting the chance that it works.",
  threeSince: "At the beginning of the story it was {names}.",
  threeNone: "none of them",
  threeFront: "a lower front",
  threeSuit: "the suit",
  threeTyres: "tyres",
  threeCosts: "{name}, {money}",
  threeAssumed:
    "The suit’s saving is published; that of lower bars is a third of what is published, and that of tyres is from memory. Every chance and price is **assumed**: put in your own under “{question}”.",
  threeCaution:
    "Lower bars want small steps, eyes on the road, and a fitter if anything hurts. Try them away from traffic.",
  threeChart: "What each of three changes saves",
  threeLegend:
    "Dot: saving with its chance counted. Ring: saving if it works; two times in three the truth lies on the line. Tick: what the budget should buy",
  threeAxis: "saved over {distance}",
  threeDescription:
    "Counting the chance that it works, the most comes from {first}: {average}. What the budget should buy is ticked.",

  // The end.
  endTitle: "Now your own ride",
  askChanged: "Ask it of my own ride, with what I changed",
  askMeasure: "Measure my own drag",
  askOwn: "Ask it of my own ride",
  untouched:
    "None of this has touched your own numbers. If you copy something over, {undo} takes it back. The slope, the wind and the position that slips have their place under {yourNumbers} and in {holdOrFade}.",
  taken: "What you changed in the story is in your own numbers now. {undo} takes it back.",
  changedCda: "a CdA of {area}",
  bringAlong: "You changed {list}. Copy that over to “{question}”, or open it with the numbers that are there.",
  notYou:
    "The rider of this story is not you. “{question}” asks the same of your own power, position, course and day, and says how sure the answer is.",
  sumTitle: "In short: position or power?",
  sumPosition: "Position wins",
  sumPositionWhen:
    "The road is flat or falls, you ride fast or into the wind, and you hold the shape without losing much power.",
  sumPower: "Power wins",
  sumPowerWhen: "The road climbs, you ride slowly, or the lower shape takes too much power or slips too early.",
  sumLevel: "The two are level",
  sumLevelWhen:
    "You get ten percent of either on a flat road in still air: then choose the one that is easier for you to get.",
  sumWorth:
    "With the numbers as you leave them, this rider is {drag} over {distance} with {lessDrag}, and {power} with {morePower}. That much drag is worth about {watts} to them.",
  sumWho: "Which",
  sumWhen: "When",
});
