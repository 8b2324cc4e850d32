// @ts-check
/** Sur quoi travailler ensuite ? */

/** @satisfies {import("../books.d.ts").Texts<"next-gain">} */
export default {
  ask: "Avec {money} {currency} et {hours} par semaine pendant {weeks}, sur quoi travailler ensuite pour {events} ?",
  myEvents: { one: "mon unique épreuve", other: "mes {count} épreuves" },
  moneyLabel: "Argent à dépenser",
  currencyLabel: "Ta monnaie, comme euros ou francs",
  currencyHint: "ta monnaie",
  hoursLabel: "Heures par semaine, en plus de ce que tu fais déjà",
  weeksLabel: "Pendant combien de semaines",

  claim: {
    one: "**{names}** : sur ton unique épreuve, plus rapide de",
    other: "**{names}** : sur tes {count} épreuves, plus rapide de",
  },
  nothing: "Rien dans la liste n’aide avec ce budget.",
  spoken:
    "Le mieux pour ce budget est : {names}. Tu es plus rapide de {figure} sur tes épreuves, chaque chance comptée, plus ou moins {spread}.",
  spokenNothing: "Rien dans la liste n’aide avec ce budget.",
  more: { one: "un autre", other: "{count} autres" },
  searching: "Comparaison de toutes les combinaisons : {share}.",
  waiting: "Comparaison de toutes les combinaisons.",
  stop: "Arrêter",
  stopped: "Arrêté avant que toutes les combinaisons soient comparées.",
  goOn: "Continuer",
  numbered: "changement {number}",
  inTheSet: "Le meilleur choix, et ce que chaque changement gagne à lui seul",
  change: "Changement",
  onAverage: "Avec la chance qu’il marche",
  ifItWorks: "S’il marche",
  ifWorks: "{figure} s’il marche",
  takes:
    "Il faut **{money}** et **{hours}** en tout, sans dépasser {weekly}. Si tout marche, tu gagnes **{all}** ; chaque chance comptée, {average}. Dix-neuf fois sur vingt, le résultat se situe entre {low} et {high}.",
  nextAdds: "**Avec {more} de plus**, ajoute {added} : tu gagnes encore {gain}.",
  nextSwaps: "**Avec {more} de plus**, prends {added} à la place de {left} : tu gagnes encore {gain}.",
  nextNoMoney: "Plus d’argent n’apporte rien de plus dans cette liste.",
  inFixedTime:
    "{event} : tu fais environ {now} avec tes nombres d’aujourd’hui. Sur cette distance, tu es en moyenne {differs}, donc tu fais **{further}**.",
  measureFirst:
    "**Mesure {name} avant de choisir** ({open}). Savoir ce que cela t’apporte fait gagner {worth} de plus en moyenne ; sans essai, cela fait gagner {buying}.",
  measureLeftOut:
    "**Mesure {name}** ({open}). Ce n’est pas dans le meilleur choix, mais savoir ce que cela t’apporte fait gagner {worth} de plus en moyenne.",
  nextNoHours: "Plus d’heures n’apportent rien de plus dans cette liste.",
  hours: { one: "une heure", other: "{count} heures" },

  leftOut: "Ce qui est écarté, et pourquoi",
  leftOutGist: {
    one: "{count} changement n’est pas dans le meilleur choix.",
    other: "{count} changements ne sont pas dans le meilleur choix.",
  },
  leftOutLine: "**{name}** : {why}.",
  taken: "Dans le meilleur choix",
  isTaken: "oui",
  "why.too_dear": "coûte plus que ton argent",
  "why.too_long": "prend plus de semaines que tu n’en as",
  "why.too_many_hours_a_week": "prend plus d’heures par semaine que tu n’en as",
  "why.too_many_hours": "prend plus d’heures en tout que tu n’en as",
  "why.needs_another": "ne vient qu’après « {other} », qui est écarté",
  "why.excluded_by_group": "un seul de ce genre est retenu, et c’est « {other} »",
  "why.no_money_left": "il reste trop peu d’argent à côté du meilleur choix",
  "why.no_hours_left": "il reste trop peu d’heures à côté du meilleur choix",
  "why.not_worth_it": "ne gagne rien de plus, la chance comptée",

  dotsTitle: "Ce que chaque changement gagne sur tes épreuves",
  dotsAxis: "gagné sur tes épreuves",
  dotsDesc:
    "La chance comptée, le plus grand gain : {first}, {average} ; le plus petit : {last}, {least}. Ce qui est dans le meilleur choix est coché.",
  legend:
    "Point : gain avec la chance comptée. Anneau : gain s’il marche ; deux fois sur trois, la vérité est sur le trait. Coche : dans le meilleur choix",
  curveMoney: "Ce qu’apporte plus d’argent",
  curveHours: "Ce qu’apportent plus d’heures",
  moneyAxis: "argent",
  moneyAxisIn: "argent, {currency}",
  hoursAxis: "heures par semaine",
  savedAxis: "gagné, la chance comptée",
  curveDesc: "Le meilleur choix gagne {start} sans rien de plus et {end} pour {most}.",
  youMoney: "Ton argent",
  youHours: "Tes heures par semaine",
  at: "{budget} : plus rapide de {figure}",
  drag: "Tire l’anneau, ou sers-toi des flèches, pour essayer un autre budget.",
  readMoney: "Lire ce qu’apporte une somme",
  readHours: "Lire ce qu’apporte un nombre d’heures",

  caution:
    "**Avant de changer quoi que ce soit :** regarde où tu vas, quoi que gagne une position de tête. Travaille virages et nouvelles positions loin de la circulation, jamais à la limite. Change tes réglages par petits pas, avec un spécialiste de la position ou un médecin si quelque chose fait mal ou s’engourdit. Les blocs d’entraînement durs et les tests maximaux sont pour des personnes en bonne santé et régulièrement actives. Le règlement de l’épreuve et le code de la route passent d’abord.",
  elsewhere:
    "Une position, c’est plus que son effet ici. Demande à {position} la tienne à chaque distance, et à {leg} ce qu’un poste de pilotage plus bas fait à la hanche.",

  why: "Pourquoi ne pas additionner ?",
  whyGist: "Ensemble, ils gagnent {together} ; additionnés un à un, ce serait {added}.",
  whyText:
    "Chaque changement vaut ce qu’il gagne sur une course que les autres ont déjà rendue plus rapide. Additionné un à un, ce choix gagnerait {added}, les chances comptées. Calculé ensemble, il gagne {together}.",
  whyChance:
    "Chaque changement marche avec sa propre chance, quoi que deviennent les autres ; celui qui ne vient qu’après un autre n’apporte rien si cet autre échoue. Ce qui compte est la moyenne de tout ce qui peut advenir d’un choix. Ce sont ici {outcomes} cas, chacun recalculé au meilleur effort régulier.",
  whySure:
    "Le ± contient ce qui est incertain dans l’effet de chaque changement et dans tes propres chiffres, et que tout peut ne pas marcher. Tout cela ensemble place dix-neuf issues sur vingt entre {low} et {high}.",

  list: "Les changements",
  listGist: {
    one: "Il y a {count} changement dans la liste ; modifie-le, ou ajoutes-en.",
    other: "Il y a {count} changements dans la liste ; modifie, ajoute ou retire.",
  },
  listLead:
    "Effets et chances sont devinés tant que tu ne les as pas mesurés. Chaque changement dit sur quoi il repose. La plupart changent ta [surface de traînée, CdA|cda], ta [résistance au roulement, Crr|crr] ou ta [puissance critique|cp].",
  name: "Nom",
  whatItChanges: "Ce qu’il change",
  size: "De combien",
  spread: "Le ± de cela",
  chance: "Chance qu’il marche",
  money: "Argent",
  hoursOnce: "Heures, une fois",
  hoursPerWeek: "Heures par semaine",
  weeks: "Pendant tant de semaines",
  group: "Un seul parmi",
  groupHint: "Les changements qui portent le même mot ici s’excluent.",
  requires: "Seulement après",
  requiresNone: "aucun",
  requiresHint:
    "Il n’est retenu qu’avec ce changement, et n’apporte rien si celui-ci échoue. Son effet et sa chance sont ce qu’il ajoute alors.",
  note: "Note",
  published: "Cela repose sur une publication.",
  "common-practice": "Cela repose sur l’usage courant, sans source.",
  "from-memory": "C’est de mémoire et n’a pas été revérifié.",
  assumed: "C’est supposé.",
  add: "Ajouter un changement",
  addEffect: "Il change autre chose aussi",
  removeEffect: "Retirer cet effet",
  remove: "Retirer de la liste",
  usualTrained: "La liste usuelle pour qui s’entraîne",
  usualNew: "La liste usuelle pour qui débute",
  full: "Vingt changements au plus sont comparés.",
  ridePosition: "Rouler en « {name} »",
  positionNumber: "position {number}",
  other: "autre chose : {field}",
  "kinds.dragShare": "Surface de traînée, en part",
  "kinds.dragArea": "Surface de traînée",
  "kinds.powerShare": "Puissance critique, en part",
  "kinds.power": "Puissance critique",
  "kinds.rolling": "Résistance au roulement, Crr",
  "kinds.mass": "Masse",
  "kinds.drivetrain": "Rendement de la transmission",
  "kinds.bends": "Accélération latérale en virage",

  changeOnPaper: "**{name}** : {sizes} ; {takes}",
  sizeOnPaper: "{what} {size}",
  eventsOnPaper: "**Tes épreuves :** {events}",
  eventOnPaper: "{event} × {times}",

  events: "Tes épreuves",
  eventsGist: "Le nombre de fois que chacune est courue décide de ce qui compte.",
  eventsLead: "Les secondes s’additionnent sur ces épreuves, chacune autant de fois que tu la cours.",
  timesRidden: "fois",
  timesLabel: "Combien de fois {event} se court",
  editEvents: "Changer les épreuves",

  tableGist: "Chaque changement à chaque épreuve : secondes gagnées, aussi par unité de monnaie et par heure",
  tableCaption: "Ce que chaque changement gagne à lui seul",
  perMoney: "Secondes gagnées par unité de monnaie",
  perHour: "Secondes gagnées par heure",
  free: "gratuit",

  howGist: "Tous les choix dans le budget sont comparés, aucun n’est omis.",
  howSets:
    "Avec une liste de {count}, il y a {sets} choix. Les temps de chaque choix viennent de courses au meilleur effort régulier avec tous ses changements ensemble. Si peu de changements touchent un même chiffre, toutes leurs combinaisons sont courues. S’il y en a plus, elles se lisent sur une courbe passant par des courses, au millième de seconde près.",
  howMean: "Un choix vaut ce qu’il gagne en moyenne sur tout ce qui peut en advenir :",
  howFormula: "E de S est la somme, pour chaque ω dans S, de sa chance fois le temps actuel moins le temps avec ω",
  symbolSet: "un choix de changements, et ce qui en marche",
  symbolChance: "la chance que marche exactement cela",
  symbolTime: "temps sur toutes tes épreuves, chacune autant de fois qu’elle est courue",
  howBest:
    "Le meilleur choix est celui qui gagne le plus avec ton argent, tes heures par semaine et tes semaines. Parmi ceux qui gagnent autant au millième de seconde près, on prend celui qui demande le moins d’argent.",
  howWeeks:
    "Un changement à heures hebdomadaires les prend dans chacune de ses semaines d’affilée, en commençant n’importe laquelle ; ce qui court en même temps s’additionne. Les heures prises une fois remplissent ce que les semaines laissent. Un choix convient si un calendrier garde chaque semaine dans tes heures ; tous les calendriers sont essayés. Ce qui prend plus de semaines que tu n’en as est écarté.",
  howSure:
    "Ce qui est incertain dans l’effet d’un changement et dans tes chiffres passe dans chaque issue, comme il compte pour de petits changements. Toutes les issues ensemble, chacune avec sa chance, donnent le ± et la plage.",
  howTable:
    "Une vérification porte sur un tableau publié, lui-même tiré d’un modèle. Il dit ce qu’un changement de position fait gagner à trois cyclistes, du débutant à l’élite, sur 40 km. Trois surfaces de traînée et deux puissances ont été ajustées à cinq de ses neuf chiffres ; les quatre autres sont retrouvés à 2 % près. Ce que gagnent l’entraînement et le matériel n’a pas été vérifié ainsi.",

  "usual.front-lower.name": "Poste de pilotage plus bas d’un cran",
  "usual.front-lower.note":
    "C’est un tiers du changement publié pour un cintre plus bas (CdA −10,7 ± 3,1 %). Les cyclistes entraînés dans la position consommaient un peu plus d’oxygène (1,3 %, non significatif), compté ici comme puissance perdue.",
  "usual.front-lowest.name": "Un second cran plus bas",
  "usual.front-lowest.note":
    "Les effets sont supposés. Chez dix-neuf cyclistes, toutes les mesures de puissance baissaient avec le tronc ; le plus bas était le pire pour eux.",
  "usual.elbows-and-hands.name": "Bras plus serrés",
  "usual.elbows-and-hands.note":
    "C’est petit et individuel : la hauteur du cintre compte plus que la largeur, et le mieux varie d’un cycliste à l’autre. L’effet est supposé.",
  "usual.head.name": "Travailler le port de tête",
  "usual.head.note":
    "Deux positions de tête différaient de 6,4 % de traînée au plus à 15 m/s. Un tiers de cela, tenu les yeux sur la route, est supposé.",
  "usual.clothing.name": "Vêtements près du corps",
  "usual.clothing.note":
    "Une tenue complète réduisait la traînée de 3,9 % à 53 km/h ; moins est probable si tes vêtements sont déjà ajustés, ou à moindre vitesse.",
  "usual.helmet.name": "Casque accordé au port de tête",
  "usual.helmet.note":
    "Les formes différaient de moins de 1,5 % à port de tête égal : on en suppose la moitié. Tout casque ne convient pas à toute tête.",
  "usual.tyres.name": "Pneus plus rapides",
  "usual.tyres.note": "Pneu, pression et chaleur changent, dit-on, la résistance au roulement du simple au double.",
  "usual.chain.name": "Chaîne nettoyée et cirée",
  "usual.chain.note":
    "Une transmission par chaîne perdait 2,1 ± 1,5 % ; on suppose qu’un bon entretien en épargne le quart.",
  "usual.pacing.name": "Travailler une allure régulière",
  "usual.pacing.note":
    "Les temps sont ici déjà ceux d’un effort régulier ; ce que perd une allure irrégulière est supposé.",
  "usual.corners.name": "Travailler les virages",
  "usual.corners.note":
    "Cela ne gagne du temps que sur un parcours dont les virages sont décrits. Travaille loin de la circulation et jamais à la limite. L’effet est supposé.",
  "usual.intervals.name": "Quatre semaines de fractionné",
  "usual.intervals.note":
    "Deux séances par semaine ont élevé la puissance aérobie maximale de cyclistes très entraînés de 3,0 à 6,2 % ; la puissance critique est supposée suivre.",
  "usual.season.name": "Une saison d’entraînement suivi",
  "usual.season.note": "Qui s’entraîne déjà gagne, dit-on, 2 à 6 % en une saison.",
  "usual.begin-training.name": "Huit semaines d’entraînement régulier",
  "usual.begin-training.note":
    "Des personnes non entraînées élèvent, dit-on, leur puissance critique de 10 à 15 % en six à huit semaines.",
  hoursUnit: { one: "heure", other: "heures" },
  weeksUnit: { one: "semaine", other: "semaines" },
  hoursText: { one: "{number} heure", other: "{number} heures" },
  hoursAWeekText: { one: "{number} heure par semaine", other: "{number} heures par semaine" },
};
