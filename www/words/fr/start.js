// @ts-check
/** Une page qui n’a pas pu être chargée en entier. */

/** @satisfies {import("../books.d.ts").Texts<"start">} */
export default {
  title: "Le calculateur n’a pas démarré",
  newer:
    "Une version plus récente du calculateur est disponible. Recharge la page pour l’ouvrir, tes chiffres sont conservés.",
  incomplete:
    "Il manque des parties de la page sur son serveur, par exemple pendant la mise en ligne d’une nouvelle version. Recharge la page dans quelques minutes.",
  unreachable: "La page n’a pas pu être chargée. Vérifie la connexion et recharge-la.",
  reload: "Recharger",
};
