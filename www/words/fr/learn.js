// @ts-check
/** L’histoire guidée pour les nouveaux venus. */

/** @satisfies {import("../books.d.ts").Texts<"learn">} */
export default {
  lead: "Tu as peut-être entendu dire que oui. Voici huit choses à essayer, chacune avec un ou deux chiffres à changer, et un coureur que cela ne dérange pas. Lui et son vélo sont typiques, {mass} en tout, sur route plate et sans vent tant que tu ne dis rien d’autre. Un chiffre changé à une étape vaut dans toutes, et chaque valeur est recalculée au fur et à mesure.",
  coda: "L’histoire ne touche pas aux chiffres de la page : ce sont les chiffres typiques. Masse, pneus, roulements et puissance critique sont de mémoire, les autres publiés ou supposés, comme c’est indiqué sous « {yourNumbers} ».",
  tryIt: "**Essaie.** {what}",
  youChanged: "**Ce que tu as changé.**",

  powerAxis: "puissance, {unit}",
  areaAxis: "surface de traînée CdA, {unit}",
  speedAxis: "vitesse, {unit}",
  pedalsAxis: "puissance aux pédales, {unit}",
  morePowerBy: "Puissance en plus",
  lessDragBy: "Traînée en moins",
  morePower: "{percent} de puissance en plus",
  lessDrag: "{percent} de traînée en moins",

  wallTitle: "1. Ce que prend l’air",
  wallAsk: "Un coureur roule sur une route plate à {speed}, sans vent. Que faut-il pour écarter cet air ?",
  wallSpeed: "Vitesse sans vent",
  wallTry:
    "Mets l’anneau à l’allure d’une balade, puis à l’allure de course, ou tape une vitesse ci-dessus. Regarde comme la courbe tourne tard, et comme elle monte.",
  wallSays:
    "À **{speed}**, l’air prend {watts}. Au double de cette vitesse, il prendrait {twice}, {times} fois plus ; et rien qu’un dixième de vitesse en plus prend {tenth} de plus. La poussée de l’air croît comme le carré de la vitesse, et tu l’affrontes d’autant plus vite. La puissance croît donc comme le cube.",
  wallSince: "De {began} à {speed} : ce que prend l’air est passé de {beganWatts} à {watts}.",
  wallChart: "Puissance qui va dans l’air à chaque vitesse",
  wallAxis: "puissance dans l’air, {unit}",
  wallHandle: "La vitesse du coureur : gauche et droite la changent",
  wallRead: "Lire la puissance dans l’air à une vitesse",
  wallDescription: "La puissance qui va dans l’air monte de plus en plus raide. À {speed}, c’est {watts}.",
  wallSeries: "l’air prend",
  wallSpoken: "{speed} : l’air prend {watts}",
  wallReading: "À **{speed}**, l’air prend {watts}.",

  wattsTitle: "2. Où vont les watts",
  wattsAsk: "Avec {power} et une [surface de traînée|cda] de {drag} : à quelle vitesse va-t-on, et où vont les watts ?",
  wattsPower: "Puissance aux pédales",
  wattsDrag: "Surface de traînée, CdA",
  wattsTry:
    "Donne plus de watts au coureur et vois quelle couche les prend. Donne-lui ensuite la surface de traînée de quelqu’un qui se tient droit, {area}.",
  wattsSays:
    "{power} donnent **{speed}**. De ces watts, {air} vont dans l’air, {tyres} dans les pneus, {bearings} dans les roulements et {drivetrain} dans la transmission. L’air fait {share} de la résistance à l’avancement, et d’autant plus que le coureur va vite : les {ten} suivants ne donnent que {gain}. Moins de surface de traînée amincit la couche épaisse. Plus de puissance ne fait que monter plus haut dessus.",
  wattsSince: "Le coureur allait à {began}, avec {beganWatts} et {beganArea} ; le tien va à {speed}.",
  wattsChart: "Où vont les watts du coureur à chaque vitesse",
  wattsHandle: "Le coureur : gauche et droite changent les watts, et la vitesse avec eux",
  wattsRead: "Lire où vont les watts à une vitesse",
  wattsDescription:
    "Puissance aux pédales selon la vitesse, empilée : l’air en bas, puis les pneus, les roulements et la transmission. À {speed}, c’est {power}.",
  air: "air",
  rolling: "pneus",
  bearings: "roulements",
  drivetrain: "transmission",
  inAll: "en tout",
  wattsSpoken: "{power} donnent {speed}",
  wattsReading: "À **{speed}**, il faut {power} en tout, dont {air} pour l’air.",

  longTitle: "3. Dix pour cent de plus, combien de temps ?",
  longAsk: "Le coureur peut tenir {power} un certain temps. Et {more} de plus ?",
  longPower: "Puissance à tenir",
  longTry:
    "Déplace l’anneau le long de la courbe. Là où elle est raide, un peu plus de puissance prend peu de temps ; là où elle est plate, presque tout. À pas égaux sur l’axe, la durée est multipliée chaque fois par le même nombre.",
  longSays: "La courbe de ce coureur donne {power} {held} et {percent} de plus, {more}, {moreHeld}.",
  longShare: "C’est {share} du temps.",
  longNoSwitch:
    "« Dix pour cent de puissance en plus », cela ne se choisit donc pas : pour la même distance, il faut une autre courbe, et de l’entraînement. D’après une étude, quatre semaines de fractionné ont fait progresser des cyclistes très entraînés de {low} à {high} sur {trial}.",
  notAtAll: "pas du tout",
  longerThanRaces: "plus longtemps que toute course",
  heldFor: "pendant **{time}**",
  longSince: "Le coureur a commencé avec {began} {beganHeld} ; le tien a {watts}, {held}.",
  longTypical:
    "La courbe est typique, ce n’est pas la tienne. **{cp} de [puissance critique|cp]** sont de mémoire, **{wPrime} de [W′|wPrime]** sont proches de la moyenne de tests publiés. Au-delà d’une demi-heure, elle baisse aussi, comme celle d’un groupe entraîné. Elle vaut pour des coureurs reposés, sans surchauffe et bien alimentés.",
  longCaution:
    "Trouver sa propre courbe demande des efforts maximaux. Ils sont pour des coureurs en bonne santé et régulièrement actifs. Dans le doute, demande d’abord à un médecin, et fais l’essai loin de la circulation.",
  longChart: "Puissance que le coureur peut tenir pour chaque durée",
  longAxis: "durée tenue",
  longHandle: "Durée tenue : gauche et droite la changent, et la puissance avec elle",
  longRead: "Lire la puissance pour une durée",
  longDescription:
    "La puissance que l’on peut tenir baisse quand l’effort s’allonge, d’abord vite. {power} peuvent être tenus pendant {time}.",
  longDescriptionBeyond:
    "La puissance que l’on peut tenir baisse quand l’effort s’allonge, d’abord vite. {power} peuvent être tenus au-delà de ce graphique.",
  longSeries: "le coureur peut tenir",
  longMorePoint: "{percent} de plus, {time}",
  longSpoken: "{power} pendant {time}",
  longReading: "Le coureur tient {power} pendant **{time}**.",
  minutes: "{count} min",
  hours: "{count} h",

  tenTitle: "4. Dix contre dix",
  tenAsk: "Qu’est-ce qui rapporte le plus, {more} de puissance en plus ou {less} de traînée en moins ?",
  tenTry:
    "Tire l’anneau vers un coureur plus fort, puis plus faible, et vois quelle flèche croise le plus de lignes. Ou demande {percent} de traînée en moins contre {percent} de puissance en plus.",
  tenSays:
    "Pour {distance}, il faut {time} au coureur. Avec plus de puissance, il est {power}, avec moins de traînée {drag} : {ahead}.",
  tenTooMuch:
    "**Plus que ce coureur ne peut tenir :** pendant {time}, la courbe de l’étape 3 permet {sustainable}, et non {power}. Les temps montrent ce que vaudraient les deux changements pour qui tiendrait cette puissance.",
  tenTie:
    "Sur route plate et sans vent, ces deux changements sont à égalité quand l’air prend **{tie}** du travail ; ici il en prend {share}.",
  tenNoTie: "Aucune part d’air ne mettrait ces deux changements à égalité.",
  tenMirror:
    "Enlever est un plus grand pas qu’ajouter : le pas qui répond à {percent} de plus est {mirror} de moins. Face à cela, plus de puissance est {differs}.",
  powerAhead: "plus de puissance mène de {figure}",
  dragAhead: "moins de traînée mène de {figure}",
  twoLevel: "les deux sont à égalité",
  tenSince:
    "Au début, c’était : {began}, et {beganShare} du travail pour l’air. Maintenant, c’est : {ahead}, et {share} pour l’air.",
  tenDoesIt:
    "**La position vaut-elle donc mieux que la puissance ?** Au chronomètre, dix pour cent de l’une et de l’autre se valent presque sur route plate. Ce qui diffère, c’est ce qu’elles demandent. Un dixième de puissance en plus demande de l’entraînement. Un dixième de traînée en moins ne demande peut-être qu’un cintre plus bas, et un peu de ta puissance.",
  tenLower:
    "D’après une étude, un cintre plus bas a réduit le CdA de cinq cyclistes de {cda}, et leur puissance de {power}. Les deux moyennes à la fois feraient passer le coureur de cette histoire de **{speed}** à **{lower}**.",
  tenTorso:
    "Chez onze autres, un tronc bas a pris {watts} au seuil anaérobie, là où un effort n’est plus tenable régulièrement. La position basse a gagné quand même. D’un cycliste à l’autre, l’écart est aussi grand que ces moyennes : seul ton propre test te le dira.",
  tenCaution:
    "Une tête baissée ne voit pas la route. Essaie les positions loin de la circulation et à petits pas. Demande à un spécialiste de la position ou à un médecin pour tout ce qui fait mal. Le règlement de l’épreuve et le code de la route passent d’abord.",
  tenChart: "Le temps à l’arrivée du coureur pour chaque puissance et chaque surface de traînée",
  tenHandle: "Le coureur sur la carte : gauche et droite changent la puissance, haut et bas la surface de traînée",
  theRider: "le coureur",
  pointSpoken: "{power} à {drag} : {time}",
  eachLine: "chaque ligne est un temps à l’arrivée",
  tenDescription:
    "Le temps à l’arrivée baisse vers la droite, avec plus de puissance, et vers le bas, avec moins de surface de traînée. Le coureur est à {power} et {drag}, {time}.",
  tenReading: "{power} et {drag} donnent **{time}**.",

  lostTitle: "5. Une position perdue à la fin",
  lostAsk:
    "Le coureur prend une position avec {less} de traînée en moins, la tient {begins}, puis fatigue et la perd. Cela valait-il la peine ?",
  lostBegins: "Quand la position basse commence à se dégrader",
  lostLess: "Combien de traînée en moins a la position basse",
  lostTry:
    "Trouve l’instant où les deux sont à égalité : une minute plus tôt la basse perd, une minute plus tard elle gagne.",
  lostSays:
    "Partie de {low} et montant jusqu’à {tired}, la position basse est {differs} {spread} face à {kept} gardés tout du long. Tenue jusqu’au bout, elle serait {held}.",
  lostTie: "Les deux sont à égalité si elle commence à se dégrader après {time} de course.",
  lostNoTie: "Il n’y a pas d’instant où les deux sont à égalité.",
  lostMoral:
    "La position la plus rapide n’est pas la plus basse, mais la plus basse que tu peux encore tenir près de la ligne.",
  lostSince: "Au début, la position basse était {began} ; maintenant, elle est {differs}.",
  lostAssumed:
    "La façon dont la traînée augmente avec la fatigue n’est pas publiée, à notre connaissance. Que la position se perde en vingt-cinq minutes, jusqu’à un dixième de plus que celle que le coureur aurait pu garder, est ici **supposé**. Quand tu poses la question pour ta propre course, c’est toi qui dis comment la tienne se dégrade. Le [±|sd] dit à quel point l’écart est sûr.",
  lostChart: "La surface de traînée du coureur au fil de la course",
  lostAxis: "temps roulé, {unit}",
  lostHandle: "Quand la position basse commence à se dégrader : gauche et droite le changent",
  lostRead: "Lire les deux surfaces de traînée au fil de la course",
  lostDescription:
    "La position gardée reste à {kept}. La basse part de {low} et commence à se dégrader après {time} de course.",
  keptSeries: "la position gardée",
  lowSeries: "la basse",
  levelAt: "égalité à {time}",
  lostSpoken: "commence à se dégrader après {time} : {differs}",
  lostReading: "Elle commence à se dégrader après {time} de course : **{differs}**.",

  windTitle: "6. En montée et face au vent",
  windAsk:
    "Sur une pente de {grade} et avec {wind} de vent de face, que vaut un pour cent de puissance ou de traînée ?",
  windSlope: "Pente de la route",
  windAgainst: "Vent de face",
  windTry:
    "Monte une côte à {climb}, puis descends une pente douce. Reviens ensuite sur le plat et laisse souffler le vent.",
  windSays:
    "À {speed}, un pour cent de puissance en plus donne {power}, un pour cent de surface de traînée en moins {drag} : {ratio} fois autant.",
  moreSpeed: "{percent} de vitesse en plus",
  windDragWins:
    "Moins de traînée vaut plus : la pente rend ce que prennent les pneus, et il ne reste que l’air à vaincre.",
  windNear: "L’essentiel de la résistance est l’air, les deux sont donc proches.",
  windPowerWins:
    "Une bonne part de la résistance est ici la montée ou les pneus, et une position plus basse n’en épargne rien : la puissance vaut plus.",
  windStill: "Sans vent, ce serait {power} et {drag}.",
  windMoral: "La surface de traînée compte le plus là où la route est plate ou descend, la puissance là où elle monte.",
  windSince:
    "Sur le plat et sans vent, c’était {beganPower} pour la puissance et {beganDrag} pour la traînée ; ici, c’est {power} et {drag}.",
  windCaution:
    "En descente, le calcul favorise une position basse ; la route, peut-être pas. Là, ce sont la descente, les virages, la circulation et les rafales qui fixent la position et la vitesse, pas un graphique.",
  windChart: "Ce que vaut un pour cent de puissance ou de surface de traînée sur chaque pente",
  slopeAxis: "pente, {unit}",
  worthAxis: "ce que vaut un pour cent, {unit} de vitesse",
  windHandle: "La pente : gauche et droite la changent",
  windRead: "Lire ce que vaut un pour cent sur une pente",
  windDescription:
    "Un pour cent de puissance en plus vaut d’autant plus que la route est raide ; un pour cent de traînée en moins, d’autant moins. À {slope}, c’est {power} et {drag}.",
  powerSeries: "plus de puissance",
  dragSeries: "moins de traînée",
  windSpoken: "{slope} : puissance {power}, traînée {drag}",
  windReading: "À {slope}, c’est {power} pour la puissance et {drag} pour la traînée.",

  pushTitle: "7. Où appuyer",
  pushAsk:
    "Une route plate a une montée de {grade} en son milieu, puis redescend d’autant. Où le coureur doit-il appuyer ?",
  pushGrade: "Pente de la montée",
  pushTry: "Rends la montée plus raide, puis presque plate : vois combien il y a à gagner.",
  pushEven: "Sur {distance}, tenir {power} tout du long prend **{time}**.",
  pushPlan:
    "Un plan à rouler : {cues}. Il est **{faster}**, à {lost} du plan le plus rapide qui soit, et ne fatigue pas plus.",
  pushCueStart: "{power} dès le départ",
  pushCue: "{power} à partir de {distance}",
  pushFlat: "Sur une route aussi plate, le plan est l’effort régulier.",
  pushMoral:
    "Appuie là où la route est lente et relâche là où elle est rapide. À faible allure, l’air prend moins de chaque watt, qui fait donc gagner plus de temps.",
  pushSince: "Au début, le plan était {began} ; maintenant il est {now}.",
  pushAssumed:
    "Appuyer dépense [W′|wPrime], et relâcher le ramène comme le dit un modèle publié ; les coureurs diffèrent. La route et le coureur sont inventés.",
  pushCaution:
    "Un plan parle d’effort, jamais de vitesse en descente ou en virage : là, le trafic, la route et la vue décident.",
  pushChart: "Ce qu’un plan gagne sur un effort régulier dans chaque montée",
  pushAxis: "pente de la montée, {unit}",
  pushGainAxis: "plus rapide de, s",
  pushHandle: "La montée : gauche et droite changent sa pente",
  pushRead: "Lire ce qu’un plan gagne dans une montée",
  pushDescription: "Plus la montée est raide, plus un plan gagne sur un effort régulier. À {slope}, il est {faster}.",
  pushSeries: "un plan à quatre puissances",
  pushFastest: "le plan le plus rapide",
  pushSpoken: "{slope} : {faster}",
  pushReading: "Dans une montée de {slope}, le plan est {faster}.",

  threeTitle: "8. Trois changements, un budget",
  threeAsk:
    "Un cintre abaissé par un spécialiste coûte 100, une tenue près du corps 150, des pneus plus rapides 90. Avec {budget} à dépenser : lequel d’abord ?",
  threeBudget: "Argent à dépenser",
  threeTry: "Dépense {budget}, puis de moins en moins, et vois ce qui part en premier.",
  threeSays: "Sur {distance}, le mieux est {names} : {figure}, la chance comptée.",
  threeNothing: "Sur {distance}, ce budget ne suffit pour aucun des trois.",
  threeMost: "Isolément, le plus grand gain, la chance comptée, est pour {first} : {average}.",
  threeMoral:
    "Ce qui vient d’abord n’est pas ce qui gagne le plus quand cela marche. C’est ce qui gagne le plus **pour ce que cela demande**, la chance comptée.",
  threeSince: "Au début de l’histoire, c’était {names}.",
  threeNone: "aucun d’eux",
  threeFront: "un poste de pilotage plus bas",
  threeSuit: "la tenue",
  threeTyres: "les pneus",
  threeCosts: "{name}, {money}",
  threeAssumed:
    "L’effet de la tenue est publié ; celui du cintre abaissé est un tiers de ce qui est publié, celui des pneus vient de mémoire. Chaque chance et chaque prix est **supposé** : mets les tiens sous « {question} ».",
  threeCaution:
    "Un cintre plus bas demande de petits pas, les yeux sur la route, et un spécialiste si quelque chose fait mal. Essaie loin de la circulation.",
  threeChart: "Ce que gagne chacun de trois changements",
  threeLegend:
    "Point : gain avec la chance comptée. Anneau : gain si cela marche ; deux fois sur trois, la vérité est sur le trait. Coche : ce que le budget devrait acheter",
  threeAxis: "gagné sur {distance}",
  threeDescription:
    "La chance comptée, le plus grand gain est pour {first} : {average}. Ce que le budget devrait acheter est coché.",

  endTitle: "À ta propre course, maintenant",
  askChanged: "Poser la question pour ma propre course, avec ce que j’ai changé",
  askMeasure: "Mesurer ma traînée",
  askOwn: "Poser la question pour ma propre course",
  untouched:
    "Rien de tout cela n’a touché à tes propres chiffres. Si tu emportes quelque chose, « {undo} » revient en arrière. La pente, le vent et la position qui se dégrade ont leur place sous « {yourNumbers} » et dans « {holdOrFade} ».",
  taken: "Ce que tu as changé dans l’histoire est maintenant dans tes propres chiffres. « {undo} » revient en arrière.",
  changedCda: "un CdA de {area}",
  bringAlong: "Tu as changé : {list}. Emporte-le vers « {question} », ou ouvre-la avec les chiffres qui y sont.",
  notYou:
    "Le coureur de cette histoire n’est pas toi. « {question} » demande la même chose pour ta propre puissance, ta position, ton parcours et ton jour, et dit à quel point la réponse est sûre.",
  sumTitle: "En bref : position ou puissance ?",
  sumPosition: "La position gagne",
  sumPositionWhen:
    "La route est plate ou descend, tu roules vite ou face au vent, et tu tiens la position sans perdre beaucoup de puissance.",
  sumPower: "La puissance gagne",
  sumPowerWhen:
    "La route monte, tu roules lentement, ou la position plus basse prend trop de puissance ou se dégrade trop tôt.",
  sumLevel: "Les deux se valent",
  sumLevelWhen:
    "C’est dix pour cent de chaque, sur route plate et sans vent : choisis alors ce que tu obtiens le plus facilement.",
  sumWorth:
    "Avec les chiffres tels que tu les laisses, ce coureur est {drag} sur {distance} avec {lessDrag}, et {power} avec {morePower}. Cette traînée en moins vaut environ {watts} pour lui.",
  sumWho: "Laquelle",
  sumWhen: "Quand",
};
