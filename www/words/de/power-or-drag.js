// @ts-check
/** Mehr Leistung oder weniger Luftwiderstand? */

/** @satisfies {import("../books.d.ts").Texts<"power-or-drag">} */
export default {
  ask: "{distance} auf {course}, {effort}, bei einem [CdA-Wert|cda] von {cda} und {day}: Was bringt mehr, {power} mehr Leistung oder {drag} weniger Luftwiderstand?",
  inFixedTime:
    "Alle Zeiten hier gelten für die Distanz von {ride}. In dieser Zeit kommst du mit mehr Leistung {power}, mit weniger Luftwiderstand {drag}.",
  morePowerBy: "Mehr Leistung um",
  lessDragBy: "Weniger Luftwiderstand um",

  morePower: "mehr Leistung",
  lessDrag: "weniger Luftwiderstand",
  powerIsFaster: "{power} ist schneller um",
  dragIsFaster: "{drag} ist schneller um",
  morePowerFirst: "Mehr Leistung",
  lessDragFirst: "Weniger Luftwiderstand",
  twoAreLevel: "Beides ist gleich schnell",
  spokenPower: "Mehr Leistung ist um {figure} schneller als weniger Luftwiderstand, plus oder minus {spread}",
  spokenDrag: "Weniger Luftwiderstand ist um {figure} schneller als mehr Leistung, plus oder minus {spread}",
  spokenLevel: "Mehr Leistung und weniger Luftwiderstand sind gleich schnell.",
  rulerPower:
    "Von weniger Luftwiderstand links zu mehr Leistung rechts: Mehr Leistung liegt um {figure} vorn, auf {spread} genau.",
  rulerDrag:
    "Von weniger Luftwiderstand links zu mehr Leistung rechts: Weniger Luftwiderstand liegt um {figure} vorn, auf {spread} genau.",
  threeTimes: "Die drei Fahrzeiten",
  asYouAre: "Wie jetzt",
  caution:
    "**Bevor du tiefer gehst:** Sieh, wohin du fährst, und heb dir harte Belastungen und neue Positionen für ruhige Straßen auf. Wettkampfregeln, Verkehrsregeln, Bikefitter und ärztlicher Rat gehen vor Sekunden.",

  onePercent: "Ein Prozent CdA ist bei dir {watts} wert.",
  onePercentAnd: "Ein Prozent CdA ist bei dir {watts} wert; {percent} sind {more} wert.",
  airTakes: "{share} deiner Arbeit gehen in die Luft;",
  airTakesAll: "In die Luft geht mehr als deine eigene Arbeit, den Rest gibt der Berg;",
  tiesAt: "auf flacher Straße sind beide Änderungen gleich viel wert, wenn es **{tie}** sind.",
  neverTies: "bei keinem Anteil wären diese beiden Änderungen gleich viel wert.",
  exchange: "Was das eine im anderen wert ist",
  sameTime: "Jede Zeile ist gleich viel Zeit wert",
  ratesHold:
    "Diese Werte gelten an deinem eigenen Punkt, bei gleicher Leistung auf der ganzen Strecke. Für kleine Änderungen stimmen sie, bei großen liegen sie etwas daneben.",
  change: "Änderung",
  areaOfCda: "{unit} CdA",
  percentOfCda: "{percent} CdA",
  ofCrr: "{amount} [Crr|crr]",
  exchangeGist:
    "Ein Watt ist {area} wert. In Watt sind {smallArea} so viel wert wie {forArea}, ein Kilogramm {forKilogram}, {smallCrr} Rollwiderstand {forCrr}.",

  mapTitle: "Fahrzeit für jede Leistung und jede Luftwiderstandsfläche",
  mapX: "Leistung, {unit}",
  mapY: "Luftwiderstandsfläche CdA, {unit}",
  mapYou: "Du auf der Karte: links und rechts ändern die Leistung, oben und unten die Luftwiderstandsfläche",
  evenTrade: "{time} auf dieser ganzen Linie",
  tradeRate: "{watts} gegen {area}",
  pointSpoken: "{power} bei {drag}: {time}",
  powerChange: "{percent} mehr Leistung",
  dragChange: "{percent} weniger Luftwiderstand",
  eachLine: "jede Linie ist eine Fahrzeit",
  mapDescription:
    "Die Fahrzeit sinkt nach rechts, mit mehr Leistung, und nach unten, mit weniger Luftwiderstandsfläche. Du stehst bei {power} und {drag}, {time}. {morePower}: {powerDiffers}; {lessDrag}: {dragDiffers}.",
  mapReading: "**{power}** und **{drag}** ergeben **{time}** bei {speed}.",
  dragRingEven: "Zieh den Ring, oder nimm die Pfeiltasten: seitwärts ändert sich deine kritische Leistung.",
  dashedRing: "Der gestrichelte Ring zeigt, wie gut deine Zahlen bekannt sind.",
  timesCaption: "Fahrzeit nach Leistung und Luftwiderstandsfläche",
  timesGist: "Fahrzeiten für runde Leistungen und Luftwiderstandsflächen um deine herum",
  timesTrouble: "Um diese Werte herum gibt es keinen runden Bereich von Leistungen und Luftwiderstandsflächen.",

  takes: "Was beides verlangt",
  demands:
    "Mehr Leistung heißt, {power} mehr zu erarbeiten. Weniger Luftwiderstand heißt, {area} einzusparen, mit der Position oder dem Material.",
  takesGistClose: "Die Zeiten liegen nah beieinander, der Aufwand nicht.",
  takesGist:
    "Training auf der einen Seite, kleinere Haltung oder besseres Material auf der anderen, und was darüber veröffentlicht ist",
  takesLeadClose: "Die Zeiten liegen nah beieinander. Was sie von dir verlangen, nicht:",
  takesLead: "Was beides verlangt:",
  heldFor: "heute gibt deine Kurve das **{time}** lang her",
  heldNot: "heute gibt deine Kurve das gar nicht her",
  heldAlways: "heute gibt deine Kurve das schon her, so lange du willst",
  powerTakes:
    "{lead} {percent} mehr sind {watts}; {held}, und diese Fahrt würde {time} dauern. In einer Studie waren sehr gut trainierte Fahrer nach vier Wochen Intervalltraining über {trial} um {low} bis {high} besser.",
  powerTakesLead: "Mehr Leistung verlangt Training.",
  dragTakes:
    "{lead} In einer Studie senkte ein tieferer Lenker bei fünf Fahrern den CdA-Wert um {cda} und ihre Leistung um {power}.",
  dragTakesLead: "Weniger Luftwiderstand verlangt eine kleinere Haltung oder besseres Material.",
  closeCall:
    "Die Zeiten liegen nah beieinander; es zählt also vor allem, was du leichter erreichst. Darum kann die Position die bessere Wahl sein, obwohl die Uhr beides fast gleich sieht.",
  oneFavoured: "Eines von beiden ist hier schneller; was beides verlangt, zählt trotzdem.",
  price:
    "Wer schon trainiert, muss für ein Zehntel mehr Leistung viel tun; ein tieferer Lenker ist an einem Nachmittag ausprobiert. Aber schnell ist eine Position nicht, wenn sie so viel Leistung nimmt, wie sie bringt, oder kurz vor dem Ziel verloren geht. Miss deine Leistung darin, bevor du dich entscheidest.",
  ownCurve:
    "Bei {power} reicht deine Leistungskurve für {time}. Bei {more} gilt: {held}. Für eine so lange Fahrt erlaubt sie {sustainable}.",
  ownCurveLong:
    "Bei {power} reicht deine Leistungskurve so lange, wie diese Fahrt es braucht. Bei {more} gilt: {held}. Für eine so lange Fahrt erlaubt sie {sustainable}.",
  ownDrag:
    "Auf der anderen Seite sind {percent} weniger Luftwiderstand {lower} statt {area}. Das lohnt sich nicht mehr, sobald die neue Position etwa **{price}** Leistung nimmt.",
  trainedRiders:
    "**Trainierte:** Nach vier Wochen Intervalltraining waren sehr gut trainierte Fahrer über {trial} um {low} bis {high} besser.",
  newRiders:
    "**Neulinge:** Aus dem Gedächtnis und an keiner Quelle geprüft gewinnen sie {low} bis {high} in zwei Monaten. Wer neu anfängt, kommt eine Zeit lang leichter an mehr Leistung.",
  lowerBars: "**Tieferer Lenker:** Fünf Fahrer hatten {cda} weniger CdA und {power} weniger Leistung.",
  torsoAngle:
    "**Rumpfwinkel:** Bei {angle} hatten elf Fahrer {watts} weniger Leistung an der anaeroben Schwelle, ab der eine Belastung nicht mehr gleichmäßig zu halten ist. Die tiefe Position gewann trotzdem.",
  takesCaution:
    "Hartes Training und maximale Belastungen brauchen ein gesundes Herz und Erholung dazwischen. Ändere die Position in kleinen Schritten, und hol dir Rat bei Bikefitter oder Physiotherapie, wenn etwas schmerzt.",

  whyGistTie:
    "Auf dieser Straße gehen {share} deiner Arbeit in die Luft. Auf einer flachen sind beide Änderungen gleich viel wert, wenn es {tie} sind.",
  whyGistNoTie:
    "Auf dieser Straße gehen {share} deiner Arbeit in die Luft. Bei keinem Anteil wären diese beiden Änderungen gleich viel wert.",
  whyGistDownTie:
    "Auf dieser Straße geht mehr als deine eigene Arbeit in die Luft, den Rest gibt der Berg. Auf einer flachen sind beide Änderungen gleich viel wert, wenn es {tie} sind.",
  whyGistDownNoTie:
    "Auf dieser Straße geht mehr als deine eigene Arbeit in die Luft, den Rest gibt der Berg. Bei keinem Anteil wären diese beiden Änderungen gleich viel wert.",
  whyPower:
    "Mehr Leistung hilft gegen alles, was dich bremst: {more} mehr für Luft, Reifen, Lager und Berg gleichermaßen. Weniger Luftwiderstand hilft nur gegen die Luft, hier {share} deiner Arbeit. Aber dort hilft er mehr, als es scheint. Mit {less} weniger Luftwiderstand schieben dieselben Watt {cheaper} mehr Luft beiseite, weil sie nur noch auf das {divisor}-Fache des Widerstands treffen.",
  whyPowerDown:
    "Mehr Leistung hilft gegen alles, was dich bremst: {more} mehr für Luft, Reifen, Lager und Berg gleichermaßen. Weniger Luftwiderstand hilft nur gegen die Luft; in sie geht hier mehr als deine eigene Arbeit, den Rest gibt der Berg. Aber dort hilft er mehr, als es scheint. Mit {less} weniger Luftwiderstand schieben dieselben Watt {cheaper} mehr Luft beiseite, weil sie nur noch auf das {divisor}-Fache des Widerstands treffen.",
  whyBelow:
    "Auf flacher Straße bei Windstille halten sich beide die Waage, wenn {tie} der Arbeit in die Luft gehen. Ist es weniger, liegt mehr Leistung vorn; ist es mehr, weniger Luftwiderstand. Du bist darunter.",
  whyAbove:
    "Auf flacher Straße bei Windstille halten sich beide die Waage, wenn {tie} der Arbeit in die Luft gehen. Ist es weniger, liegt mehr Leistung vorn; ist es mehr, weniger Luftwiderstand. Du bist darüber.",
  whyNear:
    "Auf flacher Straße bei Windstille halten sich beide die Waage, wenn {tie} der Arbeit in die Luft gehen. Ist es weniger, liegt mehr Leistung vorn; ist es mehr, weniger Luftwiderstand. Du bist fast genau dort; dann entscheiden der Start und die Länge der Fahrt.",
  whyOther:
    "Auf flacher Straße bei Windstille halten sich beide die Waage, wenn {tie} der Arbeit in die Luft gehen. Ist es weniger, liegt mehr Leistung vorn; ist es mehr, weniger Luftwiderstand. Auf dieser Fahrt sind es {share}, aber Berge, Wind oder der Start kehren es um.",
  whyNever: "Bei so ungleichen Änderungen gewinnt auf jeder flachen Straße dieselbe.",
  whyShare:
    "Anstiege, weiche Reifen und langsames Fahren drücken den Anteil und sprechen für Leistung. Tempo, glatte Reifen und Gegenwind heben ihn und sprechen für weniger Luftwiderstand. Probier oben im Satz einen Berg aus, oder ein Rekordtempo.",
  howGist: "Dieselbe Fahrt, je eine Zahl geändert, sodass sich aufhebt, was allen gemeinsam ist",
  howThreeRides:
    "Die Fahrt wird dreimal gerechnet: wie jetzt, mit mehr Leistung und mit weniger Luftwiderstand, auf derselben Straße am selben Tag. Was in allen dreien gleich unsicher ist, auch der Modellfehler, hebt sich im Unterschied auf. Darum kann ein Unterschied von Sekunden sicherer sein als die Fahrzeit, neben der er steht.",
  formulaForces:
    "Leistung am Pedal mal Wirkungsgrad des Antriebs gleich Geschwindigkeit mal Summe der Kräfte von Luft, Rollen, Steigung, Lagern und Trägheit",
  symbolPower: "Leistung am Pedal in W und der Anteil davon, der das Rad erreicht",
  symbolSpeed: "Geschwindigkeit über Grund und Gegenwind in m/s",
  symbolDensity: "Luftdichte in kg/m³, aus Temperatur, Druck und Feuchte",
  symbolCda: "Luftwiderstandsfläche in m²",
  symbolAir: "Geschwindigkeit der Luft am Fahrer in m/s",
  symbolMass: "Masse, und Masse mit dem Anteil der drehenden Räder, in kg",
  symbolCrr: "Rollwiderstandsbeiwert",
  symbolSlope: "Neigung der Straße",
  symbolBearings: "Widerstand der Lager in N",
  howTie:
    "Ohne Tabelle nach [Anströmwinkel|yaw] liegt der Luftwiderstand in Richtung des scheinbaren Windes. Auf flacher Straße bei Windstille geben zwei Zeilen den Luftanteil f, bei dem beide Änderungen zur selben Geschwindigkeit führen. Darin ist r das Verhältnis der neuen Geschwindigkeit zur alten. Der Anteil der zusätzlichen Leistung ist x, der des gesparten Luftwiderstands y:",
  formulaPower: "f mal r hoch drei plus eins minus f mal r gleich eins plus x",
  formulaDrag: "eins minus y mal f mal r hoch drei plus eins minus f mal r gleich eins",
  howEven:
    "Gleichmäßig am Limit wird die ganze Leistungskurve angehoben. Die gleichmäßige Leistung, die sie für genau die entstehende Zeit erlaubt, wird dann für jede Fahrt neu berechnet. Das ± ist eine Standardabweichung. Es folgt zuerst daraus, wie jede deiner Zahlen den Unterschied verschiebt, dann, sobald du nichts mehr änderst, aus {draws} Durchläufen mit allen.",
  dragLimit: "Deine {percent} lohnen sich nicht mehr, sobald sie dir etwa **{price}** Leistung nehmen.",
  lastsFor: "sie reicht für **{time}**",
  lastsNot: "sie reicht gar nicht",
  lastsAlways: "sie reicht, so lange du willst",
};
