// @ts-check
/** What should I work on next? */

export default /** @type {const} */ ({
  ask: "With {money} {currency} and {hours} a week for {weeks}, what should I work on next for {events}?",
  myEvents: { one: "my one event", other: "my {count} events" },
  moneyLabel: "Money to spend",
  currencyLabel: "Your currency, such as pounds or euros",
  currencyHint: "your currency",
  hoursLabel: "Hours to spend every week, beyond what you do now",
  weeksLabel: "For how many weeks",

  // The answer.
  claim: {
    one: "**{names}**: over your one event, faster by",
    other: "**{names}**: over your {count} events, faster by",
  },
  nothing: "Nothing on the list helps within this budget.",
  spoken:
    "The best for this budget is {names}: faster by {figure} over your events, counting the chance that each works, plus or minus {spread}.",
  spokenNothing: "Nothing on the list helps within this budget.",
  more: { one: "one more", other: "{count} more" },
  searching: "Comparing every set of changes: {share}.",
  waiting: "Comparing every set of changes.",
  stop: "Stop",
  stopped: "Stopped before every set was compared.",
  goOn: "Go on",
  numbered: "change {number}",
  inTheSet: "The best set, and what each of it saves by itself",
  change: "Change",
  onAverage: "Counting the chance that it works",
  ifItWorks: "If it works",
  ifWorks: "{figure} if it works",
  takes:
    "It takes **{money}** and **{hours}** in all, with no week above {weekly}. If all of it works, you are faster by **{all}**; counting the chance of each, by {average}. Nineteen times in twenty it comes out between {low} and {high}.",
  nextAdds: "**With {more} more**, add {added}: you are a further {gain} faster.",
  nextSwaps: "**With {more} more**, take {added} in place of {left}: you are a further {gain} faster.",
  nextNoMoney: "More money brings nothing more on this list.",
  inFixedTime:
    "{event}: you cover about {now} at your numbers today. Over that you are on average {differs}, so you get **{further}**.",
  measureFirst:
    "**Measure {name} before you choose it** ({open}). Knowing what it saves you adds {worth} on average; untested, it adds {buying}.",
  measureLeftOut:
    "**Measure {name}** ({open}). It is not in the best set, but knowing what it saves you adds {worth} on average.",
  nextNoHours: "More hours bring nothing more on this list.",
  hours: { one: "one hour", other: "{count} hours" },

  // What is left out.
  leftOut: "Left out, and why",
  leftOutGist: { one: "One change is not in the best set.", other: "{count} changes are not in the best set." },
  leftOutLine: "**{name}**: {why}.",
  taken: "In the best set",
  isTaken: "yes",
  "why.too_dear": "costs more than your money",
  "why.too_long": "takes more weeks than you have",
  "why.too_many_hours_a_week": "takes more hours a week than you have",
  "why.too_many_hours": "takes more hours in all than you have",
  "why.needs_another": "comes only after “{other}”, which is left out",
  "why.excluded_by_group": "only one of a kind is taken, and that is “{other}”",
  "why.no_money_left": "too little money is left beside the best set",
  "why.no_hours_left": "too few hours are left beside the best set",
  "why.not_worth_it": "saves nothing more, counting the chance that it works",

  // The pictures.
  dotsTitle: "What each change saves over your events",
  dotsAxis: "saved over your events",
  dotsDesc:
    "Counting the chance that it works, {first} saves most, {average}, and {last} least, {least}. What is in the best set is marked.",
  legend:
    "Dot: saving with its chance counted. Ring: saving if it works; two times in three the truth lies on the line. Tick: in the best set",
  curveMoney: "What more money brings",
  curveHours: "What more hours bring",
  moneyAxis: "money",
  moneyAxisIn: "money, {currency}",
  hoursAxis: "hours a week",
  savedAxis: "saved, counting the chance that it works",
  curveDesc: "The best set saves {start} for nothing more and {end} for {most}.",
  youMoney: "Your money",
  youHours: "Your hours a week",
  at: "{budget}: faster by {figure}",
  drag: "Drag the ring, or use the arrow keys, to try another budget.",
  readMoney: "Read what an amount of money brings",
  readHours: "Read what a number of hours brings",

  // Notes.
  caution:
    "**Before you change anything:** see where you are going, whatever a head position saves. Practise bends and new positions away from traffic, never to the limit. Change a fit in small steps, with a fitter or clinician if anything hurts or goes numb. Hard blocks of training and maximal tests are for healthy, regularly active riders. Event rules and the local law of the road come first.",
  elsewhere:
    "A position is more than its size here. Ask {position} for yours at every distance, and {leg} for what a lower front does to the hip.",

  // Why.
  why: "Why not add them up?",
  whyGist: "Together they save {together}; added up one by one it would be {added}.",
  whyText:
    "Each change is worth what it saves on a ride that the others have made faster already. Added up one by one, this set would save {added}, counting chances. Worked out together it saves {together}.",
  whyChance:
    "Each change works with its own chance, whatever becomes of the others; one that comes only after another brings nothing where that one fails. What is counted is the mean over everything that may come of a set. That is {outcomes} cases here, each ridden anew at your best even effort.",
  whySure:
    "The ± holds what is unsure about each change’s size and your own numbers, and that some of it may not work. All of that together leaves nineteen of twenty outcomes between {low} and {high}.",

  // The list.
  list: "The changes",
  listGist: {
    one: "There is one change on the list; edit it, or add others.",
    other: "There are {count} changes on the list; edit, add or take away.",
  },
  listLead:
    "Sizes and chances are guesses until you have measured them. Each says what it rests on. Most change your [drag area, CdA|cda], [rolling resistance, Crr|crr] or [critical power|cp].",
  name: "Name",
  whatItChanges: "What it changes",
  size: "By how much",
  spread: "The ± of that",
  chance: "Chance that it works",
  money: "Money",
  hoursOnce: "Hours once",
  hoursPerWeek: "Hours a week",
  weeks: "For how many weeks",
  group: "Only one of",
  groupHint: "Changes with the same word here exclude each other.",
  requires: "Comes only after",
  requiresNone: "none",
  requiresHint:
    "It is taken only together with that change, and brings nothing if that one fails. Its size and chance are what it adds then.",
  note: "Note",
  published: "It rests on published work.",
  "common-practice": "It rests on common practice, without a source.",
  "from-memory": "It is from memory and was not looked up again.",
  assumed: "It is assumed.",
  add: "Add a change",
  addEffect: "It changes something else too",
  removeEffect: "Take this effect away",
  remove: "Take off the list",
  usualTrained: "The usual list for riders who train",
  usualNew: "The usual list for new riders",
  full: "At most twenty changes are compared.",
  ridePosition: "Ride in “{name}”",
  positionNumber: "position {number}",
  other: "something else: {field}",
  "kinds.dragShare": "Drag area, by a share",
  "kinds.dragArea": "Drag area",
  "kinds.powerShare": "Critical power, by a share",
  "kinds.power": "Critical power",
  "kinds.rolling": "Rolling resistance, Crr",
  "kinds.mass": "Mass",
  "kinds.drivetrain": "Drivetrain efficiency",
  "kinds.bends": "Sideways acceleration in bends",

  // On paper.
  changeOnPaper: "**{name}**: {sizes}; {takes}",
  sizeOnPaper: "{what} {size}",
  eventsOnPaper: "**Your events:** {events}",
  eventOnPaper: "{event} × {times}",

  // Events.
  events: "Your events",
  eventsGist: "How often each is ridden decides what counts.",
  eventsLead: "Seconds are added over these, each as often as you ride it.",
  timesRidden: "×",
  timesLabel: "How often {event} is ridden",
  editEvents: "Change the events",

  // As a table.
  tableGist: "Every change at each event: seconds saved, also for each unit of money and each hour",
  tableCaption: "What each change saves by itself",
  perMoney: "Seconds saved for each unit of money",
  perHour: "Seconds saved for each hour",
  free: "free",

  // How it is worked out.
  howGist: "Every set within the budget is compared; none is passed over.",
  howSets:
    "With {count} on the list there are {sets} sets. The finish times of every set are known from rides at your best even effort with all its changes together. Where few changes move the same number, all their sets are ridden. Where more do, they are read off a curve through rides, to within a thousandth of a second.",
  howMean: "A set is worth its mean saving over all that may come of it:",
  howFormula: "E of S is the sum over every ω within S of its chance times the time as you are less the time with ω",
  symbolSet: "a set of changes, and those of it that work",
  symbolChance: "the chance that just those work",
  symbolTime: "finish time over all your events, each as often as it is ridden",
  howBest:
    "The best set is the one that saves most within your money, hours a week and weeks. Of sets that save the same to a thousandth of a second, the one that takes the least money is taken.",
  howWeeks:
    "A change with weekly hours takes them in each of its weeks on end, beginning in any week; those that run together add up. Hours that are taken once fill what the weeks leave. A set fits if some schedule keeps every week within your hours; all schedules are tried. A change that takes more weeks than you have is left out.",
  howSure:
    "What is unsure about a change’s size and your own numbers is carried into each outcome, as it counts for small changes. The outcomes together, each with its chance, give the ± and the range.",
  howTable:
    "One check is against a published table, itself worked out by a model. It says what a change of position saves three riders, from novice to elite, over 40 km. Three drag areas and two powers were fitted to five of its nine figures; the other four come out within 2 %. What training and equipment save was not checked this way.",

  // The usual changes.
  "usual.front-lower.name": "Front end lower by a step",
  "usual.front-lower.note":
    "This is a third of the published change of lower bars (CdA −10.7 ± 3.1 %). Riders who train in the position used a little more oxygen (1.3 %, not significant), counted here as lost power.",
  "usual.front-lowest.name": "A second step lower",
  "usual.front-lowest.note":
    "The sizes are assumed. All measures of power fell with a lower torso in nineteen riders; the lowest torso was the worst for them.",
  "usual.elbows-and-hands.name": "Narrower arms",
  "usual.elbows-and-hands.note":
    "This is small and individual: bar height matters more than width, and the best differs between riders. The size is assumed.",
  "usual.head.name": "Practise how the head is held",
  "usual.head.note":
    "Two head positions differed by up to 6.4 % of drag at 15 m/s. A third of that is assumed, held with your eyes on the road.",
  "usual.clothing.name": "Close-fitting clothing",
  "usual.clothing.note":
    "A whole suit cut drag by 3.9 % at 53 km/h; less is likely over clothes that fit already, or at lower speed.",
  "usual.helmet.name": "Helmet matched to how the head is held",
  "usual.helmet.note":
    "Shapes differed by less than 1.5 % with the head held alike: half of that is assumed. Not every helmet suits every head.",
  "usual.tyres.name": "Faster tyres",
  "usual.tyres.note": "Tyre, pressure and warmth are customarily said to change rolling resistance by a factor of two.",
  "usual.chain.name": "Chain cleaned and waxed",
  "usual.chain.note": "A chain drive lost 2.1 ± 1.5 %; that care saves a quarter of it is assumed.",
  "usual.pacing.name": "Practise even pacing",
  "usual.pacing.note": "Times here are those of an even effort already; how much uneven riding loses is assumed.",
  "usual.corners.name": "Practise bends",
  "usual.corners.note":
    "It saves time only on a course given with its bends. Practise away from traffic and never to the limit. The size is assumed.",
  "usual.intervals.name": "Four weeks of intervals",
  "usual.intervals.note":
    "Two sessions a week raised highly trained riders’ peak aerobic power by 3.0 to 6.2 %; critical power is taken to follow it.",
  "usual.season.name": "A season’s steady training",
  "usual.season.note": "Riders who train already are said to gain 2 to 6 % over a season.",
  "usual.begin-training.name": "Eight weeks of regular training",
  "usual.begin-training.note": "Untrained people are said to raise critical power by 10 to 15 % in six to eight weeks.",
  hoursUnit: { one: "hour", other: "hours" },
  weeksUnit: { one: "week", other: "weeks" },
  hoursText: { one: "{number} hour", other: "{number} hours" },
  hoursAWeekText: { one: "{number} hour a week", other: "{number} hours a week" },
});
