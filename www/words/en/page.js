// @ts-check
/** The frame of the page, its parts, "Your numbers", and what is kept on the device. */

export default {
  "questions.start-here.name": "Start here",
  "questions.start-here.title": "Does position beat power?",
  "questions.speed-for-watts.name": "Speed for watts",
  "questions.speed-for-watts.title": "What speed do my watts buy?",
  "questions.power-or-drag.name": "Power or drag",
  "questions.power-or-drag.title": "More power, or less drag?",
  "questions.hold-or-fade.name": "Hold or fade",
  "questions.hold-or-fade.title": "Is a faster position worth it if I can’t hold it?",
  "questions.power-curve.name": "Power curve",
  "questions.power-curve.title": "What can I hold, and for how long?",
  "questions.leg-room.name": "Leg room",
  "questions.leg-room.title": "What does this fit do to my hip?",
  "questions.which-position.name": "Which position",
  "questions.which-position.title": "Which position for which distance?",
  "questions.next-gain.name": "Next gain",
  "questions.next-gain.title": "What should I work on next?",
  "questions.finish-time.name": "Finish time",
  "questions.finish-time.title": "How long will it take?",
  "groups.understand": "Understand",
  "groups.measure": "Measure",
  "groups.decide": "Decide",
  "groups.ride": "Ride",
};
