// @ts-check
/** Que puis-je tenir, et combien de temps ? */

/** @satisfies {import("../books.d.ts").Texts<"power-curve">} */
export default {
  ask: "D’après {efforts}, que puis-je tenir pendant {time}, et combien de temps pourrais-je tenir {change} de plus ?",
  askIn:
    "D’après mes efforts intenses en {position}, que puis-je tenir pendant {time}, et combien de temps pourrais-je tenir {change} de plus ?",
  askNone:
    "D’après les chiffres que j’ai jusqu’ici, que puis-je tenir pendant {time}, et combien de temps pourrais-je tenir {change} de plus ?",
  efforts: { one: "{count} effort intense", many: "{count} d’efforts intenses", other: "{count} efforts intenses" },
  holdFor: "Durée à tenir",
  more: "Puissance en plus",
  inPosition: "Position des efforts",
  position: "position {number}",

  // The efforts.
  yours: "Tes efforts intenses",
  begin:
    "**Deux efforts intenses tracent ta courbe :** fais-en un de 3 à 5 minutes et un de 20 environ. Fais chacun en étant reposé, et aussi fort que tu peux le tenir régulièrement. Un seul donne une estimation. D’ici là, la courbe ci-dessous est celle d’un cycliste typique, ou celle de tes chiffres.",
  power: "Puissance moyenne",
  timeOf: "Effort {number} : durée",
  powerOf: "Effort {number} : puissance moyenne",
  positionOf: "Effort {number} : position",
  dateOf: "Effort {number} : date",
  placeOf: "Effort {number} : lieu",
  notSaid: "où ?",
  indoors: "intérieur",
  outdoors: "extérieur",
  asRidden: "position actuelle",
  remove: "Retirer",
  removeOf: "Retirer l’effort {number}",
  removed: "L’effort est retiré.",
  undo: "Annuler",
  firstTime: "Premier effort : durée",
  firstPower: "Premier effort : puissance moyenne en watts",
  secondTime: "Second effort : durée",
  secondPower: "Second effort : puissance moyenne en watts",
  newTime: "Nouvel effort : durée",
  newPower: "Nouvel effort : puissance moyenne en watts",
  draw: "Tracer ma courbe",
  add: "Ajouter cet effort",
  fillOne: "Donne une durée et une puissance : 20:00 et 280, par exemple.",
  paste: "En coller plusieurs",
  pasteHint:
    "Écris un effort par ligne : la durée et la puissance moyenne, puis, si tu veux, la position, la date et intérieur ou extérieur. Tu peux écrire, par exemple : 4:00 417, ou 20 min; 342 W; basse; 2026-05-01; intérieur.",
  pasteLabel: "Efforts à ajouter, un par ligne",
  addPasted: "Ajouter ces efforts",
  added: {
    one: "{count} effort est ajouté.",
    many: "{count} d’efforts sont ajoutés.",
    other: "{count} efforts sont ajoutés.",
  },
  nothingPasted: "Il n’y a pas encore d’effort dans le texte.",
  asItWas: "Rien n’a été ajouté ; ton texte est intact.",
  mostEfforts: "Il y a place ici pour {count} efforts au plus.",
  noTime: "Ligne {line} : « {text} » n’a pas de durée. Écris 20:00, 20 min ou 1200 s.",
  noPower: "Ligne {line} : « {text} » n’a pas de puissance en watts.",
  twoTimes: "Ligne {line} : « {text} » est une seconde durée.",
  twoPowers: "Ligne {line} : « {text} » est une seconde puissance ; un effort en a une.",
  twoOthers:
    "Ligne {line} : « {text} » est une seconde date, un second lieu ou une seconde position ; un effort en a un de chaque.",
  perKilogram: "Ligne {line} : « {text} » est en watts par kilogramme. Multiplie par ton poids et écris des watts.",
  unclearTime: "Ligne {line} : « {text} », est-ce des minutes ou des secondes ? Écris {text} min ou {text} s.",
  unknown: "Ligne {line} : « {text} » n’est pas compris. Une position doit être une des tiennes, par son nom.",
  date: "Ligne {line} : la date « {text} » peut désigner plusieurs jours, ou aucun. Écris 2026-05-01.",
  timeRange: "Ligne {line} : la durée dans « {text} » sort de {range}.",
  powerRange: "Ligne {line} : la puissance dans « {text} » sort de {range}.",
  caution:
    "**Avant un test.** Un effort intense jusqu’au bout augmente pour un court moment le risque cardiaque, surtout chez qui n’y est pas habitué. Consulte d’abord un professionnel de santé si tu as une maladie du cœur, des vaisseaux, du métabolisme ou des reins. Consulte-le aussi si tu n’as pas bougé régulièrement. Fais de même si l’effort te donne une gêne dans la poitrine, un essoufflement inhabituel, des malaises ou des palpitations. Arrête-toi aussitôt si l’un de ces signes apparaît. Teste-toi sur un home-trainer ou sur une route calme sans carrefour, le regard devant toi.",

  // The answer.
  youHold: "Pendant {time}, tu peux tenir",
  youMayHold: "Pendant {time}, tu peux peut-être tenir",
  testWould: "19\u00a0fois sur\u00a020 : un test donnerait {low}\u00a0à\u00a0{high}",
  spoken:
    "Pendant {time}, tu peux tenir {power}, à {spread} près. Un test de cette durée donnerait {low} à {high}, 19 fois sur 20.",
  figures: "Ta courbe en chiffres",
  figure: "Grandeur",
  value: "Valeur",
  spread: "Plus ou moins",
  moreFor: "{change} de plus, {power}, pendant",
  lessFor: "{change} de moins, {power}, pendant",
  forEver: "plus longtemps que la courbe ne peut dire",
  notAtAll: "pas du tout",
  criticalPower: "[Puissance critique, CP|cp]",
  wPrime: "[W′, le travail au-dessus de CP|wPrime]",
  peak: "Puissance de pointe",
  longRideLoss: "Perte sur longue durée, chaque fois que la durée est multipliée par 2,7",
  sevenMinute: "Puissance à sept minutes",
  decline: "Baisse, chaque fois que la durée est multipliée par 2,7",
  oneSecond: "Puissance à une seconde",
  exponent: "Exposant",
  restsOnGiven: "Aucun effort n’est encore saisi : ce sont CP et W′ de tes chiffres.",
  restsOnGuess:
    "C’est une estimation : W′ et la perte sur longue durée sont pris comme chez des cyclistes entraînés (W′ {wPrime}), et comptent comme aussi incertains.",
  restsOn: "La courbe suit le modèle **{model}**.",
  told: "C’est nettement celui qui convient le mieux à tes efforts : il obtient {weight} points.",
  notTold:
    "Tes efforts ne peuvent pas trancher : ce modèle obtient {weight} points, le modèle {other} {otherWeight}. Là où ils diffèrent, des efforts d’autres durées trancheraient.",
  chosen: "Tu as choisi ce modèle ; le modèle {other} convient mieux à tes efforts, avec {otherWeight} points.",
  alone: "Avec si peu d’efforts, aucun autre modèle ne peut être comparé.",
  use: "S’en servir dans toutes les questions",
  inUse: "Ce sont les chiffres utilisés",
  used: "CP et W′ sont désormais ceux de tes efforts, avec leur incertitude.",
  useSays: "Les courses se calculent avec le modèle {model} : il met CP {cp} et W′ {wPrime} dans tes chiffres.",

  // The chart.
  chart: "Puissance selon la durée",
  timeAxis: "durée",
  powerAxis: "puissance, W",
  read: "Lire la puissance à une durée",
  handle: "La durée demandée : gauche et droite la changent",
  you: "toi",
  chartSays:
    "La puissance qu’on peut tenir baisse avec la durée, de {high} à {short} jusqu’à {low} à {long}. Pour {time}, elle est de {power}.",
  drag: "Tire l’anneau, ou sers-toi des flèches.",
  reading: "Tu peux tenir **{power}** pendant {time}. La bande teintée est là où tomberait un test, 19 fois sur 20.",
  leftOut: "non compté",
  rings: "Les petits anneaux sont tes épreuves.",
  changed: "{change} : {time}",

  // Models.
  "model.two-parameter": "à deux paramètres",
  "model.three-parameter": "à trois paramètres",
  "model.omni-domain": "pour toutes durées",
  "model.log-decline": "baisse logarithmique",
  "model.power-law": "loi de puissance",
  models: "Quel modèle ?",
  modelsGist: "Cinq relations publiées, ajustées aux mêmes efforts",
  modelsNone: "Les modèles sont ajustés et comparés dès qu’il y a deux efforts de durées différentes.",
  readBy: "Lire la courbe selon",
  byItself: "celui qui convient le mieux aux efforts",
  model: "Modèle",
  parameters: "Ses chiffres",
  scatter: "Dispersion",
  evidence: "Points",
  inHundred: "{count} sur 100",
  "outcome.partly": "seulement au-delà de sept minutes, donc pas comparé",
  "outcome.too-few": "demande plus d’efforts",
  "outcome.not-reached": "demande un effort de moins de {short} ou de plus de {long}",
  "outcome.notReachedLog": "demande deux efforts de plus de sept minutes",
  "outcome.undetermined": "les efforts le laissent ouvert",
  "outcome.implausible": "donne des chiffres qu’aucun cycliste n’a",
  modelsCaption: "Chaque modèle est ajusté aux efforts, pondérés selon leur répétabilité",
  formsSay:
    "La relation à deux paramètres a trois formes : travail selon la durée, puissance selon l’inverse de la durée, durée selon la puissance. Chacune pondère autrement les mêmes efforts : CP vaut {cpA}, {cpB} et {cpC} ; W′ vaut {wA}, {wB} et {wC}.",
  evidenceSays:
    "Les points disent à quel point chaque modèle convient, sur 100 en tout. Chaque nombre ajusté par un modèle lui en retire (critère d’Akaike). En dessous de 90, les efforts ne tranchent pas.",

  // Positions.
  positions: "Dans chaque position",
  positionsGist: "{position} : CP {change}",
  positionsCaption: "Puissance par rapport à {base}, d’après des efforts dans chacune",
  positionsNone: "Indique des efforts dans deux positions pour voir combien de puissance une position prend.",
  positionColumn: "Position",
  cpChange: "Écart de CP",
  guessedW: "W′ repris de {base}",
  beyondEfforts: "entre parenthèses : au-delà des efforts",
  positionsSay:
    "D’un jour à l’autre, les efforts varient de plus que ce que prennent la plupart des positions. Répète les deux à tour de rôle, avec le même capteur.",

  // Training.
  training: "Ce que rapporte l’entraînement",
  trainingGist: "{low} à {high} sur cette durée, d’après un mois de fractionné publié",
  trainingSays:
    "Chez des cyclistes très entraînés, deux séances de fractionné par semaine pendant quatre semaines ont élevé la puissance aérobie maximale de {low} à {high}. Pour toi, sur {time}, ce serait {lowW} à {highW}. Rien n’est promis à personne.",
  trainingHeld: "La puissance actuelle pour {time} pourrait alors être tenue {lowTime} à {highTime}.",
  trainingShown:
    "Par pur hasard, deux tests diffèrent de {shown} au plus, 19 fois sur 20, car un test se répète à {error} près. Pour montrer un gain de {low}, il faut {lowTests} avant et autant après ; pour {high}, il en faut {highTests}. Si le gain est réel, les tests le montrent alors 4 fois sur 5. S’il ne l’est pas, ils semblent le montrer 1 fois sur 20.",
  tests: { one: "{count} test", many: "{count} de tests", other: "{count} tests" },
  repeats: "Répétabilité d’un test",
  repeatsSay:
    "Un effort sans ± propre compte comme sûr à {error} près. Les tests de 20 minutes de huit cyclistes entraînés se répétaient à {twenty} près, ceux de 4 minutes à {four}.",

  // How it is worked out, and the table.
  how: "Comment c’est calculé",
  howGist: "La courbe la plus proche des efforts, chacun pondéré selon sa répétabilité",
  howTwo: "P de t égale CP plus W prime sur t",
  howThree: "P de t égale CP plus W prime sur la somme de t et de W prime sur P max moins CP",
  howOmni:
    "P de t égale CP plus W prime sur t fois un moins e puissance moins t fois P max moins CP sur W prime, moins A fois log de t sur T",
  howLog: "P de t égale M A P moins E fois le logarithme naturel de t sur sept minutes",
  howLaw: "P de t égale S fois t puissance moins k",
  howFit:
    "Les chiffres de chaque modèle sont ceux des moindres carrés. Pour chaque effort, l’écart entre sa puissance et la courbe est compté en unités de son propre ±. La somme des carrés de ces écarts est rendue la plus petite possible.",
  howBand:
    "L’incertitude des chiffres vient de la façon dont la courbe répond à chacun d’eux, tous ensemble, et passe dans la bande. Ce qu’on sait de la répétabilité des tests compte comme sept efforts de plus. Deux ou trois efforts ne font donc pas semblant d’être sûrs et ne renoncent pas non plus.",
  howParts:
    "Le modèle pour toutes durées n’a de puissance de pointe que si un effort dure moins de deux minutes. Il n’a de perte sur longue durée que si l’un dépasse T.",
  howNot:
    "Tout cela vaut pour un cycliste reposé, sans surchauffe et bien alimenté. Chaleur, altitude et sortie dure juste avant n’y sont pas. Après deux heures dures, des cyclistes avaient perdu {cp} de CP et {wPrime} de W′.",
  "symbol.P": "puissance qui peut être tenue pendant la durée t",
  "symbol.CP": "puissance critique, et travail possible au-dessus",
  "symbol.Pmax": "puissance au premier instant",
  "symbol.A":
    "ce que les longues sorties font perdre chaque fois que la durée est multipliée par 2,7 au-delà de T, une demi-heure",
  "symbol.MAP": "puissance à sept minutes et ce qui se perd chaque fois que la durée est multipliée par 2,7",
  "symbol.S": "puissance à une seconde et façon dont elle baisse",
  table: "En tableau",
  tableGist: "Puissance pour des durées rondes, avec sa bande",
  tableCaption: "Ce qui peut être tenu pour des durées rondes, et où tomberait un test, 19 fois sur 20",
  tableTime: "Durée",
  tablePower: "Puissance",
  tableTest: "Un test",
  events: "Tes épreuves",
  eventsCaption:
    "Chaque épreuve sur ce parcours, dans cette position, à la puissance que la courbe donne pour exactement sa durée",
  eventsGist: "{event} demande {power} pendant {time}.",
  event: "Épreuve",
  eventTime: "Durée",
  eventPower: "Puissance",
  beyond: "plus long que tout effort",
};
