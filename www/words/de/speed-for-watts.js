// @ts-check
/** Welches Tempo bringen diese Watt, wohin gehen sie, und was brächten die nächsten zehn? */

/** @satisfies {import("../books.d.ts").Texts<"speed-for-watts">} */
export default {
  wayRound: "In welcher Richtung gefragt",
  byPower: "Mit einer Leistung von",
  bySpeed: "Bei einer Geschwindigkeit von",
  askSpeed:
    "{by} {amount}, einer [Luftwiderstandsfläche|cda] von {cda} und einer Steigung von {grade}, {day}: Welches Tempo bringt das, und wohin gehen die Watt?",
  askPower:
    "{by} {amount}, einer [Luftwiderstandsfläche|cda] von {cda} und einer Steigung von {grade}, {day}: Welche Leistung braucht das, und wohin gehen die Watt?",
  slopeHere: "Steigung der Straße hier",
  directionHere: "Richtung der Straße hier",

  air: "Luft",
  rolling: "Reifen",
  climbing: "Steigung",
  bearings: "Lager",
  drivetrain: "Antrieb",

  buys: "{power} bringen",
  takes: "{speed} brauchen",
  spokenBuys: "{power} bringen {speed}, plus oder minus {spread}.",
  spokenTakes: "{speed} brauchen {power}, plus oder minus {spread}.",
  whereWattsGo: "Wohin die Watt gehen",
  into: "Wohin",
  power: "Leistung",
  otherAir: "Dieselben Watt in anderer Luft, und zehn mehr",
  ride: "Fahrt",
  speed: "Geschwindigkeit",
  difference: "Unterschied",
  today: "Heute",
  atThisSpeed: "Bei diesem Tempo",
  tenMore: "{ten} mehr",
  inStillAir: "Bei Windstille",
  inStandardAir: "In Normluft",

  nextTen: "Die nächsten {ten} bringen **{gain}**. Ein Prozent mehr Leistung sind {percent} mehr Geschwindigkeit.",
  percentForPercent:
    "**Von allem ein Prozent.** Ein Prozent weniger Luftwiderstandsfläche macht dich {cda}, ein Prozent dünnere Luft {density}. Ein Prozent weniger Masse macht dich {mass}, ein Prozent weniger [Rollwiderstand|crr] {rolling}.",
  percentFaster: "{percent} schneller",
  percentSlower: "{percent} langsamer",
  airStandard: "**Die Luft heute** wiegt {density}, wie an einem Normtag auf Meereshöhe.",
  airThinner: "**Die Luft heute** wiegt {density}; sie ist {percent} dünner als an einem Normtag auf Meereshöhe.",
  airThicker: "**Die Luft heute** wiegt {density}; sie ist {percent} dichter als an einem Normtag auf Meereshöhe.",
  windAgainst:
    "Vom vorhergesagten Wind erreichen dich {wind}: {head} von vorn, {cross} von der Seite. Du spürst {felt} Wind unter einem [Anströmwinkel|yaw] von {yaw}.",
  windBehind:
    "Vom vorhergesagten Wind erreichen dich {wind}: {head} von hinten, {cross} von der Seite. Du spürst {felt} Wind unter einem [Anströmwinkel|yaw] von {yaw}.",
  noWind: "Es ist windstill.",
  caution:
    "Halte die Augen auf der Straße: Kein Tempo auf dieser Seite ist ein Grund, im Verkehr, bei Seitenwind oder bergab den Kopf unten zu halten. Wettkampfregeln und Verkehrsregeln gehen vor.",
  howLongHold: "Wie lange kann ich diese Leistung halten?",

  whyShare:
    "Die Luft macht {share} des Fahrwiderstands aus; die Leistung für sie wächst mit der dritten Potenz der Geschwindigkeit.",
  whyGiven:
    "{watts} gehen in die Luft, und Gefälle oder Wind geben einen Teil davon zurück. Die Leistung für die Luft wächst mit der dritten Potenz der Geschwindigkeit.",
  whyCubeShare:
    "Bei Windstille wächst die Leistung für die Luft mit der dritten Potenz des Tempos; die für Reifen und Steigung wächst nur im gleichen Maß. Bei {speed} macht die Luft {share} des Fahrwiderstands aus. Also bringt jedes weitere Watt weniger Tempo als das davor: Das ist die fallende Kurve.",
  whyCubeGiven:
    "Bei Windstille wächst die Leistung für die Luft mit der dritten Potenz des Tempos; die für Reifen und Steigung wächst nur im gleichen Maß. Bei {speed} gehen {watts} in die Luft, und Gefälle oder Wind geben einen Teil davon zurück. Also bringt jedes weitere Watt weniger Tempo als das davor: Das ist die fallende Kurve.",
  whyThird:
    "Gäbe es nur Luft, brächte ein Prozent mehr Leistung ein drittel Prozent Geschwindigkeit. An einem steilen Anstieg bringt es fast ein ganzes. Dein eigener Wert liegt dazwischen.",

  stackTitle: "Wohin die Watt bei jeder Geschwindigkeit gehen",
  speedAxis: "Geschwindigkeit, {unit}",
  powerAxis: "Leistung am Pedal, {unit}",
  powerAxisGiven: "Leistung, {unit}",
  speedHandle: "Du: links und rechts ändern deine Geschwindigkeit und mit ihr die Watt",
  readWatts: "Die Watt bei einer Geschwindigkeit ablesen",
  gainTitle: "Was die nächsten zehn Watt bei jeder Leistung bringen",
  gainAxis: "was {ten} mehr bringen, {unit}",
  powerHandle: "Du: links und rechts ändern deine Leistung",
  readGain: "Ablesen, was zehn Watt mehr bei einer Leistung bringen",
  inAll: "zusammen",
  stackDescription:
    "Watt bei jeder Geschwindigkeit bis {most}, gestapelt danach, wohin sie gehen. Bei {speed} sind es {power}, und {share} des Fahrwiderstands ist Luft.",
  stackSpoken: "{speed}, {power}",
  stackReading: "**{power}** bei **{speed}**: {share} des Fahrwiderstands ist Luft.",
  stackReadingGiven: "**{power}** bei **{speed}**: Straße und Wind geben {given} dazu.",
  gainDescription:
    "Was zehn Watt mehr bei jeder Leistung bis {most} an Geschwindigkeit bringen: Es wird weniger, je höher die Leistung ist. Bei {power} sind es {gain}.",
  gainSeries: "zehn Watt mehr bringen",
  gainSpoken: "{power}: zehn mehr bringen {gain}",
  gainReading: "Bei {power} bringen zehn Watt mehr **{gain}**.",

  tableGist: "Watt nach Geschwindigkeit, und was zehn mehr brächten",
  tableCaption:
    "Leistung am Pedal nach Geschwindigkeit und wohin sie geht, in Watt; und was zehn mehr brächten, in {unit}.",
  speedIn: "Tempo, {unit}",
  powerIn: "Leistung, {unit}",
  airIn: "Luft, {unit}",
  rollingIn: "Reifen, {unit}",
  climbingIn: "Steigung, {unit}",
  bearingsIn: "Lager, {unit}",
  drivetrainIn: "Antrieb, {unit}",
  tenMoreIn: "{ten} mehr, {unit}",

  howGist: "Die Kräfte auf der Straße, zusammengezählt, mal Geschwindigkeit",
  howSteady:
    "Bei gleichbleibender Geschwindigkeit ist die Leistung, die die Straße erreicht, gleich den Kräften darauf mal der Geschwindigkeit:",
  formulaPower: "Eta mal P gleich v mal Summe der Kräfte von Luft, Rollen, Steigung und Lagern",
  formulaAir:
    "Die Luftkraft ist ein halb Rho mal Luftwiderstandsfläche mal scheinbarer Wind mal Summe aus v und Gegenwind",
  formulaWind: "Der scheinbare Wind ist die Wurzel aus v plus h zum Quadrat plus c zum Quadrat",
  formulaTyres: "Die Rollkraft ist Crr m g Kosinus Theta, die Steigungskraft m g Sinus Theta",
  symbolPower: "Leistung am Pedal und der Anteil davon, der die Straße erreicht",
  symbolSpeed: "Geschwindigkeit über Grund; Gegen- und Seitenwind auf Höhe des Fahrers",
  symbolDensity: "Dichte der Luft, aus Temperatur, Druck und Feuchte (CIPM-2007)",
  symbolCda:
    "Luftwiderstandsfläche; ohne Tabelle nach Anströmwinkel liegt der Widerstand in Richtung des scheinbaren Windes",
  symbolRolling: "Rollwiderstandsbeiwert, Masse von Fahrer und Rad, Fallbeschleunigung, Neigung",
  symbolBearings: "eine feste Kraft und eine, die mit der Geschwindigkeit wächst",
  howFound:
    "Die Geschwindigkeit für gegebene Watt ist die, bei der beide Seiten gleich sind; sie wird durch Nullstellensuche gefunden. Was zehn Watt mehr bringen, ist der Unterschied zweier solcher Geschwindigkeiten. Der vorhergesagte Wind wird mit dem logarithmischen Gesetz über dem Gelände, das du nennst, auf deine Höhe umgerechnet. Für jedes ± wird jede unsichere Zahl um ihr eigenes ± verschoben, und die Wirkungen werden quadratisch addiert.",
  howNot: "Böen, die Geschwindigkeit des Verkehrs und eine Straße, die hier rauer ist als dort, sind nicht enthalten.",
};
