// @ts-check
/** Plus de puissance, ou moins de traînée ? */

/** @satisfies {import("../books.d.ts").Texts<"power-or-drag">} */
export default {
  ask: "{distance} de {course}, {effort}, avec un [CdA|cda] de {cda}, {day}, qu’est-ce qui rapporte le plus : {power} de puissance ou {drag} de traînée en moins ?",
  inFixedTime:
    "Tous les temps ici sont sur la distance de {ride}. En ce temps, plus de puissance donne {power}, moins de traînée {drag}.",
  morePowerBy: "Puissance en plus",
  lessDragBy: "Traînée en moins",

  morePower: "plus de puissance",
  lessDrag: "moins de traînée",
  powerIsFaster: "{power} est plus rapide de",
  dragIsFaster: "{drag} est plus rapide de",
  morePowerFirst: "Plus de puissance",
  lessDragFirst: "Moins de traînée",
  twoAreLevel: "Les deux sont à égalité",
  spokenPower: "Plus de puissance est plus rapide de {figure} que moins de traînée, à plus ou moins {spread} près",
  spokenDrag: "Moins de traînée est plus rapide de {figure} que plus de puissance, à plus ou moins {spread} près",
  spokenLevel: "Plus de puissance et moins de traînée sont à égalité.",
  rulerPower:
    "De moins de traînée, à gauche, à plus de puissance, à droite : plus de puissance mène de {figure}, à {spread} près.",
  rulerDrag:
    "De moins de traînée, à gauche, à plus de puissance, à droite : moins de traînée mène de {figure}, à {spread} près.",
  threeTimes: "Les trois temps",
  asYouAre: "Tel quel",
  caution:
    "**Avant de te baisser :** regarde où tu vas, et garde les efforts intenses et les positions nouvelles pour les routes calmes. Le règlement de l’épreuve, le code de la route et l’avis d’un spécialiste de la position ou d’un médecin passent avant les secondes.",

  onePercent: "Un pour cent de CdA vaut {watts} pour toi.",
  onePercentAnd: "Un pour cent de CdA vaut {watts} pour toi ; {percent} valent {more}.",
  airTakes: "L’air prend {share} de ton travail ;",
  airTakesAll: "L’air prend plus que ton propre travail, la pente donne le reste ;",
  tiesAt: "sur route plate, les deux changements sont à égalité quand il en prend **{tie}**.",
  neverTies: "aucune part ne mettrait ces deux changements à égalité.",
  exchange: "Ce que l’un vaut dans l’autre",
  sameTime: "Chaque ligne vaut le même temps",
  ratesHold:
    "Ces équivalences valent à ton propre point, à puissance égale tout du long. Elles sont justes pour de petits changements, un peu moins pour de grands.",
  change: "Changement",
  areaOfCda: "{unit} de CdA",
  percentOfCda: "{percent} de CdA",
  ofCrr: "{amount} de [Crr|crr]",
  exchangeGist:
    "Un watt vaut {area}. En watts, {smallArea} vaut {forArea}, un kilogramme {forKilogram}, {smallCrr} de résistance au roulement {forCrr}.",

  mapTitle: "Temps à l’arrivée pour chaque puissance et chaque surface de traînée",
  mapX: "puissance, {unit}",
  mapY: "surface de traînée CdA, {unit}",
  mapYou: "Toi sur la carte : gauche et droite changent la puissance, haut et bas la surface de traînée",
  evenTrade: "{time} tout le long de cette ligne",
  tradeRate: "{watts} contre {area}",
  pointSpoken: "{power} à {drag} : {time}",
  powerChange: "{percent} de puissance en plus",
  dragChange: "{percent} de traînée en moins",
  eachLine: "chaque ligne est un temps à l’arrivée",
  mapDescription:
    "Le temps à l’arrivée baisse vers la droite, avec plus de puissance, et vers le bas, avec moins de surface de traînée. Tu es à {power} et {drag}, {time}. {morePower} : {powerDiffers} ; {lessDrag} : {dragDiffers}.",
  mapReading: "**{power}** et **{drag}** donnent **{time}**, à {speed}.",
  dragRingEven:
    "Déplace l’anneau, ou sers-toi des flèches du clavier : sur les côtés, c’est ta puissance critique qui change.",
  dashedRing: "L’anneau en pointillé montre à quel point tes chiffres sont connus.",
  timesCaption: "Temps à l’arrivée selon la puissance et la surface de traînée",
  timesGist: "Temps à l’arrivée pour des puissances et des surfaces de traînée rondes autour des tiennes",
  timesTrouble: "Il n’y a pas de plage ronde de puissances et de surfaces de traînée autour de ces valeurs.",

  takes: "Ce que chacun demande",
  demands:
    "Plus de puissance, c’est {power} de plus à gagner à l’entraînement. Moins de traînée, c’est {area} de moins à trouver, par la position ou le matériel.",
  takesGistClose: "Les temps sont proches ; l’effort demandé ne l’est pas.",
  takesGist:
    "De l’entraînement d’un côté, une position plus compacte ou un meilleur matériel de l’autre, et ce qui est publié",
  takesLeadClose: "Les temps sont proches. Ce que chacun te demande ne l’est pas :",
  takesLead: "Ce que chacun demande :",
  heldFor: "aujourd’hui, ta courbe te le donne pendant **{time}**",
  heldNot: "aujourd’hui, ta courbe ne te le donne pas du tout",
  heldAlways: "aujourd’hui, ta courbe te le donne déjà aussi longtemps que tu veux",
  powerTakes:
    "{lead} {percent} de plus, c’est {watts} ; {held}, et cette course durerait {time}. D’après une étude, quatre semaines de fractionné ont fait progresser des cyclistes très entraînés de {low} à {high} sur {trial}.",
  powerTakesLead: "Plus de puissance demande de l’entraînement.",
  dragTakes:
    "{lead} D’après une étude, un cintre plus bas a réduit le CdA de cinq cyclistes de {cda}, et leur puissance de {power}.",
  dragTakesLead: "Moins de traînée demande une position plus compacte ou un meilleur matériel.",
  closeCall:
    "Les temps sont proches : ce qui compte surtout, c’est ce que tu obtiens le plus facilement. La position peut donc être le meilleur choix alors que le chronomètre voit presque une égalité.",
  oneFavoured: "L’un est plus rapide ici ; ce que chacun te demande compte quand même.",
  price:
    "Si tu t’entraînes déjà, un dixième de puissance en plus, c’est beaucoup demander ; un cintre plus bas s’essaie en un après-midi. Mais une position n’est pas rapide si elle prend autant de puissance qu’elle en vaut, ou si on la perd dans les derniers kilomètres. Mesures-y ta puissance avant de décider.",
  ownCurve:
    "À {power}, ta courbe de puissance tient {time} ; à {more}, {held}. Pour une course aussi longue que la tienne, elle permet {sustainable}.",
  ownCurveLong:
    "À {power}, ta courbe de puissance tient aussi longtemps que cette course l’exige ; à {more}, {held}. Pour une course aussi longue que la tienne, elle permet {sustainable}.",
  ownDrag:
    "De l’autre côté, {percent} de traînée en moins, c’est {lower} au lieu de {area}. Cela ne rapporte plus rien dès que la nouvelle position prend environ **{price}** de puissance.",
  trainedRiders:
    "**Cyclistes entraînés :** quatre semaines de fractionné ont fait progresser des cyclistes très entraînés de {low} à {high} sur {trial}.",
  newRiders:
    "**Débutants :** de mémoire, et sans vérification dans un article, ils gagnent {low} à {high} en deux mois. Quand on débute, plus de puissance est pour un temps le plus facile des deux.",
  lowerBars: "**Cintre plus bas :** cinq cyclistes avaient {cda} de CdA en moins et {power} de puissance en moins.",
  torsoAngle:
    "**Angle du tronc :** à {angle}, onze cyclistes avaient {watts} de puissance en moins au seuil anaérobie, là où un effort n’est plus tenable régulièrement. La position basse a gagné quand même.",
  takesCaution:
    "L’entraînement dur et les efforts maximaux demandent un cœur sain et du repos entre eux. Change de position par petits pas et, si quelque chose fait mal, vois un spécialiste de la position ou un kinésithérapeute.",

  whyGistTie:
    "L’air prend {share} de ton travail sur cette route. Sur une route plate, les deux changements sont à égalité quand il en prend {tie}.",
  whyGistNoTie:
    "L’air prend {share} de ton travail sur cette route. Aucune part ne mettrait ces deux changements à égalité.",
  whyGistDownTie:
    "L’air prend plus que ton propre travail sur cette route, la pente donne le reste. Sur une route plate, les deux changements sont à égalité quand il en prend {tie}.",
  whyGistDownNoTie:
    "L’air prend plus que ton propre travail sur cette route, la pente donne le reste. Aucune part ne mettrait ces deux changements à égalité.",
  whyPower:
    "Plus de puissance aide contre tout ce qui te retient : {more} de plus pour l’air, les pneus, les roulements et la pente à la fois. Moins de traînée n’aide que contre l’air, ici {share} de ton travail. Mais là, elle aide plus qu’il n’y paraît. Avec {less} de traînée en moins, les mêmes watts écartent {cheaper} d’air en plus, car ils ne rencontrent plus que {divisor} fois la traînée.",
  whyPowerDown:
    "Plus de puissance aide contre tout ce qui te retient : {more} de plus pour l’air, les pneus, les roulements et la pente à la fois. Moins de traînée n’aide que contre l’air, qui prend ici plus que ton propre travail, la pente donnant le reste. Mais là, elle aide plus qu’il n’y paraît. Avec {less} de traînée en moins, les mêmes watts écartent {cheaper} d’air en plus, car ils ne rencontrent plus que {divisor} fois la traînée.",
  whyBelow:
    "Sur route plate et sans vent, ces deux faits s’équilibrent quand l’air prend {tie} du travail. S’il en prend moins, plus de puissance mène ; s’il en prend plus, c’est moins de traînée. Tu es en dessous.",
  whyAbove:
    "Sur route plate et sans vent, ces deux faits s’équilibrent quand l’air prend {tie} du travail. S’il en prend moins, plus de puissance mène ; s’il en prend plus, c’est moins de traînée. Tu es au-dessus.",
  whyNear:
    "Sur route plate et sans vent, ces deux faits s’équilibrent quand l’air prend {tie} du travail. S’il en prend moins, plus de puissance mène ; s’il en prend plus, c’est moins de traînée. Tu es à peu près à ce niveau ; le départ et la longueur du parcours décident alors.",
  whyOther:
    "Sur route plate et sans vent, ces deux faits s’équilibrent quand l’air prend {tie} du travail. S’il en prend moins, plus de puissance mène ; s’il en prend plus, c’est moins de traînée. Sur ce parcours il en prend {share}, mais les côtes, le vent ou le départ inversent le résultat.",
  whyNever: "Avec des changements aussi inégaux, c’est le même qui gagne sur toute route plate.",
  whyShare:
    "Les montées, les pneus mous et une allure lente font baisser la part de l’air et favorisent la puissance. La vitesse, des pneus lisses et le vent de face la font monter et favorisent moins de traînée. Essaie une côte, ou une vitesse de record, dans la phrase ci-dessus.",
  howGist: "La même course, un seul chiffre changé à la fois, si bien que ce qui est commun s’annule",
  howThreeRides:
    "La course est calculée trois fois : tel quel, avec plus de puissance et avec moins de traînée, sur la même route le même jour. Ce qui est incertain de la même façon dans les trois, l’erreur propre du modèle comprise, s’annule dans l’écart. C’est pourquoi un écart de quelques secondes peut être plus sûr que le temps à l’arrivée à côté duquel il se trouve.",
  formulaForces:
    "puissance aux pédales fois rendement de la transmission égale vitesse fois la somme des forces : air, roulement, pente, roulements, inertie",
  symbolPower: "puissance aux pédales, en W, et la part qui atteint la roue",
  symbolSpeed: "vitesse par rapport au sol et vent de face, en m/s",
  symbolDensity: "masse volumique de l’air, en kg/m³, d’après la température, la pression et l’humidité",
  symbolCda: "surface de traînée, en m²",
  symbolAir: "vitesse de l’air sur le cycliste, en m/s",
  symbolMass: "masse, et masse avec la part des roues qui tournent, en kg",
  symbolCrr: "coefficient de résistance au roulement",
  symbolSlope: "pente de la route",
  symbolBearings: "résistance des roulements, en N",
  howTie:
    "Sans tableau par [angle de lacet|yaw], la traînée est dirigée selon le vent apparent. Sur route plate et sans vent, deux lignes donnent la part de l’air f à laquelle les deux changements mènent à la même vitesse. On y note r le rapport de la nouvelle vitesse à l’ancienne. La part de puissance en plus est x, la part de traînée en moins y :",
  formulaPower: "f r au cube plus un moins f fois r égale un plus x",
  formulaDrag: "un moins y fois f r au cube plus un moins f fois r égale un",
  howEven:
    "Au meilleur effort régulier, c’est toute la courbe de puissance qui est relevée. La puissance régulière qu’elle permet pour exactement le temps obtenu est alors recalculée pour chaque course. Le ± est un écart type. Il vient d’abord de la façon dont chacun de tes chiffres déplace l’écart. Dès que tu ne changes plus rien, il vient de {draws} simulations de tous à la fois.",
  dragLimit: "Tes {percent} ne rapportent plus rien dès qu’ils te prennent environ **{price}** de puissance.",
  lastsFor: "elle tient **{time}**",
  lastsNot: "elle ne tient pas du tout",
  lastsAlways: "elle tient aussi longtemps que tu veux",
};
