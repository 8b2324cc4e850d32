// @ts-check
/** Die geführte Geschichte für Neulinge. */

/** @satisfies {import("../books.d.ts").Texts<"learn">} */
export default {
  lead: "Vielleicht hast du gehört, dass es so ist. Hier sind sieben Dinge zum Ausprobieren, jedes mit einer oder zwei Zahlen zum Ändern, und ein Fahrer, dem das nichts ausmacht. Er und sein Rad sind typisch, zusammen {mass}, auf flacher Straße bei Windstille, bis du etwas anderes sagst. Eine Zahl, die du in einem Schritt änderst, gilt in allen, und jeder Wert wird dabei neu gerechnet.",
  coda: "Was die Geschichte nicht ändert, sind die typischen Zahlen der Seite: Masse, Reifen, Lager und kritische Leistung aus dem Gedächtnis, die anderen veröffentlicht oder angenommen, wie es unter „{yourNumbers}“ neben jeder steht.",
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

  wallTitle: "1. Die Wand aus Luft",
  wallAsk: "Jemand fährt auf flacher Straße mit {speed}, bei Windstille. Was kostet es, diese Luft beiseitezuschieben?",
  wallSpeed: "Geschwindigkeit bei Windstille",
  wallTry:
    "Stell den Ring auf Bummeltempo, dann auf Renntempo, oder tipp oben eine Geschwindigkeit ein: Sieh, wie spät die Kurve ansteigt, und wie steil.",
  wallSays:
    "Bei **{speed}** nimmt die Luft {watts}. Bei doppeltem Tempo nähme sie {twice}, {times}-mal so viel; und schon ein Zehntel mehr Tempo nimmt {tenth} mehr. Der Druck der Luft wächst mit dem Quadrat der Geschwindigkeit, und du triffst sie auch noch so viel schneller: Darum wächst die Leistung mit der dritten Potenz.",
  wallSince: "Du bist von {began} auf {speed} gegangen: Was die Luft nimmt, ging von {beganWatts} auf {watts}.",
  wallChart: "Leistung, die bei jeder Geschwindigkeit in die Luft geht",
  wallAxis: "Leistung in die Luft, {unit}",
  wallHandle: "Das Tempo des Fahrers: links und rechts ändern es",
  wallRead: "Die Leistung in die Luft bei einer Geschwindigkeit ablesen",
  wallDescription: "Die Leistung, die in die Luft geht, steigt immer steiler an. Bei {speed} sind es {watts}.",
  wallSeries: "die Luft nimmt",
  wallSpoken: "{speed}: Die Luft nimmt {watts}",
  wallReading: "Bei **{speed}** nimmt die Luft {watts}.",

  wattsTitle: "2. Wohin die Watt gehen",
  wattsAsk: "Mit {power} und einer Luftwiderstandsfläche von {drag}: Wie schnell ist das, und wohin gehen die Watt?",
  wattsPower: "Leistung am Pedal",
  wattsDrag: "Luftwiderstandsfläche, CdA",
  wattsTry:
    "Gib dem Fahrer mehr Watt und sieh, welche Schicht sie nimmt. Gib ihm dann die Luftwiderstandsfläche von jemandem, der aufrecht sitzt, {area}.",
  wattsSays:
    "{power} bringen **{speed}**. Von diesen Watt gehen {air} in die Luft, {tyres} in die Reifen, {bearings} in die Lager und {drivetrain} in den Antrieb. Die Luft macht {share} des Fahrwiderstands aus, und umso mehr, je schneller man fährt: Die nächsten {ten} bringen nur {gain}. Weniger Luftwiderstandsfläche macht die dicke Schicht dünner. Mehr Leistung klettert an ihr hoch.",
  wattsSince: "Der Fahrer fuhr {began}, mit {beganWatts} und {beganArea}; deiner fährt {speed}.",
  wattsChart: "Wohin die Watt des Fahrers bei jeder Geschwindigkeit gehen",
  wattsHandle: "Der Fahrer: links und rechts ändern die Watt und mit ihnen das Tempo",
  wattsRead: "Ablesen, wohin die Watt bei einer Geschwindigkeit gehen",
  wattsDescription:
    "Leistung am Pedal nach Geschwindigkeit, gestapelt: unten die Luft, dann Reifen, Lager und Antrieb. Bei {speed} sind es {power}.",
  air: "Luft",
  rolling: "Reifen",
  bearings: "Lager",
  drivetrain: "Antrieb",
  inAll: "zusammen",
  wattsSpoken: "{power} bringen {speed}",
  wattsReading: "Bei **{speed}**: {power} zusammen, {air} in die Luft.",

  longTitle: "3. Zehn Prozent mehr, wie lange?",
  longAsk: "Der Fahrer kann {power} eine Zeit lang halten. Und {more} mehr?",
  longPower: "Leistung, die gehalten wird",
  longTry:
    "Beweg den Ring die Kurve entlang. Wo sie steil ist, kostet etwas mehr Leistung wenig Zeit; wo sie flach ist, das meiste davon. Gleiche Abstände am Fuß des Diagramms heißen: so viel Mal so lang, nicht so viele Minuten länger.",
  longSays: "Die Kurve dieses Fahrers gibt {power} {held} her und {percent} mehr, {more}, {moreHeld}.",
  longShare: "Das sind {share} der Zeit.",
  longNoSwitch:
    "„Zehn Prozent mehr Leistung“ ist also kein Schalter: Für dieselbe Strecke braucht es eine andere Kurve, und die braucht Training. Veröffentlicht: Nach vier Wochen Intervalltraining waren sehr gut trainierte Fahrer über {trial} um {low} bis {high} besser.",
  notAtAll: "gar nicht",
  longerThanRaces: "länger als jedes Rennen",
  heldFor: "**{time}** lang",
  longSince: "Der Fahrer begann mit {began}, {beganHeld}; deiner hat {watts}, {held}.",
  longTypical:
    "Die Kurve ist eine typische, nicht deine: **{cp} kritische Leistung** sind aus dem Gedächtnis, **{wPrime} W′** liegen nahe dem Mittel veröffentlichter Tests. Nach mehr als einer halben Stunde fällt sie so, wie es die einer trainierten Gruppe tat. Nur für ausgeruhte Fahrer, die gut versorgt und nicht überhitzt sind.",
  longCaution:
    "Die eigene Kurve zu finden braucht maximale Belastungen. Sie sind für gesunde, regelmäßig aktive Fahrer; frag im Zweifel zuerst einen Arzt, und teste abseits vom Verkehr.",
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
  longReading: "{power}, **{time}** lang.",
  minutes: "{count} min",
  hours: "{count} h",

  tenTitle: "4. Zehn gegen zehn",
  tenAsk: "Was bringt mehr, {more} mehr Leistung oder {less} weniger Luftwiderstand?",
  tenTry:
    "Zieh den Ring zu einem stärkeren, dann zu einem schwächeren Fahrer und sieh, welcher Pfeil mehr Linien kreuzt. Oder frag nach {percent} weniger Luftwiderstand gegen {percent} mehr Leistung.",
  tenSays: "Für {distance} braucht der Fahrer {time}. Mehr Leistung: {power}; weniger Luftwiderstand: {drag}; {ahead}.",
  tenTooMuch:
    "**Mehr, als dieser Fahrer halten kann:** Die Kurve aus Schritt 3 erlaubt über {time} nur {sustainable}, nicht {power}. Die Zeiten zeigen, was die beiden Änderungen jemandem brächten, der das durchhält.",
  tenTie:
    "Auf flacher Straße bei Windstille sind beide Änderungen gleichauf, wenn die Luft **{tie}** der Arbeit nimmt; hier nimmt sie {share}.",
  tenNoTie: "Bei keinem Luftanteil wären diese beiden Änderungen gleichauf.",
  tenMirror:
    "Wegnehmen ist ein größerer Schritt als Dazugeben: Das Spiegelbild von {percent} mehr ist {mirror} weniger, und dagegen ist mehr Leistung {differs}.",
  powerAhead: "mehr Leistung liegt um {figure} vorn",
  dragAhead: "weniger Luftwiderstand liegt um {figure} vorn",
  twoLevel: "beides ist gleichauf",
  tenSince: "Am Anfang: {began}, und {beganShare} der Arbeit für die Luft. Jetzt: {ahead}, und {share} für die Luft.",
  tenDoesIt:
    "**Schlägt also die Haltung die Leistung?** Nach der Uhr liegen zehn Prozent vom einen und vom anderen auf flacher Straße nah beieinander. Verschieden ist, was sie kosten. Ein Zehntel mehr Leistung ist Training; ein Zehntel weniger Luftwiderstand ist vielleicht ein tieferer Lenker, und was der dich an Leistung kostet.",
  tenLower:
    "Veröffentlicht: Ein tieferer Lenker senkte bei fünf Fahrern die CdA um {cda} und ihre Leistung um {power}. Beide Mittelwerte zugleich brächten den Fahrer dieser Geschichte von **{speed}** auf **{lower}**.",
  tenTorso:
    "Bei elf anderen kostete ein tiefer Rumpf {watts} an der anaeroben Schwelle, und die tiefe Haltung gewann trotzdem. Fahrer unterscheiden sich so sehr wie die Mittelwerte; nur ein eigener Test sagt es dir.",
  tenCaution:
    "Ein tief gehaltener Kopf sieht die Straße nicht. Probier Haltungen abseits vom Verkehr und in kleinen Schritten; frag bei allem, was schmerzt, Bikefitter oder Arzt. Wettkampfregeln und Verkehrsregeln gehen vor.",
  tenChart: "Die Fahrzeit des Fahrers für jede Leistung und jede Luftwiderstandsfläche",
  tenHandle: "Der Fahrer auf der Karte: links und rechts ändern die Leistung, oben und unten die Luftwiderstandsfläche",
  theRider: "der Fahrer",
  pointSpoken: "{power} bei {drag}: {time}",
  eachLine: "jede Linie ist eine Fahrzeit",
  tenDescription:
    "Die Fahrzeit sinkt nach rechts, mit mehr Leistung, und nach unten, mit weniger Luftwiderstandsfläche. Der Fahrer steht bei {power} und {drag}, {time}.",
  tenReading: "{power} und {drag}: **{time}**.",

  lostTitle: "5. Eine Haltung, die am Ende verloren geht",
  lostAsk:
    "Der Fahrer geht um {less} tiefer. Das hält {begins} lang, dann wird er müde, und es geht verloren. Hat es sich gelohnt?",
  lostBegins: "Wann die tiefe Haltung verloren zu gehen beginnt",
  lostLess: "Um wie viel weniger Luftwiderstand die tiefe Haltung hat",
  lostTry:
    "Finde den Augenblick, in dem es gleichauf ist: Eine Minute früher verliert sie, eine Minute später gewinnt sie.",
  lostSays:
    "Mit {low} am Anfang und bis zu {tired} am Ende ist die tiefe Haltung {differs} {spread} gegenüber {kept}, die bis zum Schluss gehalten werden. Bis zum Ziel gehalten wäre sie {held}.",
  lostTie: "Beide sind gleichauf, wenn sie bei {time} verloren zu gehen beginnt.",
  lostNoTie: "Es gibt keinen Augenblick, in dem beide gleichauf sind.",
  lostMoral:
    "Die schnellste Haltung ist nicht die tiefste, sondern die tiefste, die du kurz vor dem Ziel noch halten kannst.",
  lostSince: "Am Anfang war die tiefe Haltung {began}; jetzt ist sie {differs}.",
  lostAssumed:
    "Wie der Luftwiderstand mit der Müdigkeit steigt, ist, soweit wir sehen, nicht veröffentlicht. Dass die Haltung in fünfundzwanzig Minuten verloren geht, bis zu einem Zehntel mehr als bei der, die zu halten gewesen wäre, ist hier **angenommen**. Fragst du nach deiner eigenen Fahrt, sagst du, wie es bei dir geht.",
  lostChart: "Die Luftwiderstandsfläche des Fahrers über die Fahrt",
  lostAxis: "gefahrene Zeit, {unit}",
  lostHandle: "Wann die tiefe Haltung verloren zu gehen beginnt: links und rechts ändern es",
  lostRead: "Beide Luftwiderstandsflächen über die Fahrt ablesen",
  lostDescription:
    "Die gehaltene Haltung bleibt bei {kept}. Die tiefe startet bei {low} und beginnt bei {time} verloren zu gehen.",
  keptSeries: "die gehaltene",
  lowSeries: "die tiefe",
  levelAt: "gleichauf bei {time}",
  lostSpoken: "beginnt bei {time} verloren zu gehen: {differs}",
  lostReading: "Sie beginnt bei {time} verloren zu gehen: **{differs}**.",

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
    "Weniger Luftwiderstand ist mehr wert: Das Gefälle gibt zurück, was die Reifen nehmen, und zu bezahlen bleibt nur die Luft.",
  windNear: "Das meiste des Fahrwiderstands ist Luft, also liegen beide nah beieinander.",
  windPowerWins:
    "Ein guter Teil des Fahrwiderstands ist hier Höhe oder Reifen, und davon erspart eine tiefere Haltung nichts: Leistung ist mehr wert.",
  windStill: "Bei Windstille wären es {power} und {drag}.",
  windMoral:
    "Die Luftwiderstandsfläche zählt am meisten, wo die Straße flach ist oder fällt, die Leistung am meisten, wo sie steigt.",
  windSince:
    "Im Flachen bei Windstille waren es {beganPower} für Leistung und {beganDrag} für Luftwiderstand; hier sind es {power} und {drag}.",
  windCaution:
    "Bergab sprechen die Zahlen für eine tiefe Haltung; die Straße vielleicht nicht. Gefälle, Kurven, Verkehr und Böen bestimmen dort Haltung und Tempo, kein Diagramm.",
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
  windReading: "Bei {slope}: {power} für Leistung, {drag} für Luftwiderstand.",

  threeTitle: "7. Drei Änderungen, ein Budget",
  threeAsk:
    "Mit {budget} zum Ausgeben: ein tieferer Lenker vom Bikefitter für 100, ein eng anliegender Anzug für 150, schnellere Reifen für 90. Was zuerst?",
  threeBudget: "Geld zum Ausgeben",
  threeTry: "Gib {budget} aus, dann immer weniger, und sieh, was zuerst wegfällt.",
  threeSays: "Über {distance} ist am besten: {names}; im Mittel {figure}.",
  threeNothing: "Über {distance} kauft dieses Budget nichts von den dreien.",
  threeMost: "Für sich allein spart im Mittel am meisten: {first}, {average}.",
  threeMoral:
    "Zuerst kommt nicht, was am meisten spart, wenn es gelingt, sondern was **für seinen Preis** am meisten spart, mit der Chance, dass es gelingt.",
  threeSince: "Am Anfang der Geschichte war es: {names}.",
  threeNone: "nichts davon",
  threeFront: "eine tiefere Front",
  threeSuit: "der Anzug",
  threeTyres: "Reifen",
  threeCosts: "{name}, {money}",
  threeAssumed:
    "Die Wirkung des Anzugs ist veröffentlicht; die des tieferen Lenkers ist ein Drittel des Veröffentlichten, die der Reifen ist aus dem Gedächtnis. Jede Chance und jeder Preis ist **angenommen**: Setz unter „{question}“ deine eigenen ein.",
  threeCaution:
    "Ein tieferer Lenker will kleine Schritte, den Blick auf der Straße und einen Bikefitter, wenn etwas schmerzt. Probier ihn abseits vom Verkehr.",
  threeChart: "Was jede von drei Änderungen spart",
  threeLegend:
    "Punkt: im Mittel, die Chance mitgezählt. Ring: wenn sie gelingt, mit einer Linie für zwei von drei Fällen. Haken: was das Budget kaufen sollte.",
  threeAxis: "gespart über {distance}",
  threeDescription: "Im Mittel spart am meisten: {first}, {average}. Was das Budget kaufen sollte, ist angehakt.",

  endTitle: "Jetzt deine eigene Fahrt",
  askChanged: "Für meine eigene Fahrt fragen, mit dem, was ich geändert habe",
  askOwn: "Für meine eigene Fahrt fragen",
  untouched:
    "Bis hierher hat nichts davon deine eigenen Zahlen berührt, und „{undo}“ nimmt es zurück, wenn du etwas mitnimmst. Die Steigung, der Wind und die Haltung, die verloren geht, haben ihren Platz unter „{yourNumbers}“ und in „{holdOrFade}“.",
  taken: "Was du in der Geschichte geändert hast, steht jetzt in deinen eigenen Zahlen. „{undo}“ nimmt es zurück.",
  changedCda: "eine CdA von {area}",
  bringAlong:
    "Du hast geändert: {list}. Nimm das zu „{question}“ mit, oder öffne die Frage mit den Zahlen, die dort stehen.",
  notYou:
    "Der Fahrer dieser Geschichte bist nicht du. „{question}“ fragt dasselbe für deine eigene Leistung, Haltung, Strecke und deinen Tag, und sagt, wie sicher die Antwort ist.",
};
