// @ts-check
/** What the core says, by its English sentence as it stands there: `{name}` is the same in both, the core's nameless `{}` are `{0}`, `{1}` in their order. */

/** @type {Record<string, string>} */
export default {
  "{path} is not a number that can be used.": "{path} ist keine brauchbare Zahl.",
  "{path} is {is}; it is usually from {low} to {high}{space}{}.":
    "{path} ist {is}; üblich ist {low} bis {high}{space}{0}.",
  "Rider, bicycle, clothes and bottles together; the default is a usual rider.":
    "Fahrer, Rad, Kleidung und Flaschen zusammen; vorgegeben ist ein üblicher Fahrer.",
  "Good asphalt is customarily 0.003 to 0.005; tyre, pressure and warmth change it by a factor of two.":
    "Für guten Asphalt gelten gewöhnlich 0.003 bis 0.005; Reifen, Druck und Wärme ändern das um den Faktor zwei.",
  "A measured solo chain drive lost 2.1 ± 1.5 %; choose 1 if your meter sits in the wheel.":
    "Ein gemessener Kettenantrieb verlor 2.1 ± 1.5 %; nimm 1, wenn dein Leistungsmesser in der Nabe sitzt.",
  "The turning wheels weigh this much more when speed changes; both wheels of the 1998 model come to 1.45 kg.":
    "Um so viel schwerer wirken die drehenden Räder, wenn sich das Tempo ändert; die beiden Räder des Modells von 1998 ergeben 1.45 kg.",
  "Constant part of the wheel bearings' drag in the 1998 road model.":
    "Fester Anteil der Lagerreibung im Straßenmodell von 1998.",
  "Part of the wheel bearings' drag that grows with speed in the 1998 road model.":
    "Anteil der Lagerreibung im Straßenmodell von 1998, der mit dem Tempo wächst.",
  "The most a rider pushes the bicycle along with from rest; it matters for the first seconds only.":
    "Die größte Kraft, mit der ein Fahrer das Rad aus dem Stand antreibt; sie zählt nur in den ersten Sekunden.",
  "Sideways acceleration a rider accepts in a dry bend; it caps speed where the course has a radius.":
    "Querbeschleunigung, die ein Fahrer in einer trockenen Kurve hinnimmt; sie begrenzt das Tempo, wo die Strecke einen Radius hat.",
  "How hard a rider slows for a bend.": "Wie stark ein Fahrer vor einer Kurve bremst.",
  "On time-trial bars; published is 0.244 m², measured for one record rider in a tunnel. That a guess is worth ± 0.04 is assumed.":
    "Am Zeitfahrlenker; veröffentlicht sind 0.244 m², gemessen im Windkanal für einen Rekordfahrer. Dass eine Schätzung auf ± 0.04 genau ist, ist angenommen.",
  "Critical power here as a share of the position your power was tested in; 1 if it was tested in this one.":
    "Kritische Leistung hier als Anteil von der in der Haltung deiner Tests; 1, wenn es diese war.",
  "Position lowered critical power and left W′ alone in seven trained riders.":
    "Bei sieben trainierten Fahrern senkte die Haltung die kritische Leistung und ließ W′ unberührt.",
  "How CdA changes with air speed; no single published figure, so 0 unless measured.":
    "Wie sich CdA mit dem Fahrtwind ändert; eine einzelne veröffentlichte Zahl gibt es nicht, also 0, wenn nichts gemessen ist.",
  "The air speed at which CdA was measured; it matters only with a speed exponent.":
    "Der Fahrtwind, bei dem CdA gemessen wurde; er zählt nur mit einem Tempo-Exponenten.",
  "CdA once the position is lost; no published figure was found, so film yourself and measure it.":
    "CdA, wenn die Haltung verloren ist; eine veröffentlichte Zahl fand sich nicht, also film dich und miss sie.",
  "When the position begins to creep up.": "Wann die Haltung langsam höher wird.",
  "When the position is wholly lost.": "Wann die Haltung ganz verloren ist.",
  "Share of the ride spent out of the position: head up or down, sitting up for a junction.":
    "Anteil der Fahrt außerhalb der Haltung: Kopf hoch oder tief, Aufrichten an einer Kreuzung.",
  "CdA during a lapse.": "CdA während eines Aussetzers.",
  "Mean CdA over the first third of a steady test; its middle stands for the time at a sixth of the test.":
    "Mittlere CdA im ersten Drittel eines gleichmäßigen Tests; seine Mitte steht für den Zeitpunkt nach einem Sechstel.",
  "Mean CdA over the last third; the whole rise is one and a half times the difference of the thirds.":
    "Mittlere CdA im letzten Drittel; der ganze Anstieg ist das Anderthalbfache des Unterschieds der Drittel.",
  "Length of the test; what happens to CdA after it is not known and taken to stay.":
    "Dauer des Tests; was danach mit CdA geschieht, ist nicht bekannt und wird als gleichbleibend genommen.",
  "What it adds to CdA; the shapes of time-trial helmets differed by less than 1.5 % with the head kept still.":
    "Was es zur CdA hinzufügt; Formen von Zeitfahrhelmen unterschieden sich bei stillem Kopf um weniger als 1.5 %.",
  "What it adds to the mass; weigh it.": "Was es zur Masse hinzufügt; wieg es.",
  "Critical power; recreational cyclists are customarily put at 200 to 260 W.":
    "Kritische Leistung; Hobbyfahrern werden gewöhnlich 200 bis 260 W zugeschrieben.",
  "Work above critical power; twelve laboratory sets averaged 16.9 ± 3.2 kJ.":
    "Arbeit über der kritischen Leistung; zwölf Laborreihen ergaben im Mittel 16.9 ± 3.2 kJ.",
  "Power at the first instant of an all-out effort.": "Leistung im ersten Augenblick einer Höchstbelastung.",
  "Share of critical power lost for each e-fold of time past half an hour; eight trained riders' 60-minute power implies 9 %, and the ± is assumed.":
    "Anteil der kritischen Leistung, der nach einer halben Stunde mit jeder e-fachen Zeit verloren geht; die 60-Minuten-Leistung von acht trainierten Fahrern bedeutet 9 %, das ± ist angenommen.",
  "The long-ride loss in watts, as older files give it: 9 % of a critical power of 245 W.":
    "Der Verlust auf langer Fahrt in Watt, wie ältere Dateien ihn angeben: 9 % einer kritischen Leistung von 245 W.",
  "By what share the power meter reads high: 54 meters of 9 makers were off by -0.9 ± 3.2 %. It counts for what was measured with it.":
    "Um welchen Anteil der Leistungsmesser zu hoch zeigt: 54 Geräte von 9 Herstellern lagen um -0.9 ± 3.2 % daneben. Er zählt für alles, was damit gemessen wurde.",
  "54 power meters of 9 makers deviated by −0.9 ± 3.2 %; each repeated itself to 1.2 ± 0.9 %.":
    "54 Leistungsmesser von 9 Herstellern wichen um −0.9 ± 3.2 % ab; jeder wiederholte sich auf 1.2 ± 0.9 %.",
  "{field} stands in place of long_ride_loss_share: give one of them.":
    "{field} steht anstelle von long_ride_loss_share: gib eines von beiden an.",
  "From when the long-ride loss counts.": "Ab wann der Verlust auf langer Fahrt zählt.",
  "How the errors of critical power and W′ go together; a fit of both to the same efforts gives it, and it is below 0.":
    "Wie die Fehler von kritischer Leistung und W′ zusammenhängen; eine Anpassung beider an dieselben Belastungen ergibt es, und es liegt unter 0.",
  "How long a hard effort lasted.": "Wie lange eine harte Belastung dauerte.",
  "Mean power of a hard effort.": "Mittlere Leistung einer harten Belastung.",
  "How far an event is; time trials are customarily held over 10, 25, 50 and 100 miles.":
    "Wie lang ein Rennen ist; Zeitfahren gehen gewöhnlich über 10, 25, 50 und 100 Meilen.",
  "Along the road; the default is 25 miles.": "Entlang der Straße; vorgegeben sind 25 Meilen.",
  "Rise over run.": "Anstieg durch waagerechte Strecke.",
  "The way the road leads at the start, clockwise from north.":
    "Wohin die Straße am Start führt, im Uhrzeigersinn von Norden.",
  "Along the road from the start.": "Entlang der Straße ab dem Start.",
  "Above sea level.": "Über dem Meer.",
  "Radius of the bend from this point to the next.": "Radius der Kurve von diesem Punkt bis zum nächsten.",
  "The default is the standard atmosphere's at sea level.": "Vorgegeben ist die Normatmosphäre auf Meereshöhe.",
  "Left out, it is the standard atmosphere's at this altitude.":
    "Ohne Angabe ist es die Normatmosphäre in dieser Höhe.",
  "May stand in place of the humidity.": "Darf an die Stelle der Luftfeuchte treten.",
  "As the forecast gives it, at the wind's height.": "Wie die Vorhersage ihn angibt, in der Höhe des Windes.",
  "Where the wind comes from, clockwise from north.": "Woher der Wind kommt, im Uhrzeigersinn von Norden.",
  "Forecasts give the wind at 10 m.": "Vorhersagen geben den Wind in 10 m Höhe an.",
  "Height at which the rider meets the wind.": "Höhe, in der der Wind den Fahrer trifft.",
  "Of the land around: 0.03 open grass, 0.1 low crops, 0.25 hedges and trees; above 0.06 the law is only indicative at 1.2 m.":
    "Des Geländes ringsum: 0.03 offenes Grasland, 0.1 niedriger Bewuchs, 0.25 Hecken und Bäume; über 0.06 gilt das Gesetz in 1.2 m Höhe nur ungefähr.",
  "Share of the forecast wind that reaches the rider; stands in for the roughness where the wind law fails.":
    "Anteil des vorhergesagten Windes, der den Fahrer erreicht; tritt an die Stelle der Rauigkeit, wo das Windgesetz versagt.",
  "Left out, gravity is the standard 9.80665 m/s².": "Ohne Angabe gilt die Normfallbeschleunigung 9.80665 m/s².",
  "Speed at the line.": "Tempo an der Startlinie.",
  "The model's own error as a share of a finish time. Published models missed by 3.2 to 3.9 % on average outdoors, a standard deviation of 4 to 5 %; about 3 % of that is put down to their inputs, which count by themselves here.":
    "Der Modellfehler als Anteil einer Fahrzeit. Veröffentlichte Modelle lagen draußen im Mittel um 3.2 bis 3.9 % daneben, das ist eine Standardabweichung von 4 bis 5 %; etwa 3 % davon werden ihren Eingaben zugeschrieben, die hier für sich zählen.",
  "Angle between the bicycle and the apparent wind.": "Winkel zwischen dem Rad und dem scheinbaren Wind.",
  "Axial drag area at this yaw over that at zero yaw.":
    "Luftwiderstandsfläche in Fahrtrichtung bei diesem Anströmwinkel, geteilt durch die bei null Grad.",
  "Power at the pedals.": "Leistung am Pedal.",
  "Speed over the ground.": "Geschwindigkeit über Grund.",
  "A finish time to aim at.": "Eine Fahrzeit als Ziel.",
  "A fixed time to ride for.": "Eine feste Fahrdauer.",
  "Distance between splits; the default is 5 miles.": "Abstand der Zwischenzeiten; vorgegeben sind 5 Meilen.",
  "Ends of the powers that a map spans.": "Enden der Leistungen, die eine Karte umfasst.",
  "More power, as a share.": "Mehr Leistung, als Anteil.",
  "Change of drag area, as a share; less is negative.":
    "Änderung der Luftwiderstandsfläche, als Anteil; weniger ist negativ.",
  "By how much one drag area lies below another, as one test of both gives it.":
    "Um wie viel eine Luftwiderstandsfläche unter einer anderen liegt, wie ein gemeinsamer Test es ergibt.",
  "How many draws a comparison takes; none leaves it at first order, and a course of very many points gets fewer.":
    "Wie viele Ziehungen ein Vergleich macht; ohne bleibt er bei der ersten Ordnung, und eine Strecke mit sehr vielen Punkten bekommt weniger.",
  "{field} is {is}; it runs from {low} to {high}{space}{unit}.":
    "{field} ist {is}; erlaubt ist {low} bis {high}{space}{unit}.",
  "with.for_time_s fixes the time already; a target time says it twice.":
    "with.for_time_s legt die Zeit schon fest; eine Zielzeit sagt es doppelt.",
  "Without a long-ride loss the power curve overstates what can be held for an hour, by 5 % or more.":
    "Ohne Verlust auf langer Fahrt überschätzt die Leistungskurve, was sich eine Stunde halten lässt, um 5 % oder mehr.",
  "Below two minutes the power curve needs a peak power.":
    "Unter zwei Minuten braucht die Leistungskurve eine Spitzenleistung.",
  "The apparent wind comes from beyond {}°, the last row of your yaw table.":
    "Der scheinbare Wind kommt von jenseits der {0}°, der letzten Zeile deiner Tabelle der Anströmwinkel.",
  "This asks {asked_w} W; your power curve allows {allowed_w} W for that long.":
    "Das verlangt {asked_w} W; deine Leistungskurve erlaubt so lange {allowed_w} W.",
  "The course spans {} m of height; the air is taken as one density, and thins by about 1 % in 90 m.":
    "Die Strecke umfasst {0} Höhenmeter; die Luft gilt als überall gleich dicht, wird aber je 90 m um etwa 1 % dünner.",
  "A fixed finish time leaves nothing to compare; give a power or the best even effort.":
    "Eine feste Fahrzeit lässt nichts zu vergleichen; gib eine Leistung an oder „gleichmäßig am Limit“.",
  "The low position neither fades nor lapses here; say when it goes, or both are simply held.":
    "Die tiefe Haltung lässt hier weder nach noch setzt sie aus; sag, wann sie verloren geht, sonst werden beide einfach gehalten.",
  "The low position would begin to go only after the finish.": "Die tiefe Haltung würde erst nach dem Ziel nachlassen.",
  "There is no such question; there are {known}.": "Diese Frage gibt es nicht; es gibt {known}.",
  "{path} must run from the lower to the higher.": "{path} muss vom kleineren zum größeren Wert gehen.",
  "The request is larger than {} bytes, the most that is read.":
    "Die Anfrage ist größer als {0} Byte; mehr wird nicht gelesen.",
  "The request is not JSON: {}.": "Die Anfrage ist kein JSON: {0}.",
  "{field} does not belong to this kind of effort.": "{field} gehört nicht zu dieser Art von Belastung.",
  "{field} is missing.": "{field} fehlt.",
  "The rider comes to a stop after {} m: too little power for this road and wind.":
    "Der Fahrer kommt nach {0} m zum Stehen: zu wenig Leistung für diese Straße und diesen Wind.",
  "No power from 1 to 2500 W gives this time on this course.":
    "Keine Leistung von 1 bis 2500 W ergibt diese Zeit auf dieser Strecke.",
  "This power curve falls to nothing before the finish.": "Diese Leistungskurve fällt vor dem Ziel auf null.",
  "Give with.power_w or with.speed_m_s, not both.": "Gib with.power_w oder with.speed_m_s an, nicht beides.",
  "The road and the wind push more than this speed needs: no pedalling, some braking.":
    "Straße und Wind schieben mehr, als dieses Tempo braucht: kein Treten, etwas Bremsen.",
  "From rest this rider could not start here.": "Aus dem Stand käme dieser Fahrer hier nicht los.",
  "In this wind more than one steady speed takes these watts; the highest is shown.":
    "In diesem Wind kosten mehrere gleichmäßige Geschwindigkeiten diese Watt; gezeigt ist die höchste.",
  "There is no such position.": "Diese Haltung gibt es nicht.",
  "There is no position: give at least one.": "Es gibt keine Haltung: Gib mindestens eine an.",
  "{field} is not a day such as 2026-05-01.": "{field} ist kein Tag wie 2026-05-01.",
  "There is no event: give at least one, or leave events out.":
    "Es gibt kein Rennen: Gib mindestens eines an, oder lass sie ganz weg.",
  "scenario.course.{field} does not belong to a {kind} course.":
    "scenario.course.{field} gehört nicht zu einer Strecke der Art „{kind}“.",
  "Give scenario.conditions.dew_point_c or relative_humidity, not both.":
    "Gib scenario.conditions.dew_point_c oder relative_humidity an, nicht beides.",
  "Give scenario.conditions.shelter_factor or roughness_length_m, not both.":
    "Gib scenario.conditions.shelter_factor oder roughness_length_m an, nicht beides.",
  "scenario.conditions.dew_point_c is above the temperature, which cannot be.":
    "scenario.conditions.dew_point_c liegt über der Temperatur, was nicht sein kann.",
  "The wind law is only indicative so close to rough ground; a stated shelter may serve better.":
    "So nah an rauem Boden gilt das Windgesetz nur ungefähr; ein angegebener Schutz mag besser passen.",
  "The pressure at the course comes out beyond 500 to 1100 hPa.":
    "Der Druck an der Strecke ergibt sich außerhalb von 500 bis 1100 hPa.",
  "{sd_path} is not a number that can be used.": "{sd_path} ist keine brauchbare Zahl.",
  "There are more than {most} {things}.": "Es gibt mehr als {most} {things}.",
  "pieces of equipment": "Ausrüstungsteile",
  "kinds of lapse": "Arten von Aussetzern",
  positions: "Haltungen",
  efforts: "Belastungen",
  events: "Rennen",
  points: "Punkte",
  "{field} is longer than {} bytes.": "{field} ist länger als {0} Byte.",
  "{field} must be above cp_w.": "{field} muss über cp_w liegen.",
  "{field} must not be before begins_s.": "{field} darf nicht vor begins_s liegen.",
  "{field} stands in place of fade: give one of them.": "{field} steht an der Stelle von fade: Gib eines davon an.",
  "{field} names a piece of equipment that is not there.": "{field} nennt ein Ausrüstungsteil, das es nicht gibt.",
  "{path} come to more than the whole time together.": "{path} ergeben zusammen mehr als die ganze Zeit.",
  "The course has {before} points; it is ridden over {after} that keep its shape.":
    "Die Strecke hat {before} Punkte; gefahren wird über {after}, die ihre Form behalten.",
  "{path} has more than {} rows.": "{path} hat mehr als {0} Zeilen.",
  "{field} must be larger than the row before.": "{field} muss größer sein als in der Zeile davor.",
  "A profile needs at least two points.": "Ein Profil braucht mindestens zwei Punkte.",
  "{field} must be at least 0.1 m beyond the point before.":
    "{field} muss mindestens 0.1 m hinter dem Punkt davor liegen.",
  "The road to point {i} rises by {} %, more than is ridden.":
    "Die Straße zu Punkt {i} steigt um {0} %, mehr als sich fahren lässt.",
  "This was saved by a newer version ({version}); this one reads version {VERSION}. It is left as it is.":
    "Das stammt von einer neueren Fassung ({version}); diese liest Fassung {VERSION}. Es bleibt, wie es ist.",
  "scenario.fasterby is {version}; the oldest version is {OLDEST}.":
    "scenario.fasterby ist {version}; die älteste Fassung ist {OLDEST}.",
  "A curve that levels off at CP overstates an hour: in trained riders CP was 323 W and the hour 309 W.":
    "Eine Kurve, die bei CP flach wird, überschätzt die Stunde: Bei trainierten Fahrern war CP 323 W und die Stunde 309 W.",
  "A longer effort was harder than this one, so it was not all you had: the curve leaves it out.":
    "Eine längere Belastung war härter als diese, also war diese nicht dein Maximum: Die Kurve lässt sie weg.",
  "A peak power; CP comes out lower and W′ higher than with two parameters.":
    "Eine Spitzenleistung; CP fällt niedriger und W′ höher aus als mit zwei Parametern.",
  "A power law describes efforts under 2 and over 15 minutes better than the hyperbola.":
    "Ein Potenzgesetz beschreibt Belastungen unter 2 und über 15 Minuten besser als die Hyperbel.",
  "All efforts are under ten minutes: CP comes out too high, whatever the model. One of 12 to 20 minutes helps most.":
    "Alle Belastungen sind kürzer als zehn Minuten: CP fällt zu hoch aus, bei jedem Modell. Eine von 12 bis 20 Minuten hilft am meisten.",
  "An effort under two minutes bends a two-parameter curve: CP comes out too high and W′ too low.":
    "Eine Belastung unter zwei Minuten verbiegt eine Kurve mit zwei Parametern: CP fällt zu hoch und W′ zu niedrig aus.",
  "Beyond {minutes} minutes, your longest effort, the curve is a guess.":
    "Jenseits von {minutes} Minuten, deiner längsten Belastung, ist die Kurve geraten.",
  "Critical power.": "Kritische Leistung.",
  "Efforts of one length do not tell CP from W′: W′ is taken as riders usually have it. Add one much shorter or longer.":
    "Belastungen gleicher Dauer trennen CP nicht von W′: W′ gilt so, wie es üblich ist. Nimm eine viel kürzere oder längere dazu.",
  "How long a power is to be held.": "Wie lange eine Leistung gehalten werden soll.",
  "How well a hard effort repeats: 20-minute trials of eight trained riders to 1.3 %, 4-minute trials to 2.0 %.":
    "Wie gut sich eine harte Belastung wiederholt: 20-Minuten-Tests von acht trainierten Fahrern auf 1.3 %, 4-Minuten-Tests auf 2.0 %.",
  "No curve of a rider goes through these efforts; your own CP and W′ are shown.":
    "Keine Kurve eines Fahrers geht durch diese Belastungen; gezeigt sind deine eigenen CP und W′.",
  "One effort does not tell CP from W′: W′ is taken as riders usually have it. An effort of another length would tell them apart.":
    "Eine Belastung trennt CP nicht von W′: W′ gilt so, wie es üblich ist. Eine Belastung anderer Dauer würde sie trennen.",
  "Power declines with the logarithm of time past seven minutes.":
    "Nach sieben Minuten sinkt die Leistung mit dem Logarithmus der Zeit.",
  "Recovery of W′ in four elite riders: a time constant of 2287.2 D^(−0.688) s.":
    "Erholung von W′ bei vier Spitzenfahrern: Zeitkonstante 2287.2 D^(−0.688) s.",
  "The forms of the relation; five of them gave sixteen men a mean CP of 195 to 242 W from the same trials.":
    "Die Formen der Beziehung; fünf davon ergaben aus denselben Tests für sechzehn Männer eine mittlere CP von 195 bis 242 W.",
  "This effort lies well below the curve of the others: it does not look like all you had.":
    "Diese Belastung liegt weit unter der Kurve der anderen: Sie sieht nicht nach deinem Maximum aus.",
  "Two efforts fix a curve but cannot check it; a third of another length would.":
    "Zwei Belastungen legen eine Kurve fest, können sie aber nicht prüfen; eine dritte anderer Dauer könnte es.",
  "Two hours of heavy riding took 8 % of CP and 20 % of W′.":
    "Zwei Stunden harte Fahrt kosteten 8 % von CP und 20 % von W′.",
  "W′ balance in integral form, and the time constant of its recovery.":
    "W′-Bilanz in Integralform und die Zeitkonstante ihrer Erholung.",
  "Air about 20 % thinner at 2300 m.": "Luft, die in 2300 m Höhe etwa 20 % dünner ist.",
  "Up to 6.4 % of drag between two head positions; less than 1.5 % between helmet shapes with the head kept still (15 m/s, computed flow).":
    "Bis zu 6.4 % Luftwiderstand zwischen zwei Kopfhaltungen; weniger als 1.5 % zwischen Helmformen bei stillem Kopf (15 m/s, berechnete Strömung).",
  "A suit that cuts drag by 3.9 % saves about 44 s over 55 km.":
    "Ein Anzug, der den Luftwiderstand um 3.9 % senkt, spart auf 55 km etwa 44 s.",
  "The usual expression for air power holds only for pure head or tail wind.":
    "Die übliche Formel für die Leistung gegen die Luft gilt nur bei reinem Gegen- oder Rückenwind.",
  "Above 14 m/s on the level about 90 % of the power goes into the air.":
    "Über 14 m/s in der Ebene gehen etwa 90 % der Leistung in die Luft.",
  "W′ 16.9 ± 3.2 kJ, CP 282 ± 44 W.": "W′ 16.9 ± 3.2 kJ, CP 282 ± 44 W.",
  "Power at the anaerobic threshold −16 ± 20 W at a torso angle of 12° in eleven riders; the low position won all the same.":
    "Leistung an der anaeroben Schwelle −16 ± 20 W bei einem Rumpfwinkel von 12° bei elf Fahrern; die tiefe Haltung gewann trotzdem.",
  "4 min 417 W, 20 min 342 W, 60 min 309 W; CP 323 W. The 20-minute trial repeats to 1.3 %, the 4-minute trial and CP to 2.0 %.":
    "4 min 417 W, 20 min 342 W, 60 min 309 W; CP 323 W. Der 20-Minuten-Test wiederholt sich auf 1.3 %, der 4-Minuten-Test und CP auf 2.0 %.",
  "Training raised critical power in both cycling studies reviewed; W′ usually did not rise.":
    "Training hob in beiden ausgewerteten Radstudien die kritische Leistung; W′ stieg meist nicht.",
  "Temperature, pressure and density by altitude.": "Temperatur, Druck und Dichte je Höhe.",
  "Seven trained riders: CP lower in the time-trial position, W′ not different.":
    "Sieben trainierte Fahrer: CP in der Zeitfahrhaltung niedriger, W′ nicht anders.",
  "Highly trained cyclists, four weeks of intervals: 40-km trial 4.4 to 5.8 % better, peak aerobic power 3.0 to 6.2 % higher.":
    "Hochtrainierte Fahrer, vier Wochen Intervalle: Zeitfahren über 40 km 4.4 bis 5.8 % besser, maximale aerobe Leistung 3.0 bis 6.2 % höher.",
  "The power balance on the road; its validation (R² 0.97, standard error 2.7 W) was read, its constants are from memory.":
    "Die Leistungsbilanz auf der Straße; ihre Prüfung (R² 0.97, Standardfehler 2.7 W) wurde gelesen, ihre Konstanten stammen aus dem Gedächtnis.",
  "53.040 km in the hour at an estimated 509.5 W; CdA 0.244 m² in a tunnel.":
    "53.040 km in der Stunde bei geschätzten 509.5 W; CdA 0.244 m² im Windkanal.",
  "Riders trained upright used 5.1 % more oxygen in the aero position; riders trained in it 1.3 %, not significant.":
    "Aufrecht trainierte Fahrer brauchten in der Zeitfahrhaltung 5.1 % mehr Sauerstoff; darin trainierte 1.3 %, nicht signifikant.",
  "Density of moist air.": "Dichte feuchter Luft.",
  "Lower bars: CdA −10.7 ± 3.1 %, power −9.5 ± 5.4 %, five riders.":
    "Tieferer Lenker: CdA −10.7 ± 3.1 %, Leistung −9.5 ± 5.4 %, fünf Fahrer.",
  "The power–duration relation for seconds to hours.": "Die Beziehung von Leistung und Dauer von Sekunden bis Stunden.",
  "Models missed real finish times by 3.87 % on average, 3.22 % with a CdA that changes with speed.":
    "Modelle verfehlten echte Fahrzeiten im Mittel um 3.87 %, um 3.22 % mit einer CdA, die sich mit dem Tempo ändert.",
  "W′ balance in differential form; it exists and follows measured recovery, its equation is from memory.":
    "W′-Bilanz in Differentialform; es gibt sie, und sie folgt gemessener Erholung, ihre Gleichung stammt aus dem Gedächtnis.",
  "A solo chain drive loses 2.1 ± 1.5 % at 100 to 400 W.": "Ein Kettenantrieb verliert bei 100 bis 400 W 2.1 ± 1.5 %.",
  "Gravity by latitude.": "Fallbeschleunigung je geografischer Breite.",
  "Roughness lengths of landscapes.": "Rauigkeitslängen von Landschaften.",
  "By what share of itself a change moves a number; less is negative.":
    "Um welchen Anteil eine Änderung eine Zahl verändert; weniger ist negativ.",
  "The chance that something comes off, whatever becomes of the rest.":
    "Die Chance, dass etwas gelingt, was auch aus dem Rest wird.",
  "Money to spend, or what something costs, in your own currency.":
    "Geld, das du ausgeben willst, oder was etwas kostet, in deiner eigenen Währung.",
  "Hours to spend every week beyond what you do now, or what something takes every week.":
    "Stunden, die du pro Woche zusätzlich aufwenden willst, oder was etwas pro Woche braucht.",
  "Hours that something takes once.": "Stunden, die etwas einmalig braucht.",
  "For how many weeks.": "Wie viele Wochen lang.",
  "How often an event is ridden.": "Wie oft ein Rennen gefahren wird.",
  "The most rides that one request works out.": "Höchstzahl der Fahrten, die eine Anfrage ausrechnet.",
  "{path} takes a field with by or share, or use_position.":
    "{path} braucht field mit by oder share, oder use_position.",
  "{path}.field is {short}, which is not a number of this scenario.":
    "{path}.field ist {short}; das ist keine Zahl dieses Szenarios.",
  "{} is longer than {} bytes.": "{0} ist länger als {1} Byte.",
  "{} has more than {MOST_CHANGES} changes.": "{0} hat mehr als {MOST_CHANGES} Änderungen.",
  "with.times_ridden needs one number for each of scenario.events.":
    "with.times_ridden braucht eine Zahl für jedes von scenario.events.",
  "There are more than {MOST_ITEMS} candidates.": "Es sind mehr als {MOST_ITEMS} Änderungen.",
  "These candidates change too many different numbers to compare every set of them; leave some out.":
    "Diese Änderungen betreffen zu viele verschiedene Zahlen, um alle Kombinationen zu vergleichen; lass einige weg.",
  "Together these changes leave a ride that cannot be ridden.":
    "Mit diesen Änderungen zusammen lässt sich die Strecke nicht fahren.",
  "So many blocks of weeks overlap that not every schedule was tried; a better set may fit.":
    "So viele Wochenblöcke überschneiden sich, dass nicht jeder Zeitplan geprüft wurde; vielleicht passt eine bessere Auswahl.",
  "{path} is {short}, which is no change of this list.":
    "{path} ist {short}; diese Änderung steht nicht auf der Liste.",
  "{path} leads back to itself: one of the changes must come first.":
    "{path} führt auf sich selbst zurück: Eine der Änderungen muss die erste sein.",
  "with.so_far is not what an earlier asking of the same question gave.":
    "with.so_far ist nicht, was eine frühere Anfrage derselben Frage ergab.",
  "Nineteen trained men: all maximal variables fell with a lower torso, 0° being unlike every other position.":
    "Neunzehn trainierte Männer: Alle Höchstwerte sanken mit tieferem Oberkörper, 0° unterschied sich von jeder anderen Haltung.",
  "Modelled 40-km times of novices to elites: aerodynamic frame −1:17 to −1:44, wheels −60 to −82 s, a better position −2 to −2.5 min.":
    "Berechnete 40-km-Zeiten vom Neuling bis zur Spitze: aerodynamischer Rahmen −1:17 bis −1:44, Laufräder −60 bis −82 s, eine bessere Haltung −2 bis −2.5 min.",
  "Seven men and seven women in a tunnel: bar height matters more than elbow width, and the best varies between riders.":
    "Sieben Männer und sieben Frauen im Windkanal: Die Lenkerhöhe zählt mehr als die Ellbogenbreite, und das Beste ist von Fahrer zu Fahrer verschieden.",
  "A third of the published change of lower bars (CdA −10.7 ± 3.1 %); the power that riders who train in the position lost (1.3 %, not significant), taken to be lost in full.":
    "Ein Drittel der veröffentlichten Änderung durch tiefere Lenker (CdA −10.7 ± 3.1 %); die Leistung, wie Fahrer sie verlieren, die in der Haltung trainieren (1.3 %, nicht signifikant), ganz als Verlust gerechnet.",
  "Sizes assumed. All measures of power fell with a lower torso in nineteen riders; the lowest torso was the worst for them.":
    "Größen angenommen. Bei neunzehn Fahrern sanken alle Maße der Leistung mit tieferem Oberkörper; der tiefste war für sie der schlechteste.",
  "Small and individual: bar height matters more than width, and the best differs between riders. Size assumed.":
    "Klein und von Person zu Person verschieden: Die Lenkerhöhe zählt mehr als die Breite. Größe angenommen.",
  "Two head positions differed by up to 6.4 % of drag at 15 m/s; a third of that, held with the eyes on the road, is assumed.":
    "Zwei Kopfhaltungen unterschieden sich bei 15 m/s um bis zu 6.4 % des Luftwiderstands; ein Drittel davon, mit dem Blick auf der Straße, ist angenommen.",
  "A whole suit cut drag by 3.9 % at 53 km/h; less is likely over clothes that fit already, or at lower speed.":
    "Ein ganzer Anzug senkte den Luftwiderstand bei 53 km/h um 3.9 %; weniger ist zu erwarten, wenn die Kleidung schon sitzt oder du langsamer fährst.",
  "Shapes differed by less than 1.5 % with the head held alike: half of that is assumed. Not every helmet suits every head.":
    "Formen unterschieden sich bei gleicher Kopfhaltung um weniger als 1.5 %: Die Hälfte davon ist angenommen. Nicht jeder Helm passt zu jedem Kopf.",
  "Tyre, pressure and warmth are customarily said to change rolling resistance by a factor of two.":
    "Reifen, Druck und Wärme sollen den Rollwiderstand um den Faktor zwei ändern.",
  "A chain drive lost 2.1 ± 1.5 %; that care saves a quarter of it is assumed.":
    "Ein Kettenantrieb verlor 2.1 ± 1.5 %; dass Pflege ein Viertel davon spart, ist angenommen.",
  "Times here are those of an even effort already; what uneven riding loses is assumed.":
    "Die Zeiten hier sind schon die einer gleichmäßigen Leistung; was ungleichmäßiges Fahren verliert, ist angenommen.",
  "Saves time only on a course given with its bends. Practise away from traffic and never to the limit. Size assumed.":
    "Spart nur auf einer Strecke Zeit, deren Kurven eingetragen sind. Übe abseits vom Verkehr und nie bis an die Grenze. Größe angenommen.",
  "Two sessions a week raised highly trained riders' peak aerobic power by 3.0 to 6.2 %; critical power is taken to follow it.":
    "Zwei Einheiten pro Woche hoben die maximale aerobe Leistung sehr gut Trainierter um 3.0 bis 6.2 %; dass die kritische Leistung ihr folgt, ist angenommen.",
  "Riders who train already are said to gain 2 to 6 % over a season.":
    "Wer schon trainiert, soll in einer Saison 2 bis 6 % gewinnen.",
  "Untrained people are said to raise critical power by 10 to 15 % in six to eight weeks.":
    "Untrainierte sollen ihre kritische Leistung in sechs bis acht Wochen um 10 bis 15 % heben.",
  "Give with.{name}.bar_drop_m or {field}, not both.": "Gib with.{name}.bar_drop_m oder {field} an, nicht beides.",
  "The leg is nearly straight there: a few millimetres of saddle move all of this a great deal.":
    "Das Bein ist dort fast gestreckt: Wenige Millimeter Sattel ändern das alles sehr.",
  "The trunk is too short for pads at this height: the shoulders would not meet them.":
    "Der Rumpf ist zu kurz für Armauflagen in dieser Höhe: Die Schultern kämen nicht hin.",
  "The leg is too long to fold up to the pedal from {from}° to {to}° of the crank, by {millimetres} mm at {worst}°.":
    "Das Bein ist von {from}° bis {to}° Kurbelwinkel zu lang, um sich zum Pedal zu falten, um {millimetres} mm bei {worst}°.",
  "The leg is too short for the pedal from {from}° to {to}° of the crank, by {millimetres} mm at {worst}°.":
    "Das Bein ist von {from}° bis {to}° Kurbelwinkel zu kurz für das Pedal, um {millimetres} mm bei {worst}°.",
  "A knee 25 to 30° short of straight at the bottom is advised; evidence on injury is limited.":
    "Empfohlen wird ein Knie, dem unten 25 bis 30° zur Streckung fehlen; Belege zu Verletzungen sind spärlich.",
  "A knee set 25° short of straight at rest was 29.0 ± 4.6° short when pedalling.":
    "Einem Knie, dem in Ruhe 25° zur Streckung fehlten, fehlten beim Treten 29.0 ± 4.6°.",
  "Ankle to pedal axle; left out, 0.085 of the stature ± 3 %: a guess, and where the cleat sits decides.":
    "Knöchel bis Pedalachse; ohne Angabe 0.085 der Körpergröße ± 3 %: eine Schätzung, und der Sitz der Schuhplatte entscheidet.",
  "Axle to pedal axle.": "Von der Kurbelachse bis zur Pedalachse.",
  "Between shank and the line from ankle to pedal, for an ankle that does not move.":
    "Zwischen Unterschenkel und der Linie vom Knöchel zum Pedal, für einen Knöchel, der sich nicht bewegt.",
  "Crank length is no factor in power from 165 to 180 mm.":
    "Von 165 bis 180 mm spielt die Kurbellänge für die Leistung keine Rolle.",
  "Crank's axle to the top of the saddle along the seat line; the default puts the saddle top at the classic 96 % of the hip's standing height above a pedal at the bottom.":
    "Von der Kurbelachse bis zur Oberkante des Sattels entlang der Sitzlinie; die Vorgabe setzt sie auf die klassischen 96 % der Hüfthöhe im Stehen über einem Pedal ganz unten.",
  "Effective: of the line from the crank's axle to the hip joint's centre, above the horizontal behind.":
    "Effektiv: der Linie von der Kurbelachse zur Mitte des Hüftgelenks, über der Waagerechten nach hinten.",
  "From the top of the saddle straight down to the height of the arm pads.":
    "Von der Oberkante des Sattels senkrecht hinab bis auf die Höhe der Armauflagen.",
  "Hip joint to knee; left out, 0.245 of the stature ± 3 %: a guess.":
    "Hüftgelenk bis Knie; ohne Angabe 0.245 der Körpergröße ± 3 %: eine Schätzung.",
  "Hip joint to shoulder joint; left out, 0.288 of the stature ± 3 %: a guess.":
    "Hüftgelenk bis Schultergelenk; ohne Angabe 0.288 der Körpergröße ± 3 %: eine Schätzung.",
  "How far that line swings to either side of its mean over a turn.":
    "Wie weit diese Linie über eine Umdrehung zu beiden Seiten ihres Mittels ausschlägt.",
  "How far the line from ankle to pedal points below the horizontal, in the mean, for an ankle that moves.":
    "Wie weit die Linie vom Knöchel zum Pedal im Mittel unter die Waagerechte zeigt, für einen Knöchel, der sich bewegt.",
  "Knee to ankle; left out, 0.246 of the stature ± 3 %: a guess.":
    "Knie bis Knöchel; ohne Angabe 0.246 der Körpergröße ± 3 %: eine Schätzung.",
  "Lengths of body segments as shares of the stature; the attribution was read, the shares are from memory.":
    "Längen von Körpersegmenten als Anteile der Körpergröße; die Zuschreibung wurde gelesen, die Anteile sind aus dem Gedächtnis.",
  "Of the line from hip joint to shoulder joint, above the horizontal; published tests used 0 to 24°.":
    "Der Linie vom Hüftgelenk zum Schultergelenk, über der Waagerechten; veröffentlichte Tests nahmen 0 bis 24°.",
  "Shoulder joint down to the pads, the upper arm upright; left out, 0.186 of the stature ± 3 %: a guess.":
    "Vom Schultergelenk hinab zu den Armauflagen, der Oberarm senkrecht; ohne Angabe 0.186 der Körpergröße ± 3 %: eine Schätzung.",
  "Standing height, from which segment lengths that are not given are guessed.":
    "Größe im Stehen, aus der Segmentlängen geschätzt werden, die nicht angegeben sind.",
  "The hip joint's centre beyond the top of the saddle, along the line from the crank's axle.":
    "Die Mitte des Hüftgelenks jenseits der Satteloberkante, entlang der Linie von der Kurbelachse.",
  "Turns of the crank a minute.": "Umdrehungen der Kurbel pro Minute.",
  "How the errors of several drag areas go together: nearly 1 for one test or one guess, 0 for tests that have nothing in common.":
    "Wie die Fehler mehrerer Luftwiderstandsflächen zusammenhängen: fast 1 bei einem Test oder einer Schätzung, 0 bei Tests, die nichts gemeinsam haben.",
  "There are more than {MOST_CHOICES} choices: name fewer positions to compare.":
    "Es gibt mehr als {MOST_CHOICES} Möglichkeiten: Nenne weniger Haltungen zum Vergleich.",
  "There is no such choice.": "Diese Möglichkeit gibt es nicht.",
  "with.positions names position {position} twice.": "with.positions nennt Haltung {position} zweimal.",
  "with.reference is not among with.positions.": "with.reference ist nicht unter with.positions.",
  "with.so_far does not belong to these choices, events and numbers.":
    "with.so_far gehört nicht zu diesen Möglichkeiten, Rennen und Zahlen.",
  "{} This is at event {}.": "{0} Das gilt für Rennen {1}.",
  "At 20 °C the whole range moves density by 0.9 %.": "Bei 20 °C ändert der ganze Bereich die Dichte um 0.9 %.",
  "The way the road leads from this point on; left out, as at the point before.":
    "Wohin die Straße ab diesem Punkt führt; fehlt es, wie am Punkt davor.",
  "Of the course above sea level; left out, the mean of the course's points.":
    "Der Strecke über dem Meer; fehlt sie, das Mittel der Streckenpunkte.",
  "How strongly you lose power with altitude: 1 is the mean of ten cyclists, who scattered by about 0.4 of it.":
    "Wie stark du in der Höhe Leistung verlierst: 1 ist das Mittel von zehn Radfahrern, die um etwa 0.4 davon streuten.",
  "Radius of the half circle in which an out-and-back course turns: 3 to 4 m across a road, 10 m or more round an island.":
    "Radius des Halbkreises, in dem eine Strecke hin und zurück wendet: 3 bis 4 m quer über eine Straße, 10 m oder mehr um eine Verkehrsinsel.",
  "A finish time whose chance is wanted.": "Eine Zielzeit, deren Chance gefragt ist.",
  "Ten cyclists not used to altitude: five-minute power 5.8 ± 2.9, 10.3 ± 4.3 and 19.8 ± 3.5 % lower at 1200, 2200 and 3200 m than at 200 m.":
    "Zehn nicht an die Höhe gewöhnte Radfahrer: Fünf-Minuten-Leistung auf 1200, 2200 und 3200 m um 5.8 ± 2.9, 10.3 ± 4.3 und 19.8 ± 3.5 % niedriger als auf 200 m.",
  "Nine cyclists at 250 to 4250 m: CP fell with altitude, W′ at 4250 m only; its equations were not read.":
    "Neun Radfahrer auf 250 bis 4250 m: CP fiel mit der Höhe, W′ erst auf 4250 m; die Gleichungen wurden nicht gelesen.",
  "The wind's direction is ignored, as chosen: the ride is in calm air of the same density.":
    "Die Windrichtung bleibt wie gewählt außer Acht: Die Fahrt ist bei Windstille in Luft derselben Dichte gerechnet.",
  "The wind is left out, because the course does not say which way it leads. Give its points a bearing in degrees, clockwise from north.":
    "Der Wind bleibt außer Acht, weil die Strecke nicht sagt, wohin sie führt. Gib ihren Punkten eine Richtung in Grad, von Norden im Uhrzeigersinn.",
  "The air is taken at an altitude of {} m, but the course's points lie at {} m in the mean. Leave the altitude out to follow them.":
    "Die Luft gilt für eine Höhe von {0} m, die Streckenpunkte liegen aber im Mittel auf {1} m. Lass die Höhe weg, um ihnen zu folgen.",
  "At {whole_m} m your power curve is lowered by {} % at five minutes, after ten cyclists who were not used to altitude (Clark et al. 2007).":
    "Auf {whole_m} m ist deine Leistungskurve bei fünf Minuten um {0} % gesenkt, nach zehn nicht an die Höhe gewöhnten Radfahrern (Clark u. a. 2007).",
  "The thin air at {whole_m} m makes you faster here, but takes no power from you. Ten cyclists lost {} % over five minutes at that height: if your power was tested lower down, switch on the loss of power with altitude.":
    "Die dünne Luft auf {whole_m} m macht dich hier schneller, nimmt dir aber keine Leistung. Zehn Radfahrer verloren in dieser Höhe {0} % über fünf Minuten: Wurde deine Leistung weiter unten getestet, schalte den Leistungsverlust in der Höhe ein.",
  "Hot air is thin and makes you faster here, but takes no power from you. In heat riders hold less, the longer the ride the more.":
    "Heiße Luft ist dünn und macht dich hier schneller, nimmt dir aber keine Leistung. Bei Hitze hält man weniger durch, je länger die Fahrt, desto mehr.",
  "The rider comes to a stop after {} m: the road there takes a push of {} N, more than the greatest push of this rider and gear.":
    "Der Fahrer kommt nach {0} m zum Stehen: Die Straße verlangt dort {1} N Schub, mehr als der größte dieses Fahrers mit diesem Gang.",
  "with.target_time_s asks for the chance of a finish time, which is given here.":
    "with.target_time_s fragt nach der Chance auf eine Zielzeit, die hier aber schon feststeht.",
  "A ride of {} hours is far beyond what a power curve rests on: the published powers behind it end at one hour. What can be held for so long is a guess, and food, sleep and weather decide.":
    "Eine Fahrt von {0} Stunden liegt weit jenseits dessen, worauf eine Leistungskurve beruht: Die veröffentlichten Leistungen dahinter enden bei einer Stunde. Was sich so lange halten lässt, ist geraten; Essen, Schlaf und Wetter entscheiden.",
  "Turning round is not counted. Braking, a half circle of {} m radius and getting back to speed would take about {} s; give the turn a radius to count it.":
    "Das Wenden ist nicht mitgerechnet. Bremsen, ein Halbkreis mit {0} m Radius und das Beschleunigen danach kosten etwa {1} s; gib der Wende einen Radius, um es mitzurechnen.",
  "The shorter efforts are hardly harder than the longer ones, or far too much so, for all of them to be all you had: W′ is taken as riders usually have it.":
    "Die kürzeren Belastungen sind kaum härter als die längeren, oder viel zu viel härter, als dass alle dein Maximum gewesen sein könnten: W′ gilt so, wie es üblich ist.",
  "W′ comes out at {kilojoules} kJ, less than riders have: the shortest effort does not look like all you had. Repeat it before you use these.":
    "W′ ergibt sich zu {kilojoules} kJ, weniger als üblich: Die kürzeste Belastung sieht nicht nach deinem Maximum aus. Wiederhole sie, bevor du diese Werte übernimmst.",
  "W′ comes out at {kilojoules} kJ, more than riders have: the longest effort does not look like all you had. Repeat it before you use these.":
    "W′ ergibt sich zu {kilojoules} kJ, mehr als üblich: Die längste Belastung sieht nicht nach deinem Maximum aus. Wiederhole sie, bevor du diese Werte übernimmst.",
  "With {} of 100 combinations of these lengths the leg would not reach the pedal. Every ± is of the others, since the saddle was set to this leg; measured lengths would narrow it.":
    "Bei {0} von 100 Kombinationen dieser Längen würde das Bein das Pedal nicht erreichen. Jedes ± gilt für die übrigen, denn der Sattel wurde auf dieses Bein eingestellt; gemessene Längen würden es verkleinern.",
};
