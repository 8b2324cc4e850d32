// @ts-check
/** Die Texte von „Was macht diese Einstellung mit meiner Hüfte?“. */

/** @satisfies {import("../books.d.ts").Texts<"leg-room">} */
export default {
  ask: "Ich bin {stature} groß. Jetzt fahre ich Kurbeln von {crank_a}, den Sattel {saddle_a} über ihrer Achse bei einem Sitzwinkel von {seat_a}, und {front_a}. Was ändert sich mit Kurbeln von {crank_b}, dem Sattel auf {saddle_b} bei {seat_b} und {front_b}?",
  pedalling: "Ich trete jetzt mit {cadence_a} und nach der Änderung mit {cadence_b}, mit {model}.",
  front: "{choice} {tail}",
  "front.label": "Wie die Front angegeben ist",
  "front.byPads": "Armauflagen",
  "front.byTorso": "Rumpf",
  "front.drop": "{drop} unter dem Sattel",
  "front.torso": "bei {torso}",
  "model.label": "Was das Sprunggelenk tut",
  "model.ankling": "beweglichem Sprunggelenk",
  "model.frozen": "festem Sprunggelenk",
  "number.a": "{label}, jetzt",
  "number.b": "{label}, neue Einstellung",

  "verdict.opens": "Die **neue Einstellung** öffnet die Hüfte um",
  "verdict.closes": "Die **neue Einstellung** schließt die Hüfte um",
  "verdict.level": "Die **neue Einstellung** lässt die Hüfte, wie sie ist",
  "verdict.oneInCloses": "zu knapp für ein Urteil: in\u00a01\u00a0von\u00a0{count} Fällen schließt sie sich",
  "verdict.oneInOpens": "zu knapp für ein Urteil: in\u00a01\u00a0von\u00a0{count} Fällen öffnet sie sich",
  "verdict.spoken.opens":
    "Die neue Einstellung öffnet die Hüfte an der engsten Stelle um {figure}, plus oder minus {spread}.",
  "verdict.spoken.closes":
    "Die neue Einstellung schließt die Hüfte an der engsten Stelle um {figure}, plus oder minus {spread}.",
  "verdict.spokenExact.opens": "Die neue Einstellung öffnet die Hüfte an der engsten Stelle um {figure}.",
  "verdict.spokenExact.closes": "Die neue Einstellung schließt die Hüfte an der engsten Stelle um {figure}.",
  "verdict.spoken.level": "Die neue Einstellung lässt die Hüfte, wie sie ist.",
  "ruler.left": "enger",
  "ruler.right": "offener",
  "ruler.spoken": "Von einer engeren Hüfte links zu einer offeneren rechts: {change}",

  "results.caption": "Die beiden Einstellungen",
  "results.measure": "Was",
  "results.now": "Jetzt",
  "results.new": "Neu",
  "results.change": "Änderung",
  "results.hip": "Hüfte, am engsten",
  "results.torso": "Rumpf",
  "results.kneeStraight": "Knie, am weitesten gestreckt",
  "results.kneeBent": "Knie, am stärksten gebeugt",
  "results.thigh": "Ober\u00adschenkel, am schnellsten",
  "results.sureGuessed":
    "Deine eigenen Winkel sind für die Hüfte nur auf {hip} und für das Knie nur auf {knee} bekannt: Deine Längen sind aus der Körpergröße geschätzt. Die Änderung zwischen beiden Einstellungen ist viel sicherer: Es sitzt derselbe Körper auf beiden.",
  "results.sureTyped":
    "Deine eigenen Winkel sind für die Hüfte auf {hip} und für das Knie auf {knee} bekannt. Die Änderung zwischen beiden Einstellungen ist viel sicherer: Es sitzt derselbe Körper auf beiden.",

  "figure.title": "Beide Einstellungen von der Seite, maßstäblich",
  "figure.spoken":
    "{angle} nach dem oberen Totpunkt: Die Hüfte steht jetzt bei {hip_a} und in der neuen Einstellung bei {hip_b}, das Knie bei {knee_a} und {knee_b}.",
  "figure.reading":
    "**{angle}** nach dem oberen Totpunkt steht die Hüfte jetzt bei {hip_a} und neu bei {hip_b}, das Knie bei {knee_a} und {knee_b}.",
  "figure.now": "jetzt",
  "figure.new": "neu",
  "figure.slider": "Kurbelwinkel nach dem oberen Totpunkt",
  "figure.sliderValue": "{angle} nach dem oberen Totpunkt",
  "figure.play": "Kurbel drehen",
  "figure.pause": "Kurbel anhalten",
  "figure.tightest": "Engste Hüfte",
  "figure.straightest": "Knie, am weitesten gestreckt",

  "chart.crank": "Kurbelwinkel nach dem oberen Totpunkt",
  "chart.hip": "Hüftwinkel",
  "chart.hipTitle": "Hüftwinkel über eine Umdrehung der Kurbel",
  "chart.hipDesc":
    "Das ist der Winkel zwischen Rumpf und Oberschenkel über eine Umdrehung, für beide Einstellungen. Am engsten ist er jetzt {at_a} nach dem oberen Totpunkt, {hip_a}, und in der neuen Einstellung bei {at_b}, {hip_b}.",
  "chart.hipReader": "Hüftwinkel bei einem Kurbelwinkel ablesen",
  "chart.thigh": "Drehung des Oberschenkels, aufwärts positiv",
  "chart.thighTitle": "Wie schnell sich der Oberschenkel dreht, über eine Umdrehung der Kurbel",
  "chart.thighDesc":
    "So schnell dreht sich der Oberschenkel über eine Umdrehung, aufwärts positiv. Am schnellsten ist er jetzt {at_a} nach dem oberen Totpunkt, {thigh_a}, und in der neuen Einstellung bei {at_b}, {thigh_b}.",
  "chart.thighReader": "Drehung des Oberschenkels bei einem Kurbelwinkel ablesen",
  "chart.now": "jetzt",
  "chart.new": "neue Einstellung",
  "chart.handle": "Du: links und rechts drehen die Kurbel",

  "level.already": "**So offen wie jetzt.** Die neue Einstellung lässt die Hüfte auf ein Zehntelgrad, wo sie ist.",
  "level.tighter": "**Um so offen zu sein wie jetzt,** braucht die neue Einstellung eine dieser Änderungen: {ways}.",
  "level.wider":
    "**Die neue Einstellung hat Platz übrig:** Eine dieser Änderungen würde ihn wieder aufbrauchen: {ways}.",
  "level.none":
    "**Keine einzelne Änderung** von Kurbel, Sattel, Sitzwinkel oder Auflagen macht die neue Einstellung so offen wie jetzt.",
  giveBack:
    "**Vorne tiefer, Hüfte gleich offen.** Von jetzt aus schließen {drop} tiefere Auflagen die Hüfte um {hip}. Jede dieser Änderungen gibt das zurück: {ways}.",
  "giveBack.none": "**Vorne tiefer.** Von jetzt aus schließen {drop} tiefere Auflagen die Hüfte um {hip}.",
  "way.crankShorter": "Kurbeln um {by} kürzer und der Sattel um ebenso viel höher",
  "way.crankLonger": "Kurbeln um {by} länger und der Sattel um ebenso viel tiefer",
  "way.saddleHigher": "der Sattel um {by} höher, die Auflagen gehen mit",
  "way.saddleLower": "der Sattel um {by} tiefer, die Auflagen gehen mit",
  "way.seatForward": "der Sitz um {by} weiter vorn",
  "way.seatBack": "der Sitz um {by} weiter hinten",
  "way.padsHigher": "die Auflagen um {by} höher",
  "way.padsLower": "die Auflagen um {by} tiefer",

  "changes.title":
    "Was kleine Änderungen von jetzt aus bewirken: an der engsten Hüfte, am gestreckten Knie und am schnellsten Oberschenkel",
  "changes.change": "Änderung",
  "changes.hip": "Hüfte",
  "changes.knee": "Knie",
  "changes.thigh": "Schenkel",
  "changes.crank_and_saddle": "Kurbeln {by} kürzer, Sattel ebenso viel höher",
  "changes.crank": "Kurbeln {by} kürzer, Sattel bleibt",
  "changes.saddle": "Sattel {by} höher, Auflagen gehen mit",
  "changes.seat_angle": "Sitz {by} weiter vorn, Auflagen gehen mit",
  "changes.pads": "Auflagen {by} tiefer",
  "changes.outOfReach": "außer Reichweite",

  knee: "**Das Knie.** Wo es am weitesten gestreckt ist, fehlen ihm jetzt {short} zur Streckung, in der neuen Einstellung {short_new}. Eine Übersicht der Studien rät zu 25 bis 30°, auch wenn wenig über Verletzungen bekannt ist. Statisch auf 25° eingestellt, waren es beim Treten 29\u00a0±\u00a05°.",
  takes:
    "**Was es verlangt.** Kürzere Kurbeln öffnen die Hüfte leicht. Eine Übersicht zum Sprint fand, dass die Kurbellänge von 165 bis 180\u00a0mm für die Leistung keine Rolle spielt. Eine tiefere Front nimmt manchen Fahrern Leistung und anderen nicht, also teste es.",
  price:
    "**Was ist es wert?** Diese Seite zählt Grade. Für die Watt fahre beide Fronten in einem Test und lass „Welche Position“ sie vergleichen. {open}",
  "price.open": "Öffnen",
  caution:
    "**Das ist kein Urteil über deinen Körper.** Gerechnet wird mit einem Bein aus Stäben in einer Ebene. Ändere eines nach dem anderen, in kleinen Schritten, und fahre nach jedem eine Weile locker. Hör auf, wenn etwas schmerzt oder taub wird: Knie, Hüfte, Rücken, Nacken, Hände oder wo du sitzt. Hol dir ärztlichen Rat, oder frag beim Bikefitting. Probiert wird abseits des Verkehrs, und die Regeln des Wettkampfs für Sattel und Lenker gehen vor.",

  "why.gist": "Der Oberschenkel ist kurz nach dem oberen Totpunkt am höchsten, wenn das Pedal noch fast ganz oben ist.",
  "why.hip":
    "Die Hüfte ist {at} nach dem oberen Totpunkt am engsten, wenn der Oberschenkel am höchsten ist. Eine kürzere Kurbel hebt das Pedal weniger, und mit ebenso viel höherem Sattel hängt das ganze Bein von weiter oben. Beides lässt den Oberschenkel tiefer bleiben. Tiefere Auflagen ändern am Bein nichts; der Rumpf kommt ihm nur entgegen, Grad für Grad.",
  "why.seat":
    "Dreht man den Sitz um die Kurbelachse nach vorn, drehen sich Bein und Hüfte mit, und bei gleichem Rumpfwinkel bleibt mehr Platz. Bei festem Sprunggelenk ist das etwa ein Grad für ein Grad, bei einem beweglichen etwas mehr. Das ist ein Grund, warum Zeitfahrsättel weit vorn sitzen.",
  "why.speed":
    "Bei {cadence} schwingt der Oberschenkel einmal je Umdrehung auf und ab. Längere Kurbeln schwingen ihn weiter, also muss er schneller sein; eine höhere Trittfrequenz macht ihn ebenfalls schneller.",

  "how.gist": "Oberschenkel, Unterschenkel und Fuß als Stäbe zwischen einer ruhenden Hüfte und einem drehenden Pedal",
  "how.loop":
    "Hüfte, Knie, Sprunggelenk und Pedal sind in einer Ebene durch steife Stäbe verbunden. Das Hüftgelenk liegt auf der Linie von der Kurbelachse durch die Satteloberkante, {above} jenseits des Sattels (angenommen). Die Sattelhöhe wird entlang dieser Linie gemessen, und der Sitzwinkel ist der dieser Linie, nicht der des Rahmens.",
  "how.frozen":
    "Mit festem Sprunggelenk sind Unterschenkel und Fuß ein geknickter Stab mit {ankle} (angenommen). Mit beweglichem zeigt die Linie vom Sprunggelenk zum Pedal im Mittel {pitch} nach unten und über die Umdrehung {swing} mehr oder weniger. Die Zehen sind hinten am tiefsten (angenommen). Das zweite Modell zeigt etwa zehn Grad mehr als das erste: Vergleiche innerhalb eines Modells und nie mit einem Winkelmesser auf der Haut.",
  "how.formula": "Hüftwinkel gleich Rumpfwinkel minus Winkel des Oberschenkels, der aus dem Kosinussatz folgt",
  "how.torso":
    "Der Rumpf ist die Linie vom Hüft- zum Schultergelenk. Ist die Überhöhung zu den Auflagen gegeben, steht die Schulter einen Oberarm über ihnen, der Arm senkrecht. Der Sinus des Rumpfwinkels ist eine Höhe, geteilt durch die Länge des Rumpfs. Diese Höhe ist der Oberarm, minus die Überhöhung, minus die Höhe der Hüfte über dem Sattel.",
  "how.rates":
    "Wie schnell sich der Oberschenkel dreht, wird aus dem Gestänge genau berechnet, ebenso die engsten und schnellsten Stellen. Das ± ist eine Standardabweichung: Jede unsichere Länge wird der Reihe nach vergrößert und verkleinert, in beiden Einstellungen gleich.",
  "how.none":
    "Eine veröffentlichte Tabelle eines solchen Beins fand sich nicht. Geprüft wird gegen dasselbe Gestänge, mit 40 Stellen gerechnet.",
  "how.τ": "Rumpf über der Waagerechten",
  "how.φ": "Oberschenkel über der Waagerechten",
  "how.E": "Hüfte bis zum Ende des unteren Stabs",
  "how.t": "Oberschenkel",
  "how.L": "unterer Stab: Unterschenkel, oder Unterschenkel und Fuß zusammen",

  lengths: "Wie du trittst, und deine Längen",
  "lengths.gistGuessed": "{count} aus der Körpergröße geschätzt; gib ein, was du gemessen hast",
  "lengths.gistTyped": "Alle eingegeben",
  "lengths.how":
    "Miss von Gelenk zu Gelenk; ein Maßband trifft das auf etwa einen Zentimeter. Das Hüftgelenk liegt unter dem knöchernen Punkt seitlich an der Hüfte, das Knie an seiner Falte, das Sprunggelenk an der äußeren Erhebung. Die Anteile der Körpergröße hinter einer Schätzung sind aus dem Gedächtnis.",
  "lengths.thigh_m": "Hüftgelenk bis Knie",
  "lengths.shank_m": "Knie bis Sprunggelenk",
  "lengths.foot_m": "Sprunggelenk bis Pedalachse",
  "lengths.trunk_m": "Hüftgelenk bis Schultergelenk",
  "lengths.upper_arm_m": "Schultergelenk bis Auflagen",
  "lengths.hip_above_saddle_m": "Hüftgelenk jenseits des Sattels",
  "lengths.foot_pitch_deg": "Fuß unter der Waagerechten, im Mittel",
  "lengths.foot_swing_deg": "Ausschlag des Fußes, zu beiden Seiten",
  "lengths.ankle_deg": "Winkel des Sprunggelenks",
  "lengths.guess": "geschätzt",
  "lengths.guessAgain": "Wieder schätzen",

  "table.gist": "Beide Einstellungen alle fünfzehn Grad der Kurbel",
  "table.caption": "Winkel in Grad und Drehung des Oberschenkels in Grad pro Sekunde, über eine Umdrehung der Kurbel",
  "table.crank": "Kurbel",
  "table.hipA": "Hüfte, jetzt",
  "table.hipB": "Hüfte, neu",
  "table.kneeA": "Knie, jetzt",
  "table.kneeB": "Knie, neu",
  "table.thighA": "Schenkel, jetzt",
  "table.thighB": "Schenkel, neu",
};
