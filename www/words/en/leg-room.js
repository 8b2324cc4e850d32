// @ts-check
/** The texts of "What does this fit do to my hip?". */

export default /** @type {const} */ ({
  ask: "I am {stature} tall. Now I ride cranks of {crank_a}, the saddle {saddle_a} above their axle at a seat angle of {seat_a}, and {front_a}. What would change with cranks of {crank_b}, the saddle at {saddle_b} and {seat_b}, and {front_b}?",
  pedalling: "I pedal at {cadence_a} now and at {cadence_b} with the new set-up, with {model}.",
  front: "{choice} {tail}",
  "front.label": "How the front end is given",
  "front.byPads": "the arm pads",
  "front.byTorso": "the torso",
  "front.drop": "{drop} below the saddle",
  "front.torso": "at {torso}",
  "model.label": "What the ankle does",
  "model.ankling": "a moving ankle",
  "model.frozen": "a still ankle",
  "number.a": "{label}, now",
  "number.b": "{label}, new set-up",

  "verdict.opens": "The **new set-up** opens the hip by",
  "verdict.closes": "The **new set-up** closes the hip by",
  "verdict.level": "The **new set-up** leaves the hip as it is",
  "verdict.oneInCloses": "too close to call: it closes the hip 1\u00a0time in\u00a0{count}",
  "verdict.oneInOpens": "too close to call: it opens the hip 1\u00a0time in\u00a0{count}",
  "verdict.spoken.opens": "The new set-up opens the hip by {figure} at its tightest, plus or minus {spread}.",
  "verdict.spoken.closes": "The new set-up closes the hip by {figure} at its tightest, plus or minus {spread}.",
  "verdict.spokenExact.opens": "The new set-up opens the hip by {figure} at its tightest.",
  "verdict.spokenExact.closes": "The new set-up closes the hip by {figure} at its tightest.",
  "verdict.spoken.level": "The new set-up leaves the hip as it is.",
  "ruler.left": "tighter",
  "ruler.right": "more open",
  "ruler.spoken": "From a tighter hip on the left to a more open one on the right: {change}",

  "results.caption": "The two set-ups",
  "results.measure": "What",
  "results.now": "Now",
  "results.new": "New",
  "results.change": "Change",
  "results.hip": "Tightest hip",
  "results.torso": "Torso",
  "results.kneeStraight": "Knee, straightest",
  "results.kneeBent": "Knee, most bent",
  "results.thigh": "Fastest thigh",
  "results.sureGuessed":
    "Your own angles are only known to {hip} for the hip and {knee} for the knee, because your lengths are guessed from your height. The change between the two set-ups is much surer: the same body rides both.",
  "results.sureTyped":
    "Your own angles are known to {hip} for the hip and {knee} for the knee. The change between the two set-ups is much surer: the same body rides both.",

  "figure.title": "The two set-ups from the side, to scale",
  "figure.spoken":
    "At {angle} past the top: the hip is at {hip_a} now and {hip_b} in the new set-up, the knee at {knee_a} and {knee_b}.",
  "figure.reading":
    "**{angle}** past the top the hip is at {hip_a} now and {hip_b} in the new set-up, the knee at {knee_a} and {knee_b}.",
  "figure.now": "now",
  "figure.new": "new",
  "figure.slider": "Crank angle past the top",
  "figure.sliderValue": "{angle} past the top",
  "figure.play": "Turn the crank",
  "figure.pause": "Stop the crank",
  "figure.tightest": "Tightest hip",
  "figure.straightest": "Straightest knee",

  "chart.crank": "crank angle past the top",
  "chart.hip": "hip angle",
  "chart.hipTitle": "Hip angle over one turn of the crank",
  "chart.hipDesc":
    "The angle between torso and thigh over one turn, for both set-ups. It is tightest at {at_a} past the top now, {hip_a}, and at {at_b} in the new set-up, {hip_b}.",
  "chart.hipReader": "Read the hip angles at a crank angle",
  "chart.thigh": "thigh speed, up is positive",
  "chart.thighTitle": "How fast the thigh turns, over one turn of the crank",
  "chart.thighDesc":
    "How fast the thigh turns over one turn, up being positive. It is fastest at {at_a} past the top now, {thigh_a}, and at {at_b} in the new set-up, {thigh_b}.",
  "chart.thighReader": "Read how fast the thigh turns at a crank angle",
  "chart.now": "now",
  "chart.new": "new set-up",
  "chart.handle": "You: left and right turn the crank",

  "level.already": "**As open as now.** The new set-up leaves the hip within a tenth of a degree of where it is.",
  "level.tighter": "**To be as open as now,** the new set-up needs one of these: {ways}.",
  "level.wider": "**The new set-up has room to spare:** one of these would use it up: {ways}.",
  "level.none": "**No single change** of crank, saddle, seat angle or pads makes the new set-up as open as now.",
  giveBack:
    "**Lower in front, hip as open.** From where you are now, pads lower by {drop} close the hip by {hip}. Any one of these gives it back: {ways}.",
  "giveBack.none": "**Lower in front.** From where you are now, pads lower by {drop} close the hip by {hip}.",
  "way.crankShorter": "cranks {by} shorter with the saddle that much higher",
  "way.crankLonger": "cranks {by} longer with the saddle that much lower",
  "way.saddleHigher": "the saddle {by} higher with the pads following",
  "way.saddleLower": "the saddle {by} lower with the pads following",
  "way.seatForward": "the seat {by} further forward",
  "way.seatBack": "the seat {by} further back",
  "way.padsHigher": "the pads {by} higher",
  "way.padsLower": "the pads {by} lower",

  "changes.title":
    "What small changes do to the tightest hip, the straightest knee and the fastest thigh, from where you are now",
  "changes.change": "Change",
  "changes.hip": "Hip",
  "changes.knee": "Knee",
  "changes.thigh": "Thigh",
  "changes.crank_and_saddle": "Cranks {by} shorter, saddle that much higher",
  "changes.crank": "Cranks {by} shorter, saddle left alone",
  "changes.saddle": "Saddle {by} higher, pads following",
  "changes.seat_angle": "Seat {by} further forward, pads following",
  "changes.pads": "Pads {by} lower",
  "changes.outOfReach": "out of reach",

  knee: "**The knee.** At its straightest it is {short} short of straight now, and {short_new} in the new set-up. A review of the studies advises 25 to 30°, though little is known about injury. Set to 25° at rest, riders in one study pedalled at 29\u00a0±\u00a05°.",
  takes:
    "**What it takes.** Shorter cranks are an easy way to open the hip. A review of sprint cycling found crank length no factor in power from 165 to 180\u00a0mm. A lower front takes power from some riders and not from others, so test it.",
  price:
    "**What is it worth?** This page counts degrees. For the watts, ride both front ends in one test and let “Which position” compare them. {open}",
  "price.open": "Open it",
  caution:
    "**This is not a verdict on your body.** It is a leg of sticks in one plane. Change one thing at a time, in small steps, and ride easily for a while after each. Stop if anything hurts or goes numb: knees, hips, back, neck, hands or where you sit. Ask a clinician or a bike fitter. Try set-ups away from traffic; the event’s own rules for saddle and bars come first.",

  "why.gist": "The thigh comes up highest just after the top, where the pedal is still near its highest.",
  "why.hip":
    "The hip is tightest at {at} past the top, when the thigh is highest. A shorter crank lifts the pedal less, and with the saddle raised by as much, the whole leg hangs from higher up. Both let the thigh stay lower. Lowering the pads does nothing to the leg; the torso simply comes down to meet it, degree for degree.",
  "why.seat":
    "Turning the seat forward about the crank’s axle turns leg and hip together, so the same torso angle leaves more room. With a still ankle that is about a degree for a degree, and some more with one that moves. That is one reason why time-trial saddles sit far forward.",
  "why.speed":
    "At {cadence} the thigh swings up and down once a turn. Longer cranks swing it further, so it must go faster; a higher cadence makes it go faster too.",

  "how.gist": "Thigh, shank and foot as links between a still hip and a turning pedal",
  "how.loop":
    "Hip, knee, ankle and pedal are joined by stiff links in one plane. The hip joint lies on the line from the crank’s axle through the top of the saddle, {above} beyond the saddle (assumed). The saddle’s height is measured along that line, and the seat angle is that line’s, not the frame’s.",
  "how.frozen":
    "With an ankle that stays, shank and foot are one bent link at {ankle} (assumed). With an ankle that moves, the line from ankle to pedal points {pitch} down on average and {swing} more or less over the turn. The toes are lowest at the back (assumed). The second reads about ten degrees more open than the first: compare within one, and never with a protractor on skin.",
  "how.formula": "hip angle equals torso angle minus thigh angle, the thigh’s angle following from the law of cosines",
  "how.torso":
    "The torso is the line from hip joint to shoulder joint. Given the drop to the pads, the shoulder stands an upper arm above them, with the arm upright. The sine of the torso’s angle is a height over the trunk’s length. That height is the upper arm, less the drop, less the height of the hip over the saddle.",
  "how.rates":
    "How fast the thigh turns is calculated exactly from the linkage, and so are the tightest and the fastest places. The ± is one standard deviation: every unsure length is moved up and down in turn, in both set-ups alike.",
  "how.none":
    "No published table of such a leg was found to check against. The page is checked against the same linkage worked out in 40-digit arithmetic.",
  "how.τ": "torso above the horizontal",
  "how.φ": "thigh above the horizontal",
  "how.E": "hip to the end of the lower link",
  "how.t": "thigh",
  "how.L": "lower link: shank, or shank and foot together",

  lengths: "How you pedal, and your lengths",
  "lengths.gistGuessed": "{count} guessed from your height; type what you have measured",
  "lengths.gistTyped": "All of them typed",
  "lengths.how":
    "Measure from joint to joint, which a tape finds to about a centimetre. The hip joint lies under the bony point at the side of the hip, the knee at its crease, the ankle at its outer knob. The shares of height behind a guess are from memory.",
  "lengths.thigh_m": "Hip joint to knee",
  "lengths.shank_m": "Knee to ankle",
  "lengths.foot_m": "Ankle to pedal axle",
  "lengths.trunk_m": "Hip joint to shoulder joint",
  "lengths.upper_arm_m": "Shoulder joint to pads",
  "lengths.hip_above_saddle_m": "Hip joint beyond the saddle",
  "lengths.foot_pitch_deg": "Foot below the horizontal, on average",
  "lengths.foot_swing_deg": "Swing of the foot, either way",
  "lengths.ankle_deg": "Angle of the ankle",
  "lengths.guess": "a guess",
  "lengths.guessAgain": "Guess again",

  "table.gist": "Both set-ups at every fifteenth degree of the crank",
  "table.caption": "Angles in degrees and thigh speed in degrees a second, over one turn of the crank",
  "table.crank": "Crank",
  "table.hipA": "Hip, now",
  "table.hipB": "Hip, new",
  "table.kneeA": "Knee, now",
  "table.kneeB": "Knee, new",
  "table.thighA": "Thigh, now",
  "table.thighB": "Thigh, new",
});
