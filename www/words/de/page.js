// @ts-check
/** The frame of the page, its parts, "Your numbers", and what is kept on the device. */

/** @satisfies {import("../books.d.ts").Texts<"page">} */
export default ({
  "questions.start-here.name": "Hier anfangen",
  "questions.start-here.title": "Schlägt Haltung Leistung?",
  "questions.speed-for-watts.name": "Tempo für Watt",
  "questions.speed-for-watts.title": "Welches Tempo bringen meine Watt?",
  "questions.power-or-drag.name": "Leistung oder Luftwiderstand",
  "questions.power-or-drag.title": "Mehr Leistung oder weniger Luftwiderstand?",
  "questions.hold-or-fade.name": "Halten oder nachlassen",
  "questions.hold-or-fade.title": "Lohnt sich eine schnellere Haltung, wenn ich sie nicht halten kann?",
  "questions.power-curve.name": "Leistungskurve",
  "questions.power-curve.title": "Was kann ich halten, und wie lange?",
  "questions.leg-room.name": "Beinfreiheit",
  "questions.leg-room.title": "Was macht diese Sitzposition mit meiner Hüfte?",
  "questions.which-position.name": "Welche Haltung",
  "questions.which-position.title": "Welche Haltung für welche Strecke?",
  "questions.next-gain.name": "Nächster Gewinn",
  "questions.next-gain.title": "Woran soll ich als Nächstes arbeiten?",
  "questions.finish-time.name": "Zielzeit",
  "questions.finish-time.title": "Wie lange werde ich brauchen?",
  "groups.understand": "Verstehen",
  "groups.measure": "Messen",
  "groups.decide": "Entscheiden",
  "groups.ride": "Fahren",
});
