// @ts-check
/** The frame of the page, its parts, "Your numbers", and what is kept on the device. */

/** @satisfies {import("../books.d.ts").Texts<"page">} */
export default ({
  "questions.start-here.name": "Commence ici",
  "questions.start-here.title": "La position bat-elle la puissance ?",
  "questions.speed-for-watts.name": "Vitesse par watt",
  "questions.speed-for-watts.title": "Quelle vitesse m’achètent mes watts ?",
  "questions.power-or-drag.name": "Puissance ou traînée",
  "questions.power-or-drag.title": "Plus de puissance, ou moins de traînée ?",
  "questions.hold-or-fade.name": "Tenir ou lâcher",
  "questions.hold-or-fade.title": "Une position plus rapide vaut-elle le coup si je ne la tiens pas ?",
  "questions.power-curve.name": "Courbe de puissance",
  "questions.power-curve.title": "Que puis-je tenir, et combien de temps ?",
  "questions.leg-room.name": "Place aux jambes",
  "questions.leg-room.title": "Que fait ce réglage à ma hanche ?",
  "questions.which-position.name": "Quelle position",
  "questions.which-position.title": "Quelle position pour quelle distance ?",
  "questions.next-gain.name": "Prochain gain",
  "questions.next-gain.title": "Sur quoi travailler ensuite ?",
  "questions.finish-time.name": "Temps à l’arrivée",
  "questions.finish-time.title": "Combien de temps me faudra-t-il ?",
  "groups.understand": "Comprendre",
  "groups.measure": "Mesurer",
  "groups.decide": "Décider",
  "groups.ride": "Rouler",
});
