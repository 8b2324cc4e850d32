// @ts-check
/** Les textes de « Que fait ce réglage à ma hanche ? ». */

/** @satisfies {import("../books.d.ts").Texts<"leg-room">} */
export default {
  ask: "Je mesure {stature}. Mon réglage a des manivelles de {crank_a}, la selle à {saddle_a} de leur axe avec un angle de selle de {seat_a}, et {front_a}. Que change-t-on avec des manivelles de {crank_b}, la selle à {saddle_b} et {seat_b}, et {front_b} ?",
  pedalling: "Je pédale à {cadence_a} maintenant et à {cadence_b} avec le nouveau réglage, avec {model}.",
  front: "{choice} {tail}",
  "front.label": "Comment le poste de pilotage est donné",
  "front.byPads": "les repose-coudes",
  "front.byTorso": "le tronc",
  "front.drop": "{drop} sous la selle",
  "front.torso": "à {torso}",
  "model.label": "Ce que fait la cheville",
  "model.ankling": "une cheville mobile",
  "model.frozen": "une cheville fixe",
  "number.a": "{label}, réglage actuel",
  "number.b": "{label}, nouveau réglage",

  "verdict.opens": "Le **nouveau réglage** ouvre la hanche de",
  "verdict.closes": "Le **nouveau réglage** ferme la hanche de",
  "verdict.level": "Le **nouveau réglage** laisse la hanche comme elle est",
  "verdict.oneInCloses": "trop serré pour trancher : 1\u00a0fois sur\u00a0{count}, il la ferme",
  "verdict.oneInOpens": "trop serré pour trancher : 1\u00a0fois sur\u00a0{count}, il l’ouvre",
  "verdict.spoken.opens":
    "Le nouveau réglage ouvre la hanche de {figure} là où elle est la plus fermée, plus ou moins {spread}.",
  "verdict.spoken.closes":
    "Le nouveau réglage ferme la hanche de {figure} là où elle est la plus fermée, plus ou moins {spread}.",
  "verdict.spokenExact.opens": "Le nouveau réglage ouvre la hanche de {figure} là où elle est la plus fermée.",
  "verdict.spokenExact.closes": "Le nouveau réglage ferme la hanche de {figure} là où elle est la plus fermée.",
  "verdict.spoken.level": "Le nouveau réglage laisse la hanche comme elle est.",
  "ruler.left": "plus fermée",
  "ruler.right": "plus ouverte",
  "ruler.spoken": "D’une hanche plus fermée à gauche à une plus ouverte à droite : {change}",

  "results.caption": "Les deux réglages",
  "results.measure": "Quoi",
  "results.now": "Actuel",
  "results.new": "Nouveau",
  "results.change": "Écart",
  "results.hip": "Hanche, au plus fermé",
  "results.torso": "Tronc",
  "results.kneeStraight": "Genou, au plus tendu",
  "results.kneeBent": "Genou, au plus plié",
  "results.thigh": "Cuisse, au plus vite",
  "results.sureGuessed":
    "Tes propres angles ne sont connus qu’à {hip} pour la hanche et {knee} pour le genou, parce que tes longueurs sont estimées d’après ta taille. L’écart entre les deux réglages est bien plus sûr : c’est le même corps qui roule.",
  "results.sureTyped":
    "Tes propres angles sont connus à {hip} pour la hanche et {knee} pour le genou. L’écart entre les deux réglages est bien plus sûr : c’est le même corps qui roule.",

  "figure.title": "Les deux réglages vus de côté, à l’échelle",
  "figure.spoken":
    "À {angle} après le point mort haut, la hanche est à {hip_a} pour le réglage actuel et {hip_b} pour le nouveau. Le genou est à {knee_a} et {knee_b}.",
  "figure.reading":
    "À **{angle}** après le point mort haut, la hanche est à {hip_a} (actuel) et {hip_b} (nouveau), le genou à {knee_a} et {knee_b}.",
  "figure.now": "actuel",
  "figure.new": "nouveau",
  "figure.slider": "Angle de manivelle après le point mort haut",
  "figure.sliderValue": "{angle} après le point mort haut",
  "figure.play": "Tourner la manivelle",
  "figure.pause": "Arrêter la manivelle",
  "figure.tightest": "Hanche la plus fermée",
  "figure.straightest": "Genou le plus tendu",

  "chart.crank": "angle de manivelle après le point mort haut",
  "chart.hip": "angle de hanche",
  "chart.hipTitle": "Angle de hanche sur un tour de manivelle",
  "chart.hipDesc":
    "Voici l’angle entre le tronc et la cuisse sur un tour, pour les deux réglages. Le réglage actuel le ferme le plus à {at_a} après le point mort haut, {hip_a} ; le nouveau à {at_b}, {hip_b}.",
  "chart.hipReader": "Lire les angles de hanche à un angle de manivelle",
  "chart.thigh": "rotation de la cuisse, positive vers le haut",
  "chart.thighTitle": "À quelle vitesse tourne la cuisse, sur un tour de manivelle",
  "chart.thighDesc":
    "Voici à quelle vitesse tourne la cuisse sur un tour, positive vers le haut. Avec le réglage actuel, elle est la plus rapide à {at_a} après le point mort haut, {thigh_a} ; avec le nouveau à {at_b}, {thigh_b}.",
  "chart.thighReader": "Lire la vitesse de la cuisse à un angle de manivelle",
  "chart.now": "actuel",
  "chart.new": "nouveau réglage",
  "chart.handle": "Toi : gauche et droite tournent la manivelle",

  "level.already":
    "**Aussi ouverte qu’à présent.** Le nouveau réglage laisse la hanche à un dixième de degré près où elle est.",
  "level.tighter":
    "**Pour être aussi ouvert qu’à présent,** il faut au nouveau réglage l’un de ces changements : {ways}.",
  "level.wider": "**Le nouveau réglage a de la marge :** l’un de ces changements la reprendrait : {ways}.",
  "level.none":
    "**Aucun changement seul** de manivelle, de selle, d’angle de selle ou de repose-coudes ne rend le nouveau réglage aussi ouvert qu’à présent.",
  giveBack:
    "**Plus bas devant, hanche aussi ouverte.** À partir du réglage actuel, des repose-coudes {drop} plus bas ferment la hanche de {hip}. L’un de ces changements le compense : {ways}.",
  "giveBack.none":
    "**Plus bas devant.** À partir du réglage actuel, des repose-coudes {drop} plus bas ferment la hanche de {hip}.",
  "way.crankShorter": "des manivelles {by} plus courtes et la selle d’autant plus haute",
  "way.crankLonger": "des manivelles {by} plus longues et la selle d’autant plus basse",
  "way.saddleHigher": "la selle {by} plus haute, les repose-coudes suivant",
  "way.saddleLower": "la selle {by} plus basse, les repose-coudes suivant",
  "way.seatForward": "l’assise avancée de {by}",
  "way.seatBack": "l’assise reculée de {by}",
  "way.padsHigher": "les repose-coudes {by} plus haut",
  "way.padsLower": "les repose-coudes {by} plus bas",

  "changes.title":
    "Ce que de petits changements du réglage actuel font : hanche la plus fermée, genou le plus tendu, cuisse la plus rapide",
  "changes.change": "Changement",
  "changes.hip": "Hanche",
  "changes.knee": "Genou",
  "changes.thigh": "Cuisse",
  "changes.crank_and_saddle": "Manivelles {by} plus courtes, selle d’autant plus haute",
  "changes.crank": "Manivelles {by} plus courtes, selle inchangée",
  "changes.saddle": "Selle {by} plus haute, repose-coudes suivant",
  "changes.seat_angle": "Assise avancée de {by}, repose-coudes suivant",
  "changes.pads": "Repose-coudes {by} plus bas",
  "changes.outOfReach": "hors de portée",

  knee: "**Le genou.** Au plus tendu, il lui manque {short} d’extension dans le réglage actuel et {short_new} dans le nouveau. Une revue des études conseille 25 à 30°, même si l’on sait peu de chose sur les blessures. Réglés à 25° au repos, les cyclistes d’une étude pédalaient à 29\u00a0±\u00a05°.",
  takes:
    "**Ce que cela demande.** Des manivelles plus courtes ouvrent facilement la hanche. Une revue sur le sprint a trouvé que, de 165 à 180 mm, leur longueur ne joue pas sur la puissance. Un poste de pilotage plus bas prend de la puissance à certains et rien à d’autres, alors fais le test.",
  price:
    "**Qu’est-ce que cela vaut ?** Cette page compte des degrés. Pour les watts, roule avec les deux postes de pilotage dans un même test et laisse « Quelle position » les comparer. {open}",
  "price.open": "L’ouvrir",
  caution:
    "**Ce n’est pas un verdict sur ton corps.** C’est une jambe de bâtons dans un plan. Change une chose à la fois, par petits pas, et roule tranquillement un moment après chacun. Arrête-toi si quelque chose fait mal ou s’engourdit : genoux, hanches, dos, nuque, mains ou assise. Demande à un médecin ou à un spécialiste de la position. On essaie loin de la circulation, et le règlement de l’épreuve pour la selle et le cintre passe d’abord.",

  "why.gist": "La cuisse est au plus haut juste après le point mort haut, quand la pédale est encore presque en haut.",
  "why.hip":
    "La hanche est la plus fermée à {at} après le point mort haut, quand la cuisse est au plus haut. Une manivelle plus courte lève moins la pédale, et avec la selle d’autant plus haute toute la jambe pend de plus haut. Les deux laissent la cuisse plus basse. Baisser les repose-coudes ne fait rien à la jambe ; le tronc descend simplement vers elle, degré pour degré.",
  "why.seat":
    "Avancer l’assise autour de l’axe du pédalier tourne la jambe et la hanche ensemble, et le même angle de tronc laisse plus de place. Avec une cheville fixe, c’est environ un degré par degré ; avec une qui bouge, c’est un peu plus. C’est une des raisons pour lesquelles les selles de contre-la-montre sont très en avant.",
  "why.speed":
    "À {cadence}, la cuisse monte et descend une fois par tour. Des manivelles plus longues la font aller plus loin, donc plus vite ; une cadence plus haute aussi.",

  "how.gist": "Cuisse, jambe et pied comme des barres entre une hanche immobile et une pédale qui tourne",
  "how.loop":
    "Hanche, genou, cheville et pédale sont reliés par des barres rigides dans un plan. La hanche se trouve sur la ligne qui passe par l’axe du pédalier et le dessus de la selle, {above} plus loin (supposé). La hauteur de selle se mesure le long de cette ligne, et l’angle de selle est celui de cette ligne, non celui du cadre.",
  "how.frozen":
    "Avec une cheville fixe, jambe et pied font une barre coudée à {ankle} (supposé). Avec une cheville mobile, la ligne de la cheville à la pédale pointe en moyenne {pitch} vers le bas, à {swing} près sur le tour. Les orteils sont au plus bas à l’arrière (supposé). Le second modèle donne environ dix degrés de plus que le premier : compare à l’intérieur d’un seul, et jamais avec un rapporteur sur la peau.",
  "how.formula": "angle de hanche égale angle du tronc moins angle de la cuisse, qui découle de la loi des cosinus",
  "how.torso":
    "Le tronc est la ligne de la hanche à l’épaule. Si l’on donne le dénivelé des repose-coudes, l’épaule est un bras au-dessus d’eux, le bras vertical. Le sinus de l’angle du tronc est une hauteur divisée par la longueur du tronc. Cette hauteur est le bras, moins le dénivelé, moins la hauteur de la hanche sur la selle.",
  "how.rates":
    "La vitesse de la cuisse est calculée exactement d’après le mécanisme, comme les points les plus fermés et les plus rapides. Le ± est un écart type : chaque longueur incertaine est allongée puis raccourcie tour à tour, dans les deux réglages à la fois.",
  "how.none":
    "Aucune table publiée d’une telle jambe n’a été trouvée. La page est vérifiée avec le même mécanisme calculé à 40 chiffres.",
  "how.τ": "tronc au-dessus de l’horizontale",
  "how.φ": "cuisse au-dessus de l’horizontale",
  "how.E": "de la hanche au bout de la barre inférieure",
  "how.t": "cuisse",
  "how.L": "barre inférieure : jambe, ou jambe et pied ensemble",

  lengths: "Ton pédalage et tes longueurs",
  "lengths.gistGuessed": "Estimées d’après ta taille : {count} ; saisis ce que tu as mesuré",
  "lengths.gistTyped": "Toutes saisies",
  "lengths.how":
    "Mesure d’articulation à articulation, ce qu’un mètre ruban trouve à un centimètre près. La hanche est sous le point osseux sur le côté, le genou à son pli, la cheville à sa bosse extérieure. Les parts de la taille derrière une estimation sont de mémoire.",
  "lengths.thigh_m": "De la hanche au genou",
  "lengths.shank_m": "Du genou à la cheville",
  "lengths.foot_m": "De la cheville à l’axe de pédale",
  "lengths.trunk_m": "De la hanche à l’épaule",
  "lengths.upper_arm_m": "De l’épaule aux repose-coudes",
  "lengths.hip_above_saddle_m": "Hanche au-delà de la selle",
  "lengths.foot_pitch_deg": "Pied sous l’horizontale, en moyenne",
  "lengths.foot_swing_deg": "Battement du pied, de chaque côté",
  "lengths.ankle_deg": "Angle de la cheville",
  "lengths.guess": "estimation",
  "lengths.guessAgain": "Estimer à nouveau",

  "table.gist": "Les deux réglages tous les quinze degrés de manivelle",
  "table.caption": "Angles en degrés et vitesse de la cuisse en degrés par seconde, sur un tour de manivelle",
  "table.crank": "Manivelle",
  "table.hipA": "Hanche, actuelle",
  "table.hipB": "Hanche, nouvelle",
  "table.kneeA": "Genou, actuel",
  "table.kneeB": "Genou, nouveau",
  "table.thighA": "Cuisse, actuelle",
  "table.thighB": "Cuisse, nouvelle",
};
