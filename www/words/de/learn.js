// @ts-check
/** Die geführte Geschichte für Neulinge. */

/** @satisfies {import("../books.d.ts").Texts<"learn">} */
export default {
  lead: "Vielleicht hast du gehört, dass es so ist. Hier sind acht Dinge zum Ausprobieren, jedes mit einer oder zwei Zahlen zum Ändern, und ein Fahrer, dem das nichts ausmacht. Er und sein Rad sind typisch, zusammen {mass}, auf flacher Straße bei Windstille, bis du etwas anderes sagst. Eine Zahl, die du in einem Schritt änderst, gilt in allen, und jeder Wert wird dabei neu gerechnet.",
  coda: "Die Geschichte lässt die typischen Zahlen der Seite, wie sie sind. Masse, Reifen, Lager und kritische Leistung sind aus dem Gedächtnis, die anderen veröffentlicht oder angenommen, wie es unter „{yourNumbers}“ neben jeder steht.",
  tryIt: "**Probier es.** {what}",
  youChanged: "**Was du geändert hast.**",

  powerAxis: "Leistung, {unit}",
  areaAxis: "Luftwiderstandsfläche CdA, {unit}",
  speedAxis: "Geschwindigkeit, {unit}",
  pedalsAxis: "Leistung am Pedal, {unit}",
  morePowerBy: "Mehr Leistung um",
  lessDragBy: "Weniger Luftwiderstand um",
  morePower: "{percent} mehr Leistung",
  lessDrag: "{percent} weniger Luftwiderstand",

  wallTitle: "1. Was die Luft nimmt",
  wallAsk:
    "Jemand fährt auf flacher Straße mit {speed}, bei Windstille. Was braucht es, um diese Luft beiseitezuschieben?",
  wallSpeed: "Geschwindigkeit bei Windstille",
  wallTry:
    "Stell den Ring auf Bummeltempo, dann auf Renntempo, oder tipp oben eine Geschwindigkeit ein: Sieh, wie spät die Kurve ansteigt, und wie steil.",
  wallSays:
    "Bei **{speed}** gehen {watts} in die Luft. Bei doppeltem Tempo wären es {twice}, {times}-mal so viel; und schon ein Zehntel mehr Tempo braucht {tenth} mehr. Die Kraft der Luft wächst mit dem Quadrat der Geschwindigkeit, und du triffst sie auch noch so viel schneller. Darum wächst die Leistung mit der dritten Potenz.",
  wallSince:
    "Du bist von {began} auf {speed} gegangen: Was in die Luft geht, änderte sich von {beganWatts} auf {watts}.",
  wallChart: "Leistung, die bei jeder Geschwindigkeit in die Luft geht",
  wallAxis: "Leistung in die Luft, {unit}",
  wallHandle: "Das Tempo des Fahrers: links und rechts ändern es",
  wallRead: "Die Leistung in die Luft bei einer Geschwindigkeit ablesen",
  wallDescription: "Die Leistung, die in die Luft geht, steigt immer steiler an. Bei {speed} sind es {watts}.",
  wallSeries: "in die Luft",
  wallSpoken: "{speed}: {watts} gehen in die Luft",
  wallReading: "Bei **{speed}** gehen {watts} in die Luft.",

  wattsTitle: "2. Wohin die Watt gehen",
  wattsAsk:
    "Mit {power} und einer [Luftwiderstandsfläche|cda] von {drag}: Wie schnell ist das, und wohin gehen die Watt?",
  wattsPower: "Leistung am Pedal",
  wattsDrag: "Luftwiderstandsfläche, CdA",
  wattsTry:
    "Gib dem Fahrer mehr Watt und sieh, in welche Schicht sie gehen. Gib ihm dann die Luftwiderstandsfläche von jemandem, der aufrecht sitzt, {area}.",
  wattsSays:
    "{power} bringen **{speed}**. Von diesen Watt gehen {air} in die Luft, {tyres} in die Reifen, {bearings} in die Lager und {drivetrain} in den Antrieb. Die Luft macht {share} des Fahrwiderstands aus, und umso mehr, je schneller man fährt: Die nächsten {ten} bringen nur {gain}. Weniger Luftwiderstandsfläche macht die dicke Schicht dünner. Mehr Leistung bringt dich nur weiter an ihr hinauf.",
  wattsSince: "Der Fahrer fuhr {began}, mit {beganWatts} und {beganArea}; deiner fährt {speed}.",
  wattsChart: "Wohin die Watt des Fahrers bei jeder Geschwindigkeit gehen",
  wattsHandle: "Der Fahrer: links und rechts ändern die Watt und mit ihnen das Tempo",
  wattsRead: "Ablesen, wohin die Watt bei einer Geschwindigkeit gehen",
  wattsDescription:
    "Die Leistung am Pedal ist nach Geschwindigkeit gestapelt: unten die Luft, dann Reifen, Lager und Antrieb. Bei {speed} sind es {power}.",
  air: "Luft",
  rolling: "Reifen",
  bearings: "Lager",
  drivetrain: "Antrieb",
  inAll: "zusammen",
  wattsSpoken: "{power} bringen {speed}",
  wattsReading: "Bei **{speed}** sind es zusammen {power}, davon {air} für die Luft.",

  longTitle: "3. Zehn Prozent mehr, wie lange?",
  longAsk: "Der Fahrer kann {power} eine Zeit lang halten. Und {more} mehr?",
  longPower: "Leistung, die gehalten wird",
  longTry:
    "Beweg den Ring die Kurve entlang. Wo sie steil ist, nimmt etwas mehr Leistung wenig Zeit; wo sie flach ist, das meiste davon. Jeder gleiche Abstand am Fuß des Diagramms macht die Zeit gleich viele Male so lang.",
  longSays: "Die Kurve dieses Fahrers gibt {power} {held} her und {percent} mehr, {more}, {moreHeld}.",
  longShare: "Das sind {share} der Zeit.",
  longNoSwitch:
    "„Zehn Prozent mehr Leistung“ wählt man also nicht einfach: Für dieselbe Distanz braucht es eine andere Kurve, und die braucht Training. In einer Studie waren sehr gut trainierte Fahrer nach vier Wochen Intervalltraining über {trial} um {low} bis {high} besser.",
  notAtAll: "gar nicht",
  longerThanRaces: "länger als jedes Rennen",
  heldFor: "**{time}** lang",
  longSince: "Der Fahrer begann mit {began}, {beganHeld}; deiner hat {watts}, {held}.",
  longTypical:
    "Die Kurve ist eine typische, nicht deine: **{cp} [kritische Leistung|cp]** sind aus dem Gedächtnis, **{wPrime} [W′|wPrime]** liegen nahe dem Mittel veröffentlichter Tests. Nach mehr als einer halben Stunde fällt sie so, wie es die einer trainierten Gruppe tat. Sie gilt für ausgeruhte Fahrer, die gut versorgt und nicht überhitzt sind.",
  longCaution:
    "Die eigene Kurve zu finden braucht maximale Belastungen. Sie sind für gesunde, regelmäßig aktive Fahrer; hol dir im Zweifel zuerst ärztlichen Rat, und teste abseits des Verkehrs.",
  longChart: "Leistung, die der Fahrer für jede Dauer halten kann",
  longAxis: "gehaltene Dauer",
  longHandle: "Gehaltene Dauer: links und rechts ändern sie und mit ihr die Leistung",
  longRead: "Die Leistung für eine Dauer ablesen",
  longDescription:
    "Die Leistung, die sich halten lässt, sinkt mit der Dauer, anfangs steil. {power} lassen sich {time} lang halten.",
  longDescriptionBeyond:
    "Die Leistung, die sich halten lässt, sinkt mit der Dauer, anfangs steil. {power} lassen sich länger halten, als dieses Diagramm reicht.",
  longSeries: "der Fahrer kann halten",
  longMorePoint: "{percent} mehr, {time}",
  longSpoken: "{power}, {time} lang",
  longReading: "Der Fahrer hält {power} **{time}** lang.",
  minutes: "{count} min",
  hours: "{count} h",

  tenTitle: "4. Zehn gegen zehn",
  tenAsk: "Was bringt mehr, {more} mehr Leistung oder {less} weniger Luftwiderstand?",
  tenTry:
    "Zieh den Ring zu einem stärkeren, dann zu einem schwächeren Fahrer und sieh, welcher Pfeil mehr Linien kreuzt. Oder frag nach {percent} weniger Luftwiderstand gegen {percent} mehr Leistung.",
  tenSays:
    "Für {distance} braucht der Fahrer {time}. Mit mehr Leistung ist er {power}, mit weniger Luftwiderstand {drag}: {ahead}.",
  tenTooMuch:
    "**Mehr, als dieser Fahrer halten kann:** Die Kurve aus Schritt 3 erlaubt über {time} nur {sustainable}, nicht {power}. Die Zeiten zeigen, was die beiden Änderungen jemandem brächten, der das durchhält.",
  tenTie:
    "Auf flacher Straße bei Windstille sind beide Änderungen gleich viel wert, wenn **{tie}** der Arbeit in die Luft gehen; hier sind es {share}.",
  tenNoTie: "Bei keinem Luftanteil wären diese beiden Änderungen gleich viel wert.",
  tenMirror:
    "Wegnehmen ist ein größerer Schritt als Dazugeben: Der Schritt, der zu {percent} mehr passt, ist {mirror} weniger. Dagegen ist mehr Leistung {differs}.",
  powerAhead: "mehr Leistung liegt um {figure} vorn",
  dragAhead: "weniger Luftwiderstand liegt um {figure} vorn",
  twoLevel: "beides ist gleich schnell",
  tenSince:
    "Am Anfang war es so: {began}, und {beganShare} der Arbeit für die Luft. Jetzt ist es so: {ahead}, und {share} für die Luft.",
  tenDoesIt:
    "**Ist Position also mehr wert als Leistung?** Nach der Uhr liegen zehn Prozent vom einen und vom anderen auf flacher Straße nah beieinander. Verschieden ist, was sie verlangen. Ein Zehntel mehr Leistung verlangt Training. Ein Zehntel weniger Luftwiderstand verlangt vielleicht nur einen tieferen Lenker, und etwas von deiner Leistung.",
  tenLower:
    "In einer Studie senkte ein tieferer Lenker bei fünf Fahrern den CdA-Wert um {cda} und ihre Leistung um {power}. Beide Mittelwerte zugleich brächten den Fahrer dieser Geschichte von **{speed}** auf **{lower}**.",
  tenTorso:
    "Bei elf anderen nahm ein tiefer Rumpf {watts} an der anaeroben Schwelle, ab der eine Belastung nicht mehr gleichmäßig zu halten ist. Die tiefe Position gewann trotzdem. Von Fahrer zu Fahrer schwankt es so stark, wie diese Mittelwerte groß sind; nur ein eigener Test sagt es dir.",
  tenCaution:
    "Ein tief gehaltener Kopf sieht die Straße nicht. Probier Positionen abseits des Verkehrs und in kleinen Schritten; hol dir bei allem, was schmerzt, Rat beim Bikefitting oder ärztlichen Rat. Wettkampfregeln und Verkehrsregeln gehen vor.",
  tenChart: "Die Fahrzeit des Fahrers für jede Leistung und jede Luftwiderstandsfläche",
  tenHandle: "Der Fahrer auf der Karte: links und rechts ändern die Leistung, oben und unten die Luftwiderstandsfläche",
  theRider: "der Fahrer",
  pointSpoken: "{power} bei {drag}: {time}",
  eachLine: "jede Linie ist eine Fahrzeit",
  tenDescription:
    "Die Fahrzeit sinkt nach rechts, mit mehr Leistung, und nach unten, mit weniger Luftwiderstandsfläche. Der Fahrer steht bei {power} und {drag}, {time}.",
  tenReading: "{power} und {drag} ergeben **{time}**.",

  lostTitle: "5. Eine Position, die am Ende verloren geht",
  lostAsk:
    "Der Fahrer nimmt eine Position mit {less} weniger Luftwiderstand, hält sie {begins} lang, wird dann müde und verliert sie. Hat es sich gelohnt?",
  lostBegins: "Wann die tiefe Position nachzulassen beginnt",
  lostLess: "Um wie viel weniger Luftwiderstand die tiefe Position hat",
  lostTry:
    "Finde den Augenblick, in dem beide gleich schnell sind: Eine Minute früher verliert die tiefe, eine Minute später gewinnt sie.",
  lostSays:
    "Mit {low} am Anfang und bis zu {tired} am Ende ist die tiefe Position {differs} {spread} gegenüber {kept}, die bis zum Schluss gehalten werden. Bis zum Ziel gehalten wäre sie {held}.",
  lostTie: "Beide sind gleich schnell, wenn sie {time} nach dem Start nachzulassen beginnt.",
  lostNoTie: "Es gibt keinen Augenblick, in dem beide gleich schnell sind.",
  lostMoral:
    "Die schnellste Position ist nicht die tiefste, sondern die tiefste, die du kurz vor dem Ziel noch halten kannst.",
  lostSince: "Am Anfang war die tiefe Position {began}; jetzt ist sie {differs}.",
  lostAssumed:
    "Wie der Luftwiderstand mit der Müdigkeit steigt, ist, soweit wir sehen, nicht veröffentlicht. **Angenommen** ist hier, dass die Position in fünfundzwanzig Minuten verloren geht. Am Ende ist der Luftwiderstand ein Zehntel größer als in der, die zu halten gewesen wäre. Fragst du nach deiner eigenen Fahrt, sagst du, wie es bei dir geht. Wie sicher der Unterschied ist, sagt das [±|sd].",
  lostChart: "Die Luftwiderstandsfläche des Fahrers über die Fahrt",
  lostAxis: "gefahrene Zeit, {unit}",
  lostHandle: "Wann die tiefe Position nachzulassen beginnt: links und rechts ändern es",
  lostRead: "Beide Luftwiderstandsflächen über die Fahrt ablesen",
  lostDescription:
    "Die gehaltene Position bleibt bei {kept}. Die tiefe startet bei {low} und beginnt nach {time} nachzulassen.",
  keptSeries: "die gehaltene",
  lowSeries: "die tiefe",
  levelAt: "gleich nach {time}",
  lostSpoken: "lässt nach {time} nach: {differs}",
  lostReading: "Sie beginnt nach {time} nachzulassen: **{differs}**.",

  windTitle: "6. Bergauf und gegen den Wind",
  windAsk:
    "Bei einer Steigung von {grade} und {wind} Gegenwind: Was ist ein Prozent Leistung oder Luftwiderstand wert?",
  windSlope: "Steigung der Straße",
  windAgainst: "Gegenwind",
  windTry:
    "Fahr einen Anstieg von {climb} hinauf, dann ein sanftes Gefälle hinunter. Komm dann ins Flache zurück und lass den Wind wehen.",
  windSays:
    "Bei {speed} bringt ein Prozent mehr Leistung {power}, ein Prozent weniger Luftwiderstandsfläche {drag}: das {ratio}-Fache.",
  moreSpeed: "{percent} mehr Tempo",
  windDragWins:
    "Weniger Luftwiderstand ist mehr wert: Das Gefälle gibt zurück, was die Reifen nehmen, und es bleibt nur die Luft.",
  windNear: "Das meiste des Fahrwiderstands ist Luft, also liegen beide nah beieinander.",
  windPowerWins:
    "Ein guter Teil des Fahrwiderstands ist hier Höhe oder Reifen, und davon erspart eine tiefere Position nichts: Leistung ist mehr wert.",
  windStill: "Bei Windstille wären es {power} und {drag}.",
  windMoral:
    "Die Luftwiderstandsfläche zählt am meisten, wo die Straße flach ist oder fällt, die Leistung am meisten, wo sie steigt.",
  windSince:
    "Im Flachen bei Windstille waren es {beganPower} für Leistung und {beganDrag} für Luftwiderstand; hier sind es {power} und {drag}.",
  windCaution:
    "Bergab sprechen die Zahlen für eine tiefe Position; die Straße vielleicht nicht. Gefälle, Kurven, Verkehr und Böen bestimmen dort Position und Tempo, kein Diagramm.",
  windChart: "Was ein Prozent Leistung oder Luftwiderstandsfläche bei jeder Steigung wert ist",
  slopeAxis: "Steigung, {unit}",
  worthAxis: "was ein Prozent wert ist, {unit} der Geschwindigkeit",
  windHandle: "Die Steigung: links und rechts ändern sie",
  windRead: "Ablesen, was ein Prozent bei einer Steigung wert ist",
  windDescription:
    "Ein Prozent mehr Leistung ist umso mehr wert, je steiler die Straße; ein Prozent weniger Luftwiderstand umso weniger. Bei {slope} sind es {power} und {drag}.",
  powerSeries: "mehr Leistung",
  dragSeries: "weniger Luftwiderstand",
  windSpoken: "{slope}: Leistung {power}, Luftwiderstand {drag}",
  windReading: "Bei {slope} sind es {power} für Leistung und {drag} für Luftwiderstand.",

  pushTitle: "7. Wo du drückst",
  pushAsk:
    "Eine ebene Straße hat in der Mitte einen Anstieg von {grade} und führt ebenso wieder hinunter. Wo soll der Fahrer drücken?",
  pushGrade: "Steigung des Anstiegs",
  pushTry: "Mach den Anstieg steiler, dann fast flach: Sieh, wie viel zu gewinnen ist.",
  pushEven: "Über {distance} dauert es mit durchgehend {power} **{time}**.",
  pushPlan:
    "Ein Plan zum Fahren: {cues}. Damit ist er **{faster}**, {lost} hinter dem schnellsten Plan überhaupt, und am Ende nicht müder.",
  pushCueStart: "{power} vom Start an",
  pushCue: "{power} ab {distance}",
  pushFlat: "Auf einer so flachen Straße ist gleichmäßige Leistung der Plan.",
  pushMoral:
    "Drück, wo die Straße langsam ist, und nimm heraus, wo sie schnell ist. Bei wenig Tempo nimmt die Luft weniger von jedem Watt, also spart jedes mehr Zeit.",
  pushSince: "Am Anfang war der Plan {began}; jetzt ist er {now}.",
  pushAssumed:
    "Drücken verbraucht [W′|wPrime], und Herausnehmen bringt es zurück, wie ein veröffentlichtes Modell es sagt; Fahrer unterscheiden sich. Straße und Fahrer sind erfunden.",
  pushCaution:
    "Ein Plan sagt, wie viel Kraft, nie wie schnell bergab oder in der Kurve: Dort entscheiden Verkehr, Straße und Sicht.",
  pushChart: "Was ein Plan gegenüber gleichmäßiger Leistung an jedem Anstieg bringt",
  pushAxis: "Steigung des Anstiegs, {unit}",
  pushGainAxis: "schneller um, s",
  pushHandle: "Der Anstieg: links und rechts ändern, wie steil er ist",
  pushRead: "Ablesen, was ein Plan an einem Anstieg bringt",
  pushDescription:
    "Je steiler der Anstieg, desto mehr bringt ein Plan gegenüber gleichmäßiger Leistung. Bei {slope} ist er {faster}.",
  pushSeries: "ein Plan aus vier Leistungen",
  pushFastest: "der schnellste Plan",
  pushSpoken: "{slope}: {faster}",
  pushReading: "An einem Anstieg von {slope} ist der Plan {faster}.",

  threeTitle: "8. Drei Änderungen, ein Budget",
  threeAsk:
    "Ein tieferer Lenker vom Bikefitter kostet 100, ein eng anliegender Anzug 150, schnellere Reifen 90. Mit {budget} zum Ausgeben: Was zuerst?",
  threeBudget: "Geld zum Ausgeben",
  threeTry: "Gib {budget} aus, dann immer weniger, und sieh, was zuerst wegfällt.",
  threeSays: "Über {distance} ist am besten: {names}; {figure}, die Chance mitgezählt.",
  threeNothing: "Über {distance} reicht dieses Budget für keines der drei.",
  threeMost: "Für sich allein spart mit der Chance, dass es wirkt, am meisten: {first}, {average}.",
  threeMoral:
    "Zuerst kommt nicht, was am meisten spart, wenn es wirkt. Zuerst kommt, was **für seinen Preis** am meisten spart, die Chance mitgezählt.",
  threeSince: "Am Anfang der Geschichte war es: {names}.",
  threeNone: "nichts davon",
  threeFront: "eine tiefere Front",
  threeSuit: "der Anzug",
  threeTyres: "Reifen",
  threeCosts: "{name}, {money}",
  threeAssumed:
    "Die Wirkung des Anzugs ist veröffentlicht; die des tieferen Lenkers ist ein Drittel des Veröffentlichten, die der Reifen ist aus dem Gedächtnis. Jede Chance und jeder Preis ist **angenommen**: Setz unter „{question}“ deine eigenen ein.",
  threeCaution:
    "Ein tieferer Lenker will kleine Schritte, den Blick auf der Straße und ein Bikefitting, wenn etwas schmerzt. Probier ihn abseits des Verkehrs.",
  threeChart: "Was jede von drei Änderungen spart",
  threeLegend:
    "Punkt: Ersparnis mit der Chance, dass sie eintritt. Ring: Ersparnis, wenn es wirkt; in zwei von drei Fällen liegt die Wahrheit auf der Linie. Haken: was das Budget kaufen sollte",
  threeAxis: "gespart über {distance}",
  threeDescription:
    "Die Chance mitgezählt, spart am meisten: {first}, {average}. Was das Budget kaufen sollte, ist angehakt.",

  endTitle: "Jetzt deine eigene Fahrt",
  askChanged: "Für meine eigene Fahrt fragen, mit dem, was ich geändert habe",
  askMeasure: "Meinen Luftwiderstand messen",
  askOwn: "Für meine eigene Fahrt fragen",
  untouched:
    "Bis hierher hat nichts davon deine eigenen Zahlen berührt. Wenn du etwas mitnimmst, nimmt „{undo}“ es zurück. Die Steigung, der Wind und die Position, die nachlässt, haben ihren Platz unter „{yourNumbers}“ und in „{holdOrFade}“.",
  taken: "Was du in der Geschichte geändert hast, steht jetzt in deinen eigenen Zahlen. „{undo}“ nimmt es zurück.",
  changedCda: "ein CdA-Wert von {area}",
  bringAlong:
    "Du hast geändert: {list}. Nimm das zu „{question}“ mit, oder öffne die Frage mit den Zahlen, die dort stehen.",
  notYou:
    "Der Fahrer dieser Geschichte bist nicht du. „{question}“ fragt dasselbe für deine eigene Leistung, Position, Strecke und deinen Tag, und sagt, wie sicher die Antwort ist.",
  sumTitle: "Kurz gesagt: Position oder Leistung?",
  sumPosition: "Die Position gewinnt",
  sumPositionWhen:
    "Die Straße ist flach oder fällt, du fährst schnell oder gegen den Wind, und du hältst die Position ohne viel Leistungsverlust.",
  sumPower: "Die Leistung gewinnt",
  sumPowerWhen:
    "Die Straße steigt, du fährst langsam, oder die tiefere Position nimmt zu viel Leistung oder lässt zu früh nach.",
  sumLevel: "Beides ist gleich",
  sumLevelWhen:
    "Es sind zehn Prozent von beidem, auf flacher Straße bei Windstille: Dann wähl, was du leichter erreichst.",
  sumWorth:
    "Mit den Zahlen, wie sie jetzt sind, ist dieser Fahrer über {distance} mit {lessDrag} {drag}, mit {morePower} {power}. So viel Luftwiderstand ist bei ihm etwa {watts} wert.",
  sumWho: "Was",
  sumWhen: "Wann",
};
