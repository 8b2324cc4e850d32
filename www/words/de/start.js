// @ts-check
/** Eine Seite, die nicht ganz geladen werden konnte. */

/** @satisfies {import("../books.d.ts").Texts<"start">} */
export default {
  title: "Der Rechner ist nicht gestartet",
  newer:
    "Eine neuere Fassung des Rechners liegt bereit. Lade die Seite neu, um sie zu öffnen; deine Zahlen bleiben erhalten.",
  incomplete:
    "Auf dem Server fehlen Teile der Seite, etwa weil gerade eine neue Fassung hochgeladen wird. Lade die Seite in ein paar Minuten neu.",
  unreachable: "Die Seite konnte nicht geladen werden. Prüfe die Verbindung und lade sie neu.",
  reload: "Neu laden",
};
