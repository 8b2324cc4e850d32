// @ts-check
/** Eine Frage auf der Seite von jemand anderem. */

/** @satisfies {import("../books.d.ts").Texts<"embed">} */
export default {
  cannotShow: "Diese Frage kann hier nicht gezeigt werden. {why}",
  noQuestion: "Es gibt keine Frage namens „{name}“. Es gibt {list}.",
  tooLong: "Was in „{name}“ steht, ist zu lang.",
  notObject: "Was in „{name}“ steht, ist kein JSON-Objekt.",
  unreadable: "Die Zahlen darin sind nicht lesbar.",
  notLoaded: "Sie konnte nicht geladen werden. Prüf die Verbindung und lade die Seite neu.",
  backToStart: "Zurück zum Anfang",
  allNumbers: "Alle Zahlen, in Fasterby",

  holdsNumbers:
    "Die Zeilen enthalten die Zahlen, die gerade auf der Seite stehen, auch deine. Besucher dürfen sie ändern; nichts, was sie eingeben, verlässt ihr Gerät.",
  withScripts: "Für deine Seite, wo Skripte erlaubt sind",
  copyLines: "Die zwei Zeilen kopieren",
  inFrame: "In einem Rahmen, wo sie es nicht sind",
  copyFrame: "Den Rahmen kopieren",
  copied: "Es ist kopiert.",
  selected: "Es ist markiert: Kopiere es mit der Tastatur.",
  workItOut: "In Fasterby ausrechnen",
  contentPolicy: "Eine Seite mit Content Security Policy braucht außerdem: {directives}. Der Rahmen braucht: {frame}.",
  keepStill: "Damit deine Seite stillhält, während die Frage lädt, gib ihr in deinem eigenen Stylesheet Platz: {rule}",
};
