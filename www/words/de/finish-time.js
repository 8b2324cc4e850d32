// @ts-check
/** Wie lange dauert es, wie weit in fester Zeit, oder welche Watt braucht eine Zeit? */

/** @satisfies {import("../books.d.ts").Texts<"finish-time">} */
export default {
  askTime:
    "{distance} auf {course}, {effort}, mit einer Luftwiderstandsfläche von {cda} und {day}: Wie lange dauert das?",
  askFar: "{distance} auf {course}, {effort}, mit einer Luftwiderstandsfläche von {cda} und {day}: Wie weit komme ich?",
  askPower:
    "{distance} auf {course}, {effort}, mit einer Luftwiderstandsfläche von {cda} und {day}: Welche Leistung braucht das?",

  bestEvenEffort: "gleichmäßig am Limit",
  evenTakes: "Für {distance} {effort} brauchst du",
  wattsTake: "Für {distance} mit {power} brauchst du",
  evenCovers: "In {time} {effort} schaffst du",
  wattsCover: "In {time} mit {power} schaffst du",
  timeTakes: "{distance} in {time} kosten",
  spokenEvenTakes: "Für {distance} gleichmäßig am Limit brauchst du {figure}, plus oder minus {spread}.",
  spokenWattsTake: "Für {distance} mit {power} brauchst du {figure}, plus oder minus {spread}.",
  spokenEvenCovers: "In {time} gleichmäßig am Limit schaffst du {figure} {unit}, plus oder minus {spread}.",
  spokenWattsCover: "In {time} mit {power} schaffst du {figure} {unit}, plus oder minus {spread}.",
  spokenTimeTakes: "{distance} in {time} kosten {figure}, plus oder minus {spread}.",

  rideInFigures: "Die Fahrt in Zahlen",
  figure: "Größe",
  value: "Wert",
  spread: "Streuung",
  power: "Leistung",
  averageSpeed: "Mittleres Tempo",
  workAtPedals: "Arbeit am Pedal",
  wPrimeAtLine: "W′ im Ziel",
  wPrimeLeftAtLine: "W′ übrig im Ziel",
  short: "zu wenig",
  tooMuch: "Deine Leistungskurve erlaubt so lange {power}: Das hier sind **{gap} zu viel**.",
  justThis: "Deine Leistungskurve erlaubt so lange {power}: genau das hier.",
  inHand: "Deine Leistungskurve erlaubt so lange {power}: Du behältst {gap} in Reserve.",
  haveTarget: "Ich habe eine Zielzeit",
  chanceOfBeating: "Chance auf {target} oder schneller: {chance}.",
  chanceAbout: "etwa {count} von {all}",
  chanceUnder: "weniger als 1 von 100",
  chanceOver: "über 99 von 100",
  caution:
    "Bis ins Ziel alles zu geben ist eine maximale Belastung: Wer krank ist oder das nicht gewohnt, fragt zuerst einen Arzt. Verkehr, andere Fahrer, Wettkampfregeln und Verkehrsregeln gehen vor jeder Zeit auf dieser Seite.",

  whereFrom: "Woher das Plus oder Minus kommt",
  from: "Woher",
  plusOrMinus: "Plus oder minus",
  fromNumbers: "Was deine Zahlen offen lassen",
  fromModel: "Der Modellfehler",
  together: "Zusammen",
  absolute:
    "**Ein absoluter Wert** enthält den Modellfehler, {error} einer Zeit; ein Unterschied zwischen zwei Fahrten kaum, denn das meiste davon steckt in beiden.",
  differenceSurer:
    "**Ein Unterschied ist sicherer als eine Zeit.** Beides addiert sich quadratisch. Vergleiche zwei Fahrten am selben Tag auf derselben Strecke, und das meiste von beidem steckt in jeder, hebt sich also auf: Eine halbe Minute Gewinn kann sicher sein, während die Zeit selbst es nicht ist.",

  theDay: "**Der Tag.** Die Luft wiegt {density}.",
  standardAir: "In Normluft auf Meereshöhe wäre man mit denselben Watt {differs}.",
  noWind: "Es ist windstill.",
  windReaches:
    "Vom vorhergesagten Wind erreichen dich {wind}. Dieselbe Fahrt bei Windstille und mit diesen Watt wäre {differs}.",
  standardAirFar: "Über dieselbe Strecke wäre man in Normluft auf Meereshöhe mit denselben Watt {differs}.",
  windLeftOut: "Der Wind bleibt außer Acht.",
  windReachesFar:
    "Vom vorhergesagten Wind erreichen dich {wind}. Dieselbe Strecke bei Windstille und mit diesen Watt wäre {differs}.",
  meanArea: "Deine Luftwiderstandsfläche beträgt über die Fahrt im Mittel {area}.",
  wPrimeOut: "**W′ geht aus.** Die Fahrt verlangt {work} mehr, als du hast, wie auch immer W′ zurückkommt.",
  wPrimeLeft:
    "**Was von W′ bleibt.** {usual} im Ziel, wie auch immer W′ zurückkommt: Auf dieser Fahrt bist du kaum je unter der Leistung, bei der es zurückkäme.",
  wPrimeLong:
    "**Was von W′ bleibt.** {usual} im Ziel. Auf einer so langen Fahrt zehrt nicht erst Leistung über CP an W′, sondern alles über dem, was ihre Länge ohne den auf die Fahrt verteilten W′-Anteil erlaubt: Eine gleichmäßige Fahrt verbraucht es gleichmäßig, und nichts kommt zurück.",
  wPrimeForms:
    "**Was von W′ bleibt.** {usual} im Ziel, wenn W′ umso langsamer zurückkommt, je voller es ist, so wie hier gerechnet; {none}, wenn nichts zurückkommt; {linear}, wenn alles zurückkommt, Watt für Watt. Niemand weiß, wie es bei dir ist: Auch diese Spanne ist Unsicherheit.",
  wPrimeLeast: "Unterwegs sinkt es auf {least}: Du gibst mehr aus, als du hast.",

  whyShare: "Die Luft nimmt {share} der Arbeit auf der Straße.",
  whyGiven: "Gefälle oder Wind geben einen Teil der Arbeit dazu.",
  whereWork: "Wohin die {work} am Pedal gehen: {list}.",
  air: "{share} in die Luft",
  rolling: "{share} in die Reifen",
  climbing: "{share} in Höhenmeter",
  drivetrain: "{share} in den Antrieb",
  bearings: "{share} in die Lager",
  braking: "{share} in die Bremsen",
  kinetic: "{share} in das Tempo, mit dem du über die Linie fährst",
  whyLonger:
    "Je länger die Fahrt, desto weniger Leistung lässt sich halten; darum wächst die Zeit etwas schneller als die Strecke. Gleichmäßig am Limit stimmt beides überein: Das ist die eine Leistung, die deine Kurve für genau die Zeit erlaubt, die es dauert.",

  splits: "Zwischenzeiten",
  splitsGist: { one: "Eine Zwischenzeit, bei {last}.", other: "{count} Zwischenzeiten, die letzte bei {last}." },
  splitsCaption: "Seit dem Start, und das mittlere Tempo seit der Zwischenzeit davor.",
  at: "Bei, {unit}",
  distanceIn: "Strecke, {unit}",
  time: "Zeit",
  speedIn: "Tempo, {unit}",
  powerIn: "Leistung, {unit}",
  wPrimeIn: "W′ übrig, {unit}",
  curveCaption: "Gleichmäßig am Limit über andere Distanzen, auf einer Strecke dieser Art in dieser Luft.",
  curveGist: "Zeit und Leistung gegen die Strecke.",

  timeTitle: "Fahrzeit gleichmäßig am Limit, für jede Strecke",
  distanceAxis: "Strecke, {unit}",
  timeAxis: "Fahrzeit",
  eventHandle: "Dein Rennen: links und rechts ändern, wie weit",
  readTime: "Die Zeit bei einer Strecke ablesen",
  powerTitle: "Leistung, die du über jede Strecke durchhältst",
  powerAxis: "durchhaltbare Leistung, {unit}",
  readPower: "Die Leistung bei einer Strecke ablesen",
  speedTitle: "Geschwindigkeit entlang der Strecke",
  alongAxis: "entlang der Strecke, {unit}",
  speedAxis: "Geschwindigkeit, {unit}",
  readSpeed: "Die Geschwindigkeit entlang der Strecke ablesen",
  reserveTitle: "W′-Bilanz entlang der Strecke",
  reserveAxis: "W′-Bilanz, {unit}",
  readReserve: "Die W′-Bilanz entlang der Strecke ablesen",
  minutes: "{count} min",
  hours: "{count} h",
  youAtTheseWatts: "du, mit diesen Watt",
  youFigure: "du, {figure}",
  pointSpoken: "{distance}, {time}, {power}",
  timeDescription:
    "Die Fahrzeit wächst mit der Strecke, etwas stärker als proportional. Dein Rennen: {distance}, {time}.",
  effortSeries: "gleichmäßig am Limit",
  timeReading: "**{distance}** in **{time}**.",
  powerDescription: "Die durchhaltbare Leistung sinkt mit wachsender Strecke. Über {distance} fährst du mit {power}.",
  powerSeries: "du hältst durch",
  powerReading: "Deine Kurve erlaubt {power} für {time}.",
  speedDescription: "Geschwindigkeit entlang der Strecke, im Mittel {speed}.",
  speedSeries: "Geschwindigkeit",
  onAverage: "im Mittel {speed}",
  speedReading: "Im Mittel **{speed}**.",
  reserveDescription: "W′-Bilanz entlang der Strecke, von {start} bis {end} im Ziel.",
  reserveSeries: "W′ übrig",
  moreThanYouHave: "mehr, als du hast",
  reserveShort: "Im Ziel fehlen dir {work}.",
  reserveLeft: "Im Ziel sind {work} übrig.",

  howGist: "Schritt für Schritt die Straße entlang, vom Start bis ins Ziel.",
  howStepped:
    "Die Fahrt wird in Schritten die Straße entlang gerechnet: Bei jedem Schritt ändert das, was die Pedale über Luft, Reifen, Steigung und Lager hinaus geben, die Geschwindigkeit.",
  formulaMotion: "m v mal Änderungsrate von v gleich Eta P minus F v",
  howEven:
    "Gleichmäßig am Limit heißt: mit der festen Leistung, die deine Kurve genau so lange erlaubt, wie die Fahrt dann dauert. Leistung und Zeit legen einander fest; das Paar wird berechnet.",
  formulaCurve:
    "P von t gleich CP plus W Strich durch t, minus A mal natürlicher Logarithmus von t durch T jenseits von T",
  howBalance:
    "Oberhalb der Schwelle wird W′ ausgegeben, Joule für Joule. Darunter kommt W′ zurück, umso langsamer, je voller es ist:",
  formulaBalance:
    "Die Änderungsrate der W-Strich-Bilanz ist die Schwelle minus P, mal eins minus W-Strich-Bilanz durch W Strich",
  formulaDoubt:
    "Die Varianz der Zeit ist die Summe über die Eingaben vom Quadrat dessen, worum jede sie verschiebt, plus das Quadrat des Modellfehlers",
  inputMark: "Eingabe",
  modelMark: "Modell",
  balanceMark: "Bil",
  symbolPower: "Leistung am Pedal; kritische Leistung; die Arbeit, die darüber möglich ist",
  symbolLong:
    "was lange Fahrten verlieren, und ab wann; vor T oder ohne Angabe eines Verlusts weggelassen. Eine Spitzenleistung, wo angegeben, biegt die Kurve für kurze Fahrten",
  symbolMotion:
    "Masse mit dem, was die drehenden Räder dazugeben, Geschwindigkeit, Zeit, Kräfte auf der Straße, Wirkungsgrad des Antriebs",
  symbolBalance:
    "W′-Bilanz: was in dem Moment übrig ist. Zwei andere Formen begrenzen sie: Nichts kommt zurück, oder alles, Watt für Watt",
  symbolDoubt:
    "eine Standardabweichung; jede unsichere Zahl wird um ihre eigene verschoben, um zu sehen, was sie mit der Zeit macht",
  howModel:
    "Der Modellfehler steht für sich: Veröffentlichte Modelle von Zeitfahren verfehlten echte Zeiten auf der Straße um drei bis vier Prozent. Hier werden zwei Prozent angenommen, bis deine eigenen Ergebnisse etwas anderes sagen. Er ist bei zwei Fahrten, die am selben Tag verglichen werden, fast derselbe und hebt sich im Unterschied auf.",
  howNot:
    "Nicht enthalten: Böen, Verkehr, Kreuzungen, Nerven, Essen und Schlaf. Für einen halben Tag oder mehr ist die Leistungskurve geraten.",
};
