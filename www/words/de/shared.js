// @ts-check
/** Was mehrere Fragen sagen. */

/** @satisfies {import("../books.d.ts").Texts<"shared">} */
export default {
  answer: "Antwort",
  charts: "Diagramme",
  whatItMeans: "Was das heißt",

  howFar: "Wie weit",
  over: "Über {distance}",
  overOwn: "Über eine Strecke von",
  within: "In {time}",
  withinOwn: "In einer Zeit von",
  hours: { one: "einer Stunde", other: "{count} Stunden" },

  kindOfCourse: "Art der Strecke",
  outAndBack: "flacher Wendepunktstrecke",
  oneWay: "flacher Strecke ohne Wende",
  hill: "gleichmäßiger Steigung",
  surveyed: "deiner vermessenen Strecke",
  rising: "von {grade}",

  howHard: "Wie hart",
  even: "gleichmäßig am Limit",
  holding: "mit einer Leistung von",
  finishIn: "mit einer Fahrzeit von",
  fromCurve: "aus {cp} kritischer Leistung und {wPrime} W′",

  day: "bei {temperature} mit {wind} Wind",
  windFrom: "aus {from} {way} (nach Kompass)",
  way: "auf einer Straße in Richtung {heading}",

  fasterBy: "schneller um {figure}",
  slowerBy: "langsamer um {figure}",
  level: "gleichauf",
  certain: "so gut wie sicher",
  veryLikely: "sehr wahrscheinlich",
  likely: "wahrscheinlich",
  ofDraws: "{sure}: {count} von\u00a0{all} Ziehungen",
  overCount: "mehr als {count}",
  tooCloseFaster: "zu knapp: schneller in\u00a0{count} von\u00a0{all} Ziehungen",
  tooCloseSlower: "zu knapp: langsamer in\u00a0{count} von\u00a0{all} Ziehungen",
  oneInFaster: "zu knapp: in\u00a01\u00a0von\u00a0{count} Fällen schneller",
  oneInSlower: "zu knapp: in\u00a01\u00a0von\u00a0{count} Fällen langsamer",
  nineteenInTwenty: "19\u00a0von\u00a020 Mal: {low}\u00a0bis\u00a0{high}",
  spoken: "{claim}.",
  spokenSure: "{claim}: {odds}.",

  surerTime:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zur Fahrzeit beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerDifference:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zum Unterschied beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerDistance:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zur Strecke beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerSpeed:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zur Geschwindigkeit beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerPower:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zur Leistung beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerHip:
    "**Was es sicherer macht.** Von den {all}, die deine Zahlen zur Änderung an der Hüfte beitragen, geht {portion} auf „{input}“ zurück ({known}).",
  surerHow: "{link}: {how}; ohne diese Unsicherheit blieben statt {all} nur {left}.",
  surerNoHow: "{link}; ohne diese Unsicherheit blieben statt {all} nur {left}.",
  surerNext: "Danach kommt „{input}“.",
  giveOwn: "Gib deinen eigenen Wert an",
  lookAtIt: "Sieh dir den Wert an",
  nearlyAll: "fast alles",
  most: "das meiste",
  aboutHalf: "etwa die Hälfte",
  aboutThird: "etwa ein Drittel",
  largestPart: "der größte Anteil",
  typical: "noch ein typischer Wert",
  estimated: "deine Schätzung",
  measured: "schon gemessen",
  howCda: "fahre an einem windstillen Tag Testrunden in dieser Haltung, oder lass sie messen",
  howTiredCda: "filme die letzten Kilometer einer harten Fahrt und fahre danach Testrunden in dieser Haltung",
  howFade: "filme eine harte Fahrt dieser Länge vom Straßenrand aus",
  howLapses: "zähle im Film einer harten Fahrt die Sekunden außerhalb der Haltung",
  howLowerBy: "fahre an einem windstillen Tag in einem einzigen Test abwechselnd Runden in beiden Haltungen",
  howTape: "ein Maßband von Gelenk zu Gelenk, und jemand, der das andere Ende hält",
  howCurve: "drei harte Belastungen verschiedener Länge, jede gut erholt",
  howLongRide: "deine beste Leistung über eine Stunde oder länger",
  howRolling: "ein Rolltest deiner Reifen mit deinem Luftdruck auf deiner Straße",
  howMeter: "ein zweiter Leistungsmesser oder eine Prüfung mit angehängten Gewichten",
  howDrivetrain: "eine saubere Kette und ihr veröffentlichter Verlust",
  howMass: "wiege Fahrer, Rad und Ausrüstung zusammen",
  howTemperature: "ein Thermometer im Schatten an der Strecke",
  howPressure: "ein Barometer vor Ort",
  howWind: "ein Windmesser auf deiner Höhe am Straßenrand",
  howWindFrom: "eine Windfahne oder eine Flagge am Straßenrand",
  howRoughness: "ein Windmesser auf deiner Höhe, verglichen mit der Vorhersage",

  mind: "**Achtung.** {warning}",
  why: "Warum?",
  howWorkedOut: "Wie gerechnet wird",
  asTable: "Als Tabelle",
  sources: "Quellen",
  readAbstract: "Die Zusammenfassung oder die ersten Seiten wurden gelesen.",
  readSecondHand: "Nur als Zitat in anderen Texten gelesen.",
  readFromMemory: "Aus dem Gedächtnis: Was daraus verwendet wird, wurde nicht noch einmal nachgeschlagen.",

  take: "Zum Mitnehmen",
  takeGist: "Bilder, Tabellen und alle Zahlen als Dateien, auf diesem Gerät erzeugt.",
  site: "Auf deine eigene Seite",
  siteGist: "Zwei Zeilen, die diese Frage mit diesen Zahlen zeigen.",
  notLoaded:
    "Dieser Teil der Seite konnte nicht geladen werden. Prüfe die Verbindung, schließ das hier und öffne es noch einmal.",

  dragRing: "Zieh den Ring, oder nimm die Pfeiltasten.",
  you: "du",
};
