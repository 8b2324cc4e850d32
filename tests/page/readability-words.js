// @ts-check
/** The words that `readability.test.js` looks for, and the exceptions from its rules, each with its reason. */

/** Whole words in any case, where letters may have accents. @param {string} words separated by spaces; `~` stands for any ending */
const anyOf = (words) =>
  new RegExp(`(?<![\\p{L}])(?:${words.trim().split(/\s+/).join("|").replaceAll("~", "\\p{L}*")})(?![\\p{L}])`, "iu");

/** The verbs that the texts use, as far as a sentence has no other of them. */
export const VERBS = {
  en: anyOf(`is are was were be has have had do does can cannot could may might must would will isn’t can’t
    am part export add~ allow~ reach~ suit~ hang~ pull~ practise miss~ found find speak~ carry~ carries lift~ took unpack~ cover~ became becomes raised raise~ won gain~ serve~ place~ put~ lasts last~ push~ earn~ swing~ let lets join~ treat~ feel~ sees stop~ save~ drain~ runs agree~ weighted makes pedal~ jump~ drain~ wins lose~ favour~ answer~ appear~ ask~ asks avoid begin~ beyond bring~ change~ check choose click close~ come~ compar~ copy~ count~ cross cut cuts
    climb~ decide~ depend~ differ~ draw~ drag enter~ explain~ fall~ find~ fit fits follow~ forms gave get~ give~ go goes grow~ guess~ had hear help~ hold~ keep~
    know~ leave~ lie lies look~ lose~ made make~ mean~ measur~ move~ need~ open~ own put rate read reload~ remove~ repeat~ rest~ ride~ run~ save~ say~
    see set show~ slip~ speak~ stand~ start~ stay~ stop~ take~ tell~ test~ tie~ try turn~ type use~ vary wait want~ weigh~ went work~ write`),
  de: anyOf(`kostet bin bist hast beruht~ eintritt schaffst schafft erlaubt behältst erreich~ verfehl~ probier~ beweg~ rettet hebt hängt schwing~ schließ~ füll~ ergeb~ ergibt ergäbe läge weichen weicht zieht tun übe trag~ kenn~ unterschieden unterscheid~ öffnet dankt schmerzt dreht geben gewichtet stieg entspricht ist sind war waren wird werden wurde wurden wäre wären hat haben hatte hatten hätte kann können konnte könnte darf dürfen muss soll
    will sei gib gilt gelten gibt gehen geht geh bleib~ brauch~ bring~ brächte~ liegt liegen lieg lass lässt ließ läuft lies öffne~ prüfe lade~ zieh zeigt zeigen zählt zählen
    änder~ begrenz~ beginn~ besteh~ bestimm~ dauer~ dreh~ enthält entscheid~ erklär~ fahr~ fährst fährt fällt fehl~ fein find~ fand~ fang~ folg~ frag~ gehör~ gewinn~ gewann gewinnt
    halt~ hält~ heiß~ heißt helfen hilft hol~ kam komm~ konnt~ kreuz~ leert lern~ macht mach~ miss misst nimm~ nehm~ nahm passt reich~ rechne~ sag~ schau~ schreib~
    schnitt~ schwank~ setz~ sieh~ sink~ sitz~ spar~ sprech~ stammt steh~ steig~ stell~ stimm~ such~ teil~ trenn~ treff~ triff~ tritt tu tut verlang~ verlier~ vergleich~ verlor~ versuch~ verrät verdeck~
    wächst wähl~ war weiß wert wiegt wirk~ wirf wissen wüsst~ würd~ spürst tippe tipp teste hör behält antworten beantwortet sichere ersetze misst verschiebt vergleiche nutze exportiere kopiere`),
  fr: anyOf(`coûte c’est repose~ parcours permet~ serais es suis sens amincit commençait lève pointe n’apporte~ apport~ sort retire répète écart~ rencontr~ note empil~ croisent calcul~ peut-être avance vide recalcul~ avons est sont était étaient sera serait seront soit soient a ai as ont avait avaient aura aurait ayant peut peux peuvent pourrait pouvait faut doit doivent va vas vont
    fait fais font faisait dit dis disent donn~ mets met mettent prend~ pren~ pris tient tiens tenait tiennent tien vient viennent reste~ rest~ revient reçoit sait savait
    c’est n’est s’est l’est qu’est n’a n’as n’ont n’y s’annule~ s’additionne~ s’ouvr~ s’apprend s’arrête s’exclu~ s’il ajout~ annul~ arriv~ atteint augment~ baiss~ arrête-toi n’aide~ aid~ appuie~
    attend~ change~ charge~ choisi~ coche coll~ commenc~ compar~ compt~ contient consult~ convient continu~ copi~ coupe croît croi~ croise~ demand~ dépass~ dépend~ déplac~ descend~ devien~ diff~ dur~
    écri~ efface enregistr~ essai~ export~ expliqu~ ferm~ film~ form~ gagn~ gard~ garde indiqu~ laiss~ lis lit lisent manqu~ march~ mène~ mesur~ mont~ montr~ obtient ouvr~ parl~ part~ partag~ pass~ pens~ perd~
    pèse place~ port~ pos~ produ~ recharg~ regard~ remplac~ rempli~ répond~ repos~ retrouv~ rend~ roul~ se sert sers sépar~ suit suivent suffit suppos~ tap~ tir~ touch~ tourn~ tranch~ travaill~ tomb~ trouv~ utilis~ vaut valent varie~ vari~ veut veux vérifi~ voi~ vois
    lisse-la fais-le quitte connaît envoie pouvoir pédal~`),
};

