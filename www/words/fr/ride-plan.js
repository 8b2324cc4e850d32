// @ts-check
/** Comment répartir mon effort sur ce parcours ? */

/** @satisfies {import("../books.d.ts").Texts<"ride-plan">} */
export default {
  ask: "{distance} sur {course} avec une [puissance critique|cp] de {cp}, [W′|wPrime] de {wPrime} et une [surface de traînée|cda] de {cda}, {day} : comment répartir mon effort ?",

  // La réponse.
  takes: "Pour {distance} selon ce plan, il te faut",
  ahead: "{differs} qu’à {power} réguliers",
  asFast: "aussi rapide qu’à {power} réguliers",
  spoken: "Pour {distance} selon ce plan, il te faut {figure}, plus ou moins {spread} : {compared}.",
  planCaption: "Le plan : cette puissance à partir de chaque endroit, jusqu’au suivant",
  from: "À partir de, {unit}",
  place: "Ce que tu y vois",
  power: "Puissance, {unit}",
  "landmark.start": "le départ",
  "landmark.climb": "une montée commence, {grade}",
  "landmark.descent": "une descente commence, {grade}",
  "landmark.level": "la route devient plate",
  "landmark.turn": "la route tourne",
  "landmark.distance": "rien : fie-toi à la distance",
  upTo: "jusqu’à {power}",
  stops: {
    one: "{count} arrêt en prend {cost}, redémarrage compris. Le plan vaut pour la route entre les arrêts ; le repos à l’arrêt ne compte pas.",
    other:
      "{count} arrêts en prennent {cost}, redémarrage compris. Le plan vaut pour la route entre les arrêts ; le repos à l’arrêt ne compte pas.",
  },
  best: "Le plan le plus rapide que W′ permette change sans cesse de puissance et prend {time}. Avec ces {count} puissances, tu es {differs}.",
  bestOne:
    "Le plan le plus rapide que W′ permette change sans cesse de puissance et prend {time}. Avec cette seule puissance, tu es {differs}.",
  tooCoarse:
    "Par pas de {round}, aucun plan n’est aussi rapide que cet effort régulier. Des pas plus petits le rendent plus rapide : règle-les sous « {limits} ».",
  runOut:
    "Si la puissance critique et W′ s’écartent de tes chiffres dans leur ±, W′ est épuisé avant l’arrivée dans {share} cas sur 100.",
  runOutRarely:
    "Même si la puissance critique et W′ se trompent de leur ±, W′ suffit presque toujours jusqu’à l’arrivée.",
  testCp: "Teste ta puissance critique avant de te fier à un plan",

  // Si cela se passe autrement.
  otherwise: "Si cela se passe autrement",
  whatIf: "Et si",
  thenHeading: "Alors",
  tooHard: "Tu roules {share} trop fort les dix premières minutes",
  cpLower: "Ta puissance critique est inférieure de {share} à ce que tu crois",
  thenLasts: "{differs} ; W′ suffit",
  thenRunsOut: "{differs} ; W′ est épuisé après {distance}",
  thenEven: "Un effort régulier à ton vrai niveau prendrait {time}.",
  effortOnly:
    "**Un plan parle d’effort, jamais de vitesse.** En descente et en virage, roule aussi lentement que la route, la circulation et la visibilité l’exigent ; une puissance y est une limite supérieure. Le règlement de l’épreuve et le code de la route passent d’abord. Jusqu’à l’arrivée, c’est un effort maximal : si tu es malade ou n’en as pas l’habitude, demande d’abord à un médecin.",

  // Graphiques.
  along: "le long du parcours, {unit}",
  powerTitle: "Puissance le long du parcours",
  powerAxis: "puissance, {unit}",
  readPower: "Lire la puissance le long du parcours",
  planSeries: "plan",
  fastestSeries: "le plus rapide",
  evenLevel: "{power} réguliers",
  powerDescription:
    "La puissance le long du parcours est entre {low} et {high} dans le plan. Un effort régulier demande {even}.",
  powerReading: "Le plan demande de {low} à {high} ; un effort régulier, **{even}**.",
  reserveTitle: "W′ restant le long du parcours",
  reserveAxis: "W′ restant, {unit}",
  readReserve: "Lire W′ restant le long du parcours",
  reserveDescription: "Voici W′ restant le long du parcours. Selon le plan, il descend à {plan}.",
  reserveReading: "Selon le plan, W′ descend jusqu’à **{plan}**.",
  aheadTitle: "Avance du plan le plus rapide sur un effort régulier",
  aheadAxis: "avance, secondes",
  readAhead: "Lire l’avance",
  aheadSeries: "avance",
  aheadDescription:
    "Le plan le plus rapide face à un effort régulier, le long du parcours ; à l’arrivée, il est {differs}.",
  aheadReading: "À l’arrivée, face à un effort régulier, le plan le plus rapide est **{differs}**.",
  seconds: "{seconds} s",
  speedTitle: "Vitesse du plan le plus rapide le long du parcours",
  speedAxis: "vitesse, {unit}",
  readSpeed: "Lire la vitesse le long du parcours",
  speedSeries: "vitesse",
  speedDescription: "Vitesse du plan le plus rapide le long du parcours, sans les descentes : {most} au plus.",
  speedReading: "Là où la route descend de plus de {grade}, aucune vitesse n’est montrée : un plan n’en dit rien.",
  gradeTitle: "Pente le long du parcours",
  gradeAxis: "pente",
  readGrade: "Lire la pente le long du parcours",
  gradeSeries: "pente",
  gradeDescription: "La pente le long du parcours va de {low} à {high}.",
  gradeReading: "La pente va de {low} à {high}.",

  // Un plan qui tient compte du ± des chiffres.
  careful: "Un plan qui tient compte du ± de tes chiffres",
  carefulGist: "{better} en moyenne ; {differs} si tes chiffres sont justes",
  carefulSame: "Le même plan est aussi le meilleur pour cela",
  carefulLead:
    "Ce plan est le plus rapide en moyenne pour des cyclistes dont la puissance critique et W′ s’écartent des tiens dans leur ±. Ils mettent {mean} en moyenne ; avec le plan ci-dessus, {before}. W′ est épuisé avant l’arrivée pour {share} sur 100, contre {shareBefore} avec le plan ci-dessus.",

  // Ce qu'un plan peut demander.
  limits: "Ce que le plan peut te demander",
  limitsGist: "Combien de puissances, leurs limites et leur pas, et comment W′ revient",
  between:
    "Le nombre de puissances est au plus {targets} ; chacune est entre {least} et {greatest}, par pas de {round}.",
  recovery: "Comment W′ revient",
  comesBack: "Sous la puissance critique, W′ revient {form}.",
  differential: "d’autant plus lentement qu’il est plein",
  linear: "watt pour watt",
  none: "pas du tout",
  recoveryNote:
    "Personne ne sait laquelle de ces formes est la tienne. Selon ce plan, W′ descend à {differential} avec la première forme, à {linear} avec la deuxième et à {none} avec la troisième.",

  // Se redresser.
  sitUp: "Se redresser dans les montées raides",
  sitUpNot: "Tu restes en position partout. Te redresser est-il plus rapide ?",
  sitUpWanted: "Je me redresse dans les montées raides",
  sitUpWhere:
    "Là où la route monte de {grade} ou plus sur 200 m, je me redresse. Ma [surface de traînée|cda] y est de {cda}, ma [puissance critique|cp] est plus grande de {gain}.",
  sitUpPays: "Sans vent et à {power}, se redresser est plus rapide à partir d’environ {grade}.",
  sitUpNowhere: "Aucune montée ici n’est aussi raide et aussi longue : tu restes en position partout.",
  sitUpUntil: "redressé jusqu’à {distance}",
  sitUpDoes: {
    one: "Redressé dans {count} montée, tu es {differs}, à {spread} près.",
    other: "Redressé dans {count} montées, tu es {differs}, à {spread} près.",
  },

  // La bande.
  strip: "Une bande pour le cintre",
  stripGist: "À ouvrir avant d’imprimer, puis à découper",

  // Comment, et le tableau.
  howGist: "La puissance peut changer tous les cent mètres ; W′ ne doit jamais s’épuiser",
  howFastest:
    "La route est découpée en morceaux d’environ cent mètres, chacun avec sa puissance. On cherche les puissances qui donnent le temps le plus court, sans que W′ passe sous zéro ni au-dessus de son total. Les virages sont pris aussi lentement qu’il le faut.",
  howSimple:
    "Ensuite la route est coupée là où elle change : elle monte, descend, devient plate ou tourne, ou à une distance ronde. De ces endroits, on garde les quelques-uns avec lesquels le plan perd le moins. Les puissances sont arrondies pour que W′ suffise.",
  howCareful:
    "Le plan prudent part de celui-là. Ses puissances changent par pas tant que des cyclistes qui s’écartent de tes chiffres vont plus vite en moyenne, sans que W′ s’épuise plus souvent.",
  howAfter:
    "Une fois W′ épuisé, un cycliste tient {share} de la puissance critique jusqu’à l’arrivée. Cette part vient d’un seul test court à fond ; qu’elle vaille jusqu’à l’arrivée est supposé.",
  tableGist: "Puissance, vitesse et W′ le long du parcours",
  tableCaption: "Le plan et le plan le plus rapide le long du parcours",
  gradient: "Pente",
  planPower: "Plan, {unit}",
  fastestPower: "Le plus rapide, {unit}",
  planReserve: "W′ restant selon le plan, {unit}",
  aheadIn: "Avance du plus rapide sur régulier, s",
};
