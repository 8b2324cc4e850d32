// @ts-check
/** What the core says, by the names of its table of messages, and what each field's default rests on. */

/** @type {Record<string, string>} */
export default {
  not_a_number: "{field} ist keine brauchbare Zahl.",
  out_of_range: "{field} ist {is}; erlaubt ist {low} bis {high}.",
  unusual: "{field} ist {is}; üblich ist {low} bis {high}.",
  missing: "{field} fehlt.",
  too_long: "{field} ist länger als {most} Byte.",
  too_many: "{field} hat mehr als {most} Einträge.",
  not_both: "Gib {other} oder {field} an, nicht beides.",
  too_large: "Die Anfrage ist größer als {most} Byte; mehr wird nicht gelesen.",
  not_json: "Die Anfrage ist kein JSON: {why}.",
  not_data: "Die Anfrage lässt sich nicht als JSON schreiben.",
  wrong_type: "Gefunden: {found}; erwartet: {wanted}.",
  unknown_field: "Das Feld {name} gibt es hier nicht; es gibt {known}.",
  unknown_word: "{word} ist keines der Wörter, die hier stehen dürfen: {known}.",
  twice: "Das Feld {name} steht hier zweimal.",
  unreadable: "Das lässt sich nicht lesen: {why}.",
  unknown_question: "Diese Frage gibt es nicht; es gibt {known}.",
  newer_version:
    "Das stammt von einer neueren Fassung ({version}); diese liest Fassung {reads}. Es bleibt, wie es ist.",
  older_version: "Das ist von Fassung {version}; die älteste lesbare Fassung ist {oldest}.",
  no_position: "Es gibt keine Position: Gib mindestens eine an.",
  no_such_position: "Diese Position gibt es nicht.",
  no_event: "Es gibt kein Rennen: Gib mindestens eines an, oder lass sie ganz weg.",
  not_a_date: "{field} ist kein Tag wie 2026-05-01.",
  not_of_simple_course: "{field} gehört nicht zu einer einfachen Strecke.",
  not_of_profile: "{field} gehört nicht zu einer Strecke, die als Profil gegeben ist.",
  dew_point_above_temperature: "{field} liegt über der Temperatur, was nicht sein kann.",
  pressure_beyond: "Der Druck an der Strecke ergibt sich außerhalb von {low} bis {high}.",
  not_above: "{field} muss über {other} liegen.",
  before: "{field} darf nicht vor {other} liegen.",
  no_such_equipment: "{field} nennt ein Ausrüstungsteil, das es nicht gibt.",
  more_than_whole: "{field} ergeben zusammen mehr als die ganze Zeit.",
  rows_not_in_order: "{field} muss größer sein als in der Zeile davor.",
  too_few_points: "Ein Profil braucht mindestens zwei Punkte.",
  points_too_close: "{field} muss mindestens {least} hinter dem Punkt davor liegen.",
  too_steep: "Die Straße zu Punkt {point} steigt um {grade}, mehr als sich fahren lässt.",
  simplified: "Die Strecke hat {before} Punkte; gefahren wird über {after}, die ihre Form behalten.",
  wind_ignored:
    "Die Windrichtung bleibt wie gewählt außer Acht: Die Fahrt ist bei Windstille in Luft derselben Dichte gerechnet.",
  no_bearings:
    "Der Wind bleibt außer Acht, weil die Strecke nicht sagt, wohin sie führt. Gib ihren Punkten eine Richtung in Grad, von Norden im Uhrzeigersinn.",
  not_the_courses_length:
    "Ein Rennen mit eigener Strecke ist so lang wie diese Strecke, {length}. Lass seine Distanz weg.",
  altitude_differs:
    "Die Luft gilt für eine Höhe von {altitude}, die Streckenpunkte liegen aber im Mittel auf {mean}. Lass die Höhe weg, um ihnen zu folgen.",
  altitude_counted:
    "Auf {altitude} ist deine Leistungskurve bei fünf Minuten um {loss} gesenkt, nach zehn nicht an die Höhe gewöhnten Radfahrern (Clark u. a. 2007).",
  thin_air:
    "Die dünne Luft auf {altitude} macht dich hier schneller, nimmt dir aber keine Leistung. Zehn Radfahrer verloren in dieser Höhe {loss} über fünf Minuten: Wurde deine Leistung weiter unten getestet, schalte den Leistungsverlust in der Höhe ein.",
  heat: "Heiße Luft ist dünn und macht dich hier schneller, nimmt dir aber keine Leistung. Bei Hitze hält man weniger durch, je länger die Fahrt, desto mehr.",
  calm_at_first:
    "Es ist in der ersten Vorhersage windstill; deshalb sagt nichts, wie falsch der spätere Wind sein kann. Sein Fehler zählt nicht.",
  wind_law:
    "So nah an rauem Gelände ist der Wind auf deiner Höhe nur grob geschätzt; besser gibst du vielleicht den Anteil an, der dich erreicht.",
  stops_at_steep:
    "Der Fahrer kommt nach {distance} zum Stehen: Die Straße verlangt dort {push} Schub, mehr als der größte dieses Fahrers mit diesem Gang.",
  stops: "Der Fahrer kommt nach {distance} zum Stehen: zu wenig Leistung für diese Straße und diesen Wind.",
  time_out_of_reach: "Keine Leistung von 1 bis 2500 W ergibt diese Zeit auf dieser Strecke.",
  fixed_time_out_of_reach: "In dieser Zeit kommt man weniger weit als {least} oder weiter als {most}.",
  nothing_sustainable: "Diese Leistungskurve fällt vor dem Ziel auf null.",
  effort_without: "{field} gehört nicht zu dieser Art von Belastung.",
  fixed_time_compares_nothing:
    "Eine feste Fahrzeit lässt nichts zu vergleichen; gib eine Leistung an oder „gleichmäßig am Limit“.",
  not_as_before: "{field} stammt nicht aus einer früheren Antwort auf dieselbe Frage.",
  beyond_curve: "Das verlangt {asked}; deine Leistungskurve erlaubt so lange {allowed}.",
  beyond_table:
    "Der scheinbare Wind kommt von jenseits der {last}, der letzten Zeile deiner Tabelle der Anströmwinkel.",
  hour_overstated:
    "Ohne Verlust auf langer Fahrt überschätzt die Leistungskurve, was sich eine Stunde halten lässt, um 5 % oder mehr.",
  far_beyond:
    "Eine Fahrt von {hours} Stunden liegt weit jenseits dessen, worauf eine Leistungskurve beruht: Die veröffentlichten Leistungen dahinter enden bei einer Stunde. Was sich so lange halten lässt, ist geraten; Essen, Schlaf und Wetter entscheiden.",
  pushed: "Straße und Wind schieben mehr, als dieses Tempo braucht: kein Treten, etwas Bremsen.",
  launch: "Aus dem Stand käme dieser Fahrer hier nicht los.",
  several_speeds: "In diesem Wind kosten mehrere gleichmäßige Geschwindigkeiten diese Watt; gezeigt ist die höchste.",
  from_low_to_high: "{field} muss vom kleineren zum größeren Wert gehen.",
  time_fixed_twice: "{field} legt die Zeit schon fest; eine Zielzeit sagt es doppelt.",
  chance_of_given_time: "{field} fragt nach der Chance auf eine Zielzeit, die hier aber schon feststeht.",
  short_overstated: "Unter zwei Minuten braucht die Leistungskurve eine Spitzenleistung.",
  turn_not_counted:
    "Das Wenden ist nicht mitgerechnet. Bremsen, ein Halbkreis mit {radius} Radius und das Beschleunigen danach brauchen etwa {seconds} s; gib der Wende einen Radius, um es mitzurechnen.",
  one_density:
    "Die Strecke umfasst {climb} Höhenunterschied; die Luft gilt als überall gleich dicht, wird aber je 90 m um etwa 1 % dünner.",
  never_lost:
    "Die tiefe Position lässt hier weder nach noch setzt sie aus. Gib an, wann sie nachlässt, sonst werden beide einfach gehalten.",
  after_finish: "Die tiefe Position würde erst nach dem Ziel nachlassen.",
  beaten: "Eine längere Belastung war härter als diese, also war diese nicht dein Maximum: Die Kurve lässt sie weg.",
  not_maximal: "Diese Belastung liegt weit unter der Kurve der anderen: Sie sieht nicht nach deinem Maximum aus.",
  short:
    "Eine Belastung unter zwei Minuten verbiegt eine Kurve mit zwei Parametern: CP fällt zu hoch und W′ zu niedrig aus.",
  no_curve: "Keine Kurve eines Fahrers geht durch diese Belastungen; gezeigt sind deine eigenen CP und W′.",
  one_effort:
    "Eine Belastung trennt CP nicht von W′: W′ gilt so, wie es üblich ist. Eine Belastung anderer Dauer würde sie trennen.",
  hardly_harder:
    "Die kürzeren Belastungen sind kaum härter als die längeren, oder viel zu viel härter, als dass alle dein Maximum gewesen sein könnten: W′ gilt so, wie es üblich ist.",
  one_length:
    "Belastungen gleicher Dauer trennen CP nicht von W′: W′ gilt so, wie es üblich ist. Nimm eine viel kürzere oder längere dazu.",
  two_efforts:
    "Zwei Belastungen legen eine Kurve fest, können sie aber nicht prüfen; eine dritte anderer Dauer könnte es.",
  w_prime_small:
    "W′ ergibt sich zu {w_prime}, weniger als üblich: Die kürzeste Belastung sieht nicht nach deinem Maximum aus. Wiederhole sie, bevor du diese Werte übernimmst.",
  w_prime_large:
    "W′ ergibt sich zu {w_prime}, mehr als üblich: Die längste Belastung sieht nicht nach deinem Maximum aus. Wiederhole sie, bevor du diese Werte übernimmst.",
  all_short:
    "Alle Belastungen sind kürzer als zehn Minuten: CP fällt zu hoch aus, bei jedem Modell. Eine von 12 bis 20 Minuten hilft am meisten.",
  extrapolated: "Jenseits von {longest}, deiner längsten Belastung, ist die Kurve geraten.",
  levels_off:
    "Eine Kurve, die bei CP flach wird, überschätzt die Stunde: Bei trainierten Fahrern war CP 323 W und die Stunde 309 W.",
  nearly_straight: "Das Bein ist dort fast gestreckt: Wenige Millimeter Sattel ändern das alles sehr.",
  may_not_reach:
    "Bei {of_hundred} von 100 Kombinationen dieser Längen würde das Bein das Pedal nicht erreichen. Jedes ± gilt für die übrigen, denn der Sattel wurde auf dieses Bein eingestellt; gemessene Längen würden es verkleinern.",
  trunk_too_short: "Der Rumpf ist zu kurz für Armauflagen in dieser Höhe: Die Schultern kämen nicht hin.",
  leg_too_long:
    "Das Bein faltet sich von {from} bis {to} nach dem oberen Totpunkt nicht bis zum Pedal; bei {at} ist es {missing} zu lang.",
  leg_too_short:
    "Das Bein reicht von {from} bis {to} nach dem oberen Totpunkt nicht zum Pedal; bei {at} fehlen {missing}.",
  saddle_at_least: "{why} Mit dem Sattel auf {limit} oder mehr geht es.",
  saddle_at_most: "{why} Mit dem Sattel auf {limit} oder weniger reicht es.",
  position_twice: "Position {position} ist beim Vergleich zweimal genannt.",
  too_many_choices: "Es gibt mehr als {most} Möglichkeiten: Nenne weniger Positionen zum Vergleich.",
  no_such_choice: "Diese Möglichkeit gibt es nicht.",
  reference_left_out: "Die Vergleichsposition ist nicht unter den verglichenen Positionen.",
  at_event: "{why} Das gilt für Rennen {event}.",
  too_few_samples: "{field} braucht mindestens zwei Werte.",
  column_length: "{field} hat {is} Werte, es gibt aber {wanted} Zeiten.",
  no_such_recording: "{field} nennt eine Aufzeichnung, die es nicht gibt.",
  time_or_distance: "{field} braucht die Zeit, die es dauerte, oder wie weit es ging.",
  lap_too_short: "{field} muss mindestens {least} nach dem Beginn der Runde liegen.",
  laps_overlap: "{field} liegt vor dem Ende von Runde {lap}: Die gemeinsame Zeit würde doppelt zählen.",
  nothing_moves: "Bis {field} bewegt sich nichts: Eine Runde braucht ein Tempo.",
  nothing_measured: "Noch ist keine Runde und keine Fahrt angegeben, also wird hier ein Test geplant.",
  drag_tests_disagree:
    "Die Tests dieser Position unterscheiden sich mehr, als ihre eigenen Fehler erklären. Suche, was sich dazwischen geändert hat, etwa Kleidung, Reifen oder Wind, bevor du ihrem Mittel traust.",
  no_usable_laps:
    "Keine brauchbare Runde ist übrig. Nimm einen Ausschluss zurück, oder ändere die Regeln dafür, was unbrauchbar ist.",
  laps_do_not_fit: "Zu diesen Runden passt keine Luftwiderstandsfläche: Prüfe Masse, Leistung und Tempo.",
  rolling_not_told:
    "Die Runden sind im Tempo zu ähnlich, oder es sind zu wenige, um Luftwiderstand und Rollwiderstand zu trennen. Der Rollwiderstand bleibt bei {rolling}. Um beide zu messen, fahr in einer Position gleich viele langsame und schnelle Runden, etwa mit {slow} und {fast}.",
  rolling_impossible:
    "Diese Runden verlangen einen Rollwiderstandsbeiwert von {rolling}, Reifen haben aber {low} bis {high}. Er bleibt bei {held}. Such nach einem Wind, der fehlt, nach falschen Höhen oder einer falschen Masse.",
  no_spare_laps:
    "Es gibt nicht mehr Runden als Unbekannte, also sagt nichts, wie sicher das Ergebnis ist. Fahr mehr Runden.",
  laps_scatter:
    "Die Runden streuen um {share} ihrer Leistung; ein sorgfältiger Test bleibt unter {usual}. Such nach Wind, Verkehr, einem wandernden Leistungsmesser oder falschen Höhen, bevor du dem traust.",
  positions_scatter_unlike:
    "Die Positionen wiederholen sich nicht gleich gut: Eine Runde streut in der einen um {least} ihrer Leistung, in einer anderen um {most}. Jeder Bereich richtet sich nach den eigenen Runden. Such, was anders war, etwa Verkehr oder eine Position, die nicht gehalten wurde.",
  positions_in_blocks:
    "Die Positionen {a} und {b} wurden nacheinander gefahren. Ändern sich dabei Wind, Temperatur oder Leistungsmesser, sieht das wie ein Unterschied der Positionen aus. Wechsle ab, etwa A, B, B, A.",
  difference_keeps_errors:
    "Was dem ganzen Test gemeinsam ist, hebt sich zwischen den Positionen {a} und {b} nicht auf: Es verschiebt ihren Unterschied um {area}, mehr als seine eigene Streuung. Fahr beide gleich schnell auf derselben Straße.",
  outlying_lap:
    "Das liegt {watts} neben den anderen, mehr als der Zufall erklärt. Es zählt trotzdem; lass es weg, wenn du einen Grund kennst.",
  lap_ends_elsewhere:
    "Diese Runde gilt als geschlossen, aber Anfang und Ende liegen nach der Aufzeichnung {height} verschieden hoch. Kennzeichne sie als offen, oder prüfe die Höhen.",
  lap_leads_away:
    "Diese Runde gilt als geschlossen, aber nach ihren Richtungen führt {share} ihres Weges von dort weg, wo sie beginnt. Kennzeichne sie als offen, oder prüfe, wo sie beginnt und endet.",
  recorded_altitude_differs:
    "Die Aufzeichnung liegt {recorded} über dem Meer, die Luft gilt aber für {altitude}. Das ändert ihre Dichte und jede Luftwiderstandsfläche um {share}. Gib die Höhe an, oder einen vor Ort gemessenen Luftdruck.",
  recording_twice:
    "Aufzeichnung {recording} ist die gleiche wie Aufzeichnung {first}. Runden aus beiden würden doppelt zählen.",
  film_without_laps:
    "Position {position} wurde gefilmt, aber keine Runde oder Fahrt in ihr zählt; also sagt der Film hier nichts.",
  lap_braked: "Runde {lap} zählt nicht: Darin wird {time} gebremst.",
  lap_stopped: "Runde {lap} zählt nicht: Darin steht das Rad {time}.",
  lap_dropout: "Runde {lap} zählt nicht: Leistung oder Tempo fehlen {time} lang oder können nicht stimmen.",
  wind_needs_bearings: "Der Wind bleibt in Runden außer Acht, deren Aufzeichnung nicht sagt, wohin gefahren wurde.",
  run_wind_needs_bearing:
    "Der Wind bleibt bei Fahrten außer Acht, die weder ihren eigenen Wind angeben noch, wohin die Straße führt.",
  wind_not_told:
    "Diese Runden sagen nichts über den Wind, also bleibt er außer Acht. Fahr dieselbe Straße in beide Richtungen, jede Richtung als eigene Runde.",
  ignored_wind_matters:
    "Der Wind bleibt außer Acht. Auf dieser Runde kann ein Wind von {wind} die Luftwiderstandsfläche um {share} verschieben: Gib seine Stärke und Richtung an.",
  calm_not_measured:
    "Es gilt Windstille. Auf diesen Runden kann ein Wind von {wind} die Luftwiderstandsfläche um {share} verschieben: Miss Stärke und Richtung an der Straße, oder sag, dass es dort windstill war.",
  heights_unknown:
    "Die Höhen der Straße sind nicht aufgezeichnet, also gelten Runden, die sich nicht schließen, als eben.",
  more_runs_than: "Ein so kleiner Unterschied braucht mehr als {most} Fahrten.",
  greatest_below_even: "Die beste gleichmäßige Leistung ist hier {even}: Ein Plan braucht eine Höchstleistung darüber.",
  least_above_even: "Die beste gleichmäßige Leistung ist hier {even}: Ein Plan braucht eine Mindestleistung darunter.",
  no_road: "Die Datei hat weder Ortsangaben noch eine Distanz und sagt darum nichts über die Straße.",
  course_length: "Eine Strecke ist zwischen 100 m und 2000 km lang; diese ist es nicht.",
  part_too_short: "Ein Teil der Strecke ist mindestens {least} lang.",
  lap_open: "Diese Strecke endet {height} von der Höhe entfernt, auf der sie beginnt, und ist darum keine Runde.",
  no_profile: "Nur eine Strecke aus Punkten lässt sich so ändern.",
  columns_differ: "{field} hat {is} Werte, eine andere Spalte aber {wanted}.",
  no_plan: "Für diese Fahrt lässt sich kein Plan berechnen.",
  plan_not_settled:
    "Die Suche nach dem schnellsten Plan wurde abgebrochen: Vielleicht gibt es einen etwas schnelleren.",
  effort_not_speed:
    "Der Plan sagt, wie hart du fährst, nie wie schnell: Bergab, in Kurven und im Verkehr entscheidet die Straße.",
  runs_out_without_recovery:
    "Wie W′ zurückkommt, ist am wenigsten sicher: Käme nichts zurück, wäre W′ mit dem Plan aus wenigen Leistungen nach {distance} aufgebraucht.",
  neither_by_nor_share: "{field} braucht ein Feld mit by oder share, oder use_position.",
  no_such_number: "{field} ist {name}; eine solche Zahl gibt es in diesen Angaben nicht.",
  no_such_change: "{field} ist {name}; eine solche Änderung steht nicht in der Liste.",
  requires_itself: "{field} führt zu sich selbst zurück: Eine der Änderungen muss zuerst kommen.",
  times_for_each_event: "Wie oft jedes Rennen gefahren wird, braucht für jedes Rennen eine Zahl.",
  schedules_cut_short:
    "So viele Wochenblöcke überschneiden sich, dass nicht jeder Zeitplan geprüft wurde; vielleicht passt eine bessere Auswahl.",
  too_many_numbers:
    "Diese Änderungen betreffen zu viele verschiedene Zahlen, um alle Kombinationen zu vergleichen; lass einige weg.",
  cannot_be_ridden_together: "Mit diesen Änderungen zusammen lässt sich die Strecke nicht fahren.",

  // What a default and its range rest on.
  "note.rider.total_mass_kg": "Fahrer, Rad, Kleidung und Flaschen zusammen; vorgegeben ist ein üblicher Fahrer.",
  "note.bike.rolling_coefficient":
    "Für guten Asphalt gelten gewöhnlich 0.003 bis 0.005; Reifen, Druck und Wärme ändern das um den Faktor zwei.",
  "note.bike.drivetrain_efficiency":
    "Ein gemessener Kettenantrieb verlor 2.1 ± 1.5 %; nimm 1, wenn dein Leistungsmesser in der Nabe sitzt.",
  "note.bike.rotating_mass_kg":
    "Um so viel schwerer wirken die drehenden Räder, wenn sich das Tempo ändert; die beiden Räder des Modells von 1998 ergeben 1.45 kg.",
  "note.bike.bearing_drag_n": "Fester Anteil der Lagerreibung im Straßenmodell von 1998.",
  "note.bike.bearing_drag_n_s_per_m": "Anteil der Lagerreibung im Straßenmodell von 1998, der mit dem Tempo wächst.",
  "note.bike.launch_force_n":
    "Die größte Kraft, mit der ein Fahrer das Rad aus dem Stand antreibt; sie zählt nur in den ersten Sekunden.",
  "note.bike.lateral_m_s2":
    "Querbeschleunigung, die ein Fahrer in einer trockenen Kurve hinnimmt; sie begrenzt das Tempo, wo die Strecke einen Radius hat.",
  "note.bike.braking_m_s2": "Wie stark ein Fahrer vor einer Kurve bremst.",
  "note.bike.power_meter_bias_share":
    "Um welchen Anteil der Leistungsmesser zu hoch zeigt: 54 Geräte von 9 Herstellern lagen um -0.9 ± 3.2 % daneben. Er zählt für alles, was damit gemessen wurde.",
  "note.positions.cda_m2":
    "Am Zeitfahrlenker; veröffentlicht sind 0.244 m², gemessen im Windkanal für einen Rekordfahrer. Dass eine Schätzung auf ± 0.04 genau ist, ist angenommen.",
  "note.positions.cp_factor":
    "Kritische Leistung hier als Anteil von der in der Position deiner Tests; 1, wenn es diese war.",
  "note.positions.w_prime_factor":
    "Bei sieben trainierten Fahrern senkte die Position die kritische Leistung und ließ W′ unberührt.",
  "note.positions.speed_exponent":
    "Wie sich der CdA-Wert mit dem Fahrtwind ändert; eine einzelne veröffentlichte Zahl gibt es nicht, also 0, wenn nichts gemessen ist.",
  "note.positions.reference_airspeed_m_s":
    "Der Fahrtwind, bei dem der CdA-Wert gemessen wurde; er zählt nur mit einem Tempo-Exponenten.",
  "note.positions.fade.tired_cda_m2":
    "Der CdA-Wert, wenn die Position verloren ist; eine veröffentlichte Zahl fand sich nicht, also film dich und miss sie.",
  "note.positions.fade.begins_s": "Wann die Position nachzulassen beginnt.",
  "note.positions.fade.complete_s": "Wann die Position ganz verloren ist.",
  "note.positions.lapses.share":
    "Anteil der Fahrt außerhalb der Position: Kopf hoch oder tief, Aufrichten an einer Kreuzung.",
  "note.positions.lapses.cda_m2": "Der CdA-Wert während eines Aussetzers.",
  "note.positions.fade_test.first_third_cda_m2":
    "Mittlerer CdA-Wert im ersten Drittel eines gleichmäßigen Tests; seine Mitte steht für den Zeitpunkt nach einem Sechstel.",
  "note.positions.fade_test.last_third_cda_m2":
    "Mittlerer CdA-Wert im letzten Drittel; der ganze Anstieg ist das Anderthalbfache des Unterschieds der Drittel.",
  "note.positions.fade_test.test_s":
    "Dauer des Tests; was danach mit dem CdA-Wert geschieht, ist nicht bekannt und wird als gleichbleibend genommen.",
  "note.positions.drag_tests.cda_m2": "Die Luftwiderstandsfläche, die ein behaltener Test ergab.",
  "note.positions.drag_tests.sd_m2":
    "Eine Standardabweichung des eigenen Fehlers eines behaltenen Tests, wie seine Runden streuten.",
  "note.positions.drag_tests.shared_sd_m2":
    "Eine Standardabweichung dessen, was Tests eines Fahrers gemeinsam haben, etwa die Masse und der Rollwiderstand.",
  "note.positions.equipment.cda_change_m2":
    "Was es zum CdA-Wert hinzufügt; Formen von Zeitfahrhelmen unterschieden sich bei stillem Kopf um weniger als 1.5 %.",
  "note.positions.equipment.mass_change_kg": "Was es zur Masse hinzufügt; wieg es.",
  "note.power.cp_w": "Kritische Leistung; Hobbyfahrern werden gewöhnlich 200 bis 260 W zugeschrieben.",
  "note.power.w_prime_j": "Arbeit über der kritischen Leistung; zwölf Laborreihen ergaben im Mittel 16.9 ± 3.2 kJ.",
  "note.power.peak_w": "Leistung im ersten Augenblick einer Höchstbelastung.",
  "note.power.long_ride_loss_share":
    "Anteil der kritischen Leistung, der nach einer halben Stunde jedes Mal verloren geht, wenn die Fahrt 2.7-mal so lang wird; die 60-Minuten-Leistung von acht trainierten Fahrern bedeutet 9 %, das ± ist angenommen.",
  "note.power.long_ride_loss_w":
    "Der Verlust auf langer Fahrt in Watt, wie ältere Dateien ihn angeben: 9 % einer kritischen Leistung von 245 W.",
  "note.power.long_ride_from_s": "Ab wann der Verlust auf langer Fahrt zählt.",
  "note.power.cp_w_prime_correlation":
    "Wie die Fehler von kritischer Leistung und W′ zusammenhängen; eine Anpassung beider an dieselben Belastungen ergibt es, und es liegt unter 0.",
  "note.power.altitude_response":
    "Wie stark du in der Höhe Leistung verlierst: 1 ist das Mittel von zehn Radfahrern, die um etwa 0.4 davon streuten.",
  "note.efforts.duration_s": "Wie lange eine harte Belastung dauerte.",
  "note.efforts.power_w": "Mittlere Leistung einer harten Belastung.",
  "note.events.distance_m": "Wie lang ein Rennen ist; Zeitfahren gehen gewöhnlich über 10, 25, 50 und 100 Meilen.",
  "note.events.duration_s":
    "Wie lange ein Rennen dauert, das über eine Zeit geht: Es gewinnt, wer am weitesten kommt. Üblich sind 12 und 24 Stunden.",
  "note.course.duration_s":
    "Wie lange die Fahrt dauert, wenn die Strecke über eine Zeit und nicht über eine Distanz geht.",
  "note.course.distance_m": "Entlang der Straße; vorgegeben sind 25 Meilen.",
  "note.course.grade": "Anstieg durch waagerechte Strecke.",
  "note.course.bearing_deg": "Wohin die Straße am Start führt, im Uhrzeigersinn von Norden.",
  "note.course.turn_radius_m":
    "Radius des Halbkreises, in dem eine Strecke hin und zurück wendet: 3 bis 4 m quer über eine Straße, 10 m oder mehr um eine Verkehrsinsel.",
  "note.course.points.distance_m": "Entlang der Straße ab dem Start.",
  "note.course.points.elevation_m": "Über dem Meer.",
  "note.course.points.bearing_deg": "Wohin die Straße ab diesem Punkt führt; fehlt es, wie am Punkt davor.",
  "note.course.points.radius_m": "Radius der Kurve von diesem Punkt bis zum nächsten.",
  "note.course.points.wind_share":
    "Anteil des Winds, der dich von diesem Punkt bis zum nächsten erreicht: weniger an Hecken, im Wald oder zwischen Häusern.",
  "note.conditions.temperature_c": "Vorgegeben ist die Normatmosphäre auf Meereshöhe.",
  "note.conditions.pressure_hpa": "Ohne Angabe ist es die Normatmosphäre in dieser Höhe.",
  "note.conditions.altitude_m": "Der Strecke über dem Meer; fehlt sie, das Mittel der Streckenpunkte.",
  "note.conditions.relative_humidity": "Bei 20 °C ändert der ganze Bereich die Dichte um 0.9 %.",
  "note.conditions.dew_point_c": "Darf an die Stelle der Luftfeuchte treten.",
  "note.conditions.wind_speed_m_s": "Wie die Vorhersage ihn angibt, in der Höhe des Windes.",
  "note.conditions.wind_from_deg": "Woher der Wind kommt, im Uhrzeigersinn von Norden.",
  "note.conditions.wind_height_m": "Vorhersagen geben den Wind in 10 m Höhe an.",
  "note.conditions.rider_height_m": "Höhe, in der der Wind den Fahrer trifft.",
  "note.conditions.roughness_length_m":
    "Des Geländes ringsum: 0.03 offenes Grasland, 0.1 niedriger Bewuchs, 0.25 Hecken und Bäume; über 0.06 ist der Wind in 1.2 m Höhe nur grob geschätzt.",
  "note.conditions.shelter_factor":
    "Anteil des vorhergesagten Windes, der den Fahrer erreicht; tritt an die Stelle der Rauigkeit, wo das Windgesetz versagt.",
  "note.conditions.latitude_deg": "Ohne Angabe gilt die Normfallbeschleunigung 9.80665 m/s².",
  "note.conditions.later.first_at_s": "Die Uhrzeit der ersten Vorhersage.",
  "note.conditions.later.at_s": "Die Uhrzeit der späteren Vorhersage.",
  "note.conditions.later.start_at_s": "Wann die Fahrt beginnt.",
  "note.start.speed_m_s": "Tempo an der Startlinie.",
  "note.stops.every_m": "So weit liegen die Halte auseinander, vom Start an; einer im Ziel ist das Ziel.",
  "note.stops.time_s": "So lange steht man bei jedem Halt. Wer länger steht als geplant, tut das hier bei jedem Halt.",
  "note.feeding.every_s": "Wie oft man unterwegs isst oder trinkt, nach Fahrzeit ohne Halte.",
  "note.feeding.time_s": "So lange richtet man sich jedes Mal auf.",
  "note.feeding.cda_m2":
    "CdA, während man aufgerichtet isst oder trinkt: zwischen den Händen am Unterlenker, etwa 0.31 m², und an den Griffen, etwa 0.36 m². Nie weniger als in der Position selbst.",
  "note.model_error_share":
    "Der Modellfehler als Anteil einer Fahrzeit. Veröffentlichte Modelle lagen draußen im Mittel um 3.2 bis 3.9 % daneben, das ist eine Standardabweichung von 4 bis 5 %; etwa 3 % davon werden ihren Eingaben zugeschrieben, die hier für sich zählen.",
  "note.positions.yaw_table.yaw_deg": "Winkel zwischen dem Rad und dem scheinbaren Wind.",
  "note.positions.yaw_table.ratio":
    "Luftwiderstandsfläche in Fahrtrichtung bei diesem Anströmwinkel, geteilt durch die bei null Grad.",
  "note.with.power_w": "Leistung am Pedal.",
  "note.with.speed_m_s": "Geschwindigkeit über Grund.",
  "note.with.time_s": "Eine Fahrzeit als Ziel.",
  "note.with.other_start_at_s": "Ein anderer Start am selben Tag, zum Vergleich.",
  "note.with.target_time_s": "Eine Zielzeit, deren Chance gefragt ist.",
  "note.with.hold_s": "Wie lange eine Leistung gehalten werden soll.",
  "note.with.test_error_share":
    "Wie gut sich eine harte Belastung wiederholt: 20-Minuten-Tests von acht trainierten Fahrern auf 1.3 %, 4-Minuten-Tests auf 2.0 %.",
  "note.with.for_time_s": "Eine feste Fahrdauer.",
  "note.with.split_every_m": "Abstand der Zwischenzeiten; vorgegeben sind 5 Meilen.",
  "note.with.map_power_w": "Enden der Leistungen, die eine Karte umfasst.",
  "note.with.power_change": "Mehr Leistung, als Anteil.",
  "note.with.cda_change": "Änderung der Luftwiderstandsfläche, als Anteil; weniger ist negativ.",
  "note.with.lower_by_m2":
    "Um wie viel eine Luftwiderstandsfläche unter einer anderen liegt, wie ein gemeinsamer Test es ergibt.",
  "note.with.share": "Um welchen Anteil eine Änderung eine Zahl verändert; weniger ist negativ.",
  "note.with.chance": "Die Chance, dass etwas gelingt, was auch aus dem Rest wird.",
  "note.with.money": "Geld, das du ausgeben willst, oder was etwas kostet, in deiner eigenen Währung.",
  "note.with.hours_per_week":
    "Stunden, die du pro Woche zusätzlich aufwenden willst, oder was etwas pro Woche braucht.",
  "note.with.hours_once": "Stunden, die etwas einmalig braucht.",
  "note.with.weeks": "Wie viele Wochen lang.",
  "note.with.times_ridden": "Wie oft ein Rennen gefahren wird.",
  "note.with.rides_at_once": "Höchstzahl der Fahrten, die eine Anfrage ausrechnet.",
  "note.with.stature_m": "Größe im Stehen, aus der Segmentlängen geschätzt werden, die nicht angegeben sind.",
  "note.with.thigh_m": "Hüftgelenk bis Knie; ohne Angabe 0.245 der Körpergröße ± 3 %: eine Schätzung.",
  "note.with.shank_m": "Knie bis Sprunggelenk; ohne Angabe 0.246 der Körpergröße ± 3 %: eine Schätzung.",
  "note.with.foot_m":
    "Sprunggelenk bis Pedalachse; ohne Angabe 0.085 der Körpergröße ± 3 %: eine Schätzung, und der Sitz der Schuhplatte entscheidet.",
  "note.with.trunk_m": "Hüftgelenk bis Schultergelenk; ohne Angabe 0.288 der Körpergröße ± 3 %: eine Schätzung.",
  "note.with.upper_arm_m":
    "Vom Schultergelenk hinab zu den Armauflagen, der Oberarm senkrecht; ohne Angabe 0.186 der Körpergröße ± 3 %: eine Schätzung.",
  "note.with.hip_above_saddle_m":
    "Die Mitte des Hüftgelenks jenseits der Satteloberkante, entlang der Linie von der Kurbelachse.",
  "note.with.ankle_deg":
    "Zwischen Unterschenkel und der Linie vom Sprunggelenk zum Pedal, für ein Sprunggelenk, das sich nicht bewegt.",
  "note.with.foot_pitch_deg":
    "Wie weit die Linie vom Sprunggelenk zum Pedal im Mittel unter die Waagerechte zeigt, für ein Sprunggelenk, das sich bewegt.",
  "note.with.foot_swing_deg": "Wie weit diese Linie über eine Umdrehung zu beiden Seiten ihres Mittels ausschlägt.",
  "note.with.cadence_rpm": "Umdrehungen der Kurbel pro Minute.",
  "note.with.crank_m": "Von der Kurbelachse bis zur Pedalachse.",
  "note.with.saddle_height_m":
    "Von der Kurbelachse bis zur Oberkante des Sattels entlang der Sitzlinie; die Vorgabe setzt sie auf die klassischen 96 % der Hüfthöhe im Stehen über einem Pedal ganz unten.",
  "note.with.seat_angle_deg":
    "Effektiv: der Linie von der Kurbelachse zur Mitte des Hüftgelenks, über der Waagerechten nach hinten.",
  "note.with.torso_deg":
    "Der Linie vom Hüftgelenk zum Schultergelenk, über der Waagerechten; veröffentlichte Tests nahmen 0 bis 24°.",
  "note.with.bar_drop_m": "Von der Oberkante des Sattels senkrecht hinab bis auf die Höhe der Armauflagen.",
  "note.with.cda_correlation":
    "Wie die Fehler mehrerer Luftwiderstandsflächen zusammenhängen: fast 1 bei einem Test oder einer Schätzung, 0 bei Tests, die nichts gemeinsam haben.",
  "note.with.wind_head_m_s": "Gegenwind auf Höhe des Fahrers während einer Fahrt; Rückenwind ist negativ.",
  "note.with.coast_down_time_s": "Wie lange ein Ausrollen vom ersten bis zum letzten Tempo dauerte.",
  "note.with.coast_down_distance_m": "Wie weit ein Ausrollen vom ersten bis zum letzten Tempo ging.",
  "note.with.rules.braking_m_s2":
    "Stärker langsamer zu werden, als die Steigung erklärt, zählt ab hier als Bremsen; der Luftwiderstand allein macht 0.3 bis 0.5.",
  "note.with.rules.stopped_m_s": "Langsamer als das zählt als Stehen.",
  "note.with.rules.accelerating_m_s2":
    "Ohne Leistung stärker schneller zu werden, als das Gefälle erklärt, zählt ab hier als Lücke in der Aufzeichnung des Leistungsmessers.",
  "note.with.rules.bridged_s": "Eine Lücke der Aufzeichnung bis zu dieser Länge wird mit einer Geraden überbrückt.",
  "note.with.rules.allowed_s": "Eine Runde, von der nicht mehr als das unbrauchbar ist, bleibt im Test.",
  "note.with.speed_error_share":
    "Wie unsicher der Maßstab aller Tempi ist: 0.5 % ist ein Rad, dessen Umfang auf einen Zentimeter gemessen wurde.",
  "note.with.film.share": "Anteil der Zeit, in der ein Film den Fahrer so zeigt.",
  "note.with.plan.difference_share":
    "Der Unterschied zwischen zwei Positionen, den ein Test zeigen soll, als Anteil der Luftwiderstandsfläche.",
  "note.with.plan.run_cv_share":
    "Wie gut sich die Luftwiderstandsfläche einer Fahrt wiederholt; ein eigener Test sagt es.",
  "note.with.plan.power": "Wie oft ein Test einen Unterschied zeigen soll, den es gibt; üblich ist 4 von 5 Mal.",
  "note.with.plan.runs": "Wie viele Fahrten du in jeder Position machen willst.",
  "note.with.smooth_m":
    "Höhen werden über so viele Meter in jede Richtung gemittelt, weil Barometer und Karten um Meter irren und jedes Zittern den Anstieg vergrößert.",
  "note.with.from_m": "Wo die Strecke auf der aufgezeichneten Straße beginnt.",
  "note.with.to_m": "Wo die Strecke auf der aufgezeichneten Straße endet; ohne Angabe an ihrem Ende.",
  "note.with.times": "Wie oft die Strecke gefahren wird, Runde um Runde.",
  "note.with.most_points": "Wie viele Punkte der Strecke höchstens bleiben, damit sie in einen Link passt.",
  "note.with.least_w": "Die kleinste Leistung eines Plans; bei 0 darfst du rollen.",
  "note.with.greatest_w": "Die größte Leistung eines Plans, wie du sie etwa aus einer Kurve heraus fährst.",
  "note.with.targets": "Wie viele Leistungen du dir merken willst.",
  "note.with.round_w":
    "Die Leistungen eines Plans sind Vielfache davon; niemand hält eine Leistung auf ein Watt genau.",
  "note.with.sit_up.from_grade": "Du richtest dich auf, wo die Straße so steil steigt oder steiler.",
  "note.with.sit_up.cda_m2":
    "CdA aufrecht: zwischen den Händen am Unterlenker, etwa 0,31 m², und an den Bremsgriffen, etwa 0,36 m². Nie kleiner als in der Position selbst.",
  "note.with.sit_up.cp_gain_share":
    "Wie viel mehr kritische Leistung du aufrecht hast als in deiner Position. In einer Studie war sie an den Bremsgriffen höher; wie viel es bei dir ist, zeigt nur ein Test.",
  "note.with.after_running_out_share":
    "Was du hältst, wenn W′ aufgebraucht ist, als Anteil der kritischen Leistung: In einem zweiten Maximaltest, eine Minute nach dem ersten, war die Endleistung 7 % kleiner. Dass das bis ins Ziel so bleibt, ist angenommen.",
  "note.with.riders":
    "Wie viele Fahrer mit anderer kritischer Leistung und anderem W′ beide Pläne fahren; ohne Angabe keine.",
  "note.with.draws":
    "Wie viele Durchläufe ein Vergleich macht. Ohne wird sein ± für kleine Änderungen gerechnet; eine Strecke mit sehr vielen Punkten bekommt weniger.",
};
