// @ts-check
/** Was kann ich halten, und wie lange? */

/** @satisfies {import("../books.d.ts").Texts<"power-curve">} */
export default {
  ask: "Laut {efforts}: Was kann ich {time} lang halten, und wie lange könnte ich {change} mehr halten?",
  askIn:
    "Laut meinen harten Belastungen in der Position {position}: Was kann ich {time} lang halten, und wie lange könnte ich {change} mehr halten?",
  askNone:
    "Laut den Zahlen, die ich bisher habe: Was kann ich {time} lang halten, und wie lange könnte ich {change} mehr halten?",
  efforts: { one: "{count} harten Belastung", other: "{count} harten Belastungen" },
  holdFor: "Wie lange halten",
  more: "Mehr Leistung, um",
  inPosition: "Position der Belastungen",
  position: "Position {number}",

  // The efforts.
  yours: "Deine harten Belastungen",
  begin:
    "**Zwei harte Belastungen zeichnen deine Kurve:** Fahr eine von 3 bis 5 Minuten und eine von etwa 20. Fahr jede gut erholt und so hart, wie du sie gleichmäßig halten kannst. Eine allein gibt eine Schätzung. Bis dahin ist die Kurve unten die eines typischen Fahrers oder die aus deinen Zahlen.",
  power: "Mittlere Leistung",
  timeOf: "Belastung {number}: wie lange",
  powerOf: "Belastung {number}: mittlere Leistung",
  positionOf: "Belastung {number}: Position",
  dateOf: "Belastung {number}: Datum",
  placeOf: "Belastung {number}: wo",
  notSaid: "wo?",
  indoors: "drinnen",
  outdoors: "draußen",
  asRidden: "Position wie gefahren",
  remove: "Entfernen",
  removeOf: "Belastung {number} entfernen",
  removed: "Die Belastung ist entfernt.",
  undo: "Rückgängig",
  firstTime: "Erste Belastung: wie lange",
  firstPower: "Erste Belastung: mittlere Leistung in Watt",
  secondTime: "Zweite Belastung: wie lange",
  secondPower: "Zweite Belastung: mittlere Leistung in Watt",
  newTime: "Neue Belastung: wie lange",
  newPower: "Neue Belastung: mittlere Leistung in Watt",
  draw: "Meine Kurve zeichnen",
  add: "Diese Belastung hinzufügen",
  fillOne: "Gib eine Zeit und eine Leistung an: zum Beispiel 20:00 und 280.",
  paste: "Mehrere einfügen",
  pasteHint:
    "Schreib je Zeile eine Belastung: wie lange und die mittlere Leistung, dann, wenn du magst, die Position, das Datum und ob drinnen oder draußen. Du kannst zum Beispiel schreiben: 4:00 417, oder 20 min; 342 W; tief; 2026-05-01; drinnen.",
  pasteLabel: "Belastungen zum Hinzufügen, eine je Zeile",
  addPasted: "Diese Belastungen hinzufügen",
  added: { one: "{count} Belastung ist hinzugefügt.", other: "{count} Belastungen sind hinzugefügt." },
  nothingPasted: "Im Text steht noch keine Belastung.",
  asItWas: "Nichts wurde hinzugefügt; dein Text ist, wie er war.",
  mostEfforts: "Hier gehen höchstens {count} Belastungen.",
  noTime: "Zeile {line}: „{text}“ hat keine Zeit. Schreib 20:00, 20 min oder 1200 s.",
  noPower: "Zeile {line}: „{text}“ hat keine Leistung in Watt.",
  twoTimes: "Zeile {line}: „{text}“ ist eine zweite Zeit.",
  twoPowers: "Zeile {line}: „{text}“ ist eine zweite Leistung; eine Belastung hat eine.",
  twoOthers:
    "Zeile {line}: „{text}“ ist noch ein Datum, ein Ort oder eine Position; eine Belastung hat davon je eines.",
  perKilogram:
    "Zeile {line}: „{text}“ sind Watt je Kilogramm. Multipliziere mit deinem Körpergewicht und schreib Watt.",
  unclearTime: "Zeile {line}: Ist „{text}“ in Minuten oder Sekunden? Schreib {text} min oder {text} s.",
  unknown: "Zeile {line}: „{text}“ ist nicht zu verstehen. Eine Position muss eine von deinen sein, mit ihrem Namen.",
  date: "Zeile {line}: Das Datum „{text}“ kann mehr als einen Tag meinen, oder keinen. Schreib es als 2026-05-01.",
  timeRange: "Zeile {line}: Die Zeit in „{text}“ liegt außerhalb von {range}.",
  powerRange: "Zeile {line}: Die Leistung in „{text}“ liegt außerhalb von {range}.",
  caution:
    "**Vor einem Test.** Eine harte Belastung bis zum Ende erhöht für kurze Zeit das Risiko für das Herz, am meisten bei Menschen, die nicht daran gewöhnt sind. Hol dir zuerst ärztlichen Rat, wenn du eine Herz-, Gefäß-, Stoffwechsel- oder Nierenkrankheit hast oder dich zuletzt nicht regelmäßig bewegt hast. Tu es auch, wenn du bei Anstrengung Druck auf der Brust, ungewöhnliche Atemnot, Ohnmacht oder Herzstolpern spürst. Hör sofort auf, wenn eines davon auftritt. Teste auf der Rolle oder auf einer ruhigen Straße ohne Kreuzungen, mit dem Blick nach vorn.",

  // The answer.
  youHold: "{time} lang kannst du halten",
  youMayHold: "{time} lang kannst du vielleicht halten",
  testWould: "19\u00a0von\u00a020 Mal: Ein Test ergäbe {low}\u00a0bis\u00a0{high}",
  spoken:
    "{time} lang kannst du {power} halten, plus oder minus {spread}. Ein Test dieser Länge ergäbe in 19 von 20 Fällen {low} bis {high}.",
  figures: "Deine Kurve in Zahlen",
  figure: "Größe",
  value: "Wert",
  spread: "Plus oder minus",
  moreFor: "{change} mehr, {power}, für",
  lessFor: "{change} weniger, {power}, für",
  forEver: "länger, als die Kurve sagen kann",
  notAtAll: "gar nicht",
  criticalPower: "[Kritische Leistung, CP|cp]",
  wPrime: "[W′, die Arbeit über CP|wPrime]",
  peak: "Spitzenleistung",
  longRideLoss: "Verlust auf langer Fahrt, je 2,7-fache Dauer",
  sevenMinute: "Leistung bei sieben Minuten",
  decline: "Abfall, je 2,7-fache Dauer",
  oneSecond: "Leistung bei einer Sekunde",
  exponent: "Exponent",
  restsOnGiven: "Noch ist keine Belastung eingegeben: Das sind CP und W′ aus deinen Zahlen.",
  restsOnGuess:
    "Das ist eine Schätzung: W′ und der Verlust auf langer Fahrt sind wie bei trainierten Fahrern angesetzt (W′ {wPrime}) und gelten als ebenso unsicher.",
  restsOn: "Die Kurve folgt dem Modell **{model}**.",
  told: "Es passt deutlich am besten zu deinen Belastungen: Es erhält {weight} Punkten.",
  notTold:
    "Deine Belastungen können es nicht entscheiden: Dieses Modell erhält {weight} Punkten, das Modell {other} {otherWeight}. Wo beide auseinandergehen, würden Belastungen anderer Länge entscheiden.",
  chosen:
    "Du hast dieses Modell gewählt; das Modell {other} passt besser zu deinen Belastungen, mit {otherWeight} Punkten.",
  alone: "Mit so wenigen Belastungen lässt sich kein anderes Modell vergleichen.",
  use: "Bei allen Fragen damit rechnen",
  inUse: "Mit diesen Zahlen wird gerechnet",
  used: "CP und W′ sind jetzt die deiner Belastungen, samt ihrer Unsicherheit.",
  useSays: "Für Fahrten gilt das Modell {model}: Es setzt CP {cp} und W′ {wPrime} in deine Zahlen.",

  // The chart.
  chart: "Leistung über der Zeit",
  timeAxis: "Zeit",
  powerAxis: "Leistung, W",
  read: "Die Leistung zu einer Zeit ablesen",
  handle: "Die gefragte Zeit: links und rechts ändern sie",
  you: "du",
  chartSays:
    "Die Leistung, die man halten kann, fällt mit der Zeit, von {high} bei {short} auf {low} bei {long}. Für {time} sind es {power}.",
  drag: "Zieh den Ring oder nimm die Pfeiltasten.",
  reading: "Du kannst **{power}** für {time} halten. Im getönten Band läge ein Test in 19 von 20 Fällen.",
  leftOut: "nicht gezählt",
  rings: "Die kleinen Ringe sind deine Rennen.",
  changed: "{change}: {time}",

  // Models.
  "model.two-parameter": "mit zwei Parametern",
  "model.three-parameter": "mit drei Parametern",
  "model.omni-domain": "für alle Dauern",
  "model.log-decline": "logarithmischer Abfall",
  "model.power-law": "Potenzgesetz",
  models: "Welches Modell?",
  modelsGist: "Fünf veröffentlichte Beziehungen, an dieselben Belastungen angepasst",
  modelsNone: "Modelle werden angepasst und verglichen, sobald es zwei Belastungen verschiedener Länge gibt.",
  readBy: "Kurve nach dem Modell",
  byItself: "mit den meisten Punkten",
  model: "Modell",
  parameters: "Seine Zahlen",
  scatter: "Streuung",
  evidence: "Punkte",
  inHundred: "{count} von 100",
  "outcome.partly": "nur ab sieben Minuten, daher nicht verglichen",
  "outcome.too-few": "braucht mehr Belastungen",
  "outcome.not-reached": "braucht eine Belastung unter {short} oder über {long}",
  "outcome.notReachedLog": "braucht zwei Belastungen über sieben Minuten",
  "outcome.undetermined": "bleibt durch die Belastungen offen",
  "outcome.implausible": "ergibt Zahlen, die kein Fahrer hat",
  modelsCaption: "Jedes Modell ist an die Belastungen angepasst, gewichtet danach, wie gut sie sich wiederholen",
  formsSay:
    "Die Beziehung mit zwei Parametern hat drei Formen: Arbeit über der Zeit, Leistung über dem Kehrwert der Zeit, Zeit über der Leistung. Jede gewichtet dieselben Belastungen anders: CP ergibt sich zu {cpA}, {cpB} und {cpC}, W′ zu {wA}, {wB} und {wC}.",
  evidenceSays:
    "Die Punkte sagen, wie gut jedes Modell passt, zusammen 100. Jede Zahl, die ein Modell anpasst, zieht ihm etwas ab (Kriterium von Akaike). Unter 90 entscheiden die Belastungen es nicht.",

  // Positions.
  positions: "In jeder Position",
  positionsGist: "{position}: CP {change}",
  positionsCaption: "Leistung gegenüber {base}, aus Belastungen in beiden",
  positionsNone: "Gib Belastungen in zwei Positionen an, um zu sehen, wie viel Leistung eine Position nimmt.",
  positionColumn: "Position",
  cpChange: "Änderung von CP",
  guessedW: "W′ übernommen von {base}",
  beyondEfforts: "in Klammern: länger als die Belastungen",
  positionsSay:
    "Belastungen schwanken von Tag zu Tag um mehr, als die meisten Positionen nehmen: Wiederhole beide abwechselnd mit demselben Leistungsmesser.",

  // Training.
  training: "Was Training bringt",
  trainingGist: "{low} bis {high} bei dieser Länge, veröffentlicht nach einem Monat mit Intervallen",
  trainingSays:
    "Bei sehr gut trainierten Fahrern hoben zwei Intervalleinheiten je Woche in vier Wochen die maximale aerobe Leistung um {low} bis {high}. Bei dir wären das für {time} {lowW} bis {highW}. Versprochen ist niemandem etwas.",
  trainingHeld: "Die heutige Leistung für {time} ließe sich dann {lowTime} bis {highTime} lang halten.",
  trainingShown:
    "Schon durch Zufall weichen zwei Tests in 19 von 20 Fällen um bis zu {shown} voneinander ab, da ein Test sich auf etwa {error} wiederholt. Um einen Gewinn von {low} zu zeigen, braucht es {lowTests} davor und ebenso viele danach; für {high} sind es je {highTests}. Gibt es den Gewinn, zeigen ihn die Tests dann in 4 von 5 Fällen. Gibt es ihn nicht, scheinen sie ihn in 1 von 20 Fällen zu zeigen.",
  tests: { one: "{count} Test", other: "{count} Tests" },
  repeats: "Wie gut sich ein Test wiederholt",
  repeatsSay:
    "Eine Belastung ohne eigenes ± gilt als auf {error} sicher: 20-Minuten-Tests von acht trainierten Fahrern wiederholten sich auf {twenty}, 4-Minuten-Tests auf {four}.",

  // How it is worked out, and the table.
  how: "Wie gerechnet wird",
  howGist: "Die Kurve, die den Belastungen am nächsten liegt, jede gewichtet danach, wie gut sie sich wiederholt",
  howTwo: "P von t ist CP plus W Strich durch t",
  howThree: "P von t ist CP plus W Strich durch die Summe aus t und W Strich durch P max minus CP",
  howOmni:
    "P von t ist CP plus W Strich durch t mal eins minus e hoch minus t mal P max minus CP durch W Strich, minus A mal Logarithmus von t durch T",
  howLog: "P von t ist M A P minus E mal der natürliche Logarithmus von t durch sieben Minuten",
  howLaw: "P von t ist S mal t hoch minus k",
  howFit:
    "Die Zahlen jedes Modells sind die der kleinsten Quadrate. Für jede Belastung wird der Abstand ihrer Leistung von der Kurve in Einheiten ihres eigenen ± gemessen. Die Summe der Quadrate dieser Abstände wird so klein wie möglich.",
  howBand:
    "Die Unsicherheit der Zahlen folgt daraus, wie die Kurve auf jede von ihnen antwortet, alle zusammen, und geht in das Band ein. Was über die Wiederholbarkeit von Tests bekannt ist, zählt wie sieben weitere Belastungen. So tun zwei oder drei Belastungen weder sicher, noch geben sie auf.",
  howParts:
    "Das Modell für alle Dauern hat eine Spitzenleistung nur, wenn eine Belastung unter zwei Minuten dauert. Einen Verlust auf langer Fahrt hat es nur, wenn eine länger als T ist.",
  howNot:
    "Alles gilt für ausgeruhte, nicht überhitzte, gut versorgte Fahrer. Hitze, Höhe und eine harte Fahrt davor sind nicht darin: Nach zwei harten Stunden hatten Radfahrer {cp} ihrer CP und {wPrime} ihres W′ verloren.",
  "symbol.P": "Leistung, die sich für die Zeit t halten lässt",
  "symbol.CP": "kritische Leistung und die Arbeit, die darüber getan werden kann",
  "symbol.Pmax": "Leistung im ersten Augenblick",
  "symbol.A": "was lange Fahrten je 2,7-fache Dauer über T, eine halbe Stunde, hinaus verlieren",
  "symbol.MAP": "Leistung bei sieben Minuten und was je 2,7-fache Dauer verloren geht",
  "symbol.S": "Leistung bei einer Sekunde und wie sie fällt",
  table: "Als Tabelle",
  tableGist: "Leistung für runde Zeiten, mit ihrem Band",
  tableCaption: "Was sich für runde Zeiten halten lässt und wo ein Test in 19 von 20 Fällen läge",
  tableTime: "Zeit",
  tablePower: "Leistung",
  tableTest: "Ein Test",
  events: "Deine Rennen",
  eventsCaption:
    "Jedes Rennen auf dieser Strecke, in dieser Position, mit der Leistung, die die Kurve für genau seine Zeit gibt",
  eventsGist: "{event} verlangt {power} für {time}.",
  event: "Rennen",
  eventTime: "Zeit",
  eventPower: "Leistung",
  beyond: "länger als jede Belastung",
};
