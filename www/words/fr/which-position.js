// @ts-check
/** Ce que dit « Quelle position pour quelle distance ? » @import { Texts } from "../books.d.ts" */

/** @type {Texts<"which-position">} */
export default {
  ask: "Sur le parcours « {course} » {day}, chaque fois à fond et régulier, avec des surfaces de traînée {known} : laquelle de mes positions est la plus rapide sur {distance}, et que valent-elles face à {reference} à {cda} ?",
  distance: "Distance à lire",
  reference: "La position à laquelle les autres sont comparées",
  knownHow: "D’où viennent les surfaces de traînée",
  knownTogether: "d’un même essai",
  knownApart: "d’essais séparés",
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
  fastestIn: "la plus rapide dans {count} tirages sur\u00a0{all}",
  fasterBeyond: "À partir de {distance} ({spread}), {name} est plus rapide que {other}.",
  fasterBelow: "Jusqu’à {distance} ({spread}), {name} est plus rapide que {other}.",
  fasterBeyondWide:
    "À partir de {distance}, {name} est plus rapide que {other}, pour autant qu’on puisse le dire : avec des chiffres aussi incertains, le croisement peut être n’importe où.",
  fasterBelowWide:
    "Jusqu’à {distance}, {name} est plus rapide que {other}, pour autant qu’on puisse le dire : avec des chiffres aussi incertains, le croisement peut être n’importe où.",
  alwaysFaster: "De {from} à {to}, {name} est toujours plus rapide que {other} : les courbes ne se croisent pas.",
  alwaysSlower: "De {from} à {to}, {name} est toujours plus lente que {other} : les courbes ne se croisent pas.",
  alwaysLevel: "{name} et {other} sont à égalité.",

  chartTitle: "De combien chaque position est plus rapide, selon la distance",
  chartX: "distance, {unit}",
  chartY: "plus rapide de, part du temps",
  chartHandle: "Distance à lire : gauche et droite la changent",
  chartReader: "Lire les écarts le long de la distance",
  chartDescription: {
    one: "Comparées à {reference} : {list}. {crossings} croisement.",
    other: "Comparées à {reference} : {list}. {crossings} croisements.",
  },
  levelIs: "aussi rapide que {reference}",
  chartSpoken: "Sur {distance} : {list}.",
  chartSays: "{name} {differs}",
  chartReading:
    "Au-dessus de la ligne : plus rapide que {reference} ; au-dessous : moins rapide. La teinte est un écart type de la courbe en couleur.",

  tableCaption: "De combien chaque position est plus rapide, selon la distance",
  tableDistance: "distance",
  tableGist: "Les courbes en secondes, de la plus courte à la plus longue distance.",
  eventsCaption: "Temps à tes épreuves",
  event: "épreuve",
  comparedWith: "{name}, comparaison",
  winsOf: "première dans {count} sur {all}",
  counting: "Tirages en cours : {draws} sur {all}.",
  stopped: "Arrêté à {draws} tirages sur {all}.",
  countedAll: "Compté sur {draws} tirages de tous tes chiffres, les mêmes pour chaque position.",
  stop: "Arrêter",
  goOn: "Continuer",

  costs: "Ce qu’une position peut coûter",
  costsCaption: "Watts de puissance critique que la position à moindre traînée peut coûter avant de perdre",
  pair: "une position face à l’autre",
  againstOther: "{one} face à {other}",
  costsNow: "coûte à présent",
  otherWay: "dans l’autre sens",
  nothingTies: "jamais à égalité",
  ofPower: "{share} de CP",
  mayCost:
    "**Ce qu’elle peut coûter.** Sur {over}, {one} peut te coûter {watts} ({share} de la puissance critique) avant de perdre face à {other} ; telle que tu l’as décrite, elle coûte {now}.",
  published:
    "Publié : un cintre plus bas a réduit la surface de traînée de {riders} cyclistes de {cut} et leur a coûté {cost} ± {spread} de leur puissance ; un tronc à 12° a coûté à {others} cyclistes {watts} ± {wattsSpread}.",
  lowerBars:
    "Un cintre abaissé comme dans l’essai publié, avec la traînée ainsi gagnée, peut te coûter {watts} sur {over} avant de perdre, et de {low} à {high} selon la dispersion des cyclistes.",
  lowerBarsGist: "Un cintre plus bas ne paie plus dès qu’il coûte {watts} sur {over}.",
  costScaled:
    "Ramené de cette réduction aux {cut} dont {one} est plus petite, en proportion, ce qui est supposé, un cintre plus bas coûterait {cost} ± {spread} de la puissance : parmi d’autres cyclistes semblables, {count} sur {all} paieraient moins que ce que {one} peut coûter.",
  costTorso:
    "La traînée gagnée par le tronc plus bas n’est pas publiée, on ne peut donc pas la ramener à la tienne. Si {one} amène ton tronc à environ 12°, {count} sur {all} autres cyclistes semblables paieraient moins que ce qu’elle peut coûter.",
  costsMean:
    "Le ± laisse de côté ce que la position te coûte, puisque c’est à cela que tu le compares : fais les deux mêmes efforts intenses dans les deux positions, bien reposé.",

  worth: "Ce qui trancherait",
  worthMeans:
    "Si une seule chose était mesurée exactement avant de choisir, le reste étant aussi incertain qu’à présent, tu choisirais parfois une autre position. Voici ce que cela ferait gagner en moyenne, sur toutes tes épreuves ensemble.",
  worthGist: "Connaître exactement tous les chiffres ferait gagner {time} en moyenne sur tes épreuves.",
  worthLine: "{input} : {time}",
  worthBoth: "{one} et {other} dans un même essai : {time}",
  wouldSettle:
    "**Ce qui trancherait.** Connaître exactement {input} te ferait gagner en moyenne {time} sur tes épreuves, en choisissant mieux.",
  wouldSettleBoth:
    "**Ce qui trancherait.** Mesure {one} et {other} dans un même essai : savoir exactement de combien leurs CdA diffèrent te ferait gagner en moyenne {time} sur tes épreuves, en choisissant mieux.",
  howBoth: "roule les deux en alternance, le même jour, sur le même tronçon, par air calme et loin de la circulation",
  settled:
    "**Ce qui trancherait.** Rien de ce que tu pourrais mesurer ne changerait grand-chose : le choix est aussi clair que possible, ou les positions se valent.",
  inputOf: "{input} ({name})",
  lookHow: "{link} : {how}.",
  lookOnly: "{link}.",
  look: "Regarder",

  caution:
    "**Tête baissée, tu ne vois rien.** Ne compte que sur la position que tu peux tenir les yeux sur la route. Essaie positions et roues nouvelles loin de la circulation, par air calme et par petits pas ; les avants allongés et les jantes hautes prennent le vent de côté. Si quelque chose fait mal, consulte un spécialiste de la position ou un médecin. Le règlement de l’épreuve et le code de la route passent avant les secondes.",
  howGist: "Chaque position sur la même route, le même jour, dans les mêmes tirages : ce qui est commun s’annule.",
  howRides:
    "Chaque position est roulée sur chaque distance à fond et régulier selon sa propre puissance, du départ à la ligne, sur ton parcours raccourci ou allongé. L’équipement ajoute sa surface de traînée et sa masse, et apporte s’il en a son tableau d’angles, ses interruptions et sa vitesse en virage.",
  howTogether:
    "Des surfaces de traînée tirées d’un même essai, ou estimées pour une même personne, se trompent ensemble : l’erreur d’échelle de l’essai leur est commune. Leurs erreurs sont alors supposées corrélées à 0,95, et l’écart de deux positions est bien plus sûr que chaque surface. Un essai d’une seule position dit alors peu sur laquelle est la plus rapide ; un essai des deux en dit le plus.",
  howCrossing:
    "L’endroit où deux positions se valent est calculé, pas lu sur la courbe. Son ± est celui de l’écart à cet endroit, divisé par sa croissance avec la distance : là où deux courbes se longent, un petit doute déplace beaucoup le croisement.",
  howCost:
    "Ce qu’une position peut coûter est calculé aussi : la puissance critique avec laquelle elle est tout juste à égalité, W′ inchangé. Les travaux publiés trouvent la puissance critique plus basse en position de contre-la-montre et W′ inchangé ; le coût grandit donc avec la durée de l’épreuve, et les cyclistes entraînés dans la position perdaient peu. La dispersion publiée est aussi large que la moyenne : c’est une plage, pas une prévision. Les parts de cyclistes viennent du t de Student, car cinq ou onze cyclistes ne donnent qu’à peu près une moyenne et une dispersion.",
  howDraws:
    "Pour les comptes, tous les chiffres sont tirés ensemble selon leur ±, et chaque position est roulée avec les mêmes tirages ; puissance critique et W′ sont tirés avec leur corrélation si elle est connue.",
  howWorth:
    "Ce que vaut une mesure est le gain moyen à choisir après elle, le reste étant aussi incertain qu’à présent : une courbe est ajustée, sur tous les tirages, à ce que l’erreur mesurée fait à chaque position, et la meilleure des courbes est moyennée. Une surface de traînée est alors connue avec toute son erreur, y compris la part commune aux autres positions ; un écart est ce que dit un essai de deux positions même si son échelle est fausse. Les termes en deçà de trois erreurs types comptent pour rien.",
};
