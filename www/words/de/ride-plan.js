// @ts-check
/** Wie teile ich meine Kraft auf dieser Strecke ein? */

/** @satisfies {import("../books.d.ts").Texts<"ride-plan">} */
export default {
  ask: "{distance} auf {course} mit [Critical Power|cp] {cp}, [W′|wPrime] {wPrime} und [Luftwiderstandsfläche|cda] {cda}, {day}: Wie teile ich meine Kraft ein?",

  // Die Antwort.
  takes: "{distance} nach diesem Plan dauern",
  ahead: "{differs} als mit gleichmäßig {power}",
  asFast: "so schnell wie mit gleichmäßig {power}",
  spoken: "{distance} nach diesem Plan dauern {figure}, plus oder minus {spread}: {compared}.",
  planCaption: "Der Plan: von jedem Ort an diese Leistung, bis zum nächsten",
  from: "Ab, {unit}",
  place: "Was du dort siehst",
  power: "Leistung, {unit}",
  "landmark.start": "der Start",
  "landmark.climb": "ein Anstieg beginnt, {grade}",
  "landmark.descent": "eine Abfahrt beginnt, {grade}",
  "landmark.level": "die Straße wird eben",
  "landmark.turn": "die Straße biegt ab",
  "landmark.distance": "nichts: nach der Distanz",
  upTo: "bis {power}",
  best: "Der schnellste Plan, den W′ erlaubt, ändert die Leistung ständig und dauert {time}. Diese {count} Leistungen sind {differs}.",
  bestOne:
    "Der schnellste Plan, den W′ erlaubt, ändert die Leistung ständig und dauert {time}. Diese eine Leistung ist {differs}.",
  runOut:
    "Weichen Critical Power und W′ innerhalb ihres ± von deinen Zahlen ab, ist W′ in {share} von 100 Fällen vor dem Ziel leer.",
  runOutRarely: "Auch wenn Critical Power und W′ um ihr ± danebenliegen, reicht W′ fast immer bis ins Ziel.",
  testCp: "Teste deine Critical Power, bevor du einem Plan vertraust",

  // Wenn es anders kommt.
  otherwise: "Wenn es anders kommt",
  whatIf: "Was wäre, wenn",
  thenHeading: "Dann",
  tooHard: "Die ersten zehn Minuten sind {share} zu hart",
  cpLower: "Deine Critical Power ist {share} kleiner, als du glaubst",
  thenLasts: "{differs}; W′ reicht",
  thenRunsOut: "{differs}; W′ ist nach {distance} leer",
  thenEven: "Gleichmäßig auf deinem wirklichen Niveau wären es {time}.",
  effortOnly:
    "**Ein Plan sagt etwas über die Anstrengung, nie über das Tempo.** Fahre bergab und in Kurven so langsam, wie Straße, Verkehr und Sicht es verlangen; eine Leistung ist dort eine Obergrenze. Wettkampfregeln und Verkehrsrecht gehen vor. Bis ins Ziel ist das eine maximale Anstrengung: Wenn du dich nicht wohlfühlst oder sie nicht gewohnt bist, frage vorher ärztlich nach.",

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
  aheadReading: "Im Ziel ist der schnellste Plan **{differs}** als gleichmäßige Leistung.",
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
    "Dieser Plan ist im Mittel der schnellste für alle, deren Critical Power und W′ innerhalb ihres ± von deinen abweichen. Sie brauchen im Mittel {mean}; mit dem Plan oben sind es {before}. W′ ist vor dem Ziel bei {share} von 100 leer, sonst bei {shareBefore}.",

  // Was ein Plan verlangen darf.
  limits: "Was der Plan von dir verlangen darf",
  limitsGist: "Wie viele Leistungen, ihre Grenzen und Stufen, und wie W′ zurückkommt",
  between: "Der Plan hat höchstens {targets} Leistungen zwischen {least} und {greatest}, in Stufen von {round}.",
  recovery: "Wie W′ zurückkommt",
  comesBack: "Unterhalb der Critical Power kommt W′ {form} zurück.",
  differential: "umso langsamer, je voller es ist,",
  linear: "Watt für Watt",
  none: "gar nicht",
  recoveryNote:
    "Niemand weiß, welche Form zu dir passt. Nach diesem Plan sinkt W′ bei der ersten Form bis auf {differential}, bei der zweiten auf {linear} und bei der dritten auf {none}.",

  // Der Streifen.
  strip: "Ein Streifen für den Lenker",
  stripGist: "Vor dem Drucken öffnen, dann ausschneiden",

  // Wie, und die Tabelle.
  howGist: "Alle hundert Meter darf die Leistung anders sein; W′ darf nie ausgehen",
  howFastest:
    "Die Straße wird in Stücke von rund hundert Metern geteilt, jedes mit eigener Leistung. Gesucht sind die Leistungen mit der kürzesten Zeit, bei denen W′ nie unter nichts und nie über sein Ganzes kommt. Kurven werden so langsam gefahren, wie sie es verlangen.",
  howSimple:
    "Dann wird die Straße dort geteilt, wo sie sich ändert: wo sie steigt, fällt, eben wird oder abbiegt, oder bei einer runden Distanz. Einige dieser Orte bleiben, so dass der Plan am wenigsten verliert. Die Leistungen werden so gerundet, dass W′ reicht.",
  howCareful:
    "Der vorsichtige Plan geht von diesem aus. Seine Leistungen ändern sich stufenweise, solange alle, die von deinen Zahlen abweichen, im Mittel schneller werden und nicht öfter leer sind.",
  howAfter:
    "Wer leer ist, hält von da an bis ins Ziel {share} der Critical Power. Der Anteil kommt aus einem kurzen Test mit voller Kraft; dass er bis ins Ziel gilt, ist angenommen.",
  tableGist: "Leistung, Tempo und W′ auf der Strecke",
  tableCaption: "Der Plan und der schnellste Plan auf der Strecke",
  gradient: "Steigung",
  planPower: "Plan, {unit}",
  fastestPower: "Schnellster, {unit}",
  planReserve: "Rest von W′ nach dem Plan, {unit}",
  aheadIn: "Schnellster vor gleichmäßig, s",
};
