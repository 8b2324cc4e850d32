// @ts-check
/** Was „Welche Haltung für welche Distanz?“ sagt. @import { Texts } from "../books.d.ts" */

/** @type {Texts<"which-position">} */
export default {
  ask: "Auf {course} {day}, jeweils gleichmäßig am Limit und mit Luftwiderstandsflächen {known}: Welche meiner Haltungen ist über {distance} die schnellste, und wie stehen sie gegen {reference} mit {cda}?",
  distance: "Distanz zum Ablesen",
  reference: "Die Haltung, mit der die anderen verglichen werden",
  knownHow: "Woher die Luftwiderstandsflächen bekannt sind",
  knownTogether: "aus einem Test oder geschätzt",
  knownApart: "aus mehreren Tests",
  needTwo: "Dafür braucht es mindestens zwei Haltungen.",
  addPosition: "Haltung hinzufügen",
  editPositions: "Haltungen ändern",
  editEvents: "Rennen ändern",
  positionNumber: "Haltung {number}",
  equipmentNumber: "Ausrüstung {number}",
  wearing: "{position} mit {equipment}",

  claim: "Über {distance} ist {best} schneller als {next} um",
  claimLevel: "Über {distance} sind {best} und {next} gleich schnell",
  spoken: "Über {distance} ist {best} schneller als {next} um {figure}, plus oder minus {spread}",
  fastestIn: "die schnellste in {count} von\u00a0{all}\u00a0Ziehungen",
  fasterBeyond: "Ab {distance} ({spread}) ist {name} schneller als {other}.",
  fasterBelow: "Bis {distance} ({spread}) ist {name} schneller als {other}.",
  fasterBeyondWide:
    "Ab {distance} ist {name} schneller als {other}, soweit man es sagen kann: Bei so unsicheren Zahlen kann der Schnittpunkt überall liegen.",
  fasterBelowWide:
    "Bis {distance} ist {name} schneller als {other}, soweit man es sagen kann: Bei so unsicheren Zahlen kann der Schnittpunkt überall liegen.",
  alwaysFaster: "Von {from} bis {to} ist {name} durchweg schneller als {other}: Es gibt keinen Schnittpunkt.",
  alwaysSlower: "Von {from} bis {to} ist {name} durchweg langsamer als {other}: Es gibt keinen Schnittpunkt.",
  alwaysLevel: "{name} und {other} sind gleich schnell.",

  chartTitle: "Wie viel schneller jede Haltung ist, über der Distanz",
  chartX: "Distanz, {unit}",
  chartY: "schneller um, Anteil der Zeit",
  chartHandle: "Distanz zum Ablesen: links und rechts ändern sie",
  chartReader: "Unterschiede entlang der Distanz ablesen",
  chartDescription: {
    one: "Verglichen mit {reference}: {list}. {crossings} Schnittpunkt.",
    other: "Verglichen mit {reference}: {list}. {crossings} Schnittpunkte.",
  },
  levelIs: "so schnell wie {reference}",
  chartSpoken: "Über {distance}: {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "Über der Linie ist schneller als {reference}, darunter langsamer. Die Tönung ist eine Standardabweichung der farbigen Kurve.",

  tableCaption: "Wie viel schneller jede Haltung ist, über die Distanz",
  tableDistance: "Distanz",
  tableGist: "Die Kurven in Sekunden, von der kürzesten bis zur längsten Distanz.",
  eventsCaption: "Zeiten in deinen Rennen",
  event: "Rennen",
  comparedWith: "{name}, Vergleich",
  winsOf: "vorn in {count} von {all}",
  counting: "Ziehungen werden gezählt: {draws} von {all}.",
  stopped: "Angehalten bei {draws} von {all} Ziehungen.",
  countedAll: "Gezählt in {draws} Ziehungen all deiner Zahlen, für jede Haltung dieselben.",
  stop: "Anhalten",
  goOn: "Weiter",

  costs: "Was eine Haltung kosten darf",
  costsCaption: "Watt kritischer Leistung, die die Haltung mit weniger Luftwiderstand kosten darf, bevor sie verliert",
  pair: "Haltung gegen die andere",
  againstOther: "{one} gegen {other}",
  costsNow: "kostet jetzt",
  otherWay: "umgekehrt",
  nothingTies: "nie gleich",
  ofPower: "{share} der CP",
  mayCost:
    "**Was sie kosten darf.** Über {over} darf {one} dich {watts} ({share} der kritischen Leistung) kosten, bevor sie gegen {other} verliert; so wie du sie angegeben hast, kostet sie {now}.",
  published:
    "Veröffentlicht: Ein tieferer Lenker senkte die Luftwiderstandsfläche von {riders} Fahrern um {cut} und kostete sie {cost} ± {spread} ihrer Leistung; ein Rumpfwinkel von 12° kostete {others} Fahrer {watts} ± {wattsSpread}.",
  lowerBars:
    "Ein Lenker, der so abgesenkt wird wie im veröffentlichten Test, mit dem Luftwiderstand, den das sparte, darf dich über {over} {watts} kosten, bevor er verliert, und über die Streuung der Getesteten {low} bis {high}.",
  lowerBarsGist: "Ein tieferer Lenker lohnt nicht mehr, sobald er über {over} {watts} kostet.",
  costScaled:
    "Von dieser Senkung auf die {cut} umgerechnet, um die {one} kleiner ist, und zwar im gleichen Verhältnis, was angenommen ist, würde ein tieferer Lenker {cost} ± {spread} der Leistung kosten: Von weiteren Fahrern wie den Getesteten würden {count} von {all} weniger bezahlen, als {one} kosten darf.",
  costTorso:
    "Wie viel Luftwiderstand der tiefere Rumpf sparte, ist nicht veröffentlicht, das lässt sich also nicht umrechnen. Bringt {one} deinen Rumpf auf etwa 12° herunter, dann würden von weiteren Fahrern wie diesen {count} von {all} weniger bezahlen, als sie kosten darf.",
  costsMean:
    "Das ± lässt weg, was die Haltung dich kostet, denn damit vergleichst du ja: Fahr dieselben zwei harten Belastungen in beiden Haltungen, gut ausgeruht.",

  worth: "Was es entscheiden würde",
  worthMeans:
    "Wäre eines vor der Wahl genau gemessen, und alles andere so unsicher wie jetzt, würdest du manchmal eine andere Haltung wählen. Das würde im Mittel so viel sparen, über alle deine Rennen zusammen.",
  worthGist: "Alle Zahlen genau zu kennen würde über deine Rennen im Mittel {time} sparen.",
  worthLine: "{input}: {time}",
  worthBoth: "{one} und {other} in einem Test: {time}",
  wouldSettle:
    "**Was es entscheiden würde.** {input} genau zu kennen würde dir über deine Rennen im Mittel {time} sparen, weil du besser wählst.",
  wouldSettleBoth:
    "**Was es entscheiden würde.** Miss {one} und {other} in einem Test: Genau zu wissen, wie weit ihre CdA auseinanderliegen, würde dir über deine Rennen im Mittel {time} sparen, weil du besser wählst.",
  howBoth: "fahre beide abwechselnd am selben Tag auf demselben Stück, bei ruhiger Luft und abseits des Verkehrs",
  settled:
    "**Was es entscheiden würde.** Nichts, was du messen könntest, würde viel ändern: Die Wahl ist so klar, wie sie wird, oder die Haltungen sind so gut wie gleich.",
  inputOf: "{input} ({name})",
  lookHow: "{link}: {how}.",
  lookOnly: "{link}.",
  look: "Ansehen",

  caution:
    "**Mit dem Kopf unten siehst du nichts.** Rechne nur mit der Haltung, die du mit dem Blick auf der Straße halten kannst. Probiere neue Haltungen und Laufräder abseits des Verkehrs, bei ruhiger Luft und in kleinen Schritten; lange Auflieger und hohe Felgen fangen den Seitenwind. Wenn etwas schmerzt, frag Bikefitter oder Arzt. Wettkampfregeln und Verkehrsregeln gehen vor Sekunden.",
  howGist:
    "Jede Haltung auf derselben Straße, am selben Tag, in denselben Ziehungen: Was gemeinsam ist, hebt sich auf.",
  howRides:
    "Jede Haltung wird über jede Distanz gleichmäßig am Limit gefahren, wie ihre eigene Leistungskurve es zulässt, vom Start bis ins Ziel, auf deiner Strecke, verkürzt oder verlängert. Ausrüstung bringt ihre Luftwiderstandsfläche und Masse mit, und wo sie sie hat, eigene Anströmwinkel, Aussetzer und eigenes Kurventempo.",
  howTogether:
    "Luftwiderstandsflächen aus einem Test, oder für eine Person geschätzt, liegen gemeinsam daneben: Der Maßstabsfehler des Tests ist ihnen gemeinsam. Dann wird angenommen, dass ihre Fehler zu 0,95 zusammenhängen, und der Unterschied zweier Haltungen ist viel sicherer als jede Fläche für sich. Ein Test von nur einer Haltung sagt dann wenig darüber, welche schneller ist; ein Test beider sagt am meisten.",
  howCrossing:
    "Wo zwei Haltungen gleich schnell sind, wird berechnet und nicht von der Kurve abgelesen. Das ± ist das des Unterschieds dort, geteilt durch sein Wachstum mit der Distanz: Laufen zwei Kurven fast nebeneinander, verschiebt eine kleine Unsicherheit den Schnittpunkt weit.",
  howCost:
    "Auch was eine Haltung kosten darf, wird berechnet: die kritische Leistung, mit der sie gerade gleich schnell ist, bei unverändertem W′. Veröffentlichte Arbeiten fanden die kritische Leistung in Zeitfahrhaltung niedriger und W′ unverändert, die Kosten wachsen also mit der Länge des Rennens; wer in der Haltung trainiert, verlor wenig. Die veröffentlichte Streuung ist so groß wie das Mittel, sie ist also ein Bereich und keine Vorhersage. Die Anteile der Fahrer folgen aus Students t, denn fünf oder elf Fahrer verraten Mittel und Streuung nur ungefähr.",
  howDraws:
    "Für die Zählung werden alle Zahlen zusammen aus ihrem ± gezogen, und jede Haltung wird mit denselben Ziehungen gefahren; kritische Leistung und W′ werden mit ihrer Korrelation gezogen, wo sie bekannt ist.",
  howWorth:
    "Was eine Messung wert ist, ist der mittlere Gewinn, wenn man erst danach wählt und alles andere so unsicher bleibt, wie es ist: Über alle Ziehungen wird eine Kurve daran angepasst, was der gemessene Fehler mit jeder Haltung macht, und die beste der Kurven wird gemittelt. Eine Luftwiderstandsfläche ist dann mit ihrem ganzen Fehler bekannt, auch mit dem Teil, den sie mit anderen Haltungen teilt; ein Unterschied ist, was ein Test zweier Haltungen auch dann verrät, wenn sein Maßstab falsch ist. Glieder innerhalb von drei Standardfehlern zählen nicht.",
};
