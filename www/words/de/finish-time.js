// @ts-check
/** Wie lange dauert es, wie weit in fester Zeit, oder welche Watt braucht eine Zeit? */

/** @satisfies {import("../books.d.ts").Texts<"finish-time">} */
export default {
  askTime:
    "{distance} auf {course}, {effort}, mit einer [Luftwiderstandsfläche|cda] von {cda} und {day}: Wie lange dauert das?",
  askFar:
    "{distance} auf {course}, {effort}, mit einer [Luftwiderstandsfläche|cda] von {cda} und {day}: Wie weit komme ich?",
  askPower:
    "{distance} auf {course}, {effort}, mit einer [Luftwiderstandsfläche|cda] von {cda} und {day}: Welche Leistung braucht das?",

  bestEvenEffort: "gleichmäßig am Limit",
  evenTakes: "Für {distance} {effort} brauchst du",
  wattsTake: "Für {distance} mit {power} brauchst du",
  evenCovers: "In {time} {effort} schaffst du",
  wattsCover: "In {time} mit {power} schaffst du",
  timeTakes: "{distance} in {time} brauchen",
  spokenEvenTakes: "Für {distance} gleichmäßig am Limit brauchst du {figure}, plus oder minus {spread}.",
  spokenWattsTake: "Für {distance} mit {power} brauchst du {figure}, plus oder minus {spread}.",
  spokenEvenCovers: "In {time} gleichmäßig am Limit schaffst du {figure} {unit}, plus oder minus {spread}.",
  spokenWattsCover: "In {time} mit {power} schaffst du {figure} {unit}, plus oder minus {spread}.",
  spokenTimeTakes: "{distance} in {time} brauchen {figure}, plus oder minus {spread}.",

  rideInFigures: "Die Fahrt in Zahlen",
  figure: "Größe",
  value: "Wert",
  spread: "Plus oder minus",
  power: "Leistung",
  averageSpeed: "Mittleres Tempo",
  workAtPedals: "Arbeit am Pedal",
  wPrimeAtLine: "[W′|wPrime] im Ziel",
  wPrimeLeftAtLine: "[W′|wPrime] übrig im Ziel",
  short: "zu wenig",
  tooMuch: "Deine Leistungskurve erlaubt so lange {power}: Das hier sind **{gap} zu viel**.",
  justThis: "Deine Leistungskurve erlaubt so lange {power}: Es ist genau das hier.",
  inHand: "Deine Leistungskurve erlaubt so lange {power}: Du behältst {gap} in Reserve.",
  haveTarget: "Ich habe eine Zielzeit",
  chanceOfBeating: "Die Chance auf {target} oder schneller ist {chance}.",
  chanceAbout: "etwa {count} von {all}",
  chanceUnder: "weniger als 1 von 100",
  chanceOver: "über 99 von 100",
  caution:
    "Bis ins Ziel alles zu geben ist eine maximale Belastung: Wer krank ist oder das nicht gewohnt, holt sich zuerst ärztlichen Rat. Verkehr, andere Fahrer, Wettkampfregeln und Verkehrsregeln gehen vor jeder Zeit auf dieser Seite.",

  whereFrom: "Woher das Plus oder Minus kommt",
  from: "Woher",
  plusOrMinus: "Plus oder minus",
  fromNumbers: "Was deine Zahlen offen lassen",
  fromModel: "Der Modellfehler",
  together: "Zusammen",
  absolute:
    "**Eine Zeit oder Distanz für sich** enthält den Modellfehler, {error} einer Zeit; zwei Fahrten, die man vergleicht, teilen ihn größtenteils.",
  differenceSurer:
    "**Ein Unterschied ist sicherer als eine Zeit.** Die beiden Teile des ± addieren sich quadratisch. Zwei Fahrten am selben Tag auf derselben Strecke teilen fast die ganze Unsicherheit; sie hebt sich also auf. Eine halbe Minute Gewinn kann sicher sein, während die Zeit selbst es nicht ist.",

  theDay: "**Der Tag.** Die Luft wiegt {density}.",
  standardAir: "In Normluft auf Meereshöhe wäre man mit denselben Watt {differs}.",
  noWind: "Es ist windstill.",
  windReaches:
    "Vom vorhergesagten Wind erreichen dich {wind}. Dieselbe Fahrt bei Windstille und mit diesen Watt wäre {differs}.",
  standardAirFar: "Über dieselbe Distanz wäre man in Normluft auf Meereshöhe mit denselben Watt {differs}.",
  windLeftOut: "Der Wind bleibt außer Acht.",
  windReachesFar:
    "Vom vorhergesagten Wind erreichen dich {wind}. Dieselbe Distanz bei Windstille und mit diesen Watt wäre {differs}.",
  meanArea: "Deine Luftwiderstandsfläche beträgt über die Fahrt im Mittel {area}.",
  wPrimeOut: "**W′ geht aus.** Die Fahrt verlangt {work} mehr, als du hast, wie auch immer W′ zurückkommt.",
  wPrimeLeft:
    "**Was von W′ bleibt:** Im Ziel sind es {usual}, wie auch immer W′ zurückkommt. Auf dieser Fahrt bist du kaum je unter der Leistung, bei der es zurückkäme.",
  wPrimeLong:
    "**Was von W′ bleibt:** Im Ziel sind es {usual}. Auf einer so langen Fahrt leert sich W′ nicht erst über CP. Es leert sich schon über der Leistung, die ihre Länge erlaubt, abzüglich des auf sie verteilten W′. Eine gleichmäßige Fahrt verbraucht es gleichmäßig, und nichts kommt zurück.",
  wPrimeForms:
    "**Was von W′ bleibt,** hängt davon ab, wie es zurückkommt. Im Ziel sind es {usual}, wenn W′ umso langsamer zurückkommt, je voller es ist; so wird hier gerechnet. Es sind {none}, wenn nichts zurückkommt, und {linear}, wenn alles zurückkommt, Watt für Watt. Unter null verlangt die Fahrt mehr, als du hast. Niemand weiß, wie es bei dir ist: Auch diese Spanne ist Unsicherheit.",
  wPrimeLeast: "Unterwegs sinkt es auf {least}: Du verbrauchst mehr, als du hast.",

  whyShare: "{share} der Arbeit auf der Straße gehen in die Luft.",
  whyGiven: "Gefälle oder Wind geben einen Teil der Arbeit dazu.",
  whereWork: "Wohin die {work} am Pedal gehen: {list}.",
  air: "{share} in die Luft",
  rolling: "{share} in die Reifen",
  climbing: "{share} in die Höhe",
  drivetrain: "{share} in den Antrieb",
  bearings: "{share} in die Lager",
  braking: "{share} in die Bremsen",
  kinetic: "{share} in das Tempo, mit dem du über die Linie fährst",
  whyLonger:
    "Je länger die Fahrt, desto weniger Leistung lässt sich halten; darum wächst die Zeit etwas schneller als die Distanz. Gleichmäßig am Limit ist die eine Leistung, die deine Kurve genau so lange erlaubt, wie die Fahrt dauert.",

  splits: "Zwischenzeiten",
  splitsGist: { one: "Eine Zwischenzeit, bei {last}", other: "{count} Zwischenzeiten, die letzte bei {last}" },
  splitsCaption: "Jede Zeit seit dem Start, jedes Tempo im Mittel seit der Zwischenzeit davor",
  at: "Bei, {unit}",
  distanceIn: "Distanz, {unit}",
  time: "Zeit",
  speedIn: "Tempo, {unit}",
  powerIn: "Leistung, {unit}",
  wPrimeIn: "W′ übrig, {unit}",
  curveCaption: "Gleichmäßig am Limit über andere Distanzen, auf einer Strecke dieser Art in dieser Luft",
  curveGist: "Zeit und Leistung über der Distanz",

  roadTitle: "Das Profil der Straße",
  heightAxis: "Höhe, {unit}",
  readHeight: "Die Höhe entlang der Strecke ablesen",
  roadSeries: "Höhe",
  roadReading: "Die Straße liegt zwischen {low} und {high}.",
  timeTitle: "Durchschnitt gleichmäßig am Limit, für jede Distanz",
  distanceAxis: "Distanz, {unit}",
  paceAxis: "Durchschnitt, {unit}",
  eventHandle: "Dein Rennen: links und rechts ändern, wie weit",
  readTime: "Den Durchschnitt bei einer Distanz ablesen",
  powerTitle: "Leistung, die du über jede Distanz durchhältst",
  powerAxis: "durchhaltbare Leistung, {unit}",
  readPower: "Die Leistung bei einer Distanz ablesen",
  speedTitle: "Geschwindigkeit entlang der Strecke",
  alongAxis: "entlang der Strecke, {unit}",
  speedAxis: "Geschwindigkeit, {unit}",
  readSpeed: "Die Geschwindigkeit entlang der Strecke ablesen",
  reserveTitle: "Übriges W′ entlang der Strecke",
  reserveAxis: "W′ übrig, {unit}",
  readReserve: "Das übrige W′ entlang der Strecke ablesen",
  youAtTheseWatts: "du, mit diesen Watt",
  youFigure: "du, {figure}",
  pointSpoken: "{distance}, {time}, {power}",
  timeDescription: "Der Durchschnitt sinkt mit wachsender Distanz. Dein Rennen über {distance} dauert {time}.",
  effortSeries: "gleichmäßig am Limit",
  timeReading: "**{distance}** dauern **{time}**.",
  powerDescription: "Die durchhaltbare Leistung sinkt mit wachsender Distanz. Über {distance} fährst du mit {power}.",
  powerSeries: "du hältst durch",
  powerReading: "Deine Kurve erlaubt {power} für {time}.",
  speedDescription: "Die Geschwindigkeit entlang der Strecke ist im Mittel {speed}.",
  speedSeries: "Geschwindigkeit",
  onAverage: "im Mittel {speed}",
  speedReading: "Das Mittel ist **{speed}**.",
  reserveDescription: "Das übrige W′ entlang der Strecke geht von {start} bis {end} im Ziel.",
  reserveSeries: "W′ übrig",
  moreThanYouHave: "mehr, als du hast",
  reserveShort: "Im Ziel fehlen dir {work}.",
  reserveLeft: "Im Ziel sind {work} übrig.",

  howGist: "Schritt für Schritt die Straße entlang, vom Start bis ins Ziel",
  howStepped:
    "Die Fahrt wird in Schritten die Straße entlang gerechnet. Bei jedem Schritt ändert die Geschwindigkeit, was die Pedale über Luft, Reifen, Steigung und Lager hinaus geben.",
  formulaMotion: "m v mal Änderungsrate von v gleich Eta P minus F v",
  howEven:
    "Gleichmäßig am Limit heißt: mit der festen Leistung, die deine Kurve genau so lange erlaubt, wie die Fahrt dann dauert. Leistung und Zeit legen einander fest; das Paar wird berechnet.",
  formulaCurve:
    "P von t gleich CP plus W Strich durch t, minus A mal natürlicher Logarithmus von t durch T jenseits von T",
  howBalance:
    "Oberhalb der Schwelle wird W′ verbraucht, Joule für Joule. Darunter kommt W′ zurück, umso langsamer, je voller es ist:",
  formulaBalance:
    "Die Änderungsrate des übrigen W Strich ist die Schwelle minus P, mal eins minus übriges W Strich durch W Strich",
  formulaDoubt:
    "Die Varianz der Zeit ist die Summe der Quadrate dessen, was jede Eingabe an ihr ändert, plus das Quadrat des Modellfehlers",
  inputMark: "Eingabe",
  modelMark: "Modell",
  balanceMark: "bal",
  symbolPower: "Leistung am Pedal; kritische Leistung; die Arbeit, die darüber möglich ist",
  symbolLong:
    "was lange Fahrten verlieren, und ab wann; vor T oder ohne Angabe eines Verlusts weggelassen. Eine Spitzenleistung, wo angegeben, biegt die Kurve für kurze Fahrten",
  symbolMotion:
    "Masse mit dem, was die drehenden Räder dazugeben, Geschwindigkeit, Zeit, Kräfte auf der Straße, Wirkungsgrad des Antriebs",
  symbolBalance:
    "W′, das in dem Moment übrig ist; zwei andere Formen begrenzen es: Nichts kommt zurück, oder alles, Watt für Watt",
  symbolDoubt:
    "eine Standardabweichung; jede unsichere Zahl wird um ihre eigene verschoben, um zu sehen, was sie mit der Zeit macht",
  howModel:
    "Der Modellfehler steht für sich. Veröffentlichte Modelle von Zeitfahren verfehlten echte Zeiten auf der Straße im Mittel um drei bis vier Prozent, einzelne um mehr. Ein Teil davon kam von ihren Eingaben, und die zählen hier für sich. Darum werden drei Prozent angenommen, bis deine eigenen Ergebnisse etwas anderes sagen. Bei zwei Fahrten am selben Tag ist er fast derselbe und hebt sich im Unterschied auf.",
  howNot:
    "Böen, Verkehr, Kreuzungen, Nerven, Essen und Schlaf sind nicht enthalten. Für einen halben Tag oder mehr ist die Leistungskurve geraten.",

  otherStart: "Dein Start ist um {start}. Mit Start um {other} bist du {difference}{chance}.",
  dayFold: "Wind und Start",
  windGist: "Gegenwind entlang der Straße von {low} bis {high}",
  windTitle: "Gegenwind entlang der Fahrt",
  windAxis: "Gegenwind, {unit}",
  readWind: "Den Gegenwind entlang der Fahrt ablesen",
  windSeries: "Gegenwind",
  windReading: "Auf deiner Höhe geht der Gegenwind von {low} bis {high}; unter null kommt er von hinten.",
  againstYou: "gegen dich",
  behindYou: "von hinten",
  startTitle: "Fahrzeit je nach Start",
  startAxis: "Start",
  finishAxis: "Fahrzeit",
  startHandle: "Dein Start: links und rechts ändern ihn",
  readStart: "Die Fahrzeit je nach Start ablesen",
  startSeries: "Fahrzeit",
  startReading: "Mit Start um {at} brauchst du **{time}**.",
  startDescription: "Mit Start um {at} brauchst du {time}.",
  compassTitle: "Wohin die Strecke führt und woher der Wind kommt",
  compassSpoken: "Die Strecke geht {ways}. Der Wind ist {winds}.",
  compassCalm: "Die Strecke geht {ways}. Es ist windstill.",
  wayShare: "zu {share} nach {way}",
  windAt: "{wind} um {at}",
  windFromWay: "{wind} aus {from}",
  errorsCaption: "Was jeder Fehler der Vorhersage ausmacht",
  forecastOf: "Vorhersage",
  wrongBy: "Ist sie falsch um",
  movesTime: "verschiebt das deine Zeit um",
  errorsNote:
    "Es ist jeweils ein Plus oder Minus: Zwei von drei Vorhersagen treffen so genau. Zusammen zählen sie quadratisch.",
};
