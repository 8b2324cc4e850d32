// @ts-check
/** Mehr Leistung oder weniger Luftwiderstand? */

/** @satisfies {import("../books.d.ts").Texts<"power-or-drag">} */
export default {
  ask: "{distance} auf {course}, {effort}, bei einer CdA von {cda} und {day}: Was bringt mehr, {power} mehr Leistung oder {drag} weniger Luftwiderstand?",
  morePowerBy: "Mehr Leistung um",
  lessDragBy: "Weniger Luftwiderstand um",

  morePower: "mehr Leistung",
  lessDrag: "weniger Luftwiderstand",
  powerIsFaster: "{power} ist schneller um",
  dragIsFaster: "{drag} ist schneller um",
  morePowerFirst: "Mehr Leistung",
  lessDragFirst: "Weniger Luftwiderstand",
  twoAreLevel: "Beides ist gleichauf",
  spokenPower: "Mehr Leistung ist um {figure} schneller als weniger Luftwiderstand, plus oder minus {spread}",
  spokenDrag: "Weniger Luftwiderstand ist um {figure} schneller als mehr Leistung, plus oder minus {spread}",
  spokenLevel: "Mehr Leistung und weniger Luftwiderstand sind gleichauf.",
  rulerPower:
    "Von weniger Luftwiderstand links zu mehr Leistung rechts: Mehr Leistung liegt um {figure} vorn, in zwei von drei Fällen auf {spread} genau.",
  rulerDrag:
    "Von weniger Luftwiderstand links zu mehr Leistung rechts: Weniger Luftwiderstand liegt um {figure} vorn, in zwei von drei Fällen auf {spread} genau.",
  threeTimes: "Die drei Fahrzeiten",
  asYouAre: "Wie jetzt",
  caution:
    "**Bevor du tiefer gehst:** Sieh, wohin du fährst, und heb dir harte Belastungen und neue Haltungen für ruhige Straßen auf. Wettkampfregeln, Verkehrsregeln und der Rat von Bikefitter oder Arzt gehen vor Sekunden.",

  onePercent: "Ein Prozent CdA ist bei dir {watts} wert.",
  onePercentAnd: "Ein Prozent CdA ist bei dir {watts} wert; {percent} sind {more} wert.",
  airTakes: "Die Luft nimmt {share} deiner Arbeit;",
  airTakesAll: "Die Luft nimmt mehr als deine eigene Arbeit, den Rest zahlt der Berg;",
  tiesAt: "auf flacher Straße sind beide Änderungen gleichauf, wenn sie **{tie}** nimmt.",
  neverTies: "bei keinem Anteil wären diese beiden Änderungen gleichauf.",
  exchange: "Was das eine im anderen wert ist",
  sameTime: "Jede Zeile ist gleich viel Zeit wert",
  ratesHold:
    "Das sind die Tauschkurse an deinem eigenen Punkt, bei gleicher Leistung auf der ganzen Strecke: richtig für kleine Änderungen, bei großen etwas daneben.",
  change: "Änderung",
  areaOfCda: "{unit} CdA",
  percentOfCda: "{percent} CdA",
  ofCrr: "{amount} Crr",
  exchangeGist:
    "Ein Watt ist {area} wert. In Watt: {smallArea} sind {forArea} wert, ein Kilogramm {forKilogram}, {smallCrr} Rollwiderstand {forCrr}.",

  mapTitle: "Fahrzeit für jede Leistung und jede Luftwiderstandsfläche",
  mapX: "Leistung, {unit}",
  mapY: "Luftwiderstandsfläche CdA, {unit}",
  mapYou: "Du auf der Karte: links und rechts ändern die Leistung, oben und unten die Luftwiderstandsfläche",
  evenTrade: "{time}, ein gleicher Tausch",
  tradeRate: "{watts} gegen {area}",
  pointSpoken: "{power} bei {drag}: {time}",
  powerChange: "{percent} mehr Leistung",
  dragChange: "{percent} weniger Luftwiderstand",
  eachLine: "jede Linie ist eine Fahrzeit",
  mapDescription:
    "Die Fahrzeit sinkt nach rechts, mit mehr Leistung, und nach unten, mit weniger Luftwiderstandsfläche. Du stehst bei {power} und {drag}, {time}. {morePower}: {powerDiffers}; {lessDrag}: {dragDiffers}.",
  mapReading: "**{power}** und **{drag}**: **{time}**, {speed}.",
  dragRingEven: "Zieh den Ring, oder nimm die Pfeiltasten: seitwärts ändert sich deine kritische Leistung.",
  dashedRing: "Der gestrichelte Ring zeigt, wie gut deine Zahlen bekannt sind.",
  timesCaption: "Fahrzeit nach Leistung und Luftwiderstandsfläche",
  timesGist: "Fahrzeiten für runde Leistungen und Luftwiderstandsflächen um deine herum.",
  timesTrouble: "Um diese Werte herum gibt es keinen runden Bereich von Leistungen und Luftwiderstandsflächen.",

  takes: "Was beides kostet",
  takesGistClose: "Die Sekunden liegen nah beieinander. Der Preis tut es selten.",
  takesGist:
    "Training auf der einen Seite, eine tiefere Haltung auf der anderen, und was über beides veröffentlicht ist.",
  takesLeadClose: "Die Sekunden liegen nah beieinander. Was sie kosten, nicht:",
  takesLead: "Was beides kostet:",
  heldFor: "heute gibt deine Kurve das **{time}** lang her",
  heldNot: "heute gibt deine Kurve das gar nicht her",
  heldAlways: "heute gibt deine Kurve das schon her, so lange du willst",
  powerTakes:
    "{lead} {percent} mehr sind {watts}; {held}, und diese Fahrt würde {time} dauern. Veröffentlicht: Nach vier Wochen Intervalltraining waren sehr gut trainierte Fahrer über {trial} um {low} bis {high} besser.",
  powerTakesLead: "Mehr Leistung kostet Training.",
  dragTakes:
    "{lead} Veröffentlicht: Ein tieferer Lenker senkte bei fünf Fahrern die CdA um {cda} und ihre Leistung um {power}. Deine {percent} lohnen sich nicht mehr, sobald sie dich etwa **{price}** kosten.",
  dragTakesLead: "Weniger Luftwiderstand kostet eine tiefere Haltung.",
  closeCall:
    "Die Sekunden liegen nah beieinander, also entscheidet vor allem der Preis. Darum gewinnt die Haltung so oft, obwohl die Uhr beides fast gleichauf sieht.",
  oneFavoured: "Die Sekunden sprechen hier für das eine von beiden, aber sie sind nicht der Preis.",
  price:
    "Wer schon trainiert, muss für ein Zehntel mehr Leistung viel tun; ein tieferer Lenker ist an einem Nachmittag ausprobiert. Aber eine Haltung, die so viel Leistung nimmt, wie sie wert ist, oder die auf den letzten Kilometern verloren geht, ist nicht schnell: Miss deine Leistung darin, bevor du dich entscheidest.",
  ownCurve:
    "Bei {power} reicht deine Leistungskurve für {time}; bei {more} gilt: {held}. Für eine Fahrzeit wie deine erlaubt sie {sustainable}.",
  ownCurveLong:
    "Bei {power} reicht deine Leistungskurve so lange, wie diese Fahrt es braucht; bei {more} gilt: {held}. Für eine Fahrzeit wie deine erlaubt sie {sustainable}.",
  ownDrag:
    "Auf der anderen Seite sind {percent} weniger Luftwiderstand {lower} statt {area} und lohnen sich nicht mehr, sobald die neue Haltung etwa **{price}** kostet.",
  trainedRiders:
    "**Trainierte:** sehr gut trainierte Fahrer, vier Wochen Intervalltraining: über {trial} um {low} bis {high} besser.",
  newRiders:
    "**Anfänger:** keine an einer Quelle geprüfte Zahl; aus dem Gedächtnis {low} bis {high} in zwei Monaten. Wer neu anfängt, kommt eine Zeit lang billiger an mehr Leistung.",
  lowerBars: "**Tieferer Lenker:** {cda} weniger CdA und {power} weniger Leistung, bei fünf Fahrern.",
  torsoAngle:
    "**Rumpfwinkel:** {watts} weniger Leistung an der anaeroben Schwelle bei einem Rumpfwinkel von {angle}, bei elf Fahrern; die tiefe Haltung gewann trotzdem.",
  takesCaution:
    "Hartes Training und maximale Belastungen brauchen ein gesundes Herz und Erholung dazwischen; Änderungen der Haltung brauchen kleine Schritte und, wenn etwas schmerzt, den Rat von Bikefitter oder Physiotherapeut.",

  whyGistTie:
    "Die Luft nimmt auf dieser Straße {share} deiner Arbeit. Auf einer flachen sind beide Änderungen gleichauf, wenn sie {tie} nimmt.",
  whyGistNoTie:
    "Die Luft nimmt auf dieser Straße {share} deiner Arbeit. Bei keinem Anteil wären diese beiden Änderungen gleichauf.",
  whyGistDownTie:
    "Die Luft nimmt auf dieser Straße mehr als deine eigene Arbeit, den Rest zahlt der Berg. Auf einer flachen sind beide Änderungen gleichauf, wenn sie {tie} nimmt.",
  whyGistDownNoTie:
    "Die Luft nimmt auf dieser Straße mehr als deine eigene Arbeit, den Rest zahlt der Berg. Bei keinem Anteil wären diese beiden Änderungen gleichauf.",
  whyPower:
    "Mehr Leistung bezahlt alles, was dich bremst: {more} mehr für Luft, Reifen, Lager und Berg gleichermaßen. Weniger Luftwiderstand verbilligt nur die Luft, hier {share} deiner Arbeit. Aber dort hilft er mehr, als es scheint: Mit {less} weniger Luftwiderstand schieben dieselben Watt {cheaper} mehr Luft beiseite, denn was zählt, ist das Teilen durch {divisor}.",
  whyPowerDown:
    "Mehr Leistung bezahlt alles, was dich bremst: {more} mehr für Luft, Reifen, Lager und Berg gleichermaßen. Weniger Luftwiderstand verbilligt nur die Luft, die hier mehr als deine eigene Arbeit nimmt; den Rest zahlt der Berg. Aber dort hilft er mehr, als es scheint: Mit {less} weniger Luftwiderstand schieben dieselben Watt {cheaper} mehr Luft beiseite, denn was zählt, ist das Teilen durch {divisor}.",
  whyBelow:
    "Auf flacher Straße bei Windstille halten sich diese beiden Tatsachen die Waage, wenn die Luft {tie} der Arbeit nimmt. Nimmt sie weniger, liegt mehr Leistung vorn; nimmt sie mehr, weniger Luftwiderstand. Du bist darunter.",
  whyAbove:
    "Auf flacher Straße bei Windstille halten sich diese beiden Tatsachen die Waage, wenn die Luft {tie} der Arbeit nimmt. Nimmt sie weniger, liegt mehr Leistung vorn; nimmt sie mehr, weniger Luftwiderstand. Du bist darüber.",
  whyNear:
    "Auf flacher Straße bei Windstille halten sich diese beiden Tatsachen die Waage, wenn die Luft {tie} der Arbeit nimmt. Nimmt sie weniger, liegt mehr Leistung vorn; nimmt sie mehr, weniger Luftwiderstand. Du bist ungefähr gleichauf damit; dann entscheiden der Start und die Länge der Fahrt.",
  whyOther:
    "Auf flacher Straße bei Windstille halten sich diese beiden Tatsachen die Waage, wenn die Luft {tie} der Arbeit nimmt. Nimmt sie weniger, liegt mehr Leistung vorn; nimmt sie mehr, weniger Luftwiderstand. Auf dieser Fahrt nimmt sie {share}, aber Berge, Wind oder der Start kehren es um.",
  whyNever: "Bei so ungleichen Änderungen gewinnt auf jeder flachen Straße dieselbe.",
  whyShare:
    "Anstiege, weiche Reifen und langsames Fahren drücken den Anteil und sprechen für Leistung. Tempo, glatte Reifen und Gegenwind heben ihn und sprechen für weniger Luftwiderstand. Probier oben im Satz einen Berg aus, oder ein Rekordtempo.",
  howGist: "Dieselbe Fahrt, je eine Zahl geändert, sodass sich aufhebt, was allen gemeinsam ist.",
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
    "Ohne Tabelle nach Anströmwinkel liegt der Luftwiderstand in Richtung des scheinbaren Windes. Auf flacher Straße bei Windstille folgt der Luftanteil f, bei dem beide Änderungen dieselbe Geschwindigkeit geben, aus zwei Zeilen; r ist das Verhältnis der neuen Geschwindigkeit zur alten, x das anteilige Mehr an Leistung und y das anteilige Weniger an Luftwiderstand:",
  formulaPower: "f mal r hoch drei plus eins minus f mal r gleich eins plus x",
  formulaDrag: "eins minus y mal f mal r hoch drei plus eins minus f mal r gleich eins",
  howEven:
    "Gleichmäßig am Limit wird die ganze Leistungskurve angehoben, und die gleichmäßige Leistung, die sie für genau die entstehende Zeit erlaubt, wird für jede Fahrt neu berechnet. Das ± ist eine Standardabweichung: zuerst daraus, wie jede deiner Zahlen den Unterschied verschiebt, dann, sobald du nichts mehr änderst, gezählt in {draws} Ziehungen aus allen zusammen.",
};
