// @ts-check
/** Was „Welche Position für welche Distanz?“ sagt. @import { Texts } from "../books.d.ts" */

/** @type {Texts<"which-position">} */
export default {
  ask: "{far} auf {course} {day}, gleichmäßig am Limit: Welche meiner Positionen ist die schnellste? Ich vergleiche mit {reference} und einem [CdA-Wert|cda] von {cda}. Die Werte sind {known} bekannt.",
  distance: "Distanz zum Ablesen",
  reference: "Die Position, mit der die anderen verglichen werden",
  knownHow: "Woher die Luftwiderstandsflächen bekannt sind",
  knownTogether: "aus einem Test oder einer Schätzung",
  knownApart: "aus mehreren Tests",
  needTwo: "Dafür braucht es mindestens zwei Positionen.",
  addPosition: "Position hinzufügen",
  editPositions: "Positionen ändern",
  editEvents: "Rennen ändern",
  positionNumber: "Position {number}",
  equipmentNumber: "Ausrüstung {number}",
  wearing: "{position} mit {equipment}",

  claim: "Über {distance} ist {best} schneller als {next} um",
  claimLevel: "Über {distance} sind {best} und {next} gleich schnell",
  spoken: "Über {distance} ist {best} schneller als {next} um {figure}, plus oder minus {spread}",
  claimInTime: "In {time} kommt {best} weiter als {next} um",
  spokenInTime: "In {time} kommt {best} weiter als {next} um {figure}, plus oder minus {spread}",
  covered: "In {time} fährst du etwa {distance}.",
  fastestIn: "die schnellste in {count} von\u00a0{all}\u00a0Durchläufen",
  fasterBeyond: "Ab {distance} ({spread}) ist {name} schneller als {other}.",
  fasterBelow: "Bis {distance} ({spread}) ist {name} schneller als {other}.",
  fasterBeyondWide:
    "Ab {distance} ist {name} schneller als {other}, soweit man es sagen kann. Bei so unsicheren Zahlen kann der Schnittpunkt überall liegen.",
  fasterBelowWide:
    "Bis {distance} ist {name} schneller als {other}, soweit man es sagen kann. Bei so unsicheren Zahlen kann der Schnittpunkt überall liegen.",
  alwaysFaster: "Von {from} bis {to} ist {name} durchweg schneller als {other}: Es gibt keinen Schnittpunkt.",
  alwaysSlower: "Von {from} bis {to} ist {name} durchweg langsamer als {other}: Es gibt keinen Schnittpunkt.",
  alwaysLevel: "{name} und {other} sind gleich schnell.",

  chartTitle: "Wie viel schneller jede Position ist, über der Distanz",
  chartX: "Distanz, {unit}",
  chartY: "schneller um, Anteil der Zeit",
  chartHandle: "Distanz zum Ablesen: links und rechts ändern sie",
  chartReader: "Unterschiede entlang der Distanz ablesen",
  chartDescription: {
    one: "Verglichen mit {reference} gilt: {list}. Es gibt {crossings} Schnittpunkt.",
    other: "Verglichen mit {reference} gilt: {list}. Es gibt {crossings} Schnittpunkte.",
  },
  levelIs: "so schnell wie {reference}",
  chartSpoken: "Über {distance} gilt: {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "Über der Linie ist eine Position schneller als {reference}, darunter langsamer. Die Tönung ist das ± der farbigen Kurve.",

  tableCaption: "Wie viel schneller jede Position ist, über die Distanz",
  tableDistance: "Distanz",
  tableGist: "Die Kurven in Sekunden, von der kürzesten bis zur längsten Distanz",
  eventsCaption: "Zeiten in deinen Rennen",
  eventReaches: "{event}, etwa {distance}",
  event: "Rennen",
  comparedWith: "{name} (Vergleich)",
  winsOf: "vorn in {count} von {all}",
  counting: "{draws} von {all} Durchläufen sind gezählt.",
  stopped: "Die Zählung ist bei {draws} von {all} Durchläufen angehalten.",
  countedAll: "Alle deine Zahlen schwankten in {draws} [Durchläufen|tries], für jede Position in denselben.",
  stop: "Anhalten",
  goOn: "Weiter",

  costs: "Wie viel Leistung eine Position nehmen darf",
  costsCaption: "Watt kritischer Leistung, die die Position mit weniger Luftwiderstand nehmen darf, bevor sie verliert",
  pair: "Position gegen die andere",
  againstOther: "{one} gegen {other}",
  costsNow: "nimmt jetzt",
  otherWay: "umgekehrt",
  nothingTies: "nie gleich schnell",
  ofPower: "{share} der CP",
  mayCost:
    "**Wie viel Leistung sie nehmen darf.** Über {over} darf {one} dir {watts} ({share} der [kritischen Leistung|cp]) nehmen, bevor sie gegen {other} verliert.",
  published:
    "In einer Studie senkte ein tieferer Lenker die Luftwiderstandsfläche von {riders} Fahrern um {cut} und nahm ihnen {cost} ± {spread} ihrer Leistung. In einer anderen nahm ein Rumpfwinkel von 12° {others} Fahrern {watts} ± {wattsSpread}.",
  lowerBars:
    "Ein Lenker, so abgesenkt wie in der Studie und mit dem Luftwiderstand, den das sparte, darf dir über {over} {watts} nehmen, bevor er verliert. Über die Streuung der Getesteten sind es {low} bis {high}.",
  lowerBarsGist: "Ein tieferer Lenker lohnt sich nicht mehr, sobald er über {over} {watts} nimmt.",
  costScaled:
    "Die Luftwiderstandsfläche von {one} ist um {cut} kleiner. Im gleichen Verhältnis umgerechnet, was angenommen ist, würde ein tieferer Lenker {cost} ± {spread} der Leistung nehmen. Nach dieser Studie liegt der Anteil derer, die weniger verlieren würden, als {one} nehmen darf, bei etwa {count} von {all}.",
  costTorso:
    "Wie viel Luftwiderstand der tiefere Rumpf sparte, ist nicht veröffentlicht, das lässt sich also nicht umrechnen. Bringt {one} deinen Rumpf auf etwa 12° herunter, liegt der Anteil derer, die weniger verlieren würden, als sie nehmen darf, bei etwa {count} von {all}.",
  costsMean:
    "Das ± lässt deinen eigenen Leistungsverlust in der Position weg. Um ihn zu finden, fahr dieselben zwei harten Belastungen in beiden Positionen, jede gut ausgeruht.",

  worth: "Was es entscheiden würde",
  worthMeans:
    "Nimm an, eines wäre vor der Wahl genau gemessen und alles andere so unsicher wie jetzt. Dann würdest du manchmal eine andere Position wählen. So viel würde das im Mittel sparen, über alle deine Rennen zusammen.",
  worthGist: "Alle Zahlen genau zu kennen würde über deine Rennen im Mittel {time} sparen.",
  worthLine: "{input}: {time}",
  worthBoth: "{one} und {other} in einem Test: {time}",
  wouldSettle:
    "**Was es entscheiden würde.** Wäre {input} genau bekannt, würdest du besser wählen und über deine Rennen im Mittel {time} sparen.",
  wouldSettleBoth:
    "**Was es entscheiden würde.** Miss {one} und {other} in einem Test. Wüsstest du genau, wie weit ihre CdA-Werte auseinanderliegen, würdest du besser wählen und über deine Rennen im Mittel {time} sparen.",
  howBoth: "fahre beide abwechselnd am selben Tag auf demselben Stück, bei ruhiger Luft und abseits des Verkehrs",
  settled:
    "**Was es entscheiden würde.** Nichts, was du messen könntest, würde viel ändern: Die Wahl ist so klar, wie sie wird, oder die Positionen sind so gut wie gleich schnell.",
  inputOf: "{input} ({name})",
  lookHow: "{link} ({how}).",
  lookOnly: "{link}.",
  look: "Ansehen",

  caution:
    "**Mit gesenktem Kopf siehst du nichts.** Rechne nur mit der Position, die du mit dem Blick auf der Straße halten kannst. Probiere neue Positionen und Laufräder abseits des Verkehrs, bei ruhiger Luft und in kleinen Schritten; lange Auflieger und hohe Felgen fangen den Seitenwind. Wenn etwas schmerzt, frag beim Bikefitting oder hol dir ärztlichen Rat. Wettkampfregeln und Verkehrsregeln gehen vor Sekunden.",
  howGist:
    "Jede Position auf derselben Straße, am selben Tag, in denselben Durchläufen, sodass sich Gemeinsames aufhebt",
  howRides:
    "Jede Position wird über jede Distanz gleichmäßig am Limit gefahren, wie ihre eigene Leistungskurve es zulässt, vom Start bis ins Ziel. Deine Strecke wird dafür verkürzt oder verlängert. Ausrüstung bringt ihre Luftwiderstandsfläche und Masse mit, und wo sie sie hat, eigene [Anströmwinkel|yaw], Aussetzer und eigenes Kurventempo.",
  howTogether:
    "Luftwiderstandsflächen aus einem Test, oder für eine Person geschätzt, liegen gemeinsam daneben, weil sie den Maßstabsfehler des Tests teilen. Dann wird angenommen, dass ihre Fehler fast ganz zusammenhängen, und der Unterschied zweier Positionen ist viel sicherer als jede Fläche für sich. Ein Test von nur einer Position sagt dann wenig darüber, welche schneller ist; ein Test beider sagt am meisten.",
  howCrossing:
    "Wo zwei Positionen gleich schnell sind, wird berechnet und nicht von der Kurve abgelesen. Das ± ist das des Unterschieds dort, geteilt durch sein Wachstum mit der Distanz. Laufen zwei Kurven fast nebeneinander, verschiebt eine kleine Unsicherheit den Schnittpunkt weit.",
  howCost:
    "Auch was eine Position nehmen darf, wird berechnet: die kritische Leistung, mit der sie gerade gleich schnell ist, bei unverändertem [W′|wPrime]. Veröffentlichte Arbeiten fanden in der Zeitfahrposition eine niedrigere kritische Leistung und dasselbe W′. Der Verlust wächst also mit der Länge des Rennens; wer in der Position trainiert, verlor wenig. Die veröffentlichte Streuung ist so groß wie das Mittel, sie ist also ein Bereich und keine Vorhersage. Fünf oder elf Fahrer verraten Mittel und Streuung nur ungefähr; die Anteile der Fahrer berücksichtigen das (Students t).",
  howDraws:
    "Für die Zählung schwanken alle Zahlen zusammen innerhalb ihres ±, und jede Position wird in denselben Durchläufen gefahren. Ist bekannt, wie die Fehler von kritischer Leistung und W′ zusammenhängen, schwanken sie gemeinsam.",
  howWorth:
    "Was eine Messung wert ist, ist der mittlere Gewinn, wenn man erst danach wählt und alles andere so unsicher bleibt, wie es ist. Über alle Durchläufe wird eine Kurve daran angepasst, was der gemessene Fehler mit jeder Position macht, und die beste der Kurven wird gemittelt. Eine Luftwiderstandsfläche ist dann mit ihrem ganzen Fehler bekannt, auch mit dem Teil, den sie mit anderen Positionen teilt. Ein Test zweier Positionen verrät ihren Unterschied auch dann, wenn sein Maßstab falsch ist. Gewinne, die vom Zufall nicht zu unterscheiden sind, zählen nicht.",
  nowTakes: "So wie du sie angegeben hast, nimmt sie dir {now}.",
  nowGives: "So wie du sie angegeben hast, gibt sie dir {now} dazu.",
  nowNothing: "So wie du sie angegeben hast, nimmt sie dir nichts.",
};
