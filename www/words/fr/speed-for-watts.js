// @ts-check
/** Quelle vitesse donnent ces watts, où vont-ils, et que donneraient les dix suivants ? */

/** @satisfies {import("../books.d.ts").Texts<"speed-for-watts">} */
export default {
  wayRound: "Dans quel sens",
  byPower: "Avec une puissance de",
  bySpeed: "À une vitesse de",
  askSpeed:
    "{by} {amount}, une [surface de traînée|cda] de {cda} et une pente de {grade}, {day} : quelle vitesse cela donne-t-il, et où vont les watts ?",
  askPower:
    "{by} {amount}, avec une [surface de traînée|cda] de {cda} et une pente de {grade}, {day} : quelle puissance faut-il, et où vont les watts ?",
  slopeHere: "Pente de la route ici",
  directionHere: "Direction de la route ici",

  air: "air",
  rolling: "pneus",
  climbing: "pente",
  bearings: "roulements",
  drivetrain: "transmission",

  buys: "{power} donnent",
  takes: "{speed} demandent",
  spokenBuys: "{power} donnent {speed}, à plus ou moins {spread} près.",
  spokenTakes: "{speed} demandent {power}, à plus ou moins {spread} près.",
  whereWattsGo: "Où vont les watts",
  into: "Vers",
  power: "Puissance",
  otherAir: "Les mêmes watts dans un autre air, et dix de plus",
  ride: "Course",
  speed: "Vitesse",
  difference: "Écart",
  today: "Aujourd’hui",
  atThisSpeed: "À cette vitesse",
  tenMore: "{ten} de plus",
  inStillAir: "Sans vent",
  inStandardAir: "En air standard",

  nextTen:
    "Les {ten} suivants donnent **{gain}**. Un pour cent de puissance en plus, c’est {percent} de vitesse en plus.",
  percentForPercent:
    "**Un pour cent de chaque.** Avec un pour cent de surface de traînée en moins, tu vas {cda} ; dans un air un pour cent moins dense, {density}. Avec un pour cent de masse en moins, tu vas {mass} ; avec un pour cent de [résistance au roulement|crr] en moins, {rolling}.",
  percentFaster: "{percent} plus vite",
  percentSlower: "{percent} moins vite",
  airStandard: "**L’air du jour** pèse {density}, comme un jour standard au niveau de la mer.",
  airThinner:
    "**L’air du jour** pèse {density} ; il est {percent} moins dense qu’un jour standard au niveau de la mer.",
  airThicker: "**L’air du jour** pèse {density} ; il est {percent} plus dense qu’un jour standard au niveau de la mer.",
  windAgainst:
    "Il t’arrive {wind} du vent prévu : {head} de face, {cross} de côté. Tu sens {felt} de vent sous un [angle de lacet (yaw)|yaw] de {yaw}.",
  windBehind:
    "Il t’arrive {wind} du vent prévu : {head} dans le dos, {cross} de côté. Tu sens {felt} de vent sous un [angle de lacet (yaw)|yaw] de {yaw}.",
  noWind: "Il n’y a pas de vent.",
  caution:
    "Garde les yeux sur la route. Aucune vitesse de cette page ne justifie de garder la tête baissée dans la circulation, par vent de côté ou en descente. Le règlement de l’épreuve et le code de la route passent d’abord.",
  howLongHold: "Combien de temps puis-je tenir cette puissance ?",

  whyShare:
    "L’air fait {share} de la résistance à l’avancement ; la puissance qu’il prend croît comme le cube de la vitesse.",
  whyGiven:
    "L’air prend {watts}, et la pente ou le vent en rend une partie ; la puissance qu’il prend croît comme le cube de la vitesse.",
  whyCubeShare:
    "Sans vent, la puissance pour l’air croît comme le cube de la vitesse, celle pour les pneus et la pente seulement comme la vitesse. À {speed}, l’air fait {share} de la résistance à l’avancement. Chaque watt de plus donne donc moins de vitesse que le précédent : c’est la courbe qui descend.",
  whyCubeGiven:
    "Sans vent, la puissance pour l’air croît comme le cube de la vitesse, celle pour les pneus et la pente seulement comme la vitesse. À {speed}, l’air prend {watts}, et la pente ou le vent en rend une partie. Chaque watt de plus donne donc moins de vitesse que le précédent : c’est la courbe qui descend.",
  whyThird:
    "S’il n’y avait que l’air, un pour cent de puissance en plus donnerait un tiers de pour cent de vitesse. Dans une montée raide, il donne presque un pour cent entier. Ton propre chiffre est entre les deux.",

  stackTitle: "Où vont les watts à chaque vitesse",
  speedAxis: "vitesse, {unit}",
  powerAxis: "puissance aux pédales, {unit}",
  powerAxisGiven: "puissance, {unit}",
  speedHandle: "Toi : gauche et droite changent ta vitesse, et les watts avec elle",
  readWatts: "Lire les watts à une vitesse",
  gainTitle: "Ce que donnent les dix watts suivants à chaque puissance",
  gainAxis: "ce que donnent {ten} de plus, {unit}",
  powerHandle: "Toi : gauche et droite changent ta puissance",
  readGain: "Lire ce que donnent dix watts de plus à une puissance",
  inAll: "en tout",
  stackDescription:
    "Les watts à chaque vitesse jusqu’à {most}, empilés selon leur destination. À {speed}, il y en a {power}, l’air faisant {share} de la résistance à l’avancement.",
  stackSpoken: "{speed}, {power}",
  stackReading: "**{power}** à **{speed}** : l’air fait {share} de la résistance à l’avancement.",
  stackReadingGiven: "**{power}** à **{speed}** : la route et le vent donnent {given} en plus.",
  gainDescription:
    "Ce que dix watts de plus ajoutent à la vitesse, à chaque puissance jusqu’à {most} : de moins en moins à mesure que la puissance monte. À {power}, c’est {gain}.",
  gainSeries: "dix watts de plus donnent",
  gainSpoken: "{power} : dix de plus donnent {gain}",
  gainReading: "À {power}, dix watts de plus donnent **{gain}**.",

  tableGist: "Les watts selon la vitesse, et ce qu’ajouteraient dix de plus",
  tableCaption:
    "Puissance aux pédales selon la vitesse et sa destination, en watts ; et ce qu’ajouteraient dix de plus, en {unit}.",
  speedIn: "Vitesse, {unit}",
  powerIn: "Puissance, {unit}",
  airIn: "Air, {unit}",
  rollingIn: "Pneus, {unit}",
  climbingIn: "Pente, {unit}",
  bearingsIn: "Roulements, {unit}",
  drivetrainIn: "Transmission, {unit}",
  tenMoreIn: "{ten} de plus, {unit}",

  howGist: "Les forces sur la route, additionnées, fois la vitesse",
  howSteady:
    "À vitesse constante, la puissance qui atteint la route égale les forces qui s’y exercent fois la vitesse :",
  formulaPower: "êta fois P égale v fois la somme des forces de l’air, du roulement, de la pente et des roulements",
  formulaAir:
    "la force de l’air est un demi de rhô fois la surface de traînée fois le vent apparent fois v plus vent de face",
  formulaWind: "le vent apparent est la racine du carré de v plus h, plus le carré de c",
  formulaTyres: "la force de roulement est Crr m g cosinus thêta, et celle de la pente m g sinus thêta",
  symbolPower: "puissance aux pédales, et la part qui atteint la route",
  symbolSpeed: "vitesse par rapport au sol ; vent de face et de côté à hauteur du cycliste",
  symbolDensity: "masse volumique de l’air, d’après la température, la pression et l’humidité (CIPM-2007)",
  symbolCda: "surface de traînée ; sans tableau par angle de lacet, la traînée est dirigée selon le vent apparent",
  symbolRolling: "coefficient de résistance au roulement, masse du cycliste et du vélo, pesanteur, pente",
  symbolBearings: "une force constante et une qui croît avec la vitesse",
  howFound:
    "La vitesse pour des watts donnés est celle où les deux membres sont égaux ; elle est trouvée par recherche de racine. Ce que donnent dix watts de plus est la différence de deux vitesses ainsi trouvées. Le vent prévu est ramené à ta hauteur par la loi logarithmique sur le terrain que tu indiques. Pour chaque ±, chaque chiffre incertain est déplacé de son propre ± et les effets sont additionnés en carrés.",
  howNot: "Les rafales, la vitesse de la circulation et une route plus rugueuse ici que là n’y sont pas.",
};
