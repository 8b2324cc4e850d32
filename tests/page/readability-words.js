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

const FORMULA = "read aloud in place of a formula, which has as many words as it has";

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
  placeholders: {},
};
