// @ts-check
/** Enregistrements de sorties. */

/** @satisfies {import("../books.d.ts").Texts<"recordings">} */
export default {
  sharedFile: "Le fichier partagé",
  reading: "Lecture du fichier…",
  cancel: "Arrêter",
  notRead: "{name} n’a pas été lu. {why}",
  notReadWhy: "La lecture s’est arrêtée dans ce fichier sur quelque chose d’inconnu.",

  empty: "Le fichier est vide.",
  too_large: "Le fichier dépasse {most} octets, le maximum qui est lu.",
  too_many_records: "Le fichier contient plus de {most} points de mesure, le maximum qui est lu.",
  unknown_kind: "Ce fichier n’est d’aucun des types qui sont lus : FIT, GPX, TCX ou CSV.",
  zip_archive: "C’est une archive de fichiers. Décompresse-la, puis ouvre l’enregistrement qui est dedans.",
  packed_twice: "Le fichier est encore compressé après une décompression. Décompresse-le, puis ouvre-le.",
  packing_broken: "Le fichier est compressé et son contenu ne peut pas être décompressé.",
  file_gone: "Le fichier ne peut plus être lu. Ouvre-le de nouveau.",
  other_xml: "Ce fichier XML contient {root}, ce qui n’est ni GPX ni TCX.",
  not_xml:
    "Le fichier commence comme du XML mais ne continue pas ainsi : avant la ligne {line}, octet {byte}, il n’y a rien d’une sortie.",
  too_deep: "À la ligne {line}, le fichier s’emboîte sur plus de {most} niveaux, ce qui n’est pas un enregistrement.",
  too_long_piece:
    "Un seul morceau du fichier, à partir de la ligne {line}, dépasse un mégaoctet. Ce n’est pas un enregistrement.",
  no_records: "Le fichier a pu être lu, mais il ne contient aucun point de mesure.",
  cut_before_records: "Le fichier s’arrête ou est abîmé à l’octet {byte}, avant tout point de mesure.",
  no_known_columns: "Aucune des premières lignes ne donne au moins deux colonnes connues, par exemple {known}.",
  no_times: "La plupart des points sont sans heure, donc vitesses et durées ne sont pas connues.",
  no_power: "L’enregistrement est sans puissance.",
  no_elevation: "L’enregistrement est sans altitude.",
  no_positions: "L’enregistrement est sans positions, donc les directions ne sont pas connues.",
  power_missing: "Les points de mesure sans puissance restent vides et ne comptent pas pour zéro : {count}.",
  no_distance:
    "L’enregistrement est sans distances, sans positions et sans vitesses : il ne dit pas combien tu as roulé.",
  beyond_a_ride: "Des valeurs impossibles pour une sortie ont été laissées de côté : {count}.",
  unreadable:
    "Les valeurs qui ne peuvent pas être lues ont été laissées de côté : {count}, la première à la ligne {line}.",
  uneven_lines: "Des lignes ont plus ou moins de valeurs que d’en-têtes : {count}, la première à la ligne {line}.",
  cut: "Le fichier s’arrête ou est abîmé à l’octet {byte}. Les points de mesure qui précèdent ont été lus : {records}.",
  not_closed: "L’appareil n’a pas terminé le fichier. Ce qu’il avait enregistré a été lu.",
  not_one_piece: "Le fichier contient plusieurs enregistrements, qui ont été réunis dans leur ordre.",
  untimed: "Les points de mesure sans heure ont été laissés de côté : {count}.",
  same_time: "Les points de mesure à la même heure que le précédent ont été réunis avec lui : {count}.",
  clock_slipped: "Les points de mesure plus anciens que le précédent ont été laissés de côté : {count}.",
  clock_set: "L’horloge a été réglée pendant l’enregistrement et le temps continue à partir de là : {count} fois.",
  gaps: "Rien n’a été enregistré pendant des trous : {count}, le plus long de {longest}.",
  still: "Des points de mesure ont exactement la position du précédent : {count}.",
  at_zero: "Les positions à la latitude 0 et à la longitude 0 ont été laissées de côté : {count}.",
  distance_from_positions:
    "L’enregistrement est sans distances propres. Elles ont été calculées à partir des positions.",
  distance_from_speed:
    "L’enregistrement est sans distances ni positions. La distance a été calculée à partir de la vitesse.",
  distance_reset: "La distance enregistrée est repartie de zéro et a été prolongée : {count} fois.",
  distance_back: "La distance enregistrée a reculé et a été maintenue : {count} fois.",
  jumps: "Des pas entre positions trop rapides pour un vélo sont peut-être des erreurs du récepteur : {count}.",
  speed_from_distance:
    "L’enregistrement est sans vitesses propres. Elles ont été calculées à partir de la distance et du temps.",
  parts_left_out:
    "La trace a plusieurs parties : {count}. Entre elles, {distance} en ligne droite ne sont pas comptés.",
  from_route: "Le fichier contient un itinéraire, pas une sortie : ses points disent où il mène.",
  power_by_name: "La puissance vient d’un champ que décrit un capteur ou un programme ajouté.",
  clock_in_minutes:
    "Les temps ont deux parties. Ils ont été lus comme des minutes et des secondes, car presque chaque point a son propre temps.",
  speed_as_km_h:
    "L’en-tête ne dit pas l’unité de la vitesse. Elle a été lue en km/h, car elle est trop haute pour des m/s.",
  distance_as_km:
    "L’en-tête ne dit pas l’unité de la distance. Elle a été lue en km, car elle est trop courte pour des mètres.",
  no_worker:
    "Ce navigateur ne laisse pas la page lire des fichiers en arrière-plan, donc les enregistrements ne peuvent pas être ouverts ici.",
  took_too_long: "La lecture du fichier a pris trop de temps et a été arrêtée. Rien d’autre n’est perdu.",
  reader_crashed:
    "La page n’a pas réussi à lire ce fichier, et c’est une faute de la page. Rien d’autre n’est perdu ; la même sortie dans un autre type de fichier s’ouvrira peut-être.",
  reader_missing:
    "La partie de la page qui lit les enregistrements n’a pas pu être chargée. Vérifie la connexion, puis rouvre le fichier.",
};
