// @ts-check
/** Ce que dit « Quelle position pour quelle distance ? » @import { Texts } from "../books.d.ts" */

/** @type {Texts<"which-position">} */
export default {
  ask: "{far} de {course} {day}, au meilleur effort régulier, laquelle de mes positions est la plus rapide ? Je compare avec {reference} et une [surface de traînée|cda] de {cda}. Les surfaces viennent {known}.",
  distance: "Distance à lire",
  reference: "La position à laquelle les autres sont comparées",
  knownHow: "D’où viennent les surfaces de traînée",
  knownTogether: "d’un même test ou d’une même estimation",
  knownApart: "de tests séparés",
  needTwo: "Il faut au moins deux positions pour cela.",
  addPosition: "Ajouter une position",
  editPositions: "Modifier les positions",
  editEvents: "Modifier les épreuves",
  positionNumber: "position {number}",
  equipmentNumber: "équipement {number}",
  wearing: "{position} avec {equipment}",

  claim: "Sur {distance}, {best} est plus rapide que {next} de",
  claimLevel: "Sur {distance}, {best} et {next} sont à égalité",
  spoken: "Sur {distance}, {best} est plus rapide que {next} de {figure}, plus ou moins {spread}",
  claimInTime: "En {time}, {best} va plus loin que {next} de",
  spokenInTime: "En {time}, {best} va plus loin que {next} de {figure}, plus ou moins {spread}",
  covered: "En {time}, tu parcours environ {distance}.",
  fastestIn: "la plus rapide dans {count} simulations sur\u00a0{all}",
  fasterBeyond: "À partir de {distance} ({spread}), {name} est plus rapide que {other}.",
  fasterBelow: "Jusqu’à {distance} ({spread}), {name} est plus rapide que {other}.",
  fasterBeyondWide:
    "À partir de {distance}, {name} est plus rapide que {other}, pour autant qu’on puisse le dire. Avec des chiffres aussi incertains, le croisement peut être n’importe où.",
  fasterBelowWide:
    "Jusqu’à {distance}, {name} est plus rapide que {other}, pour autant qu’on puisse le dire. Avec des chiffres aussi incertains, le croisement peut être n’importe où.",
  alwaysFaster: "De {from} à {to}, {name} est toujours plus rapide que {other} : les courbes ne se croisent pas.",
  alwaysSlower: "De {from} à {to}, {name} est toujours moins rapide que {other} : les courbes ne se croisent pas.",
  alwaysLevel: "{name} et {other} sont à égalité.",

  chartTitle: "De combien chaque position est plus rapide, selon la distance",
  chartX: "distance, {unit}",
  chartY: "plus rapide de, part du temps",
  chartHandle: "Distance à lire : gauche et droite la changent",
  chartReader: "Lire les écarts le long de la distance",
  chartDescription: {
    one: "Comparées à {reference} : {list}. Il y a {crossings} croisement.",
    other: "Comparées à {reference} : {list}. Il y a {crossings} croisements.",
  },
  levelIs: "aussi rapide que {reference}",
  chartSpoken: "Sur {distance}, c’est : {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "Au-dessus de la ligne, une position est plus rapide que {reference} ; au-dessous, elle est moins rapide. La teinte est le ± de la courbe en couleur.",

  tableCaption: "De combien chaque position est plus rapide, selon la distance",
  tableDistance: "distance",
  tableGist: "Les courbes en secondes, de la plus courte à la plus longue distance",
  eventsCaption: "Temps à tes épreuves",
  eventReaches: "{event}, environ {distance}",
  event: "épreuve",
  comparedWith: "{name} (référence)",
  winsOf: "devant dans {count} sur {all}",
  counting: "{draws} simulations sur {all} sont comptées.",
  stopped: "Le compte est arrêté à {draws} simulations sur {all}.",
  countedAll: "Tous tes chiffres ont varié dans {draws} [simulations|tries], les mêmes pour chaque position.",
  stop: "Arrêter",
  goOn: "Continuer",

  costs: "Combien de puissance une position peut prendre",
  costsCaption: "Watts de puissance critique que la position à moindre traînée peut prendre avant de perdre",
  pair: "une position face à l’autre",
  againstOther: "{one} face à {other}",
  costsNow: "prend à présent",
  otherWay: "dans l’autre sens",
  nothingTies: "jamais à égalité",
  ofPower: "{share} de CP",
  mayCost:
    "**Combien de puissance elle peut prendre.** Sur {over}, {one} peut te prendre {watts} ({share} de la [puissance critique|cp]) avant de perdre face à {other}.",
  published:
    "D’après une étude, un cintre plus bas a réduit de {cut} la traînée de {riders} cyclistes et leur a pris {cost} ± {spread} de puissance. D’après une autre, un tronc à 12° a pris à {others} cyclistes {watts} ± {wattsSpread}.",
  lowerBars:
    "Un cintre abaissé comme dans cette étude, avec la traînée ainsi économisée, peut te prendre {watts} sur {over} avant de perdre. Selon la dispersion des cyclistes, c’est de {low} à {high}.",
  lowerBarsGist: "Un cintre plus bas ne sert plus dès qu’il prend {watts} sur {over}.",
  costScaled:
    "La surface de traînée de {one} est plus petite de {cut}. Ramené à cela en proportion, ce qui est supposé, un cintre plus bas prendrait {cost} ± {spread} de la puissance. D’après cette étude, la part des cyclistes qui perdraient moins que ce que {one} peut prendre est d’environ {count} sur {all}.",
  costTorso:
    "La traînée économisée par le tronc plus bas n’est pas publiée, on ne peut donc pas la ramener à la tienne. Si {one} amène ton tronc à environ 12°, la part des cyclistes qui perdraient moins que ce qu’elle peut prendre est d’environ {count} sur {all}.",
  costsMean:
    "Le ± laisse de côté ta propre perte de puissance dans la position. Pour la trouver, fais les deux mêmes efforts intenses dans les deux positions, chacun en étant reposé.",

  worth: "Ce qui trancherait",
  worthMeans:
    "Suppose qu’une seule chose soit mesurée exactement avant de choisir, le reste étant aussi incertain qu’à présent. Tu choisirais parfois une autre position. Voici ce que cela ferait gagner en moyenne, sur toutes tes épreuves ensemble.",
  worthGist: "Connaître exactement tous les chiffres ferait gagner {time} en moyenne sur tes épreuves.",
  worthLine: "{input} : {time}",
  worthBoth: "{one} et {other} dans un même test : {time}",
  wouldSettle:
    "**Ce qui trancherait.** Si {input} était connu exactement, tu choisirais mieux et gagnerais {time} en moyenne sur tes épreuves.",
  wouldSettleBoth:
    "**Ce qui trancherait.** Mesure {one} et {other} dans un même test. Si tu savais exactement de combien leurs CdA diffèrent, tu choisirais mieux et gagnerais {time} en moyenne sur tes épreuves.",
  howBoth:
    "roule dans les deux en alternance, le même jour, sur le même tronçon, par air calme et loin de la circulation",
  settled:
    "**Ce qui trancherait.** Rien de ce que tu pourrais mesurer ne changerait grand-chose : le choix est aussi clair que possible, ou les positions se valent.",
  inputOf: "{input} ({name})",
  lookHow: "{link} ({how}).",
  lookOnly: "{link}.",
  look: "Regarder",

  caution:
    "**Tête baissée, tu ne vois rien.** Ne compte que sur la position que tu peux tenir les yeux sur la route. Essaie positions et roues nouvelles loin de la circulation, par air calme et par petits pas. Les prolongateurs longs et les jantes hautes prennent le vent de côté. Si quelque chose fait mal, consulte un spécialiste de la position ou un médecin. Le règlement de l’épreuve et le code de la route passent avant les secondes.",
  howGist:
    "Chaque position sur la même route, le même jour, dans les mêmes simulations, si bien que ce qui est commun s’annule",
  howRides:
    "Chaque position est roulée sur chaque distance au meilleur effort régulier que permet sa propre puissance, du départ à la ligne. Ton parcours est raccourci ou allongé pour cela. L’équipement ajoute sa surface de traînée et sa masse. S’il y a lieu, il apporte aussi son tableau par [angle de lacet|yaw], ses relâchements et sa vitesse en virage.",
  howTogether:
    "Des surfaces de traînée tirées d’un même test, ou estimées pour une même personne, se trompent ensemble : elles partagent l’erreur d’échelle du test. Leurs erreurs sont alors supposées aller presque entièrement ensemble, et l’écart de deux positions est bien plus sûr que chaque surface. Un test d’une seule position dit alors peu sur laquelle est la plus rapide ; un test des deux en dit le plus.",
  howCrossing:
    "L’endroit où deux positions se valent est calculé, pas lu sur la courbe. Son ± est celui de l’écart à cet endroit, divisé par sa croissance avec la distance. Là où deux courbes se longent, un petit doute déplace beaucoup le croisement.",
  howCost:
    "Ce qu’une position peut prendre est calculé aussi : la puissance critique avec laquelle elle est tout juste à égalité, [W′|wPrime] inchangé. Les travaux publiés trouvent la puissance critique plus basse en position de contre-la-montre et W′ inchangé. La perte grandit donc avec la durée de l’épreuve, et les cyclistes entraînés dans la position perdaient peu. La dispersion publiée est aussi large que la moyenne : c’est une plage, pas une prévision. Cinq ou onze cyclistes ne donnent qu’à peu près une moyenne et une dispersion ; les parts de cyclistes en tiennent compte (t de Student).",
  howDraws:
    "Pour les comptes, tous les chiffres varient ensemble dans leur ±, et chaque position est roulée dans les mêmes simulations. Si l’on sait comment les erreurs de la puissance critique et de W′ vont ensemble, elles varient ensemble.",
  howWorth:
    "Ce que vaut une mesure est le gain moyen à choisir après elle, le reste étant aussi incertain qu’à présent. Sur toutes les simulations, une courbe est ajustée à ce que l’erreur mesurée fait à chaque position, et la meilleure des courbes est moyennée. Une surface de traînée est alors connue avec toute son erreur, y compris la part commune aux autres positions. Un test de deux positions dit leur écart même si son échelle est fausse. Les gains qu’on ne distingue pas du hasard comptent pour rien.",
  nowTakes: "Telle que tu l’as décrite, elle te prend {now}.",
  nowGives: "Telle que tu l’as décrite, elle te donne {now} de plus.",
  nowNothing: "Telle que tu l’as décrite, elle ne te prend rien.",
};
