// @ts-check
/** Combien de temps faut-il, jusqu’où en un temps donné, ou quels watts demande un temps ? */

/** @satisfies {import("../books.d.ts").Texts<"finish-time">} */
export default {
  askTime:
    "{distance} de {course}, {effort}, avec une [surface de traînée|cda] de {cda}, {day} : combien de temps faut-il ?",
  askFar: "{distance} de {course}, {effort}, avec une [surface de traînée|cda] de {cda}, {day} : jusqu’où irai-je ?",
  askPower:
    "{distance} de {course}, {effort}, avec une [surface de traînée|cda] de {cda}, {day} : quelle puissance faut-il ?",

  bestEvenEffort: "à ton meilleur effort régulier",
  evenTakes: "Pour {distance} {effort}, il te faut",
  wattsTake: "Pour {distance} à {power}, il te faut",
  evenCovers: "En {time} {effort}, tu parcours",
  wattsCover: "En {time} à {power}, tu parcours",
  timeTakes: "{distance} en {time} demandent",
  spokenEvenTakes:
    "Pour {distance} à ton meilleur effort régulier, il te faut {figure}, à plus ou moins {spread} près.",
  spokenWattsTake: "Pour {distance} à {power}, il te faut {figure}, à plus ou moins {spread} près.",
  spokenEvenCovers:
    "En {time} à ton meilleur effort régulier, tu parcours {figure} {unit}, à plus ou moins {spread} près.",
  spokenWattsCover: "En {time} à {power}, tu parcours {figure} {unit}, à plus ou moins {spread} près.",
  spokenTimeTakes: "{distance} en {time} demandent {figure}, à plus ou moins {spread} près.",

  rideInFigures: "La course en chiffres",
  figure: "Grandeur",
  value: "Valeur",
  spread: "Plus ou moins",
  power: "Puissance",
  averageSpeed: "Vitesse moyenne",
  workAtPedals: "Travail aux pédales",
  wPrimeAtLine: "[W′|wPrime] à l’arrivée",
  wPrimeLeftAtLine: "[W′|wPrime] restant à l’arrivée",
  short: "manquent",
  tooMuch: "Ta courbe de puissance permet {power} aussi longtemps : c’est **{gap} de trop**.",
  justThis: "Ta courbe de puissance permet {power} aussi longtemps : c’est juste cela.",
  inHand: "Ta courbe de puissance permet {power} aussi longtemps : tu gardes {gap} en réserve.",
  haveTarget: "J’ai un temps à battre",
  chanceOfBeating: "Les chances de faire {target} ou mieux sont de {chance}.",
  chanceAbout: "environ {count} sur {all}",
  chanceUnder: "moins de 1 sur 100",
  chanceOver: "plus de 99 sur 100",
  caution:
    "Tout donner jusqu’à la ligne est un effort maximal : si tu es malade ou n’en as pas l’habitude, demande d’abord à un médecin. La circulation, les autres coureurs, le règlement de l’épreuve et le code de la route passent avant tout temps de cette page.",

  whereFrom: "D’où vient le plus ou moins",
  from: "D’où",
  plusOrMinus: "Plus ou moins",
  fromNumbers: "Ce que tes chiffres laissent ouvert",
  fromModel: "L’erreur propre du modèle",
  together: "Ensemble",
  absolute:
    "**Un temps ou une distance à part** porte l’erreur propre du modèle, {error} d’un temps ; deux courses que l’on compare en partagent l’essentiel.",
  differenceSurer:
    "**Un écart est plus sûr qu’un temps.** Les deux parts du ± s’additionnent en carrés. Deux courses le même jour sur le même parcours partagent presque tout ce doute, qui s’annule donc. Un gain d’une demi-minute peut être sûr alors que le temps lui-même ne l’est pas.",

  theDay: "**Le jour.** L’air pèse {density}.",
  standardAir: "En air standard au niveau de la mer, avec les mêmes watts, tu serais {differs}.",
  noWind: "Il n’y a pas de vent.",
  windReaches: "Il t’arrive {wind} du vent prévu. La même course sans vent, avec ces watts, serait {differs}.",
  standardAirFar:
    "Sur la même distance, en air standard au niveau de la mer, avec les mêmes watts, tu serais {differs}.",
  windLeftOut: "Le vent est laissé de côté.",
  windReachesFar: "Il t’arrive {wind} du vent prévu. La même distance sans vent, avec ces watts, serait {differs}.",
  meanArea: "Ta surface de traînée est en moyenne de {area} sur la course.",
  wPrimeOut: "**W′ s’épuise.** La course demande {work} de plus que tu n’as, de quelque façon que W′ revienne.",
  wPrimeLeft:
    "**Ce qui reste de W′** à l’arrivée est de {usual}, de quelque façon qu’il revienne. Sur cette course, tu n’es presque jamais sous la puissance à laquelle il reviendrait.",
  wPrimeLong:
    "**Ce qui reste de W′** à l’arrivée est de {usual}. Sur une course aussi longue, W′ ne se vide pas seulement au-dessus de CP. Il se vide déjà au-dessus de la puissance que sa durée permet, moins W′ réparti sur elle. Une allure régulière le vide donc régulièrement, et rien ne revient.",
  wPrimeForms:
    "**Ce qui reste de W′** à l’arrivée dépend de la façon dont il revient. C’est {usual} si W′ revient de plus en plus lentement à mesure qu’il se remplit, comme on calcule ici. C’est {none} si rien ne revient, et {linear} si tout revient, watt pour watt. Sous zéro, la course demande plus que tu n’as. Personne ne sait ce qu’il en est pour toi : cette plage est un doute, elle aussi.",
  wPrimeLeast: "En route, il descend à {least} : tu dépenses plus que tu n’as.",

  whyShare: "L’air prend {share} du travail sur la route.",
  whyGiven: "La pente ou le vent donne une partie du travail.",
  whereWork: "Où vont les {work} aux pédales : {list}.",
  air: "{share} dans l’air",
  rolling: "{share} dans les pneus",
  climbing: "{share} dans la montée",
  drivetrain: "{share} dans la transmission",
  bearings: "{share} dans les roulements",
  braking: "{share} dans les freins",
  kinetic: "{share} dans la vitesse avec laquelle tu passes la ligne",
  whyLonger:
    "Plus la course est longue, moins on tient de puissance : le temps croît donc un peu plus vite que la distance. Ton meilleur effort régulier est la seule puissance que ta courbe permet exactement aussi longtemps que dure la course.",

  splits: "Temps de passage",
  splitsGist: { one: "Un temps de passage, à {last}", other: "{count} temps de passage, le dernier à {last}" },
  splitsCaption: "Chaque temps depuis le départ, chaque vitesse en moyenne depuis le passage précédent",
  at: "À, {unit}",
  distanceIn: "Distance, {unit}",
  time: "Temps",
  speedIn: "Vitesse, {unit}",
  powerIn: "Puissance, {unit}",
  wPrimeIn: "W′ restant, {unit}",
  curveCaption: "Ton meilleur effort régulier sur d’autres distances, sur un parcours de ce genre et dans cet air",
  curveGist: "Temps et puissance selon la distance",

  roadTitle: "Le profil de la route",
  heightAxis: "altitude, {unit}",
  readHeight: "Lire l’altitude au fil de la course",
  roadSeries: "altitude",
  roadReading: "La route se tient entre {low} et {high}.",
  timeTitle: "Vitesse moyenne au meilleur effort régulier, pour chaque distance",
  distanceAxis: "distance, {unit}",
  paceAxis: "vitesse moyenne, {unit}",
  eventHandle: "Ton épreuve : gauche et droite changent la distance",
  readTime: "Lire la vitesse moyenne à une distance",
  powerTitle: "Puissance que tu peux tenir sur chaque distance",
  powerAxis: "puissance tenable, {unit}",
  readPower: "Lire la puissance à une distance",
  speedTitle: "Vitesse au fil de la course",
  alongAxis: "au fil de la course, {unit}",
  speedAxis: "vitesse, {unit}",
  readSpeed: "Lire la vitesse au fil de la course",
  reserveTitle: "W′ restant au fil de la course",
  reserveAxis: "W′ restant, {unit}",
  readReserve: "Lire le W′ restant au fil de la course",
  youAtTheseWatts: "toi, avec ces watts",
  youFigure: "toi, {figure}",
  pointSpoken: "{distance}, {time}, {power}",
  timeDescription: "La vitesse moyenne baisse quand la distance croît. Ton épreuve de {distance} prend {time}.",
  effortSeries: "meilleur effort régulier",
  timeReading: "**{distance}** demandent **{time}**.",
  powerDescription: "La puissance tenable baisse quand la distance croît. Sur {distance}, tu roules à {power}.",
  powerSeries: "tu peux tenir",
  powerReading: "Ta courbe permet {power} pendant {time}.",
  speedDescription: "La vitesse au fil de la course est de {speed} en moyenne.",
  speedSeries: "vitesse",
  onAverage: "en moyenne {speed}",
  speedReading: "La moyenne est de **{speed}**.",
  reserveDescription: "Le W′ restant au fil de la course va de {start} à {end} à l’arrivée.",
  reserveSeries: "W′ restant",
  moreThanYouHave: "plus que tu n’as",
  reserveShort: "À l’arrivée, il te manque {work}.",
  reserveLeft: "À l’arrivée, il reste {work}.",

  howGist: "Pas à pas le long de la route, du départ à la ligne",
  howStepped:
    "La course est calculée pas à pas le long de la route. À chaque pas, ce que donnent les pédales, moins l’air, les pneus, la pente et les roulements, change la vitesse.",
  formulaMotion: "m v fois le taux de variation de v égale êta P moins F v",
  howEven:
    "Le meilleur effort régulier, c’est rouler à la puissance constante que ta courbe permet exactement aussi longtemps que dure alors la course. Puissance et temps se fixent l’un l’autre ; on les résout ensemble.",
  formulaCurve: "P de t égale CP plus W prime sur t, moins A fois le logarithme naturel de t sur T au-delà de T",
  howBalance:
    "Au-dessus du seuil, W′ se dépense, joule pour joule. En dessous, W′ revient, d’autant plus lentement qu’il est plein :",
  formulaBalance:
    "le taux de variation du W prime restant égale le seuil moins P, fois un moins le W prime restant sur W prime",
  formulaDoubt:
    "la variance du temps est la somme des carrés de l’effet de chaque entrée, plus le carré de l’erreur propre du modèle",
  inputMark: "entrée",
  modelMark: "modèle",
  balanceMark: "bal",
  symbolPower: "puissance aux pédales ; puissance critique ; le travail possible au-dessus d’elle",
  symbolLong:
    "ce que perdent les longues courses, et à partir de quand ; omis avant T, ou si aucune perte n’est donnée. Une puissance de pointe, si elle est donnée, courbe la relation pour les courses brèves",
  symbolMotion:
    "masse avec ce qu’ajoutent les roues qui tournent, vitesse, temps, forces sur la route, rendement de la transmission",
  symbolBalance: "W′ restant à cet instant ; deux autres formes l’encadrent : rien ne revient, ou tout, watt pour watt",
  symbolDoubt: "un écart type ; chaque chiffre incertain est déplacé du sien pour voir ce que cela fait au temps",
  howModel:
    "L’erreur propre du modèle est à part. Des modèles publiés de contre-la-montre se sont trompés de trois à quatre pour cent en moyenne sur route, et de plus sur certains temps. Une part venait de leurs données d’entrée, qui comptent ici à part. On suppose donc trois pour cent, jusqu’à ce que tes propres résultats disent autre chose. Elle est presque la même dans deux courses du même jour, et s’annule donc dans un écart.",
  howNot:
    "Rafales, circulation, carrefours, nerfs, nourriture et sommeil n’y sont pas. Pour une demi-journée ou plus, la courbe de puissance est une supposition.",
};
