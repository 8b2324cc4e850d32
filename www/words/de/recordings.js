// @ts-check
/** Aufzeichnungen von Fahrten. */

/** @satisfies {import("../books.d.ts").Texts<"recordings">} */
export default {
  sharedFile: "Die geteilte Datei",
  reading: "Die Datei wird gelesen\u00a0…",
  cancel: "Abbrechen",
  notRead: "{name} wurde nicht gelesen. {why}",
  notReadWhy: "Darin steht etwas, was hier nicht bekannt ist; das Lesen brach dort ab.",

  empty: "Die Datei ist leer.",
  too_large: "Die Datei ist größer als {most} Byte; mehr wird nicht gelesen.",
  too_many_records: "Die Datei hat mehr als {most} Messpunkte; mehr werden nicht gelesen.",
  unknown_kind: "Diese Datei ist keine von denen, die gelesen werden: FIT, GPX, TCX oder CSV.",
  zip_archive: "Das ist ein Archiv mit Dateien. Entpacke es und öffne die Aufzeichnung darin.",
  packed_twice: "Die Datei ist nach dem Entpacken immer noch gepackt. Entpacke sie und öffne sie dann.",
  packing_broken: "Die Datei ist gepackt und lässt sich nicht entpacken.",
  file_gone: "Die Datei lässt sich nicht mehr lesen. Öffne sie noch einmal.",
  other_xml: "Diese XML-Datei enthält {root}; das ist weder GPX noch TCX.",
  not_xml:
    "Die Datei beginnt wie XML, geht aber nicht so weiter: Vor Zeile {line}, Byte {byte}, steht nichts von einer Fahrt.",
  too_deep: "Die Datei ist in Zeile {line} tiefer als {most} Ebenen geschachtelt; das ist keine Aufzeichnung.",
  too_long_piece:
    "Ein einzelnes Stück der Datei ab Zeile {line} ist länger als ein Megabyte. Das hat keine Aufzeichnung.",
  no_records: "Die Datei ließ sich lesen, enthält aber keine Messpunkte.",
  cut_before_records: "Die Datei bricht bei Byte {byte} ab oder ist dort beschädigt; davor steht kein Messpunkt.",
  no_known_columns: "In den ersten Zeilen sind keine zwei bekannten Spalten genannt, zum Beispiel {known}.",
  no_times: "Die meisten Punkte haben keine Zeit; Tempo und Dauer sind darum nicht bekannt.",
  no_power: "Die Aufzeichnung hat keine Leistung.",
  no_elevation: "Die Aufzeichnung hat keine Höhe.",
  no_positions: "Die Aufzeichnung hat keine Orte; die Fahrtrichtung ist darum nicht bekannt.",
  power_missing: "Messpunkte ohne Leistung bleiben leer und zählen nicht als null: {count}.",
  no_distance:
    "Die Aufzeichnung hat weder Distanz noch Orte noch Tempo; wie weit du gefahren bist, sagt sie also nicht.",
  beyond_a_ride: "Werte, die es auf keiner Fahrt geben kann, wurden ausgelassen: {count}.",
  unreadable: "Werte, die sich nicht lesen lassen, wurden ausgelassen: {count}, der erste in Zeile {line}.",
  uneven_lines: "Es gibt Zeilen mit mehr oder weniger Werten als Überschriften: {count}, die erste ist Zeile {line}.",
  cut: "Die Datei bricht bei Byte {byte} ab oder ist dort beschädigt. Die Messpunkte davor wurden gelesen: {records}.",
  not_closed: "Das Gerät hat die Datei nicht abgeschlossen. Was es aufgezeichnet hatte, wurde gelesen.",
  not_one_piece: "Die Datei enthält mehrere Aufzeichnungen; sie wurden der Reihe nach verbunden.",
  untimed: "Messpunkte ohne Zeit wurden ausgelassen: {count}.",
  same_time: "Messpunkte mit derselben Zeit wie der davor wurden mit ihm verbunden: {count}.",
  clock_slipped: "Messpunkte mit einer früheren Zeit als der davor wurden ausgelassen: {count}.",
  clock_set: "Die Uhr wurde während der Aufzeichnung gestellt; die Zeit läuft von dort weiter: {count}-mal.",
  gaps: "Es gibt Lücken, in denen nichts aufgezeichnet wurde: {count}, die längste dauert {longest}.",
  still: "Messpunkte mit genau demselben Ort wie der davor gibt es so oft: {count}.",
  at_zero: "Orte bei Breite 0 und Länge 0 wurden ausgelassen: {count}.",
  distance_from_positions: "Die Aufzeichnung hat keine eigene Distanz. Sie wurde aus den Orten berechnet.",
  distance_from_speed: "Die Aufzeichnung hat weder Distanz noch Orte. Die Distanz wurde aus dem Tempo berechnet.",
  distance_reset: "Die aufgezeichnete Distanz begann von vorn und wurde fortgeführt: {count}-mal.",
  distance_back: "Die aufgezeichnete Distanz ging zurück und wurde dort gehalten: {count}-mal.",
  jumps: "Schritte zwischen Orten, die für ein Rad zu schnell sind, können Fehler des Empfängers sein: {count}.",
  speed_from_distance: "Die Aufzeichnung hat kein eigenes Tempo. Es wurde aus Distanz und Zeit berechnet.",
  parts_left_out: "Die Spur hat mehrere Teile: {count}. Dazwischen liegen {distance} Luftlinie, die nicht zählen.",
  from_route: "Die Datei enthält eine Route, keine Fahrt: Ihre Punkte sagen, wohin sie führt.",
  power_by_name: "Die Leistung stammt aus einem Feld, das ein zusätzlicher Sensor oder ein Programm beschreibt.",
  clock_in_minutes:
    "Die Zeiten haben zwei Teile. Sie wurden als Minuten und Sekunden gelesen, weil fast jeder Punkt eine eigene Zeit hat.",
  speed_as_km_h:
    "Die Überschrift sagt nichts über die Einheit des Tempos. Es wurde als km/h gelesen, weil es für m/s zu hoch ist.",
  distance_as_km:
    "Die Überschrift sagt nichts über die Einheit der Distanz. Sie wurde als km gelesen, weil sie für Meter zu kurz ist.",
  no_worker:
    "Dieser Browser lässt die Seite nebenher keine Dateien lesen; Aufzeichnungen lassen sich hier nicht öffnen.",
  took_too_long: "Das Lesen der Datei dauerte zu lange und wurde abgebrochen. Sonst ging nichts verloren.",
  reader_crashed:
    "Die Seite ist beim Lesen dieser Datei gescheitert; das ist ein Fehler der Seite. Sonst ging nichts verloren; dieselbe Fahrt in einem anderen Dateityp lässt sich vielleicht öffnen.",
  reader_missing:
    "Der Teil der Seite, der Aufzeichnungen liest, konnte nicht geladen werden. Prüfe die Verbindung und öffne die Datei noch einmal.",
};