/** Words that must not stand in a text, and why. `only` names the books where the rule holds; else it holds in all of them. */
/** @typedef {{ word: RegExp, why: string, only?: string[] }} Forbidden */
const MONEY = "a word of money where none is meant";
const STATISTICS = "a term of statistics that riders do not know";
const SHAPE = "“level” sounds like a flat back where a position is meant";

/** @type {Record<"en" | "de" | "fr", Forbidden[]>} */
export const FORBIDDEN = {
  en: [
    {
      word: anyOf(
        "buy buys bought buying pay pays paid paying price prices priced cheap cheaper cheapens cost costs expensive",
      ),
      why: MONEY,
    },
    { word: anyOf("trade trades bargain"), why: MONEY },
    { word: /\bdraws\b|\ba draw\b/iu, why: "a draw is a tie to a rider; say “tries”" },
    { word: /e-fold|first order|Akaike weight|residual|covarianc|omni-domain/iu, why: STATISTICS },
    { word: anyOf("evidence"), why: "say “points” or “what the efforts tell”" },
    { word: anyOf("scenario"), why: "on the page they are “your numbers”" },
    { word: /Published:/u, why: "a tag without a verb; say “in one study”" },
    { word: anyOf("level"), why: SHAPE, only: ["hold-or-fade", "which-position"] },
    { word: /starts? to go|begins? to go|wholly/iu, why: "say “slip” and “fully”" },
    { word: /most of it is in both/iu, why: "say that the two share it" },
  ],
  de: [
    {
      word: anyOf(
        "kosten kostet kostete kostest bezahl~ zahlt zahlst preis~ billig~ teuer teure~ kauf~ verbilligt tausch~",
      ),
      why: MONEY,
    },
    { word: anyOf("ziehung ziehungen"), why: "Lotterie; „Durchläufe“" },
    { word: anyOf("evidenz~ kovarianz residu~ e-fache"), why: STATISTICS },
    { word: /erster Ordnung/iu, why: STATISTICS },
    {
      word: anyOf("haltung haltungen zeitfahrhaltung"),
      why: "Radfahrer sagen „Position“",
      only: ["page", "sheet", "which-position", "hold-or-fade", "leg-room", "shared"],
    },
    { word: anyOf("knöchel~"), why: "als Gelenk heißt es Sprunggelenk" },
    { word: /critical power/iu, why: "die kritische Leistung" },
    { word: anyOf("gleichauf"), why: "ein Wort dafür: gleich schnell" },
    { word: anyOf("arzt ärztin"), why: "ärztlicher Rat" },
    { word: anyOf("szenario~"), why: "auf der Seite sind es „deine Zahlen“" },
    { word: anyOf("achtung"), why: "ein Hinweis warnt nicht" },
    { word: anyOf("anfänger"), why: "ein Wort dafür: Neulinge" },
    { word: anyOf("entfernung~"), why: "ein Wort dafür: Distanz" },
    { word: /Veröffentlicht:/u, why: "ohne Verb; „in einer Studie“" },
    { word: /die CdA|der CdA(?!-)|einer CdA/u, why: "der CdA-Wert" },
  ],
  fr: [
    { word: anyOf("coût~ payer paie paient prix cher chère achet~ achèt~ rentable"), why: MONEY },
    { word: anyOf("échange taux-de-change"), why: MONEY },
    { word: anyOf("tirage tirages"), why: "la loterie ; « simulations »" },
    { word: anyOf("covariance résidu~"), why: STATISTICS },
    { word: /premier ordre|facteur e/iu, why: STATISTICS },
    { word: anyOf("scénario~"), why: "sur la page, ce sont « tes chiffres »" },
    { word: /à fond et régulier/iu, why: "« meilleur effort régulier »" },
    { word: anyOf("intervalles"), why: "en vélo, c’est du fractionné" },
    { word: /densité de l’air/iu, why: "« masse volumique »" },
    { word: /temps finals?/iu, why: "« temps à l’arrivée »" },
    { word: /(?<!mort )\bpoint haut/iu, why: "« point mort haut »" },
    { word: anyOf("céder cède interruption interruptions"), why: "« se dégrader », « relâchement »" },
    { word: /Publiée? ?:/u, why: "sans verbe ; « d’après une étude »" },
    { word: anyOf("lente"), why: "un seul mot : « moins rapide »", only: ["hold-or-fade", "which-position"] },
  ],
};

