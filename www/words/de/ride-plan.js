// @ts-check
/** Wie teile ich meine Kraft auf dieser Strecke ein? */

/** @satisfies {import("../books.d.ts").Texts<"ride-plan">} */
export default {
  ask: "{distance} auf {course} mit einer [kritischen Leistung|cp] von {cp}, [W′|wPrime] von {wPrime} und einer [Luftwiderstandsfläche|cda] von {cda}, {day}: Wie teile ich meine Kraft ein?",

  // Die Antwort.
  takes: "Für {distance} nach diesem Plan brauchst du",
  ahead: "{differs} als mit gleichmäßig {power}",
  asFast: "so schnell wie mit gleichmäßig {power}",
  spoken: "Für {distance} nach diesem Plan brauchst du {figure}, plus oder minus {spread}: {compared}.",
  planCaption: "Der Plan: ab jedem Ort diese Leistung, bis zum nächsten",
  from: "Ab, {unit}",
  place: "Was du dort siehst",
  power: "Leistung, {unit}",
  "landmark.start": "der Start",
  "landmark.climb": "ein Anstieg beginnt, {grade}",
  "landmark.descent": "eine Abfahrt beginnt, {grade}",
  "landmark.level": "die Straße wird eben",
  "landmark.turn": "die Straße biegt ab",
  "landmark.distance": "nichts: achte auf die Distanz",
  upTo: "bis {power}",
  stops: {
    one: "Ein Halt braucht davon {cost}, mit Stehen und Anfahren. Der Plan gilt für die Straße zwischen den Halten; Erholung beim Halt zählt nicht.",
    other:
      "{count} Halte brauchen davon {cost}, mit Stehen und Anfahren. Der Plan gilt für die Straße zwischen den Halten; Erholung beim Halt zählt nicht.",
  },
  best: "Der schnellste Plan, den W′ erlaubt, ändert die Leistung ständig und dauert {time}. Mit diesen {count} Leistungen bist du {differs}.",
  bestOne:
    "Der schnellste Plan, den W′ erlaubt, ändert die Leistung ständig und dauert {time}. Mit dieser einen Leistung bist du {differs}.",
  tooCoarse:
    "In Stufen von {round} ist kein Plan so schnell wie diese gleichmäßige Leistung. Kleinere Stufen machen ihn schneller: stell sie unter „{limits}“ ein.",
  runOut:
    "Weichen kritische Leistung und W′ innerhalb ihres ± von deinen Zahlen ab, ist W′ in {share} von 100 Fällen vor dem Ziel aufgebraucht.",
  runOutRarely: "Auch wenn kritische Leistung und W′ um ihr ± danebenliegen, reicht W′ fast immer bis ins Ziel.",
  testCp: "Teste deine kritische Leistung, bevor du einem Plan vertraust",

  // Wenn es anders kommt.
  otherwise: "Wenn es anders kommt",
  whatIf: "Was wäre, wenn",
  thenHeading: "Dann",
  tooHard: "Du fährst die ersten zehn Minuten um {share} zu hart",
  cpLower: "Deine kritische Leistung ist um {share} kleiner, als du glaubst",
  thenLasts: "{differs}; W′ reicht",
  thenRunsOut: "{differs}; W′ ist nach {distance} aufgebraucht",
  thenEven: "Gleichmäßig auf deinem wirklichen Niveau wären es {time}.",
  effortOnly:
    "**Ein Plan sagt, wie hart du fährst, nie, wie schnell.** Fahre bergab und in Kurven so langsam, wie Straße, Verkehr und Sicht es verlangen; eine Leistung ist dort eine Obergrenze. Wettkampfregeln und Verkehrsregeln gehen vor. Bis ins Ziel ist das eine maximale Belastung: Bist du krank oder sie nicht gewohnt, hol dir zuerst ärztlichen Rat.",

  // Diagramme.
  along: "auf der Strecke, {unit}",
  powerTitle: "Leistung auf der Strecke",
  powerAxis: "Leistung, {unit}",
  readPower: "Leistung auf der Strecke ablesen",
  planSeries: "Plan",
  fastestSeries: "schnellster",
  evenLevel: "gleichmäßig {power}",
  powerDescription:
    "Die Leistung auf der Strecke liegt im Plan zwischen {low} und {high}. Gleichmäßig wären es {even}.",
  powerReading: "Der Plan verlangt {low} bis {high}; gleichmäßig sind es **{even}**.",
  reserveTitle: "Rest von W′ auf der Strecke",
  reserveAxis: "Rest von W′, {unit}",
  readReserve: "Rest von W′ ablesen",
  reserveDescription: "Gezeigt ist der Rest von W′ auf der Strecke. Nach dem Plan sinkt er auf {plan}.",
  reserveReading: "Nach dem Plan sinkt W′ bis auf **{plan}**.",
  aheadTitle: "Vorsprung des schnellsten Plans vor gleichmäßiger Leistung",
  aheadAxis: "Vorsprung, Sekunden",
  readAhead: "Vorsprung ablesen",
  aheadSeries: "Vorsprung",
  aheadDescription: "Der schnellste Plan gegen gleichmäßige Leistung auf der Strecke; im Ziel ist er {differs}.",
  aheadReading: "Im Ziel ist der schnellste Plan gegenüber gleichmäßiger Leistung **{differs}**.",
  seconds: "{seconds} s",
  speedTitle: "Tempo des schnellsten Plans auf der Strecke",
  speedAxis: "Tempo, {unit}",
  readSpeed: "Tempo auf der Strecke ablesen",
  speedSeries: "Tempo",
  speedDescription: "Gezeigt ist das Tempo des schnellsten Plans auf der Strecke, ohne Abfahrten: höchstens {most}.",
  speedReading: "Wo die Straße um mehr als {grade} fällt, steht kein Tempo: Dazu sagt ein Plan nichts.",
  gradeTitle: "Steigung auf der Strecke",
  gradeAxis: "Steigung",
  readGrade: "Steigung auf der Strecke ablesen",
  gradeSeries: "Steigung",
  gradeDescription: "Die Steigung auf der Strecke liegt zwischen {low} und {high}.",
  gradeReading: "Die Steigung liegt zwischen {low} und {high}.",

  // Ein Plan, der das ± der Zahlen berücksichtigt.
  careful: "Ein Plan, der das ± deiner Zahlen berücksichtigt",
  carefulGist: "im Mittel {better}; {differs}, wenn deine Zahlen stimmen",
  carefulSame: "Derselbe Plan ist auch dafür der beste",
  carefulLead:
    "Dieser Plan ist im Mittel der schnellste für alle, deren kritische Leistung und W′ innerhalb ihres ± von deinen abweichen. Sie brauchen im Mittel {mean}, mit dem Plan oben {before}. Vor dem Ziel ist W′ bei {share} von 100 aufgebraucht, mit dem Plan oben bei {shareBefore}.",

  // Was ein Plan verlangen darf.
  limits: "Was der Plan von dir verlangen darf",
  limitsGist: "Wie viele Leistungen, ihre Grenzen und Stufen, und wie W′ zurückkommt",
  between:
    "Die Zahl der Leistungen ist höchstens {targets}; jede liegt zwischen {least} und {greatest}, in Stufen von {round}.",
  recovery: "Wie W′ zurückkommt",
  comesBack: "Unterhalb der kritischen Leistung kommt W′ {form} zurück.",
  differential: "umso langsamer, je voller es ist,",
  linear: "Watt für Watt",
  none: "gar nicht",
  recoveryNote:
    "Niemand weiß, was davon auf dich zutrifft. Nach diesem Plan sinkt W′ im ersten Fall bis auf {differential}, im zweiten auf {linear} und im dritten auf {none}.",

  // Aufrichten.
  sitUp: "Aufrichten an steilen Anstiegen",
  sitUpNot: "Du bleibst überall tief. Ist Aufrichten schneller?",
  sitUpWanted: "Ich richte mich an steilen Anstiegen auf",
  sitUpWhere:
    "Wo die Straße auf 200 m mindestens {grade} steigt, richte ich mich auf. Meine [Luftwiderstandsfläche|cda] ist dort {cda}, meine [kritische Leistung|cp] um {gain} höher.",
  sitUpPays: "Bei Windstille und {power} ist Aufrichten ab etwa {grade} schneller.",
  sitUpNowhere: "So steil und so lang ist hier kein Anstieg: du bleibst überall tief.",
  sitUpUntil: "aufrecht bis {distance}",
  sitUpDoes: {
    one: "Mit Aufrichten an einem Anstieg bist du {differs}, plus oder minus {spread}.",
    other: "Mit Aufrichten an {count} Anstiegen bist du {differs}, plus oder minus {spread}.",
  },

  // Der Streifen.
  strip: "Ein Streifen für den Lenker",
  stripGist: "Vor dem Drucken öffnen, dann ausschneiden",

  // Wie, und die Tabelle.
  howGist: "Alle hundert Meter darf die Leistung eine andere sein; W′ darf nie ausgehen",
  howFastest:
    "Die Straße wird in Stücke von rund hundert Metern geteilt, jedes mit eigener Leistung. Gesucht sind die Leistungen mit der kürzesten Zeit, bei denen W′ nie unter null sinkt und nie über seinen vollen Wert steigt. Kurven werden so langsam gefahren, wie sie es verlangen.",
  howSimple:
    "Dann wird die Straße dort geteilt, wo sie sich ändert: wo sie steigt, fällt, eben wird oder abbiegt, oder bei einer runden Distanz. Von diesen Orten bleiben die wenigen, mit denen der Plan am wenigsten verliert. Die Leistungen werden so gerundet, dass W′ reicht.",
  howCareful:
    "Der vorsichtige Plan geht von diesem aus. Seine Leistungen ändern sich stufenweise, solange Fahrer, die von deinen Zahlen abweichen, im Mittel schneller werden und W′ ihnen nicht öfter ausgeht.",
  howAfter:
    "Ist W′ aufgebraucht, hält ein Fahrer von da an bis ins Ziel {share} der kritischen Leistung. Der Anteil stammt aus einem kurzen Test mit voller Kraft; dass er bis ins Ziel gilt, ist angenommen.",
  tableGist: "Leistung, Tempo und W′ auf der Strecke",
  tableCaption: "Der Plan und der schnellste Plan auf der Strecke",
  gradient: "Steigung",
  planPower: "Plan, {unit}",
  fastestPower: "Schnellster, {unit}",
  planReserve: "Rest von W′ nach dem Plan, {unit}",
  aheadIn: "Schnellster vor gleichmäßig, s",
};
