// @ts-check
/** What the core says, by the names of its table of messages, and what each field's default rests on. */

/** @type {Record<string, string>} */
export default {
  not_a_number: "{field} n’est pas un nombre utilisable.",
  out_of_range: "{field} vaut {is} ; la plage va de {low} à {high}.",
  unusual: "{field} vaut {is} ; d’habitude, c’est de {low} à {high}.",
  missing: "{field} manque.",
  too_long: "{field} dépasse {most} octets.",
  too_many: "{field} a plus de {most} entrées.",
  not_both: "Donne {other} ou {field}, pas les deux.",
  too_large: "La demande dépasse {most} octets, le plus qui soit lu.",
  not_json: "La demande n’est pas du JSON : {why}.",
  not_data: "La demande ne peut pas être écrite en JSON.",
  wrong_type: "Trouvé : {found} ; attendu : {wanted}.",
  unknown_field: "Le champ {name} n’existe pas ici ; il y a {known}.",
  unknown_word: "{word} n’est pas un des mots possibles ici : {known}.",
  twice: "Le champ {name} figure deux fois ici.",
  unreadable: "Ceci ne peut pas être lu : {why}.",
  unknown_question: "Cette question n’existe pas ; il y a {known}.",
  newer_version:
    "Ceci vient d’une version plus récente ({version}) ; celle-ci lit la version {reads}. Rien n’y est changé.",
  older_version: "Ceci est de la version {version} ; la plus ancienne version lue est {oldest}.",
  no_position: "Il n’y a pas de position : donnes-en au moins une.",
  no_such_position: "Cette position n’existe pas.",
  no_event: "Il n’y a pas d’épreuve : donnes-en au moins une, ou omets la liste.",
  not_a_date: "{field} n’est pas un jour comme 2026-05-01.",
  not_of_simple_course: "{field} ne convient pas à un parcours simple.",
  not_of_profile: "{field} ne convient pas à un parcours donné par son profil.",
  dew_point_above_temperature: "{field} dépasse la température, ce qui est impossible.",
  pressure_beyond: "La pression sur le parcours sort de la plage de {low} à {high}.",
  not_above: "{field} doit dépasser {other}.",
  before: "{field} ne doit pas précéder {other}.",
  no_such_equipment: "{field} nomme une pièce d’équipement qui n’est pas là.",
  more_than_whole: "{field} font ensemble plus que le temps total.",
  rows_not_in_order: "{field} doit dépasser la ligne d’avant.",
  too_few_points: "Un profil demande au moins deux points.",
  points_too_close: "{field} doit être à au moins {least} après le point d’avant.",
  too_steep: "La route vers le point {point} monte de {grade}, plus que ce qui se roule.",
  simplified: "Le parcours compte {before} points ; il est calculé sur {after} qui en gardent la forme.",
  wind_ignored:
    "La direction du vent est ignorée, comme choisi : la course est calculée en air calme de même masse volumique.",
  no_bearings:
    "Le vent est laissé de côté, car le parcours ne dit pas où il mène. Donne à ses points une direction en degrés, depuis le nord dans le sens des aiguilles d’une montre.",
  not_the_courses_length:
    "Une épreuve qui a son propre parcours est aussi longue que lui, {length}. Laisse sa distance de côté.",
  altitude_differs:
    "L’air est pris à une altitude de {altitude}, mais les points du parcours sont à {mean} en moyenne. Laisse l’altitude de côté pour les suivre.",
  altitude_counted:
    "À {altitude}, ta courbe de puissance est abaissée de {loss} à cinq minutes, d’après dix cyclistes non habitués à l’altitude (Clark et al. 2007).",
  thin_air:
    "L’air plus léger à {altitude} te rend plus rapide ici, mais ne t’enlève aucune puissance. Dix cyclistes y perdaient {loss} sur cinq minutes : si ta puissance a été testée plus bas, active la perte de puissance en altitude.",
  heat: "L’air chaud est léger et te rend plus rapide ici, mais ne t’enlève aucune puissance. Par forte chaleur on tient moins, et d’autant moins que la course est longue.",
  calm_at_first:
    "La première prévision est sans vent ; rien ne dit donc combien le vent suivant peut s’écarter. Son erreur n’est pas comptée.",
  wind_law:
    "Si près d’un terrain rugueux, le vent à ta hauteur n’est qu’une estimation grossière ; mieux vaut peut-être donner la part qui t’atteint.",
  stops_at_steep:
    "Le cycliste s’arrête après {distance} : la route y demande une poussée de {push}, plus que la plus forte de ce cycliste avec ce braquet.",
  stops: "Le cycliste s’arrête après {distance} : trop peu de puissance pour cette route et ce vent.",
  time_out_of_reach: "Aucune puissance de 1 à 2500 W ne donne ce temps sur ce parcours.",
  fixed_time_out_of_reach: "En ce temps, on va moins loin que {least} ou plus loin que {most}.",
  nothing_sustainable: "Cette courbe de puissance tombe à zéro avant l’arrivée.",
  effort_without: "{field} ne va pas avec ce genre d’effort.",
  fixed_time_compares_nothing:
    "Un temps fixé ne laisse rien à comparer ; donne une puissance ou « meilleur effort régulier ».",
  not_as_before: "{field} ne vient pas d’une réponse précédente à la même question.",
  beyond_curve: "Cela demande {asked} ; ta courbe de puissance permet {allowed} aussi longtemps.",
  beyond_table: "Le vent apparent vient d’au-delà de {last}, la dernière ligne de ton tableau d’angles.",
  hour_overstated:
    "Sans perte sur longue durée, la courbe de puissance surestime ce qui se tient une heure, de 5 % ou plus.",
  far_beyond:
    "Une course de {hours} heures va bien au-delà de ce sur quoi repose une courbe de puissance : les puissances publiées s’arrêtent à une heure. Ce qu’on tient si longtemps est une supposition ; l’alimentation, le sommeil et le temps en décident.",
  pushed: "La route et le vent poussent plus que cette vitesse n’en demande : pas de pédalage, un peu de frein.",
  launch: "À l’arrêt, ce cycliste ne pourrait pas démarrer ici.",
  several_speeds: "Dans ce vent, plus d’une vitesse régulière demande ces watts ; la plus haute est montrée.",
  from_low_to_high: "{field} doit aller du plus petit au plus grand.",
  time_fixed_twice: "{field} fixe déjà le temps ; un temps visé le dit deux fois.",
  chance_of_given_time: "{field} demande les chances d’un temps à l’arrivée, qui est déjà fixé ici.",
  short_overstated: "Sous deux minutes, la courbe de puissance demande une puissance de pointe.",
  turn_not_counted:
    "Le demi-tour n’est pas compté. Freiner, tourner sur un rayon de {radius} et relancer prendrait environ {seconds} s ; donne un rayon au demi-tour pour le compter.",
  one_density:
    "Le parcours couvre {climb} d’altitude ; l’air est pris à une seule masse volumique, et perd environ 1 % en 90 m.",
  never_lost:
    "La position basse ne se dégrade ni ne se relâche ici. Dis quand elle commence à se dégrader, sinon les deux sont simplement tenues.",
  after_finish: "La position basse ne se dégraderait qu’après l’arrivée.",
  beaten:
    "Un effort plus long a été plus dur que celui-ci, donc tu n’y as pas tout donné : la courbe le laisse de côté.",
  not_maximal: "Cet effort est bien en dessous de la courbe des autres : on ne dirait pas que tu y as tout donné.",
  short: "Un effort de moins de deux minutes tord une courbe à deux paramètres : CP ressort trop haute et W′ trop bas.",
  no_curve: "Aucune courbe de cycliste ne passe par ces efforts ; ce sont tes propres CP et W′ qui sont montrés.",
  one_effort:
    "Un seul effort ne sépare pas CP de W′ : W′ est pris à sa valeur habituelle. Un effort d’une autre durée les distinguerait.",
  hardly_harder:
    "Les efforts courts ne sont guère plus durs que les longs, ou le sont beaucoup trop, pour que tu aies tout donné dans tous : W′ est pris à sa valeur habituelle.",
  one_length:
    "Des efforts d’une même durée ne séparent pas CP de W′ : W′ est pris à sa valeur habituelle. Ajoutes-en un bien plus court ou plus long.",
  two_efforts: "Deux efforts fixent une courbe mais ne la vérifient pas ; un troisième d’une autre durée le ferait.",
  w_prime_small:
    "W′ ressort à {w_prime}, moins que chez les cyclistes : l’effort le plus court ne semble pas maximal. Refais-le avant d’utiliser ces valeurs.",
  w_prime_large:
    "W′ ressort à {w_prime}, plus que chez les cyclistes : l’effort le plus long ne semble pas maximal. Refais-le avant d’utiliser ces valeurs.",
  all_short:
    "Tous les efforts font moins de dix minutes : CP ressort trop haute, quel que soit le modèle. Un effort de 12 à 20 minutes aide le plus.",
  extrapolated: "Au-delà de {longest}, ton effort le plus long, la courbe est une supposition.",
  levels_off:
    "Une courbe qui s’aplatit à CP surestime l’heure : chez des cyclistes entraînés, CP était de 323 W et l’heure de 309 W.",
  nearly_straight: "La jambe y est presque tendue : quelques millimètres de selle changent tout cela beaucoup.",
  may_not_reach:
    "Avec {of_hundred} combinaisons sur 100 de ces longueurs, la jambe n’atteindrait pas la pédale. Chaque ± vaut pour les autres, car la selle a été réglée pour cette jambe ; des longueurs mesurées le réduiraient.",
  trunk_too_short:
    "Le tronc est trop court pour des repose-coudes à cette hauteur : les épaules ne les atteindraient pas.",
  leg_too_long:
    "La jambe ne se replie pas jusqu’à la pédale de {from} à {to} après le point mort haut ; à {at} elle est trop longue de {missing}.",
  leg_too_short:
    "La jambe n’atteint pas la pédale de {from} à {to} après le point mort haut ; à {at} il manque {missing}.",
  saddle_at_least: "{why} Avec la selle à {limit} ou plus, cela va.",
  saddle_at_most: "{why} Avec la selle à {limit} ou moins, elle l’atteint.",
  position_twice: "La position {position} est nommée deux fois dans la comparaison.",
  too_many_choices: "Il y a plus de {most} choix : nomme moins de positions à comparer.",
  no_such_choice: "Ce choix n’existe pas.",
  reference_left_out: "La référence n’est pas parmi les positions comparées.",
  at_event: "{why} Cela vaut pour l’épreuve {event}.",
  too_few_samples: "{field} demande au moins deux valeurs.",
  column_length: "{field} a {is} valeurs, mais il y a {wanted} temps.",
  no_such_recording: "{field} désigne un enregistrement qui n’existe pas.",
  time_or_distance: "{field} demande sa durée, ou la distance parcourue.",
  lap_too_short: "{field} doit se trouver au moins {least} après le début du tour.",
  laps_overlap: "{field} se trouve avant la fin du tour {lap} : le temps commun compterait deux fois.",
  nothing_moves: "Jusqu’à {field}, rien ne bouge : un tour demande une vitesse.",
  nothing_measured: "Aucun tour ni passage n’est encore donné : un test est donc planifié ici.",
  drag_tests_disagree:
    "Les tests de cette position diffèrent plus que leurs propres erreurs ne l’expliquent. Cherche ce qui a changé entre eux, comme les vêtements, les pneus ou le vent, avant de te fier à leur moyenne.",
  no_usable_laps:
    "Il ne reste aucun tour utilisable. Reprends ce qui a été exclu, ou change les règles de ce qui est inutilisable.",
  laps_do_not_fit: "Aucune surface de traînée ne va avec ces tours : vérifie la masse, la puissance et les vitesses.",
  rolling_not_told:
    "Les tours sont trop semblables en vitesse, ou trop peu nombreux, pour séparer la traînée de la résistance au roulement. Celle-ci reste à {rolling}. Pour mesurer les deux, roule autant de tours lents que rapides, par exemple à {slow} et à {fast}, dans une même position.",
  rolling_impossible:
    "Ces tours demandent un coefficient de résistance au roulement de {rolling}, mais les pneus ont de {low} à {high}. Il reste à {held}. Cherche un vent oublié, de fausses altitudes ou une masse fausse.",
  no_spare_laps:
    "Il n’y a pas plus de tours que d’inconnues : rien ne dit à quel point le résultat est sûr. Roule plus de tours.",
  laps_scatter:
    "Les tours varient de {share} de leur puissance ; un test soigné reste sous {usual}. Cherche du vent, de la circulation, un capteur qui dérive ou de fausses altitudes avant de t’y fier.",
  positions_scatter_unlike:
    "Les positions ne se répètent pas aussi bien l’une que l’autre : un tour varie de {least} de sa puissance dans l’une et de {most} dans une autre. Chaque plage suit ses propres tours. Cherche ce qui a changé, par exemple la circulation ou une position mal tenue.",
  positions_in_blocks:
    "Les positions {a} et {b} ont été roulées l’une après l’autre. Un vent, une température ou un capteur qui dérive ressemble alors à une différence entre elles. Alterne, par exemple A, B, B, A.",
  difference_keeps_errors:
    "Ce que tout le test a en commun ne s’annule pas entre les positions {a} et {b} : leur différence en bouge de {area}, plus que sa propre dispersion. Roule les deux à la même vitesse, sur la même route.",
  outlying_lap:
    "Écart de {watts} avec les autres, plus que le hasard ne l’explique. Cela compte quand même ; exclus-le si tu en connais la raison.",
  lap_ends_elsewhere:
    "Ce tour compte comme fermé, mais ses altitudes enregistrées diffèrent de {height} entre le début et la fin. Marque-le comme ouvert, ou vérifie les altitudes.",
  lap_leads_away:
    "Ce tour compte comme fermé, mais d’après ses directions {share} du chemin mènent dans un seul sens. Marque-le comme ouvert, ou vérifie où il commence et finit.",
  recorded_altitude_differs:
    "L’enregistrement se trouve à {recorded} au-dessus de la mer, mais l’air est pris à {altitude}. Sa masse volumique, et chaque surface de traînée, en change de {share}. Donne l’altitude, ou une pression mesurée sur place.",
  recording_twice:
    "L’enregistrement {recording} est le même que l’enregistrement {first}. Des tours des deux compteraient deux fois.",
  film_without_laps:
    "La position {position} a été filmée, mais aucun tour ni passage n’y compte : le film ne dit donc rien ici.",
  lap_braked: "Le tour {lap} est écarté : il contient {time} de freinage.",
  lap_stopped: "Le tour {lap} est écarté : le vélo est à l’arrêt pendant {time}.",
  lap_dropout: "Le tour {lap} est écarté : la puissance ou la vitesse manque, ou ne peut être juste, pendant {time}.",
  wind_needs_bearings:
    "Le vent est laissé de côté dans les tours dont l’enregistrement ne dit pas dans quelle direction on roule.",
  run_wind_needs_bearing:
    "Le vent est laissé de côté dans les passages qui ne donnent ni leur propre vent ni la direction de la route.",
  wind_not_told:
    "Ces tours ne disent rien du vent, il est donc laissé de côté. Roule sur la même route dans les deux sens, chaque sens comme un tour à part.",
  ignored_wind_matters:
    "Le vent est laissé de côté. Sur cette boucle, un vent de {wind} peut changer la surface de traînée de {share} : donne sa force et sa direction.",
  calm_not_measured:
    "L’air est supposé calme. Sur ces tours, un vent de {wind} peut changer la surface de traînée de {share} : mesure sa force et sa direction au bord de la route, ou dis qu’il n’y en avait pas.",
  heights_unknown:
    "Les altitudes de la route ne sont pas enregistrées : les tours qui ne se ferment pas comptent comme plats.",
  more_runs_than: "Une si petite différence demande plus de {most} passages.",
  greatest_below_even:
    "Le meilleur effort régulier est ici de {even} : il faut au plan une puissance maximale supérieure.",
  least_above_even:
    "Le meilleur effort régulier est ici de {even} : il faut au plan une puissance minimale inférieure.",
  no_road: "Le fichier n’a ni positions ni distance : il ne dit rien de la route.",
  course_length: "Un parcours mesure de 100 m à 2000 km ; celui-ci non.",
  part_too_short: "Une partie du parcours mesure au moins {least}.",
  lap_open: "Ce parcours finit à {height} de la hauteur où il commence : ce n’est pas un tour.",
  no_profile: "Seul un parcours donné par points peut être changé ainsi.",
  columns_differ: "{field} a {is} valeurs, mais une autre colonne en a {wanted}.",
  no_plan: "Aucun plan ne peut être calculé pour cette course.",
  plan_not_settled:
    "La recherche du plan le plus rapide a été interrompue : il en existe peut-être un un peu plus rapide.",
  effort_not_speed:
    "Le plan dit avec quel effort rouler, jamais à quelle vitesse : en descente, dans les virages et dans la circulation, c’est la route qui décide.",
  runs_out_without_recovery:
    "La façon dont W′ revient est ce qu’il y a de moins sûr : si rien ne revenait, W′ serait épuisé après {distance} avec le plan à quelques puissances.",
  neither_by_nor_share: "{field} demande un champ avec by ou share, ou use_position.",
  no_such_number: "{field} est {name}, qui n’est pas un nombre de ces données.",
  no_such_change: "{field} est {name}, qui n’est pas un changement de cette liste.",
  requires_itself: "{field} revient à lui-même : un des changements doit venir en premier.",
  times_for_each_event: "Le nombre de départs demande un nombre pour chaque épreuve.",
  schedules_cut_short:
    "Tant de blocs de semaines se chevauchent que tous les calendriers n’ont pas été essayés ; un meilleur choix existe peut-être.",
  too_many_numbers:
    "Ces changements touchent trop de chiffres différents pour comparer toutes leurs combinaisons ; retires-en.",
  cannot_be_ridden_together: "Avec ces changements réunis, la course ne peut pas être courue.",

  // What a default and its range rest on.
  "note.rider.total_mass_kg": "Cycliste, vélo, vêtements et bidons ensemble ; par défaut, un cycliste ordinaire.",
  "note.bike.rolling_coefficient":
    "Un bon asphalte est d’ordinaire compté de 0.003 à 0.005 ; pneu, pression et chaleur le changent du simple au double.",
  "note.bike.drivetrain_efficiency":
    "Une transmission à chaîne mesurée perdait 2.1 ± 1.5 % ; prends 1 si ton capteur est dans la roue.",
  "note.bike.rotating_mass_kg":
    "Les roues qui tournent pèsent d’autant plus quand la vitesse change ; les deux roues du modèle de 1998 font 1.45 kg.",
  "note.bike.bearing_drag_n": "Part fixe du frottement des roulements dans le modèle sur route de 1998.",
  "note.bike.bearing_drag_n_s_per_m":
    "Part du frottement des roulements qui croît avec la vitesse dans le modèle sur route de 1998.",
  "note.bike.launch_force_n":
    "La plus grande force avec laquelle un cycliste lance le vélo à l’arrêt ; elle ne compte que les premières secondes.",
  "note.bike.lateral_m_s2":
    "Accélération latérale acceptée dans un virage sec ; elle borne la vitesse là où le parcours a un rayon.",
  "note.bike.braking_m_s2": "Avec quelle force on freine avant un virage.",
  "note.bike.power_meter_bias_share":
    "La part dont le capteur de puissance surestime : 54 capteurs de 9 fabricants s’écartaient de -0.9 ± 3.2 %. Elle compte pour tout ce qui a été mesuré avec lui.",
  "note.positions.cda_m2":
    "Sur prolongateur ; sont publiés 0.244 m², mesurés en soufflerie pour un recordman. Qu’une estimation vaille à ± 0.04 près est supposé.",
  "note.positions.cp_factor":
    "Puissance critique ici, en part de celle de la position où ta puissance a été testée ; 1 si c’était celle-ci.",
  "note.positions.w_prime_factor":
    "Chez sept cyclistes entraînés, la position a baissé la puissance critique et laissé W′ inchangé.",
  "note.positions.speed_exponent":
    "Comment le CdA change avec la vitesse de l’air ; pas de chiffre publié unique, donc 0 sauf mesure.",
  "note.positions.reference_airspeed_m_s":
    "La vitesse de l’air où le CdA a été mesuré ; elle ne compte qu’avec un exposant de vitesse.",
  "note.positions.fade.tired_cda_m2":
    "CdA une fois la position perdue ; aucun chiffre publié n’a été trouvé, alors filme-toi et mesure-le.",
  "note.positions.fade.begins_s": "Quand la position commence à se dégrader.",
  "note.positions.fade.complete_s": "Quand la position est tout à fait perdue.",
  "note.positions.lapses.share":
    "Part du parcours passée hors de la position : tête haute ou basse, redressé à un carrefour.",
  "note.positions.lapses.cda_m2": "CdA pendant un relâchement.",
  "note.positions.fade_test.first_third_cda_m2":
    "CdA moyen sur le premier tiers d’un essai régulier ; son milieu tient lieu de l’instant au sixième de l’essai.",
  "note.positions.fade_test.last_third_cda_m2":
    "CdA moyen sur le dernier tiers ; toute la hausse vaut une fois et demie la différence des tiers.",
  "note.positions.fade_test.test_s":
    "Durée de l’essai ; ce que devient le CdA ensuite n’est pas connu, et supposé constant.",
  "note.positions.drag_tests.cda_m2": "La surface de traînée qu’un test gardé a donnée.",
  "note.positions.drag_tests.sd_m2":
    "Un écart type de l’erreur propre d’un test gardé, telle que ses tours la montrent.",
  "note.positions.drag_tests.shared_sd_m2":
    "Un écart type de ce que les tests d’un cycliste ont en commun, comme la masse et la résistance au roulement.",
  "note.positions.equipment.cda_change_m2":
    "Ce que cela ajoute au CdA ; les formes de casques de contre-la-montre différaient de moins de 1.5 % à tête immobile.",
  "note.positions.equipment.mass_change_kg": "Ce que cela ajoute à la masse ; pèse-le.",
  "note.power.cp_w": "Puissance critique ; on compte d’ordinaire 200 à 260 W pour un cycliste amateur.",
  "note.power.w_prime_j":
    "Travail au-dessus de la puissance critique ; douze séries en laboratoire donnaient 16.9 ± 3.2 kJ en moyenne.",
  "note.power.peak_w": "Puissance au premier instant d’un effort maximal.",
  "note.power.long_ride_loss_share":
    "Part de la puissance critique perdue chaque fois que la course devient 2.7 fois plus longue, après une demi-heure ; la puissance sur 60 minutes de huit cyclistes entraînés implique 9 %, et le ± est supposé.",
  "note.power.long_ride_loss_w":
    "La perte sur longue durée en watts, comme la donnent les anciens fichiers : 9 % d’une puissance critique de 245 W.",
  "note.power.long_ride_from_s": "À partir de quand compte la perte sur longue durée.",
  "note.power.cp_w_prime_correlation":
    "Corrélation des erreurs de la puissance critique et de W′ ; un ajustement des deux aux mêmes efforts la donne, et elle est sous 0.",
  "note.power.altitude_response":
    "À quel point tu perds de la puissance en altitude : 1 est la moyenne de dix cyclistes, dispersés d’environ 0.4 autour d’elle.",
  "note.efforts.duration_s": "Durée d’un effort intense.",
  "note.efforts.power_w": "Puissance moyenne d’un effort intense.",
  "note.events.distance_m":
    "La longueur d’une épreuve ; les contre-la-montre se courent d’ordinaire sur 10, 25, 50 et 100 miles.",
  "note.events.duration_s":
    "Combien dure une épreuve en temps fixe : qui va le plus loin gagne. 12 et 24 heures sont d’usage.",
  "note.course.duration_s": "Combien dure le trajet, pour un parcours donné par un temps et non par une distance.",
  "note.course.distance_m": "Le long de la route ; 25 miles par défaut.",
  "note.course.grade": "Dénivelé sur distance.",
  "note.course.bearing_deg": "Où mène la route au départ, dans le sens horaire depuis le nord.",
  "note.course.turn_radius_m":
    "Rayon du demi-cercle où un aller-retour fait demi-tour : 3 à 4 m en travers d’une route, 10 m ou plus autour d’un rond-point.",
  "note.course.points.distance_m": "Le long de la route depuis le départ.",
  "note.course.points.elevation_m": "Au-dessus de la mer.",
  "note.course.points.bearing_deg": "Où mène la route à partir de ce point ; sans valeur, comme au point précédent.",
  "note.course.points.radius_m": "Rayon du virage de ce point au suivant.",
  "note.course.points.wind_share":
    "Part du vent qui t’atteint de ce point au suivant : moins le long des haies, dans un bois ou entre des maisons.",
  "note.conditions.temperature_c": "Par défaut, celle de l’atmosphère standard au niveau de la mer.",
  "note.conditions.pressure_hpa": "Sans indication, celle de l’atmosphère standard à cette altitude.",
  "note.conditions.altitude_m": "Du parcours, au-dessus de la mer ; sans valeur, la moyenne des points du parcours.",
  "note.conditions.relative_humidity": "À 20 °C, toute la plage change la masse volumique de 0.9 %.",
  "note.conditions.dew_point_c": "Peut remplacer l’humidité.",
  "note.conditions.wind_speed_m_s": "Tel que la prévision le donne, à la hauteur du vent.",
  "note.conditions.wind_from_deg": "D’où vient le vent, dans le sens horaire depuis le nord.",
  "note.conditions.wind_height_m": "Les prévisions donnent le vent à 10 m.",
  "note.conditions.rider_height_m": "Hauteur où le cycliste rencontre le vent.",
  "note.conditions.roughness_length_m":
    "Du terrain alentour : 0.03 herbe rase, 0.1 cultures basses, 0.25 haies et arbres ; au-dessus de 0.06, le vent à 1.2 m n’est qu’une estimation grossière.",
  "note.conditions.shelter_factor":
    "Part du vent prévu qui atteint le cycliste ; remplace la rugosité là où la loi du vent ne tient plus.",
  "note.conditions.latitude_deg": "Sans indication, la pesanteur est la valeur normale 9.80665 m/s².",
  "note.conditions.later.first_at_s": "L’heure de la première prévision.",
  "note.conditions.later.at_s": "L’heure de la prévision suivante.",
  "note.conditions.later.start_at_s": "Quand la sortie commence.",
  "note.start.speed_m_s": "Vitesse au départ.",
  "note.stops.every_m": "La distance d’un arrêt à l’autre, dès le départ ; un arrêt sur la ligne est l’arrivée.",
  "note.stops.time_s":
    "Le temps passé debout à chaque arrêt. Qui reste plus longtemps que prévu le fait ici à chaque arrêt.",
  "note.feeding.every_s": "Le rythme des prises en roulant, en temps de route sans les arrêts.",
  "note.feeding.time_s": "Le temps passé redressé à chaque prise.",
  "note.feeding.cda_m2":
    "CdA, redressé pour manger ou boire : entre mains en bas du guidon, environ 0.31 m², et mains aux cocottes, environ 0.36 m². Jamais moins que dans la position elle-même.",
  "note.model_error_share":
    "L’erreur propre du modèle, en part d’un temps à l’arrivée. Des modèles publiés se trompaient dehors de 3.2 à 3.9 % en moyenne, soit un écart type de 4 à 5 % ; environ 3 % sont attribués à leurs données, qui comptent ici à part.",
  "note.positions.yaw_table.yaw_deg": "Angle entre le vélo et le vent apparent.",
  "note.positions.yaw_table.ratio": "Surface de traînée axiale à cet angle, divisée par celle à angle nul.",
  "note.with.power_w": "Puissance aux pédales.",
  "note.with.speed_m_s": "Vitesse par rapport au sol.",
  "note.with.time_s": "Un temps à l’arrivée à viser.",
  "note.with.other_start_at_s": "Un autre départ le même jour, pour comparer.",
  "note.with.target_time_s": "Un temps à l’arrivée dont on veut connaître les chances.",
  "note.with.hold_s": "Combien de temps tenir une puissance.",
  "note.with.test_error_share":
    "Répétabilité d’un effort intense : tests de 20 minutes de huit cyclistes entraînés à 1.3 % près, tests de 4 minutes à 2.0 %.",
  "note.with.for_time_s": "Une durée fixe à rouler.",
  "note.with.split_every_m": "Distance entre temps de passage ; 5 miles par défaut.",
  "note.with.map_power_w": "Bornes des puissances qu’une carte couvre.",
  "note.with.power_change": "Plus de puissance, en part.",
  "note.with.cda_change": "Changement de surface de traînée, en part ; moins est négatif.",
  "note.with.lower_by_m2":
    "De combien une surface de traînée est sous une autre, comme un même essai des deux le donne.",
  "note.with.share": "De quelle part de lui-même un changement déplace un chiffre ; moins est négatif.",
  "note.with.chance": "La chance qu’une chose réussisse, quoi que devienne le reste.",
  "note.with.money": "Argent à dépenser, ou ce que coûte une chose, dans ta propre monnaie.",
  "note.with.hours_per_week":
    "Heures par semaine en plus de ce que tu fais déjà, ou ce que demande une chose par semaine.",
  "note.with.hours_once": "Heures que demande une chose, une fois.",
  "note.with.weeks": "Pendant combien de semaines.",
  "note.with.times_ridden": "Combien de fois une épreuve est courue.",
  "note.with.rides_at_once": "Le plus de courses qu’une demande calcule.",
  "note.with.stature_m": "Taille debout, d’où l’on estime les longueurs de segments qui ne sont pas données.",
  "note.with.thigh_m": "De la hanche au genou ; sans indication, 0.245 de la taille ± 3 % : une estimation.",
  "note.with.shank_m": "Du genou à la cheville ; sans indication, 0.246 de la taille ± 3 % : une estimation.",
  "note.with.foot_m":
    "De la cheville à l’axe de pédale ; sans indication, 0.085 de la taille ± 3 % : une estimation, et la place de la cale décide.",
  "note.with.trunk_m": "De la hanche à l’épaule ; sans indication, 0.288 de la taille ± 3 % : une estimation.",
  "note.with.upper_arm_m":
    "De l’épaule aux repose-coudes, le bras vertical ; sans indication, 0.186 de la taille ± 3 % : une estimation.",
  "note.with.hip_above_saddle_m":
    "Le centre de la hanche au-delà du dessus de la selle, le long de la ligne depuis l’axe du pédalier.",
  "note.with.ankle_deg": "Entre la jambe et la ligne de la cheville à la pédale, pour une cheville qui ne bouge pas.",
  "note.with.foot_pitch_deg":
    "De combien la ligne de la cheville à la pédale pointe sous l’horizontale, en moyenne, pour une cheville qui bouge.",
  "note.with.foot_swing_deg": "De combien cette ligne bat de part et d’autre de sa moyenne au cours d’un tour.",
  "note.with.cadence_rpm": "Tours de manivelle par minute.",
  "note.with.crank_m": "De l’axe du pédalier à l’axe de pédale.",
  "note.with.saddle_height_m":
    "De l’axe du pédalier jusqu’au dessus de la selle, le long de la ligne d’assise ; la valeur proposée place la selle aux classiques 96 % de la hauteur de hanche debout au-dessus d’une pédale en bas.",
  "note.with.seat_angle_deg":
    "Effectif : celui de la ligne de l’axe du pédalier au centre de la hanche, au-dessus de l’horizontale vers l’arrière.",
  "note.with.torso_deg":
    "De la ligne de la hanche à l’épaule, au-dessus de l’horizontale ; les essais publiés allaient de 0 à 24°.",
  "note.with.bar_drop_m": "Du dessus de la selle, à la verticale, jusqu’à la hauteur des repose-coudes.",
  "note.with.cda_correlation":
    "Corrélation des erreurs de plusieurs surfaces de traînée : presque 1 pour un même essai ou une même estimation, 0 pour des essais sans rien de commun.",
  "note.with.wind_head_m_s": "Vent de face à hauteur du cycliste pendant un passage ; un vent de dos est négatif.",
  "note.with.coast_down_time_s": "Durée d’une décélération en roue libre, de la première vitesse à la dernière.",
  "note.with.coast_down_distance_m": "Distance d’une décélération en roue libre, de la première vitesse à la dernière.",
  "note.with.rules.braking_m_s2":
    "Ralentir de plus que cela, au-delà de ce que la pente explique, compte comme un freinage ; la traînée seule fait 0.3 à 0.5.",
  "note.with.rules.stopped_m_s": "Plus lentement que cela compte comme un arrêt.",
  "note.with.rules.accelerating_m_s2":
    "Gagner de la vitesse de plus que cela sans puissance, au-delà de ce que la pente explique, compte comme un trou du capteur de puissance.",
  "note.with.rules.bridged_s": "Un trou de l’enregistrement jusqu’à cette durée est comblé par une droite.",
  "note.with.rules.allowed_s": "Un tour dont pas plus que cela n’est inutilisable est gardé.",
  "note.with.speed_error_share":
    "À quel point l’échelle de toutes les vitesses est incertaine : 0.5 % est une roue dont la circonférence est mesurée au centimètre.",
  "note.with.film.share": "Part du temps où un film montre le cycliste ainsi.",
  "note.with.plan.difference_share":
    "La différence entre deux positions qu’un test doit montrer, en part de la surface de traînée.",
  "note.with.plan.run_cv_share": "À quel point la surface de traînée d’un passage se répète ; ton propre test le dit.",
  "note.with.plan.power": "Combien de fois un test doit montrer une différence qui existe ; 4 fois sur 5 est l’usage.",
  "note.with.plan.runs": "Combien de passages tu veux faire dans chaque position.",
  "note.with.smooth_m":
    "Les hauteurs sont moyennées sur autant de mètres de chaque côté : baromètres et cartes se trompent de quelques mètres, et chaque oscillation ajoute à la montée.",
  "note.with.from_m": "Où le parcours commence sur la route enregistrée.",
  "note.with.to_m": "Où le parcours finit sur la route enregistrée ; sans indication, à sa fin.",
  "note.with.times": "Combien de fois le parcours est roulé, tour après tour.",
  "note.with.most_points": "Combien de points du parcours sont gardés au plus, pour qu’il tienne dans un lien.",
  "note.with.least_w": "La plus petite puissance d’un plan ; à 0, tu peux rouler sans pédaler.",
  "note.with.greatest_w": "La plus grande puissance d’un plan, comme en relançant après un virage.",
  "note.with.targets": "Combien de puissances tu es prêt à retenir.",
  "note.with.round_w": "Les puissances d’un plan en sont des multiples ; personne ne tient une puissance au watt près.",
  "note.with.sit_up.from_grade": "Tu te redresses là où la route monte autant, ou plus.",
  "note.with.sit_up.cda_m2":
    "CdA redressé : entre les mains en bas du guidon, environ 0,31 m², et sur les cocottes, environ 0,36 m². Jamais moins que dans la position elle-même.",
  "note.with.sit_up.cp_gain_share":
    "De combien ta puissance critique est plus grande redressé que dans ta position. Dans une étude, elle l’était sur les cocottes ; de combien pour toi, seul un test le dit.",
  "note.with.after_running_out_share":
    "Ce que tu tiens une fois W′ épuisé, en part de la puissance critique : dans un second test maximal, une minute après le premier, la puissance finale était inférieure de 7 %. Qu’elle le reste jusqu’à l’arrivée est supposé.",
  "note.with.riders":
    "Combien de cyclistes d’une autre puissance critique et d’un autre W′ suivent les deux plans ; aucun sans indication.",
  "note.with.draws":
    "Combien de simulations fait une comparaison. Sans, son ± est calculé pour de petits changements ; un parcours de très nombreux points en a moins.",
};