/** Terms that the page of a question explains where it uses them. */
export const TERMS = {
  en: [
    { key: "cda", word: /\bCdA\b|drag area/i },
    { key: "cp", word: /critical power|\bCP\b/i },
    { key: "wPrime", word: /W′/ },
    { key: "crr", word: /\bCrr\b/ },
    { key: "yaw", word: /\byaws?\b/i },
  ],
  de: [
    { key: "cda", word: /\bCdA\b|Luftwiderstandsfläche/ },
    { key: "cp", word: /kritische[rn]? Leistung|\bCP\b/i },
    { key: "wPrime", word: /W′/ },
    { key: "crr", word: /\bCrr\b/ },
    { key: "yaw", word: /Anströmwinkel/ },
  ],
  fr: [
    { key: "cda", word: /\bCdA\b|surface de traînée/i },
    { key: "cp", word: /puissance critique|\bCP\b/i },
    { key: "wPrime", word: /W′/ },
    { key: "crr", word: /\bCrr\b/ },
    { key: "yaw", word: /angles? de lacet|\byaw\b/i },
  ],
};

/** Numbers that stand bare, not as "4:44" or "250 W", and the words after them that they leave as they are. @param {string} unchanged */
const countedBut = (unchanged) =>
  new RegExp(
    `\\{(?:count|runs|times|targets|draws|outcomes|sets|riders|others|records|crossings|most|all)\\} (?!(?:${unchanged.replaceAll(" ", "|")})(?!\\p{L}))\\p{L}+`,
    "gu",
  );

/** A bare number before a word that it may change. */
export const COUNTED = {
  en: countedBut("min h of in on at would guessed"),
  de: countedBut("min h von aus bei beim an nur Byte entfernen"),
  fr: countedBut("min h de du sur au en et fois cas choix deviendrait sont perdraient"),
};

const FORMULA = "read aloud in place of a formula, which has as many words as it has";

const BOUND = "a bound of the core, far above one";
const HUNDRED = "told by the hundred, and never of one of them";
const ONE_OR_MORE = "shown where there is one or more";
const UNLIKELIER = "one time in two or more, since the likelier outcome is claimed";
const TWO_RUNS = "a test has two runs or more in each position";

const PRICES = "money is meant: a budget buys kit";

/** By rule, the texts that may break it in any language, and why. */
export const EXCEPTIONS = {
  /** @type {Record<string, string>} */
  length: { "power-curve: howOmni": FORMULA },
  /** @type {Record<string, string>} */
  fragment: {},
  /** @type {Record<string, string>} */
  forbidden: {
    "learn: threeAsk": PRICES,
    "learn: threeAssumed": PRICES,
    "learn: threeDescription": PRICES,
    "learn: threeLegend": PRICES,
    "learn: threeMoral": PRICES,
    "next-gain: why.too_dear": PRICES,
  },
  /** @type {Record<string, string>} */
  plural: {
    "drag-test: byButton": ONE_OR_MORE,
    "drag-test: byRounds": ONE_OR_MORE,
    "drag-test: keptAs": "one test goes without saying, and there is no position from none",
    "drag-test: mostCoastDowns": BOUND,
    "drag-test: mostRides": BOUND,
    "drag-test: mostRuns": BOUND,
    "drag-test: otherWay": UNLIKELIER,
    "drag-test: planHandleSpoken": TWO_RUNS,
    "drag-test: planOdds": HUNDRED,
    "drag-test: planSays": TWO_RUNS,
    "drag-test: planSpoken": TWO_RUNS,
    "finish-time: splitsGist": "the line is the last split",
    "leg-room: verdict.oneInCloses": UNLIKELIER,
    "leg-room: verdict.oneInOpens": UNLIKELIER,
    "learn: wallSays": "twice the speed takes eight times the power",
    "next-gain: claim": "without an event there is no answer",
    "next-gain: hours": "said of one more hour",
    "next-gain: more": ONE_OR_MORE,
    "next-gain: myEvents": "without an event there is no answer",
    "next-gain: whyChance": "a set of one change comes out in two ways",
    "next-gain: howSets": "one change makes two sets: with it and without",
    "power-curve: mostEfforts": BOUND,
    "power-or-drag: howEven": "tries are counted by the hundred",
    "recordings: too_deep": BOUND,
    "recordings: too_large": BOUND,
    "recordings: too_many_records": BOUND,
    "ride-plan: best": "a plan of one power has words of its own",
    "shared: aboutFaster": HUNDRED,
    "shared: aboutSlower": HUNDRED,
    "shared: hours": "said of the usual times, which are one, twelve and 24 hours",
    "shared: ofDraws": HUNDRED,
    "shared: tooCloseFaster": HUNDRED,
    "shared: tooCloseSlower": HUNDRED,
    "sheet: line.count": "a line without a number is passed over",
    "which-position: costScaled": HUNDRED,
    "which-position: costTorso": HUNDRED,
    "which-position: counting": "tries are counted by the hundred",
    "which-position: fastestIn": "the fastest of a few positions is it in many of a hundred tries",
    "which-position: published": "the studies had five and eleven riders",
    "which-position: stopped": "tries are counted by the hundred",
  },
  /** @type {Record<string, string>} */
  placeholders: {},
};
