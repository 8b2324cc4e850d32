// @ts-check
/** What the core says, by its English sentence as it stands there: `{name}` is the same in both, the core's nameless `{}` are `{0}`, `{1}` in their order. */

/** @type {Record<string, string>} */
export default {
  "{path} is not a number that can be used.": "{path} n’est pas un nombre utilisable.",
  "{path} is {is}; it is usually from {low} to {high}{space}{}.":
    "{path} vaut {is} ; d’habitude, c’est de {low} à {high}{space}{0}.",
  "Rider, bicycle, clothes and bottles together; the default is a usual rider.":
    "Cycliste, vélo, vêtements et bidons ensemble ; par défaut, un cycliste ordinaire.",
  "Good asphalt is customarily 0.003 to 0.005; tyre, pressure and warmth change it by a factor of two.":
    "Un bon asphalte est d’ordinaire compté de 0.003 à 0.005 ; pneu, pression et chaleur le changent du simple au double.",
  "A measured solo chain drive lost 2.1 ± 1.5 %; choose 1 if your meter sits in the wheel.":
    "Une transmission à chaîne mesurée perdait 2.1 ± 1.5 % ; prends 1 si ton capteur est dans la roue.",
  "The turning wheels weigh this much more when speed changes; both wheels of the 1998 model come to 1.45 kg.":
    "Les roues qui tournent pèsent d’autant plus quand la vitesse change ; les deux roues du modèle de 1998 font 1.45 kg.",
  "Constant part of the wheel bearings' drag in the 1998 road model.":
    "Part fixe du frottement des roulements dans le modèle sur route de 1998.",
  "Part of the wheel bearings' drag that grows with speed in the 1998 road model.":
    "Part du frottement des roulements qui croît avec la vitesse dans le modèle sur route de 1998.",
  "The most a rider pushes the bicycle along with from rest; it matters for the first seconds only.":
    "La plus grande force avec laquelle un cycliste lance le vélo à l’arrêt ; elle ne compte que les premières secondes.",
  "Sideways acceleration a rider accepts in a dry bend; it caps speed where the course has a radius.":
    "Accélération latérale acceptée dans un virage sec ; elle borne la vitesse là où le parcours a un rayon.",
  "How hard a rider slows for a bend.": "Avec quelle force on freine avant un virage.",
  "On time-trial bars; published is 0.244 m², measured for one record rider in a tunnel. That a guess is worth ± 0.04 is assumed.":
    "Sur prolongateur ; sont publiés 0.244 m², mesurés en soufflerie pour un recordman. Qu’une estimation vaille à ± 0.04 près est supposé.",
  "Critical power here as a share of the position your power was tested in; 1 if it was tested in this one.":
    "Puissance critique ici, en part de celle de la position où ta puissance a été testée ; 1 si c’était celle-ci.",
  "Position lowered critical power and left W′ alone in seven trained riders.":
    "Chez sept cyclistes entraînés, la position a baissé la puissance critique et laissé W′ inchangé.",
  "How CdA changes with air speed; no single published figure, so 0 unless measured.":
    "Comment le CdA change avec la vitesse de l’air ; pas de chiffre publié unique, donc 0 sauf mesure.",
  "The air speed at which CdA was measured; it matters only with a speed exponent.":
    "La vitesse de l’air où le CdA a été mesuré ; elle ne compte qu’avec un exposant de vitesse.",
  "CdA once the position is lost; no published figure was found, so film yourself and measure it.":
    "CdA une fois la position perdue ; aucun chiffre publié n’a été trouvé, alors filme-toi et mesure-le.",
  "When the position begins to creep up.": "Quand la position commence à se relever.",
  "When the position is wholly lost.": "Quand la position est tout à fait perdue.",
  "Share of the ride spent out of the position: head up or down, sitting up for a junction.":
    "Part du parcours passée hors de la position : tête haute ou basse, redressé à un carrefour.",
  "CdA during a lapse.": "CdA pendant une interruption.",
  "Mean CdA over the first third of a steady test; its middle stands for the time at a sixth of the test.":
    "CdA moyen sur le premier tiers d’un essai régulier ; son milieu tient lieu de l’instant au sixième de l’essai.",
  "Mean CdA over the last third; the whole rise is one and a half times the difference of the thirds.":
    "CdA moyen sur le dernier tiers ; toute la hausse vaut une fois et demie la différence des tiers.",
  "Length of the test; what happens to CdA after it is not known and taken to stay.":
    "Durée de l’essai ; ce que devient le CdA ensuite n’est pas connu, et supposé constant.",
  "What it adds to CdA; the shapes of time-trial helmets differed by less than 1.5 % with the head kept still.":
    "Ce que cela ajoute au CdA ; les formes de casques de contre-la-montre différaient de moins de 1.5 % à tête immobile.",
  "What it adds to the mass; weigh it.": "Ce que cela ajoute à la masse ; pèse-le.",
  "Critical power; recreational cyclists are customarily put at 200 to 260 W.":
    "Puissance critique ; on compte d’ordinaire 200 à 260 W pour un cycliste amateur.",
  "Work above critical power; twelve laboratory sets averaged 16.9 ± 3.2 kJ.":
    "Travail au-dessus de la puissance critique ; douze séries en laboratoire donnaient 16.9 ± 3.2 kJ en moyenne.",
  "Power at the first instant of an all-out effort.": "Puissance au premier instant d’un effort maximal.",
  "Share of critical power lost for each e-fold of time past half an hour; eight trained riders' 60-minute power implies 9 %, and the ± is assumed.":
    "Part de la puissance critique perdue à chaque fois que le temps est multiplié par e au-delà d’une demi-heure ; la puissance sur 60 minutes de huit cyclistes entraînés implique 9 %, et le ± est supposé.",
  "The long-ride loss in watts, as older files give it: 9 % of a critical power of 245 W.":
    "La perte sur longue durée en watts, comme la donnent les anciens fichiers : 9 % d’une puissance critique de 245 W.",
  "By what share the power meter reads high: 54 meters of 9 makers were off by -0.9 ± 3.2 %. It counts for what was measured with it.":
    "La part dont le capteur de puissance surestime : 54 capteurs de 9 fabricants s’écartaient de -0.9 ± 3.2 %. Elle compte pour tout ce qui a été mesuré avec lui.",
  "54 power meters of 9 makers deviated by −0.9 ± 3.2 %; each repeated itself to 1.2 ± 0.9 %.":
    "54 capteurs de puissance de 9 fabricants s’écartaient de −0.9 ± 3.2 % ; chacun se répétait à 1.2 ± 0.9 % près.",
  "{field} stands in place of long_ride_loss_share: give one of them.":
    "{field} remplace long_ride_loss_share : donne l’un des deux.",
  "From when the long-ride loss counts.": "À partir de quand compte la perte sur longue durée.",
  "How the errors of critical power and W′ go together; a fit of both to the same efforts gives it, and it is below 0.":
    "Corrélation des erreurs de la puissance critique et de W′ ; un ajustement des deux aux mêmes efforts la donne, et elle est sous 0.",
  "How long a hard effort lasted.": "Durée d’un effort intense.",
  "Mean power of a hard effort.": "Puissance moyenne d’un effort intense.",
  "How far an event is; time trials are customarily held over 10, 25, 50 and 100 miles.":
    "La longueur d’une épreuve ; les contre-la-montre se courent d’ordinaire sur 10, 25, 50 et 100 miles.",
  "Along the road; the default is 25 miles.": "Le long de la route ; 25 miles par défaut.",
  "Rise over run.": "Dénivelé sur distance.",
  "The way the road leads at the start, clockwise from north.":
    "Où mène la route au départ, dans le sens horaire depuis le nord.",
  "Along the road from the start.": "Le long de la route depuis le départ.",
  "Above sea level.": "Au-dessus de la mer.",
  "Radius of the bend from this point to the next.": "Rayon du virage de ce point au suivant.",
  "The default is the standard atmosphere's at sea level.":
    "Par défaut, celle de l’atmosphère standard au niveau de la mer.",
  "Left out, it is the standard atmosphere's at this altitude.":
    "Sans indication, celle de l’atmosphère standard à cette altitude.",
  "May stand in place of the humidity.": "Peut remplacer l’humidité.",
  "As the forecast gives it, at the wind's height.": "Tel que la prévision le donne, à la hauteur du vent.",
  "Where the wind comes from, clockwise from north.": "D’où vient le vent, dans le sens horaire depuis le nord.",
  "Forecasts give the wind at 10 m.": "Les prévisions donnent le vent à 10 m.",
  "Height at which the rider meets the wind.": "Hauteur où le cycliste rencontre le vent.",
  "Of the land around: 0.03 open grass, 0.1 low crops, 0.25 hedges and trees; above 0.06 the law is only indicative at 1.2 m.":
    "Du terrain autour : 0.03 herbe rase, 0.1 cultures basses, 0.25 haies et arbres ; au-dessus de 0.06, la loi n’est qu’indicative à 1.2 m.",
  "Share of the forecast wind that reaches the rider; stands in for the roughness where the wind law fails.":
    "Part du vent prévu qui atteint le cycliste ; remplace la rugosité là où la loi du vent ne tient plus.",
  "Left out, gravity is the standard 9.80665 m/s².":
    "Sans indication, la pesanteur est la valeur normale 9.80665 m/s².",
  "Speed at the line.": "Vitesse au départ.",
  "The model's own error as a share of a finish time. Published models missed by 3.2 to 3.9 % on average outdoors, a standard deviation of 4 to 5 %; about 3 % of that is put down to their inputs, which count by themselves here.":
    "L’erreur propre du modèle, en part d’un temps final. Des modèles publiés se trompaient dehors de 3.2 à 3.9 % en moyenne, soit un écart type de 4 à 5 % ; environ 3 % sont attribués à leurs données, qui comptent ici à part.",
  "Angle between the bicycle and the apparent wind.": "Angle entre le vélo et le vent apparent.",
  "Axial drag area at this yaw over that at zero yaw.":
    "Surface de traînée axiale à cet angle, divisée par celle à angle nul.",
  "Power at the pedals.": "Puissance aux pédales.",
  "Speed over the ground.": "Vitesse par rapport au sol.",
  "A finish time to aim at.": "Un temps final à viser.",
  "A fixed time to ride for.": "Une durée fixe à rouler.",
  "Distance between splits; the default is 5 miles.": "Distance entre temps de passage ; 5 miles par défaut.",
  "Ends of the powers that a map spans.": "Bornes des puissances qu’une carte couvre.",
  "More power, as a share.": "Plus de puissance, en part.",
  "Change of drag area, as a share; less is negative.":
    "Changement de surface de traînée, en part ; moins est négatif.",
  "By how much one drag area lies below another, as one test of both gives it.":
    "De combien une surface de traînée est sous une autre, comme un même essai des deux le donne.",
  "How many draws a comparison takes; none leaves it at first order, and a course of very many points gets fewer.":
    "Combien de tirages fait une comparaison ; sans, elle reste au premier ordre, et un parcours de très nombreux points en a moins.",
  "{field} is {is}; it runs from {low} to {high}{space}{unit}.":
    "{field} vaut {is} ; la plage va de {low} à {high}{space}{unit}.",
  "with.for_time_s fixes the time already; a target time says it twice.":
    "with.for_time_s fixe déjà le temps ; un temps visé le dit deux fois.",
  "Without a long-ride loss the power curve overstates what can be held for an hour, by 5 % or more.":
    "Sans perte sur longue durée, la courbe de puissance surestime ce qui se tient une heure, de 5 % ou plus.",
  "Below two minutes the power curve needs a peak power.":
    "Sous deux minutes, la courbe de puissance demande une puissance de pointe.",
  "The apparent wind comes from beyond {}°, the last row of your yaw table.":
    "Le vent apparent vient d’au-delà de {0}°, la dernière ligne de ton tableau d’angles.",
  "This asks {asked_w} W; your power curve allows {allowed_w} W for that long.":
    "Cela demande {asked_w} W ; ta courbe de puissance permet {allowed_w} W aussi longtemps.",
  "The course spans {} m of height; the air is taken as one density, and thins by about 1 % in 90 m.":
    "Le parcours couvre {0} m d’altitude ; l’air est pris à une seule densité, et perd environ 1 % en 90 m.",
  "A fixed finish time leaves nothing to compare; give a power or the best even effort.":
    "Un temps fixé ne laisse rien à comparer ; donne une puissance ou « à fond et régulier ».",
  "The low position neither fades nor lapses here; say when it goes, or both are simply held.":
    "La position basse ne cède ni ne s’interrompt ici ; dis quand elle se perd, sinon les deux sont simplement tenues.",
  "The low position would begin to go only after the finish.":
    "La position basse ne commencerait à céder qu’après l’arrivée.",
  "There is no such question; there are {known}.": "Cette question n’existe pas ; il y a {known}.",
  "{path} must run from the lower to the higher.": "{path} doit aller du plus petit au plus grand.",
  "The request is larger than {} bytes, the most that is read.": "La demande dépasse {0} octets, le plus qui soit lu.",
  "The request is not JSON: {}.": "La demande n’est pas du JSON : {0}.",
  "{field} does not belong to this kind of effort.": "{field} ne va pas avec ce genre d’effort.",
  "{field} is missing.": "{field} manque.",
  "The rider comes to a stop after {} m: too little power for this road and wind.":
    "Le cycliste s’arrête après {0} m : trop peu de puissance pour cette route et ce vent.",
  "No power from 1 to 2500 W gives this time on this course.":
    "Aucune puissance de 1 à 2500 W ne donne ce temps sur ce parcours.",
  "This power curve falls to nothing before the finish.": "Cette courbe de puissance tombe à zéro avant l’arrivée.",
  "Give with.power_w or with.speed_m_s, not both.": "Donne with.power_w ou with.speed_m_s, pas les deux.",
  "The road and the wind push more than this speed needs: no pedalling, some braking.":
    "La route et le vent poussent plus que cette vitesse n’en demande : pas de pédalage, un peu de frein.",
  "From rest this rider could not start here.": "À l’arrêt, ce cycliste ne pourrait pas démarrer ici.",
  "In this wind more than one steady speed takes these watts; the highest is shown.":
    "Dans ce vent, plus d’une vitesse régulière demande ces watts ; la plus haute est montrée.",
  "There is no such position.": "Cette position n’existe pas.",
  "There is no position: give at least one.": "Il n’y a pas de position : donnes-en au moins une.",
  "{field} is not a day such as 2026-05-01.": "{field} n’est pas un jour comme 2026-05-01.",
  "There is no event: give at least one, or leave events out.":
    "Il n’y a pas d’épreuve : donnes-en au moins une, ou omets la liste.",
  "scenario.course.{field} does not belong to a {kind} course.":
    "scenario.course.{field} ne va pas avec un parcours « {kind} ».",
  "Give scenario.conditions.dew_point_c or relative_humidity, not both.":
    "Donne scenario.conditions.dew_point_c ou relative_humidity, pas les deux.",
  "Give scenario.conditions.shelter_factor or roughness_length_m, not both.":
    "Donne scenario.conditions.shelter_factor ou roughness_length_m, pas les deux.",
  "scenario.conditions.dew_point_c is above the temperature, which cannot be.":
    "scenario.conditions.dew_point_c dépasse la température, ce qui est impossible.",
  "The wind law is only indicative so close to rough ground; a stated shelter may serve better.":
    "Si près d’un sol rugueux, la loi du vent n’est qu’indicative ; un abri donné peut mieux convenir.",
  "The pressure at the course comes out beyond 500 to 1100 hPa.":
    "La pression sur le parcours sort de la plage de 500 à 1100 hPa.",
  "{sd_path} is not a number that can be used.": "{sd_path} n’est pas un nombre utilisable.",
  "There are more than {most} {things}.": "Il y a plus de {most} {things}.",
  "pieces of equipment": "pièces d’équipement",
  "kinds of lapse": "sortes d’interruption",
  positions: "positions",
  efforts: "efforts",
  events: "épreuves",
  points: "points",
  "{field} is longer than {} bytes.": "{field} dépasse {0} octets.",
  "{field} must be above cp_w.": "{field} doit dépasser cp_w.",
  "{field} must not be before begins_s.": "{field} ne doit pas précéder begins_s.",
  "{field} stands in place of fade: give one of them.": "{field} remplace fade : donne l’un des deux.",
  "{field} names a piece of equipment that is not there.": "{field} nomme une pièce d’équipement qui n’est pas là.",
  "{path} come to more than the whole time together.": "{path} font ensemble plus que le temps total.",
  "The course has {before} points; it is ridden over {after} that keep its shape.":
    "Le parcours compte {before} points ; il est calculé sur {after} qui en gardent la forme.",
  "{path} has more than {} rows.": "{path} a plus de {0} lignes.",
  "{field} must be larger than the row before.": "{field} doit dépasser la ligne d’avant.",
  "A profile needs at least two points.": "Un profil demande au moins deux points.",
  "{field} must be at least 0.1 m beyond the point before.":
    "{field} doit être à au moins 0.1 m après le point d’avant.",
  "The road to point {i} rises by {} %, more than is ridden.":
    "La route vers le point {i} monte de {0} %, plus que ce qui se roule.",
  "This was saved by a newer version ({version}); this one reads version {VERSION}. It is left as it is.":
    "Ceci vient d’une version plus récente ({version}) ; celle-ci lit la version {VERSION}. Rien n’y est changé.",
  "scenario.fasterby is {version}; the oldest version is {OLDEST}.":
    "scenario.fasterby vaut {version} ; la plus ancienne version est {OLDEST}.",
  "A curve that levels off at CP overstates an hour: in trained riders CP was 323 W and the hour 309 W.":
    "Une courbe qui s’aplatit à CP surestime l’heure : chez des cyclistes entraînés, CP était de 323 W et l’heure de 309 W.",
  "A longer effort was harder than this one, so it was not all you had: the curve leaves it out.":
    "Un effort plus long a été plus dur que celui-ci, donc tu n’y as pas tout donné : la courbe le laisse de côté.",
  "A peak power; CP comes out lower and W′ higher than with two parameters.":
    "Une puissance de pointe ; CP ressort plus basse et W′ plus haut qu’avec deux paramètres.",
  "A power law describes efforts under 2 and over 15 minutes better than the hyperbola.":
    "Une loi de puissance décrit mieux que l’hyperbole les efforts de moins de 2 et de plus de 15 minutes.",
  "All efforts are under ten minutes: CP comes out too high, whatever the model. One of 12 to 20 minutes helps most.":
    "Tous les efforts font moins de dix minutes : CP ressort trop haute, quel que soit le modèle. Un effort de 12 à 20 minutes aide le plus.",
  "An effort under two minutes bends a two-parameter curve: CP comes out too high and W′ too low.":
    "Un effort de moins de deux minutes tord une courbe à deux paramètres : CP ressort trop haute et W′ trop bas.",
  "Beyond {minutes} minutes, your longest effort, the curve is a guess.":
    "Au-delà de {minutes} minutes, ton effort le plus long, la courbe est une supposition.",
  "Critical power.": "Puissance critique.",
  "Efforts of one length do not tell CP from W′: W′ is taken as riders usually have it. Add one much shorter or longer.":
    "Des efforts d’une même durée ne séparent pas CP de W′ : W′ est pris à sa valeur habituelle. Ajoutes-en un bien plus court ou plus long.",
  "How long a power is to be held.": "Combien de temps tenir une puissance.",
  "How well a hard effort repeats: 20-minute trials of eight trained riders to 1.3 %, 4-minute trials to 2.0 %.":
    "Répétabilité d’un effort intense : tests de 20 minutes de huit cyclistes entraînés à 1.3 % près, tests de 4 minutes à 2.0 %.",
  "No curve of a rider goes through these efforts; your own CP and W′ are shown.":
    "Aucune courbe de cycliste ne passe par ces efforts ; ce sont tes propres CP et W′ qui sont montrés.",
  "One effort does not tell CP from W′: W′ is taken as riders usually have it. An effort of another length would tell them apart.":
    "Un seul effort ne sépare pas CP de W′ : W′ est pris à sa valeur habituelle. Un effort d’une autre durée les distinguerait.",
  "Power declines with the logarithm of time past seven minutes.":
    "Passé sept minutes, la puissance baisse avec le logarithme du temps.",
  "Recovery of W′ in four elite riders: a time constant of 2287.2 D^(−0.688) s.":
    "Récupération de W′ chez quatre cyclistes d’élite : une constante de temps de 2287.2 D^(−0.688) s.",
  "The forms of the relation; five of them gave sixteen men a mean CP of 195 to 242 W from the same trials.":
    "Les formes de la relation ; cinq d’entre elles donnaient à seize hommes une CP moyenne de 195 à 242 W d’après les mêmes tests.",
  "This effort lies well below the curve of the others: it does not look like all you had.":
    "Cet effort est bien en dessous de la courbe des autres : on ne dirait pas que tu y as tout donné.",
  "Two efforts fix a curve but cannot check it; a third of another length would.":
    "Deux efforts fixent une courbe mais ne la vérifient pas ; un troisième d’une autre durée le ferait.",
  "Two hours of heavy riding took 8 % of CP and 20 % of W′.":
    "Deux heures de vélo intense ont coûté 8 % de CP et 20 % de W′.",
  "W′ balance in integral form, and the time constant of its recovery.":
    "Bilan de W′ sous forme intégrale, et la constante de temps de sa récupération.",
  "Air about 20 % thinner at 2300 m.": "Un air environ 20 % plus rare à 2300 m.",
  "Up to 6.4 % of drag between two head positions; less than 1.5 % between helmet shapes with the head kept still (15 m/s, computed flow).":
    "Jusqu’à 6.4 % de traînée entre deux positions de la tête ; moins de 1.5 % entre formes de casque à tête immobile (15 m/s, écoulement calculé).",
  "A suit that cuts drag by 3.9 % saves about 44 s over 55 km.":
    "Une combinaison qui réduit la traînée de 3.9 % gagne environ 44 s sur 55 km.",
  "The usual expression for air power holds only for pure head or tail wind.":
    "L’expression usuelle de la puissance contre l’air ne vaut que pour un vent de face ou de dos.",
  "Above 14 m/s on the level about 90 % of the power goes into the air.":
    "Au-dessus de 14 m/s sur le plat, environ 90 % de la puissance va dans l’air.",
  "W′ 16.9 ± 3.2 kJ, CP 282 ± 44 W.": "W′ 16.9 ± 3.2 kJ, CP 282 ± 44 W.",
  "Power at the anaerobic threshold −16 ± 20 W at a torso angle of 12° in eleven riders; the low position won all the same.":
    "Puissance au seuil anaérobie −16 ± 20 W à un angle du tronc de 12° chez onze cyclistes ; la position basse gagnait quand même.",
  "4 min 417 W, 20 min 342 W, 60 min 309 W; CP 323 W. The 20-minute trial repeats to 1.3 %, the 4-minute trial and CP to 2.0 %.":
    "4 min 417 W, 20 min 342 W, 60 min 309 W ; CP 323 W. Le test de 20 minutes se répète à 1.3 % près, celui de 4 minutes et CP à 2.0 %.",
  "Training raised critical power in both cycling studies reviewed; W′ usually did not rise.":
    "L’entraînement a relevé la puissance critique dans les deux études cyclistes examinées ; W′ n’a d’ordinaire pas augmenté.",
  "Temperature, pressure and density by altitude.": "Température, pression et densité selon l’altitude.",
  "Seven trained riders: CP lower in the time-trial position, W′ not different.":
    "Sept cyclistes entraînés : CP plus basse en position de contre-la-montre, W′ inchangé.",
  "Highly trained cyclists, four weeks of intervals: 40-km trial 4.4 to 5.8 % better, peak aerobic power 3.0 to 6.2 % higher.":
    "Cyclistes très entraînés, quatre semaines d’intervalles : contre-la-montre de 40 km meilleur de 4.4 à 5.8 %, puissance aérobie maximale plus haute de 3.0 à 6.2 %.",
  "The power balance on the road; its validation (R² 0.97, standard error 2.7 W) was read, its constants are from memory.":
    "Le bilan de puissance sur route ; sa validation (R² 0.97, erreur type 2.7 W) a été lue, ses constantes sont de mémoire.",
  "53.040 km in the hour at an estimated 509.5 W; CdA 0.244 m² in a tunnel.":
    "53.040 km dans l’heure à 509.5 W estimés ; CdA 0.244 m² en soufflerie.",
  "Riders trained upright used 5.1 % more oxygen in the aero position; riders trained in it 1.3 %, not significant.":
    "Entraînés redressés, des cyclistes consommaient 5.1 % d’oxygène de plus en position aéro ; ceux qui s’y entraînaient, 1.3 %, non significatif.",
  "Density of moist air.": "Densité de l’air humide.",
  "Lower bars: CdA −10.7 ± 3.1 %, power −9.5 ± 5.4 %, five riders.":
    "Cintre plus bas : CdA −10.7 ± 3.1 %, puissance −9.5 ± 5.4 %, cinq cyclistes.",
  "The power–duration relation for seconds to hours.": "La relation puissance–durée, des secondes aux heures.",
  "Models missed real finish times by 3.87 % on average, 3.22 % with a CdA that changes with speed.":
    "Des modèles se trompaient sur les temps réels de 3.87 % en moyenne, de 3.22 % avec un CdA qui change avec la vitesse.",
  "W′ balance in differential form; it exists and follows measured recovery, its equation is from memory.":
    "Bilan de W′ sous forme différentielle ; il existe et suit la récupération mesurée, son équation est de mémoire.",
  "A solo chain drive loses 2.1 ± 1.5 % at 100 to 400 W.": "Une transmission à chaîne perd 2.1 ± 1.5 % de 100 à 400 W.",
  "Gravity by latitude.": "La pesanteur selon la latitude.",
  "Roughness lengths of landscapes.": "Longueurs de rugosité des paysages.",
  "By what share of itself a change moves a number; less is negative.":
    "De quelle part de lui-même un changement déplace un chiffre ; moins est négatif.",
  "The chance that something comes off, whatever becomes of the rest.":
    "La chance qu’une chose réussisse, quoi que devienne le reste.",
  "Money to spend, or what something costs, in your own currency.":
    "Argent à dépenser, ou ce que coûte une chose, dans ta propre monnaie.",
  "Hours to spend every week beyond what you do now, or what something takes every week.":
    "Heures par semaine en plus de ce que tu fais déjà, ou ce que demande une chose par semaine.",
  "Hours that something takes once.": "Heures que demande une chose, une fois.",
  "For how many weeks.": "Pendant combien de semaines.",
  "How often an event is ridden.": "Combien de fois une épreuve est courue.",
  "The most rides that one request works out.": "Le plus de courses qu’une demande calcule.",
  "{path} takes a field with by or share, or use_position.":
    "{path} demande field avec by ou share, ou bien use_position.",
  "{path}.field is {short}, which is not a number of this scenario.":
    "{path}.field est {short}, qui n’est pas un chiffre de ce scénario.",
  "{} is longer than {} bytes.": "{0} dépasse {1} octets.",
  "{} has more than {MOST_CHANGES} changes.": "{0} a plus de {MOST_CHANGES} changements.",
  "with.times_ridden needs one number for each of scenario.events.":
    "with.times_ridden demande un chiffre pour chacune de scenario.events.",
  "There are more than {MOST_ITEMS} candidates.": "Il y a plus de {MOST_ITEMS} changements.",
  "These candidates change too many different numbers to compare every set of them; leave some out.":
    "Ces changements touchent trop de chiffres différents pour comparer toutes leurs combinaisons ; retires-en.",
  "Together these changes leave a ride that cannot be ridden.":
    "Avec ces changements réunis, la course ne peut pas être courue.",
  "So many blocks of weeks overlap that not every schedule was tried; a better set may fit.":
    "Tant de blocs de semaines se chevauchent que tous les calendriers n’ont pas été essayés ; un meilleur choix existe peut-être.",
  "{path} is {short}, which is no change of this list.":
    "{path} est {short}, qui n’est pas un changement de cette liste.",
  "{path} leads back to itself: one of the changes must come first.":
    "{path} renvoie à lui-même : l’un des changements doit venir d’abord.",
  "with.so_far is not what an earlier asking of the same question gave.":
    "with.so_far n’est pas ce qu’a donné une demande précédente de la même question.",
  "Nineteen trained men: all maximal variables fell with a lower torso, 0° being unlike every other position.":
    "Dix-neuf hommes entraînés : toutes les valeurs maximales baissaient avec le tronc, 0° différant de toute autre position.",
  "Modelled 40-km times of novices to elites: aerodynamic frame −1:17 to −1:44, wheels −60 to −82 s, a better position −2 to −2.5 min.":
    "Temps calculés sur 40 km du débutant à l’élite : cadre aérodynamique −1:17 à −1:44, roues −60 à −82 s, une meilleure position −2 à −2.5 min.",
  "Seven men and seven women in a tunnel: bar height matters more than elbow width, and the best varies between riders.":
    "Sept hommes et sept femmes en soufflerie : la hauteur du cintre compte plus que la largeur des coudes, et le mieux varie d’un cycliste à l’autre.",
  "A third of the published change of lower bars (CdA −10.7 ± 3.1 %); the power that riders who train in the position lost (1.3 %, not significant), taken to be lost in full.":
    "Un tiers du changement publié pour un cintre plus bas (CdA −10,7 ± 3,1 %) ; la puissance que perdent ceux qui s’entraînent dans la position (1,3 %, non significatif), comptée entièrement comme perdue.",
  "Sizes assumed. All measures of power fell with a lower torso in nineteen riders; the lowest torso was the worst for them.":
    "Effets supposés. Chez dix-neuf cyclistes, toutes les mesures de puissance baissaient avec le tronc ; le plus bas était le pire pour eux.",
  "Small and individual: bar height matters more than width, and the best differs between riders. Size assumed.":
    "Petit et individuel : la hauteur du cintre compte plus que la largeur, et le mieux varie d’un cycliste à l’autre. Effet supposé.",
  "Two head positions differed by up to 6.4 % of drag at 15 m/s; a third of that, held with the eyes on the road, is assumed.":
    "Deux positions de tête différaient de 6,4 % de traînée au plus à 15 m/s ; un tiers de cela, tenu les yeux sur la route, est supposé.",
  "A whole suit cut drag by 3.9 % at 53 km/h; less is likely over clothes that fit already, or at lower speed.":
    "Une tenue complète réduisait la traînée de 3,9 % à 53 km/h ; moins est probable si tes vêtements sont déjà ajustés, ou à moindre vitesse.",
  "Shapes differed by less than 1.5 % with the head held alike: half of that is assumed. Not every helmet suits every head.":
    "Les formes différaient de moins de 1,5 % à port de tête égal : on en suppose la moitié. Tout casque ne convient pas à toute tête.",
  "Tyre, pressure and warmth are customarily said to change rolling resistance by a factor of two.":
    "Pneu, pression et chaleur changent, dit-on, la résistance au roulement du simple au double.",
  "A chain drive lost 2.1 ± 1.5 %; that care saves a quarter of it is assumed.":
    "Une transmission par chaîne perdait 2,1 ± 1,5 % ; on suppose qu’un bon entretien en épargne le quart.",
  "Times here are those of an even effort already; what uneven riding loses is assumed.":
    "Les temps sont ici déjà ceux d’un effort régulier ; ce que perd une allure irrégulière est supposé.",
  "Saves time only on a course given with its bends. Practise away from traffic and never to the limit. Size assumed.":
    "Ne gagne du temps que sur un parcours dont les virages sont décrits. Travaille loin de la circulation et jamais à la limite. Effet supposé.",
  "Two sessions a week raised highly trained riders' peak aerobic power by 3.0 to 6.2 %; critical power is taken to follow it.":
    "Deux séances par semaine ont élevé la puissance aérobie maximale de cyclistes très entraînés de 3,0 à 6,2 % ; la puissance critique est supposée suivre.",
  "Riders who train already are said to gain 2 to 6 % over a season.":
    "Qui s’entraîne déjà gagne, dit-on, 2 à 6 % en une saison.",
  "Untrained people are said to raise critical power by 10 to 15 % in six to eight weeks.":
    "Des personnes non entraînées élèvent, dit-on, leur puissance critique de 10 à 15 % en six à huit semaines.",
  "Give with.{name}.bar_drop_m or {field}, not both.": "Donne with.{name}.bar_drop_m ou {field}, pas les deux.",
  "The leg is nearly straight there: a few millimetres of saddle move all of this a great deal.":
    "La jambe y est presque tendue : quelques millimètres de selle changent tout cela beaucoup.",
  "The trunk is too short for pads at this height: the shoulders would not meet them.":
    "Le tronc est trop court pour des repose-coudes à cette hauteur : les épaules ne les atteindraient pas.",
  "The leg is too long to fold up to the pedal from {from}° to {to}° of the crank, by {millimetres} mm at {worst}°.":
    "La jambe est trop longue pour se replier jusqu’à la pédale de {from}° à {to}° de manivelle, de {millimetres} mm à {worst}°.",
  "The leg is too short for the pedal from {from}° to {to}° of the crank, by {millimetres} mm at {worst}°.":
    "La jambe est trop courte pour la pédale de {from}° à {to}° de manivelle, de {millimetres} mm à {worst}°.",
  "A knee 25 to 30° short of straight at the bottom is advised; evidence on injury is limited.":
    "On conseille un genou à 25 à 30° de l’extension en bas ; les preuves sur les blessures sont limitées.",
  "A knee set 25° short of straight at rest was 29.0 ± 4.6° short when pedalling.":
    "Un genou réglé à 25° de l’extension au repos en était à 29.0 ± 4.6° en pédalant.",
  "Ankle to pedal axle; left out, 0.085 of the stature ± 3 %: a guess, and where the cleat sits decides.":
    "De la cheville à l’axe de pédale ; sans indication, 0.085 de la taille ± 3 % : une estimation, et la place de la cale décide.",
  "Axle to pedal axle.": "De l’axe du pédalier à l’axe de pédale.",
  "Between shank and the line from ankle to pedal, for an ankle that does not move.":
    "Entre la jambe et la ligne de la cheville à la pédale, pour une cheville qui ne bouge pas.",
  "Crank length is no factor in power from 165 to 180 mm.":
    "De 165 à 180 mm, la longueur des manivelles ne joue pas sur la puissance.",
  "Crank's axle to the top of the saddle along the seat line; the default puts the saddle top at the classic 96 % of the hip's standing height above a pedal at the bottom.":
    "De l’axe du pédalier jusqu’au dessus de la selle, le long de la ligne d’assise ; la valeur proposée place la selle aux classiques 96 % de la hauteur de hanche debout au-dessus d’une pédale en bas.",
  "Effective: of the line from the crank's axle to the hip joint's centre, above the horizontal behind.":
    "Effectif : celui de la ligne de l’axe du pédalier au centre de la hanche, au-dessus de l’horizontale vers l’arrière.",
  "From the top of the saddle straight down to the height of the arm pads.":
    "Du dessus de la selle, à la verticale, jusqu’à la hauteur des repose-coudes.",
  "Hip joint to knee; left out, 0.245 of the stature ± 3 %: a guess.":
    "De la hanche au genou ; sans indication, 0.245 de la taille ± 3 % : une estimation.",
  "Hip joint to shoulder joint; left out, 0.288 of the stature ± 3 %: a guess.":
    "De la hanche à l’épaule ; sans indication, 0.288 de la taille ± 3 % : une estimation.",
  "How far that line swings to either side of its mean over a turn.":
    "De combien cette ligne bat de part et d’autre de sa moyenne au cours d’un tour.",
  "How far the line from ankle to pedal points below the horizontal, in the mean, for an ankle that moves.":
    "De combien la ligne de la cheville à la pédale pointe sous l’horizontale, en moyenne, pour une cheville qui bouge.",
  "Knee to ankle; left out, 0.246 of the stature ± 3 %: a guess.":
    "Du genou à la cheville ; sans indication, 0.246 de la taille ± 3 % : une estimation.",
  "Lengths of body segments as shares of the stature; the attribution was read, the shares are from memory.":
    "Longueurs des segments du corps en parts de la taille ; l’attribution a été lue, les parts sont de mémoire.",
  "Of the line from hip joint to shoulder joint, above the horizontal; published tests used 0 to 24°.":
    "De la ligne de la hanche à l’épaule, au-dessus de l’horizontale ; les essais publiés allaient de 0 à 24°.",
  "Shoulder joint down to the pads, the upper arm upright; left out, 0.186 of the stature ± 3 %: a guess.":
    "De l’épaule aux repose-coudes, le bras vertical ; sans indication, 0.186 de la taille ± 3 % : une estimation.",
  "Standing height, from which segment lengths that are not given are guessed.":
    "Taille debout, d’où l’on estime les longueurs de segments qui ne sont pas données.",
  "The hip joint's centre beyond the top of the saddle, along the line from the crank's axle.":
    "Le centre de la hanche au-delà du dessus de la selle, le long de la ligne depuis l’axe du pédalier.",
  "Turns of the crank a minute.": "Tours de manivelle par minute.",
  "How the errors of several drag areas go together: nearly 1 for one test or one guess, 0 for tests that have nothing in common.":
    "Corrélation des erreurs de plusieurs surfaces de traînée : presque 1 pour un même essai ou une même estimation, 0 pour des essais sans rien de commun.",
  "There are more than {MOST_CHOICES} choices: name fewer positions to compare.":
    "Il y a plus de {MOST_CHOICES} choix : nomme moins de positions à comparer.",
  "There is no such choice.": "Ce choix n’existe pas.",
  "with.positions names position {position} twice.": "with.positions nomme deux fois la position {position}.",
  "with.reference is not among with.positions.": "with.reference n’est pas parmi with.positions.",
  "with.so_far does not belong to these choices, events and numbers.":
    "with.so_far ne va pas avec ces choix, ces épreuves et ces nombres.",
  "{} This is at event {}.": "{0} Cela vaut pour l’épreuve {1}.",
  "At 20 °C the whole range moves density by 0.9 %.": "À 20 °C, toute la plage change la densité de 0.9 %.",
  "The way the road leads from this point on; left out, as at the point before.":
    "Où mène la route à partir de ce point ; sans valeur, comme au point précédent.",
  "Of the course above sea level; left out, the mean of the course's points.":
    "Du parcours, au-dessus de la mer ; sans valeur, la moyenne des points du parcours.",
  "How strongly you lose power with altitude: 1 is the mean of ten cyclists, who scattered by about 0.4 of it.":
    "À quel point tu perds de la puissance en altitude : 1 est la moyenne de dix cyclistes, dispersés d’environ 0.4 autour d’elle.",
  "Radius of the half circle in which an out-and-back course turns: 3 to 4 m across a road, 10 m or more round an island.":
    "Rayon du demi-cercle où un aller-retour fait demi-tour : 3 à 4 m en travers d’une route, 10 m ou plus autour d’un rond-point.",
  "A finish time whose chance is wanted.": "Un temps final dont on veut connaître les chances.",
  "Ten cyclists not used to altitude: five-minute power 5.8 ± 2.9, 10.3 ± 4.3 and 19.8 ± 3.5 % lower at 1200, 2200 and 3200 m than at 200 m.":
    "Dix cyclistes non habitués à l’altitude : puissance sur cinq minutes plus basse de 5.8 ± 2.9, 10.3 ± 4.3 et 19.8 ± 3.5 % à 1200, 2200 et 3200 m qu’à 200 m.",
  "Nine cyclists at 250 to 4250 m: CP fell with altitude, W′ at 4250 m only; its equations were not read.":
    "Neuf cyclistes de 250 à 4250 m : CP baissait avec l’altitude, W′ à 4250 m seulement ; ses équations n’ont pas été lues.",
  "The wind's direction is ignored, as chosen: the ride is in calm air of the same density.":
    "La direction du vent est ignorée, comme choisi : la course est calculée en air calme de même densité.",
  "The wind is left out, because the course does not say which way it leads. Give its points a bearing in degrees, clockwise from north.":
    "Le vent est laissé de côté, car le parcours ne dit pas où il mène. Donne à ses points une direction en degrés, depuis le nord dans le sens des aiguilles d’une montre.",
  "The air is taken at an altitude of {} m, but the course's points lie at {} m in the mean. Leave the altitude out to follow them.":
    "L’air est pris à une altitude de {0} m, mais les points du parcours sont à {1} m en moyenne. Laisse l’altitude de côté pour les suivre.",
  "At {whole_m} m your power curve is lowered by {} % at five minutes, after ten cyclists who were not used to altitude (Clark et al. 2007).":
    "À {whole_m} m, ta courbe de puissance est abaissée de {0} % à cinq minutes, d’après dix cyclistes non habitués à l’altitude (Clark et al. 2007).",
  "The thin air at {whole_m} m makes you faster here, but takes no power from you. Ten cyclists lost {} % over five minutes at that height: if your power was tested lower down, switch on the loss of power with altitude.":
    "L’air plus léger à {whole_m} m te rend plus rapide ici, mais ne t’enlève aucune puissance. Dix cyclistes y perdaient {0} % sur cinq minutes : si ta puissance a été testée plus bas, active la perte de puissance en altitude.",
  "Hot air is thin and makes you faster here, but takes no power from you. In heat riders hold less, the longer the ride the more.":
    "L’air chaud est léger et te rend plus rapide ici, mais ne t’enlève aucune puissance. Par forte chaleur on tient moins, et d’autant moins que la course est longue.",
  "The rider comes to a stop after {} m: the road there takes a push of {} N, more than the greatest push of this rider and gear.":
    "Le cycliste s’arrête après {0} m : la route y demande une poussée de {1} N, plus que la plus forte de ce cycliste avec ce braquet.",
  "with.target_time_s asks for the chance of a finish time, which is given here.":
    "with.target_time_s demande les chances d’un temps final, qui est déjà fixé ici.",
  "A ride of {} hours is far beyond what a power curve rests on: the published powers behind it end at one hour. What can be held for so long is a guess, and food, sleep and weather decide.":
    "Une course de {0} heures va bien au-delà de ce sur quoi repose une courbe de puissance : les puissances publiées s’arrêtent à une heure. Ce qu’on tient si longtemps est une supposition ; l’alimentation, le sommeil et le temps en décident.",
  "Turning round is not counted. Braking, a half circle of {} m radius and getting back to speed would take about {} s; give the turn a radius to count it.":
    "Le demi-tour n’est pas compté. Freiner, tourner sur un rayon de {0} m et relancer prendrait environ {1} s ; donne un rayon au demi-tour pour le compter.",
  "The shorter efforts are hardly harder than the longer ones, or far too much so, for all of them to be all you had: W′ is taken as riders usually have it.":
    "Les efforts courts ne sont guère plus durs que les longs, ou le sont beaucoup trop, pour que tu aies tout donné dans tous : W′ est pris à sa valeur habituelle.",
  "W′ comes out at {kilojoules} kJ, less than riders have: the shortest effort does not look like all you had. Repeat it before you use these.":
    "W′ ressort à {kilojoules} kJ, moins que chez les cyclistes : l’effort le plus court ne semble pas maximal. Refais-le avant d’utiliser ces valeurs.",
  "W′ comes out at {kilojoules} kJ, more than riders have: the longest effort does not look like all you had. Repeat it before you use these.":
    "W′ ressort à {kilojoules} kJ, plus que chez les cyclistes : l’effort le plus long ne semble pas maximal. Refais-le avant d’utiliser ces valeurs.",
  "With {} of 100 combinations of these lengths the leg would not reach the pedal. Every ± is of the others, since the saddle was set to this leg; measured lengths would narrow it.":
    "Avec {0} combinaisons sur 100 de ces longueurs, la jambe n’atteindrait pas la pédale. Chaque ± vaut pour les autres, car la selle a été réglée pour cette jambe ; des longueurs mesurées le réduiraient.",
};
