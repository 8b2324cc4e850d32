// @ts-check
/** Woran soll ich als Nächstes arbeiten? */

/** @satisfies {import("../books.d.ts").Texts<"next-gain">} */
export default {
  ask: "Mit {money} {currency} und {hours} pro Woche für {weeks}: Woran soll ich als Nächstes arbeiten, für {events}?",
  myEvents: { one: "mein eines Rennen", other: "meine {count} Rennen" },
  moneyLabel: "Geld, das du ausgeben willst",
  currencyLabel: "Deine Währung, etwa Euro oder Franken",
  currencyHint: "deine Währung",
  hoursLabel: "Stunden pro Woche, zusätzlich zu dem, was du jetzt tust",
  weeksLabel: "Wie viele Wochen lang",

  claim: {
    one: "**{names}**: über dein eines Rennen schneller um",
    other: "**{names}**: über deine {count} Rennen schneller um",
  },
  nothing: "Nichts auf der Liste hilft mit diesem Budget.",
  spoken:
    "Am besten für dieses Budget ist: {names}. Du bist um {figure} schneller über deine Rennen, jede Chance mitgezählt, plus oder minus {spread}.",
  spokenNothing: "Nichts auf der Liste hilft mit diesem Budget.",
  more: { one: "eine weitere", other: "{count} weitere" },
  searching: "Alle Kombinationen werden verglichen: {share}.",
  waiting: "Alle Kombinationen werden verglichen.",
  stop: "Anhalten",
  stopped: "Angehalten, bevor alle Kombinationen verglichen waren.",
  goOn: "Weiter",
  numbered: "Änderung {number}",
  inTheSet: "Die beste Auswahl, und was jede Änderung für sich spart",
  change: "Änderung",
  onAverage: "Mit der Chance, dass sie wirkt",
  ifItWorks: "Wenn sie wirkt",
  ifWorks: "{figure}, wenn sie wirkt",
  takes:
    "Nötig sind **{money}** und insgesamt **{hours}**, in keiner Woche mehr als {weekly}. Wirkt alles, bist du um **{all}** schneller; mit der Chance von jedem um {average}. In 19 von 20 Fällen liegt es zwischen {low} und {high}.",
  nextAdds: "**Mit {more} mehr** kommt dazu: {added}; damit bist du noch einmal um {gain} schneller.",
  nextSwaps:
    "**Mit {more} mehr** tritt an die Stelle von {left}: {added}; damit bist du noch einmal um {gain} schneller.",
  nextNoMoney: "Mehr Geld bringt auf dieser Liste nichts mehr.",
  inFixedTime:
    "{event}: Du kommst mit deinen heutigen Zahlen etwa {now} weit. Darüber bist du im Mittel {differs}, du kommst also **{further}**.",
  measureFirst:
    "**Miss {name}, bevor du dich dafür entscheidest** ({open}). Wenn du weißt, was es dir bringt, sparst du im Mittel weitere {worth}; ungetestet bringt es {buying}.",
  measureLeftOut:
    "**Miss {name}** ({open}). Es gehört nicht zur besten Auswahl; wenn du aber weißt, was es dir bringt, sparst du im Mittel weitere {worth}.",
  nextNoHours: "Mehr Stunden bringen auf dieser Liste nichts mehr.",
  hours: { one: "einer Stunde", other: "{count} Stunden" },

  leftOut: "Was wegfällt, und warum",
  leftOutGist: {
    one: "Eine Änderung gehört nicht zur besten Auswahl.",
    other: "{count} Änderungen gehören nicht zur besten Auswahl.",
  },
  leftOutLine: "**{name}**: {why}.",
  taken: "In der besten Auswahl",
  isTaken: "ja",
  "why.too_dear": "kostet mehr als dein Geld",
  "why.too_long": "dauert mehr Wochen, als du hast",
  "why.too_many_hours_a_week": "braucht mehr Stunden pro Woche, als du hast",
  "why.too_many_hours": "braucht insgesamt mehr Stunden, als du hast",
  "why.needs_another": "kommt erst nach „{other}“, und das fällt weg",
  "why.excluded_by_group": "nur eine dieser Art wird genommen, und das ist „{other}“",
  "why.no_money_left": "neben der besten Auswahl bleibt zu wenig Geld",
  "why.no_hours_left": "neben der besten Auswahl bleiben zu wenige Stunden",
  "why.not_worth_it": "spart nichts mehr, die Chance mitgezählt",

  dotsTitle: "Was jede Änderung über deine Rennen spart",
  dotsAxis: "gespart über deine Rennen",
  dotsDesc:
    "Die Chance mitgezählt, spart am meisten: {first}, {average}; am wenigsten: {last}, {least}. Was in der besten Auswahl ist, ist angehakt.",
  legend:
    "Punkt: Ersparnis mit der Chance, dass sie eintritt. Ring: Ersparnis, wenn sie wirkt; in zwei von drei Fällen liegt die Wahrheit auf der Linie. Haken: in der besten Auswahl",
  curveMoney: "Was mehr Geld bringt",
  curveHours: "Was mehr Stunden bringen",
  moneyAxis: "Geld",
  moneyAxisIn: "Geld, {currency}",
  hoursAxis: "Stunden pro Woche",
  savedAxis: "gespart, die Chance mitgezählt",
  curveDesc: "Die beste Auswahl spart {start}, wenn nichts dazukommt, und {end} mit {most}.",
  youMoney: "Dein Geld",
  youHours: "Deine Stunden pro Woche",
  at: "{budget}: schneller um {figure}",
  drag: "Zieh den Ring oder nimm die Pfeiltasten, um ein anderes Budget zu probieren.",
  readMoney: "Ablesen, was ein Geldbetrag bringt",
  readHours: "Ablesen, was eine Zahl von Stunden bringt",

  caution:
    "**Bevor du etwas änderst:** Sieh, wohin du fährst, was immer eine Kopfhaltung spart. Übe Kurven und neue Positionen abseits des Verkehrs, nie bis an die Grenze. Ändere die Einstellung in kleinen Schritten, mit Bikefitting oder ärztlichem Rat, wenn etwas schmerzt oder taub wird. Harte Trainingsblöcke und Maximaltests sind für Gesunde, die regelmäßig Sport treiben. Wettkampfregeln und die örtlichen Verkehrsregeln gehen vor.",
  elsewhere:
    "Eine Position ist mehr als diese eine Zahl. Frag {position} nach deiner für jede Distanz und {leg} danach, was eine tiefere Front mit der Hüfte macht.",

  why: "Warum nicht addieren?",
  whyGist: "Zusammen sparen sie {together}; einzeln addiert wären es {added}.",
  whyText:
    "Jede Änderung ist so viel wert, wie sie auf einer Fahrt spart, die die anderen schon schneller gemacht haben. Einzeln addiert würde diese Auswahl {added} sparen, die Chancen mitgezählt. Zusammen gerechnet spart sie {together}.",
  whyChance:
    "Jede Änderung wirkt mit ihrer eigenen Chance, was auch aus den anderen wird. Kommt eine erst nach einer anderen, bringt sie nichts, wenn diese nicht wirkt. Gezählt wird der Mittelwert über alles, was aus einer Auswahl werden kann. Hier sind das {outcomes} Fälle, jeder gleichmäßig am Limit neu gefahren.",
  whySure:
    "Im ± steckt, was an der Größe jeder Änderung und an deinen eigenen Zahlen unsicher ist, und dass manches nicht wirken mag. Alles zusammen lässt 19 von 20 Ausgängen zwischen {low} und {high}.",

  list: "Die Änderungen",
  listGist: {
    one: "Auf der Liste steht eine Änderung; bearbeite sie oder ergänze andere.",
    other: "Auf der Liste stehen {count} Änderungen; bearbeite, ergänze oder streiche.",
  },
  listLead:
    "Größen und Chancen sind geraten, bis du sie gemessen hast. Bei jeder steht, worauf sie beruht. Die meisten ändern deine [Luftwiderstandsfläche|cda], deinen [Rollwiderstandsbeiwert, Crr|crr] oder deine [kritische Leistung|cp].",
  name: "Name",
  whatItChanges: "Was sie ändert",
  size: "Um wie viel",
  spread: "Das ± davon",
  chance: "Chance, dass sie wirkt",
  money: "Geld",
  hoursOnce: "Stunden einmalig",
  hoursPerWeek: "Stunden pro Woche",
  weeks: "Für so viele Wochen",
  group: "Nur eine von",
  groupHint: "Änderungen mit demselben Wort hier schließen einander aus.",
  requires: "Erst nach",
  requiresNone: "keiner",
  requiresHint:
    "Sie wird nur zusammen mit jener Änderung genommen und bringt nichts, wenn jene nicht wirkt. Größe und Chance sind das, was sie dann noch dazugibt.",
  note: "Notiz",
  published: "Das beruht auf Veröffentlichtem.",
  "common-practice": "Das beruht auf üblicher Praxis, ohne Quelle.",
  "from-memory": "Das ist aus dem Gedächtnis und wurde nicht nachgeschlagen.",
  assumed: "Das ist angenommen.",
  add: "Eine Änderung ergänzen",
  addEffect: "Sie ändert noch etwas",
  removeEffect: "Diese Wirkung streichen",
  remove: "Von der Liste nehmen",
  usualTrained: "Die übliche Liste für Trainierte",
  usualNew: "Die übliche Liste für Neulinge",
  full: "Mehr als zwanzig Änderungen werden nicht verglichen.",
  ridePosition: "In „{name}“ fahren",
  positionNumber: "Position {number}",
  other: "etwas anderes: {field}",
  "kinds.dragShare": "Luftwiderstandsfläche, anteilig",
  "kinds.dragArea": "Luftwiderstandsfläche",
  "kinds.powerShare": "Kritische Leistung, anteilig",
  "kinds.power": "Kritische Leistung",
  "kinds.rolling": "Rollwiderstandsbeiwert, Crr",
  "kinds.mass": "Masse",
  "kinds.drivetrain": "Wirkungsgrad des Antriebs",
  "kinds.bends": "Seitliche Beschleunigung in Kurven",

  changeOnPaper: "**{name}**: {sizes}; {takes}",
  sizeOnPaper: "{what} {size}",
  eventsOnPaper: "**Deine Rennen:** {events}",
  eventOnPaper: "{event} × {times}",

  events: "Deine Rennen",
  eventsGist: "Wie oft jedes gefahren wird, entscheidet, was zählt.",
  eventsLead: "Die Sekunden werden über diese Rennen addiert, jedes so oft, wie du es fährst.",
  timesRidden: "Mal",
  timesLabel: "Wie oft {event} gefahren wird",
  editEvents: "Die Rennen ändern",

  tableGist: "Jede Änderung bei jedem Rennen: gesparte Sekunden, auch je Geldeinheit und je Stunde",
  tableCaption: "Was jede Änderung für sich spart",
  perMoney: "Sekunden gespart je Geldeinheit",
  perHour: "Sekunden gespart je Stunde",
  free: "umsonst",

  howGist: "Jede Auswahl innerhalb des Budgets wird verglichen, keine übergangen.",
  howSets:
    "Bei einer Liste von {count} gibt es {sets} Kombinationen. Die Fahrzeiten jeder einzelnen sind aus Fahrten gleichmäßig am Limit mit allen ihren Änderungen zusammen bekannt. Wo wenige Änderungen dieselbe Zahl bewegen, werden alle ihre Kombinationen gefahren. Wo es mehr sind, werden sie von einer Kurve durch Fahrten abgelesen, auf eine Tausendstelsekunde genau.",
  howMean: "Eine Auswahl ist so viel wert, wie sie im Mittel über alles spart, was aus ihr werden kann:",
  howFormula: "E von S ist die Summe über jedes ω in S aus seiner Chance mal der Zeit wie jetzt minus der Zeit mit ω",
  symbolSet: "eine Auswahl von Änderungen, und was davon wirkt",
  symbolChance: "die Chance, dass genau das wirkt",
  symbolTime: "Fahrzeit über alle deine Rennen, jedes so oft, wie es gefahren wird",
  howBest:
    "Am besten ist die Auswahl, die mit deinem Geld, deinen Stunden pro Woche und deinen Wochen am meisten spart. Sparen mehrere auf eine Tausendstelsekunde gleich viel, wird die mit dem wenigsten Geld genommen.",
  howWeeks:
    "Eine Änderung mit Wochenstunden braucht sie in jeder ihrer Wochen am Stück und kann in jeder Woche beginnen; was gleichzeitig läuft, wird addiert. Einmalige Stunden füllen, was die Wochen übrig lassen. Eine Auswahl passt, wenn irgendein Zeitplan jede Woche innerhalb deiner Stunden hält; alle Zeitpläne werden geprüft. Was mehr Wochen braucht, als du hast, fällt weg.",
  howSure:
    "Was an der Größe einer Änderung und an deinen Zahlen unsicher ist, geht in jeden Ausgang ein, wie es für kleine Änderungen gilt. Alle Ausgänge zusammen, jeder mit seiner Chance, ergeben das ± und den Bereich.",
  howTable:
    "Eine Prüfung vergleicht mit einer veröffentlichten Tabelle, die selbst aus einem Modell stammt. Sie sagt, was eine andere Position drei Fahrern vom Neuling bis zur Spitze über 40 km spart. Drei Luftwiderstandsflächen und zwei Leistungen wurden an fünf ihrer neun Zahlen angepasst; die anderen vier werden auf 2 % getroffen. Was Training und Ausrüstung sparen, wurde so nicht geprüft.",

  "usual.front-lower.name": "Front eine Stufe tiefer",
  "usual.front-lower.note":
    "Das ist ein Drittel der veröffentlichten Änderung durch tiefere Lenker (CdA −10,7 ± 3,1 %). Fahrer, die in der Position trainieren, verbrauchten etwas mehr Sauerstoff (1,3 %, nicht signifikant); das zählt hier als verlorene Leistung.",
  "usual.front-lowest.name": "Noch eine Stufe tiefer",
  "usual.front-lowest.note":
    "Die Größen sind angenommen. Bei neunzehn Fahrern sanken alle Maße der Leistung mit tieferem Oberkörper; der tiefste war für sie der schlechteste.",
  "usual.elbows-and-hands.name": "Schmalere Armhaltung",
  "usual.elbows-and-hands.note":
    "Das ist klein und von Person zu Person verschieden: Die Lenkerhöhe zählt mehr als die Breite. Die Größe ist angenommen.",
  "usual.head.name": "Üben, wie der Kopf gehalten wird",
  "usual.head.note":
    "Zwei Kopfhaltungen unterschieden sich bei 15 m/s um bis zu 6,4 % des Luftwiderstands. Ein Drittel davon ist angenommen, mit dem Blick auf der Straße.",
  "usual.clothing.name": "Eng anliegende Kleidung",
  "usual.clothing.note":
    "Ein ganzer Anzug senkte den Luftwiderstand bei 53 km/h um 3,9 %; weniger ist zu erwarten, wenn die Kleidung schon sitzt oder du langsamer fährst.",
  "usual.helmet.name": "Helm, der zur Kopfhaltung passt",
  "usual.helmet.note":
    "Formen unterschieden sich bei gleicher Kopfhaltung um weniger als 1,5 %; die Hälfte davon ist angenommen. Nicht jeder Helm passt zu jedem Kopf.",
  "usual.tyres.name": "Schnellere Reifen",
  "usual.tyres.note": "Reifen, Druck und Wärme ändern den Rollwiderstand, wie es heißt, um den Faktor zwei.",
  "usual.chain.name": "Kette gereinigt und gewachst",
  "usual.chain.note": "Ein Kettenantrieb verlor 2,1 ± 1,5 %; dass Pflege ein Viertel davon spart, ist angenommen.",
  "usual.pacing.name": "Gleichmäßiges Tempo üben",
  "usual.pacing.note":
    "Die Zeiten hier sind schon die einer gleichmäßigen Leistung; was ungleichmäßiges Fahren verliert, ist angenommen.",
  "usual.corners.name": "Kurven üben",
  "usual.corners.note":
    "Zeit spart das nur auf einer Strecke, deren Kurven eingetragen sind. Übe abseits des Verkehrs und nie bis an die Grenze. Die Größe ist angenommen.",
  "usual.intervals.name": "Vier Wochen Intervalle",
  "usual.intervals.note":
    "Zwei Einheiten pro Woche hoben die maximale aerobe Leistung sehr gut Trainierter um 3,0 bis 6,2 %; dass die kritische Leistung ihr folgt, ist angenommen.",
  "usual.season.name": "Eine Saison stetiges Training",
  "usual.season.note": "Wer schon trainiert, gewinnt in einer Saison, wie es heißt, 2 bis 6 %.",
  "usual.begin-training.name": "Acht Wochen regelmäßiges Training",
  "usual.begin-training.note":
    "Untrainierte heben ihre kritische Leistung, wie es heißt, in sechs bis acht Wochen um 10 bis 15 %.",
  hoursUnit: { one: "Stunde", other: "Stunden" },
  weeksUnit: { one: "Woche", other: "Wochen" },
  hoursText: { one: "{number} Stunde", other: "{number} Stunden" },
  hoursAWeekText: { one: "{number} Stunde pro Woche", other: "{number} Stunden pro Woche" },
};
