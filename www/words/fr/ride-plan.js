// @ts-check
/** Comment répartir mon effort sur ce parcours ? */

/** @satisfies {import("../books.d.ts").Texts<"ride-plan">} */
export default {
  ask: "{distance} sur {course} avec [puissance critique|cp] {cp}, [W′|wPrime] {wPrime} et [surface de traînée|cda] {cda}, {day} : comment répartir mon effort ?",

  // La réponse.
  takes: "{distance} selon ce plan prennent",
  ahead: "{differs} qu’à {power} réguliers",
  asFast: "aussi rapide qu’à {power} réguliers",
  spoken: "{distance} selon ce plan prennent {figure}, plus ou moins {spread} : {compared}.",
  planCaption: "Le plan : à partir de chaque endroit cette puissance, jusqu’au suivant",
  from: "À partir de, {unit}",
  place: "Ce que tu y vois",
  power: "Puissance, {unit}",
  "landmark.start": "le départ",
  "landmark.climb": "une montée commence, {grade}",
  "landmark.descent": "une descente commence, {grade}",
  "landmark.level": "la route devient plate",
  "landmark.turn": "la route tourne",
  "landmark.distance": "rien : selon la distance",
  upTo: "jusqu’à {power}",
  best: "Le plan le plus rapide que W′ permette change sans cesse de puissance et prend {time}. Avec ces {count} puissances, tu es {differs}.",
  bestOne:
    "Le plan le plus rapide que W′ permette change sans cesse de puissance et prend {time}. Avec cette seule puissance, tu es {differs}.",
  runOut:
    "Si la puissance critique et W′ s’écartent de tes chiffres dans leur ±, W′ est vide avant l’arrivée dans {share} cas sur 100.",
  runOutRarely:
    "Même si la puissance critique et W′ s’écartent de leur ±, W′ suffit presque toujours jusqu’à l’arrivée.",
  testCp: "Teste ta puissance critique avant de te fier à un plan",

  // Si cela se passe autrement.
  otherwise: "Si cela se passe autrement",
  whatIf: "Et si",
  thenHeading: "Alors",
  tooHard: "Les dix premières minutes sont {share} trop dures",
  cpLower: "Ta puissance critique est inférieure de {share} à ce que tu crois",
  thenLasts: "{differs} ; W′ suffit",
  thenRunsOut: "{differs} ; W′ est vide après {distance}",
  thenEven: "Un effort régulier à ton vrai niveau prendrait {time}.",
  effortOnly:
    "**Un plan parle d’effort, jamais de vitesse.** En descente et en virage, roule aussi lentement que la route, la circulation et la visibilité l’exigent ; une puissance y est une limite supérieure. Le règlement de l’épreuve et le code de la route passent d’abord. Jusqu’à l’arrivée, c’est un effort maximal : si tu ne te sens pas bien ou n’en as pas l’habitude, demande d’abord un avis médical.",

  // Graphiques.
  along: "le long du parcours, {unit}",
  powerTitle: "Puissance le long du parcours",
  powerAxis: "puissance, {unit}",
  readPower: "Lire la puissance le long du parcours",
  planSeries: "plan",
  fastestSeries: "le plus rapide",
  evenLevel: "{power} réguliers",
  powerDescription:
    "Puissance le long du parcours, entre {low} et {high} dans le plan. Un effort régulier demande {even}.",
  powerReading: "Le plan demande de {low} à {high} ; un effort régulier, **{even}**.",
  reserveTitle: "W′ restant le long du parcours",
  reserveAxis: "W′ restant, {unit}",
  readReserve: "Lire W′ restant le long du parcours",
  reserveDescription: "W′ restant le long du parcours. Selon le plan, il descend à {plan}.",
  reserveReading: "Selon le plan, W′ descend jusqu’à **{plan}**.",
  aheadTitle: "Avance du plan le plus rapide sur un effort régulier",
  aheadAxis: "avance, secondes",
  readAhead: "Lire l’avance",
  aheadSeries: "avance",
  aheadDescription:
    "Le plan le plus rapide face à un effort régulier, le long du parcours ; à l’arrivée, il est {differs}.",
  aheadReading: "À l’arrivée, le plan le plus rapide est **{differs}** qu’un effort régulier.",
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
    "Ce plan est le plus rapide en moyenne pour celles et ceux dont la puissance critique et W′ s’écartent des tiens dans leur ±. Ils mettent {mean} en moyenne ; avec le plan ci-dessus, {before}. W′ est vide avant l’arrivée pour {share} sur 100, contre {shareBefore}.",

  // Ce qu'un plan peut demander.
  limits: "Ce que le plan peut te demander",
  limitsGist: "Combien de puissances, leurs limites et leur pas, et comment W′ revient",
  between: "Le plan a au plus {targets} puissances, entre {least} et {greatest}, par pas de {round}.",
  recovery: "Comment W′ revient",
  comesBack: "Sous la puissance critique, W′ revient {form}.",
  differential: "d’autant plus lentement qu’il est plein",
  linear: "watt pour watt",
  none: "pas du tout",
  recoveryNote:
    "Personne ne sait quelle forme te convient. Selon ce plan, W′ descend à {differential} avec la première forme, à {linear} avec la deuxième et à {none} avec la troisième.",

  // La bande.
  strip: "Une bande pour le cintre",
  stripGist: "À ouvrir avant d’imprimer, puis à découper",

  // Comment, et le tableau.
  howGist: "La puissance peut changer tous les cent mètres ; W′ ne doit jamais s’épuiser",
  howFastest:
    "La route est découpée en morceaux d’environ cent mètres, chacun avec sa puissance. On cherche les puissances qui donnent le temps le plus court, sans que W′ passe sous zéro ni au-dessus de son total. Les virages sont pris aussi lentement qu’il le faut.",
  howSimple:
    "Ensuite la route est coupée là où elle change : elle monte, descend, devient plate ou tourne, ou à une distance ronde. On garde quelques-uns de ces endroits pour que le plan perde le moins. Les puissances sont arrondies pour que W′ suffise.",
  howCareful:
    "Le plan prudent part de celui-là. Ses puissances changent par pas tant que ceux qui s’écartent de tes chiffres vont plus vite en moyenne et ne se vident pas plus souvent.",
  howAfter:
    "Qui est vide tient ensuite {share} de la puissance critique jusqu’à l’arrivée. Cette part vient d’un seul test court à fond ; qu’elle tienne jusqu’à l’arrivée est supposé.",
  tableGist: "Puissance, vitesse et W′ le long du parcours",
  tableCaption: "Le plan et le plan le plus rapide le long du parcours",
  gradient: "Pente",
  planPower: "Plan, {unit}",
  fastestPower: "Le plus rapide, {unit}",
  planReserve: "W′ restant selon le plan, {unit}",
  aheadIn: "Avance du plus rapide sur régulier, s",
};
